import { type Colour, FAINT, GRID, INK, LARGE_SIZE, type Scheme, styleSheet } from '../style.ts';

/** What fills a bar and what edges it: pale with a plain ground, or dark with stripes where it governs. */
export const BAR_COLOURS: Readonly<Record<'plain' | 'strong', { readonly fill: Colour; readonly edge: Colour }>> = {
  plain: { fill: ['#d3deee', '#2b3a50'], edge: ['#5b7396', '#8ba3c7'] },
  strong: { fill: ['#0020c2', '#479dff'], edge: ['#001066', '#c4dfff'] },
};
const STRIPE: Colour = ['#a9b6ff', '#0b2f5c'];

/** The style sheet of a timeline. */
export function timelineStyle(): string {
  return styleSheet({
    size: LARGE_SIZE,
    rules: [
      '.grid, .axis, .row, .end-line, .total { fill: none; stroke-width: 1px; }',
      '.end-line { stroke-dasharray: 3 3; } .total { stroke-width: 2px; }',
      '.bar { stroke-width: 1px; } .strong { stroke-width: 1.5px; }',
      '.stripe { fill: none; stroke-width: 1.6px; }',
      '.heavy { font-weight: 600; }',
    ],
    colours,
  });
}

function colours(scheme: Scheme): string[] {
  const { plain, strong } = BAR_COLOURS;
  return [
    `.grid, .row { stroke: ${GRID[scheme]}; } .axis, .end-line { stroke: ${FAINT[scheme]}; } .total { stroke: ${INK[scheme]}; }`,
    `.bar { fill: ${plain.fill[scheme]}; stroke: ${plain.edge[scheme]}; }`,
    `.strong { stroke: ${strong.edge[scheme]}; } .tile { fill: ${strong.fill[scheme]}; } .stripe { stroke: ${STRIPE[scheme]}; }`,
  ];
}
