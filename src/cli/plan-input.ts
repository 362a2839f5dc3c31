import { dirname, join } from 'node:path';
import { type DieEntry, type DieRequest, planDie } from '../die.ts';
import type { Diagnostic, Planned, Rulebook, SourceText } from '../index.ts';
import { planPart, visibleLine } from '../index.ts';
import { leadsOut } from './boundary.ts';
import { kindByName, kindByText } from './check/kinds.ts';
import { BadInput } from './fault.ts';
import { fault, readFileText, readText } from './files.ts';
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

/**
 * Plans the text of a part, or of a die with the parts that it names. Those are looked for in `folder`, that of the file when absent, and
 * named as they are seen from the name of the die.
 */
export function planText(source: SourceText, { rulebook, plant, set, wave }: PlanSetting, folder = dirname(source.name)): Planned {
  const setting = {
    rulebook,
    version: VERSION,
    ...(plant === undefined ? {} : { plant }),
    ...(set === undefined ? {} : { set }),
    ...(wave === undefined ? {} : { wave }),
  };
  return isDie(source) ? planDie({ die: source, partText: partTexts(folder, source.name), ...setting }) : planPart({ part: source, ...setting });
}

/** By its name, else by its first key: standard input and files of other names are dies too. */
export function isDie({ name, text }: SourceText): boolean {
  const kind = kindByName(name);
  return kind === undefined ? kindByText(text) === 'die' : kind === 'die';
}

/** Reads the parts that a die names, in `folder`; they are named as they are seen from the name of the die. */
export function partTexts(folder: string, die: string): DieRequest['partText'] {
  return (entry) => partText(entry, folder, dirname(die));
}

/** The text of a part that a die names; what stands in the way is said at its place in the die file. */
function partText({ file }: DieEntry, folder: string, shown: string): SourceText | readonly Diagnostic[] {
  try {
    const path = join(folder, file.value);
    if (leadsOut(path, join(folder, 'die'))) throw fault(path, 'outside', 'it lies outside the repository of the die file', 'copy it into the repository');
    const { text } = readFileText(path);
    return { name: join(shown, file.value).replaceAll('\\', '/'), text };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return error.diagnostics.map((diagnostic) => ({ ...diagnostic, message: `part file ${visibleLine(file.value)}: ${diagnostic.message}`, at: file.at }));
  }
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
  return planText(await readText(file, io), { rulebook, plant, set, wave }, file === '-' ? '.' : dirname(file));
}

/** The plan, or its faults thrown. */
export function planOrFault(planned: Planned): NonNullable<Planned['plan']> {
  if (planned.plan === undefined) throw new BadInput(planned.diagnostics);
  return planned.plan;
}
