import { dirname } from 'node:path';
import { type CheckedFile, type CheckedFinding, checkedFindings, checkFreshness, nameIn, type Plan, readPlantText, type SourceText } from '../../index.ts';
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

export interface CheckedFiles {
  readonly files: CheckedFile[];
  readonly findings: CheckedFinding[];
}

/** Checks files one after the other, and keeps nothing of each but its findings. `done` hears how many are through. */
export async function checkFiles(found: readonly Found[], setting: CheckSetting, done: (count: number) => void): Promise<CheckedFiles> {
  const files: CheckedFile[] = [];
  const findings: CheckedFinding[] = [];
  const checks = checkers(setting);
  for (const [i, { path, kind }] of found.entries()) {
    const result = await checks[kind](path);
    files.push({ name: path, judged: result.judged });
    findings.push(...result.findings);
    done(i + 1);
  }
  return { files, findings };
}

/** Faults of a `--set` that no part can mend. */
const WRONG_SET: ReadonlySet<string> = new Set(['set/form', 'set/unknown-field', 'set/value']);

interface Result {
  readonly judged: boolean;
  readonly findings: readonly CheckedFinding[];
}

/** How each kind of file is checked. A die is planned with the parts that it names. */
function checkers(setting: CheckSetting): Readonly<Record<FileKind, (path: string) => Promise<Result>>> {
  const alone = aloneIn();
  // Faults of the plant of a project come back with each part, and are told with the first.
  const toldPlants = new Set<string>();
  const part = (path: string): Promise<Result> => checkPart(path, setting, alone, toldPlants);
  return { part, die: part, plant: async (path) => checkPlant(path, setting) };
}

async function checkPart(path: string, setting: CheckSetting, alone: (part: string) => boolean, toldPlants: Set<string>): Promise<Result> {
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
  // Faults of the plant come back with each part; they are told once, of the plant.
  const told = plant !== undefined && (plant.name === setting.plant?.name || toldPlants.has(plant.name));
  if (plant !== undefined) toldPlants.add(plant.name);
  const own = planned.diagnostics.filter(({ at, code }) => !told || at === undefined || !isOf(at.source, plant as SourceText) || !code.startsWith('spec/'));
  if (planned.plan === undefined) return { judged: false, findings: checkedFindings(path, own, { shown, faults: true, names }) };
  const again = (as: { readonly part: string; readonly plant?: string | undefined; readonly wave: boolean }): Plan | undefined =>
    planText({ name: as.part, text: source.text }, { ...ground, plant: renamed(plant, as.plant), wave: as.wave }, dirname(path)).plan;
  const stale =
    committed.length === 0 ? [] : await checkFreshness({ part: path, plan: planned.plan, alone: alone(path), committed, again, plant: plant?.name, set });
  return { judged: true, findings: checkedFindings(path, [...own, ...unreadable, ...stale], { shown, names }) };
}

/** The reader of a plant takes its text without a byte order mark, so that the places are of another object than the text given. */
function isOf(source: SourceText, plant: SourceText): boolean {
  return source.name === plant.name;
}

function renamed(plant: SourceText | undefined, name: string | undefined): SourceText | undefined {
  return plant === undefined || name === undefined || name === plant.name ? plant : { name, text: plant.text };
}

function checkPlant(path: string, { shown }: CheckSetting): Result {
  try {
    const diagnostics = readPlantText(readFileText(path));
    return { judged: !diagnostics.some(({ severity }) => severity === 'error'), findings: checkedFindings(path, diagnostics, { shown, faults: true }) };
  } catch (error) {
    return unread(path, error, shown);
  }
}

function unread(path: string, error: unknown, shown: boolean): Result {
  if (!(error instanceof BadInput)) throw error;
  return { judged: false, findings: checkedFindings(path, error.diagnostics, { shown, faults: true }) };
}
