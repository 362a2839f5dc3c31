import { defineFormula } from '../kernel/formula.ts';

const EXACT = { outside: 'extrapolate', source: [], status: 'derived', accuracy: 'exact' } as const;
const FLOW = { symbol: 'Q', unit: 'l/s', meaning: 'planned metal flow through all gates', range: [0.05, 500] } as const;
const VELOCITY = { symbol: 'v_g', unit: 'm/s', meaning: 'planned gate velocity', range: [5, 110] } as const;

/** How far the planned flow lies above the one of the longest fill time; negative when it fills too slowly. */
export const flowMargin = defineFormula({
  ...EXACT,
  id: 'pq2.flow-margin',
  title: 'Planned flow above the least',
  symbol: 'm_Q',
  inputs: { flow: FLOW, least: { symbol: 'Q_1', unit: 'l/s', meaning: 'least flow, that of the longest fill time', range: [0.05, 500] } },
  unit: '%',
  equation: '100 * (Q - Q_1) / Q_1',
  compute: (x) => (100 * (x.flow - x.least)) / x.least,
});

/** How far the planned gate velocity lies above the least of the window. */
export const velocityMarginLeast = defineFormula({
  ...EXACT,
  id: 'pq2.velocity-margin-least',
  title: 'Planned gate velocity above the least',
  symbol: 'm_v',
  inputs: { velocity: VELOCITY, least: { symbol: 'v_1', unit: 'm/s', meaning: 'least gate velocity of the window', range: [5, 60] } },
  unit: '%',
  equation: '100 * (v_g - v_1) / v_1',
  compute: (x) => (100 * (x.velocity - x.least)) / x.least,
});

/** How far the planned gate velocity lies below the greatest of the window. */
export const velocityMarginGreatest = defineFormula({
  ...EXACT,
  id: 'pq2.velocity-margin-greatest',
  title: 'Planned gate velocity below the greatest',
  symbol: 'm_v',
  inputs: { velocity: VELOCITY, greatest: { symbol: 'v_2', unit: 'm/s', meaning: 'greatest gate velocity of the window', range: [20, 110] } },
  unit: '%',
  equation: '100 * (v_2 - v_g) / v_2',
  compute: (x) => (100 * (x.greatest - x.velocity)) / x.greatest,
});

/** How far the planned flow lies below the crossing, along the line of the die; negative when the machine does not reach it. */
export const machineMargin = defineFormula({
  ...EXACT,
  id: 'pq2.machine-margin',
  title: 'Planned flow below the crossing',
  symbol: 'm_m',
  inputs: { flow: FLOW, operating_flow: { symbol: 'Q_x', unit: 'l/s', meaning: 'flow at the crossing of machine and die', range: [0.05, 500] } },
  unit: '%',
  equation: '100 * (Q_x - Q) / Q_x',
  compute: (x) => (100 * (x.operating_flow - x.flow)) / x.operating_flow,
});
