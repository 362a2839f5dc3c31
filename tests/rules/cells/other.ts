import type { At, TypedCell } from './read.ts';

const zinc = { family: 'zinc' };
const al = { family: 'aluminium' };
const mg = { family: 'magnesium' };
const cu = { family: 'copper' };

type Row = readonly [table: string, at: At, column: string, value: number | null, status?: string];

/** Die life of the steelmaker's brochure, remembered: dies, then cores. */
const life = (family: string, die: readonly [number, number], cores: readonly [number, number]): Row[] => [
  ['die/life', { family }, 'brochure_least', die[0], 'memory'],
  ['die/life', { family }, 'brochure_greatest', die[1], 'memory'],
  ['die/life', { family }, 'core_least', cores[0], 'memory'],
  ['die/life', { family }, 'core_greatest', cores[1], 'memory'],
];

/** Cells that no work read prints, typed a second time all the same: they are held against slips, not verified. */
const ROWS: Readonly<Record<string, readonly Row[]>> = {
  'draft constants of the product standard, remembered': [
    ['draft/constant', { ...al, surface: 'outside', level: 'standard' }, 'constant', 60, 'derived'],
    ['draft/constant', { ...al, surface: 'hole', level: 'standard' }, 'constant', 20, 'memory'],
    ['draft/constant', { ...zinc, surface: 'inside', level: 'standard' }, 'constant', 50, 'memory'],
    ['draft/constant', { ...mg, surface: 'hole', level: 'standard' }, 'constant', 24, 'memory'],
    ['draft/constant', { ...cu, surface: 'outside', level: 'standard' }, 'constant', 50, 'memory'],
    ['draft/constant', { ...al, surface: 'inside', level: 'precision' }, 'constant', 40, 'memory'],
    ['draft/constant', { ...al, surface: 'inside', level: 'precision' }, 'factor', 0.8, 'memory'],
    ['draft/constant', { ...cu, surface: 'hole', level: 'precision' }, 'constant', null],
  ],
  'angles of the published tapers': [
    ['draft/least-taper', al, 'angle', 0.573, 'derived'],
    ['draft/least-taper', cu, 'angle', 0.716, 'derived'],
  ],
  'tolerances of the product standard, remembered': [
    ['tolerance/linear', { ...cu, level: 'standard' }, 'step', 0.076, 'memory'],
    ['tolerance/parting-line', { ...zinc, level: 'standard', area: 64.516 }, 'amount', 0.114, 'memory'],
    ['tolerance/moving-component', { ...al, level: 'standard', area: 645.16 }, 'amount', 0.61, 'memory'],
    ['tolerance/moving-component', { ...mg, level: 'precision', area: 129.032 }, 'amount', 0.178, 'memory'],
    ['tolerance/flatness', { level: 'standard' }, 'step', 0.08, 'memory'],
  ],
  'ISO 8062-3 above 630 mm, remembered': [['tolerance/iso-8062-3', { grade: '8', nominal: 1600 }, 'width', 3.2, 'memory']],
  'cored holes of the product standard, remembered': [
    ['hole/greatest-depth', { ...mg, diameter: 6.35 }, 'depth', 25.4, 'memory'],
    ['hole/greatest-depth', { ...zinc, diameter: 3.175 }, 'depth', 9.5, 'memory'],
    ['hole/greatest-depth', { ...cu, diameter: 25.4 }, 'depth', 127, 'memory'],
    ['hole/depth-ratio', {}, 'greatest', 6, 'memory'],
  ],
  'machining stock and angle pin': [
    ['machining/stock', {}, 'least', 0.25, 'memory'],
    ['slide/angle-pin', {}, 'used', 18, 'practice'],
  ],
  'fill-time constants, remembered': [
    ['fill/steel-constant', { pair: 'aluminium' }, 'k', 0.0346, 'memory'],
    ['fill/steel-constant', { pair: 'tungsten-die' }, 'k', 0.0124, 'memory'],
    ['fill/flow', { group: 'aluminium' }, 'conversion', 4.8, 'memory'],
    ['fill/flow', { group: 'magnesium' }, 'flow_temperature', 510, 'memory'],
    ['fill/flow', { group: 'zinc' }, 'gate_greatest', 415, 'memory'],
    ['fill/solids', { ...al, wall: 2.0 }, 'greatest', 35, 'memory'],
    ['fill/solids', { ...zinc, wall: 1.25 }, 'least', 10, 'memory'],
    ['fill/recommended', mg, 'liquidus', 610, 'memory'],
    ['fill/handbook', { wall: 5 }, 'velocity_greatest', 40, 'memory'],
  ],
  'gate, remembered': [
    ['gate/velocity', { ...cu, use: 'general' }, 'greatest', 50, 'memory'],
    ['gate/thickness', mg, 'least', 0.6, 'memory'],
    ['gate/discharge', al, 'used', 0.5, 'memory'],
    ['gate/atomisation', { level: 'usual' }, 'index_us', 475, 'memory'],
  ],
  'pressure, area shares, hot chamber, overflows, vents, furnace': [
    ['clamp/pressure', { ...cu, use: 'pressure-tight' }, 'greatest', 100, 'memory'],
    ['clamp/area-share', {}, 'overflow_used', 15, 'derived'],
    ['machine/metal-pressure', { chamber: 'hot' }, 'greatest', 31, 'practice'],
    ['overflow/share', { finish: 'good', wall: 1.3 }, 'share', 100, 'memory'],
    ['overflow/share', { finish: 'some-cold-shut', wall: 0.9 }, 'share', 75, 'memory'],
    ['vent/depth', cu, 'greatest', 0.2, 'memory'],
    ['vent/velocity', { kind: 'frictionless' }, 'velocity', 200.9, 'derived'],
    ['die/opening', {}, 'extra', 120, 'memory'],
    ['furnace/loss', {}, 'greatest', 50, 'practice'],
    ['cavities/demand', {}, 'exponent', 0.7, 'memory'],
  ],
  'intensification, porosity, gas balance and runner layout': [
    ['cooling/handbook-constant', { family: 'aluminium' }, 'constant', 0.47, 'memory'],
    ['cooling/handbook-constant', { family: 'magnesium' }, 'constant', 0.31, 'memory'],
    ['intensification/hold', { family: 'zinc', wall: 2.5 }, 'greatest', 2, 'memory'],
    ['intensification/hold', { family: 'aluminium', wall: 6 }, 'least', 3, 'memory'],
    ['intensification/hold', { family: 'copper', wall: 6 }, 'greatest', 10, 'memory'],
    ['porosity/shrinkage', { family: 'zinc-aluminium' }, 'used', 3.5, 'memory'],
    ['porosity/trapped', {}, 'least', 25, 'derived'],
    ['vent/balance', {}, 'pays_greatest', 2, 'derived'],
    ['vent/balance', {}, 'air', 1013, 'practice'],
    ['vent/residual', { use: 'pressure-tight' }, 'greatest', 1.3, 'practice'],
    ['runner/section', {}, 'branch_loss_least', 5, 'practice'],
    ['runner/layout', {}, 'end_greatest', 0.2, 'practice'],
    ['runner/layout', {}, 'angle_least', 30, 'memory'],
  ],
  'hot steel, plates and the rest': [
    ['die/elastic', { temperature: 500 }, 'expansion', 13, 'practice'],
    ['die/hot-yield', { steel: 'H13 premium', temperature: 500 }, 'yield', 850, 'memory'],
    ['die/heat-check', {}, 'early', 0.7, 'practice'],
    ['die/block', {}, 'bow_greatest', 0.05, 'practice'],
    ['die/block', {}, 'flash_gap', 0.1, 'practice'],
    ['die/block', {}, 'bottom_ratio_greatest', 2, 'practice'],
    ['die/block', {}, 'density', 7.8, 'practice'],
    ['die/block', {}, 'envelope_share', 0.9, 'practice'],
    ['die/preheat', { ...al }, 'greatest', 300, 'memory'],
    ['die/preheat', { ...cu }, 'least', 300, 'memory'],
    ['die/preheat', { family: 'zinc-aluminium' }, 'least', 180, 'practice'],
    ['die/preheat', { family: 'zinc-aluminium' }, 'greatest', 240, 'practice'],
    ['machine/shots-per-hour', { family: 'zinc-aluminium', chamber: 'cold' }, 'least', 40, 'practice'],
    ['machine/shots-per-hour', { family: 'zinc-aluminium', chamber: 'cold' }, 'greatest', 200, 'practice'],
  ],
  'die life of the brochure': [
    ...life('zinc', [500000, 2000000], [50000, 200000]),
    ...life('zinc-aluminium', [500000, 2000000], [50000, 200000]),
    ['die/life', { family: 'zinc-aluminium' }, 'average', 500000, 'practice'],
    ['die/life', { family: 'zinc-aluminium' }, 'greatest', 1000000, 'practice'],
    ...life('aluminium', [60000, 200000], [40000, 150000]),
    ...life('magnesium', [100000, 400000], [50000, 200000]),
    ...life('copper', [5000, 50000], [1000, 5000]),
  ],
};

// Derived figures are rounded to three digits.
const within = (status?: string): number => (status === 'derived' ? 0.002 : 1e-9);

export const OTHER: readonly TypedCell[] = Object.entries(ROWS).flatMap(([from, rows]) =>
  rows.map(([table, at, column, value, status]) => ({ table, at, column, value, within: within(status), status: status ?? 'none', from })),
);
