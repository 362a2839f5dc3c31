import { ofTheSet } from '../../engine/die-set/words.ts';
import type { Plan } from '../../engine/plan.ts';
import type { Id, Line } from './form.ts';
import type { SheetName } from './names.ts';

// What a sheet of a die with castings of several parts says otherwise than that of a part.

/** Of each part: how many castings a shot has, and what differs from casting to casting. */
const CASTINGS: Readonly<Record<SheetName, Line>> = {
  die: {
    title: 'Castings of a shot',
    each: { id: 'set.count', most: 6 },
    pieces: [
      { id: 'set.count', label: 'castings' },
      { id: 'set.mass', label: 'each' },
      { id: 'set.gate-area', label: 'gate' },
      { id: 'set.gate-width', after: 'wide' },
      { id: 'set.gate-thickness', after: 'thick' },
      { id: 'set.runner-area', label: 'runner' },
      { id: 'set.overflows', label: 'overflows' },
      { id: 'set.pins', label: 'ejector pins' },
      { id: 'set.insert-width', label: 'insert' },
      { id: 'set.insert-height', label: 'by' },
    ],
  },
  shot: {
    title: 'Castings of a shot',
    each: { id: 'set.count', most: 6 },
    pieces: [
      { id: 'set.count', label: 'castings' },
      { id: 'set.mass', label: 'each' },
      { id: 'set.longest-time', label: 'longest fill time' },
    ],
  },
  trial: {
    title: 'Castings of a shot',
    each: { id: 'set.count', most: 6 },
    pieces: [
      { id: 'set.count', label: 'castings' },
      { id: 'set.mass', label: 'each' },
    ],
  },
  quote: {
    title: 'Castings of a shot',
    each: { id: 'set.count', most: 6 },
    pieces: [
      { id: 'set.count', label: 'castings' },
      { id: 'set.mass', label: 'each' },
      { id: 'set.needed', label: 'needed a year' },
      { id: 'set.surplus', label: 'made and not needed' },
      { id: 'set.cost', label: 'cost of a good one' },
    ],
  },
};

/** Values that castings of several parts do not share, or that count what is alike. */
const NOT_SHARED: ReadonlySet<Id> = new Set<Id>([
  'machine.cavities',
  'die.columns',
  'die.rows',
  'part.envelope-x',
  'part.envelope-y',
  'part.envelope-z',
  'gate.count',
  'gate.each-width',
  'gate.thickness',
  'overflow.number',
  'overflow.each',
  'overflow.gate-width',
  'overflow.gate-thickness',
]);

/** The lines of a sheet for a plan: those of a part as they are; of a die with a line for its castings and the words of a set. */
export function linesFor(plan: Plan, sheet: SheetName, lines: readonly Line[], first = true): readonly Line[] {
  if (plan.parts === undefined) return lines;
  const own = lines.map((line) => ({ ...line, title: said(line.title), pieces: line.pieces.filter(({ id }) => !NOT_SHARED.has(id)).map(named) }));
  return first ? [CASTINGS[sheet], ...own] : own;
}

function said(title: string): string {
  if (title === 'Casting' || title === 'Part') return 'Castings, together';
  return ofTheSet(title).replace('Metal in the part', 'Metal in the castings');
}

function named<T extends { readonly label?: string; readonly after?: string }>(piece: T): T {
  return {
    ...piece,
    ...(piece.label === undefined ? {} : { label: ofTheSet(piece.label) }),
    ...(piece.after === undefined ? {} : { after: ofTheSet(piece.after) }),
  };
}

/** What stands at the top of a sheet of such a die. */
export function setSentence({ parts }: Plan): string {
  if (parts === undefined) return '';
  const castings = parts.map(({ id, count }) => `${count} of ${id}`).join(', ');
  return ` The castings of a shot, ${castings}, are one set: where this sheet says part, casting or cavity without a name, it is all of them. What holds for one stands in the plan of its part.`;
}
