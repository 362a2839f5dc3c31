import { equationOf, substitute } from '../kernel/formula.ts';
import { STATUSES, type Status } from '../kernel/status.ts';
import type { Traced } from '../kernel/traced.ts';
import { convert } from '../kernel/units.ts';
import { KIND_WORDS, originText, RANGE_WORDS } from './words.ts';

/** How a value was reached: equations, a table's id, and a remark; each report lays these out in its own way. */
export interface How {
  readonly equations: readonly string[];
  readonly table?: string;
  /** In words: what kind of figure it is, its note, and what is wrong with its range. */
  readonly remarks: readonly string[];
}

export function howOf(value: Traced): How {
  const remarks: string[] = [];
  if (value.kind === 'input')
    remarks.push(value.source[0] === 'PART' ? 'part file' : value.source[0] === 'PLANT' ? 'plant' : value.source[0] === 'DIE' ? 'die file' : KIND_WORDS.input);
  else if (value.kind !== 'formula' && value.kind !== 'table' && value.kind !== 'pinned') remarks.push(KIND_WORDS[value.kind]);
  if (value.note !== undefined) remarks.push(value.note);
  const range = rangeRemark(value);
  if (range !== undefined) remarks.push(range);
  return { equations: equationsOf(value), remarks, ...(value.table === undefined ? {} : { table: value.table }) };
}

/** A range verdict goes down to all that rests on a value; where it was inherited, that is what is said. */
function rangeRemark({ range, parents }: Traced): string | undefined {
  if (range === 'inside') return undefined;
  return parents.some((parent) => parent.range === range) ? 'rests on a figure taken outside its valid range' : RANGE_WORDS[range];
}

/** The formula with its numbers put in; the formula alone where the numbers were not kept. */
function equationsOf(value: Traced): string[] {
  const { formula, numbers } = value;
  if (value.kind !== 'formula' || formula === undefined) return [];
  return numbers === undefined ? [equationOf(formula)] : substitute(formula, numbers, convert(value.value, value.unit, formula.unit));
}

const RESTS: Readonly<Record<Status, string>> = {
  source: '',
  derived: 'rests on derived figures',
  practice: 'rests on common practice',
  memory: 'rests on a figure from memory',
};

/** Source and status: of a formula its own, and then the weaker status of what it was given, if it is weaker. */
export function sourceAndStatus(value: Traced): string {
  const own = value.formula?.status;
  if (own === undefined || STATUSES.indexOf(value.status) <= STATUSES.indexOf(own)) return originText(value.source, value.status);
  return `${originText(value.source, own)}; ${RESTS[value.status]}`;
}
