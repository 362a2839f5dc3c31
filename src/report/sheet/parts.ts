import type { PhrasingContent, RootContent } from 'mdast';
import { allFindings, type Plan, type PlannedCaution } from '../../engine/plan.ts';
import { code, heading, item, list, paragraph, strong, table } from '../markdown/nodes.ts';
import { cellText } from '../markdown/sections.ts';
import { counted, countFindings } from '../words.ts';
import type { PlanTable } from './form.ts';
import type { Row } from './lines.ts';
import type { SheetName } from './names.ts';
import { type Manner, READERS } from './readers.ts';
import { setSentence } from './sets.ts';

/** What the sheet is, for which part, what kind of document it is, and how the plan stands. */
export function opening(plan: Plan, title: string): RootContent[] {
  const { part, alloy, plant, standing, tool } = plan;
  const marks = [part.number, part.revision === undefined ? undefined : `revision ${part.revision}`].filter((mark) => mark !== undefined);
  return [
    heading(1, `${title}: ${[part.name, ...marks].join(', ')}`),
    { type: 'blockquote', children: [paragraph(strong(standing.status))] },
    paragraph(
      `Alloy ${alloy.id} (${alloy.family}). Plant: ${plant.name}${plant.invented ? ' (invented)' : ''}. Read from `,
      code(part.file),
      `, worked out by ${tool.name} ${tool.version}; formulas, inputs and sources stand in the plan. Findings of the plan: ${countFindings(allFindings(plan))}.${houseSentence(plan)}${setSentence(plan)}`,
      ...errorSentence(plan),
    ),
  ];
}

/** Errors that nobody has accepted stop the work; of accepted ones the reasons stand in the plan, and are read first. */
function errorSentence(plan: Plan): (string | PhrasingContent)[] {
  const errors = allFindings(plan).filter(({ severity }) => severity === 'error');
  if (errors.length === 0) return [];
  const open = errors.some(({ accepted }) => accepted === undefined);
  const said = open
    ? 'Errors stand: nothing is built, set or quoted by this sheet before they are cleared.'
    : 'Every error is accepted: the plan has the reasons.';
  return [' ', strong(said)];
}

/** A sheet says that house rules are in use; which ones, the plan says. */
function houseSentence({ changes = [] }: Plan): string {
  return changes.length === 0 ? '' : ` Worked out with house rules (${counted(changes.length, 'change')}, listed in the plan).`;
}

/** How to read the status of a row, and how many rows rest on memory. */
export function legend(rows: readonly Row[]): RootContent[] {
  const resting = rows.filter(({ mark }) => mark === 'memory');
  return [paragraph(`Status: the weakest that a row rests on; memory is not verified. ${resting.length} of ${counted(rows.length, 'row')} rest on memory.`)];
}

/** The cautions for the reader of a sheet. */
export function cautions(plan: Plan, sheet: SheetName): RootContent[] {
  const told = plan.cautions.filter((caution) => mannerOf(caution, sheet) === 'text');
  const named = plan.cautions.filter((caution) => mannerOf(caution, sheet) === 'title');
  const titles = named.map(({ title }) => title).join('; ');
  const items = [
    ...told.map(({ title, text }) => item([strong(title), `: ${text}`])),
    ...(named.length === 0 ? [] : [item([strong('To be read in the plan'), `: ${titles}.`])]),
  ];
  return items.length === 0 ? [] : [paragraph(strong('Cautions')), list(items)];
}

function mannerOf({ id }: PlannedCaution, sheet: SheetName): Manner | undefined {
  const readers = Object.hasOwn(READERS, id) ? READERS[id] : undefined;
  return readers === undefined ? 'title' : readers[sheet];
}

/** Where the engineer signs. */
export function approval(what: string): RootContent[] {
  return [table(['Approval by a qualified engineer', 'Name', 'Date', 'Signature'], [[[what], [], [], []]])];
}

/** The rows of a table that a section of the plan shows, as text; none where the plan does not have it. */
export function planRows(plan: Plan, { section, title }: PlanTable): string[][] {
  const blocks = plan.sections.filter(({ id }) => id === section).flatMap((one) => one.blocks);
  const rows = blocks.flatMap((block) => (block.kind === 'table' && block.title === title ? block.rows : []));
  return rows.map((row) => row.map((cell) => cellText(plan, cell)));
}
