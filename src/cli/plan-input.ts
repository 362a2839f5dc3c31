import type { Planned, Rulebook, SourceText } from '../index.ts';
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

/** What a part is planned with besides its own file. */
export interface PlanSetting {
  readonly rulebook: Rulebook;
  readonly plant?: SourceText | undefined;
  readonly set?: readonly string[] | undefined;
  readonly wave?: boolean | undefined;
}

/** Plans the text of a part. */
export function planText(part: SourceText, { rulebook, plant, set, wave }: PlanSetting): Planned {
  return planPart({
    part,
    rulebook,
    version: VERSION,
    ...(plant === undefined ? {} : { plant }),
    ...(set === undefined ? {} : { set }),
    ...(wave === undefined ? {} : { wave }),
  });
}

/**
 * Reads one part file and plans it on the ground of its settings.
 * @throws BadInput when the file cannot be read as a text.
 */
export async function planFile(
  file: string,
  { set, wave }: { readonly set?: readonly string[] | undefined; readonly wave?: boolean | undefined },
  { rulebook, plant }: Pick<Ground, 'rulebook' | 'plant'>,
  io: Io,
): Promise<Planned> {
  return planText(await readText(file, io), { rulebook, plant, set, wave });
}

/** The plan, or its faults thrown. */
export function planOrFault(planned: Planned): NonNullable<Planned['plan']> {
  if (planned.plan === undefined) throw new BadInput(planned.diagnostics);
  return planned.plan;
}
