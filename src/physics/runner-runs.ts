import { defineFormula } from '../kernel/formula.ts';

/** Volume of equal runs whose area falls evenly from one end to the other. */
export const segmentVolume = defineFormula({
  id: 'runner.segment-volume',
  title: 'Volume of a run',
  symbol: 'V',
  inputs: {
    count: { symbol: 'n', unit: '1', meaning: 'equal runs in the shot', range: [1, 256] },
    start_area: { symbol: 'A_1', unit: 'mm2', meaning: 'area at the beginning', range: [0.5, 30000] },
    end_area: { symbol: 'A_2', unit: 'mm2', meaning: 'area at the end', range: [0.1, 30000] },
    length: { symbol: 'L', unit: 'mm', meaning: 'length of the run', range: [0, 3000], domain: 'not-negative' },
  },
  unit: 'cm3',
  equation: 'n * (A_1 + A_2) / 2 * L / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for an area that falls in a straight line; corners and bends are not counted',
  compute: (x) => (x.count * ((x.start_area + x.end_area) / 2) * x.length) / 1000,
});

/** Width at the end of a run whose section keeps its shape while its area falls. */
export const segmentEndWidth = defineFormula({
  id: 'runner.segment-end-width',
  title: 'Width at the end of a run',
  symbol: 'w_2',
  inputs: {
    width: { symbol: 'w_1', unit: 'mm', meaning: 'width at the beginning', range: [1, 300] },
    start_area: { symbol: 'A_1', unit: 'mm2', meaning: 'area at the beginning', range: [0.5, 30000] },
    end_area: { symbol: 'A_2', unit: 'mm2', meaning: 'area at the end', range: [0.1, 30000] },
  },
  unit: 'mm',
  equation: 'w_1 * sqrt(A_2 / A_1)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for similar sections',
  compute: (x) => x.width * Math.sqrt(x.end_area / x.start_area),
});

/** Projected area of equal runs, which the metal pressure opens the die over. */
export const segmentProjected = defineFormula({
  id: 'runner.segment-projected',
  title: 'Projected area of a run',
  symbol: 'A_p',
  inputs: {
    count: { symbol: 'n', unit: '1', meaning: 'equal runs in the shot', range: [1, 256] },
    width: { symbol: 'w_1', unit: 'mm', meaning: 'width at the beginning', range: [1, 300] },
    end_width: { symbol: 'w_2', unit: 'mm', meaning: 'width at the end', range: [0.5, 2000] },
    length: { symbol: 'L', unit: 'mm', meaning: 'length of the run', range: [0, 3000], domain: 'not-negative' },
  },
  unit: 'cm2',
  equation: 'n * (w_1 + w_2) / 2 * L / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for straight flanks; corners, bends and the sprue are not counted',
  compute: (x) => (x.count * ((x.width + x.end_width) / 2) * x.length) / 100,
});

/** Speed of the metal in a run while the cavity fills. */
export const segmentSpeed = defineFormula({
  id: 'runner.segment-speed',
  title: 'Speed of the metal in a run',
  symbol: 'v_r',
  inputs: {
    flow: { symbol: 'Q', unit: 'l/s', meaning: 'metal flow through all gates', range: [0.01, 500] },
    count: { symbol: 'n', unit: '1', meaning: 'equal runs that share it', range: [1, 256] },
    area: { symbol: 'A', unit: 'mm2', meaning: 'area of the run', range: [0.5, 30000] },
  },
  unit: 'm/s',
  equation: '1000 * Q / (n * A)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact by continuity for a full runner',
  compute: (x) => (1000 * x.flow) / (x.count * x.area),
});
