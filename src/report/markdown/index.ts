import type { Root } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { assumptions, cautions, notChecked, sources, unverified, words } from './closing.ts';
import { decisionNodes } from './decisions.ts';
import { findingNodes } from './findings.ts';
import { houseRules } from './house.ts';
import { printMarkdown } from './print.ts';
import { type FigureFiles, otherValues, sectionNodes } from './sections.ts';
import { opening, summary } from './summary.ts';

export interface MarkdownOptions {
  /** Also print the values that no section shows: alloy data, table figures, workings of each item. */
  readonly workings?: boolean;
  /** The files of the plan's figures; a figure that has none is described in a sentence. */
  readonly figures?: FigureFiles;
}

/** The whole plan as a tree: half a page of summary, the sections, and what the plan rests on. */
export function markdownTree(plan: Plan, options: MarkdownOptions = {}): Root {
  return {
    type: 'root',
    children: [
      ...opening(plan),
      ...summary(plan),
      ...findingNodes(plan),
      ...houseRules(plan),
      ...sectionNodes(plan, options.figures ?? new Map()),
      ...decisionNodes(plan),
      ...assumptions(plan),
      ...(plan.inDie === undefined ? unverified(plan) : []),
      // Cautions, reviewers and terms stand in the plan of the die, for all that is in it.
      ...(plan.inDie === undefined ? cautions(plan) : []),
      ...notChecked(plan, plan.inDie === undefined),
      ...otherValues(plan, options.workings ?? false),
      ...(plan.inDie === undefined ? words() : []),
      ...sources(plan),
    ],
  };
}

/** A plan as GitHub-flavoured Markdown; after that of a die come those of its parts. */
export function markdownText(plan: Plan, options: MarkdownOptions = {}): string {
  const parts = (plan.parts ?? []).map(({ plan: part }) => markdownText(part, options));
  return [printMarkdown(markdownTree(plan, options)), ...parts].join('\n');
}
