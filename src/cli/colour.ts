import type { Palette } from '../index.ts';
import type { Io, Sink } from './io.ts';

/**
 * Whether a stream gets colour: `--color` and `--no-color` win, then FORCE_COLOR (`0` and `false` turn colour off), then
 * NO_COLOR when it is not empty, then whether the stream is a terminal that is not dumb.
 */
export function wantsColour(flag: boolean | undefined, env: Io['env'], sink: Sink): boolean {
  if (flag !== undefined) return flag;
  const { FORCE_COLOR: force, NO_COLOR: no, TERM: term } = env;
  if (force !== undefined && force !== '') return force !== '0' && force !== 'false';
  if (no !== undefined && no !== '') return false;
  return sink.isTTY && term !== 'dumb';
}

/**
 * The palette for a stream; undefined stands for no colour, and loads nothing. Yellow and cyan vanish on white, blue on
 * black; what is taken here can be read on both.
 */
export async function paletteFor(flag: boolean | undefined, env: Io['env'], sink: Sink): Promise<Palette | undefined> {
  if (!wantsColour(flag, env, sink)) return undefined;
  const { Chalk } = await import('chalk');
  const chalk = new Chalk({ level: 1 });
  return { severity: { error: chalk.red, warning: chalk.magenta, note: chalk.bold }, strong: chalk.bold, faint: chalk.dim };
}
