import { grid, type TypedCell } from './read.ts';

/*
 * Published figures of die, steel, lubricant, melt and finishing, typed a second time from the works.
 */
const INCH = 25.4;

/** Rockwell C of the table of die component materials; one column for zinc, one for aluminium and magnesium, one for copper. */
const HARDNESS = `component: steel: group: ..
cavity H11 zinc 46-50
cavity H13_premium zinc 46-50
cavity H13_superior zinc 46-50
cavity H11 aluminium 42-48
cavity H13_premium aluminium 42-48
cavity H13_superior aluminium 42-48
cavity 1.2367 copper 38-44
cavity H21 copper 44-48
cores H13 zinc 46-52
cores H13 aluminium 44-48
cores 1.2367 aluminium 42-48
cores 1.2367 copper 40-46
core_pins H13 zinc 48-52
core_pins 1.2367 aluminium 37-40
core_pins 1.2367 copper 37-40
sprue_parts H13 zinc 48-52
sprue_parts H13 aluminium 46-48
sprue_parts 1.2367 aluminium 44-46
sprue_parts 1.2367 copper 42-46
nozzle 420 zinc 40-44
nozzle H13 aluminium 42-48
shot_sleeve H13 zinc 46-50
shot_sleeve H13 aluminium 42-48
shot_sleeve 1.2367 aluminium 42-48
shot_sleeve 1.2367 copper 42-46
shot_sleeve H13 copper 42-46
ejector_pins H13_nitrided zinc 46-50
ejector_pins H13_nitrided aluminium 46-50
ejector_pins H13_nitrided copper 46-50`;

/** Acceptance criteria 207-2006 for special-quality grades, wt %: C, Mn, P, S, Si, Cr, Mo, V. */
const GRADES = `
A 0.37-0.42 0.20-0.50 -0.025 -0.005 0.80-1.20 5.00-5.50 1.20-1.75 0.80-1.20
B 0.37-0.42 0.20-0.50 -0.015 -0.003 0.80-1.20 5.00-5.50 1.20-1.75 0.80-1.00
C 0.32-0.40 0.10-0.60 -0.020 -0.003 0.10-0.50 4.70-5.30 2.00-3.30 0.40-0.70
D 0.35-0.42 0.20-0.60 -0.025 -0.003 0.80-1.20 5.00-5.50 1.10-1.60 0.30-0.60
E 0.32-0.43 0.10-0.70 -0.020 -0.003 0.10-0.55 4.70-5.70 1.10-2.10 0.30-0.80`;
const ELEMENTS = 'C Mn P S Si Cr Mo V'.split(' ');
const gradeCells = GRADES.trim()
  .split('\n')
  .flatMap((line) => {
    const [grade, ...limits] = line.split(' ');
    return ELEMENTS.flatMap((element, i) => grid('die/grade', 'NADCA-207', `grade: element: ..\ngrade_${grade} ${element} ${limits[i]}`));
  });

export const STEEL: readonly TypedCell[] = [
  ...grid('die/hardness', 'COMPONENT-TABLE', HARDNESS),
  ...grid('die/hardness', 'COMPONENT-TABLE, HB', 'component: steel: group: brinell..\ncavity P20 zinc 290-330'),
  ...grid('die/hardness', 'COMPONENT-TABLE, about 300 HB', 'component: steel: group: brinell_least\nholder_block 4140 zinc 300'),
  ...gradeCells,
  ...grid('die/life', 'NADCA-FAMILY, NADCA-FAQ, thousand shots', 'family: average\nzinc 500\naluminium 125\nmagnesium 200\ncopper 20', 1000),
  ...grid('die/life', 'COMPONENT-TABLE', 'family: greatest\nzinc 1000000\naluminium 100000\nmagnesium 100000\ncopper 10000'),
  ...grid('die/temperature', 'KB-HPDC-PARAMETERS', 'family: ..\nzinc 150-200\naluminium 180-250\nmagnesium 200-280'),
  // The table prints 425, 550, 500 and 950 degF beside these; 950 degF would be 510 degC.
  ...grid('die/temperature', 'COMPONENT-TABLE', 'family: upper\nzinc 218\naluminium 288\nmagnesium 260\ncopper 500'),
  ...grid('die/elastic', 'H13-SHEETS', 'temperature# modulus\n20 212\n100 209\n250 197\n500 175'),
  ...grid('die/elastic', 'H13-SHEETS, 0.27 to 0.30', 'temperature# poisson\n20 0.30\n100 0.30\n250 0.30\n500 0.30\n700 0.30'),
  ...grid('die/hot-yield', 'H13-SHEETS, 44 HRC', 'steel: temperature# yield\nH13_premium 20 1172'),
  ...grid('cooling/steel', 'H13-SHEETS, 7.80 g/cm3', 'density\n7.80', 1000),
  ...grid('cooling/steel', 'H13-SHEETS', 'specific_heat\n460'),
  ...grid('cooling/layout', 'NEWAY-TABLES, guideline for aluminium', 'family: depth..\naluminium 15-25'),
  ...grid('cooling/flow', 'GNIELINSKI-RANGE', 'medium: correlation_least\nwater 3000\noil 3000'),
  ...grid('ejection/contact', 'MAKEITFROM C85800', 'family: poisson\ncopper 0.31'),
  ...grid('ejection/pin', 'H13-SHEETS modulus at 250 degC', 'modulus\n197'),
  ...grid('ejection/pin', 'COMPONENT-TABLE ejector pins', 'hardness..\n46-50'),
  ...grid('ejection/pin', 'KAZMER-MOLD', 'buckling_factor\n1.5'),
  ...grid('ejection/pin', 'PT-PINS', 'slenderness\n100'),
  ...grid('lubricant/dilution', 'HISUPPLIER-LUBRICANT, 30:1 to 100:1; PSAES-LUBRICANT, 1:40 to 1:100', '..\n30-100'),
  ...grid('lubricant/film', 'AED-SPRAY', 'film.. film_severe solids\n1-3 50 30'),
  ...grid('lubricant/film', 'FTJ-WATER-FREE, one third', 'missing\n1/3', 100).map((cell) => ({ ...cell, within: 0.011 })),
  ...grid('lubricant/other', 'FLUID-SOLUTIONS-PLUNGER', 'oil.. bead_size bead_melting\n1000-5000 3 80'),
  ...grid('lubricant/other', 'FTJ-WATER-FREE, 1/800', 'water_free\n800'),
  ...grid('lubricant/surface', 'AED-SPRAY', '.. special\n150-250 400'),
  ...grid('metal/melt-loss', 'QC-DROSS, 1 to 2 % clean, 6 to 10 % soiled', 'family: ..\naluminium 1-10'),
  ...grid('certificate/aluminium-melt', 'SLM-INGOT, STENA-ALLOYS: ingot 0.6 to 1.0, 0.6 to 1.1 %', 'iron_least\n0.6'),
  ...grid('certificate/aluminium-melt', 'EN-AC-43500-SHEET, 0.40 to 0.80 %', 'manganese_instead\n0.40'),
  ...grid('finish/blister', 'KB-VACUUM', '.. time\n480-500 30'),
  ...grid('finish/flash', 'NEWAY-TABLES', 'family: vendor\naluminium 0.15'),
  ...grid('finish/leak', 'GODFREY-WING-COST', 'leaking still\n3 5'),
  ...grid('finish/left', 'KINETIC-TRIM', 'line..\n0.005-0.010', INCH),
  ...grid('finish/left', 'NADCA-C8-1 item C2', 'die_trim\n0.015', INCH),
];
