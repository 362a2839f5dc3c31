import type { Case } from '../case.ts';

const ROUTE = 'derived, worked by hand';
const SHOT = 'worked case of the heat of a shot: 1.2 kg of A380 at 662.7 kJ/kg, 60 shots an hour';
const TEXTBOOK = 'textbook balance of a die (question 917174): 0.1 kg of a zinc alloy a shot, 120 shots an hour; inputs printed, answer not';

const one = (formula: string, inputs: Readonly<Record<string, number>>, expected: number, tolerance: Case['tolerance'], from: string): Case => ({
  formula,
  inputs,
  expected,
  tolerance,
  from,
});

export const cases: readonly Case[] = [
  one('heat.of-mass', { mass: 1.2, per_mass: 662.7 }, 795.3, { absolute: 0.06 }, SHOT),
  one('heat.rate', { heat: 795.3, cycle: 60 }, 13.25, { absolute: 0.006 }, SHOT),
  // Parts of the same balance: 71.5 liquid, and 202.2 from the liquidus to ejection.
  one('heat.sensible', { specific_heat: 1100, from: 660, to: 595 }, 71.5, { absolute: 1e-9 }, `${SHOT}; superheat`),
  one('heat.sensible', { specific_heat: 963, from: 595, to: 385 }, 202.2, { absolute: 0.06 }, `${SHOT}; liquidus to ejection`),
  // Superheat of 10 K and a latent heat of 2 kJ/kg, some fifty times too small for zinc: arithmetic only.
  one('heat.sensible', { specific_heat: 500, from: 410, to: 400 }, 5, { absolute: 1e-12 }, TEXTBOOK),
  one('heat.of-mass', { mass: 0.1, per_mass: 5 + 2 }, 0.7, { absolute: 1e-12 }, TEXTBOOK),
  one('heat.rate', { heat: 0.7, cycle: 30 }, 0.02333, { absolute: 5e-6 }, TEXTBOOK),
  one('heat.leaving-temperature', { eject_temperature: 385, solidus: 540, share: 50 }, 462.5, { relative: 1e-12 }, `${ROUTE}: half way`),
  one('heat.share', { heat: 227, share: 50 }, 113.5, { relative: 1e-12 }, `${ROUTE}: a half`),
  one('heat.die', { heat: 1338, tip: 114 }, 1224, { relative: 1e-12 }, `${ROUTE}: a difference`),
  one('heat.missing', { losses: 9, rate: 7.5 }, 1.5, { relative: 1e-12 }, `${ROUTE}: a difference`),
  one('heat.rate-share', { rate: 13.25, share: 60 }, 7.95, { relative: 1e-12 }, `${ROUTE}: six tenths`),
  one('heat.share-lines', { spray: 30, surroundings: 10 }, 60, { relative: 1e-12 }, `${ROUTE}: the three make 100 %`),
  one('heat.casting-surface', { volume: 280, wall: 2.8 }, 2000, { relative: 1e-12 }, `${ROUTE}: a plate of 1000 cm2 and 2.8 mm has two faces`),
  one(
    'heat.runner-face',
    { projected: 40, depth: 10, width: 40 },
    100,
    { relative: 1e-12 },
    `${ROUTE}: 4 x 100 cm of runner: two faces of 40 cm2 and two sides of 10 cm2`,
  ),
  one('heat.overflow-face', { area: 36, number: 4, depth: 10 }, 120, { relative: 1e-12 }, `${ROUTE}: four of 30 x 30 x 10 mm: 2 x 9 + 4 x 3 x 1 = 30 cm2 each`),
  one('heat.biscuit-face', { diameter: 80 }, 50.265, { absolute: 5e-4 }, `${ROUTE}: circle of 80 mm`),
  // Half of a 2.8 mm wall of A380 at 1.82 MJ/dm3 stands above each square metre: 1.4 dm3.
  one('heat.per-area', { heat: 1820, area: (10000 * 1) / 1.4 }, 2548, { relative: 1e-9 }, `${ROUTE}: 1.4 dm3 for each square metre at 1.82 MJ/dm3`),
  one('heat.face-flux', { per_area: 2548, cycle: 40, share: 60 }, 38.22, { relative: 1e-9 }, `${ROUTE}: six tenths of 63.7 kW/m2`),
  one('heat.outside', { width: 400, height: 500, thickness: 300 }, 0.94, { relative: 1e-12 }, `${ROUTE}: four sides of 0.54 m2 together, two backs of 0.2 m2`),
  one('heat.surroundings-rate', { area: 1, coefficient: 15, die_temperature: 215, room: 25 }, 2.85, { relative: 1e-12 }, `${ROUTE}: 15 W/(m2.K) and 190 K`),
  one(
    'heat.spray-rate',
    { area: 3000, coefficient: 2000, die_temperature: 225, spray_temperature: 25, spray: 6, wetted: 30, cycle: 40 },
    5.4,
    { relative: 1e-12 },
    `${ROUTE}: 400 kW/m2 on 0.3 m2 for 1.8 of 40 s`,
  ),
];
