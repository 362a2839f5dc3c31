import type { FigurePoint } from '../../../engine/plan.ts';
import { PAD, WIDTH } from '../frame.ts';
import type { Box, Pixel } from '../place.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { textWidth } from '../text-size.ts';
import { type Bounds, LEAST_SIZE } from './shapes.ts';
import { FIRST, PITCH, RIM, rowsFor, SIDES, type Side, type Span } from './sides.ts';

/** Least height of the shapes, in pixels: a drawing with very many dimensions is higher than asked for. */
const LEAST_ROOM = 60;
/** From a dimension line to the far edge of its text. */
const TEXT_HEIGHT = 22;

/** Rows of dimension lines on each side. */
export type RowCounts = Readonly<Record<Side, number>>;

/** How the unit of the drawing becomes pixels. */
export interface Fit {
  /** Pixels for one unit. */
  readonly scale: number;
  readonly pixel: (point: FigurePoint) => Pixel;
  /** Where shapes and dimensions lie. */
  readonly frame: Box;
  /** Where the shapes and the slanting dimensions lie; the first rows stand around it. */
  readonly inner: Box;
}

/** What has to be fitted: the bounds of the shapes, and the words along them. */
export interface Contents {
  readonly bounds: Bounds;
  readonly top: number;
  /** Height of the frame that should do. */
  readonly most: number;
  /** Slanting dimensions, which keep a rim around the shapes. */
  readonly slanting: number;
  readonly dimensions: readonly { readonly side: Side; readonly from: FigurePoint; readonly to: FigurePoint; readonly text: string }[];
}

/** The largest scale at which the bounds and so many rows around them fit. */
function fitWith({ bounds, top, most, slanting, dimensions }: Contents, rows: RowCounts): Fit {
  const rim = RIM + (slanting === 0 ? 0 : FIRST + slanting * PITCH);
  const margin = (side: Side): number => (rows[side] === 0 ? 0 : FIRST + (rows[side] - 1) * PITCH + TEXT_HEIGHT);
  const [across, up] = [bounds.right - bounds.left, bounds.top - bounds.bottom];
  const roomAcross = WIDTH - 2 * PAD - margin('left') - margin('right') - 2 * rim;
  const roomUp = Math.max(LEAST_ROOM, most - margin('above') - margin('below') - 2 * rim);
  const scales = [across > LEAST_SIZE ? roomAcross / across : 0, up > LEAST_SIZE ? roomUp / up : 0].filter((scale) => scale > 0);
  const scale = scales.length === 0 ? 1 : Math.min(...scales);

  const [width, height] = [across * scale, up * scale];
  // Texts on the left and right stay between the rows above and below, so that they never meet.
  const turned = dimensions.filter(({ side }) => side === 'left' || side === 'right').map(({ text }) => textWidth(text, SIZE));
  const band = Math.max(height + 2 * rim, Math.min(roomUp + 2 * rim, Math.max(0, ...turned)));
  const left = PAD + margin('left') + rim + (roomAcross - width) / 2;
  const upper = top + margin('above') + (band - height) / 2;
  return {
    scale,
    pixel: ([x, y]) => [left + (x - bounds.left) * scale, upper + (bounds.top - y) * scale],
    frame: { left: PAD, right: WIDTH - PAD, top, bottom: top + margin('above') + band + margin('below') },
    inner: { left: left - rim, right: left + width + rim, top: top + margin('above'), bottom: top + margin('above') + band },
  };
}

/** Row of each dimension, in the order given. */
function rowsWith({ dimensions }: Contents, fit: Fit): number[] {
  const rows: number[] = [];
  for (const side of SIDES) {
    const own = [...dimensions.keys()].filter((i) => dimensions[i]?.side === side);
    const { least, greatest } = limitsOf(side, fit);
    const spans = own.map((i) => spanOf(side, dimensions[i] as Contents['dimensions'][number], fit));
    for (const [j, row] of rowsFor(spans, least, greatest).entries()) rows[own[j] as number] = row;
  }
  return rows;
}

/** Bounds of what may stand along a side, in the direction of its text. */
export function limitsOf(side: Side, { frame, inner }: Fit): { readonly least: number; readonly greatest: number } {
  return side === 'above' || side === 'below' ? { least: frame.left, greatest: frame.right } : { least: -inner.bottom, greatest: -inner.top };
}

export function spanOf(side: Side, { from, to, text }: Contents['dimensions'][number], { pixel }: Fit): Span {
  const along = (point: FigurePoint): number => (side === 'above' || side === 'below' ? pixel(point)[0] : -pixel(point)[1]);
  const [one, other] = [along(from), along(to)];
  return { from: Math.min(one, other), to: Math.max(one, other), text };
}

/** As large as it goes: begins with one row on each side that has a dimension, and adds what the texts need at that scale. */
export function fitContents(contents: Contents): { readonly fit: Fit; readonly rows: readonly number[] } {
  const count = (side: Side, rows: readonly number[]): number => Math.max(0, ...rows.map((row, i) => (contents.dimensions[i]?.side === side ? row + 1 : 0)));
  const counts = (rows: readonly number[]): RowCounts => ({
    above: count('above', rows),
    below: count('below', rows),
    left: count('left', rows),
    right: count('right', rows),
  });
  let given = counts(contents.dimensions.map(() => 0));
  for (;;) {
    const fit = fitWith(contents, given);
    const rows = rowsWith(contents, fit);
    const needed = counts(rows);
    if (SIDES.every((side) => needed[side] <= given[side])) return { fit, rows };
    const most = (side: Side): number => Math.max(given[side], needed[side]);
    given = { above: most('above'), below: most('below'), left: most('left'), right: most('right') };
  }
}
