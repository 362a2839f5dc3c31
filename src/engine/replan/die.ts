import { applyFormula } from '../../kernel/apply.ts';
import { Traced } from '../../kernel/traced.ts';
import type { Unit } from '../../kernel/units.ts';
import { velocityFromFlow } from '../../physics/gate.ts';
import { shiftShare, sizeShift } from '../../physics/replan.ts';
import { linearTolerance } from '../../physics/tolerance.ts';
import { choose } from '../choose.ts';
import { type Case, Ledger } from '../ledger.ts';
import { titleOf } from '../step.ts';
import { sumOf } from '../sum.ts';
import { type TextId, type ValueId, wordOf } from '../vocabulary/index.ts';
import type { DieChange, DieElement } from './change.ts';
import { shownOf } from './compare.ts';
import type { KeptValue, Snapshot } from './snapshot.ts';

/** What the existing die is, by the plan before. */
const WAS: readonly (readonly [was: ValueId, before: ValueId])[] = [
  ['replan.was-cavities', 'machine.cavities'],
  ['replan.was-locking-force', 'machine.locking-force'],
  ['replan.was-width', 'die.width'],
  ['replan.was-breadth', 'die.breadth'],
  ['replan.was-height', 'die.height'],
  ['replan.was-shrink', 'shrink.allowance'],
  ['replan.was-casting-temperature', 'alloy.casting-temperature'],
  ['replan.was-gate-area', 'gate.area'],
  ['replan.was-gate-thickness', 'gate.thickness'],
  ['replan.was-runner-area', 'runner.area'],
  ['replan.was-overflow-volume', 'overflow.volume'],
  ['replan.was-vent-area', 'vent.area'],
  ['replan.was-vent-depth', 'vent.depth'],
  ['replan.was-plunger', 'machine.plunger'],
  ['replan.was-pins', 'ejection.pins'],
];
const WAS_WORDS: readonly (readonly [was: TextId, before: TextId])[] = [
  ['replan.was-kind', 'machine.kind'],
  ['replan.was-machine', 'machine.model'],
  ['replan.was-steel', 'die.cavity-steel'],
  ['replan.was-vent', 'vent.kind'],
];

/** What is judged, in the order in which it is told; the die as a whole is judged by all of these. */
const ELEMENTS = [
  'replan.fit',
  'replan.steel',
  'replan.cavity',
  'replan.cores',
  'replan.gate',
  'replan.runner',
  'replan.overflow',
  'replan.vent',
  'replan.feeder',
  'replan.cooling',
  'replan.ejection',
] as const;

/**
 * What of a die that was built to the plan before can serve the plan after, by the decision tables of `replan`. A ledger of
 * its own holds the plan after and, under `replan.was-…`, what the die is.
 */
export function dieChange(before: Snapshot, after: Snapshot, given: Case): DieChange {
  const ledger = new Ledger(given);
  for (const [id, value] of after.values) if (wordOf(id) !== undefined && !id.startsWith('replan.')) ledger.values.set(id, traced(id, value, 'plan after'));
  for (const [id, text] of after.texts) ledger.texts.set(id, text);
  for (const [was, id] of WAS) {
    const value = before.values.get(id);
    if (value !== undefined) ledger.put(traced(was, value, 'plan before'));
  }
  for (const [was, id] of WAS_WORDS) {
    const text = before.texts.get(id);
    if (text !== undefined) ledger.setText(was, text);
  }
  fileLines(ledger, before, after);
  fileSizes(ledger);
  ledger.attempt('replan.gate-velocity', 'Gate velocity through the existing gates', () =>
    ledger.apply(velocityFromFlow, { flow: ledger.value('gate.flow'), area: ledger.value('replan.was-gate-area') }, { id: 'replan.gate-velocity' }),
  );
  ledger.setText('replan.same-plant', before.plant.name === after.plant.name ? 'yes' : 'no');
  ledger.setText('replan.plunger-serves', plungerServes(before, after));
  const elements = ELEMENTS.map((id) => judged(ledger, id));
  const whole = judged(ledger, 'replan.die');
  return { verdict: whole.verdict, because: whole.because, elements, unchecked: ledger.unchecked.map(({ title, missing }) => ({ title, missing })) };
}

/** A value under another id, with the mark that it has in its plan. */
function traced(id: string, value: KeptValue, table: string): Traced {
  return Traced.table(id, value.value, value.unit as Unit, { table, source: value.source, status: value.status });
}

const NOT_JUDGED = 'not judged';

/** Words of the decision tables that ask for nothing to be done. */
const STAYS: ReadonlySet<string> = new Set(['as it is', 'same machine', 'stays on its machine', 'goes in']);

function judged(ledger: Ledger, id: TextId): DieElement {
  const title = titleOf(id);
  const decision = ledger.attempt(id, title, () => choose(ledger, id));
  if (decision === undefined) {
    ledger.setText(id, NOT_JUDGED);
    const missing = ledger.unchecked.find((entry) => entry.id === id)?.missing ?? '';
    return { id, title, verdict: NOT_JUDGED, stays: false, because: missing, values: [] };
  }
  const values = decision.parents.flatMap((parent) => {
    const value = ledger.values.get(parent);
    const shown = value === undefined ? undefined : shownOf(parent, { ...value, title: titleOf(parent) });
    return shown === undefined ? [] : [{ id: parent, title: titleOf(parent), shown }];
  });
  return { id, title, verdict: decision.value, stays: STAYS.has(decision.value), because: decision.because, values };
}

/** Cooling lines of halves and slides together, before and after. */
function fileLines(ledger: Ledger, before: Snapshot, after: Snapshot): void {
  for (const [id, plan] of [
    ['replan.was-lines', before],
    ['replan.lines', after],
  ] as const) {
    const lines = [...plan.values].filter(([key]) => key.startsWith('cooling.lines[')).map(([key, value]) => traced(key, value, 'plan') as Traced<'1'>);
    if (lines.length > 0) ledger.put(sumOf(id, titleOf(id), '1', lines));
  }
}

/**
 * How far each toleranced size moves with the other allowance; without any, the longest side against the tolerance that the
 * trade holds. A size that is machined anyway does not count.
 */
function fileSizes(ledger: Ledger): void {
  ledger.attempt('replan.size-shift', 'Shift of sizes by the other shrinkage', () => {
    const [before, after] = [ledger.value('replan.was-shrink'), ledger.value('shrink.allowance')];
    const sizes = ledger.part.dimensions.flatMap(({ id: item }) => {
      const [dimension, tolerance] = [ledger.maybe('dimension.nominal', item), ledger.maybe('dimension.tolerance', item)];
      const machined = ledger.texts.get(`tolerance.verdict[${item}]`) === 'machine it';
      return dimension === undefined || tolerance === undefined || machined ? [] : [{ item, dimension, tolerance }];
    });
    const held = sizes.length > 0 ? sizes : [longestSide(ledger)];
    const shifts = held.map(({ item, dimension, tolerance }) => {
      const shift = ledger.apply(sizeShift, { dimension, before, after }, { item });
      return { shift, share: applyFormula(shiftShare, { shift, tolerance }).result };
    });
    const [first, ...others] = shifts as [(typeof shifts)[number], ...typeof shifts];
    const most = others.reduce((worst, one) => (one.share.value > worst.share.value ? one : worst), first);
    ledger.put(most.share);
    ledger.put(most.shift.as('replan.shift-deciding'));
  });
}

function longestSide(ledger: Ledger): { readonly item: string; readonly dimension: Traced<'mm'>; readonly tolerance: Traced<'mm'> } {
  const sides = [ledger.value('part.envelope-x'), ledger.value('part.envelope-y'), ledger.value('part.envelope-z')];
  const dimension = sides.reduce((longest, side) => (side.value > longest.value ? side : longest));
  // A part without tolerances has these constants in no plan.
  const constant = (column: 'base' | 'step'): Traced<'mm'> =>
    ledger.maybe(`tolerance.${column}-standard`) ??
    ledger.look('tolerance/linear', column, { family: ledger.alloy.family, level: 'standard' }, `tolerance.${column}-standard`);
  const { result: tolerance } = applyFormula(linearTolerance, { dimension, base: constant('base'), step: constant('step') });
  return { item: 'longest side', dimension, tolerance };
}

/** Whether the plunger of the existing die is one of the planned machine that serves: the machine's table of plungers says so. */
function plungerServes(before: Snapshot, after: Snapshot): string {
  const diameter = before.values.get('machine.plunger')?.value;
  const key = [...after.values].find(([id, { value }]) => id.startsWith('pq2.plunger-diameter[') && value === diameter)?.[0];
  const item = key?.slice(key.indexOf('['));
  return item !== undefined && after.texts.get(`pq2.plunger-verdict${item}`) === 'serves' ? 'yes' : 'no';
}
