import { type DieCycle, steadyCycle } from '../../../physics/solve/die-cycle.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block, FigurePoint } from '../../plan.ts';
import { wallSection } from '../solidification/wall-section.ts';

/** The die surface over two steady cycles. Nothing when a figure of it is not known. */
export function surfaceFigure(ledger: Ledger): Block[] {
  const cycle = cycleOf(ledger);
  if (Object.values(cycle).some((value) => typeof value === 'number' && !Number.isFinite(value))) return [];
  const { samples } = steadyCycle(cycle);
  const points = [0, 1].flatMap((turn) => samples.map(({ time, surface }): FigurePoint => [time + turn * cycle.cycle, surface]));
  const [least, greatest] = (['fill.die-temperature-least', 'fill.die-temperature-greatest'] as const).map((id) => ledger.values.get(id)?.value);
  const end = 2 * cycle.cycle;
  const window =
    least === undefined || greatest === undefined
      ? []
      : [
          {
            title: 'Usual before the shot',
            points: [
              [0, least],
              [0, greatest],
              [end, greatest],
              [end, least],
            ] as FigurePoint[],
          },
        ];
  return [
    {
      kind: 'figure',
      form: 'chart',
      id: 'die-surface',
      title: 'Die surface over two steady cycles',
      text: 'Temperature of the die surface over two cycles, once every one is as the last: it jumps when the metal comes, falls while the casting cools, is chilled by the spray, and recovers from the heat stored below it.',
      x: { title: 'Time from the full cavity', unit: 's' },
      y: { title: 'Die surface', unit: 'degC' },
      areas: window,
      curves: [{ title: 'Die surface', points }],
      marks: [
        { title: 'Die opens', x: cycle.dwell, values: ['cooling.dwell'] },
        { title: 'Next full cavity', x: cycle.cycle, values: ['cycle.time'] },
      ],
    },
  ];
}

/** The cycle as the step gave it to the formulas, in the solver's units. */
function cycleOf(ledger: Ledger): DieCycle {
  const number = (id: string): number => ledger.values.get(id)?.value ?? Number.NaN;
  return {
    ...wallSection(ledger),
    cycle: number('cycle.time'),
    dwell: number('cooling.dwell'),
    spray: number('cycle.spray'),
    sprayShare: number('heat.share-spray') / 100,
    surroundingsShare: number('heat.share-surroundings') / 100,
    depth: number('cooling.line-depth') / 1000,
    conductance: number('cooling.face-conductance'),
    coolant: number('cooling.coolant-temperature'),
  };
}
