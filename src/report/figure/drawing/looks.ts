import type { ShapeRole } from '../../../engine/plan.ts';
import { element, type Pen, straight } from '../pen.ts';
import { type Colour, FAINT, GROUND, INK, LARGE_SIZE, type Scheme, styleSheet } from '../style.ts';

type Pattern = 'hatched' | 'hatched-back' | 'dotted' | 'lined' | 'crossed' | 'plain';

interface Look {
  readonly fill: Colour;
  readonly edge: Colour;
  readonly pattern: Pattern;
  /** Colour of the pattern. */
  readonly mark: Colour;
}

/** Roles that have a face. An outline has none: it is a dashed edge. */
export type FaceRole = Exclude<ShapeRole, 'outline'>;

/** Faces differ by pattern, lightness and hue, so that any one of them is enough. */
export const LOOKS: Readonly<Record<FaceRole, Look>> = {
  steel: { fill: ['#eceef1', '#262c34'], edge: ['#4d5560', '#aab3bf'], pattern: 'hatched', mark: ['#a3abb6', '#66707d'] },
  cavity: { fill: ['#f6c25b', '#c98a1b'], edge: ['#6b4200', '#ffe1a6'], pattern: 'plain', mark: ['#6b4200', '#ffe1a6'] },
  slide: { fill: ['#b4e3ca', '#14402d'], edge: ['#0a5c3d', '#57ff9d'], pattern: 'hatched-back', mark: ['#0f8558', '#35c07a'] },
  feeder: { fill: ['#e39b8c', '#6b2115'], edge: ['#771b0d', '#ff9c8a'], pattern: 'dotted', mark: ['#771b0d', '#ffb5a7'] },
  line: { fill: ['#cfd6ff', '#1b3f8f'], edge: ['#0020c2', '#6db3ff'], pattern: 'lined', mark: ['#0020c2', '#6db3ff'] },
  bar: { fill: ['#3c434c', '#c9ced6'], edge: ['#1c2026', '#f4f6f9'], pattern: 'crossed', mark: ['#8d96a2', '#7a828d'] },
};

export const ROLES: readonly ShapeRole[] = ['outline', 'steel', 'cavity', 'slide', 'feeder', 'line', 'bar'];

export function patternId(figure: string, role: FaceRole): string {
  return `${figure}-${role}`;
}

/** What fills a shape of the role: its pattern in this figure, or nothing for an outline. */
export function faceOf(figure: string, role: ShapeRole): string {
  return role === 'outline' ? 'none' : `url(#${patternId(figure, role)})`;
}

/** Width of a tile, in pixels. */
const TILE = 8;

/** The tiles of the roles that are drawn. */
export function drawPatterns(pen: Pen, figure: string, roles: readonly FaceRole[]): void {
  const defs = element(pen, 'defs');
  for (const role of roles) {
    const { pattern } = LOOKS[role];
    const turn = pattern === 'hatched' || pattern === 'crossed' ? 45 : pattern === 'hatched-back' ? -45 : 0;
    const patternTransform = turn === 0 ? undefined : `rotate(${turn})`;
    const tile = element(defs, 'pattern', { id: patternId(figure, role), patternUnits: 'userSpaceOnUse', width: TILE, height: TILE, patternTransform });
    element(tile, 'rect', { class: `face-${role}`, width: TILE, height: TILE });
    drawTile(tile, `mark-${role}`, pattern);
  }
}

function drawTile(tile: Pen, look: string, pattern: Pattern): void {
  const half = TILE / 2;
  if (pattern === 'plain') return;
  if (pattern === 'dotted') {
    for (const [cx, cy] of [
      [2, 2],
      [6, 6],
    ] as const)
      element(tile, 'circle', { class: `dot ${look}`, cx, cy, r: 1.3 });
    return;
  }
  const ways = pattern === 'crossed' ? ['along', 'across'] : pattern === 'lined' ? ['across'] : ['along'];
  for (const way of ways) {
    if (way === 'along') straight(tile, look, [half, 0], [half, TILE]);
    else straight(tile, look, [0, half], [TILE, half]);
  }
}

/** The style sheet of a drawing. */
export function drawingStyle(): string {
  return styleSheet({
    size: LARGE_SIZE,
    rules: [
      '.shape { stroke-width: 1.5px; stroke-linejoin: round; }',
      '.outline { stroke-dasharray: 9 4; }',
      '.strip { fill: none; stroke-width: 4.5px; }',
      '.stroke { fill: none; stroke-width: 2.5px; stroke-dasharray: 11 3; }',
      '.centre { stroke-width: 1px; stroke-dasharray: 8 2 2 2; }',
      '.mark-slide, .mark-line { stroke-width: 1.6px; }',
      '.dimension, .extension { fill: none; stroke-width: 1px; }',
      '.scale { stroke-width: 1.5px; }',
    ],
    colours,
  });
}

function colours(scheme: Scheme): string[] {
  return [
    `.strip { stroke: ${GROUND[scheme]}; } .outline, .scale { stroke: ${INK[scheme]}; } .scale { fill: ${GROUND[scheme]}; } .scale-dark, .arrow { fill: ${INK[scheme]}; }`,
    `.dimension { stroke: ${INK[scheme]}; } .extension, .centre { stroke: ${FAINT[scheme]}; }`,
    ...Object.entries(LOOKS).map(
      ([role, { fill, edge, mark }]) =>
        `.${role} { stroke: ${edge[scheme]}; } .face-${role} { fill: ${fill[scheme]}; } .mark-${role} { stroke: ${mark[scheme]}; } .dot.mark-${role} { fill: ${mark[scheme]}; stroke: none; }`,
    ),
  ];
}
