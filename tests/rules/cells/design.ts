import { grid, type TypedCell } from './read.ts';

/*
 * Published figures of part design, typed a second time from the works. Where a work prints inches, the inches are typed.
 */
const INCH = 25.4;
const SQUARE_INCH = 6.4516;
const POUND = 0.45359237;
const FAQ = 'NADCA-FAQ, alloy properties';
const AREAS = [10, 20, 50, 100, 200, 300];

/** Parting-line amounts in thousandths of an inch by area in square inches; the upper bound of each printed bin is the row. */
const partingLine = (level: string, amounts: string): TypedCell[] =>
  amounts.split(' ').flatMap((amount, i) => {
    const area = Number(((AREAS[i] as number) * SQUARE_INCH).toFixed(3));
    return grid('tolerance/parting-line', 'AL-PART-TOLERANCES', `family: level: area# amount\naluminium ${level} ${area} ${amount}`, INCH / 1000);
  });

const GRADES = '1 2 3 4 5 6 7 8 9 10 11 12'.split(' ');
/** ISO 8062-3:2007 table 2: a row by upper bound of the nominal dimension, full width for each grade. */
const ISO = `
10   0.09 0.13 0.18 0.26 0.36 0.52 0.74 1   1.5 2   2.8 4.2
16   0.10 0.14 0.20 0.28 0.38 0.54 0.78 1.1 1.6 2.2 3   4.4
25   0.11 0.15 0.22 0.30 0.42 0.58 0.82 1.2 1.7 2.4 3.2 4.6
40   0.12 0.17 0.24 0.32 0.46 0.64 0.90 1.3 1.8 2.6 3.6 5
63   0.13 0.18 0.26 0.36 0.50 0.70 1.0  1.4 2   2.8 4   5.6
100  0.14 0.20 0.28 0.40 0.56 0.78 1.1  1.6 2.2 3.2 4.4 6
160  0.15 0.22 0.30 0.44 0.62 0.88 1.2  1.8 2.5 3.6 5   7
250  -    0.24 0.34 0.50 0.70 1.0  1.4  2   2.8 4   5.6 8
400  -    -    0.40 0.56 0.78 1.1  1.6  2.2 3.2 4.4 6.2 9
630  -    -    -    0.64 0.90 1.2  1.8  2.6 3.6 5   7   10`;
/** Only grade 9 was read above 630 mm, in the table of a caster that is the same where both exist. */
const ABOVE = `
1000 - - - - - - - - 4   - - -
1600 - - - - - - - - 4.6 - - -`;
const isoRows = (from: string, text: string): TypedCell[] =>
  text
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [nominal, ...widths] = line.split(/\s+/);
      return GRADES.flatMap((grade, i) => grid('tolerance/iso-8062-3', from, `grade: nominal# width\n${grade} ${nominal} ${widths[i]}`));
    });

export const DESIGN: readonly TypedCell[] = [
  ...grid('draft/constant', 'NADCA-S4A7: D = sqrt(L) / C, aluminium inside C = 30', 'family: surface: level: constant\naluminium inside standard 30'),
  // The printed form has no factor before the root.
  ...['zinc', 'aluminium', 'magnesium', 'copper'].flatMap((family) =>
    ['inside', 'outside', 'hole'].flatMap((surface) =>
      grid('draft/constant', 'NADCA-S4A7: D = sqrt(L) / C', `family: surface: level: factor\n${family} ${surface} standard 1`),
    ),
  ),
  ...grid('draft/least-taper', 'ENCYCLOPEDIA-DC: 1:200, 1:100, 1:100, 1:80', 'family: ratio\nzinc 200\naluminium 100\nmagnesium 100\ncopper 80'),
  ...grid(
    'tolerance/linear',
    'AL-PART-TOLERANCES',
    `family: level: base step
     aluminium standard 0.25 0.025
     aluminium precision 0.05 0.025`,
  ),
  ...partingLine('standard', '5.5 6.5 7.5 12 18 24'),
  ...partingLine('precision', '3.5 4 5 8 12 16'),
  ...grid(
    'tolerance/moving-component-uk',
    'MRT-MOVING-PART',
    `family: area# amount
     aluminium 60 0.125
     aluminium 120 0.20
     aluminium 300 0.30
     aluminium 600 0.375
     zinc 60 0.10
     zinc 120 0.15
     zinc 300 0.20
     zinc 600 0.30`,
  ),
  ...isoRows('ISO-8062-3 table 2', ISO),
  ...isoRows('DEAN-TOLERANCES', ABOVE),
  // The last row is printed "above 500 cm2".
  ...grid(
    'wall/by-area',
    'CN-MANUAL table 2-20',
    `family: area# least normal
     zinc 25 0.5 1.5
     zinc 100 1.0 1.8
     zinc 500 1.5 2.2
     zinc 1000000 2.0 2.5
     aluminium 25 0.8 2.0
     aluminium 100 1.2 2.5
     aluminium 500 1.8 3.0
     aluminium 1000000 2.5 4.0
     magnesium 25 0.8 2.0
     magnesium 100 1.2 2.5
     magnesium 500 1.8 3.0
     magnesium 1000000 2.5 4.0
     copper 25 0.8 1.5
     copper 100 1.5 2.0
     copper 500 2.0 2.5
     copper 1000000 2.5 3.0`,
  ),
  ...grid('wall/greatest', 'CN-MANUAL, at most 6 mm', 'family: usual\naluminium 6'),
  ...grid('wall/greatest', 'CN-COURSE-PARTS, heavy spots cored to 6 mm', 'family: usual\nzinc 6'),
  ...grid('wall/greatest', 'ENCYCLOPEDIA-DC, below 13 mm in all alloys', 'family: absolute\naluminium 13\nzinc 13'),
  ...grid(
    'wall/faq-minimum',
    FAQ,
    `family: size: least
     zinc large 0.035
     zinc small 0.015
     aluminium large 0.080
     aluminium small 0.040
     magnesium large 0.100
     magnesium small 0.040
     copper large 0.090
     copper small 0.055`,
    INCH,
  ),
  ...grid('rib/size', 'CN-MANUAL table 2-21', 'root.. height_greatest\n1-1.4 5'),
  ...grid('rib/draft', 'CN-MANUAL table 2-22', 'height# angle\n20 3\n30 2.5\n40 2\n60 1.5'),
  ...grid('fillet/least-radius', 'NEWAY-TABLES, 0.5 to 1.5 mm', 'absolute\n0.5'),
  ...grid('hole/least-diameter', FAQ, 'family: diameter\nzinc 0.050\naluminium 0.080\nmagnesium 0.080\ncopper 0.250', INCH),
  ...grid(
    'hole/greatest-depth',
    'AL-DRAFT-SHEET',
    'family: diameter# depth\naluminium 3.175 7.9\naluminium 6.35 25.4\naluminium 12.7 50.8\naluminium 25.4 152.4',
  ),
  ...grid(
    'hole/caution-depth',
    'PRESBAR-DRAFT',
    `family: diameter# depth
     aluminium 4 8
     aluminium 5 10
     aluminium 7 14
     aluminium 10 20
     aluminium 13 26
     aluminium 16 32
     aluminium 19 38
     aluminium 25 50
     magnesium 4 8
     magnesium 5 10
     magnesium 7 14
     magnesium 10 20
     magnesium 13 26
     magnesium 16 32
     magnesium 19 38
     magnesium 25 50
     zinc 4 14
     zinc 5 20
     zinc 7 28
     zinc 10 40
     zinc 13 52
     zinc 16 80
     zinc 19 114
     zinc 25 150`,
  ),
  ...grid('hole/small-diameter', 'PRESBAR-DRAFT, below 4 mm', 'family: below depth\nzinc 4 9\naluminium 4 -\nmagnesium 4 -'),
  ...grid('hole/depth-ratio', 'PRESBAR-DRAFT, 1:5 beyond 25 mm', 'caution\n5'),
  ...grid('hole/edge-distance', 'CN-COURSE-PARTS', 'least advised\n1/4 1/3'),
  // Threads an inch, finest; the pitch is 25.4 over them.
  ...grid('thread/cast-external', FAQ, 'family: pitch\nzinc 1/32\naluminium 1/24\nmagnesium 1/24\ncopper 1/10', INCH).map((cell) => ({
    ...cell,
    within: 0.006,
  })),
  ...grid('thread/tapping', 'INDIANALUCAST-KB', 'extra_pitches\n3'),
  ...grid('thread/tapping', 'TAP-CHART', 'length..\n2-3'),
  ...grid(
    'thread/forming-hole',
    'TR-TAPFIX, REMINC-CATALOGUE',
    `screw: pitch top_greatest top_least bottom_greatest bottom_least drilled engagement boss_diameter edge
     M3  0.5  2.90 2.82 2.76 2.68 2.76 6  4.98  1.3
     M4  0.7  3.82 3.74 3.64 3.56 3.64 8  6.64  1.8
     M5  0.8  4.80 4.72 4.58 4.50 4.58 10 8.30  2.1
     M6  1    5.74 5.66 5.48 5.40 5.48 12 9.96  2.6
     M8  1.25 7.69 7.61 7.35 7.27 7.35 16 13.28 3.3
     M10 1.5  9.64 9.56 9.22 9.14 9.22 20 16.60 3.9`,
  ),
  ...grid('machining/stock', 'CN-COURSE-PARTS, 0.2 to 0.5, never above 0.8 mm', 'usual.. greatest\n0.2-0.5 0.8'),
  ...grid('machining/stock', 'INDIANALUCAST-KB', 'opens_porosity\n0.030', INCH),
  ...grid('insert/cover', 'CN-COURSE-PARTS', 'family: least\naluminium 1.5\nzinc 1.5\nmagnesium 1.5'),
  ...grid('insert/embedment', 'NEWAY-TABLES, aluminium 2, zinc 1.5 to 2', 'family: ratio\naluminium 2\nzinc 1.5'),
  ...grid('slide/angle-pin', 'CASTING-PARTS-CORE', 'clearance..\n5-10'),
  ...grid('slide/angle-pin', 'USM-SLIDER', 'greatest lock_extra.. lock_extra_used play.. guide_ratio guided_share shut_off..\n22 2-3 3 0.5-1.0 1.5 2/3 3-5'),
  ...grid('shrink/allowance', 'EMPIRE-FAQ, 0.006 in/in', 'family: used\nzinc 0.6\naluminium 0.6'),
  ...grid('shrink/allowance', 'EXACT-ZINC, EAZALL: ZA-8 0.7, ZA-12 0.75, ZA-27 0.8 %', 'family: .. used\nzinc-aluminium 0.7-0.8 0.75'),
  ...grid('machine/greatest-mass', FAQ, 'family: mass\naluminium 70\ncopper 10\nmagnesium 44\nzinc 75', POUND),
  ...['hot', 'cold'].flatMap((chamber) =>
    grid(
      'machine/shots-per-hour',
      'NADCA-FAMILY, NADCA-FAQ',
      `family: chamber: ..\naluminium ${chamber} 40-200\ncopper ${chamber} 40-200\nmagnesium ${chamber} 75-400`,
    ),
  ),
  ...grid('machine/shots-per-hour', 'NADCA-FAMILY, NADCA-FAQ', 'family: chamber: ..\nzinc hot 200-550'),
];
