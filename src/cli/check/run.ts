import { dirname } from 'node:path';
import { type CheckedFinding, checkedFindings, checkFreshness, type Diagnostic, nameIn, type Plan, readPlantText, type SourceText } from '../../index.ts';
import { BadInput } from '../fault.ts';
import { readFileText } from '../files.ts';
import { type PlanSetting, planText } from '../plan-input.ts';
import type { Ground } from '../settings.ts';
import { aloneIn, plansBeside } from './beside.ts';
import type { Found } from './discover.ts';
import type { FileKind } from './kinds.ts';

/** What every file of a run is checked with. */
export interface CheckSetting {
  /** Rules and plant of a file, by the options and by the project that it belongs to. @throws BadInput when they are wrong. */
  readonly ground: (path: string) => Promise<Pick<Ground, 'rulebook' | 'plant'>>;
  /** The plant that `--plant` names; it is checked by itself. */
  readonly plant?: SourceText | undefined;
  readonly set: readonly string[];
  /** Whether the lines that findings point at are kept, for a format that shows them. */
  readonly shown: boolean;
}

/** What came of one file: plain data, and nothing of it but its findings. */
export interface CheckedOne {
  readonly judged: boolean;
  readonly findings: readonly CheckedFinding[];
  /** Faults of the plant of its project, which come back with each part and are told with the first one. */
  readonly ofPlant?: { readonly plant: string; readonly findings: readonly CheckedFinding[] };
}

/**
 * Checks a file, whatever is in it.
 * @throws BadInput for what no file could make good: rules, project file, `--set`.
 */
export function checkerOf(setting: CheckSetting): (file: Found) => Promise<CheckedOne> {
  const checks = checkers(setting);
  return ({ path, kind }) => checks[kind](path);
}

/** Faults of a `--set` that no part can mend. */
const WRONG_SET: ReadonlySet<string> = new Set(['set/form', 'set/unknown-field', 'set/value']);

/** How each kind of file is checked. A die is planned with the parts that it names. */
function checkers(setting: CheckSetting): Readonly<Record<FileKind, (path: string) => Promise<CheckedOne>>> {
  const alone = aloneIn();
  const part = (path: string): Promise<CheckedOne> => checkPart(path, setting, alone);
  return { part, die: part, plant: async (path) => checkPlant(path, setting) };
}

async function checkPart(path: string, setting: CheckSetting, alone: (part: string) => boolean): Promise<CheckedOne> {
  const { shown, set } = setting;
  const { rulebook, plant } = await setting.ground(path);
  const ground: PlanSetting = { rulebook, plant, set };
  let source: SourceText;
  try {
    source = readFileText(path);
  } catch (error) {
    return unread(path, error, shown);
  }
  const { committed, findings: unreadable } = plansBeside(path);
  // Planned under the name that a plan beside it has, so that both can be compared as they are.
  const name = nameIn(committed, path);
  const names = new Map([[name, path]]);
  const planned = planText({ name, text: source.text }, ground, dirname(path));
  // A --set that is wrong for one part is wrong for all, and is said once.
  const wrong = planned.diagnostics.filter(({ code }) => WRONG_SET.has(code));
  if (wrong.length > 0) throw new BadInput(wrong);
  const ofPlant = ({ at, code }: Diagnostic): boolean => plant !== undefined && at !== undefined && isOf(at.source, plant) && code.startsWith('spec/');
  const own = planned.diagnostics.filter((finding) => !ofPlant(finding));
  // The plant of the run is checked by itself.
  const theirs = plant === undefined || plant.name === setting.plant?.name ? [] : planned.diagnostics.filter(ofPlant);
  const faults = planned.plan === undefined;
  const further =
    theirs.length === 0 || plant === undefined ? {} : { ofPlant: { plant: plant.name, findings: checkedFindings(path, theirs, { shown, faults, names }) } };
  if (planned.plan === undefined) return { judged: false, findings: checkedFindings(path, own, { shown, faults, names }), ...further };
  const again = (as: { readonly part: string; readonly plant?: string | undefined; readonly wave: boolean }): Plan | undefined =>
    planText({ name: as.part, text: source.text }, { ...ground, plant: renamed(plant, as.plant), wave: as.wave }, dirname(path)).plan;
  const stale =
    committed.length === 0 ? [] : await checkFreshness({ part: path, plan: planned.plan, alone: alone(path), committed, again, plant: plant?.name, set });
  return { judged: true, findings: checkedFindings(path, [...own, ...unreadable, ...stale], { shown, names }), ...further };
}

/** The reader of a plant takes its text without a byte order mark, so that the places are of another object than the text given. */
function isOf(source: SourceText, plant: SourceText): boolean {
  return source.name === plant.name;
}

function renamed(plant: SourceText | undefined, name: string | undefined): SourceText | undefined {
  return plant === undefined || name === undefined || name === plant.name ? plant : { name, text: plant.text };
}

function checkPlant(path: string, { shown }: CheckSetting): CheckedOne {
  try {
    const diagnostics = readPlantText(readFileText(path));
    return { judged: !diagnostics.some(({ severity }) => severity === 'error'), findings: checkedFindings(path, diagnostics, { shown, faults: true }) };
  } catch (error) {
    return unread(path, error, shown);
  }
}

function unread(path: string, error: unknown, shown: boolean): CheckedOne {
  if (!(error instanceof BadInput)) throw error;
  return { judged: false, findings: checkedFindings(path, error.diagnostics, { shown, faults: true }) };
}
