import type { Traced } from '../../kernel/traced.ts';
import type { Unit } from '../../kernel/units.ts';
import type { CastingSet } from '../case.ts';
import { type Counted, leastOf, shareOf, spreadOf, totalOf } from '../combine.ts';
import type { Ledger } from '../ledger.ts';
import type { UnitOf, ValueId } from '../vocabulary/index.ts';
import { fromPlanOf } from './begin.ts';
import { ledgerOf } from './members.ts';

/**
 * Gates, overflow gates and runner ends of every part, at the gate velocity and in the fill time of the shot: so each gate has
 * the area for the metal that goes through it, and all castings are full at the same time. `work` is the step of the gates.
 */
export function workSetGates(ledger: Ledger, set: CastingSet, work: (part: Ledger) => void): void {
  const velocity = ledger.value('gate.velocity');
  set.gated.clear();
  for (const member of set.members) {
    const settled = fromPlanOf('the die', 'gate.velocity', velocity).as(
      'gate.velocity',
      'that of the whole shot: one pressure drives the metal through all gates',
    );
    const part = ledgerOf(member, new Map([[settled.id, settled as unknown as Traced]]));
    work(part);
    set.gated.set(member.id, part);
  }
  const file = <K extends ValueId>(id: K, from: ValueId): Counted<UnitOf<K>>[] =>
    set.members.flatMap(({ id: part, count }) => {
      const value = set.gated.get(part)?.values.get(from);
      return value === undefined ? [] : [{ value: ledger.put(fromPlanOf(part, id, value)) as unknown as Traced<UnitOf<K>>, count }];
    });
  const flows = file('set.flow-volume', 'gate.flow-volume');
  file('set.gate-area', 'gate.area');
  const thickness = file('set.gate-thickness', 'gate.thickness');
  const width = file('set.gate-width', 'gate.width');
  const count = file('set.gate-count', 'gate.count');
  file('set.runner-area', 'runner.area');
  file('set.overflow-gate', 'overflow.gate-width');
  ledger.attempt('gate.thickness', 'Thinnest gate', () => {
    if (thickness.length > 0) ledger.put(leastOf('gate.thickness', 'Thinnest gate', values(thickness), 'of all castings: it freezes first'));
    if (width.length > 0) ledger.put(totalOf('gate.width', 'Width of all gates', width));
    if (count.length > 0) ledger.put(totalOf('gate.count', 'Gates of all castings', count));
  });
  ledger.attempt('set.flow-share', 'Shares in the flow', () => {
    const whole = ledger.value('gate.flow-volume');
    for (const [i, { id }] of set.members.entries()) ledger.put(shareOf(`set.flow-share[${id}]`, 'Share in the flow', flows[i] as Counted<'cm3'>, whole));
    for (const { id, count: castings } of set.members) {
      const flow = set.gated.get(id)?.values.get('gate.flow');
      if (flow !== undefined)
        ledger.put(totalOf(`set.flow[${id}]`, 'Flow to all its castings', [{ value: fromPlanOf(id, 'gate.flow', flow), count: castings }]));
    }
    if (flows.length > 1) ledger.put(spreadOf('set.volume-ratio', 'Greatest over least flow volume', values(flows)));
  });
}

const values = <U extends Unit>(list: readonly Counted<U>[]): Traced<U>[] => list.map(({ value }) => value);
