import type { Case } from '../case.ts';

const AED = 'example of a page on spraying (AED-SPRAY): 1 m2, 2 um, 30 % active matter, 50 % stays on the die; answer recomputed by hand';
const hand = (what: string): string => `derived, worked by hand: ${what}`;
const exact = { relative: 1e-9 } as const;

export const cases: readonly Case[] = [
  {
    formula: 'lubricant.concentrate',
    inputs: { area: 10000, film: 2, solids: 30, efficiency: 50 },
    expected: 13.3,
    tolerance: { absolute: 0.05 },
    from: AED,
  },
  { formula: 'lubricant.diluted', inputs: { concentrate: 13.333, dilution: 40 }, expected: 550, tolerance: { absolute: 5 }, from: `${AED}; 40 to 1, 0.55 l` },
  { formula: 'lubricant.diluted', inputs: { concentrate: 13.333, dilution: 80 }, expected: 1080, tolerance: { absolute: 5 }, from: `${AED}; 80 to 1, 1.08 l` },
  {
    formula: 'lubricant.evaporation-heat',
    inputs: { temperature: 25, specific_heat: 4180, latent_heat: 2257 },
    expected: 2570,
    tolerance: { absolute: 5 },
    from: hand('2257 + 4.18 x 75 = 2570.5 kJ/kg, 2.57 MJ/kg'),
  },
  {
    formula: 'lubricant.boiled-water',
    inputs: { heat: 795.3, share: 30, evaporation_heat: 2570.5 },
    expected: 92.82,
    tolerance: { absolute: 0.005 },
    from: hand('30 % of a shot of 795.3 kJ: 238.59 / 2.5705 g'),
  },
  {
    formula: 'lubricant.boiled-water',
    inputs: { heat: 795.3, share: 30, evaporation_heat: 2570.5, interval: 3 },
    expected: 278.46,
    tolerance: { absolute: 0.01 },
    from: hand('three shots to one spraying'),
  },
  {
    formula: 'lubricant.boiled-water',
    inputs: { heat: 795.3, less: 95.3, share: 30, evaporation_heat: 2570.5 },
    expected: 81.696,
    tolerance: { absolute: 0.001 },
    from: hand('30 % of 700 kJ: 210 / 2.5705 g'),
  },
  {
    formula: 'lubricant.cooling-spray',
    inputs: { boiled: 92.82, efficiency: 50, dilution: 60 },
    expected: 188.73,
    tolerance: { absolute: 0.01 },
    from: hand('185.64 of water, and a sixtieth of concentrate'),
  },
  { formula: 'lubricant.spray', inputs: { film: 122, cooling: 188.7 }, expected: 188.7, tolerance: exact, from: hand('the greater of the two') },
  { formula: 'lubricant.spray', inputs: { film: 122 }, expected: 122, tolerance: exact, from: 'limiting case: the spray takes no heat' },
  {
    formula: 'lubricant.boiled-share',
    inputs: { boiled: 92.82, spray: 188.73, dilution: 60 },
    expected: 50,
    tolerance: { absolute: 0.005 },
    from: hand('what stays on the die boils: the efficiency of 50 % comes back'),
  },
  { formula: 'lubricant.concentrate-used', inputs: { spray: 610, dilution: 60 }, expected: 10, tolerance: exact, from: hand('one part in 61') },
  {
    formula: 'lubricant.film-left',
    inputs: { concentrate: 13.333333, area: 10000, solids: 30, efficiency: 50 },
    expected: 2,
    tolerance: { relative: 1e-6 },
    from: `${AED}; turned round`,
  },
  { formula: 'lubricant.hourly', inputs: { each: 400, shots: 60 }, expected: 24, tolerance: exact, from: hand('60 sprayings of 0.4 l') },
  { formula: 'lubricant.hourly', inputs: { each: 60, shots: 300, interval: 3 }, expected: 6, tolerance: exact, from: hand('100 sprayings of 0.06 l') },
  { formula: 'lubricant.flow', inputs: { spray: 400, time: 6 }, expected: 4, tolerance: exact, from: hand('0.4 l in a tenth of a minute') },
  {
    formula: 'lubricant.water-free',
    inputs: { spray: 800, ratio: 800 },
    expected: 1,
    tolerance: exact,
    from: 'trade article (FTJ-WATER-FREE): as little as 1/800 of the sprayed volume',
  },
  {
    formula: 'lubricant.surface-from-wall',
    inputs: { volume: 10 * Math.PI, wall: 2 },
    expected: 100 * Math.PI,
    tolerance: exact,
    from: hand('a tube of 50 mm mean diameter, 100 mm long: pi x (52 + 48) x 100 mm2'),
  },
  {
    formula: 'lubricant.surface-from-wall',
    inputs: { volume: 20, wall: 2 },
    expected: 200,
    tolerance: exact,
    from: hand('a plate of 100 cm2 and 2 mm has two faces of 100 cm2'),
  },
  { formula: 'lubricant.sprayed-area', inputs: { face: 74, count: 6 }, expected: 444, tolerance: exact, from: hand('six cavities') },
];
