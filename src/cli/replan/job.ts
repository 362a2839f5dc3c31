import { readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { findingsText, type Plan, type SourceText } from '../../index.ts';
import { type PartChange, type PartFailure, type Replanned, type ReplanRequest, replanPart } from '../../replan.ts';
import { replanDie } from '../../replan-die.ts';
import { paletteFor } from '../colour.ts';
import { type Committed, committedPlans, plannedFile } from '../committed.ts';
import { BadInput } from '../fault.ts';
import { readText } from '../files.ts';
import { shownPath } from '../find/look-up.ts';
import type { Io } from '../io.ts';
import { isDie, partTexts } from '../plan-input.ts';
import { VERSION } from '../version.ts';
import { changedPlans, changedText } from './changed-files.ts';
import { Grounds } from './grounds.ts';
import type { FileChange } from './transaction.ts';
import { descriptionsOf } from './written.ts';

/** What to do with each part: plain data, so that it can be handed to another thread. */
export interface Task {
  /** Plants in place of those of the project of each part. */
  readonly plantBefore?: SourceText;
  readonly plantAfter?: SourceText;
  /** House rules of the plan after, in place of those of the project of each part. */
  readonly rules?: readonly string[];
  readonly set: readonly string[];
  readonly sameCavities: boolean;
  readonly committed: boolean;
  readonly write: boolean;
  readonly leastChange: number;
  readonly everyValue: boolean;
  /** Whether faults are printed in colour. */
  readonly colour: boolean;
}

/** What came of one part; plain data too. */
export interface Outcome {
  readonly change?: PartChange;
  readonly failure?: PartFailure;
  /** Faults as they are to be printed. */
  readonly faults: string;
  readonly files: readonly FileChange[];
}

/** What a thread does with each file. */
export async function replanJob(task: Task, io: Io): Promise<(file: string) => Promise<Outcome>> {
  const grounds = new Grounds(task, io);
  return (file) => replanFile(file, task, grounds, io);
}

/** Replans one file and, where it is to be written, makes the new texts of it and of the plans beside it. Never throws for what a user can write. */
async function replanFile(file: string, task: Task, grounds: Grounds, io: Io): Promise<Outcome> {
  try {
    // First, so that what is written over is what was read or older; then it is found to have changed.
    const old = task.write ? bytesOf(descriptionsOf(file)) : new Map<string, Buffer>();
    const source = await readText(file, io);
    const ground = await grounds.of(file);
    const committed = task.committed || task.write ? committedPlans(file) : {};
    if (task.committed && committed.json === undefined) throw noCommittedPlan(source.name);
    // A committed plan keeps the name by which it knows its file, so that rewriting it from another folder changes no name.
    const name = (task.write && committed.json !== undefined ? plannedFile(committed.json) : undefined) ?? source.name;
    const common = commonOf(task, committed, ground);
    const replan = isDie(source) ? dieDone : partDone;
    const done = replan({ ...source, name }, file, common);
    if (done.change === undefined || done.after === undefined) return failed(file, name === source.name ? done : replan(source, file, common), task);
    const { texts, plan } = done.after;
    const files = task.write
      ? [...texts.map(({ path, text }) => changedText(path, old.get(shownPath(path)) ?? readFileSync(path), text)), ...(await changedPlans(committed, plan))]
      : [];
    return { change: { ...done.change, file }, faults: '', files };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    const [first] = error.diagnostics;
    return failed(file, { failure: { file, message: first?.message ?? '', code: first?.code ?? '' }, diagnostics: error.diagnostics }, task);
  }
}

/** What files hold, by their paths as they are shown. What cannot be read is told when it is planned. */
function bytesOf(paths: readonly string[]): Map<string, Buffer> {
  const read = (path: string): Buffer | undefined => {
    try {
      return readFileSync(path);
    } catch {
      return undefined;
    }
  };
  return new Map(
    paths.flatMap((path) => {
      const bytes = read(path);
      return bytes === undefined ? [] : [[shownPath(path), bytes] as const];
    }),
  );
}

type Common = Omit<ReplanRequest, 'part'>;

function commonOf(task: Task, committed: Committed, { before, after }: Awaited<ReturnType<Grounds['of']>>): Common {
  return {
    before: { ...before, ...(task.committed && committed.json !== undefined ? { committed: committed.json } : {}) },
    after: { ...after, set: task.set, sameCavities: task.sameCavities },
    compare: { leastChange: task.leastChange, everyValue: task.everyValue },
    version: VERSION,
  };
}

/** What came of a part or a die, with the descriptions that get new fields, by their paths. */
interface Done extends Pick<Replanned, 'change' | 'failure' | 'diagnostics'> {
  readonly after?: { readonly texts: readonly { readonly path: string; readonly text: string }[]; readonly plan: Plan };
}

function partDone(part: SourceText, file: string, common: Common): Done {
  const { after, ...done } = replanPart({ ...common, part });
  return { ...done, ...(after === undefined ? {} : { after: { texts: [{ path: file, text: after.source.text }], plan: after.plan } }) };
}

function dieDone(die: SourceText, file: string, common: Common): Done {
  const folder = dirname(file);
  const { after, change, ...done } = replanDie({ ...common, die, partText: partTexts(folder, die.name) });
  if (after === undefined || change === undefined) return done;
  const texts = [...after.parts].map(([name, { text }]) => ({ path: join(folder, name), text }));
  // Seen from where the command runs, as the file of the die is.
  const parts = (change.parts ?? []).map((part) => ({ ...part, file: shownPath(join(folder, relative(dirname(die.name), part.file))) }));
  return { ...done, change: { ...change, parts }, after: { texts, plan: after.plan } };
}

function noCommittedPlan(file: string): BadInput {
  return new BadInput([
    {
      code: 'replan/no-committed-plan',
      severity: 'error',
      message: `no plan of ${file} lies beside it`,
      fix: 'write one with "diewright plan", as NAME.plan.json or plan.json, or compare without --before committed',
    },
  ]);
}

async function failed(file: string, { failure, diagnostics }: Pick<Replanned, 'failure' | 'diagnostics'>, task: Task): Promise<Outcome> {
  const palette = await paletteFor(task.colour, {}, { isTTY: false, write: () => undefined });
  return { failure: { message: failure?.message ?? '', code: failure?.code ?? '', file }, faults: findingsText(diagnostics, palette), files: [] };
}
