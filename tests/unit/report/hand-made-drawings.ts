import type { Drawing, FigurePoint, Shape, ShapeRole } from '../../../src/engine/plan.ts';
import { NASTY } from './hand-made.ts';

const box = (role: ShapeRole, x: number, y: number, width: number, height: number): Shape => ({ shape: 'box', role, x, y, width, height });
const circle = (role: ShapeRole, x: number, y: number, diameter: number): Shape => ({ shape: 'circle', role, x, y, diameter });
const path = (role: ShapeRole, ...points: FigurePoint[]): Shape => ({ shape: 'path', role, points });
const measure = (text: string, from: FigurePoint, to: FigurePoint): Drawing['dimensions'][number] => ({ text, from, to, values: [] });

/** Both signs of a number, of two numbers: the corners of a rectangle about the origin. */
const corners = (x: number, y: number): FigurePoint[] => [
  [-x, -y],
  [x, -y],
  [x, y],
  [-x, y],
];

/** Four cavities about a feeder in a block between tie bars; sizes are invented and stand for no machine. */
export const FOUR_CAVITIES: Drawing = {
  kind: 'figure',
  form: 'drawing',
  id: 'four-cavities',
  title: 'The die between the tie bars, seen from the cover half',
  text: 'Four cavities lie about the runner in a block that fits between the tie bars; a slide draws to the left, cooling lines run across.',
  unit: 'mm',
  roles: [
    { role: 'steel', title: 'Die block' },
    { role: 'cavity', title: 'Cavity' },
    { role: 'feeder', title: 'Runner and biscuit' },
    { role: 'slide', title: 'Slide' },
    { role: 'line', title: 'Cooling line' },
    { role: 'bar', title: 'Tie bar' },
    { role: 'outline', title: 'Platen' },
  ],
  shapes: [
    box('outline', 0, 0, 980, 900),
    ...corners(360, 320).map(([x, y]) => circle('bar', x, y, 110)),
    box('steel', 0, 0, 520, 560),
    box('slide', -225, 135, 70, 60),
    path('line', [-260, 60], [260, 60]),
    path('line', [-260, -60], [260, -60]),
    ...corners(120, 135).map(([x, y]) => box('cavity', x, y, 140, 95)),
    path('feeder', [-20, -180], [20, -180], [20, 135], [50, 135], [50, 150], [-50, 150], [-50, 135], [-20, 135]),
    circle('feeder', 0, -200, 70),
  ],
  dimensions: [
    measure('Block', [-260, 280], [260, 280]),
    measure('Block', [260, -280], [260, 280]),
    measure('Between tie bars', [-305, 320], [305, 320]),
    measure('Between tie bars', [-360, -265], [-360, 265]),
    measure('Steel around', [190, -135], [260, -135]),
    measure('Cavity', [-190, -135], [-50, -135]),
    measure('Platen', [-490, -450], [490, -450]),
  ],
};

/** Short lines close together on every side, long names, and slanting lines. */
export const CROWDED: Drawing = {
  ...FOUR_CAVITIES,
  id: 'crowded-drawing',
  title: NASTY,
  unit: 'cm',
  roles: [
    ...FOUR_CAVITIES.roles.map(({ role, title }) => ({ role, title: `${title}, ${'a name that goes on and on '.repeat(5)}` })),
    { role: 'steel', title: 'Named twice' },
  ],
  dimensions: [
    ...Array.from({ length: 6 }, (_, i) => measure(`Step ${i + 1}`, [-260 + 15 * i, 280], [-245 + 15 * i, 280])),
    ...Array.from({ length: 5 }, (_, i) => measure(`Rise ${i + 1}`, [260, 60 * i - 200], [260, 60 * i - 165])),
    measure(`${NASTY} ${'and on and on '.repeat(12)}`, [-190, -135], [-50, -135]),
    measure(`Upright with ${'a long name '.repeat(12)}`, [-360, -265], [-360, 265]),
    measure('Overlaps', [-260, 280], [-150, 280]),
    measure('Overlaps', [-200, 280], [100, 280]),
    measure('Diagonal of the block', [-260, -280], [260, 280]),
    measure('Between opposite bars', [-360, 320], [360, -320]),
    measure('', [-490, -450], [490, -450]),
  ],
};

/** Low and wide, with upright dimensions longer than it is high. */
export const FLAT: Drawing = {
  ...FOUR_CAVITIES,
  id: 'flat-plate',
  title: 'A plate from the side',
  shapes: [box('steel', 0, 0, 900, 30), box('cavity', -100, 8, 300, 14), circle('line', 250, 0, 10), circle('line', 320, 0, 10)],
  dimensions: [
    measure('Thickness of the plate', [450, -15], [450, 15]),
    measure('Depth', [-450, 1], [-450, 15]),
    measure('Pitch', [250, -5], [320, -5]),
    measure('Line to face', [320, 0], [320, -15]),
  ],
};

/** High and narrow. */
export const TALL: Drawing = {
  ...FLAT,
  id: 'tall-plate',
  title: 'A plate from the front',
  shapes: [box('steel', 0, 0, 30, 900), path('slide', [-15, 100], [15, 200], [15, 100])],
  dimensions: [measure('Width of the plate', [-15, 450], [15, 450]), measure('Height of the plate', [15, -450], [15, 450])],
};

const only = (id: string, shapes: Drawing['shapes'], dimensions: Drawing['dimensions'] = []): Drawing => ({ ...FOUR_CAVITIES, id, shapes, dimensions });

/** What no step should draw, and must not break the drawing. */
export const ODD_DRAWINGS: readonly Drawing[] = [
  only('no-shapes', [], [measure('Nothing', [0, 0], [10, 0])]),
  only('one-shape', [circle('line', 7, 7, 12)]),
  only('one-point', [box('steel', 3, 3, 0, 0)], [measure('No length', [3, 3], [3, 3])]),
  only('one-line', [path('line', [0, 5], [9, 5])], [measure('Length', [0, 5], [9, 5])]),
  only(
    'not-numbers-drawn',
    [box('steel', Number.NaN, 0, 1, 1), box('steel', 0, 0, -1, 1), circle('bar', 0, 0, Number.POSITIVE_INFINITY), path('feeder', [Number.NaN, 1], [2, 3])],
    [measure('Nowhere', [Number.NaN, 0], [1, 1])],
  ),
  only('some-numbers', [path('feeder', [0, 0], [Number.NaN, 1], [2, 3], [4, 0]), box('cavity', 1, 1, 1, 1e300)], [measure('Nowhere', [0, 0], [Number.NaN, 0])]),
  only('great-drawing', [box('steel', 4e11, 0, 2e11, 2e11)], [measure('Width', [3e11, 0], [5e11, 0])]),
  only('small-drawing', [box('steel', 0, 0, 3e-7, 2e-7)], [measure('Width', [-1.5e-7, 0], [1.5e-7, 0])]),
  only('far-away', [box('steel', 1e9, -1e9, 3, 2)], [measure('Width', [1e9 - 1.5, -1e9], [1e9 + 1.5, -1e9])]),
  {
    ...only(
      'many-shapes',
      Array.from({ length: 400 }, (_, i) => circle(i % 3 === 0 ? 'line' : 'cavity', 30 * (i % 20), 30 * Math.floor(i / 20), 20)),
      Array.from({ length: 16 }, (_, i) => measure(`Pitch ${i + 1}`, [30 * i, 0], [30 * i + 30 * ((i % 5) + 1), 0])),
    ),
    title: 'A title that goes on and on '.repeat(30),
  },
];

export const DRAWINGS: readonly Drawing[] = [FOUR_CAVITIES, CROWDED, FLAT, TALL];
