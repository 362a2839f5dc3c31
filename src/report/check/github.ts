import type { CheckedFinding } from '../../engine/check/checked.ts';
import { visible } from '../visible.ts';
import { acceptedText, type CheckReport, gravestFirst, summaryLine } from './report.ts';

const COMMANDS = { error: 'error', warning: 'warning', note: 'notice' } as const;

/**
 * Findings as workflow commands, which put them beside the lines of a change. A platform shows only the first few of each
 * severity, so that the gravest come first; the last line is a count.
 */
export function* checkGithub(report: CheckReport): Iterable<string> {
  for (const finding of gravestFirst(report.findings)) yield `${commandOf(finding)}\n`;
  yield `${summaryLine(report)}\n`;
}

function commandOf(finding: CheckedFinding): string {
  const { code, severity, file, line, column, endLine, endColumn, fix, accepted } = finding;
  const title = `${code}${accepted === undefined ? '' : ' (accepted)'}`;
  const properties = [
    ...(file === '' ? [] : [`file=${property(file)}`, `line=${line}`, `endLine=${endLine}`]),
    // Columns are taken only where the finding stands on one line.
    ...(file === '' || line !== endLine ? [] : [`col=${column}`, `endColumn=${endColumn}`]),
    `title=${property(visible(title))}`,
  ];
  const text = [finding.message, ...(fix === undefined ? [] : [`What to do: ${fix}`]), ...(accepted === undefined ? [] : [acceptedText(finding)])].join('\n');
  return `::${accepted === undefined ? COMMANDS[severity] : 'notice'} ${properties.join(',')}::${escaped(visible(text))}`;
}

/** The text of a command: percent signs first, so that no escape is escaped. */
function escaped(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function property(text: string): string {
  return escaped(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
