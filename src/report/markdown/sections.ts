import type { RootContent } from 'mdast';
import type { Block, Cell, Plan, Section } from '../../engine/plan.ts';
import { printTraced } from '../../kernel/traced.ts';
import { code, paragraph, part, strong, table } from './nodes.ts';
import { valuesTable } from './values.ts';

/** The sections of the plan, in its order. */
export function sectionNodes(plan: Plan): RootContent[] {
  return plan.sections.flatMap((section) =>
    part(
      section.title,
      section.blocks.flatMap((block) => blockNodes(plan, block)),
    ),
  );
}

function blockNodes(plan: Plan, block: Block): RootContent[] {
  switch (block.kind) {
    case 'values':
      return [valuesTable(plan, block.ids)];
    case 'table':
      return [
        ...(block.title === undefined ? [] : [paragraph(strong(block.title))]),
        table(
          block.columns,
          block.rows.map((row) => row.map((cell) => [cellText(plan, cell)])),
        ),
      ];
    case 'text':
      return [paragraph(block.phrase.map((piece) => cellText(plan, piece)).join(''))];
  }
}

function cellText(plan: Plan, cell: Cell): string {
  if (typeof cell === 'string') return cell;
  if ('decision' in cell) return plan.decisions.get(cell.decision)?.value ?? '–';
  const value = plan.values.get(cell.value);
  return value === undefined ? '–' : printTraced(value);
}

/** Values whose derivation no section spells out: those that stand in tables and sentences only, and the given data. */
export function otherValues(plan: Plan, wanted: boolean): RootContent[] {
  const shown = new Set(plan.sections.flatMap((section: Section) => section.blocks.flatMap((block) => (block.kind === 'values' ? block.ids : []))));
  const rest = [...plan.values.keys()].filter((id) => !shown.has(id));
  if (rest.length === 0) return [];
  if (wanted) return part('Data and workings', [valuesTable(plan, rest)]);
  const pointer = paragraph(
    `${rest.length} further values - alloy data, table figures, workings of each item - stand in the JSON plan; `,
    code('--workings'),
    ' prints them here, and ',
    code('diewright explain ID FILE'),
    ' shows how any one came about.',
  );
  return part('Data and workings', [pointer]);
}
