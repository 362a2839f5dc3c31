import type { Root } from 'mdast';
import { gfmTableToMarkdown } from 'mdast-util-gfm-table';
import { type Options, toMarkdown } from 'mdast-util-to-markdown';
import type { Plan } from '../../engine/plan.ts';
import { assumptions, cautions, notChecked, sources, unverified } from './closing.ts';
import { findingNodes } from './findings.ts';
import { otherValues, sectionNodes } from './sections.ts';
import { opening, summary } from './summary.ts';

/** GitHub reads `~x~` as struck out and `$x$` as mathematics; neither is in the base grammar, so both are named here. */
const GITHUB_SIGNS: Options = {
  unsafe: [
    { character: '~', inConstruct: 'phrasing' },
    { character: '$', inConstruct: 'phrasing' },
  ],
};

/** A plan as GitHub-flavoured Markdown. Tables are not padded to equal widths, so that a changed cell changes one line. */
export function markdownText(plan: Plan): string {
  const tree: Root = {
    type: 'root',
    children: [
      ...opening(plan),
      ...summary(plan),
      ...findingNodes(plan),
      ...sectionNodes(plan),
      ...assumptions(plan),
      ...unverified(plan),
      ...cautions(plan),
      ...notChecked(plan),
      ...otherValues(plan),
      ...sources(plan),
    ],
  };
  return toMarkdown(tree, { bullet: '-', extensions: [gfmTableToMarkdown({ tablePipeAlign: false }), GITHUB_SIGNS] });
}
