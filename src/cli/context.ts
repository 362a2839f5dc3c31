import type { Command } from 'commander';
import type { Diagnostic, Palette } from '../index.ts';
import { paletteFor } from './colour.ts';
import type { Io, Sink } from './io.ts';

/** What a command gets from the program around it. */
export class Context {
  /** The exit code that the command ends with. */
  exit = 0;

  constructor(
    readonly io: Io,
    private readonly program: Command,
  ) {}

  /** What `--color` or `--no-color` says; undefined without either. */
  get colour(): boolean | undefined {
    return this.program.opts<{ color?: boolean }>().color;
  }

  palette(sink: Sink): Promise<Palette | undefined> {
    return paletteFor(this.colour, this.io.env, sink);
  }

  /** Prints findings to standard error. */
  async report(diagnostics: readonly Diagnostic[]): Promise<void> {
    const { findingsText } = await import('../index.ts');
    this.io.err.write(findingsText(diagnostics, await this.palette(this.io.err)));
  }
}

/** One file of `commands/`: it adds its arguments, options and action. */
export interface CommandModule {
  readonly define: (command: Command, context: Context) => void;
}

/** Collects an option that may be given several times. */
export function collect(value: string, before: readonly string[] | undefined): string[] {
  return [...(before ?? []), value];
}
