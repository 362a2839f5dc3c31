import { defineFormula } from '../kernel/formula.ts';

/** A quotient that is whole but for the last bits is that whole number. */
const SLACK = 1e-9;

/** Least number of cavities with which one machine makes the yearly volume. */
export const cavitiesDemand = defineFormula({
  id: 'cavities.demand',
  title: 'Least number of cavities for the yearly volume',
  symbol: 'n',
  inputs: {
    parts_per_year: { symbol: 'N', unit: '1', meaning: 'good parts wanted a year', range: [100, 100000000] },
    hours_per_year: { symbol: 'H', unit: 'h', meaning: 'machine hours a year', range: [100, 8760] },
    shots_per_hour: { symbol: 'r', unit: '1/h', meaning: 'shots an hour while running', range: [1, 5000] },
    use_share: { symbol: 'u', unit: '%', meaning: 'share of the hours in which the machine runs', range: [40, 100] },
    reject_share: { symbol: 'q', unit: '%', meaning: 'share of the castings rejected', range: [0, 40], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'ceil(N / (H * r * u / 100 * (1 - q / 100)))',
  requires: [
    { text: 'a use share of 100 % or less', holds: ({ use_share }) => use_share <= 100 },
    { text: 'a reject share below 100 %', holds: ({ reject_share }) => reject_share < 100 },
  ],
  outside: 'extrapolate',
  source: ['ZHILIAN-CAVITIES'],
  status: 'source',
  accuracy: "exact count for the rate given, from a page on moulds; with a typical rate instead of the part's own cycle it may be off by a factor of 2",
  compute: (x) => {
    const shots = x.hours_per_year * x.shots_per_hour * (x.use_share / 100) * (1 - x.reject_share / 100);
    return Math.ceil((x.parts_per_year / shots) * (1 - SLACK));
  },
});
