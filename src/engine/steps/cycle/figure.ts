import type { Ledger } from '../../ledger.ts';
import type { Block, Timeline } from '../../plan.ts';
import { titleOf } from '../../step.ts';
import { onPath } from './path.ts';

type Row = Timeline['rows'][number];

/**
 * The cycle over time, a row for each element in its order, and below what runs beside: the pressure inside the dwell,
 * the plunger on its way back, the ladle that dips. Nothing when an element is not known.
 */
export function cycleFigure(ledger: Ledger): Block[] {
  if (!ledger.values.has('cycle.elements-time')) return [];
  const waits = ledger.texts.get('cycle.limited-by') === 'cooling lines';
  const governs = waits ? undefined : ledger.texts.get('cycle.governs');
  const start = new Map<string, number>();
  const rows: Row[] = [];
  let now = 0;
  for (const { id, part } of onPath(ledger)) {
    const from = now;
    now += ledger.value(id).value;
    start.set(id, from);
    rows.push({ title: titleOf(id), bars: [{ from, to: now, ...(part === governs ? { strong: true as const } : {}), values: [id] }] });
  }
  const wait = ledger.maybe('cycle.wait')?.value ?? 0;
  if (wait > 0)
    rows.push({ title: titleOf('cycle.wait'), bars: [{ from: now, to: now + wait, ...(waits ? { strong: true as const } : {}), values: ['cycle.wait'] }] });
  return [
    {
      kind: 'figure',
      form: 'timeline',
      id: 'cycle',
      title: 'The cycle over time',
      text: 'One element after the other, from the moment at which the die begins to close; what governs the cycle is marked. The last rows run beside them and add nothing to the cycle.',
      x: { title: 'Time', unit: 's' },
      rows: [...rows, ...beside(ledger, start)],
    },
  ];
}

/** Elements off the way of the cycle, at the time at which they run. */
function beside(ledger: Ledger, start: ReadonlyMap<string, number>): Row[] {
  const rows: Row[] = [];
  const add = (id: 'cycle.hold' | 'cycle.recovery' | 'cycle.dip', from: number | undefined, most = Number.POSITIVE_INFINITY): number => {
    const time = Math.min(ledger.maybe(id)?.value ?? 0, most);
    if (time > 0 && from !== undefined) rows.push({ title: `Beside: ${titleOf(id)}`, bars: [{ from, to: from + time, values: [id] }] });
    return (from ?? 0) + time;
  };
  const dwell = start.get('cycle.dwell');
  const released = add('cycle.hold', dwell, ledger.value('cycle.dwell').value);
  add('cycle.recovery', released);
  add('cycle.dip', start.get('cycle.spray'));
  return rows;
}
