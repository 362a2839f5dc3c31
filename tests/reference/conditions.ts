export type Numbers = Readonly<Record<string, number>>;

interface Points {
  readonly holds: readonly Numbers[];
  readonly breaks: readonly Numbers[];
}

/** An input that may be as large as `greatest` and no larger. */
const atMost = (names: string | readonly string[], greatest: number): Points => ({ holds: [at(names, greatest)], breaks: [at(names, greatest + 1e-6)] });
const below = (names: string | readonly string[], end: number): Points => ({ holds: [at(names, end - 1e-6)], breaks: [at(names, end), at(names, end + 1)] });
const atLeast = (name: string, least: number): Points => ({ holds: [at(name, least)], breaks: [at(name, least - 1e-6)] });
const at = (names: string | readonly string[], value: number): Numbers => Object.fromEntries([names].flat().map((name) => [name, value]));

/** One input must be greater than another; equal is not enough. */
const greater = (large: string, small: string): Points => ({
  holds: [{ [large]: 100.5, [small]: 100 }],
  breaks: [
    { [large]: 100, [small]: 100 },
    { [large]: 99.5, [small]: 100 },
  ],
});
/** One input must be as great as another, or greater. */
const noLess = (large: string, small: string): Points => ({
  holds: [
    { [large]: 100, [small]: 100 },
    { [large]: 100.5, [small]: 100 },
  ],
  breaks: [{ [large]: 99.5, [small]: 100 }],
});

const HOTTER = ['metal', 'metal_temperature'];
const hotMetal = (metal: number, die: number): Numbers => ({ ...at(HOTTER, metal), surface: die, die_temperature: die });
/** At 30 mm a sleeve of 100 mm holds pi / 4 * 3^2 * 10 = 70.69 cm3. */
const SLEEVE = { diameter: 30, length: 100 };
/** A plunger of 64 mm in a sleeve of 400 mm, half filled, the biscuit of no account. */
const AT_HAND = { diameter: 64, fill: 50, biscuit: 0, density: 2.5, liquid_density: 2.5, length: 400, least: 0, runner_depth: 0, share: 0 };
const SLEEVE_TO_FILL = { volume: 1000 * Math.PI, biscuit_volume: 0, density: 2.5, liquid_density: 2.5, length: 300, runner_depth: 0 };
/** In a sleeve of 100 mm with 35.34 cm3 of metal the metal is at the plunger's end after 50 mm; a runner of a fifth takes 10 mm more. */
const SHOT = { ...SLEEVE, volume: 35.343, runner_volume: 7.0686 };

/**
 * For every condition of a formula, by its text: points at its boundary or a hair inside, and points at it or a hair outside.
 * They were worked out from the words of the condition, by hand where it is more than a comparison.
 */
export const HOLDS_AND_BREAKS: Readonly<Record<string, Points>> = {
  // 2 cm2 are 200 mm2.
  'a foot no smaller than the metal in it': { holds: [{ foot: 2, area: 200 }], breaks: [{ foot: 2, area: 200.001 }] },
  'thick metal that is part of the shot': noLess('mass', 'thick_mass'),
  // A hole of 10 mm is all stock with 5 mm a side.
  'less stock than half the diameter': {
    holds: [{ diameter: 10, stock: 4.99 }],
    breaks: [
      { diameter: 10, stock: 5 },
      { diameter: 10, stock: 5.2 },
    ],
  },
  'a use share of 100 % or less': atMost('use_share', 100),
  'a reject share below 100 %': below('reject_share', 100),
  'some parts are good': below('reject_share', 100),
  'no more room at one end than at both': {
    holds: [
      { low: 60, room: 60 },
      { low: 0, room: 60 },
    ],
    breaks: [{ low: 60.001, room: 60 }],
  },
  'a clamp factor of 1 or more': atLeast('factor', 1),
  'a lock angle below 90 degrees': below('lock_angle', 90),
  // A quarter and three quarters of the half span are the whole kernel; the sign of an offset does not matter.
  '|offset_x| / half_span_x + |offset_y| / half_span_y of 1 or less': {
    holds: [
      { half_span_x: 400, half_span_y: 200, offset_x: 100, offset_y: 150 },
      { half_span_x: 400, half_span_y: 200, offset_x: -100, offset_y: -150 },
      { half_span_x: 400, half_span_y: 200, offset_x: 0, offset_y: 0 },
    ],
    breaks: [
      { half_span_x: 400, half_span_y: 200, offset_x: 100, offset_y: 151 },
      { half_span_x: 400, half_span_y: 200, offset_x: -100, offset_y: -151 },
      { half_span_x: 400, half_span_y: 200, offset_x: 401, offset_y: 0 },
    ],
  },
  'a metal hotter than the die': { holds: [hotMetal(400.5, 400)], breaks: [hotMetal(400, 400), hotMetal(399, 400)] },
  'a die that is hotter before the shot than the coolant': greater('before', 'coolant'),
  'gate_temperature >= liquidus': noLess('gate_temperature', 'liquidus'),
  'liquidus >= solidus': noLess('liquidus', 'solidus'),
  'a solidus at least 20 K above the die': {
    holds: [{ solidus: 320, die_temperature: 300 }],
    breaks: [
      { solidus: 319.9, die_temperature: 300 },
      { solidus: 300, die_temperature: 320 },
    ],
  },
  'an ejection temperature between that of the die and the solidus': {
    holds: [
      { eject_temperature: 305.1, die_temperature: 300, solidus: 500 },
      { eject_temperature: 499.9, die_temperature: 300, solidus: 500 },
    ],
    breaks: [
      { eject_temperature: 305, die_temperature: 300, solidus: 500 },
      { eject_temperature: 304, die_temperature: 300, solidus: 500 },
      { eject_temperature: 500, die_temperature: 300, solidus: 500 },
      { eject_temperature: 501, die_temperature: 300, solidus: 500 },
    ],
  },
  'a block wider than the steel around the field': {
    holds: [{ block: 150.1, steel: 60, rest: 30 }],
    breaks: [
      { block: 150, steel: 60, rest: 30 },
      { block: 100, steel: 60, rest: 30 },
    ],
  },
  'slides that leave the halves some of the heat': below('slides', 100),
  'a warm side that is warmer than the cold one': greater('warm', 'cold'),
  'a line that lies wholly below the surface': {
    holds: [{ depth: 5.1, diameter: 10 }],
    breaks: [
      { depth: 5, diameter: 10 },
      { depth: 4, diameter: 10 },
    ],
  },
  'a pitch wider than a line': greater('pitch', 'diameter'),
  'a saving: before > after': greater('before', 'after'),
  'one set or more': atLeast('sets', 1),
  // 100 % of what leaks is still leaking after all of it was sealed in vain, only if everything leaks: 100 x 100 in percent.
  'some castings that hold tight': {
    holds: [
      { leaking: 100, still: 99.9 },
      { leaking: 0, still: 100 },
    ],
    breaks: [{ leaking: 100, still: 100 }],
  },
  'an efficiency of 100 % or less': atMost('efficiency', 100),
  'large_force > small_force': greater('large_force', 'small_force'),
  'pouring that is no longer than ladling': noLess('ladle', 'pour'),
  'less saved than the cycle takes': greater('time', 'saved'),
  'a block wider than the steel at its edges': {
    holds: [{ block: 120.1, steel: 60 }],
    breaks: [
      { block: 120, steel: 60 },
      { block: 100, steel: 60 },
    ],
  },
  'a bore smaller than the core': greater('diameter', 'bore'),
  'one cavity or more': atLeast('cavities', 1),
  'room between the rails': {
    holds: [{ width: 120.1, rail: 60 }],
    breaks: [
      { width: 120, rail: 60 },
      { width: 100, rail: 60 },
    ],
  },
  'the constant in its inch form (15 or more)': atLeast('constant', 15),
  'gate_temperature > flow_temperature': greater('gate_temperature', 'flow_temperature'),
  'flow_temperature > die_temperature': greater('flow_temperature', 'die_temperature'),
  'gate_temperature > die_temperature': greater('gate_temperature', 'die_temperature'),
  'gate_temperature > liquidus - 61 K': {
    holds: [{ gate_temperature: 539.1, liquidus: 600 }],
    breaks: [
      { gate_temperature: 539, liquidus: 600 },
      { gate_temperature: 500, liquidus: 600 },
    ],
  },
  'least <= greatest': noLess('greatest', 'least'),
  'least < greatest': greater('greatest', 'least'),
  'T_e > T_h': greater('eject_temperature', 'handling_temperature'),
  'a loss below 100 %': below('loss', 100),
  'a tip that takes less than the whole': greater('heat', 'tip'),
  'losses above the heat rate': greater('losses', 'rate'),
  'solidus > eject_temperature': greater('solidus', 'eject_temperature'),
  'shares that leave something to the lines': {
    holds: [{ spray: 60, surroundings: 39.9 }],
    breaks: [
      { spray: 60, surroundings: 40 },
      { spray: 60, surroundings: 60 },
    ],
  },
  'a die warmer than the spray': greater('die_temperature', 'spray_temperature'),
  'a die warmer than the room': greater('die_temperature', 'room'),
  'a cycle longer than the time in the die': {
    holds: [{ cycle: 10.5, dwell: 10 }],
    breaks: [
      { cycle: 10.4, dwell: 10 },
      { cycle: 9.5, dwell: 10 },
    ],
  },
  'something left for the lines to take': {
    holds: [{ spray_share: 60, surroundings_share: 35 }],
    breaks: [
      { spray_share: 60, surroundings_share: 35.1 },
      { spray_share: 96, surroundings_share: 0 },
    ],
  },
  'a coolant below the solidus': {
    holds: [{ coolant: 449.9, solidus: 500 }],
    breaks: [
      { coolant: 450, solidus: 500 },
      { coolant: 520, solidus: 500 },
    ],
  },
  'peak >= before': noLess('peak', 'before'),
  'a spray with water in it': atLeast('dilution', 1),
  'Q > Q_t': greater('heat', 'less'),
  'least_rate <= greatest_rate': noLess('greatest_rate', 'least_rate'),
  'no more poured than charged': noLess('charged', 'poured'),
  'a scrap share below 100 %': below('scrap', 100),
  'holding >= liquidus': noLess('holding', 'liquidus'),
  'liquidus above the temperature as charged': greater('liquidus', 'room'),
  'a shot that weighs as much as its castings': noLess('shot_mass', 'part_mass'),
  'a temperature above absolute zero': {
    holds: [at(['temperature', 'gas_temperature'], -273.1)],
    breaks: [at(['temperature', 'gas_temperature'], -273.15), at(['temperature', 'gas_temperature'], -300)],
  },
  'temperatures above absolute zero': {
    holds: [
      { gas_temperature: -273.1, metal_temperature: 600 },
      { gas_temperature: 100, metal_temperature: -273.1 },
    ],
    breaks: [
      { gas_temperature: -273.15, metal_temperature: 600 },
      { gas_temperature: 100, metal_temperature: -273.15 },
    ],
  },
  'a trapped share of 100 % or less': atMost('trapped', 100),
  'a fed share of 100 % or less': atMost('fed', 100),
  'a discharge coefficient of 1 or less': atMost('discharge', 1),
  // Greatest power: a third of the dry-shot pressure at sqrt(1/3) of the flow; 100 kN at 3 m/s give 100 * 3 * 2 / (3 sqrt(3)) = 115.47 kW.
  'a machine with the power for this flow and pressure, whatever the plunger': {
    holds: [{ force: 100, dry_speed: 3, flow: 115.4, pressure: 1 }],
    breaks: [
      { force: 100, dry_speed: 3, flow: 115.6, pressure: 1 },
      { force: 100, dry_speed: 3, flow: 11.56, pressure: 10 },
    ],
  },
  'rod_diameter < cylinder_diameter': greater('cylinder_diameter', 'rod_diameter'),
  'pressure < static_pressure': greater('static_pressure', 'pressure'),
  // 100 cm3 of liquid at 2.5 g/cm3 weigh 250 g, as 100 cm3 of biscuit do at 2.5 g/cm3, or 92.59 cm3 at 2.7.
  'a biscuit that is part of the shot': {
    holds: [
      { biscuit_volume: 99.9, density: 2.5, liquid_volume: 100, liquid_density: 2.5 },
      { biscuit_volume: 92.5, density: 2.7, liquid_volume: 100, liquid_density: 2.5 },
    ],
    breaks: [
      { biscuit_volume: 100, density: 2.5, liquid_volume: 100, liquid_density: 2.5 },
      { biscuit_volume: 92.7, density: 2.7, liquid_volume: 100, liquid_density: 2.5 },
    ],
  },
  'a biscuit no longer than the sleeve': greater('length', 'thickness'),
  'a share above -100 %': { holds: [{ share: -99.9 }], breaks: [{ share: -100 }, { share: -101 }] },
  'allowances that are the same, or differ by 0.002 % or more: nobody knows them closer': {
    holds: [
      { before: 0.5, after: 0.5 },
      { before: 0, after: 0.002 },
      { before: 0.002, after: 0 },
    ],
    breaks: [
      { before: 0.5, after: 0.5019 },
      { before: 0.5, after: 0.4981 },
    ],
  },
  'draft below 90 degrees': below('draft', 90),
  // At 45 degrees a side leans over by its height: 10 mm wide at the root, 5 mm high, nothing is left.
  'a rib that the draft leaves wider than nothing at its tip (0.5 * root_width > height * tan(draft))': {
    holds: [{ root_width: 10, height: 4.99, draft: 45 }],
    breaks: [
      { root_width: 10, height: 5.01, draft: 45 },
      { root_width: 4, height: 4, draft: 45 },
    ],
  },
  'no more branches than cavities in the row': noLess('cavities', 'branches'),
  // A section as wide as deep, of sides at 45 degrees to each other, closes to a point; the mean of the two ratios counts.
  'side walls that do not meet': {
    holds: [
      { width_least: 1, width_greatest: 2, wall_draft: 44.9 },
      { width_least: 0.4, width_greatest: 0.6, wall_draft: 26.5 },
    ],
    breaks: [
      { width_least: 1, width_greatest: 2, wall_draft: 45 },
      { width_least: 0.4, width_greatest: 0.6, wall_draft: 26.6 },
      { width_least: 2, width_greatest: 3, wall_draft: 100 },
    ],
  },
  'a spread below 180 degrees': below('spread', 180),
  'a fall below 100 %': below('fall', 100),
  'a position within the length': noLess('length', 'position'),
  'a drop below 100 %': below('drop', 100),
  'eject_temperature >= die_temperature >= room_temperature': {
    holds: [
      { eject_temperature: 300, die_temperature: 300, room_temperature: 20 },
      { eject_temperature: 300, die_temperature: 20, room_temperature: 20 },
    ],
    breaks: [
      { eject_temperature: 299, die_temperature: 300, room_temperature: 20 },
      { eject_temperature: 300, die_temperature: 19, room_temperature: 20 },
    ],
  },
  // 20 ppm/K over 300 K is what 12 ppm/K is over 500 K.
  'an alloy that contracts more than the die has grown': {
    holds: [{ alloy_expansion: 20, eject_temperature: 320.1, steel_expansion: 12, die_temperature: 520, room_temperature: 20 }],
    breaks: [
      { alloy_expansion: 20, eject_temperature: 320, steel_expansion: 12, die_temperature: 520, room_temperature: 20 },
      { alloy_expansion: 20, eject_temperature: 319, steel_expansion: 12, die_temperature: 520, room_temperature: 20 },
    ],
  },
  'metal that fits in the sleeve': { holds: [{ ...SLEEVE, volume: 70.68 }], breaks: [{ ...SLEEVE, volume: 70.7 }] },
  'runner_volume < volume': greater('volume', 'runner_volume'),
  'fast_speed >= slow_speed': noLess('fast_speed', 'slow_speed'),
  // From 1 to 5 m/s at 200 m/s2 takes (25 - 1) / 400 = 60 mm, which is the travel of this shot up to the gate.
  'a ramp that fits into the travel before the metal is at the gate': {
    holds: [{ ...SHOT, fast_speed: 5, slow_speed: 1, acceleration: 200.1 }],
    breaks: [
      { ...SHOT, fast_speed: 5, slow_speed: 1, acceleration: 199.9 },
      { ...SHOT, fast_speed: 8, slow_speed: 1, acceleration: 200 },
    ],
  },
  'a fill of 100 % or less': atMost('fill', 100),
  'an angle below 90 degrees': below('angle', 90),
  'travel_to > travel_from': greater('travel_to', 'travel_from'),
  'travel_to >= travel_from': noLess('travel_to', 'travel_from'),
  'speed_to >= speed_from': noLess('speed_to', 'speed_from'),
  'brake_travel >= fast_travel': noLess('brake_travel', 'fast_travel'),
  'fast_travel >= gate_travel, or a gate_speed that is the fast_speed': {
    holds: [
      { fast_travel: 300, gate_travel: 300, gate_speed: 1, fast_speed: 3 },
      { fast_travel: 200, gate_travel: 300, gate_speed: 3, fast_speed: 3 },
    ],
    breaks: [
      { fast_travel: 299, gate_travel: 300, gate_speed: 1, fast_speed: 3 },
      { fast_travel: 299, gate_travel: 300, gate_speed: 4, fast_speed: 3 },
    ],
  },
  'fill_greatest > fill_least': greater('fill_greatest', 'fill_least'),
  'loss_greatest >= loss_least': noLess('loss_greatest', 'loss_least'),
  // At half fill and 64 mm the linear rule gives 0.1149 * 0.5 * 8 = 0.4596 m/s.
  'a critical speed above speed with the plunger at hand': {
    holds: [{ ...AT_HAND, speed: 0.4595 }],
    breaks: [
      { ...AT_HAND, speed: 0.4597 },
      { ...AT_HAND, fill: 100, speed: 0 },
    ],
  },
  // A biscuit of 25 mm, 27 mm as a liquid, is 6.75 % of 400 mm.
  'metal besides the biscuit': {
    holds: [{ ...AT_HAND, biscuit: 25, density: 2.7, liquid_density: 2.5, fill: 6.76 }],
    breaks: [
      { ...AT_HAND, biscuit: 25, density: 2.7, liquid_density: 2.5, fill: 6.74 },
      { ...AT_HAND, biscuit: 80, fill: 20 },
    ],
  },
  // A biscuit that stays takes 10 % of 300 mm. One as thick as the plunger is wide fills least at 200 mm: 1000 pi cm3 are 100 mm, the biscuit 200.
  'metal besides the biscuit, and a sleeve that some plunger fills so little': {
    holds: [
      { ...SLEEVE_TO_FILL, least: 30, share: 0, fill: 10.01 },
      { ...SLEEVE_TO_FILL, least: 30, share: 1, length: 1000, fill: 30.01 },
    ],
    breaks: [
      { ...SLEEVE_TO_FILL, least: 30, share: 0, fill: 10 },
      { ...SLEEVE_TO_FILL, least: 30, share: 1, length: 1000, fill: 29.99 },
      { ...SLEEVE_TO_FILL, least: 0, share: 0, biscuit_volume: 1000 * Math.PI, fill: 50 },
    ],
  },
  // Two cavities of 20 cm3, each way larger by 2 %, take 42.448 cm3, and the runner 10.
  'metal that fills runner and cavities': {
    holds: [{ poured: 52.45, runner_volume: 10, cavities: 2, volume: 20, shrink: 2 }],
    breaks: [{ poured: 52.44, runner_volume: 10, cavities: 2, volume: 20, shrink: 2 }],
  },
  // 135 g at 2.7 g/cm3 are 50 cm3.
  'metal that is more than castings and runner': {
    holds: [{ mass: 0.13501, density: 2.7, runner_volume: 10, cavities: 2, volume: 20 }],
    breaks: [{ mass: 0.13499, density: 2.7, runner_volume: 10, cavities: 2, volume: 20 }],
  },
  'biscuit < length': greater('length', 'biscuit'),
  'a fill below 100 %': below('fill', 100),
  'ramp_end >= hole_travel': noLess('ramp_end', 'hole_travel'),
  'speed >= hole_speed': noLess('speed', 'hole_speed'),
  // A sleeve of 400 mm at a quarter fill is full when the plunger has gone 300 mm.
  'a slow speed that is reached before the sleeve is full': {
    holds: [{ ramp_end: 300, length: 400, fill: 25 }],
    breaks: [{ ramp_end: 300.1, length: 400, fill: 25 }],
  },
  'a pitch below the size': greater('size', 'pitch'),
  'a pressure wanted below that at the start': greater('start', 'end'),
  'a stroke below 1': below('stroke', 1),
  'a stroke between 0 and 1': { holds: [{ stroke: 1e-6 }, { stroke: 1 - 1e-6 }], breaks: [{ stroke: 0 }, { stroke: 1 }, { stroke: 2 }, { stroke: -1 }] },
  'a back pressure of 1 or less': atMost('back_pressure', 1),
  // Air compressed to a tenth without a loss of heat: 10^1.4 = 25.12 times the pressure.
  'a wanted pressure above the pressure behind the vent and below that of a closed cavity': {
    holds: [
      { pressure: 1.02, back_pressure: 1, stroke: 0.9 },
      { pressure: 25.1, back_pressure: 1, stroke: 0.9 },
    ],
    breaks: [
      { pressure: 1.009, back_pressure: 1, stroke: 0.9 },
      { pressure: 25.2, back_pressure: 1, stroke: 0.9 },
    ],
  },
  'a tank pressure below the pressure wanted, and that below the one at the start': {
    holds: [{ tank: 99.9, end: 100, start: 100.1 }],
    breaks: [
      { tank: 100, end: 100, start: 900 },
      { tank: 10, end: 900, start: 900 },
      { tank: 120, end: 100, start: 900 },
      { tank: 10, end: 901, start: 900 },
    ],
  },
};
