import { type Case, INCH } from '../case.ts';

const HAND = 'derived, worked by hand';
const RULE = 'linear rule of the trade in its inch form, 22.8 in/s (remembered)';
const EXAMPLE = `${HAND}: 500 cm3 casting, 60 cm3 overflows, 150 cm3 runner, sleeve 70 x 400 mm, biscuit 25 mm`;
const OTHER_SCHEME = 'derived: a second solution, on a mesh that moves with the metal (staggered, artificial viscosity, 1200 cells)';

/** 22.8 ((100 - F)/100) sqrt(d) in/s with d in inches. */
const inchRule = (diameter: number, fill: number): number => 22.8 * 0.001 * INCH * (1 - fill / 100) * Math.sqrt(diameter / INCH);

/** Slow shots with the trapped air, the closing travel and the head that the second solution gave. */
const WAVES = [
  [{ diameter: 70, fill: 52.37, length: 400, hole_travel: 87.5, hole_speed: 0.25, ramp_end: 120, speed: 0.3 }, 85.05, 168.42, 79.21],
  [{ diameter: 110, fill: 30.6, length: 880, hole_travel: 137.5, hole_speed: 0.3, ramp_end: 256, speed: 0.88 }, 140.5, 595.97, 95.08],
  [{ diameter: 85, fill: 35.7, length: 520, hole_travel: 106, hole_speed: 0.3, ramp_end: 163, speed: 0.45 }, 255.7, 292.39, 71.18],
  [{ diameter: 60, fill: 60, length: 500, hole_travel: 75, hole_speed: 0.3, ramp_end: 100, speed: 0.3 }, 39.35, 186.09, 91.24],
] as const;

export const cases: readonly Case[] = [
  {
    formula: 'slow-shot.linear-speed',
    inputs: { diameter: 4 * INCH, fill: 50 },
    expected: 0.579,
    tolerance: { absolute: 0.0005 },
    from: `${RULE}: 4 in plunger, half full, 22.8 in/s`,
  },
  ...[50, 70, 100, 140].flatMap((diameter) =>
    [30, 50, 70].map((fill) => ({
      formula: 'slow-shot.linear-speed',
      inputs: { diameter, fill },
      expected: inchRule(diameter, fill),
      tolerance: { relative: 2e-4 },
      from: RULE,
    })),
  ),
  { formula: 'slow-shot.linear-speed', inputs: { diameter: 70, fill: 52.37 }, expected: 0.458, tolerance: { absolute: 0.0005 }, from: EXAMPLE },
  {
    formula: 'slow-shot.linear-speed',
    inputs: { diameter: 70, fill: 100 },
    expected: 0,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: a full sleeve has no wave',
  },
  // 0.698 and 0.795 m/s at 40 % fill of a 100 mm sleeve: 14 %; 0.235 and 0.239 at 80 %: 1.7 %.
  {
    formula: 'slow-shot.balance-difference',
    inputs: { energy: 0.698, momentum: 0.795 },
    expected: 13.9,
    tolerance: { absolute: 0.05 },
    from: `${HAND}: 100 mm, 40 % full`,
  },
  {
    formula: 'slow-shot.balance-difference',
    inputs: { energy: 0.4, momentum: 0.4 },
    expected: 0,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: equal speeds',
  },
  { formula: 'slow-shot.speed', inputs: { energy: 0.455, momentum: 0.49 }, expected: 0.455, tolerance: { absolute: 1e-12 }, from: EXAMPLE },
  {
    formula: 'slow-shot.speed',
    inputs: { energy: 0.5, momentum: 0.49 },
    expected: 0.49,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: the lower of the two',
  },
  {
    formula: 'slow-shot.fill-for-window',
    inputs: { diameter: 4 * INCH, speed: 0.579 },
    expected: 50,
    tolerance: { absolute: 0.05 },
    from: `${RULE}, turned round: 4 in plunger at 22.8 in/s is half full`,
  },
  // 0.30 x (90 / 67.83)^2 = 0.5282, and 0.1149 x 0.4718 x sqrt(67.83) = 0.4465.
  {
    formula: 'slow-shot.plunger-for-window',
    inputs: { diameter: 90, fill: 30, speed: 0.4465, density: 2.5, liquid_density: 2.5, length: 500 },
    expected: 67.83,
    tolerance: { absolute: 0.02 },
    from: `${HAND}: 30 % in 90 mm is 52.8 % in 67.83 mm, to which the linear rule gives 0.4465 m/s`,
  },
  // With the biscuit: 800 cm3 besides it are 101.86 mm of 100 mm and 159.15 mm of 80 mm; the biscuits are 36 and 28.8 mm as a liquid.
  {
    formula: 'slow-shot.plunger-for-window',
    inputs: {
      diameter: 100,
      fill: 27.572,
      biscuit: 100 / 3,
      speed: 0.64138,
      density: 2.7,
      liquid_density: 2.5,
      length: 500,
      least: 25,
      runner_depth: 12,
      share: 1 / 3,
    },
    expected: 80,
    tolerance: { absolute: 0.01 },
    from: `${HAND}: 27.57 % in 100 mm is 37.59 % in 80 mm, to which the linear rule gives 0.6414 m/s`,
  },
  {
    formula: 'slow-shot.loss-by-fill',
    inputs: { fill: 52.5, fill_least: 30, fill_greatest: 75, loss_least: 20, loss_greatest: 50 },
    expected: 35,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: the middle of the fills has the middle of the losses`,
  },
  ...(
    [
      [20, 50],
      [30, 50],
      [75, 20],
      [90, 20],
    ] as const
  ).map(([fill, expected]) => ({
    formula: 'slow-shot.loss-by-fill',
    inputs: { fill, fill_least: 30, fill_greatest: 75, loss_least: 20, loss_greatest: 50 },
    expected,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: the ends of the range of fills, and beyond them',
  })),
  // A worked example of the textbook: 1400 cm3 are ladled in 8.72 s.
  {
    formula: 'slow-shot.ladle-time',
    inputs: { volume: 1400 },
    expected: 8.72,
    tolerance: { absolute: 0.005 },
    from: 'textbook on design for manufacture (remembered): 1400 cm3',
  },

  {
    formula: 'slow-shot.travel-hole-closed',
    inputs: { diameter: 70, ratio: 1.25 },
    expected: 87.5,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: 1.25 x 70 mm`,
  },
  {
    formula: 'slow-shot.hole-speed',
    inputs: { limit: 0.3, speed: 0.455 },
    expected: 0.3,
    tolerance: { absolute: 1e-12 },
    from: `${HAND}: the rule of thumb for the pour hole`,
  },
  {
    formula: 'slow-shot.hole-speed',
    inputs: { limit: 0.3, speed: 0.2 },
    expected: 0.2,
    tolerance: { absolute: 1e-12 },
    from: `${HAND}: no faster than the slow shot`,
  },
  // 87.5 + 0.25 x (190.5 - 87.5)
  {
    formula: 'slow-shot.travel-ramp-end',
    inputs: { hole_travel: 87.5, full_travel: 190.5, share: 0.25 },
    expected: 113.25,
    tolerance: { absolute: 1e-9 },
    from: EXAMPLE,
  },
  {
    formula: 'slow-shot.travel-ramp-end',
    inputs: { hole_travel: 200, full_travel: 190, share: 0.25 },
    expected: 200,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: full before the hole is closed',
  },
  // 4 m/s after 80 mm and after 30 mm.
  {
    formula: 'slow-shot.acceleration',
    inputs: { speed_to: 4, travel_to: 80 },
    expected: 100,
    tolerance: { absolute: 1e-9 },
    from: 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): 80 mm of stroke to reach 4 m/s',
  },
  {
    formula: 'slow-shot.acceleration',
    inputs: { speed_to: 4, travel_to: 30 },
    expected: 266.7,
    tolerance: { absolute: 0.05 },
    from: 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): 30 mm of stroke to reach 4 m/s',
  },
  {
    formula: 'slow-shot.acceleration',
    inputs: { speed_from: 0.458, speed_to: 2.91, travel_from: 202, travel_to: 229.5 },
    expected: 150,
    tolerance: { relative: 0.003 },
    from: `${EXAMPLE}; the ramp takes 27.5 mm`,
  },
  ...(
    [
      [106, 150],
      [200, 200],
      [400, 267],
    ] as const
  ).map(([needed, expected]) => ({
    formula: 'slow-shot.fast-acceleration',
    inputs: { needed, usual: 150, greatest: 267 },
    expected,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: the usual, what is needed, and no more than machines give`,
  })),
  { formula: 'slow-shot.change-over', inputs: { full_travel: 190.5, wanted: 202 }, expected: 202, tolerance: { absolute: 1e-9 }, from: EXAMPLE },
  {
    formula: 'slow-shot.change-over',
    inputs: { full_travel: 190.5, wanted: 180 },
    expected: 190.5,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: not before the sleeve is full',
  },
  {
    formula: 'slow-shot.travel-fast',
    inputs: { change_over: 202, slow_speed: 0.458, fast_speed: 2.91, acceleration: 150 },
    expected: 229.5,
    tolerance: { absolute: 0.05 },
    from: EXAMPLE,
  },
  {
    formula: 'slow-shot.gate-speed',
    inputs: { gate_travel: 229.5, change_over: 202, slow_speed: 0.458, fast_speed: 2.91, acceleration: 150 },
    expected: 2.91,
    tolerance: { absolute: 0.005 },
    from: EXAMPLE,
  },
  // v^2 = 0.25 + 2 x 100 x 0.006 = 1.45
  {
    formula: 'slow-shot.gate-speed',
    inputs: { gate_travel: 106, change_over: 100, slow_speed: 0.5, fast_speed: 3, acceleration: 100 },
    expected: 1.2042,
    tolerance: { absolute: 5e-5 },
    from: `${HAND}: v^2 = 0.5^2 + 2 a s`,
  },
  {
    formula: 'slow-shot.travel-filled',
    inputs: { gate_travel: 229.5, cavities: 1, volume: 560, diameter: 70 },
    expected: 375.0,
    tolerance: { absolute: 0.05 },
    from: EXAMPLE,
  },
  {
    formula: 'slow-shot.travel-filled',
    inputs: { gate_travel: 229.5, cavities: 1, volume: 500, overflows: 60, shrink: 0.6, diameter: 70 },
    expected: 377.6,
    tolerance: { absolute: 0.06 },
    from: `${EXAMPLE}; the die larger than the casting by 0.6 %`,
  },
  {
    formula: 'slow-shot.travel-brake',
    inputs: { filled_travel: 375, distance: 12.5 },
    expected: 362.5,
    tolerance: { absolute: 1e-9 },
    from: `${EXAMPLE}; braked over 12.5 mm`,
  },
  { formula: 'slow-shot.travel-end', inputs: { length: 400, biscuit: 25 }, expected: 375, tolerance: { absolute: 1e-9 }, from: EXAMPLE },
  // 87.5 mm from rest to 0.3 m/s: the mean speed is 0.15 m/s.
  {
    formula: 'slow-shot.phase-time',
    inputs: { travel_to: 87.5, speed_to: 0.3 },
    expected: 583.3,
    tolerance: { absolute: 0.05 },
    from: `${HAND}: at a mean speed of 0.15 m/s`,
  },
  {
    formula: 'slow-shot.phase-time',
    inputs: { travel_from: 229.5, travel_to: 375, speed_from: 2.91, speed_to: 2.91 },
    expected: 50,
    tolerance: { absolute: 0.005 },
    from: `${EXAMPLE}; filled in 50 ms`,
  },
  {
    formula: 'slow-shot.time',
    inputs: { start: 583, ramp: 68, steady: 195 },
    expected: 0.846,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: the sum in seconds`,
  },
  {
    formula: 'slow-shot.fill-duration',
    inputs: { gate_travel: 229.5, fast_travel: 229.5, brake_travel: 375, gate_speed: 2.91, fast_speed: 2.91, brake_time: 0 },
    expected: 50,
    tolerance: { absolute: 0.005 },
    from: `${EXAMPLE}; full speed at the gate, not braked`,
  },
  // 10 mm at a mean of 2 m/s, 60 mm at 3 m/s, braking.
  {
    formula: 'slow-shot.fill-duration',
    inputs: { gate_travel: 100, fast_travel: 110, brake_travel: 170, gate_speed: 1, fast_speed: 3, brake_time: 6 },
    expected: 31,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: 5 + 20 + 6 ms`,
  },

  ...WAVES.flatMap(([inputs, trapped, closing, head]) => [
    { formula: 'slow-shot.wave-trapped', inputs, expected: trapped, tolerance: { relative: 0.015 }, from: OTHER_SCHEME },
    { formula: 'slow-shot.wave-closing', inputs, expected: closing, tolerance: { relative: 0.002 }, from: OTHER_SCHEME },
    { formula: 'slow-shot.wave-head', inputs, expected: head, tolerance: { relative: 0.003 }, from: OTHER_SCHEME },
  ]),
  {
    formula: 'slow-shot.wave-trapped',
    inputs: { diameter: 70, fill: 52.37, length: 400, hole_travel: 87.5, hole_speed: 0.3, ramp_end: 113.3, speed: 0.4545 },
    expected: 3.59,
    tolerance: { relative: 0.05 },
    from: `${OTHER_SCHEME}; half a per cent of the air, at the critical speed`,
  },
  {
    formula: 'slow-shot.wave-share',
    inputs: { trapped: 85.05, air: 733.2 },
    expected: 11.6,
    tolerance: { absolute: 0.05 },
    from: `${HAND}: 85.05 of 733.2 cm3`,
  },
];
