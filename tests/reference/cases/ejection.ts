import type { Case } from '../case.ts';

const CUP = 'worked case of the aluminium cup (d 60, t 3, 50 mm long, 50 GPa, 21e-6, 200 K, mu 0.3, nu 0.33) by the form in ROSATO-MOLDING';
const cupMetal = { modulus: 50, expansion: 21, temperature_drop: 200, wall: 3, poisson: 0.33, hot_yield: 40 };
const cup = { ...cupMetal, core_diameter: 60 };
/** pi x 60 x 50 mm2. */
const CUP_AREA = 94.248;
const DRAFT = 'derived, worked by hand: (mu cos b - sin b) / (1 + mu sin b cos b) at mu 0.3';

export const cases: readonly Case[] = [
  { formula: 'ejection.contact-pressure', inputs: { ...cup, hot_yield: 300 }, expected: 25.1, tolerance: { absolute: 0.06 }, from: `${CUP}: elastic` },
  { formula: 'ejection.contact-pressure', inputs: cup, expected: 4, tolerance: { relative: 1e-9 }, from: `${CUP}: capped at 40 MPa` },
  {
    formula: 'ejection.hoop-stress',
    inputs: { modulus: 50, expansion: 21, temperature_drop: 200, poisson: 0.33 },
    expected: 251,
    tolerance: { absolute: 0.6 },
    from: CUP,
  },
  {
    formula: 'ejection.force',
    inputs: { contact_pressure: 25.1497, contact_area: CUP_AREA, friction: 0.3, draft: 0 },
    expected: 71.1,
    tolerance: { absolute: 0.06 },
    from: `${CUP}: elastic`,
  },
  {
    formula: 'ejection.force',
    inputs: { contact_pressure: 4, contact_area: CUP_AREA, friction: 0.3, draft: 0 },
    expected: 11.3,
    tolerance: { absolute: 0.06 },
    from: `${CUP}: capped at 40 MPa`,
  },
  ...(
    [
      [0.5, 0.2905],
      [1, 0.281],
      [2, 0.2622],
    ] as const
  ).map(([draft, expected]) => ({
    formula: 'ejection.force',
    inputs: { contact_pressure: 10, contact_area: 1, friction: 0.3, draft },
    expected,
    tolerance: { absolute: 0.00006 },
    from: DRAFT,
  })),
  {
    formula: 'ejection.force',
    inputs: { contact_pressure: 10, contact_area: 100, friction: 0.1, draft: 6 },
    expected: 0,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: steeper than the friction angle of 5.7 degrees',
  },
  {
    formula: 'ejection.boss-pressure',
    inputs: { ...cup, core_diameter: 6, temperature_drop: 400 },
    expected: 27.726,
    tolerance: { absolute: 0.0006 },
    from: 'derived, worked by hand: a ring twice as wide as its bore yields through at 40 ln 2 (Tresca)',
  },
  {
    formula: 'ejection.boss-pressure',
    inputs: { ...cup, core_diameter: 6, temperature_drop: 10, hot_yield: 300 },
    expected: 5.25,
    tolerance: { absolute: 0.03 },
    from: 'derived, worked by hand: Lamé with (4 + 1) / (4 - 1) + 0.33 = 1.997 under a stress of 10.5 MPa, 5.258',
  },
  {
    formula: 'ejection.boss-pressure',
    inputs: { ...cup, core_diameter: 600 },
    expected: 0.4,
    tolerance: { relative: 0.006 },
    from: 'limiting case: a thin wall, 40 x 2 x 3 / 600',
  },
  {
    formula: 'ejection.floor-force',
    inputs: { ...cupMetal, height: 50, outline: 188.4956, closed: 100, share: 1, friction: 0.3, draft: 0 },
    expected: 6.786,
    tolerance: { absolute: 0.0006 },
    from: 'derived, worked by hand: the floor of the cup in tension at 40 MPa, 40 x 3 x 188.5 N, times 0.3',
  },
  {
    formula: 'ejection.floor-force',
    inputs: { ...cupMetal, hot_yield: 300, temperature_drop: 50, height: 1.5, outline: 100, closed: 50, share: 0.5, friction: 0.3, draft: 0 },
    expected: 0.8815,
    tolerance: { absolute: 0.0001 },
    from: 'derived, worked by hand: elastic, 52.5 / 0.67 MPa, walls of half the thickness, half closed, half of the pull',
  },
  {
    formula: 'ejection.closed-share',
    inputs: { area: 268, box: 335 },
    expected: 80,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 268 / 335',
  },
  { formula: 'ejection.closed-share', inputs: { area: 110, box: 100 }, expected: 100, tolerance: { relative: 1e-9 }, from: 'limiting case: no more than all' },
  {
    formula: 'ejection.temperature-drop',
    inputs: { coherent_temperature: 540, eject_temperature: 385, expansion: 21.8 },
    expected: 155,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: A380, solidus 540 degC, with a core that keeps its temperature',
  },
  {
    formula: 'ejection.temperature-drop',
    inputs: { coherent_temperature: 540, eject_temperature: 385, expansion: 24, die_expansion: 12, die_change: 50 },
    expected: 130,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: a core of half the expansion cools by 50 K, worth 25 K of the casting',
  },
  {
    formula: 'ejection.temperature-drop',
    inputs: { coherent_temperature: 380, eject_temperature: 390, expansion: 27 },
    expected: 0,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: ejected before it holds together',
  },
  {
    formula: 'ejection.release-travel',
    inputs: { contact_pressure: 4, core_diameter: 60, wall: 3, modulus: 50, draft: 1, height: 50 },
    expected: 1.375,
    tolerance: { absolute: 0.0006 },
    from: 'derived, worked by hand: the cup at 40 MPa of 50 GPa springs back by 0.0008 of its radius of 30 mm, over tan 1 degree',
  },
  {
    formula: 'ejection.release-travel',
    inputs: { contact_pressure: 4, core_diameter: 60, wall: 3, modulus: 50, draft: 0, height: 50 },
    expected: 50,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: without draft it grips to the end',
  },
  {
    formula: 'ejection.grip-diameter',
    inputs: { hot_yield: 40, wall: 3, grip_pressure: 27.726 },
    expected: 6,
    tolerance: { absolute: 0.0006 },
    from: 'derived, worked by hand: the ring twice as wide as its bore, turned round',
  },
  {
    formula: 'ejection.force-at-yield',
    inputs: { force: 11.3, hot_yield: 40, other_yield: 80 },
    expected: 22.6,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: twice the yield strength, twice the force',
  },
  {
    formula: 'ejection.force-use',
    inputs: { force: 55, machine: 220 },
    expected: 25,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: a quarter',
  },

  {
    formula: 'ejection.inner-outline',
    inputs: { side_a: 238, side_b: 142, wall: 3.2 },
    expected: 734.4,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 2 x (231.6 + 135.6)',
  },
  {
    formula: 'ejection.inner-outline',
    inputs: { side_a: 238, side_b: 142, wall: 3.2, cores: 2 },
    expected: 367.2,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: half of 734.4',
  },
  { formula: 'ejection.core-diameter', inputs: { outline: 188.496 }, expected: 60, tolerance: { absolute: 0.0005 }, from: 'limiting case: a circle of 60 mm' },
  {
    formula: 'ejection.face-area',
    inputs: { outline: 734.4, height: 80 },
    expected: 587.52,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 734.4 x 80 mm2',
  },
  {
    formula: 'ejection.upright-area',
    inputs: { box: 40, volume: 20, wall: 2, projected_area: 70 },
    expected: 30,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 100 cm2 of sheet of which 70 lie flat',
  },
  {
    formula: 'ejection.upright-area',
    inputs: { box: 20, volume: 20, wall: 2, projected_area: 70 },
    expected: 20,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: no more than the box of the envelope has',
  },
  {
    formula: 'ejection.upright-area',
    inputs: { box: 40, volume: 20, wall: 2, projected_area: 100 },
    expected: 0,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: a flat plate has no inside',
  },
  {
    formula: 'ejection.mean-height',
    inputs: { area: 30, outline: 300 },
    expected: 10,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 3000 mm2 over 300 mm',
  },
  {
    formula: 'ejection.outline',
    inputs: { area: 30, height: 10 },
    expected: 300,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 3000 mm2 over 10 mm',
  },
];
