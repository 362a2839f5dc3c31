import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import type { RuleCode } from './codes.ts';

/** Collects what is wrong with rule files, in words, each fault at its place. */
export class Faults {
  readonly list: Diagnostic[] = [];

  add(code: RuleCode, at: Place | undefined, message: string, fix: string, notes?: readonly string[]): void {
    this.list.push({ code: `rules/${code}`, severity: 'error', message, fix, ...(at === undefined ? {} : { at }), ...(notes === undefined ? {} : { notes }) });
  }
}
