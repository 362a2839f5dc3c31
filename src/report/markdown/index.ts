import type { Root } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { assumptions, cautions, notChecked, sources, unverified } from './closing.ts';
import { decisionNodes } from './decisions.ts';
import { findingNodes } from './findings.ts';
import { printMarkdown } from './print.ts';
import { otherValues, sectionNodes } from './sections.ts';
import { opening, summary } from './summary.ts';

/** The whole plan as a tree: half a page of summary, then everything the plan holds. */
export function markdownTree(plan: Plan): Root {
  return {
    type: 'root',
    children: [
      ...opening(plan),
      ...summary(plan),
      ...findingNodes(plan),
      ...sectionNodes(plan),
      ...decisionNodes(plan),
      ...assumptions(plan),
      ...unverified(plan),
      ...cautions(plan),
      ...notChecked(plan),
      ...otherValues(plan),
      ...sources(plan),
    ],
  };
}

/** A plan as GitHub-flavoured Markdown. */
export function markdownText(plan: Plan): string {
  return printMarkdown(markdownTree(plan));
}
