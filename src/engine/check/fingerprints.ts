import { hashOf } from '../../kernel/diagnostic.ts';
import type { CheckedFinding } from './checked.ts';

/**
 * A fingerprint of each finding of a check: the same when lines have moved, entries of a list have changed their order or
 * figures have changed, and another one for every finding of the run. Findings that are equal but for that are numbered in
 * their order.
 */
export function fingerprintsOf(findings: readonly CheckedFinding[]): string[] {
  const counts = new Map<string, number>();
  return findings.map(({ of, file, code, item, path }) => {
    // The position in a list says nothing where the entry is known by its name.
    const words = [of, file, code, item ?? '', item === undefined ? path : path.replace(/\[\d+\]/, '[]')];
    const key = words.join('\u0000');
    const count = counts.get(key) ?? 0;
    counts.set(key, count + 1);
    return hashOf(count === 0 ? words : [...words, String(count)]);
  });
}
