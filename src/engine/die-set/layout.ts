import { SIDES, type Side } from '../steps/die/arrange.ts';
import type { Casting, SetLayout } from './set.ts';
import { ordersOf, spread } from './shelves.ts';
import { type Turns, turned } from './turn.ts';

/** A slide of a casting that lies unturned, with its longer side across. */
export interface SideSlide {
  readonly item: string;
  readonly side: Side;
  /** mm that it takes beyond the steel. */
  readonly room: number;
  readonly hydraulic: boolean;
}

/** A casting to be placed: its sides in mm, projected area in cm2, and slides. */
export interface ToPlace {
  readonly member: string;
  readonly id: string;
  readonly a: number;
  readonly b: number;
  readonly area: number;
  readonly slides: readonly SideSlide[];
}

/** A layout with what it is ranked by. */
interface Tried {
  readonly layout: SetLayout;
  /** Slides between castings count most, then those that leave below, then the longer side of the die with its slides, then how far the pressure centre is off. */
  readonly rank: readonly [between: number, below: number, longer: number, offset: number];
}

/** More parts than this are laid out with all castings lying the same way. */
const MOST_FREE = 4;
/** Combinations of orders that are tried for one number of rows. */
const MOST_COMBINED = 100;
/** Castings placed for one count of rows; dies of so many small castings would take seconds. */
const MOST_PLACED = 1600;
/** Layouts within this share of the size of the smallest are alike: among them the pressure centre decides. */
const ALIKE = 1.03;

/**
 * Lays the castings out in rows between which, and in which, there is steel. Tried are all numbers of rows, each part lying
 * either way, and the orders in a row; taken is what has the fewest slides between castings, then the shortest longer side,
 * and of those that are alike in it the one with its pressure centre nearest to the middle of the field.
 */
export function layOut(castings: readonly ToPlace[], steel: number): SetLayout {
  const ways = waysToLie(castings).flatMap((upright) => castings.flatMap((_, i) => standingIn(castings, upright, i + 1, steel) ?? []));
  const worth = castings.some(({ slides }) => slides.length > 0) ? ways : shortest(ways);
  const tried = worth.flatMap((way) => inRows(way, castings, steel));
  const lowest = (list: readonly Tried[], of: 0 | 1 | 2, share = 1): Tried[] => {
    const least = list.reduce((low, { rank }) => Math.min(low, rank[of]), Number.POSITIVE_INFINITY);
    return list.filter(({ rank }) => rank[of] <= least * share);
  };
  const alike = lowest(lowest(lowest(tried, 0), 1), 2, ALIKE);
  return alike.reduce((best, one) => (one.rank[3] < best.rank[3] - 1e-6 ? one : best)).layout;
}

/** The layout with the longer extent of its field across: as it is, or turned by a quarter either way. */
function lying(layout: SetLayout): SetLayout[] {
  return layout.height <= layout.width ? [layout] : [quarter(layout, 1), quarter(layout, 3)];
}

function quarter(layout: SetLayout, by: 1 | 3): SetLayout {
  const { castings, width, height, inner } = layout;
  return {
    ...layout,
    width: height,
    height: width,
    castings: castings.map(({ x, y, width: w, height: h, turns, edges, ...rest }) => ({
      ...rest,
      x: tidy(by === 1 ? -y : y),
      y: tidy(by === 1 ? x : -x),
      width: h,
      height: w,
      turns: ((turns + by) % 4) as Turns,
      edges: edges.map((side) => turned(side, by)),
    })),
    inner: inner.map(({ side, ...rest }) => ({ ...rest, side: turned(side, by) })),
  };
}

/** To the nanometre: what is left of sums that should be nothing goes. */
function tidy(place: number): number {
  return Math.round(place * 1e6) / 1e6 + 0;
}

/** Which parts stand upright: every combination for a few parts, all or none for many. */
function waysToLie(castings: readonly ToPlace[]): ReadonlySet<string>[] {
  const members = [...new Set(castings.map(({ member }) => member))];
  if (members.length > MOST_FREE) return [new Set(), new Set(members)];
  return Array.from({ length: 2 ** members.length }, (_, bits) => new Set(members.filter((_member, i) => (bits & (1 << i)) !== 0)));
}

/** Castings spread over rows, before they are put in an order there. */
interface Way {
  readonly upright: ReadonlySet<string>;
  readonly rows: readonly (readonly ToPlace[])[];
  /** mm, of the longer side of the field without slides; the order in a row does not change it. */
  readonly longer: number;
}

/** Undefined where a row would be empty. */
function standingIn(castings: readonly ToPlace[], upright: ReadonlySet<string>, count: number, steel: number): Way | undefined {
  const size = sizeWhere(upright);
  const rows = spread(castings, count, size);
  if (rows.some((row) => row.length === 0)) return undefined;
  const widths = rows.map((row) => row.reduce((sum, one) => sum + size(one).width, (row.length - 1) * steel));
  const height = rows.reduce((sum, row) => sum + Math.max(...row.map((one) => size(one).height)), (count - 1) * steel);
  return { upright, rows, longer: Math.max(height, ...widths) };
}

/** Those that can be taken where no slide has a say: the others need not be placed. */
function shortest(ways: readonly Way[]): readonly Way[] {
  const least = Math.min(...ways.map(({ longer }) => longer));
  return ways.filter(({ longer }) => longer <= least * ALIKE * (1 + 1e-9));
}

const sizeWhere = (upright: ReadonlySet<string>) => (one: ToPlace) =>
  upright.has(one.member) ? { width: one.b, height: one.a } : { width: one.a, height: one.b };

function inRows({ upright, rows }: Way, castings: readonly ToPlace[], steel: number): Tried[] {
  const known = new Map(castings.map((one) => [one.id, one]));
  return combined(rows.map((row) => ordersOf(row, ({ member }) => member)))
    .flatMap((chosen) => lying(place(chosen, upright, sizeWhere(upright), steel)))
    .map((layout) => ({ layout, rank: rankOf(layout, known) }));
}

/** An order for each row: every combination where they are few, else the first of each, the second of each and so on. */
function combined(orders: readonly (readonly (readonly ToPlace[])[])[]): (readonly ToPlace[])[][] {
  const all = orders.reduce((product, { length }) => product * length, 1);
  const most = Math.max(...orders.map(({ length }) => length));
  const castings = orders.reduce((sum, [first = []]) => sum + first.length, 0);
  if (all > MOST_COMBINED || all * castings > MOST_PLACED)
    return Array.from({ length: most }, (_, i) => orders.map((list) => list[i % list.length] as readonly ToPlace[]));
  return orders.reduce<(readonly ToPlace[])[][]>((lists, list) => lists.flatMap((before) => list.map((order) => [...before, order])), [[]]);
}

/** Places rows from below, each in the middle over the others, its castings side by side. */
function place(
  rows: readonly (readonly ToPlace[])[],
  upright: ReadonlySet<string>,
  size: (one: ToPlace) => { readonly width: number; readonly height: number },
  steel: number,
): SetLayout {
  const standing = rows.map((row, r) =>
    row.map((one, c) => {
      const edges = SIDES.filter((side) => ({ left: c === 0, right: c === row.length - 1, bottom: r === 0, top: r === rows.length - 1 })[side]);
      return { one, edges, turns: turnsFor(one, edges, upright.has(one.member)), ...size(one) };
    }),
  );
  type Standing = (typeof standing)[number][number];
  const roomAt = ({ one, turns }: Standing, side: Side): number =>
    Math.max(0, ...one.slides.filter((slide) => turned(slide.side, turns) === side).map(({ room }) => room));
  const gapAfter = (row: readonly Standing[], c: number): number => steel + roomAt(row[c] as Standing, 'right') + roomAt(row[c + 1] as Standing, 'left');
  const widthOf = (row: readonly Standing[]): number => row.reduce((sum, { width }, c) => sum + width + (c + 1 < row.length ? gapAfter(row, c) : 0), 0);
  const width = Math.max(...standing.map(widthOf));

  const castings: Casting[] = [];
  let bottom = 0;
  for (const [r, row] of standing.entries()) {
    const height = Math.max(...row.map((one) => one.height));
    let left = (width - widthOf(row)) / 2;
    for (const [c, { one, edges, turns, ...box }] of row.entries()) {
      castings.push({ member: one.member, id: one.id, x: left + box.width / 2, y: bottom + height / 2, width: box.width, height: box.height, turns, edges });
      left += box.width + (c + 1 < row.length ? gapAfter(row, c) : 0);
    }
    const above = standing[r + 1];
    const rooms = above === undefined ? 0 : Math.max(...row.map((one) => roomAt(one, 'top'))) + Math.max(...above.map((one) => roomAt(one, 'bottom')));
    bottom += height + (above === undefined ? 0 : steel + rooms);
  }
  const centred = castings.map((one) => ({ ...one, x: tidy(one.x - width / 2), y: tidy(one.y - bottom / 2) }));
  const inner = standing.flat().flatMap(({ one, edges, turns }) =>
    one.slides.flatMap(({ item, side, hydraulic }) => {
      const to = turned(side, turns);
      return edges.includes(to) ? [] : [{ casting: one.id, side: to, item, hydraulic }];
    }),
  );
  return { castings: centred, width, height: bottom, amid: isFree(centred), inner };
}

function rankOf({ castings, width, height, inner }: SetLayout, known: ReadonlyMap<string, ToPlace>): Tried['rank'] {
  const standing = castings.map((casting) => ({ casting, one: known.get(casting.id) as ToPlace }));
  const leaving = standing.flatMap(({ casting, one }) =>
    one.slides.map(({ side, room }) => ({ side: turned(side, casting.turns), room })).filter(({ side }) => casting.edges.includes(side)),
  );
  const room = (side: Side): number => Math.max(0, ...leaving.filter((slide) => slide.side === side).map((slide) => slide.room));
  const longer = Math.max(width + room('left') + room('right'), height + room('bottom') + room('top'));
  const whole = standing.reduce((sum, { one }) => sum + one.area, 0);
  const moment = (axis: 'x' | 'y'): number => standing.reduce((sum, { casting, one }) => sum + casting[axis] * one.area, 0) / whole;
  return [inner.length, leaving.filter(({ side }) => side === 'bottom').length, longer, Math.hypot(moment('x'), moment('y'))];
}

/** Turned half round where that brings more of its slides to an outer side; a slide that leaves below is in the way of the metal. */
function turnsFor({ slides }: ToPlace, edges: readonly Side[], isUpright: boolean): Turns {
  const ways: readonly Turns[] = isUpright ? [1, 3] : [0, 2];
  const cost = (turns: Turns): number =>
    slides.reduce((sum, slide) => {
      const to = turned(slide.side, turns);
      return sum + (edges.includes(to) ? (to === 'bottom' ? 1e-3 : 0) : 1);
    }, 0);
  return cost(ways[1] as Turns) < cost(ways[0] as Turns) - 1e-9 ? (ways[1] as Turns) : (ways[0] as Turns);
}

/** Whether no casting covers the middle of the field. */
function isFree(castings: readonly Casting[]): boolean {
  return castings.length > 1 && castings.every(({ x, y, width, height }) => Math.abs(x) >= width / 2 - 1e-9 || Math.abs(y) >= height / 2 - 1e-9);
}
