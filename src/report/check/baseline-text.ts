import { stringify } from 'yaml';
import type { BaselineEntry } from '../../engine/check/baseline.ts';
import { visibleLine } from '../visible.ts';

const HEAD = `# Known findings, written by "diewright check --write-baseline". They are still printed, and do not fail a run.
# Give each a reason that somebody can answer for; writing the file again keeps the reasons and drops what is gone.
`;

/** A baseline as YAML, which its reader takes; comments of an earlier one are not kept. */
export function baselineText(entries: readonly BaselineEntry[]): string {
  const findings = entries.map(({ code, file, item, message, fingerprint, reason }) => ({
    code,
    file: visibleLine(file),
    ...(item === undefined ? {} : { item }),
    message: visibleLine(message),
    fingerprint,
    reason,
  }));
  return HEAD + stringify({ diewright: 'baseline/1', findings }, { lineWidth: 0, aliasDuplicateObjects: false, version: '1.2' });
}
