/** A printed figure that the program does not come to, with who is right. Misprints without a check here stand with their works in `rules/sources.yaml`. */
export interface Erratum {
  /** Key of the work. */
  readonly work: string;
  readonly prints: string;
  readonly printed: number;
  readonly formula: string;
  readonly inputs: Readonly<Record<string, number>>;
  /** What the formula gives, in its unit. */
  readonly ours: number;
  readonly verdict: string;
}

export const ERRATA: readonly Erratum[] = [
  {
    work: 'NADCA-S4A7',
    prints: 'draft of 0.250 mm on 2.5 mm, aluminium inside wall',
    printed: 0.25,
    formula: 'draft.taper',
    inputs: { length: 2.5, constant: 30 },
    ours: 0.2656,
    verdict: 'The formula: the metric column converts the rounded inch figures, and its own inch column (0.010 in on 0.1 in) is met.',
  },
  {
    work: 'AL-DRAFT-SHEET',
    prints: '1 degree inside on a wall of 25.4 mm',
    printed: 1,
    formula: 'draft.angle',
    inputs: { length: 25.4, constant: 30 },
    ours: 1.909,
    verdict:
      'Open: NADCA-S4A7 prints 1.9 degrees for the same wall. The row leaves the curve of the other rows of the sheet; taken as a misprint or a more daring value.',
  },
  {
    work: 'AL-DRAFT-SHEET',
    prints: '1.5 degrees in all on a hole of 25.4 mm that is 152.4 mm deep',
    printed: 1.5,
    formula: 'draft.angle',
    inputs: { length: 152.4, constant: 20 },
    ours: 1.169,
    verdict: 'Both: the sheet is more generous on its longest core than the curve on which its other holes lie.',
  },
  {
    work: 'PT-PINS',
    prints: '99 lbf (0.440 kN) under the head 5/64 in, 3 in long',
    printed: 0.4404,
    formula: 'ejection.pin-buckling-force',
    inputs: { diameter: 1.984375, length: 76.2, modulus: 206.8427, end_factor: 0.5 },
    ours: 1.0704,
    verdict: 'The formula: the loads are those of other column heads. With 1/32, 3/64, 1/16, 5/64, 3/32 and 1/8 in all of them follow.',
  },
  {
    work: 'KAZMER-MOLD',
    prints: '235 N on each of 20 pins that share 5,800 N',
    printed: 0.235,
    formula: 'ejection.pin-force',
    inputs: { force: 5.8, pins: 20 },
    ours: 0.29,
    verdict: 'The formula: 5,800 / 20 is 290. The diameter that the book goes on to was worked out with 290 N.',
  },
  {
    work: 'KB-SHOT-PROFILE',
    prints: 'a wave of 0.70 m/s in a half-filled sleeve of 100 mm',
    printed: 0.7,
    formula: 'sleeve.critical-speed-momentum',
    inputs: { diameter: 100, fill: 50 },
    ours: 0.622,
    verdict: 'The formula: half the diameter is the depth at the middle; the mean depth, area over width, is 39.3 mm and gives 0.62 m/s too.',
  },
  {
    work: 'GODFREY-WING-COST',
    prints: '2 castings a day that still leak, 5 % of 30',
    printed: 2,
    formula: 'finish.leakers-left',
    inputs: { leakers: 30, still: 5 },
    ours: 1.5,
    verdict: 'The formula, on average over the days; the article rounds up, and its yearly sum of 225,600 follows with 2.',
  },
  {
    work: 'IDEALHARD-TONNAGE',
    prints: '3.14 d d for the face of the biscuit, 113 cm2 at 60 mm',
    printed: 113.1,
    formula: 'clamp.projected-area-total',
    inputs: { casting_area: 1e-6, cavities: 1, runner_share: 0, overflow_share: 0, biscuit_diameter: 60 },
    ours: 28.27,
    verdict: 'The formula: a circle is a quarter of that.',
  },
];
