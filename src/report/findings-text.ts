import type { Diagnostic } from '../kernel/diagnostic.ts';
import { codeFrame } from './code-frame.ts';
import { wrap } from './columns.ts';
import { type Palette, PLAIN } from './palette.ts';
import { visible, visibleLine } from './visible.ts';
import { countFindings, isWholeFile, placeText } from './words.ts';

const WIDTH = 100;

/**
 * Findings for a terminal, in the order given: `file:line:column: severity: message [code]`, the line with carets, why,
 * and what to do; the last line counts them. The same form serves findings of a plan and faults of an input file.
 */
export function findingsText(list: readonly Diagnostic[], palette: Palette = PLAIN): string {
  const blocks = list.map((diagnostic) => findingLines(diagnostic, palette).join('\n'));
  return `${[...blocks, palette.strong(countFindings(list))].join('\n\n')}\n`;
}

function findingLines(diagnostic: Diagnostic, palette: Palette): string[] {
  const paint = palette.severity[diagnostic.severity];
  const place = diagnostic.at === undefined ? '' : `${visibleLine(placeText(diagnostic.at))}: `;
  const lines = [
    `${palette.strong(place)}${paint(`${diagnostic.severity}:`)} ${visible(diagnostic.message)} ${palette.faint(`[${visibleLine(diagnostic.code)}]`)}`,
  ];
  const frame = diagnostic.at === undefined || isWholeFile(diagnostic.at) ? undefined : codeFrame(diagnostic.at);
  if (frame !== undefined) {
    if (frame.before !== undefined) lines.push(`  ${palette.faint(frame.before)}`);
    lines.push(`  ${frame.line}`, `  ${paint(frame.marks)}`);
  }
  for (const note of diagnostic.notes ?? []) lines.push(...labelled('why', note));
  if (diagnostic.fix !== undefined) lines.push(...labelled('do', diagnostic.fix));
  if (diagnostic.rule !== undefined) lines.push(...labelled('rule', diagnostic.rule));
  return lines;
}

function labelled(label: string, text: string): string[] {
  const head = `  ${label}: `;
  const lines = visible(text)
    .split('\n')
    .flatMap((line) => wrap(line, WIDTH, ' '.repeat(head.length)));
  return [head + (lines[0] as string).trimStart(), ...lines.slice(1)];
}
