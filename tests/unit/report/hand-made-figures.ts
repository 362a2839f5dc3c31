import type { Chart, FigurePoint } from '../../../src/engine/plan.ts';
import { NASTY } from './hand-made.ts';

/** Samples of a function, for the eye; the forms are only like those of the trade and stand for no machine. */
function samples(from: number, to: number, count: number, of: (x: number) => number): FigurePoint[] {
  return Array.from({ length: count + 1 }, (_, i) => {
    const x = from + ((to - from) * i) / count;
    return [x, of(x)] as const;
  });
}

const machine = (most: number, stall: number) => samples(0, most, 60, (q) => stall * (1 - (q / most) ** 2));
const die = (factor: number) => samples(0, 28, 60, (q) => 0.055 * factor * q * q);

/** Pressure against flow: machine lines, die lines, the window, the planned point. */
export const PRESSURE_FLOW: Chart = {
  kind: 'figure',
  form: 'chart',
  id: 'pressure-flow',
  title: 'Metal pressure against flow',
  text: 'Machine lines fall and die lines rise; the planned point lies in the window between the least and the greatest gate velocity.',
  x: { title: 'Flow of metal', unit: 'l/s' },
  y: { title: 'Metal pressure', unit: 'MPa' },
  areas: [
    {
      title: 'Process window',
      points: [
        [14, 10.8],
        [21, 24.2],
        [21, 28],
        [14, 32.5],
      ],
    },
  ],
  curves: [
    { title: 'Machine line, plunger 60 mm', points: machine(34, 40) },
    { title: 'Machine line, plunger 70 mm', points: machine(46, 29) },
    { title: 'Die line', points: die(1) },
    { title: 'Die line, discharge 20 % lower', points: die(1.5).filter(([, p]) => p < 42), dashed: true },
    { title: 'Die line, discharge 20 % higher', points: die(0.7), dashed: true },
  ],
  marks: [
    { title: 'Planned point', x: 17, y: 15.9, values: ['pq2.pressure', 'pq2.flow'] },
    { title: 'Machine and die line meet', x: 21.2, y: 24.6, values: [] },
    { title: 'Greatest power', x: 19.6, y: 26.7, values: [] },
    { title: 'Least gate velocity', x: 14, values: [] },
    { title: 'Greatest gate velocity', x: 21, values: [] },
  ],
};

const speed: FigurePoint[] = [
  [0, 0],
  [20, 0.25],
  [180, 0.35],
  [310, 0.6],
  [330, 0.6],
  [338, 3.1],
  [402, 3.1],
  [408, 0],
  [412, 0],
];

/** Speed and pressure against stroke: a right axis and upright lines at the positions. */
export const STROKE_PROFILE: Chart = {
  kind: 'figure',
  form: 'chart',
  id: 'stroke-profile',
  title: 'Plunger speed and metal pressure against stroke',
  text: 'The plunger starts slowly, brings the metal to the gate, fills the cavity fast and is then intensified.',
  x: { title: 'Plunger stroke', unit: 'mm' },
  y: { title: 'Plunger speed', unit: 'm/s' },
  right: { title: 'Metal pressure', unit: 'MPa' },
  areas: [],
  curves: [
    { title: 'Plunger speed', points: speed },
    {
      title: 'Metal pressure',
      dashed: true,
      axis: 'right',
      points: [
        [0, 0],
        [300, 1.5],
        [335, 4],
        [340, 24],
        [400, 26],
        [408, 64],
        [412, 66],
      ],
    },
  ],
  marks: [
    { title: 'Pour hole closed', x: 95, values: [] },
    { title: 'Sleeve full', x: 290, values: [] },
    { title: 'Metal at the gate', x: 318, values: [] },
    { title: 'Change-over', x: 330, values: [] },
    { title: 'Cavity full', x: 404, values: [] },
    { title: 'End of stroke', x: 412, values: [] },
  ],
};

/** A curve over time, with a bound as an upright line and a point whose name is full of signs. */
export const GAS_TIME: Chart = {
  kind: 'figure',
  form: 'chart',
  id: 'gas-time',
  title: 'Gas pressure in the cavity over the fill',
  text: `Gas pressure rises while the metal comes in; ${NASTY}`,
  x: { title: 'Time', unit: 'ms' },
  y: { title: 'Gas pressure', unit: 'bar' },
  areas: [],
  curves: [
    { title: 'Planned vents', points: samples(0, 58, 80, (t) => 1 + 2.6 * (t / 58) ** 4) },
    { title: 'Half the vent area', points: samples(0, 58, 80, (t) => 1 + 7.5 * (t / 58) ** 3) },
    { title: NASTY, points: samples(0, 58, 80, (t) => 1 - 0.9 * (1 - Math.exp(-t / 9))), dashed: true },
  ],
  marks: [
    { title: NASTY, x: 40, y: 3.4, values: [] },
    { title: 'Longest fill time', x: 58, values: [] },
  ],
};

/** What no step should draw, and must not break the drawing: nothing at all, gaps, one point, long names, many lines. */
export const ODD: readonly Chart[] = [
  { ...GAS_TIME, id: 'nothing', curves: [], marks: [] },
  {
    ...GAS_TIME,
    id: 'gaps',
    x: { title: 'A quantity '.repeat(30), unit: '1' },
    y: { title: 'A quantity '.repeat(30), unit: 'MPa' },
    curves: [
      {
        title: 'With gaps',
        points: [
          [0, Number.NaN],
          [1, -2e-3],
          [2, Number.POSITIVE_INFINITY],
          [3, -5e-3],
          [4, -4e-3],
        ],
      },
      { title: 'One point', points: [[2, -3e-3]] },
      { title: 'No point', points: [] },
    ],
    marks: [{ title: 'Nowhere', x: Number.NaN, y: Number.NaN, values: [] }],
  },
  {
    ...STROKE_PROFILE,
    id: 'crowded',
    title: 'A long title that says in many words what the figure shows, so that it needs a second line, and then some more words',
    curves: Array.from({ length: 9 }, (_, i) => ({
      title: `Curve ${i + 1} with a rather long name that says which plunger and machine it belongs to`,
      points: samples(0, 1e6, 20, (x) => x * (1 + 0.02 * i)),
      ...(i % 2 === 0 ? { axis: 'right' as const } : { dashed: true as const }),
    })),
    marks: Array.from({ length: 12 }, (_, i) => ({ title: `Position ${i + 1} of the plunger`, x: 8e5 + 9e3 * i, ...(i < 3 ? { y: 8.1e5 } : {}), values: [] })),
  },
  {
    ...STROKE_PROFILE,
    id: 'flat',
    curves: [
      { title: 'Level', points: samples(300, 310, 5, () => 7) },
      { title: 'Level, right', points: samples(300, 310, 5, () => 0), axis: 'right' },
    ],
    marks: [],
  },
];

/** Three ends and a mark within a few pixels, in a corner, since one point lies far away. */
export const CORNER: Chart = {
  ...PRESSURE_FLOW,
  id: 'corner',
  areas: [],
  curves: [
    { title: 'Machine line', points: machine(10.6, 31) },
    { title: 'Die line', points: samples(0, 10.5, 40, (q) => 0.0105 * q * q) },
    { title: 'Die line, discharge 20 % lower', points: samples(0, 10.5, 40, (q) => 0.016 * q * q), dashed: true },
    { title: 'Die line, discharge 20 % higher', points: samples(0, 10.5, 40, (q) => 0.0075 * q * q), dashed: true },
  ],
  marks: [
    { title: 'Planned point', x: 34.6, y: 12.5, values: [] },
    { title: 'Machine and die line meet', x: 10.4, y: 1.2, values: [] },
  ],
};

export const FIGURES: readonly Chart[] = [PRESSURE_FLOW, STROKE_PROFILE, GAS_TIME, CORNER];
