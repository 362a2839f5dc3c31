import { create, fragment } from 'xmlbuilder2';
import type { CheckedFinding } from '../../engine/check/checked.ts';
import { acceptedText, byFile, type CheckReport, placeOf, verdictOf } from './report.ts';

/** Characters that XML cannot hold, however they are written. */
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

interface Case {
  readonly name: string;
  readonly finding?: CheckedFinding;
}

/**
 * The findings in the XML that test runners write: a suite for each file, a case for each finding, and one case that passes
 * for a file without any. What fails the run is a failure, a fault of an input an error, what is accepted is skipped with
 * its reason, and what is below the threshold passes with its text. No times: nothing here reads a clock.
 */
export function* checkJunit(report: CheckReport): Iterable<string> {
  const suites = byFile(report).map(({ file, findings }) => ({ name: file.name === '' ? 'command line' : file.name, cases: casesOf(findings) }));
  const root = create({ version: '1.0', encoding: 'UTF-8' }).ele('testsuites', {
    name: report.tool.name,
    ...countsOf(
      suites.flatMap(({ cases }) => cases),
      report,
    ),
  });
  const [head = ''] = root.end({ prettyPrint: true }).split(/\/>\s*$/);
  yield `${head}>\n`;
  for (const { name, cases } of suites) {
    const suite = fragment().ele('testsuite', { name: attribute(name), file: attribute(name), ...countsOf(cases, report) });
    for (const one of cases) addCase(suite, one, name, report);
    yield `${suite.toString({ prettyPrint: true, offset: 1 })}\n`;
  }
  yield '</testsuites>\n';
}

type Node = ReturnType<typeof fragment>;

function addCase(suite: Node, { name, finding }: Case, file: string, { threshold }: CheckReport): void {
  const place = finding === undefined ? {} : { file: attribute(finding.file || file), line: String(finding.line) };
  const node = suite.ele('testcase', { name: attribute(name), classname: attribute(file), ...place });
  if (finding === undefined) return;
  const verdict = verdictOf(finding, threshold);
  const message = attribute(finding.message);
  const type = attribute(finding.code);
  if (verdict === 'accepted') node.ele('skipped', { message: attribute(acceptedText(finding) ?? '') });
  else if (verdict === 'passing') node.ele('system-out').txt(content(whole(finding)));
  else node.ele(verdict === 'fault' ? 'error' : 'failure', { message, type }).txt(content(whole(finding)));
}

/** A case for each finding, with a name of its own; findings that are alike are numbered. */
function casesOf(findings: readonly CheckedFinding[]): Case[] {
  if (findings.length === 0) return [{ name: 'no findings' }];
  const counts = new Map<string, number>();
  return findings.map((finding) => {
    const name = finding.item === undefined ? finding.code : `${finding.code} ${finding.item}`;
    const count = (counts.get(name) ?? 0) + 1;
    counts.set(name, count);
    return { name: count === 1 ? name : `${name} (${count})`, finding };
  });
}

function countsOf(cases: readonly Case[], { threshold }: CheckReport): Readonly<Record<string, string>> {
  const verdicts = cases.map(({ finding }) => (finding === undefined ? 'passing' : verdictOf(finding, threshold)));
  const count = (wanted: string): string => String(verdicts.filter((verdict) => verdict === wanted).length);
  return { tests: String(cases.length), failures: count('failing'), errors: count('fault'), skipped: count('accepted') };
}

function whole(finding: CheckedFinding): string {
  const { severity, message, notes = [], fix } = finding;
  const place = placeOf(finding);
  return [`${place === '' ? '' : `${place}: `}${severity}: ${message}`, ...notes, ...(fix === undefined ? [] : [`What to do: ${fix}`])].join('\n');
}

/** The writer takes what looks like a reference for one, so that ampersands are written out here; it escapes the other signs. */
function content(text: string): string {
  return text.replace(FORBIDDEN, '').replaceAll('&', '&amp;').replaceAll('\r', '&#13;');
}

/** In an attribute a reader would take line breaks and tabs for spaces. */
function attribute(text: string): string {
  return content(text).replaceAll('\n', '&#10;').replaceAll('\t', '&#9;');
}
