import type { RootContent } from 'mdast';
import type { CheckedFinding } from '../../engine/check/checked.ts';
import { code, heading, type Inline, onLines, paragraph, strong, table } from '../markdown/nodes.ts';
import { printMarkdown } from '../markdown/print.ts';
import { counted } from '../words.ts';
import { acceptedText, byFile, type CheckReport, countsOf, gravestFirst, placeOf, summaryLine } from './report.ts';

/** A page holds so many files and findings; job pages have a greatest size. */
const MOST_FILES = 500;
const MOST_FINDINGS = 1000;

/** A summary for the page of a job: the counts, the files that have findings, and the findings. */
export function checkMarkdown(report: CheckReport): string {
  return printMarkdown({
    type: 'root',
    children: [heading(2, 'Check of casting plans'), paragraph(`${summaryLine(report)}.`), ...files(report), ...findings(report)],
  });
}

function files(report: CheckReport): RootContent[] {
  const found = byFile(report).filter(({ findings: own }) => own.length > 0);
  if (found.length === 0) return [];
  const rows = found.slice(0, MOST_FILES).map(({ file, findings: own }): Inline[][] => {
    const counts = countsOf(own);
    const name: Inline = file.name === '' ? 'command line' : code(file.name);
    return [[name], [String(counts.error)], [String(counts.warning)], [String(counts.note)], [String(counts.accepted)]];
  });
  return [heading(3, 'Files'), table(['File', 'Errors', 'Warnings', 'Notes', 'Accepted'], rows), ...more(found.length - rows.length, 'file')];
}

/** In their order; where there are more than the page holds, the gravest of them. */
function findings({ findings: all }: CheckReport): RootContent[] {
  if (all.length === 0) return [];
  const shown = new Set(gravestFirst(all).slice(0, MOST_FINDINGS));
  const rows = all
    .filter((finding) => shown.has(finding))
    .map((finding): Inline[][] => [[severity(finding)], place(finding), [code(finding.code)], text(finding)]);
  return [heading(3, 'Findings'), table(['Severity', 'Place', 'Code', 'Finding'], rows), ...more(all.length - rows.length, 'finding')];
}

function severity({ severity: word, accepted }: CheckedFinding): Inline {
  return accepted === undefined ? strong(word) : `${word}, accepted`;
}

function place(finding: CheckedFinding): Inline[] {
  return finding.file === '' ? [] : [code(placeOf(finding))];
}

function text(finding: CheckedFinding): Inline[] {
  const accepted = acceptedText(finding);
  return onLines([finding.message, ...(finding.fix === undefined ? [] : [`What to do: ${finding.fix}`]), ...(accepted === undefined ? [] : [accepted])]);
}

function more(count: number, word: string): RootContent[] {
  return count <= 0 ? [] : [paragraph(`${counted(count, `further ${word}`)} ${count === 1 ? 'is' : 'are'} not shown here; the other formats have them.`)];
}
