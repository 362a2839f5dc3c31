import type { RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import type { RuleKind } from '../../engine/rule-data.ts';
import { changeWord } from '../here-text.ts';
import { code, paragraph, part, table } from './nodes.ts';

const KINDS: Readonly<Record<RuleKind, string>> = {
  limit: 'limit',
  choice: 'decision table',
  table: 'table',
  caution: 'caution',
  alloy: 'alloy',
  source: 'source',
};

/** What house rules and the project file have changed of the built-in rules, and why; nothing where the plan is worked out by those alone. */
export function houseRules(plan: Plan): RootContent[] {
  const { changes = [] } = plan;
  if (changes.length === 0) return [];
  const rows = changes.map((change) => [
    [`${change.title} (${KINDS[change.what]} `, code(change.id), ')'],
    [changeWord(change)],
    [change.reason ?? '–'],
    [code(`${change.file}:${change.line}`)],
  ]);
  return part('House rules', [
    paragraph('This plan is not worked out by the built-in rules alone. Who uses it must agree with what the house has changed:'),
    table(['Rule', 'Change', 'Why', 'File'], rows),
  ]);
}
