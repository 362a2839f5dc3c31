import { Traced } from '../../../kernel/traced.ts';
import { slideRoom } from '../../../physics/die-block.ts';
import type { Ledger } from '../../ledger.ts';
import { fullId } from '../../vocabulary/index.ts';
import { across, dot, type Feature, type Vector } from '../parting/directions.ts';
import { AXES } from '../parting/openings.ts';
import { type Arrangement, arrange, outerSides, SIDES, type Side, type SlideSides, sideOf } from './arrange.ts';
import { featuresOn } from './cored.ts';
import { type Way, wayOf } from './way.ts';

export const BELOW = 'below the cavities';
export const AMID = 'amid the cavities';
const HYDRAULIC = 'hydraulic cylinder';

/** Items of the slides that the parting step has filed and whose cores do not fall away. */
export function slideItems(ledger: Ledger): string[] {
  return ledger.items('slide.stroke').filter((item) => featuresOn(ledger, item).needed);
}

/** The room that each slide takes beyond the steel on its side: the same whatever the count of cavities. */
export function workRooms(ledger: Ledger): void {
  const lock = ledger.look('die/block', 'lock', {}, 'die.lock');
  for (const item of slideItems(ledger)) ledger.apply(slideRoom, { stroke: ledger.value('slide.stroke', item), lock }, { item });
}

/** A slide with the side of the casting that it leaves on, as the casting stands unturned. */
export interface PlacedSlide {
  readonly item: string;
  readonly side: Side;
  readonly room: number;
  readonly hydraulic: boolean;
  /** The casting that it belongs to, where several are planned together. */
  readonly casting?: string;
}

/** Slides of a casting that stands with its longer side across. */
export function placedSlides(ledger: Ledger): PlacedSlide[] {
  // A slide between castings of a set has its room there, and none at an edge.
  const inner = ledger.given.set?.layout.inner ?? [];
  return slidesOnSides(ledger).filter((slide) => !inner.some((one) => one.casting === slide.casting && one.side === slide.side));
}

/** All slides with their sides, those between castings of a set too. */
export function slidesOnSides(ledger: Ledger): PlacedSlide[] {
  const items = slideItems(ledger).filter((item) => ledger.values.has(fullId('die.slide-room', item)));
  if (items.length === 0) return [];
  const [a, b] = faceAxes(ledger);
  return items.map((item) => {
    const way = leavingWay(featuresOn(ledger, item).features);
    const [level, rise] = [dot(way, a), dot(way, b)];
    const side = Math.abs(rise) > Math.abs(level) ? (rise > 0 ? 'top' : 'bottom') : level >= 0 ? 'right' : 'left';
    const [casting] = featuresOn(ledger, item).features.flatMap((feature) => feature.casting ?? []);
    const hydraulic = ledger.texts.get(fullId('parting.slide-drive', item)) === HYDRAULIC;
    return { item, side, room: ledger.value('die.slide-room', item).value, hydraulic, ...(casting === undefined ? {} : { casting }) } as const;
  });
}

/** The slides of a casting by side; those on one side stand beside each other, so the side takes the room of the longest. */
export function slideSides(slides: readonly PlacedSlide[]): SlideSides {
  const on = (side: Side) => {
    const here = slides.filter((slide) => slide.side === side);
    return { room: Math.max(0, ...here.map(({ room }) => room)), slides: here.length };
  };
  return { left: on('left'), right: on('right'), bottom: on('bottom'), top: on('top') };
}

/** Files where the slides of all castings stand: at the edges of the die, and between castings where no turning helps. */
export function workArrangement(ledger: Ledger, slides: readonly PlacedSlide[]): void {
  const [columns, rows] = [ledger.value('die.columns'), ledger.value('die.rows')];
  const placed = arrange(columns.value, rows.value, slideSides(slides));
  const from = { status: 'derived', parents: slides.map(({ item }) => ledger.value('die.slide-room', item)) } as const;
  const put = (id: string, value: number, unit: 'mm' | '1', note: string) => ledger.put(Traced.choice(id, value, unit, { ...from, note }));
  const none = 'no slide there';
  const { edges, gaps } = placed;
  put('die.room-width', edges.left + edges.right, 'mm', edges.left + edges.right > 0 ? 'at both edges together, each by its widest place' : none);
  put('die.room-height', edges.bottom + edges.top, 'mm', edges.bottom + edges.top > 0 ? 'at both edges together, each by its widest place' : none);
  put('die.room-left', edges.left, 'mm', edges.left > 0 ? 'of that, at the left' : none);
  put('die.room-below', edges.bottom, 'mm', edges.bottom > 0 ? 'of that, below' : none);
  put('die.gap-width', gaps.columns / Math.max(1, columns.value - 1), 'mm', gaps.columns > 0 ? 'mean of the gaps between columns' : none);
  put('die.gap-height', gaps.rows / Math.max(1, rows.value - 1), 'mm', gaps.rows > 0 ? 'mean of the gaps between rows' : none);
  for (const { item, side } of slides) {
    const sides = SIDES.filter((one) => placed.turned.some((turned) => sideOf(side, turned) === one));
    ledger.setText('die.slide-side', sides.join(' and '), { item });
  }
  put('die.slides-between', placed.between, '1', 'castings turned half round so that they are as few as can be');
  put(
    'die.hydraulic-between',
    betweenOf(placed, columns.value, rows.value, slideSides(slides.filter(({ hydraulic }) => hydraulic))),
    '1',
    'of them, on hydraulic cylinders',
  );
  put('die.feeder-slides', isFedBelow(ledger) ? placed.below : 0, '1', 'of all castings');
  fileWay(ledger, wayOf(placed, columns.value, rows.value, slideSides(slides)));
}

/** How the main runner comes to the castings; from a sprue it parts at its foot. */
function fileWay(ledger: Ledger, { way, off, turns }: Way): void {
  const cold = ledger.text('machine.chamber') === 'cold';
  ledger.setText('die.runner-way', cold ? way : 'from the sprue');
  if (!cold || way !== 'round') return;
  const from = { status: 'derived', parents: [ledger.value('die.columns'), ledger.value('die.rows')] } as const;
  ledger.put(Traced.choice('runner.way-off', off, '1', { ...from, note: 'the nearest gap or side that the lower castings leave open' }));
  ledger.put(Traced.choice('runner.way-turns', turns, '1', { ...from, note: turns === 2 ? 'out and back to the middle' : 'the rows are fed from there' }));
}

function betweenOf({ turned }: Arrangement, columns: number, rows: number, slides: SlideSides): number {
  return turned.reduce((sum, isTurned, i) => {
    const outer = outerSides(i, columns, rows);
    return SIDES.reduce((all, side) => all + (outer.includes(sideOf(side, isTurned)) ? 0 : slides[side].slides), sum);
  }, 0);
}

/** Whether the metal enters beside the cavities; else it enters in their middle. */
export function isFedBelow(ledger: Ledger): boolean {
  return ledger.text('die.feeder') === BELOW;
}

/** The way a slide leaves the casting; a through hole on it may be met from its other end. */
function leavingWay(features: readonly Feature[]): Vector {
  return (features.find((feature) => !feature.through) ?? (features[0] as Feature)).direction;
}

/** Directions of the longer and the shorter side of the part across the die opening. */
export function faceAxes(ledger: Ledger): readonly [Vector, Vector] {
  const opening = ledger.text('parting.die-opening');
  if (AXES.some(({ text }) => text === opening)) {
    const sides = AXES.filter(({ text }) => text !== opening).sort(
      (one, other) => ledger.value(`part.envelope-${other.text}`).value - ledger.value(`part.envelope-${one.text}`).value,
    );
    return [(sides[0] as (typeof AXES)[number]).vector, (sides[1] as (typeof AXES)[number]).vector];
  }
  const { dieOpening } = ledger.part.geometry;
  const [one, other] = across(dieOpening === 'auto' ? [0, 0, 1] : dieOpening.vector);
  const extent = (index: 1 | 2): number => ledger.value('parting.extent', `${opening} across ${index}`).value;
  return extent(2) > extent(1) ? [other, one] : [one, other];
}
