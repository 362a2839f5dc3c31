/** Light or dark, as an index into a pair of colours. */
export type Scheme = 0 | 1;
export type Colour = readonly [light: string, dark: string];

export const GROUND: Colour = ['#ffffff', '#14171c'];
export const INK: Colour = ['#1c2026', '#e8eaee'];
export const FAINT: Colour = ['#5a616b', '#a5adb8'];
export const GRID: Colour = ['#e1e4e9', '#2d333c'];

/** Size of text in charts. */
export const FONT_SIZE = 13;
/** Size of text in figures that are often shown at half their width. */
export const LARGE_SIZE = 15;
export const TITLE_SIZE = 15;
const FONT = 'system-ui, sans-serif';

interface Style {
  readonly size?: number;
  /** What does not change with the scheme. */
  readonly rules: readonly string[];
  readonly colours: (scheme: Scheme) => readonly string[];
}

/** The style sheet of a figure: what does not change, the light colours, and the dark ones where the reader has them. */
export function styleSheet({ size = FONT_SIZE, rules, colours }: Style): string {
  const scheme = (of: Scheme): string[] => [
    `.ground { fill: ${GROUND[of]}; }`,
    `text { fill: ${INK[of]}; } .tick, .axis-title { fill: ${FAINT[of]}; }`,
    `.label { stroke: ${GROUND[of]}; }`,
    ...colours(of),
  ];
  return [
    `text { font-family: ${FONT}; font-size: ${size}px; }`,
    `.title { font-size: ${TITLE_SIZE}px; font-weight: 600; }`,
    '.middle { text-anchor: middle; } .end { text-anchor: end; }',
    '.label { paint-order: stroke; stroke-width: 4px; stroke-linejoin: round; }',
    ...rules,
    ...scheme(0),
    `@media (prefers-color-scheme: dark) {\n${scheme(1).join('\n')}\n}`,
  ].join('\n');
}
