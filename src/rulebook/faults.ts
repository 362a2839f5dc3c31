import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import { oneLine } from '../kernel/printable.ts';
import type { RuleCode } from './codes.ts';

/** Collects what is wrong with rule files, in words, each fault at its place. */
export class Faults {
  readonly list: Diagnostic[] = [];

  add(code: RuleCode, at: Place | undefined, message: string, fix: string, notes?: readonly string[]): void {
    // Faults quote words, ids and expressions of the file, which may hold anything.
    const words = { message: oneLine(message), fix: oneLine(fix), ...(notes === undefined ? {} : { notes: notes.map(oneLine) }) };
    this.list.push({ code: `rules/${code}`, severity: 'error', ...words, ...(at === undefined ? {} : { at }) });
  }
}
