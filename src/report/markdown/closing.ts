import type { RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { TERMS } from '../../engine/terms.ts';
import { printTraced } from '../../kernel/traced.ts';
import { sourceAndStatus } from '../how.ts';
import { originText, STATUS_WORDS } from '../words.ts';
import { code, item, list, paragraph, part, strong, table } from './nodes.ts';
import { titleOf } from './values.ts';

/** The figures that fill a gap, each with its reason. */
export function assumptions(plan: Plan): RootContent[] {
  const assumed = [...plan.values.values()].filter((value) => value.kind === 'assumption');
  const rows = assumed.map((value) => [[titleOf(plan, value.id)], [printTraced(value)], [value.note ?? ''], [sourceAndStatus(value)]]);
  return part('Assumptions', rows.length === 0 ? [] : [table(['Quantity', 'Value', 'Why', 'Source and status'], rows)]);
}

/** Where memory and common practice enter; the figure to check first at the top. */
export function unverified(plan: Plan): RootContent[] {
  const bearing = plan.weak.filter(({ count }) => count > 0);
  const ends = plan.weak.filter(({ count }) => count === 0);
  const rows = bearing.map(({ figure, count }) => [
    [titleOf(plan, figure.id)],
    [code(figure.id)],
    [printTraced(figure)],
    [STATUS_WORDS[figure.status]],
    [String(count)],
  ]);
  const listed = ends.map(({ figure }) => `${titleOf(plan, figure.id)} ${printTraced(figure)}`).join('; ');
  return part('Unverified figures', [
    ...(rows.length === 0 ? [] : [table(['Figure', 'Id', 'Value', 'Status', 'Other values that rest on it'], rows)]),
    ...(ends.length === 0 ? [] : [paragraph(`Unverified too, but no other value rests on them: ${listed}.`)]),
  ]);
}

export function cautions(plan: Plan): RootContent[] {
  const items = plan.cautions.map((caution) =>
    item(
      [strong(caution.title), `: ${caution.text}`],
      list([
        item([`Defer to: ${caution.defer}`]),
        ...(caution.because.length === 0 ? [] : [item([`Because of: ${caution.because.map((id) => titleOf(plan, id)).join(', ')}`])]),
        item([`Source and status: ${originText(caution.source, caution.status)}`]),
        ...(caution.house === undefined ? [] : [item([`House rules: ${caution.house}`])]),
      ]),
    ),
  );
  return part('Cautions', items.length === 0 ? [] : [list(items)]);
}

/** What could not be judged here, what no plan of this tool judges, and who has to look. */
/** What was left open; of a part in a die of several without what no plan judges, which the plan of the die has. */
export function notChecked(plan: Plan, whole = true): RootContent[] {
  const { reviewers, notChecked: never } = plan.standing;
  const items = [
    ...plan.unchecked.map((entry) => item([`${entry.title}: ${entry.missing} (`, code(entry.id), ')'])),
    ...(whole ? never.map((text) => item([text])) : []),
  ];
  return [
    ...part('Not checked', items.length === 0 ? [] : [list(items)]),
    ...part('Who must review it', !whole || reviewers.length === 0 ? [] : [list(reviewers.map((text) => item([text])))]),
  ];
}

/** Words of the trade, for readers who are new to it. */
export function words(): RootContent[] {
  const rows = TERMS.map(({ term, meaning }) => [[term], [meaning]]);
  return part('Words of the trade', [
    table(['Word', 'Meaning'], rows),
    paragraph(
      'Any id of this plan, such as ',
      code('sleeve.fill'),
      ', and any of these words can be looked up with ',
      code('diewright explain'),
      '; ',
      code('diewright list terms'),
      ' has more words.',
    ),
  ]);
}

export function sources(plan: Plan): RootContent[] {
  return part('Sources', plan.sources.size === 0 ? [] : [list([...plan.sources].map(([key, text]) => item([code(key), ` ${text}`])))]);
}
