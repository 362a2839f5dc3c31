import type { Planned } from '../index.ts';
import { planPart } from '../index.ts';
import { BadInput } from './fault.ts';
import { readText } from './files.ts';
import type { Io } from './io.ts';
import type { CommonOptions } from './setting-options.ts';
import type { Ground } from './settings.ts';
import { VERSION } from './version.ts';

/** The options of every command that reads a part. */
export interface PartOptions extends CommonOptions {
  readonly set?: readonly string[];
}

/**
 * Reads one part file and plans it on the ground of its settings.
 * @throws BadInput when the file cannot be read as a text.
 */
export async function planFile(
  file: string,
  options: { readonly set?: readonly string[] | undefined; readonly wave?: boolean | undefined },
  { rulebook, plant }: Pick<Ground, 'rulebook' | 'plant'>,
  io: Io,
): Promise<Planned> {
  const part = await readText(file, io);
  return planPart({
    part,
    rulebook,
    version: VERSION,
    ...(plant === undefined ? {} : { plant }),
    ...(options.set === undefined ? {} : { set: options.set }),
    ...(options.wave === undefined ? {} : { wave: options.wave }),
  });
}

/** The plan, or its faults thrown. */
export function planOrFault(planned: Planned): NonNullable<Planned['plan']> {
  if (planned.plan === undefined) throw new BadInput(planned.diagnostics);
  return planned.plan;
}
