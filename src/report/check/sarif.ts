import type { CheckedFinding } from '../../engine/check/checked.ts';
import { fingerprintsOf } from '../../engine/check/fingerprints.ts';
import type { Severity } from '../../kernel/diagnostic.ts';
import { visible } from '../visible.ts';
import { jsonWithList } from './json-list.ts';
import type { CheckReport, RuleInfo } from './report.ts';

const SCHEMA = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';
/** The base that relative paths count from: the folder in which the check was run. */
const BASE = '%SRCROOT%';
/** Longest description that code hosting platforms take. */
const LONGEST = 1024;

/**
 * The findings as a log of one run in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS). Findings that
 * have no file, such as a pattern that matches nothing, stand among the notifications of the run.
 */
export function checkSarif(report: CheckReport): Iterable<string> {
  const { tool, exit, findings } = report;
  const placed = findings.filter(({ file }) => file !== '');
  const prints = fingerprintsOf(findings).filter((_, i) => findings[i]?.file !== '');
  const rules = rulesOf(report, placed);
  const indexes = new Map(rules.map(({ code }, i) => [code, i]));
  const notifications = findings
    .filter(({ file }) => file === '')
    .map(({ code, severity, message }) => ({ descriptor: { id: code }, level: severity, message: plain(message) }));
  const document = {
    version: '2.1.0',
    $schema: SCHEMA,
    runs: [
      {
        tool: { driver: { name: tool.name, semanticVersion: tool.version, rules: rules.map(descriptor) } },
        invocations: [
          {
            executionSuccessful: notifications.length === 0,
            exitCode: exit,
            ...(notifications.length === 0 ? {} : { toolExecutionNotifications: notifications }),
          },
        ],
        originalUriBaseIds: { [BASE]: { description: { text: 'The folder in which the check was run' } } },
        columnKind: 'utf16CodeUnits',
        results: [],
      },
    ],
  };
  return jsonWithList(
    document,
    'results',
    (function* () {
      for (const [i, finding] of placed.entries()) yield result(finding, indexes.get(finding.code) as number, prints[i] as string);
    })(),
  );
}

/** The rules that gave a finding, by code. */
function rulesOf({ rule }: CheckReport, findings: readonly CheckedFinding[]): RuleInfo[] {
  const gravest = new Map<string, Severity>();
  for (const { code, severity } of findings) if (!gravest.has(code) || severity === 'error') gravest.set(code, severity);
  return [...gravest].sort(([a], [b]) => (a < b ? -1 : 1)).map(([code, severity]) => rule(code, severity));
}

function descriptor({ code, title, about, help, severity }: RuleInfo) {
  const text = help ?? `diewright explain ${code}`;
  return {
    id: code,
    shortDescription: { text: cut(title) },
    fullDescription: { text: cut(about) },
    help: { text: `${about}\n\n${text}` },
    defaultConfiguration: { level: severity },
    properties: { tags: ['die casting', code.slice(0, Math.max(0, code.indexOf('/'))) || code] },
  };
}

function result(finding: CheckedFinding, ruleIndex: number, fingerprint: string) {
  const { code, severity, message, fix, accepted, item, of, file, path } = finding;
  return {
    ruleId: code,
    ruleIndex,
    level: severity,
    message: plain(fix === undefined ? message : `${message}\nWhat to do: ${fix}`),
    locations: [
      {
        physicalLocation: { artifactLocation: { uri: uriOf(file), uriBaseId: BASE }, region: regionOf(finding) },
        ...(path === '' ? {} : { logicalLocations: [{ fullyQualifiedName: path }] }),
      },
    ],
    // The second name is the one that a code hosting platform tells equal results by.
    partialFingerprints: { 'diewright/v1': fingerprint, primaryLocationLineHash: fingerprint },
    ...(accepted === undefined
      ? {}
      : { suppressions: [{ kind: accepted.where === 'part' ? 'inSource' : 'external', status: 'accepted', justification: accepted.reason }] }),
    properties: { checked: of, ...(item === undefined ? {} : { item }) },
  };
}

/** A message without placeholders or links: what looks like one of these is written so that it is none. */
function plain(text: string): { readonly text: string } {
  return {
    text: visible(text)
      .replace(/\{(\d+)\}/g, '{{$1}}')
      .replace(/\[(?=[^[\]]*\]\()/g, '\\['),
  };
}

function regionOf({ line, column, endLine, endColumn }: CheckedFinding) {
  return { startLine: line, startColumn: column, endLine, endColumn };
}

/** A relative path as a URI reference (RFC 3986): each part percent-encoded. */
export function uriOf(path: string): string {
  // A lone half of a surrogate pair, which a file name on some systems can hold, has no encoding.
  return path
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .split('/')
    .map(encodeURIComponent)
    .join('/');
}

function cut(text: string): string {
  return text.length <= LONGEST ? text : `${text.slice(0, LONGEST - 1)}…`;
}
