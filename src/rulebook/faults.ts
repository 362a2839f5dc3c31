import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import { printable } from '../kernel/printable.ts';
import type { RuleCode } from './codes.ts';

/** Collects what is wrong with rule files, in words, each fault at its place. */
export class Faults {
  readonly list: Diagnostic[] = [];

  add(code: RuleCode, at: Place | undefined, message: string, fix: string, notes?: readonly string[]): void {
    const words = { message: line(message), fix: line(fix), ...(notes === undefined ? {} : { notes: notes.map(line) }) };
    this.list.push({ code: `rules/${code}`, severity: 'error', ...words, ...(at === undefined ? {} : { at }) });
  }
}

/** Faults quote words, ids and expressions of the file, which may hold anything. */
function line(text: string): string {
  return printable(text.replace(/\s*\n\s*/g, ' '), Number.POSITIVE_INFINITY);
}
