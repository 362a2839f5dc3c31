import { defineFormula } from '../kernel/formula.ts';

/** Volume of the overflows of a cavity, as a share of the cavity. */
export const overflowVolume = defineFormula({
  id: 'overflow.volume',
  title: 'Overflow volume',
  symbol: 'V_o',
  inputs: {
    cavity_volume: { symbol: 'V_p', unit: 'cm3', meaning: 'volume of the cavity, or of the segment of it that the overflows serve', range: [0.1, 50000] },
    share: { symbol: 'o', unit: '%', meaning: 'overflow volume as a share of the cavity, by wall and finish', range: [0, 150], domain: 'not-negative' },
  },
  unit: 'cm3',
  equation: 'V_p * o / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; the shares in use are remembered, and two published forms differ by up to 1.6 times on thin walls',
  compute: ({ cavity_volume, share }) => (cavity_volume * share) / 100,
});
