import type { Planned, Rulebook, SourceText } from '../index.ts';
import { planPart } from '../index.ts';
import { BadInput, badInput } from './fault.ts';
import { readText } from './files.ts';
import type { Io } from './io.ts';
import { VERSION } from './version.ts';

/** The options of every command that reads a part. */
export interface PartOptions {
  readonly plant?: string;
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
 * Reads one part file and plans it.
 * @throws BadInput when the file or the plant file cannot be read as a text.
 */
export async function planFile(file: string, options: Omit<PlanSetting, 'rulebook'>, rulebook: Rulebook, io: Io): Promise<Planned> {
  return planText(await readText(file, io), { ...options, rulebook });
}

/** The plant file that `--plant` names, if any. @throws BadInput when it cannot be read, or is standard input like a part. */
export async function readPlantFile(options: PartOptions, parts: readonly string[], io: Io): Promise<SourceText | undefined> {
  const stdin = [...parts, options.plant].filter((name) => name === '-').length;
  if (stdin > 1) throw badInput('cli/input-twice', 'standard input can be read once only', 'name files for the others');
  return options.plant === undefined ? undefined : readText(options.plant, io);
}

/** The plan, or its faults thrown. */
export function planOrFault(planned: Planned): NonNullable<Planned['plan']> {
  if (planned.plan === undefined) throw new BadInput(planned.diagnostics);
  return planned.plan;
}
