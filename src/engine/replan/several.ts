import type { Case } from '../case.ts';
import type { Change, DieChange, DieElement, PartChange, Side } from './change.ts';
import type { CompareOptions } from './compare.ts';
import { comparePlans, standingOf } from './part.ts';
import type { DieSnapshot, Snapshot } from './snapshot.ts';

/** A part of a die, in its order, with what the plan after was made of and what had to be done to its description first. */
export interface MemberAfter {
  readonly given: Case;
  readonly remarks: readonly string[];
}

/**
 * Holds two plans of one die with several parts against each other: the whole die first, then each part, of which only what
 * differs from the whole die is told. The existing die can serve as far as it serves every part.
 *
 * @param members by the id of the part, those of the plan after
 */
export function compareDies(before: DieSnapshot, after: DieSnapshot, members: ReadonlyMap<string, MemberAfter>, options: CompareOptions): PartChange {
  const [{ given } = { given: undefined }] = members.values();
  if (given === undefined) throw new TypeError('a die without parts');
  const { die: _, dieMissing: __, ...whole } = comparePlans(before.whole, after.whole, given, options, []);
  const told = new Set(whole.groups.flatMap(({ changes }) => changes.map(key)));
  const parts = [...after.parts].flatMap(([id, now]) => {
    const [was, member] = [before.parts.get(id), members.get(id)];
    if (was === undefined || member === undefined) return [];
    return [comparePlans(withPins(was, before.whole), withPins(now, after.whole), member.given, options, member.remarks)];
  });
  const errors = (of: 'before' | 'after'): number => parts.reduce((sum, part) => sum + part[of].errors, whole[of].errors);
  const side = (of: 'before' | 'after'): Side => ({ ...whole[of], errors: errors(of), castable: errors(of) === 0 });
  const sides = { before: side('before'), after: side('after') };
  const others = otherParts(before, after);
  const castings = after.whole.values.get('set.castings')?.value;
  return {
    ...whole,
    ...sides,
    ...(castings === undefined ? {} : { castings }),
    standing: standingOf(sides.before.castable, sides.after.castable),
    remarks: [...whole.remarks, ...others],
    ...judged(parts, others.length === 0, sides.after.castable),
    parts: parts.map((part) => besides(part, told, whole.cautions)),
  };
}

/** The ejector pins of the die are those of all its parts; an existing die is judged by them. */
function withPins(part: Snapshot, whole: Snapshot): Snapshot {
  const pins = whole.values.get('ejection.pins');
  return pins === undefined ? part : { ...part, values: new Map([...part.values, ['ejection.pins', pins]]) };
}

const key = (change: Change): string => JSON.stringify([change.id, change.before, change.after]);

/** A part without what the whole die has told already, without a die of its own, and of its figures those that are not of the shot. */
function besides(
  { die: _, dieMissing: __, perYear: ___, groups, before, after, ...part }: PartChange,
  told: ReadonlySet<string>,
  of: PartChange['cautions'],
): PartChange {
  const own = groups.map((group) => ({ ...group, changes: group.changes.filter((change) => !told.has(key(change))) }));
  const side = ({ figures, ...of }: Side): Side => ({ ...of, figures: Object.fromEntries(Object.entries(figures).filter(([id]) => id === 'part.mass')) });
  const cautions = {
    appeared: part.cautions.appeared.filter((title) => !of.appeared.includes(title)),
    vanished: part.cautions.vanished.filter((title) => !of.vanished.includes(title)),
  };
  return { ...part, before: side(before), after: side(after), groups: own.filter(({ changes }) => changes.length > 0), cautions };
}

function otherParts(before: DieSnapshot, after: DieSnapshot): string[] {
  const missing = (from: DieSnapshot, to: DieSnapshot): string[] => [...from.parts].flatMap(([id, { part }]) => (to.parts.has(id) ? [] : [part.name]));
  const [fresh, gone] = [missing(after, before), missing(before, after)];
  return [
    ...(fresh.length === 0 ? [] : [`Not in the plan before, and compared with nothing: ${fresh.join(', ')}.`]),
    ...(gone.length === 0 ? [] : [`No longer in the die: ${gone.join(', ')}.`]),
  ];
}

/** What asks for most of the die comes first; of a part that is not judged the die may need anything short of a new one. */
const BY_WORK = ['new die', 'not judged', 'new inserts', 'recut', 'as it is'];

function judged(parts: readonly PartChange[], sameParts: boolean, castable: boolean): Pick<PartChange, 'die' | 'dieMissing'> {
  if (!castable) return { dieMissing: 'the plan after breaks rules, so there is nothing to hold the die against' };
  if (!sameParts) return { dieMissing: 'the die before casts other parts' };
  const known = parts.flatMap(({ part, die }) => (die === undefined ? [] : [{ name: part.name, die }]));
  if (known.length === 0 || known.length < parts.length) return { dieMissing: 'the plan before has no die' };
  const most = known.reduce((a, b) => (BY_WORK.indexOf(b.die.verdict) < BY_WORK.indexOf(a.die.verdict) ? b : a));
  const everywhere = known.every(({ die }) => die.because === most.die.because);
  return {
    die: {
      verdict: most.die.verdict,
      because: everywhere ? most.die.because : `${most.name}: ${most.die.because}`,
      elements: [...new Set(known.flatMap(({ die }) => die.elements.map(({ id }) => id)))].flatMap((id) => elementsOf(id, known)),
      unchecked: unique(known.flatMap(({ die }) => die.unchecked)),
    },
  };
}

/** An element once where all parts say the same of it, else once for each thing that is said, with the parts that say it. */
function elementsOf(id: string, known: readonly { readonly name: string; readonly die: DieChange }[]): DieElement[] {
  const found = new Map<string, { readonly element: DieElement; readonly names: string[] }>();
  for (const { name, die } of known) {
    for (const element of die.elements.filter((one) => one.id === id)) {
      const says = JSON.stringify([element.verdict, element.because, element.stays || element.values]);
      const same = found.get(says) ?? { element, names: [] };
      same.names.push(name);
      found.set(says, same);
    }
  }
  const groups = [...found.values()];
  return groups.map(({ element, names }) => (groups.length === 1 ? element : { ...element, title: `${element.title}, ${names.join(' and ')}` }));
}

function unique(list: DieChange['unchecked']): DieChange['unchecked'] {
  return [...new Map(list.map((one) => [JSON.stringify(one), one])).values()];
}
