import { freeze } from '../../../physics/solve/solidification.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block } from '../../plan.ts';
import { wallSection } from './wall-section.ts';

/** The curves go on a little after the die has opened, or the wall could have been ejected. */
const BEYOND = 1.15;

/** Temperatures of the nominal wall and of the die face, and the share that is solid, over the time from the full cavity. */
export function freezingFigure(ledger: Ledger): Block[] {
  const number = (id: string): number => ledger.values.get(id)?.value ?? Number.NaN;
  const dwell = number('cooling.dwell');
  const ejection = number('cooling.ejection-time');
  if (!Number.isFinite(dwell) || !Number.isFinite(ejection)) return [];
  const section = wallSection(ledger);
  // The first tenths of a second show most; of the slow rest a few samples do.
  const { samples } = freeze(section, { time: BEYOND * Math.min(dwell, 2 * ejection) });
  const shown = samples.filter((_, i) => i < 6 || i % 4 === 0 || i === samples.length - 1);
  const curve = (title: string, of: (sample: (typeof shown)[number]) => number) => ({ title, points: shown.map((s) => [s.time, of(s)] as const) });
  return [
    {
      kind: 'figure',
      form: 'chart',
      id: 'solidification',
      title: 'The nominal wall freezes and cools',
      text: 'Temperature in the middle of the nominal wall and on average, temperature of the die face against it, and the share of the wall that is solid, from the full cavity on. The fall slows down when the wall is solid and shrinks away from the die.',
      x: { title: 'Time from the full cavity', unit: 's' },
      y: { title: 'Temperature', unit: 'degC' },
      right: { title: 'Share that is solid', unit: '%' },
      areas: [],
      curves: [
        curve('Middle of the wall', (s) => s.middle),
        curve('Wall, mean', (s) => s.mean),
        curve('Die face', (s) => s.surface),
        { ...curve('Share that is solid', (s) => 100 * s.solidShare), dashed: true, axis: 'right' },
      ],
      marks: [
        { title: 'Solid', x: number('cooling.solidification-time'), values: ['cooling.solidification-time'] },
        { title: 'Can be ejected', x: ejection, y: number('cooling.eject-temperature'), values: ['cooling.ejection-time', 'cooling.eject-temperature'] },
        ...(dwell <= 2 * ejection ? [{ title: 'Die opens', x: dwell, values: ['cooling.dwell'] }] : []),
      ],
    },
  ];
}
