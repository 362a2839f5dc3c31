import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isMap, isScalar, parse, parseDocument } from 'yaml';
import { planDie } from '../../src/die.ts';
import { type Compared, comparePlans, type Difference } from '../../src/engine/compare/plans.ts';
import { planPart, type Rulebook, renderFigures, renderPlans } from '../../src/index.ts';
import type { PlanRecord } from '../../src/spec/index.ts';
import { withoutFigures } from '../without-figures.ts';

/** Edits of a file, by path such as `holes[0].depth`; null takes the field out. */
type Edits = Readonly<Record<string, unknown>>;

/** What is changed before an example is planned again: its plant, its die, all its parts or the first of them. */
interface Change {
  readonly plant?: Edits;
  readonly die?: Edits;
  readonly part?: Edits;
  readonly first?: Edits;
  /** A table of which no figure is known. */
  readonly without?: string;
}

/** An example as it is, with a plant of its own or the built-in one, and the changes of it. */
interface Base {
  readonly file: string;
  readonly plant?: string;
  readonly without?: readonly string[];
  readonly changes: readonly Change[];
}

export interface Case {
  readonly base: string;
  readonly title: string;
  readonly change: Change;
}

const folder = join(import.meta.dirname, 'changes');
const examples = join(import.meta.dirname, '..', '..', 'examples');
const bases = parse(readFileSync(join(folder, 'list.yaml'), 'utf8')) as Readonly<Record<string, Base>>;
const read = (file: string): string => readFileSync(join(examples, file), 'utf8');

export const BASES = Object.keys(bases);

/** The changes of an example, each under a title of its own. */
export function casesOf(base: string): readonly Case[] {
  const { changes, without = [] } = baseOf(base);
  return [...changes, ...without.map((id): Change => ({ without: id }))].map((change) => ({ base, title: titleOf(change), change }));
}

/** The file that says what each change of an example does, and its sections by title. */
export const fileOf = (base: string): string => join(folder, `${base}.txt`);
export function committedOf(base: string): ReadonlyMap<string, string> {
  const sections = readFileSync(fileOf(base), 'utf8').split(/^## /m).slice(1);
  return new Map(sections.map((section) => [section.slice(0, section.indexOf('\n')), section.slice(section.indexOf('\n') + 1).trimEnd()]));
}

function baseOf(base: string): Base {
  const found = bases[base];
  if (found === undefined) throw new Error(`no example is called ${base}`);
  return found;
}

function titleOf({ without, ...change }: Change): string {
  if (without !== undefined) return `without a figure of ${without}`;
  return Object.entries(change)
    .flatMap(([of, edits]: [string, Edits]) =>
      Object.entries(edits).map(([path, value]) => `${of} ${path}: ${value === null ? 'left out' : JSON.stringify(value).replaceAll('"', '')}`),
    )
    .join(', ');
}

/** So many differences are written out; a digest stands for the others. */
const TOLD = 24;

/** A plan as its JSON says it, and the lines in which it is printed and drawn. */
interface Printed {
  readonly record: PlanRecord;
  readonly lines: ReadonlySet<string>;
}

/** Plans examples and says in what a change of one makes its plan differ. The unchanged plan of each is kept. */
export class Changes {
  private readonly before = new Map<string, Printed>();
  constructor(private readonly rulebook: Rulebook) {}

  async toldOf({ base, change }: Case): Promise<string> {
    let before = this.before.get(base);
    if (before === undefined) {
      before = (await this.plan(base, {})) as Printed;
      this.before.set(base, before);
    }
    const after = await this.plan(base, change);
    if (typeof after === 'string') return after;
    const told = comparePlans(before.record, after.record).map(lineOf);
    const rest = told.slice(TOLD);
    return (
      [...told.slice(0, TOLD), ...(rest.length > 0 ? [`and ${rest.length} more, ${digestOf(rest)}`] : []), ...printed(before, after)].join('\n') ||
      'nothing differs'
    );
  }

  /** The plan as its JSON says it, or the faults of the input. */
  private async plan(base: string, change: Change): Promise<Printed | string> {
    const { file, plant: plantFile } = baseOf(base);
    const plant = plantFile === undefined ? {} : { plant: { name: 'plant.yaml', text: edited(read(plantFile), change.plant) } };
    const rulebook = change.without === undefined ? this.rulebook : withoutFigures(this.rulebook, change.without);
    const request = { ...plant, rulebook, version: '0' };
    const partOf = (name: string, isFirst: boolean) => ({
      name,
      text: edited(read(join(dirname(file), name)), change.part, isFirst ? change.first : undefined),
    });
    const own = file.slice(dirname(file).length + 1);
    let first: string | undefined;
    const { plan, diagnostics } = file.endsWith('.die.yaml')
      ? planDie({
          ...request,
          die: { name: own, text: edited(read(file), change.die) },
          partText: (entry) => {
            first ??= entry.file.value;
            return partOf(entry.file.value, entry.file.value === first);
          },
        })
      : planPart({ ...request, part: partOf(own, true) });
    if (plan === undefined) return diagnostics.map(({ code, message }) => `fault ${code}: ${message}`).join('\n');
    const drawn = (await renderFigures(plan)).map(({ svg }) => svg);
    const lines = new Set([await renderPlans('markdown', [plan]), ...drawn].flatMap((text) => text.split('\n')));
    return { record: JSON.parse(await renderPlans('json', [plan])) as PlanRecord, lines };
  }
}

/** How many lines of the plan and its drawings are new, and how many are gone. */
function printed(before: Printed, after: Printed): string[] {
  const [gone, added] = [[...before.lines].filter((line) => !after.lines.has(line)), [...after.lines].filter((line) => !before.lines.has(line))];
  return gone.length + added.length > 0 ? [`printed: ${gone.length} lines gone, ${added.length} new, ${digestOf([...gone, ...added])}`] : [];
}

const digestOf = (lines: readonly string[]): string => createHash('sha256').update(lines.join('\n')).digest('hex').slice(0, 12);

function lineOf(difference: Difference): string {
  if (difference.kind === 'finding') return `${difference.change} ${difference.severity} ${difference.id}: ${difference.message}`;
  if (difference.kind === 'place' || difference.kind === 'entry') return `${difference.kind} ${difference.id}`;
  const { kind, id, before, after } = difference as Extract<Difference, { readonly kind: 'decision' | 'value' | 'text' }>;
  return `${kind} ${id}: ${figure(before)} -> ${figure(after)}`;
}

/** Six digits: the last ones of a double hang on the processor. */
function figure(compared: Compared | undefined): string {
  if (compared === undefined || typeof compared === 'string') return compared ?? 'none';
  const number = Number(compared.value.toPrecision(6));
  return compared.unit === '1' ? String(number) : `${number} ${compared.unit}`;
}

/** A text in YAML with fields changed. */
function edited(text: string, ...all: readonly (Edits | undefined)[]): string {
  const document = parseDocument(text);
  for (const edits of all)
    for (const [path, value] of Object.entries(edits ?? {})) {
      const keys = keysOf(path);
      if (value === null) {
        if (!document.deleteIn(keys)) throw new Error(`there is no ${path} to leave out`);
      } else {
        // Parents that are not there, or hold no map, are made.
        for (let i = 1; i < keys.length; i += 1) {
          const parent = document.getIn(keys.slice(0, i), true);
          if (parent === undefined || (isScalar(parent) && parent.value === null)) {
            document.setIn(keys.slice(0, i), document.createNode(typeof keys[i] === 'number' ? [] : {}));
          } else if (isMap(parent)) parent.flow = false;
        }
        document.setIn(keys, document.createNode(value));
      }
    }
  return document.toString();
}

/** `pinned.machine.model` names one key of `pinned`, and `limits.…` one of `limits`: what a plan calls its values has points in it. */
function keysOf(path: string): (string | number)[] {
  const whole = /^(pinned|limits)\.(.+)$/.exec(path);
  if (whole !== null) return [whole[1] as string, whole[2] as string];
  return path
    .split(/[.[\]]+/)
    .filter((key) => key !== '')
    .map((key) => (/^\d+$/.test(key) ? Number(key) : key));
}
