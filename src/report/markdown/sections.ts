import type { RootContent } from 'mdast';
import type { Block, Cell, Figure, Plan, Section } from '../../engine/plan.ts';
import { printTraced } from '../../kernel/traced.ts';
import { visibleLine } from '../visible.ts';
import { code, paragraph, part, strong, table } from './nodes.ts';
import { valuesTable } from './values.ts';

/** File of each figure that is written, by its id, as the Markdown file sees it: a relative path with forward slashes. */
export type FigureFiles = ReadonlyMap<string, string>;

/** The sections of the plan, in its order. */
export function sectionNodes(plan: Plan, figures: FigureFiles): RootContent[] {
  return plan.sections.flatMap((section) =>
    part(
      section.title,
      section.blocks.flatMap((block) => blockNodes(plan, block, figures)),
    ),
  );
}

function blockNodes(plan: Plan, block: Block, figures: FigureFiles): RootContent[] {
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
    case 'figure':
      return [figureNode(block, figures.get(block.id))];
  }
}

/** The figure as an image link, or where there is no file of it, one line that says what it would show and how to get it. */
function figureNode(figure: Figure, file: string | undefined): RootContent {
  if (file !== undefined) return paragraph({ type: 'image', url: file.split('/').map(encodeURIComponent).join('/'), alt: visibleLine(figure.text) });
  return paragraph(`Figure "${visibleLine(figure.title)}", drawn with `, code('--format markdown=FILE'), `: ${visibleLine(figure.text)}`);
}

/** A cell of a table of the plan as text; a dash for what the plan does not hold. */
export function cellText(plan: Plan, cell: Cell): string {
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
