import type { Diagnostic } from '../../kernel/diagnostic.ts';
import { formatQuantity } from '../../kernel/format.ts';
import { Place, type SourceText } from '../../kernel/place.ts';
import { printable } from '../../kernel/printable.ts';
import type { Unit } from '../../kernel/units.ts';
import type { Compared, Difference } from '../compare/plans.ts';

/** So many differences are told; the others are counted. */
const TOLD = 8;
const WORDS: readonly (readonly [Difference['kind'], string, string])[] = [
  ['decision', 'decision', 'decisions'],
  ['finding', 'finding', 'findings'],
  ['value', 'value', 'values'],
  ['text', 'word', 'words'],
  ['place', 'place in the file', 'places in the file'],
  ['entry', 'other entry', 'other entries'],
];

/** A committed plan that a fresh one differs from; undefined when they are the same. `refresh` is the command that renews it. */
export function stalePlan(source: SourceText, differences: readonly Difference[], refresh: string): Diagnostic | undefined {
  if (differences.length === 0) return undefined;
  const counts = WORDS.flatMap(([kind, one, many]) => {
    const count = differences.filter((difference) => difference.kind === kind).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  const told = differences.slice(0, TOLD).map(toldOne);
  const more = differences.length - told.length;
  const differ = differences.length === 1 ? 'differs' : 'differ';
  const figures = differences.some(({ kind }) => kind === 'decision' || kind === 'value');
  const head = figures ? 'the plan is stale' : 'the plan is stale, though its decisions and values hold';
  return stale(source, `${head}: ${joined(counts)} ${differ}; ${told.join('; ')}${more > 0 ? `; and ${more} more` : ''}`, refresh);
}

/** The same for a plan in Markdown, which can only be held line against line. */
export function staleText(source: SourceText, before: string, after: string, refresh: string): Diagnostic | undefined {
  if (before === after) return undefined;
  const [old, fresh] = [before.split('\n'), after.split('\n')];
  const differing = old.findIndex((line, i) => line !== fresh[i]);
  const first = differing < 0 ? old.length : differing;
  const left = new Map<string, number>();
  for (const line of fresh) left.set(line, (left.get(line) ?? 0) + 1);
  const changed = old.filter((line) => {
    const count = left.get(line) ?? 0;
    left.set(line, count - 1);
    return count <= 0;
  }).length;
  const added = fresh.length - (old.length - changed);
  const line = (lines: readonly string[]): string => (lines[first] === undefined ? 'nothing' : `"${printable(lines[first] as string, 90)}"`);
  return stale(
    source,
    `the plan in Markdown is stale, ${changed} ${changed === 1 ? 'line is' : 'lines are'} no longer in a fresh one and ${added} new; line ${first + 1} was ${line(old)}, is ${line(fresh)}`,
    refresh,
  );
}

function stale(source: SourceText, message: string, refresh: string): Diagnostic {
  return {
    code: 'check/stale-plan',
    severity: 'error',
    message,
    at: new Place(source, '', () => [0, source.text.length]),
    fix: `look at what has changed, and renew it with: ${refresh}`,
  };
}

function toldOne(difference: Difference): string {
  switch (difference.kind) {
    case 'finding':
      return `${difference.change} ${difference.severity} ${printable(difference.id)} (${printable(difference.message, 90)})`;
    case 'place':
    case 'entry':
      return printable(difference.id);
    default:
      return moved(difference);
  }
}

function moved({ id, before, after }: Exclude<Difference, { readonly kind: 'finding' | 'place' | 'entry' }>): string {
  const [old, fresh] = [figure(before), figure(after)];
  // Where the usual digits do not show the difference, more of them do.
  const same = old === fresh && typeof before === 'object' && typeof after === 'object';
  const [was, is] = same ? [exact(before), exact(after)] : [old, fresh];
  if (before === undefined) return `${printable(id)} is new, ${is}`;
  if (after === undefined) return `${printable(id)} is gone, was ${was}`;
  return `${printable(id)} was ${was}, is ${is}`;
}

function figure(compared: Compared | undefined): string {
  if (compared === undefined) return '';
  return typeof compared === 'string' ? printable(compared) : formatQuantity(compared.value, printable(compared.unit) as Unit);
}

function exact({ value, unit }: Exclude<Compared, string>): string {
  return unit === '1' ? String(value) : `${value} ${printable(unit)}`;
}

function joined(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
