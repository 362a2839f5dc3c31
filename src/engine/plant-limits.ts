import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import { printable } from '../kernel/printable.ts';
import { inUnit, readQuantity } from '../kernel/quantity.ts';
import { didYouMean } from '../kernel/spelling.ts';
import { dimensionOf, unitsOf } from '../kernel/units.ts';
import type { Tree } from '../rulebook/condition.ts';
import type { Change, ItemKind, Limit, Rulebook } from '../rulebook/types.ts';
import type { HouseBound, PlantSpec } from '../spec/index.ts';
import type { NumberWord } from './vocabulary/define.ts';
import { VOCABULARY, wordOf } from './vocabulary/index.ts';

/** What the codes of such findings begin with; the value that is bounded follows. */
const PREFIX = 'house/';
/** Name of the value in the rule that is made of a bound. */
const NAME = 'v';

/** Whether a code is that of a bound of some plant file on a value. */
export function isPlantLimit(code: string): boolean {
  const word = code.startsWith(PREFIX) ? wordOf(code.slice(PREFIX.length)) : undefined;
  return word !== undefined && !('text' in word);
}

/** The bounds of a plant file as limits, and what is wrong with them. */
interface Made {
  readonly limits: Readonly<Record<string, Limit>>;
  readonly conditions: Readonly<Record<string, Tree>>;
  readonly changes: readonly Change[];
  readonly diagnostics: readonly Diagnostic[];
}

const made = new WeakMap<PlantSpec, Made>();
const laid = new WeakMap<Rulebook, WeakMap<PlantSpec, Rulebook>>();

/** What is wrong with the bounds of a plant file: names that no plan has, units that do not fit, ends in the wrong order. */
export function plantLimitFaults(plant: PlantSpec): readonly Diagnostic[] {
  return madeOf(plant).diagnostics;
}

/** The rulebook with the bounds of the plant, which are judged and take part in the search like any other limit. */
export function withPlantLimits(rulebook: Rulebook, plant: PlantSpec): Rulebook {
  if ((plant.limits ?? []).length === 0) return rulebook;
  const known = laid.get(rulebook)?.get(plant);
  if (known !== undefined) return known;
  const { limits, conditions, changes } = madeOf(plant);
  const whole: Rulebook = {
    ...rulebook,
    limits: { ...rulebook.limits, ...limits },
    conditions: { ...rulebook.conditions, ...conditions },
    changes: [...(rulebook.changes ?? []), ...changes],
  };
  const ofBook = laid.get(rulebook) ?? new WeakMap<PlantSpec, Rulebook>();
  laid.set(rulebook, ofBook.set(plant, whole));
  return whole;
}

function madeOf(plant: PlantSpec): Made {
  const known = made.get(plant);
  if (known !== undefined) return known;
  const limits: Record<string, Limit> = {};
  const conditions: Record<string, Tree> = { true: true };
  const changes: Change[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const bound of plant.limits ?? []) {
    const entry = readBound(bound, plant, diagnostics);
    if (entry === undefined) continue;
    limits[entry.limit.id] = entry.limit;
    conditions[entry.limit.require] = entry.tree;
    changes.push(entry.change);
  }
  const whole = { limits, conditions, changes, diagnostics: sortDiagnostics(diagnostics) };
  made.set(plant, whole);
  return whole;
}

function readBound(bound: HouseBound, plant: PlantSpec, diagnostics: Diagnostic[]): { limit: Limit; tree: Tree; change: Change } | undefined {
  const fault = (code: string, message: string, at: Place, fix: string): undefined => {
    diagnostics.push({ code: `spec/${code}`, severity: 'error', message: `limits.${printable(bound.id)}: ${message}`, at, fix });
  };
  const word = wordOf(bound.id);
  if (word === undefined) {
    const numbers = Object.entries(VOCABULARY).flatMap(([id, one]) => ('text' in one ? [] : [id]));
    return fault('unknown-limit', `no value of a plan has this name${didYouMean(bound.id, numbers)}`, bound.at, 'see "diewright list values"');
  }
  if ('text' in word)
    return fault('limit-of-text', 'is a word and no number, so it has no least or greatest', bound.at, 'choose a number; see "diewright list values"');
  const ends = (['least', 'greatest'] as const).map((end) => readEnd(bound, end, word, fault));
  if (ends.some((end) => end === 'fault')) return undefined;
  const [least, greatest] = ends as [End | undefined, End | undefined];
  if (least !== undefined && greatest !== undefined && least.value > greatest.value)
    return fault(
      'limit-order',
      `the least of ${least.text} is above the greatest of ${greatest.text}`,
      bound.ends.least?.at ?? bound.at,
      'write the smaller one as least',
    );
  return asLimit(bound, word, plant, least, greatest);
}

interface End {
  readonly value: number;
  /** As the user wrote it. */
  readonly text: string;
}

function readEnd(
  bound: HouseBound,
  end: 'least' | 'greatest',
  { unit }: NumberWord,
  fault: (code: string, message: string, at: Place, fix: string) => undefined,
): End | undefined | 'fault' {
  const given = bound.ends[end];
  if (given === undefined) return undefined;
  const dimension = dimensionOf(unit);
  const parsed = readQuantity(given.text, dimension, dimension === 'number' ? unit : undefined);
  if (parsed.ok) return { value: inUnit(parsed.quantity, unit), text: given.text };
  const units = unitsOf(dimension).filter((one) => one !== '1');
  fault(
    parsed.fault.code,
    `${end}: ${parsed.fault.message}`,
    given.at,
    dimension === 'number' ? 'write a number' : `write it in ${unit}${units.length > 1 ? ` or another unit of ${dimension}` : ''}`,
  );
  return 'fault';
}

function asLimit(bound: HouseBound, word: NumberWord, plant: PlantSpec, least: End | undefined, greatest: End | undefined) {
  const id = `${PREFIX}${bound.id}`;
  const { line } = bound.at.position();
  const where = `${plant.source.name}:${line}`;
  const value: Tree = ['name', NAME];
  const above: Tree | undefined = least === undefined ? undefined : ['>=', value, least.value];
  const below: Tree | undefined = greatest === undefined ? undefined : ['<=', value, greatest.value];
  const tree = (above === undefined ? below : below === undefined ? above : ['&&', above, below]) as Tree;
  const allowed = least === undefined ? `${greatest?.text} at most` : greatest === undefined ? `${least.text} at least` : `${least.text} to ${greatest.text}`;
  const title = `${word.title}: ${allowed} in this plant`;
  const limit: Limit = {
    id,
    title,
    // Items of any kind have a value of their own under such a word.
    ...(word.each === true ? { each: bound.id.slice(0, bound.id.indexOf('.')) as ItemKind } : {}),
    uses: [{ name: NAME, id: bound.id, unit: word.unit }],
    when: 'true',
    require: `${NAME} of ${bound.id}: ${allowed}`,
    severity: bound.severity,
    // Worked out to the end a candidate is judged by it: out where it is an error, behind those that keep it where it is a warning.
    ...(word.each === true || bound.severity === 'note'
      ? {}
      : { search: { after: 'whole', order: 200, ...(bound.severity === 'error' ? {} : { waived: true }) } }),
    message: `${word.title} is {${NAME}}, and the plant allows ${allowed}`,
    why: bound.reason ?? 'A limit that the house sets itself, in its plant file.',
    fix: `Change what it hangs on until it is ${allowed}; the limit stands in the plant file.`,
    at: bound.id,
    status: 'source',
    source: ['PLANT'],
    house: where,
    examples: [],
  };
  const change: Change = {
    what: 'limit',
    id,
    title,
    change: 'added',
    file: plant.source.name,
    line,
    ...(bound.reason === undefined ? {} : { reason: bound.reason }),
  };
  return { limit, tree, change };
}
