import { defineFormula } from '../kernel/formula.ts';

/** Metal flow through all gates while the cavities fill. */
export const shotFlow = defineFormula({
  id: 'shot.flow',
  title: 'Metal flow through all gates',
  symbol: 'Q',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    volume: { symbol: 'V', unit: 'cm3', meaning: 'flow volume of one cavity, liquid', range: [0.1, 100000] },
    time: { symbol: 't', unit: 'ms', meaning: 'fill time', range: [1, 500] },
  },
  unit: 'l/s',
  equation: 'n * V / t',
  outside: 'extrapolate',
  source: ['DC-WORKSHEET'],
  status: 'derived',
  accuracy: 'exact for a constant flow into cavities that all fill in the same time',
  compute: ({ cavities, volume, time }) => (cavities * volume) / time,
});

/** All metal of a shot by the wall, after a textbook: a check on the sum. */
export const shotHandbookVolume = defineFormula({
  id: 'shot.handbook-volume',
  title: 'Shot volume by the wall',
  symbol: 'V_h',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    part_volume: { symbol: 'V_p', unit: 'cm3', meaning: 'volume of one casting', range: [0.1, 50000] },
    wall: { symbol: 'h', unit: 'mm', meaning: 'mean wall', range: [0.5, 10] },
  },
  unit: 'cm3',
  equation: 'n * V_p * (1 + 2 / h)',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered; runner, biscuit and overflows on average over many dies, the biscuit of a given plunger is not in it',
  compute: (x) => x.cavities * x.part_volume * (1 + 2 / x.wall),
});

/** How far the crossing of the two lines lies below the dry speed: with the valve open, what gates and metal cost this plunger. */
export const speedDropByLines = defineFormula({
  id: 'shot.speed-drop-by-lines',
  title: 'Loaded plunger speed below the dry speed, by the lines of machine and die',
  symbol: 'l_x',
  inputs: {
    dry_speed: { symbol: 'v_d', unit: 'm/s', meaning: 'dry-shot plunger speed of the machine', range: [0.5, 12] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
    pressure: { symbol: 'p_h', unit: 'MPa', meaning: 'hydraulic pressure during fill, not intensified', range: [3, 35] },
    cylinder_diameter: { symbol: 'd_h', unit: 'mm', meaning: 'diameter of the shot cylinder', range: [40, 500] },
    rod_diameter: { symbol: 'd_r', unit: 'mm', meaning: 'diameter of a tail rod, 0 without one', range: [0, 300], domain: 'not-negative', default: 0 },
    density: { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the liquid metal', range: [1400, 11500] },
    discharge: { symbol: 'Cd', unit: '1', meaning: 'discharge coefficient of runner and gate', range: [0.2, 1] },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of one cavity', range: [1, 10000] },
  },
  unit: '%',
  equation: '100 * (1 - 1 / sqrt(1 + rho * v_d^2 * (D^2 / (d_h^2 - d_r^2)) * (pi * D^2 / (4 * Cd * n * A_g))^2 / (2e6 * p_h)))',
  requires: [{ text: 'rod_diameter < cylinder_diameter', holds: (x) => x.rod_diameter < x.cylinder_diameter }],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'derived',
  accuracy: 'as good as the discharge coefficient; friction and the fall of the accumulator come on top',
  compute: (x) => {
    const lever = x.diameter ** 2 / (x.cylinder_diameter ** 2 - x.rod_diameter ** 2);
    const faster = (Math.PI * x.diameter ** 2) / (4 * x.discharge * x.cavities * x.gate_area);
    return 100 * (1 - 1 / Math.sqrt(1 + (x.density * x.dry_speed ** 2 * lever * faster ** 2) / (2e6 * x.pressure)));
  },
});

/** The drop that is planned with: the usual one, or less where the lines say so. Where they say more, the crossing is the bound. */
export const speedDropPlanned = defineFormula({
  id: 'shot.speed-drop-planned',
  title: 'Loaded plunger speed below the dry speed, planned',
  symbol: 'l',
  inputs: {
    usual: { symbol: 'l_u', unit: '%', meaning: 'usual drop of machines under load', range: [5, 40], domain: 'not-negative' },
    lines: { symbol: 'l_x', unit: '%', meaning: 'drop by the lines of machine and die', range: [0, 100], domain: 'not-negative' },
  },
  unit: '%',
  equation: 'min(l_u, l_x)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'practice',
  accuracy: 'a planning rule: wide gates load the plunger less than the usual range has it',
  compute: ({ usual, lines }) => Math.min(usual, lines),
});

/** Plunger speed that a machine can be planned to: below the dry speed by the load, and a share of that. */
export const speedAvailable = defineFormula({
  id: 'shot.speed-available',
  title: 'Plunger speed to plan with at most',
  symbol: 'v_max',
  inputs: {
    dry_speed: { symbol: 'v_d', unit: 'm/s', meaning: 'dry-shot plunger speed of the machine', range: [0.5, 12] },
    drop: { symbol: 'l', unit: '%', meaning: 'loaded speed below the dry speed', range: [0, 40], domain: 'not-negative' },
    use: { symbol: 'u', unit: '%', meaning: 'share of the loaded speed that is planned at most', range: [50, 100] },
  },
  unit: 'm/s',
  equation: 'v_d * (1 - l / 100) * u / 100',
  requires: [{ text: 'a drop below 100 %', holds: ({ drop }) => drop < 100 }],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'source',
  accuracy: 'the loaded speed lies 10 to 25 % below the dry speed; the pressure and flow lines of machine and die tell it better',
  compute: (x) => (x.dry_speed * (1 - x.drop / 100) * x.use) / 100,
});

/** Plunger diameter at which the machine reaches a metal pressure: the pressure rises with the inverse square. */
export const plungerForPressure = defineFormula({
  id: 'shot.plunger-for-pressure',
  title: 'Greatest plunger for the pressure needed',
  symbol: 'D_p',
  inputs: {
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
    pressure: { symbol: 'p_m', unit: 'MPa', meaning: 'greatest metal pressure with it', range: [2, 300] },
    needed: { symbol: 'p', unit: 'MPa', meaning: 'metal pressure needed', range: [2, 150] },
  },
  unit: 'mm',
  equation: 'D * sqrt(p_m / p)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact without friction',
  compute: (x) => x.diameter * Math.sqrt(x.pressure / x.needed),
});

/**
 * Biscuit thickness when all metal is solid: no thinner than the least, than the deepest runner, and than a share of the plunger
 * diameter. The shot is poured so that this is left; what the shrinkage takes is in the liquid metal, which has more room in the sleeve.
 */
export const biscuitThickness = defineFormula({
  id: 'sleeve.biscuit-thickness',
  title: 'Biscuit thickness',
  symbol: 'b',
  inputs: {
    least: { symbol: 'b_1', unit: 'mm', meaning: 'least biscuit', range: [10, 30] },
    runner_depth: { symbol: 'd_r', unit: 'mm', meaning: 'depth of the deepest runner', range: [0.5, 60] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [30, 250] },
    share: { symbol: 's', unit: '1', meaning: 'biscuit over plunger diameter, low end', range: [0.2, 0.5] },
  },
  unit: 'mm',
  equation: 'max(b_1, d_r, s * D)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE', 'BAR-MEIR'],
  status: 'practice',
  accuracy: 'a published range ends at 30 mm, the share of the diameter exceeds it with plungers above 90 mm; pouring varies by several millimetres',
  compute: (x) => Math.max(x.least, x.runner_depth, x.share * x.diameter),
});

/** Empty volume of the sleeve after pouring. */
export const sleeveAir = defineFormula({
  id: 'sleeve.air-volume',
  title: 'Air in the sleeve after pouring',
  symbol: 'V_a',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'liquid metal of one shot', range: [5, 100000] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'inside diameter of the sleeve', range: [30, 250] },
    length: { symbol: 'L', unit: 'mm', meaning: 'active length of the sleeve', range: [100, 2000] },
  },
  unit: 'cm3',
  equation: 'max(0, pi * D^2 * L / 4000 - V)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry',
  compute: (x) => Math.max(0, (Math.PI * x.diameter ** 2 * x.length) / 4000 - x.volume),
});

/** Travel of a hot-chamber plunger that displaces the metal of one shot. */
export const potStroke = defineFormula({
  id: 'pot.stroke-needed',
  title: 'Plunger travel for the shot',
  symbol: 's',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'liquid metal of one shot', range: [0.5, 20000] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 150] },
  },
  unit: 'mm',
  equation: '4000 * V / (pi * D^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact without leakage past the plunger rings, which grows with wear',
  compute: ({ volume, diameter }) => (4000 * volume) / (Math.PI * diameter ** 2),
});

/** Least bore of the nozzle: its area a multiple of the runners it feeds. */
export const nozzleDiameter = defineFormula({
  id: 'pot.nozzle-diameter',
  title: 'Least nozzle bore',
  symbol: 'd_n',
  inputs: {
    runner_area: { symbol: 'A_r', unit: 'mm2', meaning: 'runner area at the foot of the sprue', range: [1, 60000] },
    ratio: { symbol: 'k', unit: '1', meaning: 'nozzle bore area over runner area', range: [1, 1.5] },
  },
  unit: 'mm',
  equation: 'sqrt(4 * k * A_r / pi)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the flow area falls from gooseneck to nozzle to sprue to runner to gate; a common rule without a single source',
  compute: (x) => Math.sqrt((4 * x.ratio * x.runner_area) / Math.PI),
});
