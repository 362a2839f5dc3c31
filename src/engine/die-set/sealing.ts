import type { Traced } from '../../kernel/traced.ts';
import { castingShare, testedSpent } from '../../physics/casting-set.ts';
import type { CastingSet, Member } from '../case.ts';
import { type Counted, shareOf } from '../combine.ts';
import type { Ledger } from '../ledger.ts';
import { sumOf } from '../sum.ts';

/** Castings of this use are tested, and those that leak are impregnated. */
export const LEAK_TESTED = 'pressure-tight';
const testedOf = ({ members }: CastingSet): readonly Member[] => members.filter(({ given }) => given.part.quality.use === LEAK_TESTED);

/** Of what was spent on a set, what went to the castings that are tested and can be lost for a leak. */
export function spentOnTested(ledger: Ledger, set: CastingSet, spent: Traced<'1'>): Traced<'1'> {
  const flows = testedOf(set).map(({ id }) => ledger.value('set.flow-share', id));
  const share = ledger.put(sumOf('set.tested-share', 'Share of the leak-tested castings in the flow', '%', flows));
  return ledger.apply(testedSpent, { spent, share });
}

/** Impregnation, and castings that still leak, borne by the castings that are tested, by the metal that flows to them. */
export function shareSealing(ledger: Ledger, set: CastingSet, whole: Traced<'1'>): ReadonlyMap<string, Traced<'1'>> {
  const all = ledger.value('set.tested-share');
  const one = (id: string): Counted<'%'> => ({ value: ledger.value('set.flow-share', id), count: ledger.value('machine.cavities') });
  return new Map(
    testedOf(set).map(({ id, count }) => {
      const share = ledger.put(shareOf(`set.sealing-share[${id}]`, 'Share in the flow to the leak-tested castings', one(id), all));
      return [id, ledger.apply(castingShare, { whole, share, count }, { id: 'set.cost-sealing', item: id })];
    }),
  );
}
