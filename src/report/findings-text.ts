import type { Accepted, Diagnostic, Severity } from '../kernel/diagnostic.ts';
import { type CodeFrame, codeFrame } from './code-frame.ts';
import { wrap } from './columns.ts';
import { type Palette, PLAIN } from './palette.ts';
import { visible, visibleLine } from './visible.ts';
import { ACCEPTED_WHERE, countFindings, isWholeFile, placeText } from './words.ts';

const WIDTH = 80;

/** A finding as the terminal shows it. */
export interface ShownFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  /** `valve.part.yaml:12:5`, or nothing. */
  readonly place: string;
  readonly frame?: CodeFrame | undefined;
  readonly notes?: readonly string[] | undefined;
  readonly fix?: string | undefined;
  readonly accepted?: Accepted | undefined;
  /** Where a rule that is not as built in comes from. */
  readonly rule?: string | undefined;
  /** The file whose check gave it, where it stands in another one. */
  readonly from?: string | undefined;
}

/**
 * Findings for a terminal, in the order given: `file:line:column: severity: message [code]`, the line with carets, why,
 * and what to do; the last line counts them. The same form serves findings of a plan and faults of an input file.
 */
export function findingsText(list: readonly Diagnostic[], palette: Palette = PLAIN): string {
  const blocks = list.map((diagnostic) => findingText(shown(diagnostic), palette));
  return `${[...blocks, palette.strong(countFindings(list))].join('\n\n')}\n`;
}

/** One finding, without a line break at the end. */
export function findingText(finding: ShownFinding, palette: Palette): string {
  const { severity, frame, accepted } = finding;
  const paint = palette.severity[severity];
  const place = finding.place === '' ? '' : `${visibleLine(finding.place)}: `;
  const head = accepted === undefined ? `${severity}:` : `${severity}, accepted:`;
  const lines = [`${palette.strong(place)}${paint(head)} ${visible(finding.message)} ${palette.faint(`[${visibleLine(finding.code)}]`)}`];
  if (frame !== undefined) {
    if (frame.before !== undefined) lines.push(`  ${palette.faint(frame.before)}`);
    lines.push(`  ${frame.line}`, `  ${paint(frame.marks)}`);
  }
  if (accepted !== undefined) lines.push(...labelled(`accepted ${ACCEPTED_WHERE[accepted.where]}`, accepted.reason));
  for (const note of finding.notes ?? []) lines.push(...labelled('why', note));
  if (finding.fix !== undefined) lines.push(...labelled('do', finding.fix));
  if (finding.rule !== undefined) lines.push(...labelled('rule', finding.rule));
  if (finding.from !== undefined) lines.push(...labelled('from', finding.from));
  return lines.join('\n');
}

function shown(diagnostic: Diagnostic): ShownFinding {
  const { at } = diagnostic;
  return { ...diagnostic, place: at === undefined ? '' : placeText(at), frame: at === undefined ? undefined : frameOf(diagnostic) };
}

/** The line that a finding points at, with carets; none for a finding about a whole file. */
export function frameOf({ at }: Diagnostic): CodeFrame | undefined {
  return at === undefined || isWholeFile(at) ? undefined : codeFrame(at);
}

function labelled(label: string, text: string): string[] {
  const head = `  ${label}: `;
  const lines = visible(text)
    .split('\n')
    .flatMap((line) => wrap(line, WIDTH, ' '.repeat(head.length)));
  return [head + (lines[0] as string).trimStart(), ...lines.slice(1)];
}
