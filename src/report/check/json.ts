import type { CheckedFinding } from '../../engine/check/checked.ts';
import { fingerprintsOf } from '../../engine/check/fingerprints.ts';
import { jsonWithList } from './json-list.ts';
import { byFile, type CheckReport, type Counts, countsOf } from './report.ts';

export const FINDINGS_FORMAT = 'findings/1';

/** Files with their counts, and every finding with its place and fingerprint, as JSON. */
export function checkJson(report: CheckReport): Iterable<string> {
  const { tool, exit, findings, threshold } = report;
  const prints = fingerprintsOf(findings);
  const document = {
    format: FINDINGS_FORMAT,
    tool: { name: tool.name, version: tool.version },
    threshold,
    exit,
    summary: { files: report.files.length, ...counted(countsOf(findings)) },
    files: byFile(report)
      .filter(({ file }) => file.name !== '')
      .map(({ file, findings: own }) => ({ file: file.name, judged: file.judged, ...counted(countsOf(own)) })),
    findings: [],
  };
  return jsonWithList(
    document,
    'findings',
    (function* () {
      for (const [i, finding] of findings.entries()) yield findingRecord(finding, prints[i] as string);
    })(),
  );
}

function counted({ error, warning, note, accepted }: Counts) {
  return { errors: error, warnings: warning, notes: note, accepted };
}

function findingRecord(finding: CheckedFinding, fingerprint: string) {
  const { code, severity, message, item, of, file, line, column, endLine, endColumn, path, notes, fix, accepted, fault } = finding;
  return {
    code,
    severity,
    message,
    ...(item === undefined ? {} : { item }),
    ...(of === '' ? {} : { checked: of }),
    ...(file === '' ? {} : { at: { file, line, column, endLine, endColumn, ...(path === '' ? {} : { path }) } }),
    ...(notes === undefined ? {} : { notes }),
    ...(fix === undefined ? {} : { fix }),
    ...(accepted === undefined ? {} : { accepted }),
    ...(fault === undefined ? {} : { fault }),
    fingerprint,
  };
}
