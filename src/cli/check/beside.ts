import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { CommittedText, Diagnostic } from '../../index.ts';
import { BadInput } from '../fault.ts';
import { readFileText } from '../files.ts';
import { shownPath } from '../find/look-up.ts';
import { kindByName } from './kinds.ts';

/** A plan has a megabyte or two; one file may hold several. */
export const MOST_PLAN_BYTES = 200_000_000;

/** Names of the plans that may lie beside a part: named after it, or for the folder. */
export function planNames(part: string): readonly { readonly name: string; readonly form: CommittedText['form']; readonly shared: boolean }[] {
  const stem = basename(part).replace(/(\.(part|die))?\.ya?ml$/, '');
  return [
    { name: `${stem}.plan.json`, form: 'json', shared: false },
    { name: `${stem}.plan.md`, form: 'markdown', shared: false },
    { name: 'plan.json', form: 'json', shared: true },
    { name: 'plan.md', form: 'markdown', shared: true },
  ];
}

/** The plans beside a part. One that cannot be read as a text is a finding of the part. */
export function plansBeside(part: string): { readonly committed: readonly CommittedText[]; readonly findings: readonly Diagnostic[] } {
  const committed: CommittedText[] = [];
  const findings: Diagnostic[] = [];
  for (const { name, form, shared } of planNames(part)) {
    const path = shownPath(join(dirname(part), name));
    if (!existsSync(path)) continue;
    try {
      committed.push({ source: readFileText(path, MOST_PLAN_BYTES), form, shared });
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      findings.push(...error.diagnostics.map((diagnostic): Diagnostic => ({ ...diagnostic, code: 'check/unreadable-plan' })));
    }
  }
  return { committed, findings };
}

/** Tells whether a part is the only one in its folder; each folder is looked at once. */
export function aloneIn(): (part: string) => boolean {
  const counts = new Map<string, number>();
  return (part) => {
    const folder = dirname(part);
    let count = counts.get(folder);
    if (count === undefined) {
      count = readdirSync(folder).filter((name) => ['part', 'die'].includes(kindByName(name) ?? '')).length;
      counts.set(folder, count);
    }
    return count <= 1;
  };
}
