import type { Ledger } from '../../ledger.ts';
import { arrange, outerSides, type Side } from './arrange.ts';
import { isFedBelow, placedSlides, slideSides } from './slides.ts';

/** A box by its centre and size, in mm; the origin is the middle between the tie bars, y upwards. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where everything of the die face stands. */
export interface Face {
  readonly die: Place;
  readonly insert: Place;
  /** With the sides on which no other cavity follows, and whether the casting stands turned half round. */
  readonly cavities: readonly (Place & { readonly edges: readonly Side[]; readonly turned: boolean })[];
  readonly feeder: { readonly x: number; readonly y: number; readonly diameter: number };
  /** Of a casting that stands unturned, with its room. */
  readonly slides: readonly { readonly item: string; readonly side: Side; readonly room: number }[];
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
  const lefts = starts(of('part.side-a'), placed.gapColumns, steel);
  const bottoms = starts(of('part.side-b'), placed.gapRows, steel);
  const cavities = placed.turned.map((turned, i) => ({
    x: origin.x + left + of('part.side-a') / 2 + (lefts[i % columns] as number),
    y: origin.y + bottom + of('part.side-b') / 2 + (bottoms[Math.floor(i / columns)] as number),
    width: of('part.side-a'),
    height: of('part.side-b'),
    edges: outerSides(i, columns, rows),
    turned,
  }));
  const half = steel / 2;
  const above = of('die.side-height');
  return {
    die: { x: moved, y: 0, width: of('die.width'), height: of('die.breadth') },
    insert: { x: origin.x + middle.x, y: origin.y + middle.y, width: of('die.insert-width'), height: of('die.insert-height') },
    cavities,
    // The shot axis of the machine is fixed; a die that slides make one-sided leads its runner to the side.
    feeder: { x: below ? 0 : origin.x + middle.x, y: origin.y + entry, diameter: feederDiameter(ledger, half) },
    slides,
    outer: { left: of('die.side-width'), right: of('die.side-width'), top: above, bottom: below ? of('die.feeder-side') : above },
    inner: half,
    bars: { width: of('die.bars-width'), height: of('die.bars-height') },
  };
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
