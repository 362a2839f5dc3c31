import { existsSync } from 'node:fs';
import {
  applyBaseline,
  type BaselineEntry,
  baselineOf,
  baselineText,
  type CheckedFile,
  type CheckedFinding,
  checkedFindings,
  type FilesOfRun,
  readBaseline,
  sortFindings,
  visibleLine,
} from '../../index.ts';
import { BadInput } from '../fault.ts';
import { readFileText } from '../files.ts';
import { shownPath } from '../find/look-up.ts';
import type { WholeFile } from '../write-whole.ts';

const MOST_BYTES = 50_000_000;

/** The baselines of a run: the one that it is held against, and the one that it writes. */
export interface Baselines {
  readonly entries: readonly BaselineEntry[];
  readonly writeTo?: string | undefined;
}

/**
 * Reads the baseline of `--baseline`, and the one that `--write-baseline` is about to write over, for its reasons.
 * @throws BadInput when one of them is no baseline.
 */
export function readBaselines(path: string | undefined, writeTo: string | undefined): Baselines {
  const entries = new Map<string, BaselineEntry>();
  if (path !== undefined) for (const entry of readOne(path)) entries.set(entry.fingerprint, entry);
  if (writeTo !== undefined && shownPath(writeTo) !== (path === undefined ? undefined : shownPath(path)) && existsSync(writeTo))
    for (const entry of readOne(writeTo)) if (!entries.has(entry.fingerprint)) entries.set(entry.fingerprint, entry);
  return { entries: [...entries.values()], writeTo };
}

function readOne(path: string): readonly BaselineEntry[] {
  const { text } = readFileText(path, MOST_BYTES);
  const { entries, diagnostics } = readBaseline({ name: shownPath(path), text });
  if (entries === undefined) throw new BadInput(diagnostics);
  return entries;
}

export interface Judged {
  readonly findings: readonly CheckedFinding[];
  /** The baseline to write, if one is. */
  readonly file?: WholeFile;
  /** How many findings it holds. */
  readonly known?: number;
}

/** Marks the known findings, and says which entries are stale; or makes the new baseline and marks what it knows. */
export function judgeByBaseline(findings: readonly CheckedFinding[], files: readonly CheckedFile[], { entries, writeTo }: Baselines, shown: boolean): Judged {
  const judged = new Set(files.filter((file) => file.judged).map(({ name }) => visibleLine(name)));
  const named = new Set(files.map(({ name }) => visibleLine(name)));
  const run: FilesOfRun = { judged: (file) => judged.has(visibleLine(file)), there: (file) => named.has(visibleLine(file)) || existsSync(file) };
  const current = writeTo === undefined ? entries : baselineOf(findings, entries, run);
  const { findings: marked, stale } = applyBaseline(findings, current, run);
  const all = stale.length === 0 ? marked : sortFindings([...marked, ...stale.flatMap((one) => checkedFindings(one.at?.source.name ?? '', [one], { shown }))]);
  if (writeTo === undefined) return { findings: all };
  return { findings: all, file: { path: writeTo, text: baselineText(current) }, known: current.length };
}
