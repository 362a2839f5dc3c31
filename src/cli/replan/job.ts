import { readFileSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { findingsText, type Plan, renderPlans, type SourceText } from '../../index.ts';
import { type PartChange, type PartFailure, type Replanned, type ReplanRequest, replanPart } from '../../replan.ts';
import { paletteFor } from '../colour.ts';
import { type Committed, committedPlans, plannedFile } from '../committed.ts';
import { BadInput } from '../fault.ts';
import { figuresFor, NO_FIGURES } from '../figures.ts';
import { readText } from '../files.ts';
import type { Io } from '../io.ts';
import { VERSION } from '../version.ts';
import { Grounds } from './grounds.ts';
import { hash, hashOf } from './journal.ts';
import type { FileChange } from './transaction.ts';

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
    const bytes = task.write ? readFileSync(file) : undefined;
    const part = await readText(file, io);
    const ground = await grounds.of(file);
    const committed = task.committed || task.write ? await committedPlans(file, io) : {};
    // A committed plan keeps the name by which it knows its part, so that rewriting it from another folder changes no name.
    const name = (task.write && committed.json !== undefined ? plannedFile(committed.json) : undefined) ?? part.name;
    const done = replanPart(requestOf({ ...part, name }, task, committed, ground));
    if (done.change === undefined || done.after === undefined) {
      const named = name === part.name ? done : replanPart(requestOf(part, task, committed, ground));
      return failed(file, named, task);
    }
    const files = bytes === undefined ? [] : await changedFiles(file, bytes, committed, done.after);
    return { change: { ...done.change, file }, faults: '', files };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    const [first] = error.diagnostics;
    return failed(file, { failure: { file, message: first?.message ?? '', code: first?.code ?? '' }, diagnostics: error.diagnostics }, task);
  }
}

function requestOf(part: SourceText, task: Task, committed: Committed, { before, after }: Awaited<ReturnType<Grounds['of']>>): ReplanRequest {
  if (task.committed && committed.json === undefined) throw noCommittedPlan(part.name);
  return {
    part,
    before: {
      ...before,
      ...(task.committed && committed.json !== undefined ? { committed: committed.json } : {}),
    },
    after: { ...after, set: task.set, sameCavities: task.sameCavities },
    compare: { leastChange: task.leastChange, everyValue: task.everyValue },
    version: VERSION,
  };
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

/** The part description with its new fields, and the plans beside it made anew, figures with them; those of them that change. */
async function changedFiles(file: string, bytes: Buffer, committed: Committed, after: NonNullable<Replanned['after']>): Promise<FileChange[]> {
  // A mark at the beginning of the text is no part of it, and stays.
  const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? '\ufeff' : '';
  const files: FileChange[] = [{ path: file, text: `${mark}${after.source.text}`, before: hash(bytes) }];
  if (committed.json !== undefined) files.push(changed(committed.json, await renderPlans('json', [after.plan])));
  if (committed.markdown !== undefined) files.push(...(await markdownFiles(committed.markdown, after.plan)));
  return files;
}

function changed({ name }: SourceText, text: string): FileChange {
  return { path: name, text, before: hashOf(name) };
}

/** The plan in Markdown as it was asked for before: with its workings, and with its figures, where it had them. */
async function markdownFiles(markdown: SourceText, plan: Plan): Promise<FileChange[]> {
  const { name: path, text: old } = markdown;
  const before = linkedFigures(old, path);
  const set = await figuresFor({ format: 'markdown', path }, [plan], false, before.length === 0 ? NO_FIGURES : undefined);
  const workings = old.includes('## Data and workings') && !old.includes('`--workings`');
  const text = await renderPlans('markdown', [plan], false, { workings, figures: set.links });
  const drawn = new Set(set.files.map((figure) => figure.path));
  return [
    changed(markdown, text),
    ...set.files.map((figure) => ({ path: figure.path, text: figure.text, before: hashOf(figure.path) })),
    ...before.filter((figure) => !drawn.has(figure)).map((figure) => ({ path: figure, text: null, before: hashOf(figure) })),
  ];
}

/** The figures of a plan that lie beside it, by its links. */
function linkedFigures(text: string, path: string): string[] {
  const stem = basename(path, extname(path));
  const names = [...text.matchAll(/\]\(<?([^()<>\s]+\.svg)>?\)/g)].map(([, name]) => name as string);
  return [...new Set(names)].filter((name) => name === basename(name) && name.startsWith(`${stem}-`)).map((name) => join(dirname(path), name));
}
