import { defineFormula } from '../kernel/formula.ts';

/** Area of one of several equal gates. */
export const gateEachArea = defineFormula({
  id: 'gate.each-area',
  title: 'Area of one gate',
  symbol: 'A_1',
  inputs: {
    area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of one cavity', range: [0.5, 20000] },
    gates: { symbol: 'n_g', unit: '1', meaning: 'gates of the cavity', range: [1, 12] },
  },
  unit: 'mm2',
  equation: 'A_g / n_g',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for gates that feed equal volumes',
  compute: ({ area, gates }) => area / gates,
});

/** Width of one of several equal gates. */
export const gateEachWidth = defineFormula({
  id: 'gate.each-width',
  title: 'Width of one gate',
  symbol: 'w_1',
  inputs: {
    width: { symbol: 'w_g', unit: 'mm', meaning: 'gate width of one cavity', range: [1, 5000] },
    gates: { symbol: 'n_g', unit: '1', meaning: 'gates of the cavity', range: [1, 12] },
  },
  unit: 'mm',
  equation: 'w_g / n_g',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for gates that feed equal volumes',
  compute: ({ width, gates }) => width / gates,
});

/**
 * Gate area for every 100 cm3 of the volume that a gate fills: gates of one velocity and in proportion to the volume of
 * their segments fill all segments in the same time. The same holds for the cavities of one die.
 */
export const areaForVolume = defineFormula({
  id: 'gate.area-for-volume',
  title: 'Gate area for 100 cm3 of its segment',
  symbol: 'A_100',
  inputs: {
    velocity: { symbol: 'v_g', unit: 'm/s', meaning: 'gate velocity, the same in all gates', range: [0.1, 110] },
    time: { symbol: 't', unit: 'ms', meaning: 'fill time, the same for all segments', range: [1, 5000] },
  },
  unit: 'mm2',
  equation: '100000 / (v_g * t)',
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: 'exact for liquid volume and equal velocities; runners of unequal resistance make them unequal',
  compute: ({ velocity, time }) => 100000 / (velocity * time),
});
