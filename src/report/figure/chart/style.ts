import { type Colour, FAINT, GRID, GROUND, INK, type Scheme, styleSheet } from '../style.ts';

/**
 * Colours for curves, light and dark. They differ in lightness as well as in hue, so that readers who lack one kind of
 * cone tell them apart; dash patterns do the same without colour. Labels are written in the colour of their curve, so
 * the contrast against the ground is at least 4.5 to 1 (WCAG 2.2, 1.4.3).
 */
export const CURVE_COLOURS: readonly Colour[] = [
  ['#0020c2', '#479dff'],
  ['#771b0d', '#e84930'],
  ['#0f8558', '#57ff9d'],
  ['#580075', '#f6e3fc'],
  ['#946c00', '#fab700'],
  ['#282a2f', '#838995'],
];

const AREA_COLOURS: readonly Colour[] = [
  ['#0f8558', '#57ff9d'],
  ['#946c00', '#fab700'],
  ['#0020c2', '#479dff'],
];

/** Patterns of curves drawn as whole lines: all but the first have short gaps, in strokes too long to read as dashed. */
const WHOLE = ['', '22 3', '16 3 2 3', '12 3 2 3 2 3'];
/** Patterns of curves that the plan asks to have dashed. */
const DASHED = ['6 4', '2 3', '7 3 2 3', '4 2 1 2'];
const AREA_EDGES = ['', '5 3', '1 3'];

const turn = <T>(list: readonly T[], index: number): T => list[index % list.length] as T;

/** Dash pattern of the curve that is the `index`-th of its kind, whole or dashed. */
export function dashOf(index: number, dashed: boolean): string {
  return turn(dashed ? DASHED : WHOLE, index);
}

export function areaEdge(index: number): string {
  return turn(AREA_EDGES, index);
}

/** Classes of the curve at this place in the figure: of its line and of its label. */
export function curveClass(index: number): { readonly line: string; readonly label: string } {
  const number = (index % CURVE_COLOURS.length) + 1;
  return { line: `curve c${number}`, label: `label k${number}` };
}

export function areaClass(index: number): string {
  return `area a${(index % AREA_COLOURS.length) + 1}`;
}

/** The style sheet of a chart. */
export function chartStyle(): string {
  return styleSheet({
    rules: [
      '.grid, .axis, .upright, .leader, .curve { fill: none; }',
      '.grid, .axis, .upright, .leader { stroke-width: 1px; }',
      '.upright { stroke-dasharray: 3 3; }',
      '.curve { stroke-width: 2.2px; stroke-linejoin: round; stroke-linecap: butt; }',
      '.area { fill-opacity: 0.16; stroke-width: 1px; }',
      '.mark { stroke-width: 1.5px; }',
    ],
    colours,
  });
}

function colours(scheme: Scheme): string[] {
  return [
    `.grid { stroke: ${GRID[scheme]}; } .axis, .upright, .leader { stroke: ${FAINT[scheme]}; }`,
    `.mark { fill: ${INK[scheme]}; stroke: ${GROUND[scheme]}; }`,
    CURVE_COLOURS.map((pair, i) => `.c${i + 1} { stroke: ${pair[scheme]}; } .k${i + 1} { fill: ${pair[scheme]}; }`).join('\n'),
    AREA_COLOURS.map((pair, i) => `.a${i + 1} { fill: ${pair[scheme]}; stroke: ${pair[scheme]}; }`).join('\n'),
  ];
}
