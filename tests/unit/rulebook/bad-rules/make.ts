/** Files of a rules folder by their path; the place of the fault is marked with `«` in one of them. */
export type Files = Readonly<Record<string, string>>;

export interface BadRules {
  readonly name: string;
  readonly code: string;
  readonly files: Files;
  /** What the message or the advice must hold, such as the nearest word. */
  readonly says?: string;
  /** Codes of further findings. */
  readonly others?: readonly string[];
}

export const GOOD_LIMIT = `title: Wall stays above nought
uses: { wall: part.wall-nominal in mm, family: alloy.family }
when: family == "aluminium"
require: wall >= 1.0
severity: warning
message: 'A wall of {wall} is below {1.0 + 0.0:1} mm'
why: because of this and that
fix: make it thicker
status: practice
examples:
  - { given: { wall: 2.0, family: aluminium }, holds: true }
  - { given: { wall: 0.5, family: aluminium }, holds: false }
`;

export const GOOD_TABLE = `title: Draft constants of the house
reason: the dies of the house are polished along the draw
about: as the built-in one
axes:
  family: { values: [zinc, aluminium] }
  surface: { values: [inside, outside, hole] }
  level: { values: [standard, precision] }
gives:
  constant: { unit: '1', meaning: draft constant }
  factor: { unit: '1', meaning: factor before the square root }
status: practice
rows:
  - { family: aluminium, surface: inside, level: standard, constant: 35, factor: 1 }
  - { family: aluminium, surface: [outside, hole], level: standard, constant: 60, factor: 1 }
`;

export const GOOD_CHOICE = `decisions:
  medium:
    title: Coolant
    reason: one oil unit serves the whole hall
    uses: { family: alloy.family, use: quality.use }
    rows:
      - { when: family == "magnesium" || use == "structural", choose: oil, because: one unit for all, status: practice }
      - { when: 'true', choose: water, because: the rest is cooled with water, status: practice }
    examples:
      - { given: { family: aluminium, use: general }, chooses: water }
      - { given: { family: magnesium, use: general }, chooses: oil }
`;

export const GOOD_CAUTION = `cautions:
  house-gloves:
    title: Gloves at the trim press
    uses: { trimming: finish.trimming }
    when: trimming != "none"
    text: Wear gloves.
    defer: Plant rules; local codes and licensed practice prevail.
    status: practice
    examples:
      - { given: { trimming: press }, applies: true }
      - { given: { trimming: none }, applies: false }
`;

export const GOOD_ALLOY = `family: aluminium
alloys:
  House 226:
    name: House 226
    designations: [{ system: house, code: House 226 }]
    chamber: { allows: [cold], status: practice }
    composition: { unit: 'wt %', balance: Al, status: practice, limits: { Si: [8, 11], Cu: [2, 4] } }
    properties:
      density: { value: 2.76, unit: g/cm3, source: [HOUSE-MELT table 1] }
      liquidus: { value: 593, unit: degC, status: memory }
`;

export const GOOD_SOURCES = `HOUSE-MELT:
  title: Melt sheet of the house
  read: sheet of the invented plant
`;

/** A text with one edit. */
export function edit(text: string, from: string, to: string): string {
  if (text.split(from).length !== 2) throw new Error(`"${from}" does not stand exactly once`);
  return text.replace(from, () => to);
}

/** A text with edits, each a piece and what takes its place. */
function edits(text: string, pairs: readonly string[]): string {
  let edited = text;
  for (let i = 0; i < pairs.length; i += 2) edited = edit(edited, pairs[i] as string, pairs[i + 1] as string);
  return edited;
}

export const limit = (...pairs: readonly string[]): Files => ({ 'limits/wall/house.yaml': edits(GOOD_LIMIT, pairs) });
export const table = (...pairs: readonly string[]): Files => ({ 'tables/draft/constant.yaml': edits(GOOD_TABLE, pairs) });
export const choice = (...pairs: readonly string[]): Files => ({ 'choices/cooling.yaml': edits(GOOD_CHOICE, pairs) });
export const caution = (...pairs: readonly string[]): Files => ({ 'cautions/handling.yaml': edits(GOOD_CAUTION, pairs) });
export const alloy = (...pairs: readonly string[]): Files => ({ 'alloys/aluminium.yaml': edits(GOOD_ALLOY, pairs), 'sources.yaml': GOOD_SOURCES });
