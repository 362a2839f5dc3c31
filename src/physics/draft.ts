import { defineFormula } from '../kernel/formula.ts';

/** Inputs that the draft formulas share. The constant is in its inch form, so the lengths are turned into inches. */
const DRAFT_INPUTS = {
  length: { symbol: 'L', unit: 'mm', meaning: 'depth of draw of the surface', range: [1, 250] },
  constant: { symbol: 'C', unit: '1', meaning: 'draft constant of alloy family and surface, inch form (1/in^0.5)', range: [17, 120] },
  factor: { symbol: 'k', unit: '1', meaning: 'factor of the precision level: 1 standard, 0.8 precision', range: [0.8, 1], default: 1 },
} as const;

/** A constant in the metric form is about 5 times smaller and would ask for 5 times the draft. */
const INCH_FORM = { text: 'the constant in its inch form (15 or more)', holds: ({ constant }: { readonly constant: number }) => constant >= 15 };

const TAPER = '25.4 * k * sqrt(L / 25.4) / C';
const taper = (length: number, constant: number, factor: number): number => (25.4 * factor * Math.sqrt(length / 25.4)) / constant;

/** Tangent of 1 degree as the product standard prints it; its angle is the small-angle form. */
const TANGENT_OF_ONE_DEGREE = 0.01746;

/** Draft distance of a surface: by how much its far end stands back, per side; on the diameter for a hole. */
export const draftTaper = defineFormula({
  id: 'draft.taper',
  title: 'Draft distance',
  symbol: 'D',
  inputs: DRAFT_INPUTS,
  unit: 'mm',
  equation: TAPER,
  requires: [INCH_FORM],
  outside: 'extrapolate',
  source: ['NADCA-S4A7 draft requirements'],
  status: 'source',
  accuracy: 'rule of the product standard, whose own example runs from 2.5 to 127 mm; not for lettering, engraving or honeycomb',
  compute: ({ length, constant, factor }) => taper(length, constant, factor),
});

/** Draft angle of a wall, per side; with the constant for holes, the total angle of the hole. */
export const draftAngle = defineFormula({
  id: 'draft.angle',
  title: 'Draft angle',
  symbol: 'A',
  inputs: DRAFT_INPUTS,
  unit: 'deg',
  where: [{ symbol: 'D', equation: TAPER }],
  equation: 'D / L / 0.01746',
  requires: [INCH_FORM],
  outside: 'extrapolate',
  source: ['NADCA-S4A7 draft requirements'],
  status: 'source',
  accuracy: 'small-angle form of the product standard, within 1 % of the true angle up to 10 degrees; not for lettering, engraving or honeycomb',
  compute: ({ length, constant, factor }) => taper(length, constant, factor) / length / TANGENT_OF_ONE_DEGREE,
});

/** Draft angle of a cored hole, per side: half of the total that the constant for holes gives. */
export const holeDraftAngle = defineFormula({
  id: 'draft.hole-angle',
  title: 'Draft angle of a cored hole, per side',
  symbol: 'A_s',
  inputs: DRAFT_INPUTS,
  unit: 'deg',
  where: [{ symbol: 'D', equation: TAPER }],
  equation: 'D / 2 / L / 0.01746',
  requires: [INCH_FORM],
  outside: 'extrapolate',
  source: ['NADCA-S4A7 draft requirements'],
  status: 'derived',
  accuracy: 'half of the total draft on the diameter; the published sheets grant deep holes (150 mm) a little more than the formula',
  compute: ({ length, constant, factor }) => taper(length, constant, factor) / 2 / length / TANGENT_OF_ONE_DEGREE,
});
