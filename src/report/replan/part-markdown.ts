import type { RootContent } from 'mdast';
import type { FindingChange, PartChange } from '../../engine/replan/change.ts';
import { code, heading, type Inline, item, list, paragraph, strong, table } from '../markdown/nodes.ts';
import { counted } from '../words.ts';
import { castingsText, shownText } from './words.ts';

/** What changes in one part, or in a die and then in each of its parts, in order of consequence. */
export function partNodes(change: PartChange): RootContent[] {
  return [...nodesOf(change, 3), ...(change.parts ?? []).flatMap((part) => nodesOf(part, 4))];
}

/** @param depth of the heading; a part of a die, which stands below it, has no die of its own. */
function nodesOf(change: PartChange, depth: 3 | 4): RootContent[] {
  const { file, part, standing, before, after, remarks, appeared, vanished, cautions, parts } = change;
  const marks = [part.number, part.revision === undefined ? undefined : `revision ${part.revision}`].filter((mark) => mark !== undefined);
  const errors = appeared.filter(({ severity }) => severity === 'error');
  const others = appeared.filter(({ severity }) => severity !== 'error');
  const gone = vanished.filter(({ severity }) => severity !== 'note').map(({ title }) => title);
  return [
    heading(depth, [part.name, ...marks].join(', ')),
    paragraph(
      code(file),
      `: ${parts === undefined ? '' : `a die with ${castingsText(change)}; `}${before.alloy === after.alloy ? after.alloy : `${before.alloy} to ${after.alloy}`}. `,
      strong(`${upper(standing)}.`),
      ...(depth === 4 ? [] : dieLine(change)),
    ),
    ...(remarks.length === 0 ? [] : [list(remarks.map((text) => item([text])))]),
    ...findingList('Breaks now', errors),
    ...changeTable(change),
    ...dieTable(change),
    ...findingList('New findings', others),
    ...(gone.length === 0 ? [] : [paragraph(`Rules that were broken and hold now: ${unique(gone).join('; ')}.`)]),
    ...(cautions.appeared.length === 0 ? [] : [paragraph(strong('New cautions'), `: ${cautions.appeared.join('; ')}.`)]),
    ...(cautions.vanished.length === 0 ? [] : [paragraph(`Cautions that vanish: ${cautions.vanished.join('; ')}.`)]),
    ...leftOut(change),
  ];
}

function dieLine({ die, dieMissing }: PartChange): Inline[] {
  return [' Existing die: ', strong(die?.verdict ?? 'not judged'), `. ${die?.because ?? `${upper(dieMissing ?? '')}.`}`];
}

function findingList(title: string, findings: readonly FindingChange[]): RootContent[] {
  if (findings.length === 0) return [];
  const items = findings.map(({ severity, message, code: id }) => item([strong(severity), `: ${message} (`, code(id), ')']));
  return [paragraph(strong(title), ':'), list(items)];
}

function changeTable({ groups }: PartChange): RootContent[] {
  const rows = groups.flatMap(({ title, changes }) =>
    changes.map((change, i) => [[i === 0 ? strong(title) : ''], [change.title], [shownText(change.before)], [shownText(change.after)], [change.because ?? '']]),
  );
  return rows.length === 0 ? [] : [table(['', 'What changes', 'Before', 'After', 'Because'], rows)];
}

function dieTable({ die }: PartChange): RootContent[] {
  // Of a die that is made anew nothing is cut.
  if (die === undefined || die.verdict === 'new die') return [];
  const told = die.elements.filter(({ stays }) => !stays);
  const kept = die.elements.filter(({ stays }) => stays).map(({ title }) => title);
  const rows = told.map(({ title, verdict, because, values }) => [
    [title],
    [verdict],
    [because],
    [values.map((value) => `${value.title} ${shownText(value.shown)}`).join('; ')],
  ]);
  return [
    ...(rows.length === 0 ? [] : [table(['Of the existing die', 'What is to be done', 'Because', 'Figures'], rows)]),
    ...(kept.length === 0 ? [] : [paragraph(`Of the existing die can stay: ${kept.join('; ')}.`)]),
  ];
}

function leftOut({ leftOut: { small, further } }: PartChange): RootContent[] {
  const parts = [
    ...(small === 0 ? [] : [`${counted(small, 'number')} changed by less than the threshold`]),
    ...(further === 0 ? [] : [`${counted(further, 'further value')} changed`]),
  ];
  return parts.length === 0 ? [] : [paragraph(`Not listed: ${parts.join('; ')}.`)];
}

function unique(list: readonly string[]): string[] {
  return [...new Set(list)];
}

function upper(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
