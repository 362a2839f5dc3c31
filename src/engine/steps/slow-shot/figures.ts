import { waveShot } from '../../../physics/solve/wave-shot.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block, FigurePoint } from '../../plan.ts';

/** Samples of each phase whose speed is no straight line over the travel. */
const SAMPLES = 16;

/** Travels and speeds between which the plunger accelerates evenly, in the order of the shot. */
const PHASES = [
  [undefined, 'slow-shot.travel-hole-closed', undefined, 'slow-shot.hole-speed'],
  ['slow-shot.travel-hole-closed', 'slow-shot.travel-ramp-end', 'slow-shot.hole-speed', 'slow-shot.speed'],
  ['slow-shot.travel-ramp-end', 'slow-shot.change-over', 'slow-shot.speed', 'slow-shot.speed'],
  ['slow-shot.change-over', 'slow-shot.travel-fast', 'slow-shot.speed', 'sleeve.fast-speed'],
  ['slow-shot.travel-fast', 'slow-shot.travel-brake', 'sleeve.fast-speed', 'sleeve.fast-speed'],
  ['slow-shot.travel-brake', 'slow-shot.travel-filled', 'sleeve.fast-speed', 'slow-shot.speed'],
] as const;

const POSITIONS = [
  ['Pour hole closed', 'slow-shot.travel-hole-closed'],
  ['Sleeve full', 'sleeve.travel-when-full'],
  ['Change-over', 'slow-shot.change-over'],
  ['Metal at the gate', 'sleeve.travel-at-gate'],
  ['Cavities full', 'slow-shot.travel-filled'],
] as const;

/** Plunger speed and metal pressure over the travel. Nothing when a position is not known. */
export function shotFigure(ledger: Ledger): Block[] {
  const at = (id: string | undefined): number => (id === undefined ? 0 : (ledger.values.get(id)?.value ?? Number.NaN));
  const end = at('slow-shot.travel-end');
  const speed = PHASES.flatMap(([from, to, before, after], i): FigurePoint[] => ramp(at(from), at(to), at(before), at(after)).slice(i === 0 ? 0 : 1));
  if (!Number.isFinite(end) || speed.some(([x, v]) => !Number.isFinite(x) || !Number.isFinite(v))) return [];
  const pressure = pressureOver(ledger, speed, at('sleeve.travel-at-gate'), end);
  return [
    {
      kind: 'figure',
      form: 'chart',
      id: 'shot-profile',
      title: 'Plunger speed and metal pressure over the travel',
      text: 'The plunger closes the pour hole slowly, gathers speed until the wave fills the section of the sleeve, keeps that speed until the air is out, and then accelerates to the fast shot; it is braked before the cavities are full. The metal pressure is that of the gates while they run, and the planned one of the full die at the end.',
      x: { title: 'Plunger travel', unit: 'mm' },
      y: { title: 'Plunger speed', unit: 'm/s' },
      ...(pressure.length === 0 ? {} : { right: { title: 'Metal pressure', unit: 'MPa' as const } }),
      areas: [],
      curves: [
        { title: 'Plunger speed', points: speed },
        ...(pressure.length === 0 ? [] : [{ title: 'Metal pressure', points: pressure, dashed: true as const, axis: 'right' as const }]),
      ],
      marks: POSITIONS.map(([title, id]) => ({ title, x: at(id), values: [id] })),
    },
  ];
}

/** Speed over travel with an even acceleration: its square is a straight line. */
function ramp(from: number, to: number, before: number, after: number): FigurePoint[] {
  return Array.from({ length: SAMPLES + 1 }, (_, i): FigurePoint => {
    const part = (i / SAMPLES) ** 2;
    // Closer samples where the speed is low and its curve steep; backwards when it falls.
    const way = after >= before ? part : 1 - (1 - i / SAMPLES) ** 2;
    return [from + (to - from) * way, Math.sqrt(before ** 2 + (after ** 2 - before ** 2) * way)];
  });
}

/** Pressure that the gates ask for, with the square of the speed, then that of the full die. */
function pressureOver(ledger: Ledger, speed: readonly FigurePoint[], gate: number, end: number): FigurePoint[] {
  const [fill, full, fast] = ['gate.die-pressure', 'clamp.pressure-reached', 'sleeve.fast-speed'].map((id) => ledger.values.get(id)?.value);
  if (fill === undefined || full === undefined || fast === undefined) return [];
  const running = speed.filter(([x]) => x > gate).map(([x, v]): FigurePoint => [x, fill * (v / fast) ** 2]);
  const filled = running.at(-1)?.[0] ?? gate;
  return [[0, 0], [gate, 0], ...running, [filled, full], [end, full]];
}

/** The surface of the metal at a few moments, for a wave that was run. */
export function waveFigure(ledger: Ledger): Block[] {
  if (!ledger.values.has('slow-shot.wave-trapped')) return [];
  const number = (id: string): number => ledger.values.get(id)?.value ?? Number.NaN;
  const { surfaces } = waveShot({
    diameter: number('machine.plunger'),
    fill: number('sleeve.fill'),
    length: number('machine.sleeve-length'),
    hole_travel: number('slow-shot.travel-hole-closed'),
    hole_speed: number('slow-shot.hole-speed'),
    ramp_end: number('slow-shot.travel-ramp-end'),
    speed: number('slow-shot.speed'),
  });
  return [
    {
      kind: 'figure',
      form: 'chart',
      id: 'wave',
      title: 'Surface of the metal in the sleeve',
      text: 'Depth of the metal along the sleeve while the plunger, at the left end of each line, moves towards the die end. The air leaves at the top of the die end; what is behind a crest that reaches the roof stays in.',
      x: { title: 'Distance from the start of the plunger', unit: 'mm' },
      y: { title: 'Depth of the metal', unit: 'mm' },
      areas: [],
      curves: [
        ...surfaces.map(({ travel, points }) => ({ title: `Plunger at ${Math.round(travel)} mm`, points })),
        {
          title: 'Roof of the sleeve',
          points: [
            [0, number('machine.plunger')],
            [number('machine.sleeve-length'), number('machine.plunger')],
          ],
          dashed: true,
        },
      ],
      marks: [
        { title: 'Die end', x: number('machine.sleeve-length'), values: ['machine.sleeve-length'] },
        { title: 'Plunger when the sleeve is full', x: number('sleeve.travel-when-full'), values: ['sleeve.travel-when-full'] },
      ],
    },
  ];
}
