import { alloyFaults, type Diagnostic, list, type Rulebook, type SourceText } from '../../index.ts';
import { settingFaults } from '../../replan.ts';
import { BadInput, badInput } from '../fault.ts';
import { readText } from '../files.ts';
import type { Io } from '../io.ts';
import { readNumber } from '../outputs.ts';
import type { Rulebooks } from './grounds.ts';
import type { Task } from './job.ts';

/** The options of the command as the command line gives them. */
export interface ReplanOptions {
  readonly alloy?: string;
  readonly plant?: string;
  readonly rules?: readonly string[];
  readonly plantBefore?: string;
  readonly set?: readonly string[];
  readonly before: 'made' | 'committed';
  readonly sameCavities?: boolean;
  readonly leastChange: string;
  readonly everyValue?: boolean;
  readonly format?: readonly string[];
  readonly failOn: 'error' | 'warning' | 'never';
  readonly write?: boolean;
  readonly takeBack?: boolean;
  readonly threads?: string;
  readonly quiet?: boolean;
}

/** The task that the options set for every part. @throws BadInput for anything in them that no part could make good. */
export async function readTask(options: ReplanOptions, rulebooks: Rulebooks, io: Io, colour: boolean): Promise<Task> {
  const set = settingsOf(options);
  const changes = set.length > 0;
  if (
    !changes &&
    options.rules === undefined &&
    options.plant === undefined &&
    options.plantBefore === undefined &&
    options.sameCavities !== true &&
    options.before === 'made'
  )
    throw badInput('cli/usage', 'nothing would change', 'give --alloy, --plant, --rules or --set, or compare with --before committed');
  checkSettings(options, set, rulebooks.after);
  const plantAfter = options.plant === undefined ? undefined : await readPlant(options.plant, rulebooks.after[0], io);
  // A plant that is given with another change is that of both plans; alone, it is itself what changes.
  const plantBefore = options.plantBefore === undefined ? (changes ? plantAfter : undefined) : await readPlant(options.plantBefore, rulebooks.before[0], io);
  return {
    set,
    sameCavities: options.sameCavities === true,
    committed: options.before === 'committed',
    write: options.write === true,
    leastChange: readNumber('least-change', options.leastChange, 100),
    everyValue: options.everyValue === true,
    colour,
    ...(options.rules === undefined ? {} : { rules: options.rules }),
    ...(plantAfter === undefined ? {} : { plantAfter }),
    ...(plantBefore === undefined ? {} : { plantBefore }),
  };
}

/** The fields that are set, an alloy first. */
export function settingsOf({ alloy, set = [] }: Pick<ReplanOptions, 'alloy' | 'set'>): string[] {
  if (alloy === undefined) return [...set];
  if (set.some((setting) => /^\s*alloy\s*=/.test(setting)))
    throw badInput('cli/usage', 'the alloy is given twice', 'give --alloy or --set alloy=..., not both');
  return [`alloy=${JSON.stringify(alloy)}`, ...set];
}

function checkSettings({ alloy, set = [] }: ReplanOptions, settings: readonly string[], rulebooks: Rulebooks['after']): void {
  const named = alloy ?? set.map((setting) => /^\s*alloy\s*=\s*(["']?)(.*)\1\s*$/.exec(setting)?.[2]).find((word) => word !== undefined);
  const faults: Diagnostic[] = [
    ...settingFaults(settings),
    ...(named === undefined ? [] : alloyFaultsOfAll({ name: alloy === undefined ? '--set' : '--alloy', text: named }, rulebooks)),
  ];
  if (faults.length > 0) throw new BadInput(faults);
}

/** An alloy that one project has is no fault here; it is one of the parts of the others. */
function alloyFaultsOfAll(designation: SourceText, rulebooks: Rulebooks['after']): readonly Diagnostic[] {
  const faults = rulebooks.map((rulebook) => alloyFaults(rulebook, designation));
  return faults.every((list) => list.length > 0) ? (faults[0] as readonly Diagnostic[]) : [];
}

/** A plant that can be planned for; its faults are told once, not with every part. */
async function readPlant(path: string, rulebook: Rulebook, io: Io): Promise<SourceText> {
  const plant = await readText(path, io);
  const { listing, diagnostics } = list('machines', { rulebook, plant });
  if (listing === undefined) throw new BadInput(diagnostics);
  return plant;
}
