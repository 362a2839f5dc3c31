import { withCavities } from '../../../physics/cost-cavities.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block, FigurePoint } from '../../plan.ts';

const SAMPLES = 60;
/** Nobody lays out more, whatever the closed form says of very small parts. */
const MOST = 32;

/** Cost of a good part over the count of cavities, by the closed form; nothing where it could not be worked out. */
export function costFigure(ledger: Ledger): Block[] {
  const best = ledger.maybe('cost.best-cavities');
  const shown = ledger.maybe('cost.at-best');
  const planned = ledger.maybe('machine.cavities');
  const total = ledger.maybe('cost.per-part');
  const numbers = ledger.maybe('cost.at-best')?.numbers;
  if (best === undefined || shown === undefined || planned === undefined || total === undefined || numbers === undefined) return [];
  const end = Math.max(4, 2 * planned.value, Math.min(2 * best.value, MOST));
  const points = Array.from({ length: SAMPLES + 1 }, (_, i): FigurePoint => {
    const cavities = 1 + ((end - 1) * i) / SAMPLES;
    return [cavities, withCavities.compute({ ...numbers, cavities } as never)];
  });
  return [
    {
      kind: 'figure',
      form: 'chart',
      id: 'cost',
      title: 'Cost of a good part over the number of cavities',
      text: 'The closed form of a textbook with the rates, times and dies of this plan: machine size grows with the cavities, its rate lies on a line over locking force, the cycle stays as planned, and further sets of inserts are held at their share of today. Which machine takes which count only the machine search says.',
      x: { title: 'Cavities', unit: '1' },
      y: { title: 'Cost of a good part, money of the plant', unit: '1' },
      areas: [],
      curves: [{ title: 'Cost of a good part', points }],
      marks: [
        { title: 'Planned', x: planned.value, y: total.value, values: ['machine.cavities', 'cost.per-part'] },
        ...(best.value >= 1 && best.value <= end ? [{ title: 'Cheapest', x: best.value, y: shown.value, values: ['cost.best-cavities', 'cost.at-best'] }] : []),
      ],
    },
  ];
}
