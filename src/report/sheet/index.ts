import type { Root, RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { printMarkdown } from '../markdown/print.ts';
import type { FigureFiles } from '../markdown/sections.ts';
import { dieBody } from './die.ts';
import type { SheetName } from './names.ts';
import { approval, cautions, opening } from './parts.ts';
import { quoteBody } from './quote.ts';
import { shotBody } from './shot.ts';
import { trialBody } from './trial.ts';

interface Sheet {
  readonly title: string;
  readonly body: (plan: Plan, figures: FigureFiles) => RootContent[];
  /** What the engineer signs for. */
  readonly approval: string;
}

const SHEET: Readonly<Record<SheetName, Sheet>> = {
  die: { title: 'Die sheet', body: dieBody, approval: 'The die may be drawn' },
  shot: { title: 'Shot sheet', body: shotBody, approval: 'The machine may be set' },
  trial: { title: 'Trial sheet', body: trialBody, approval: 'The first shot may be made' },
  quote: { title: 'Quote sheet', body: quoteBody, approval: 'The figures may be quoted' },
};

export interface SheetOptions {
  /** The files of the plan's figures, to be linked. */
  readonly figures?: FigureFiles;
}

/** One page of a plan for one reader, as a tree; it says nothing that the plan does not hold. */
export function sheetTree(name: SheetName, plan: Plan, options: SheetOptions = {}): Root {
  const sheet = SHEET[name];
  return {
    type: 'root',
    children: [...opening(plan, sheet.title), ...sheet.body(plan, options.figures ?? new Map()), ...cautions(plan, name), ...approval(sheet.approval)],
  };
}

/** A sheet as GitHub-flavoured Markdown. */
export function sheetText(name: SheetName, plan: Plan, options: SheetOptions = {}): string {
  return printMarkdown(sheetTree(name, plan, options));
}
