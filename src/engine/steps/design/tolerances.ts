import { Refusal } from '../../../kernel/apply.ts';
import type { Traced } from '../../../kernel/traced.ts';
import { linearTolerance } from '../../../physics/tolerance.ts';
import { centredTolerance, flatness, fullWidth, plusSide } from '../../../physics/tolerance-sum.ts';
import { readTable } from '../../../rulebook/lookup.ts';
import type { DimensionSpec } from '../../../spec/index.ts';
import { choose } from '../../choose.ts';
import { type Ledger, Missing } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';

const LEVELS = ['standard', 'precision'] as const;
type Level = (typeof LEVELS)[number];

/** Constants of the linear tolerance; also read for holes. */
export function fileTolerances(ledger: Ledger): void {
  if (ledger.part.dimensions.length === 0 && ledger.part.holes.every((hole) => hole.tolerance === undefined)) return;
  const { family } = ledger.alloy;
  for (const level of LEVELS) {
    if (lookQuietly(ledger, 'tolerance/linear', 'base', { family, level }, `tolerance.base-${level}`, { title: 'Linear tolerances' }) === undefined) return;
    ledger.look('tolerance/linear', 'step', { family, level }, `tolerance.step-${level}`);
  }
}

/** What each dimension holds at both levels, the verdict on what is asked, and the ISO grade that the asked width allows. */
export function reviewTolerances(ledger: Ledger): void {
  for (const dimension of ledger.part.dimensions) {
    const item = dimension.id;
    ledger.attempt(`tolerance.verdict[${item}]`, `Tolerance of ${item}`, () => {
      for (const level of LEVELS) fileLevel(ledger, dimension, level);
      choose(ledger, 'tolerance.verdict', item);
    });
    ledger.attempt(`tolerance.iso-grade[${item}]`, `ISO 8062-3 grade of ${item}`, () => fileGrade(ledger, dimension));
  }
  reviewFlatness(ledger);
}

function fileLevel(ledger: Ledger, dimension: DimensionSpec, level: Level): void {
  const item = dimension.id;
  const constants = { base: ledger.value(`tolerance.base-${level}`), step: ledger.value(`tolerance.step-${level}`) };
  const linear = ledger.apply(linearTolerance, { dimension: ledger.value('dimension.nominal', item), ...constants }, { id: `tolerance.minus-${level}`, item });
  if (dimension.across === 'none') {
    ledger.put(linear.as(`tolerance.plus-${level}[${item}]`));
    if (level === 'precision') ledger.put(linear.as(`tolerance.centred-precision[${item}]`));
    return;
  }
  const added = fileAdded(ledger, dimension, level);
  if (added === undefined) throw new Missing(`tolerance.added-${level}[${item}]`);
  ledger.apply(plusSide, { linear, added }, { id: `tolerance.plus-${level}`, item });
  if (level === 'precision') ledger.apply(centredTolerance, { linear, added }, { id: 'tolerance.centred-precision', item });
}

/** What the parting line or the slide adds on the plus side; undefined where no figure is published for that size. */
function fileAdded(ledger: Ledger, dimension: DimensionSpec, level: Level): Traced<'mm'> | undefined {
  const { family } = ledger.alloy;
  const item = dimension.id;
  const slide = dimension.across === 'slide';
  const area = slide ? slideFace(ledger, dimension) : ledger.value('part.projected-area');
  const table = slide ? 'tolerance/moving-component' : 'tolerance/parting-line';
  return lookQuietly(ledger, table, 'amount', { family, level, area }, `tolerance.added-${level}`, { title: `Tolerance of ${item}`, item });
}

/** Face of the slide that forms the dimension: the one named, else the greatest, which adds most. */
function slideFace(ledger: Ledger, dimension: DimensionSpec): Traced<'cm2'> {
  const item = dimension.id;
  const filed = ledger.maybe('tolerance.slide-face', item);
  if (filed !== undefined) return filed;
  const slides = ledger.items('slide.forms');
  const { slide } = dimension;
  if (slide === undefined) {
    const faces = slides.map((id) => ledger.value('slide.face-area', id));
    if (faces.length === 0) throw new Missing('a slide that forms it');
    const note = 'no slide is named, so the one with the greatest face';
    return ledger.put(faces.reduce((a, b) => (b.value > a.value ? b : a)).as(`tolerance.slide-face[${item}]`, note));
  }
  const core = ledger.texts.get(`parting.undercut-core[${slide}]`) ?? ledger.texts.get(`parting.hole-core[${slide}]`);
  const found = slides.find((id) => core === `slide ${id}`);
  if (found === undefined) throw new Missing(`a slide for ${slide}, whose core is in: ${core ?? 'nothing listed'}`);
  return ledger.put(ledger.value('slide.face-area', found).as(`tolerance.slide-face[${item}]`, `slide ${found}`));
}

/** The coarsest grade whose width at this size is still within the width asked. */
function fileGrade(ledger: Ledger, dimension: DimensionSpec): void {
  const item = dimension.id;
  const asked = ledger.apply(fullWidth, { tolerance: ledger.value('dimension.tolerance', item) }, { id: 'tolerance.asked-width', item });
  const table = ledger.rulebook.tables['tolerance/iso-8062-3'];
  const axis = table?.axes.find((candidate) => candidate.name === 'grade');
  if (table === undefined || axis?.kind !== 'word') return;
  const nominal = ledger.value('dimension.nominal', item);
  const allowed = axis.values.filter((grade) => {
    try {
      return readTable(table, 'width', { grade, nominal }, 'width', 'mm').result.value <= asked.value;
    } catch (error) {
      if (error instanceof Refusal) return false;
      throw error;
    }
  });
  const grade = allowed[allowed.length - 1];
  ledger.setText('tolerance.iso-grade', grade === undefined ? 'finer than any grade of the table' : `DCTG ${grade}`, { item, at: dimension.at });
  if (grade !== undefined) ledger.look('tolerance/iso-8062-3', 'width', { grade, nominal }, 'tolerance.iso-width', item);
}

/** Flatness that a face as long as the part holds; information, since the part file asks for none. */
function reviewFlatness(ledger: Ledger): void {
  if (ledger.part.dimensions.length === 0) return;
  const sides = (['x', 'y', 'z'] as const).map((axis) => ledger.value(`part.envelope-${axis}`));
  const length = ledger.put(sides.reduce((a, b) => (b.value > a.value ? b : a)).as('tolerance.longest-side'));
  const within = ledger.look('tolerance/flatness', 'within', { level: 'standard' }, 'tolerance.flatness-within');
  for (const level of LEVELS) {
    const base = ledger.look('tolerance/flatness', 'base', { level }, `tolerance.flatness-base-${level}`);
    const step = ledger.look('tolerance/flatness', 'step', { level }, `tolerance.flatness-step-${level}`);
    ledger.apply(flatness, { length, base, step, within }, { id: `tolerance.flatness-${level}` });
  }
}
