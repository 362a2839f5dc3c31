import type { Root } from 'mdast';
import { gfmTableToMarkdown } from 'mdast-util-gfm-table';
import { defaultHandlers, type Handle, type Options, toMarkdown } from 'mdast-util-to-markdown';

/** GitHub reads `~x~` as struck out and `$x$` as mathematics; neither is in the base grammar, so both are named here. */
const GITHUB_SIGNS: Options = {
  unsafe: [
    { character: '~', inConstruct: 'phrasing' },
    { character: '$', inConstruct: 'phrasing' },
  ],
};

/**
 * Text in which no character can mean anything to Markdown, wherever it stands: it begins and ends with a letter or digit
 * or the like, and holds no sign that could need an escape. Most cells are of this kind, and looking through all rules of
 * escaping for each of them takes most of the time of a plan. A test holds both roads to the same text.
 */
const HARMLESS = /^(?!\d+[.)])[^\s!-/:-@[-`{-~](?:[^\r\n\t!#$&*<>@[\\\]^_`{|}~]*[^\s!-/:-@[-`{-~])?$/u;

const quickText: Handle = (node, parent, state, info) =>
  HARMLESS.test((node as { value: string }).value) ? (node as { value: string }).value : defaultHandlers.text(node, parent, state, info);

/** The tree as text. Tables are not padded to equal widths, so that a changed cell changes one line. */
export function printMarkdown(tree: Root, road: 'quick' | 'library' = 'quick'): string {
  return toMarkdown(tree, {
    bullet: '-',
    extensions: [gfmTableToMarkdown({ tablePipeAlign: false }), GITHUB_SIGNS],
    ...(road === 'quick' ? { handlers: { text: quickText } } : {}),
  });
}
