import type { Diagnostic } from '../index.ts';

/** Something is wrong with what the user gave; it ends the command with the exit code of bad input. */
export class BadInput extends Error {
  constructor(readonly diagnostics: readonly Diagnostic[]) {
    super(diagnostics[0]?.message ?? 'bad input');
    this.name = 'BadInput';
  }
}

/** A fault without a place in a file. */
export function badInput(code: string, message: string, fix?: string): BadInput {
  return new BadInput([{ code, severity: 'error', message, ...(fix === undefined ? {} : { fix }) }]);
}
