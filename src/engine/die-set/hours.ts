import type { Traced } from '../../kernel/traced.ts';
import { setDieHours } from '../../physics/casting-set.ts';
import type { CastingSet } from '../case.ts';
import { shareOf, totalOf } from '../combine.ts';
import type { Ledger } from '../ledger.ts';
import { fromPlanOf } from './begin.ts';
import { withShot } from './with-shot.ts';

/**
 * Toolmaking hours of the die: of each part as for a die with one of its castings, and of all castings together by the exponent
 * that holds for castings of one part. `work` reckons the hours of one part.
 */
export function workSetHours(ledger: Ledger, set: CastingSet, exponent: Traced<'1'>, work: (part: Ledger) => Traced<'h'>): Traced<'h'> {
  const castings = ledger.value('set.castings');
  const terms = set.members.map((member) => {
    const hours = work(withShot(ledger, set, member));
    return { value: ledger.put(fromPlanOf(member.id, 'set.hours', hours)), count: member.count };
  });
  const all = ledger.put(totalOf('set.all-hours', 'Toolmaking hours of all castings, each as for a die of its own', terms));
  for (const [i, { id }] of set.members.entries())
    ledger.put(shareOf(`set.hours-share[${id}]`, 'Share in the toolmaking hours', terms[i] as (typeof terms)[number], all));
  return ledger.apply(setDieHours, { all, castings, exponent }, { id: 'cost.die-hours' });
}
