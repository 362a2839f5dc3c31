import type { Case } from '../case.ts';

const hand = (what: string): string => `derived, worked by hand: ${what}`;
const exact = { relative: 1e-9 } as const;
const CAVITATION = 'table of machine cost by cavities (BASILIUS-CAVITATION): 40 an hour';
const LADDER = 'price ladder of moulds with 1, 2, 4, 8 and 16 cavities, 5000 to 40000, of the same page';
const AFS = 'formulas for dross sold and dross tolled (AFS-MELT-COST), worked by hand: loss 4 %, metal 2.5, dross 0.5, toll 0.4, recovery 60 %';
const SIGNS = 'metal balance of a plant for signs (MNTAP-ZINC): 1000 lb of new metal give 120 lb of good parts, 20 lb of dross, 860 lb to remelt';
const BLOCKS = 'impregnation example (GODFREY-WING-COST): 3 % leak, 300 a block, 8 to impregnate, 5 % still leak';

/** 100,000 castings, 60 an hour, 36 s of machine and 18 s of trimming at 40 an hour a shot, die 20,000 and trim die 3,000. */
const WORKED = {
  parts: 100000,
  machine_rate: 60,
  cycle: 36,
  trim_time: 18,
  trim_rate: 40,
  die_cost: 20000,
  trim_die_cost: 3000,
  exponent: 0.7,
} as const;
/** Total money at a count of cavities, summed apart from the closed form: hours at the machine and at the press, then the dies. */
const money = (n: number): number => (100000 / n) * (0.01 * 60 + 0.005 * 40) + 23000 * n ** 0.7;
/** The count at which that sum is least, found by looking at every thousandth. */
const least = Array.from({ length: 8000 }, (_, i) => 1 + i / 1000).reduce((best, n) => (money(n) < money(best) ? n : best), 1);

const printed = (cycle: number, cavities: number, expected: number): Case => ({
  formula: 'cost.machine',
  inputs: { rate: 40, time: cycle, cavities },
  expected,
  tolerance: { absolute: 0.0005 },
  from: `${CAVITATION}, ${cycle} s, ${cavities} cavities`,
});
const breakEven = (extra: number, before: number, after: number, expected: number): Case => ({
  formula: 'cost.break-even',
  inputs: { extra, before, after },
  expected,
  tolerance: { relative: 1e-6 },
  from: `${LADDER}, worked by hand: ${extra} more for the next count`,
});
const machine = (cycle: number, cavities: number): number => 40 / (3600 / cycle) / cavities;

export const cases: readonly Case[] = [
  printed(20, 1, 0.222),
  printed(20, 2, 0.111),
  printed(22, 4, 0.061),
  printed(24, 8, 0.033),
  printed(26, 16, 0.018),
  {
    formula: 'cost.machine',
    inputs: { rate: 90, time: 40, cavities: 2, reject_share: 20 },
    expected: 0.625,
    tolerance: exact,
    from: hand('90 shots an hour cost 1 each, 0.5 a casting, and four good ones carry a fifth'),
  },
  breakEven(2500, machine(20, 1), machine(20, 2), 22500),
  breakEven(5000, machine(20, 2), machine(22, 4), 100000),
  breakEven(7500, machine(22, 4), machine(24, 8), 270000),
  breakEven(20000, machine(24, 8), machine(26, 16), 1309091),

  { formula: 'cost.melt-loss', inputs: { melted: 1, loss: 4, price: 2.5, dross_price: 0.5 }, expected: 0.08, tolerance: exact, from: AFS },
  { formula: 'cost.melt-loss', inputs: { melted: 2, loss: 3, price: 2 }, expected: 0.12, tolerance: exact, from: hand('2 kg lose 60 g at 2 a kilogram') },
  { formula: 'cost.melt-loss-tolled', inputs: { melted: 1, loss: 4, price: 2.5, toll: 0.4, recovery: 60 }, expected: 0.056, tolerance: exact, from: AFS },
  { formula: 'metal.yield', inputs: { part_mass: 120, shot_mass: 1000 }, expected: 12, tolerance: exact, from: SIGNS },
  { formula: 'metal.melt-loss', inputs: { charged: 1000, poured: 980 }, expected: 2, tolerance: exact, from: SIGNS },

  {
    formula: 'metal.new-per-part',
    inputs: { part_mass: 1, shot_mass: 1.8, scrap: 5, loss: 3 },
    expected: 1.0586,
    tolerance: { absolute: 0.00005 },
    from: hand('1 kg, shot of 1.8 kg, 5 % scrap, 3 % loss'),
  },
  {
    formula: 'metal.new-per-part',
    inputs: { part_mass: 1, shot_mass: 1.7, scrap: 5, loss: 2 },
    expected: 1.0365,
    tolerance: { absolute: 0.00005 },
    from: hand('1 kg, shot of 1.7 kg, 5 % scrap, 2 % loss'),
  },
  {
    formula: 'metal.new-per-part',
    inputs: { part_mass: 1, shot_mass: 1 / 0.55, scrap: 0, loss: 3 },
    expected: 1.06,
    tolerance: { absolute: 0.005 },
    from: 'costing guide (APOGEE-HPDC-COST): 6 % of the net mass, here at 55 % yield and 3 % for each melting',
  },
  {
    formula: 'metal.new-per-part',
    inputs: { part_mass: 1, shot_mass: 2, scrap: 10, loss: 0 },
    expected: 1,
    tolerance: exact,
    from: 'limiting case: nothing is lost, so ingot goes into parts only',
  },
  {
    formula: 'metal.loss-share',
    inputs: { new_metal: 1.06, part_mass: 1 },
    expected: 6,
    tolerance: { relative: 1e-9 },
    from: 'costing guide (APOGEE-HPDC-COST): factor 1.06',
  },
  {
    formula: 'metal.melted-per-part',
    inputs: { shot_mass: 1.9, scrap: 5, loss: 3 },
    expected: 2 / 0.97,
    tolerance: exact,
    from: hand('1.9 kg / 0.95 is 2 kg to be cast, of which 3 % is lost before'),
  },
  {
    formula: 'metal.returns-per-part',
    inputs: { part_mass: 1, shot_mass: 1.9, scrap: 5 },
    expected: 1,
    tolerance: exact,
    from: hand('2 kg cast for a part of 1 kg'),
  },
  { formula: 'metal.shot-per-part', inputs: { shot: 3.6, cavities: 2 }, expected: 1.8, tolerance: exact, from: hand('half of 3.6 kg') },
  {
    formula: 'metal.melting-heat',
    inputs: { holding: 670, liquidus: 595, room: 20, cp_liquid: 1100, cp_solid: 960, latent: 450 },
    expected: 1084.5,
    tolerance: { absolute: 0.05 },
    from: hand('0.96 x 575 + 450 + 1.1 x 75 kJ'),
  },
  {
    formula: 'metal.melting-heat',
    inputs: { holding: 700, liquidus: 660, room: 20, cp_liquid: 1180, cp_solid: 1030, latent: 397 },
    expected: 1100,
    tolerance: { relative: 0.03 },
    from: 'pure aluminium at 700 degC: some 1100 kJ/kg above room temperature, general physics',
  },
  { formula: 'metal.melting-energy', inputs: { heat: 1080, efficiency: 30 }, expected: 1, tolerance: exact, from: hand('0.3 kWh of heat at 30 %') },
  { formula: 'metal.energy-per-kg', inputs: { melted: 2, energy: 0.8, part_mass: 1 }, expected: 1.6, tolerance: exact, from: hand('2 kg melted for 1 kg') },

  { formula: 'cost.by-mass', inputs: { mass: 1.5, price: 2 }, expected: 3, tolerance: exact, from: hand('1.5 kg at 2') },
  { formula: 'cost.returns', inputs: { returns: 1, price: 2, sold: 65 }, expected: 0.7, tolerance: exact, from: hand('1 kg bought at 2 and sold at 1.3') },
  {
    formula: 'cost.returns',
    inputs: { returns: 1, price: 2, sold: 100 },
    expected: 0,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: returns fetch what ingot costs',
  },
  { formula: 'cost.melting', inputs: { melted: 2, energy: 0.8, price: 0.1 }, expected: 0.16, tolerance: exact, from: hand('1.6 kWh at 0.1') },
  { formula: 'cost.machine-time', inputs: { cycle: 45, efficiency: 90 }, expected: 50, tolerance: exact, from: hand('nine of ten shots are made') },
  {
    formula: 'cost.trimming',
    inputs: { rate: 36, cycle: 8, each: 2, cavities: 2 },
    expected: 0.06,
    tolerance: exact,
    from: hand('12 s for a shot of two at a cent a second'),
  },
  {
    formula: 'cost.machining',
    inputs: { rate: 36, features: 5, feature: 4, handling: 10 },
    expected: 0.3,
    tolerance: exact,
    from: hand('30 s at a cent a second'),
  },
  {
    formula: 'cost.impregnation',
    inputs: { price: 8, leaking: 3 },
    expected: 57600 / 240000,
    tolerance: exact,
    from: `${BLOCKS}; 57,600 a year for 240,000 blocks`,
  },
  {
    formula: 'cost.leakers',
    inputs: { spent: 300, leaking: 3, still: 5 },
    expected: (360 * 300) / (240000 - 360),
    tolerance: exact,
    from: `${BLOCKS}; 360 blocks a year are lost and the others pay for them`,
  },
  {
    formula: 'cost.without-die',
    inputs: { metal: 4, melt_loss: 0.2, melting: 0.3, machine: 1.5, trimming: 0.2, machining: 0.8 },
    expected: 7,
    tolerance: exact,
    from: hand('the sum'),
  },
  { formula: 'cost.per-part', inputs: { without_die: 7, die: 0.9, trim_die: 0.1 }, expected: 8, tolerance: exact, from: hand('the sum') },
  { formula: 'cost.share', inputs: { line: 2, total: 8 }, expected: 25, tolerance: exact, from: hand('a quarter') },
  {
    formula: 'cost.rejects',
    inputs: { machine: 1.5, trimming: 0.2, melt_loss: 0.1, melting: 0.2, reject_share: 5 },
    expected: 0.1,
    tolerance: exact,
    from: hand('5 % of 2'),
  },
  { formula: 'cost.for-parts', inputs: { per_part: 8, parts: 120000 }, expected: 960000, tolerance: exact, from: hand('120,000 at 8') },
  { formula: 'cost.rest', inputs: { total: 8, modelled: 2.5 }, expected: 5.5, tolerance: exact, from: hand('the difference') },

  { formula: 'cost.hours-ejection', inputs: { area: 100, each: 2.5 }, expected: 25, tolerance: exact, from: hand('2.5 h for each of ten centimetres') },
  {
    formula: 'cost.hours-size',
    inputs: { area: 100, base: 5, factor: 0.085, exponent: 1.2 },
    expected: 5 + 0.085 * 251.1886,
    tolerance: { relative: 1e-6 },
    from: hand('100^1.2 is 251.19'),
  },
  { formula: 'cost.hours-surface', inputs: { surface: 2000, each: 10 }, expected: 200, tolerance: exact, from: hand('10 h for each of twenty') },
  {
    formula: 'cost.die-hours',
    inputs: { base: 120, ejection: 25, size: 25, surface: 200, pulls: 2, pull: 65, feed: 20, finish: 10, tolerance: 0 },
    expected: 660,
    tolerance: exact,
    from: hand('500 h x 1.2 x 1.1'),
  },
  {
    formula: 'cost.insert-mass',
    inputs: { width: 400, height: 250, depth: 80, below: 60, density: 7.8 },
    expected: 156,
    tolerance: exact,
    from: hand('0.4 x 0.25 x 0.2 m of steel'),
  },
  {
    formula: 'cost.die-steel',
    inputs: { mass: 1000, inserts: 200, holder_price: 3, cavity_price: 12, treatment: 4 },
    expected: 5600,
    tolerance: exact,
    from: hand('800 kg at 3 and 200 kg at 16'),
  },
  {
    formula: 'cost.die-single',
    inputs: { hours: 500, rate: 50, steel: 4000, cavities: 2, exponent: 1 },
    expected: 27000,
    tolerance: exact,
    from: hand('500 h at 50, and half of the steel of two'),
  },
  {
    formula: 'cost.die-for-cavities',
    inputs: { single: 10000, cavities: 2, exponent: 0.722 },
    expected: 16500,
    tolerance: { relative: 0.001 },
    from: 'page on prices of moulds (MOULD-PRICE-DOUBLING): a doubling adds about 65 %',
  },
  {
    formula: 'cost.die-for-cavities',
    inputs: { single: 5000, cavities: 16, exponent: 0.75 },
    expected: 40000,
    tolerance: exact,
    from: `${LADDER}; overall exponent 0.75`,
  },
  { formula: 'cost.die-of-one', inputs: { whole: 40000, cavities: 16, exponent: 0.75 }, expected: 5000, tolerance: exact, from: `${LADDER}; the way back` },
  { formula: 'cost.share-of', inputs: { whole: 80000, share: 12 }, expected: 9600, tolerance: exact, from: hand('12 % of 80,000') },
  {
    formula: 'cost.die-per-part',
    inputs: { die: 80000, set: 40000, sets: 3, parts: 400000 },
    expected: 0.4,
    tolerance: exact,
    from: hand('160,000 over 400,000 parts'),
  },
  { formula: 'cost.parts-of-life', inputs: { life: 125000, cavities: 2, reject_share: 4 }, expected: 240000, tolerance: exact, from: hand('250,000 less 4 %') },
  { formula: 'cost.parts-of-years', inputs: { parts: 60000, years: 5 }, expected: 300000, tolerance: exact, from: hand('five years') },

  {
    formula: 'cost.best-cavities',
    inputs: WORKED,
    expected: least,
    tolerance: { absolute: 0.001 },
    from: 'least of the sum of all costs, looked for at every thousandth of a cavity',
  },
  {
    formula: 'cost.best-cavities',
    inputs: { ...WORKED, exponent: 1, trim_time: 0, trim_die_cost: 0, die_cost: 60000 },
    expected: 1,
    tolerance: exact,
    from: hand('with exponent 1 the root of 100,000 x 0.6 over 60,000'),
  },
  {
    formula: 'cost.with-cavities',
    inputs: { ...WORKED, cavities: 2, good: 100000, force_rate: 20, rest: 3 },
    expected: money(2) / 100000 + 0.2 + 3,
    tolerance: exact,
    from: hand('the same sum, with 36 s of 20 an hour and 3 besides'),
  },
  { formula: 'cost.castings', inputs: { good: 95000, reject_share: 5 }, expected: 100000, tolerance: exact, from: hand('95 of 100 are good') },
  {
    formula: 'cost.rate-slope',
    inputs: { small_rate: 66, small_force: 900, large_rate: 218, large_force: 30000 },
    expected: 0.0052,
    tolerance: { absolute: 0.00005 },
    from: 'remembered table of cold-chamber machines of a textbook, whose rates lie on 62 + 0.0052 F',
  },
  {
    formula: 'cost.rate-slope-usual',
    inputs: { rate: 164, force: 10000, base: 62, slope: 0.0052 },
    expected: 0.0074807,
    tolerance: { absolute: 5e-7 },
    from: hand('0.0052 x 164 / 114'),
  },
  { formula: 'cost.rate-base', inputs: { rate: 88, force: 5000, slope: 0.0052 }, expected: 62, tolerance: exact, from: hand('88 less 26') },
  { formula: 'cost.force-rate', inputs: { force: 5000, slope: 0.0052, cavities: 2 }, expected: 13, tolerance: exact, from: hand('26 over two cavities') },
];
