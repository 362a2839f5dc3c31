import type { RootContent } from 'mdast';
import { formatNumber, formatQuantity } from '../../kernel/format.ts';
import type { Unit } from '../../kernel/units.ts';
import { code, heading, type Inline, item, list, paragraph, strong, table } from '../markdown/nodes.ts';
import { printMarkdown } from '../markdown/print.ts';
import { counted } from '../words.ts';
import type { Replanning } from './head.ts';
import { partNodes } from './part-markdown.ts';
import { castingsText, figureOf, fromTo, machineOf, numbersFromTo, overText, percentText, volumeText } from './words.ts';

/** A replanning as GitHub-flavoured Markdown, in pieces: half a page for the whole set, a table of all parts, then each part. */
export function* replanMarkdown(replanning: Replanning): Iterable<string> {
  const { parts, failures } = replanning;
  const whole: RootContent[] = [
    ...opening(replanning),
    ...summary(replanning),
    ...(parts.length === 0 ? [] : [heading(2, 'All parts'), partsTable(replanning)]),
    ...(failures.length === 0 ? [] : notPlanned(replanning)),
    ...(parts.length === 0 ? [] : [heading(2, 'Part by part')]),
  ];
  // Part by part, for the tree of a large set takes much more room than its text.
  yield printed(whole);
  for (const part of parts) yield `\n${printed(partNodes(part))}`;
}

function printed(children: RootContent[]): string {
  return printMarkdown({ type: 'root', children });
}

function opening({ head, set }: Replanning): RootContent[] {
  const alloys = [...new Set(set.alloys.map(({ after }) => after))];
  const changed = head.settings.length === 0 ? 'no field of the part descriptions' : head.settings.join('; ');
  const plants = set.plants.map(({ before, after }) => fromTo(before, after));
  return [
    heading(1, `Replanning of ${whatOf({ set })}${alloys.length === 1 ? ` in ${alloys[0]}` : ''}`),
    { type: 'blockquote', children: [paragraph(strong(head.standing))] },
    list([
      item([`Set: ${changed}${head.sameCavities ? '; the count of cavities of the plan before' : ''}`]),
      ...(set.alloys.length === 0
        ? []
        : [item([`Alloys: ${set.alloys.map(({ before, after, parts }) => `${fromTo(before, after)} (${counted(parts, 'part')})`).join('; ')}`])]),
      ...(plants.length === 0 ? [] : [item([`Plant: ${plants.join('; ')}`])]),
      item([
        `Plans before: ${head.before === 'made' ? 'made of the files as they stand' : 'those committed beside the files'}; worked out by ${head.tool.name} ${head.tool.version}`,
      ]),
      ...(set.sharedDies === 0 ? [] : [item([SHARED])]),
    ]),
  ];
}

const SHARED =
  'A die with several parts counts as one part in every table, with all its castings; its cost of a part is that of a set of castings, and its parts are not counted again.';

/** `12 parts and 2 dies with several parts` */
function whatOf({ set: { compared, failed, sharedDies } }: Pick<Replanning, 'set'>): string {
  const alone = compared.parts - sharedDies + failed;
  const dies = sharedDies === 0 ? [] : [`${counted(sharedDies, 'die')} with several parts`];
  return [...(alone === 0 && sharedDies > 0 ? [] : [counted(alone, 'part')]), ...dies].join(' and ');
}

function summary({ head, set }: Replanning): RootContent[] {
  const counts = [...set.standings, ...set.moves, ...set.dies].filter(({ parts }) => parts > 0);
  const rows: Inline[][][] = [
    ...(set.failed === 0 ? [] : [[['Could not be planned'], [String(set.failed)], ['–']]]),
    ...counts.map((count) => [[count.title], [String(count.parts)], [volumeText(count)]]),
  ];
  const totals = set.totals.map((total) => [
    [total.id === 'cost.per-year' && set.currency !== undefined ? `${total.title} (${set.currency})` : total.title],
    // The sum over no part is none, and not nothing.
    [total.parts === 0 ? '–' : formatQuantity(total.before, total.unit as Unit)],
    [total.parts === 0 ? '–' : formatQuantity(total.after, total.unit as Unit)],
    [percentText(total.percent)],
    [overText(total)],
  ]);
  return [
    heading(2, 'Summary'),
    table(['Of the set', 'Parts', 'Castings a year'], rows),
    table(['A year', 'Before', 'After', 'Change', 'Added up over'], totals),
    paragraph(
      'Sums run over the parts that are castable in both plans and have the figure in both. Left out are parts that are castable in one plan only or in none, and parts whose plan lacks the figure, often for want of a yearly volume. Castable means that the plan for this plant breaks no rule whose breach is an error. Existing dies are judged as if they had been built to the plan before.',
    ),
    ...(head.sameCavities || !set.moves.some(({ id, parts }) => id === 'cavities' && parts > 0)
      ? []
      : [paragraph('Another count of cavities means another die; ', code('--same-cavities'), ' plans with the count of the existing dies.')]),
    ...investmentNodes({ set }),
    ...stopperNodes({ set }),
    ...machineNodes({ set }),
  ];
}

function investmentNodes({ set }: Pick<Replanning, 'set'>): RootContent[] {
  const spent = set.investment.filter(({ parts, leftOut }) => parts + leftOut > 0);
  if (spent.length === 0) return [];
  const items = spent.map(({ title, amount, parts, leftOut }) =>
    item([`${title}: ${formatNumber(amount)} (${set.currency ?? 'money of the plant'}) for ${overText({ parts, leftOut })}`]),
  );
  return [
    paragraph(strong('To be spent at once'), ', by the estimates of the plans, which are good to a factor of two; cutting existing dies is not in it:'),
    list(items),
  ];
}

function stopperNodes({ set }: Pick<Replanning, 'set'>): RootContent[] {
  if (set.stoppers.length === 0) return [];
  const rows = set.stoppers.map(({ code: id, title, parts }) => [[title], [code(id)], [String(parts)]]);
  return [paragraph(strong('Why parts are no longer castable'), ' (a part may break several rules):'), table(['Rule that is broken', 'Id', 'Parts'], rows)];
}

function machineNodes({ set }: Pick<Replanning, 'set'>): RootContent[] {
  if (set.machines.length === 0) return [];
  const rows = set.machines.map(({ machine, before, after }) => [
    [machine],
    [numbersFromTo(before.parts, after.parts)],
    [`${formatNumber(before.hours)} → ${formatNumber(after.hours)} h`],
    [`${formatNumber(before.machines, 1)} → ${formatNumber(after.machines, 1)}`],
  ]);
  return [paragraph(strong('Load of the machines'), ':'), table(['Machine', 'Parts', 'Machine hours a year', 'Machines at full use of their hours'], rows)];
}

const TABLE_FIGURES = ['machine.cavities', 'cycle.time', 'cycle.hours', 'cost.per-part'] as const;

function partsTable({ parts }: Replanning): RootContent {
  const rows = parts.map(({ file, part, before, after, standing, die, ...shared }) => [
    [shared.parts === undefined ? part.name : `${part.name} (die with ${castingsText(shared)})`],
    [code(file)],
    [standing],
    [fromTo(before.kind, after.kind)],
    [fromTo(machineOf(before), machineOf(after))],
    ...TABLE_FIGURES.map((id) => [
      shared.castings !== undefined && id === 'machine.cavities' ? String(shared.castings) : numbersFromTo(figureOf(before, id), figureOf(after, id)),
    ]),
    [die?.verdict ?? '–'],
  ]);
  return table(['Part', 'File', 'Standing', 'Kind of machine', 'Machine', 'Cavities', 'Cycle, s', 'Hours a year', 'Cost of a part', 'Existing die'], rows);
}

function notPlanned({ failures }: Replanning): RootContent[] {
  return [heading(2, 'What could not be planned'), list(failures.map(({ file, message, code: id }) => item([code(file), `: ${message} (`, code(id), ')'])))];
}
