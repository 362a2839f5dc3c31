import type { Drawing, FigurePoint, Shape } from '../../../engine/plan.ts';
import { belowTitle, PAD, titleLines, WIDTH } from '../frame.ts';
import { lengthText, type PlanValues } from '../numbers.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { shorten, textWidth } from '../text-size.ts';
import { aside, type DrawnDimension, lineBeside, slantingLine } from './dimensions.ts';
import { type Fit, fitContents } from './fit.ts';
import { type LegendRole, legendFor } from './legend.ts';
import { type ScaleBar, scaleBarFor, widthKept } from './scale-bar.ts';
import { type Bounds, boundsOf, type Dimension, drawableDimensions, drawableShapes, hullPoints, lengthOf } from './shapes.ts';
import { type Place, placeOf, type Side } from './sides.ts';

/** Height of a drawing, in pixels, unless the rows of its dimensions fill it. */
const MOST_HEIGHT = 700;
const TITLE_LINES = 3;
/** More dimensions than these on one side, or aslant, leave no room for the shapes; the shortest are left out. */
const MOST_BESIDE = 12;
const MOST_SLANTING = 3;
/** From one line of the legend to the next, and from the drawing to the first. */
export const LINE = 22;
const LEGEND_GAP = 14;

export interface DrawingLayout {
  readonly height: number;
  readonly title: readonly string[];
  readonly shapes: readonly Shape[];
  readonly fit: Fit;
  readonly dimensions: readonly DrawnDimension[];
  readonly legend: readonly (readonly LegendRole[])[];
  readonly legendTop: number;
  /** Absent where nothing is drawn. */
  readonly scaleBar?: ScaleBar;
}

/** Where everything of a drawing goes, in pixels from its upper left corner. */
export function drawingLayout(figure: Drawing, values: PlanValues): DrawingLayout {
  const title = titleLines(figure.title, TITLE_LINES);
  const shapes = drawableShapes(figure.shapes);
  const legend = legendFor(figure, shapes, widthKept(figure.unit));
  const top = belowTitle(title) + 10;
  const below = LEGEND_GAP + Math.max(1, legend.length) * LINE + PAD - 6;
  const { fit, dimensions } = fitted(figure, values, shapes, top, MOST_HEIGHT - top - below);
  const legendTop = fit.frame.bottom + LEGEND_GAP;
  return {
    height: Math.ceil(fit.frame.bottom + below),
    title,
    shapes,
    fit,
    dimensions,
    legend,
    legendTop,
    ...(shapes.length === 0 ? {} : { scaleBar: scaleBarFor(fit.scale, figure.unit) }),
  };
}

interface Placed {
  readonly dimension: Dimension;
  readonly place: Place;
  readonly text: string;
}

/** The scale at which shapes and dimensions fit, and where the dimensions come to stand. */
function fitted(
  figure: Drawing,
  values: PlanValues,
  shapes: readonly Shape[],
  top: number,
  most: number,
): { readonly fit: Fit; readonly dimensions: readonly DrawnDimension[] } {
  const hull = shapes.flatMap(hullPoints);
  const wanted = shapes.length === 0 ? [] : drawableDimensions(figure.dimensions);
  const points = [...hull, ...wanted.flatMap(({ from, to }) => [from, to])];
  const core = boundsOf(points) ?? { left: 0, right: 0, bottom: 0, top: 0 };
  const placed = longestOf(wanted, core).map((dimension): Placed => {
    const place = placeOf(dimension, core);
    const room = place === 'left' || place === 'right' ? most / 2 : WIDTH - 2 * PAD;
    return { dimension, place, text: wordsOf(dimension, lengthText(lengthOf(dimension), figure.unit, dimension.values, values), room) };
  });
  const slanting = placed.filter(({ place }) => place === 'aslant').map((one) => ({ ...one, ...aside(one.dimension, points, core) }));
  const beside = placed.flatMap(({ place, dimension: { from, to }, text }) => (place === 'aslant' ? [] : [{ side: place as Side, from, to, text }]));

  const bounds = boundsOf([...points, ...slanting.flatMap(({ line }): FigurePoint[] => [...line])]) ?? core;
  const { fit, rows } = fitContents({ bounds, top, most, slanting: slanting.length, dimensions: beside });
  return {
    fit,
    dimensions: [
      ...beside.map((dimension, i) => lineBeside(dimension, rows[i] ?? 0, fit)),
      ...slanting.map(({ dimension, line, away, text }, i) => slantingLine(dimension, line, away, text, i, fit)),
    ],
  };
}

/** The longest of each side, in the order given. */
function longestOf(dimensions: readonly Dimension[], core: Bounds): Dimension[] {
  return dimensions.filter((dimension, i) => {
    const place = placeOf(dimension, core);
    const longer = dimensions.filter((other, j) => {
      const [one, two] = [lengthOf(dimension), lengthOf(other)];
      return placeOf(other, core) === place && (two > one || (two === one && j < i));
    });
    return longer.length < (place === 'aslant' ? MOST_SLANTING : MOST_BESIDE);
  });
}

/** Name, length and unit, as in `Width of the block, 480 mm`. The length stays where a long name has to be cut. */
function wordsOf({ text }: Dimension, length: string, room: number): string {
  if (text === '') return length;
  const end = `, ${length}`;
  return shorten(text, room - textWidth(end, SIZE), SIZE) + end;
}
