import type { CastingSet } from '../../case.ts';
import type { Ledger } from '../../ledger.ts';
import { type Arrangement, arrange, outerSides, type Side, sideOf } from './arrange.ts';
import { isFedBelow, type PlacedSlide, placedSlides, slideSides, slidesOnSides } from './slides.ts';

/** A box by its centre and size, in mm; the origin is the middle between the tie bars, y upwards. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A casting in its place, with the sides on which no other follows, and its slides where they leave it. */
export interface Cavity extends Place {
  readonly edges: readonly Side[];
  readonly slides: readonly { readonly side: Side; readonly room: number }[];
  /** What is written on it, where castings differ. */
  readonly label?: string;
}

/** Where everything of the die face stands. */
export interface Face {
  readonly die: Place;
  readonly insert: Place;
  readonly cavities: readonly Cavity[];
  readonly feeder: { readonly x: number; readonly y: number; readonly diameter: number };
  /** Steel between cavity and edge of the die, which a slide takes besides its room; between cavities it takes half of it. */
  readonly outer: Readonly<Record<Side, number>>;
  readonly inner: number;
  readonly bars: { readonly width: number; readonly height: number };
}

const IDS = [
  'die.width',
  'die.breadth',
  'die.bars-width',
  'die.bars-height',
  'die.side-width',
  'die.side-height',
  'die.insert-width',
  'die.insert-height',
  'die.field-width',
  'die.field-height',
  'die.overhang-width',
  'die.overhang-height',
  'die.feeder-side',
  'die.feeder-strip',
  'die.steel-around',
  'part.side-a',
  'part.side-b',
  'die.columns',
  'die.rows',
] as const;

/** Places by the sizes that the plan has filed; nothing while one of them is missing. */
export function faceOf(ledger: Ledger): Face | undefined {
  const numbers = new Map(IDS.map((id) => [id, ledger.values.get(id)?.value]));
  if ([...numbers.values()].includes(undefined)) return undefined;
  const of = (id: (typeof IDS)[number]): number => numbers.get(id) as number;
  const below = isFedBelow(ledger);
  const slides = placedSlides(ledger);
  const [columns, rows] = [of('die.columns'), of('die.rows')];
  const placed = arrange(columns, rows, slideSides(slides));
  const across = axis(placed.edges.left, placed.edges.right, of('die.overhang-width'));
  const upright = axis(placed.edges.bottom, placed.edges.top, of('die.overhang-height'));

  // Where the castings stand, seen from the lower left corner of the die.
  const left = across.low + of('die.side-width');
  const bottom = upright.low + (below ? of('die.feeder-side') : of('die.side-height'));
  const middle = { x: left + of('die.field-width') / 2, y: bottom + of('die.field-height') / 2 };
  const strip = ledger.texts.get('machine.chamber') === 'hot' ? 0 : of('die.feeder-strip') / 2;
  const entry = below ? bottom - of('die.steel-around') - strip : middle.y;

  // The metal enters in the middle between the bars from side to side, as far as the die can be moved there.
  const play = Math.max(0, (of('die.bars-width') - of('die.width')) / 2);
  const moved = Math.max(-play, Math.min(play, of('die.width') / 2 - middle.x));
  const origin = { x: moved - of('die.width') / 2, y: -of('die.breadth') / 2 };
  const steel = of('die.steel-around');
  const { set } = ledger.given;
  const corner = { x: origin.x + left, y: origin.y + bottom };
  const cavities =
    set === undefined
      ? inRows(placed, { columns, rows, steel, a: of('part.side-a'), b: of('part.side-b') }, slides, corner)
      : inSet(ledger, set, { x: origin.x + middle.x, y: origin.y + middle.y });
  const half = steel / 2;
  const above = of('die.side-height');
  return {
    die: { x: moved, y: 0, width: of('die.width'), height: of('die.breadth') },
    insert: { x: origin.x + middle.x, y: origin.y + middle.y, width: of('die.insert-width'), height: of('die.insert-height') },
    cavities,
    // The shot axis of the machine is fixed; a die that slides make one-sided leads its runner to the side.
    feeder: { x: below ? 0 : origin.x + middle.x, y: origin.y + entry, diameter: feederDiameter(ledger, half) },
    outer: { left: of('die.side-width'), right: of('die.side-width'), top: above, bottom: below ? of('die.feeder-side') : above },
    inner: half,
    bars: { width: of('die.bars-width'), height: of('die.bars-height') },
  };
}

interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly steel: number;
  readonly a: number;
  readonly b: number;
}

/** Castings of one part, row by row, some of them turned half round with their slides. */
function inRows(
  placed: Arrangement,
  { columns, rows, steel, a, b }: Grid,
  slides: readonly PlacedSlide[],
  corner: { readonly x: number; readonly y: number },
): Cavity[] {
  const lefts = starts(a, placed.gapColumns, steel);
  const bottoms = starts(b, placed.gapRows, steel);
  return placed.turned.map((turned, i) => ({
    x: corner.x + a / 2 + (lefts[i % columns] as number),
    y: corner.y + b / 2 + (bottoms[Math.floor(i / columns)] as number),
    width: a,
    height: b,
    edges: outerSides(i, columns, rows),
    slides: slides.map(({ side, room }) => ({ side: sideOf(side, turned), room })),
  }));
}

/** The letter that stands for a part on the drawing: A, B and so on in the order of the die file. */
export function markOf({ members }: CastingSet, part: string): string {
  return String.fromCharCode(65 + members.findIndex(({ id }) => id === part));
}

/** Castings of several parts, each where the layout of the set has it. */
function inSet(ledger: Ledger, set: CastingSet, middle: { readonly x: number; readonly y: number }): Cavity[] {
  const slides = slidesOnSides(ledger);
  return set.layout.castings.map(({ id, member, x, y, width, height, edges }) => ({
    x: middle.x + x,
    y: middle.y + y,
    width,
    height,
    edges,
    slides: slides.filter(({ casting }) => casting === id).map(({ side, room }) => ({ side, room })),
    label: markOf(set, member),
  }));
}

/** Where each casting of a row begins, from the first one on. */
function starts(side: number, gaps: readonly number[], steel: number): number[] {
  const found = [0];
  for (const gap of gaps) found.push((found[found.length - 1] as number) + side + steel + gap);
  return found;
}

/** Room of the slides on the low side that is inside the die: what hangs out is shared as their rooms are. */
function axis(low: number, high: number, overhang: number): { readonly low: number } {
  const whole = low + high;
  return { low: whole === 0 ? 0 : low * (1 - overhang / whole) };
}

/** A biscuit has the diameter of the plunger; a sprue is drawn half as wide as the steel between cavities. */
function feederDiameter(ledger: Ledger, half: number): number {
  const biscuit = ledger.maybe('clamp.feeder-diameter')?.value ?? 0;
  return biscuit > 0 ? biscuit : half;
}
