import { textWidth } from './text-size.ts';

export type Anchor = 'start' | 'middle' | 'end';

/** A box in pixels; y grows downward. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where a label could stand: its anchor point on the base line of its text. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
  /** Read from bottom to top. */
  readonly turned?: true;
}

export type Pixel = readonly [x: number, y: number];

/** From the base line of a text to the middle of its digits, in shares of the font size. */
export const MIDDLE_OF_DIGITS = 0.36;

/** The box that a text fills. */
export function textBox(text: string, size: number, { x, y, anchor, turned }: Spot): Box {
  const width = textWidth(text, size);
  if (turned === true) {
    const bottom = anchor === 'start' ? y : anchor === 'end' ? y + width : y + width / 2;
    return { left: x - 0.78 * size, top: bottom - width, right: x + 0.24 * size, bottom };
  }
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, top: y - 0.78 * size, right: left + width, bottom: y + 0.24 * size };
}

// Costs of a spot, in their order of gravity: out of the frame, over a label or mark, over a curve, over a thin
// line, far from the first wish.
const OUTSIDE = 1e6;
const OVER_BOX = 1e4;
const OVER_CURVE = 240;
const OVER_THIN = 70;
const LATER = 1.5;
/** A label that could be taken for that of another point. */
const STRAY = 300;
/** By so many pixels nearer to something else counts as such. */
const NEARER = 4;
/** Air around a placed label, in pixels. */
const AIR = 1;

/** Places labels one after the other, each where it disturbs least of what is there already. */
export class Placer {
  readonly #boxes: Box[] = [];
  readonly #lines: { readonly pixels: readonly Pixel[]; readonly cost: number }[] = [];

  constructor(private readonly frame: Box) {}

  /** Keeps a box free of labels. */
  keep(box: Box): void {
    this.#boxes.push(box);
  }

  /** A curve that labels had better not cross. */
  curve(pixels: readonly Pixel[]): void {
    this.#lines.push({ pixels, cost: OVER_CURVE });
  }

  /** A thin line, such as the edge of an area; a label over it harms less. */
  thin(pixels: readonly Pixel[]): void {
    this.#lines.push({ pixels, cost: OVER_THIN });
  }

  /**
   * The best of the spots, the earliest among equals; the label's box is taken from then on. With `from`, the label
   * belongs to that point: it should not be nearer to a box of something else, and the way to it should be free.
   */
  place(text: string, size: number, spots: readonly Spot[], from?: Pixel): Spot {
    let best: { readonly spot: Spot; readonly cost: number } | undefined;
    for (const [index, spot] of spots.entries()) {
      const box = textBox(text, size, spot);
      const cost = LATER * index + this.#cost(box) + (from === undefined ? 0 : this.#strayCost(box, from));
      if (best === undefined || cost < best.cost) best = { spot, cost };
    }
    if (best === undefined) throw new TypeError('a label needs at least one spot');
    this.#boxes.push(textBox(text, size, best.spot));
    return best.spot;
  }

  #strayCost(label: Box, from: Pixel): number {
    const way: readonly [Pixel, Pixel] = [from, nearestIn(label, from)];
    const length = Math.hypot(way[1][0] - from[0], way[1][1] - from[1]);
    let cost = 0;
    for (const box of this.#boxes) {
      const own = from[0] >= box.left && from[0] <= box.right && from[1] >= box.top && from[1] <= box.bottom;
      if (own) continue;
      if (crosses(way, box)) cost += STRAY;
      const [x, y] = nearestIn(label, nearestIn(box, from));
      const [ox, oy] = nearestIn(box, [x, y]);
      if (Math.hypot(x - ox, y - oy) < length - NEARER) cost += STRAY;
    }
    return cost;
  }

  #cost(bare: Box): number {
    const box = { left: bare.left - AIR, top: bare.top - AIR, right: bare.right + AIR, bottom: bare.bottom + AIR };
    const { frame } = this;
    const out =
      Math.max(0, frame.left - box.left) + Math.max(0, box.right - frame.right) + Math.max(0, frame.top - box.top) + Math.max(0, box.bottom - frame.bottom);
    let cost = out * OUTSIDE;
    for (const other of this.#boxes) cost += overlap(box, other) > 0 ? OVER_BOX + overlap(box, other) : 0;
    for (const line of this.#lines) if (crosses(line.pixels, box)) cost += line.cost;
    return cost;
  }
}

/** The point of a box that is nearest to a pixel. */
export function nearestIn(box: Box, [x, y]: Pixel): Pixel {
  return [Math.min(Math.max(x, box.left), box.right), Math.min(Math.max(y, box.top), box.bottom)];
}

/** Area that two boxes share, in square pixels. */
export function overlap(one: Box, other: Box): number {
  const width = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const height = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return width > 0 && height > 0 ? width * height : 0;
}

function crosses(line: readonly Pixel[], box: Box): boolean {
  return line.some((to, i) => {
    const from = line[i - 1];
    return from !== undefined && segmentMeets(from, to, box);
  });
}

/** Whether a segment has a point in the box: not all of it lies on one side, and not all corners lie on one side of it. */
function segmentMeets([x0, y0]: Pixel, [x1, y1]: Pixel, { left, top, right, bottom }: Box): boolean {
  if ((x0 < left && x1 < left) || (x0 > right && x1 > right) || (y0 < top && y1 < top) || (y0 > bottom && y1 > bottom)) return false;
  const side = (x: number, y: number): number => Math.sign((x1 - x0) * (y - y0) - (y1 - y0) * (x - x0));
  return Math.abs(side(left, top) + side(right, top) + side(left, bottom) + side(right, bottom)) < 4;
}
