import { Traced } from '../../../kernel/traced.ts';
import { slideRoom } from '../../../physics/die-block.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { fullId } from '../../vocabulary/index.ts';
import { across, dot, type Feature, type Vector } from '../parting/directions.ts';
import { AXES } from '../parting/openings.ts';
import { featuresOn } from './cored.ts';

export const BELOW = 'below the cavities';
export const AMID = 'amid the cavities';

export type Side = 'left' | 'right' | 'top' | 'bottom';

/** Items of the slides that the parting step has filed and whose cores do not fall away. */
export function slideItems(ledger: Ledger): string[] {
  const prefix = 'slide.stroke[';
  const items = [...ledger.values.keys()].filter((id) => id.startsWith(prefix)).map((id) => id.slice(prefix.length, -1));
  return items.filter((item) => featuresOn(ledger, item).needed);
}

/** The side of the die that each slide leaves to, and the room that the slides of one cavity take across and upright. */
export function workSlides(ledger: Ledger): void {
  const items = slideItems(ledger);
  const lock = ledger.look('die/block', 'lock', {}, 'die.lock');
  for (const [item, side] of sidesOf(ledger, items)) {
    ledger.setText('die.slide-side', side, { item });
    ledger.apply(slideRoom, { stroke: ledger.value('slide.stroke', item), lock }, { item });
  }
  roomOf(ledger, 'die.room-width', ['left', 'right']);
  roomOf(ledger, 'die.room-height', ['top', 'bottom']);
  const atFeeder = isFedBelow(ledger) ? slidesOn(ledger, ['bottom']) : [];
  const note = atFeeder.join(', ') || 'none';
  ledger.put(Traced.choice('die.feeder-slides', atFeeder.length, '1', { note, status: 'practice' }));
}

/** Slides that leave to one of these sides of the die. */
export function slidesOn(ledger: Ledger, sides: readonly Side[]): string[] {
  return slideItems(ledger).filter((item) => sides.includes(ledger.texts.get(fullId('die.slide-side', item)) as Side));
}

/** Whether the metal enters beside the cavities; else it enters in their middle. */
export function isFedBelow(ledger: Ledger): boolean {
  return ledger.text('die.feeder') === BELOW;
}

function roomOf(ledger: Ledger, id: 'die.room-width' | 'die.room-height', sides: readonly Side[]): void {
  const rooms = slidesOn(ledger, sides).map((item) => ledger.value('die.slide-room', item));
  if (rooms.length > 0) ledger.put(sumOf(id, 'Room for slides', 'mm', rooms));
  else ledger.put(Traced.choice(id, 0, 'mm', { note: 'no slide on these sides', status: 'derived' }));
}

/**
 * Across is the longer side of the part. A die can be laid out either way up, so of the slides that travel upright the
 * more numerous leave to the top, away from a feeder below.
 */
function sidesOf(ledger: Ledger, items: readonly string[]): Map<string, Side> {
  const [a, b] = faceAxes(ledger);
  const ways = items.map((item) => ({ item, way: wayOf(featuresOn(ledger, item).features) }));
  const upright = ways.filter(({ way }) => Math.abs(dot(way, b)) > Math.abs(dot(way, a)));
  const up = upright.filter(({ way }) => dot(way, b) > 0).length;
  const sign = up >= upright.length - up ? 1 : -1;
  return new Map(
    ways.map(({ item, way }): [string, Side] => {
      const [level, rise] = [sign * dot(way, a), sign * dot(way, b)];
      if (Math.abs(rise) > Math.abs(level)) return [item, rise > 0 ? 'top' : 'bottom'];
      return [item, level >= 0 ? 'right' : 'left'];
    }),
  );
}

/** The way a slide leaves the casting; a through hole on it may be met from its other end. */
function wayOf(features: readonly Feature[]): Vector {
  return (features.find((feature) => !feature.through) ?? (features[0] as Feature)).direction;
}

/** Directions of the longer and the shorter side of the part across the die opening. */
function faceAxes(ledger: Ledger): readonly [Vector, Vector] {
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
