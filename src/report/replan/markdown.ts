import type { Root, RootContent } from 'mdast';
import { formatNumber, formatQuantity } from '../../kernel/format.ts';
import type { Unit } from '../../kernel/units.ts';
import { code, heading, type Inline, item, list, paragraph, strong, table } from '../markdown/nodes.ts';
import { printMarkdown } from '../markdown/print.ts';
import { counted } from '../words.ts';
import type { Replanning } from './head.ts';
import { partNodes } from './part-markdown.ts';
import { fromTo, numbersFromTo, overText, percentText, volumeText } from './words.ts';

/** A replanning as GitHub-flavoured Markdown: half a page for the whole set, a table of all parts, then each part. */
export function replanMarkdown(replanning: Replanning): string {
  return printMarkdown(replanTree(replanning));
}

function replanTree(replanning: Replanning): Root {
  const { parts, failures } = replanning;
  return {
    type: 'root',
    children: [
      ...opening(replanning),
      ...summary(replanning),
      ...(parts.length === 0 ? [] : [heading(2, 'All parts'), partsTable(replanning)]),
      ...(failures.length === 0 ? [] : notPlanned(replanning)),
      ...(parts.length === 0 ? [] : [heading(2, 'Part by part'), ...parts.flatMap(partNodes)]),
    ],
  };
}

function opening({ head, set }: Replanning): RootContent[] {
  const alloys = [...new Set(set.alloys.map(({ after }) => after))];
  const changed = head.settings.length === 0 ? 'no field of the part descriptions' : head.settings.join('; ');
  const plants = set.plants.map(({ before, after }) => fromTo(before, after));
  return [
    heading(1, `Replanning of ${counted(set.compared.parts + set.failed, 'part')}${alloys.length === 1 ? ` in ${alloys[0]}` : ''}`),
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
    ]),
  ];
}

function summary({ set }: Replanning): RootContent[] {
  const counts = [...set.standings, ...set.moves, ...set.dies].filter(({ parts }) => parts > 0);
  const rows: Inline[][][] = [
    ...(set.failed === 0 ? [] : [[['Could not be planned'], [String(set.failed)], ['–']]]),
    ...counts.map((count) => [[count.title], [String(count.parts)], [volumeText(count)]]),
  ];
  const totals = set.totals.map((total) => [
    [total.id === 'cost.per-year' && set.currency !== undefined ? `${total.title} (${set.currency})` : total.title],
    [formatQuantity(total.before, total.unit as Unit)],
    [formatQuantity(total.after, total.unit as Unit)],
    [percentText(total.percent)],
    [overText(total)],
  ]);
  return [
    heading(2, 'Summary'),
    table(['Of the set', 'Parts', 'Castings a year'], rows),
    table(['A year', 'Before', 'After', 'Change', 'Added up over'], totals),
    paragraph(
      'Sums run over the parts that are castable in both plans and have the figure in both. Castable means that the plan breaks no rule whose breach is an error. Existing dies are judged as if they had been built to the plan before.',
    ),
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
  return [paragraph(strong('Why parts are no longer castable'), ' (a part may break several rules):'), table(['Rule', 'Id', 'Parts'], rows)];
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

function partsTable({ parts }: Replanning): RootContent {
  const rows = parts.map(({ file, part, before, after, standing, die }) => [
    [part.name],
    [code(file)],
    [standing],
    [fromTo(before.kind, after.kind)],
    [fromTo(before.machine, after.machine)],
    [numbersFromTo(before.figures['machine.cavities'], after.figures['machine.cavities'])],
    [numbersFromTo(before.figures['cycle.time'], after.figures['cycle.time'])],
    [numbersFromTo(before.figures['machine.hours-needed'], after.figures['machine.hours-needed'])],
    [numbersFromTo(before.figures['cost.per-part'], after.figures['cost.per-part'])],
    [die?.verdict ?? '–'],
  ]);
  return table(['Part', 'File', 'Standing', 'Kind of machine', 'Machine', 'Cavities', 'Cycle, s', 'Hours a year', 'Cost of a part', 'Existing die'], rows);
}

function notPlanned({ failures }: Replanning): RootContent[] {
  return [
    heading(2, 'Parts that could not be planned'),
    list(failures.map(({ file, message, code: id }) => item([code(file), `: ${message} (`, code(id), ')']))),
  ];
}
