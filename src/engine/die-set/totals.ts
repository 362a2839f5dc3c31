import { castingShare, surplus, surplusShare } from '../../physics/casting-set.ts';
import type { CastingSet } from '../case.ts';
import { shareOf, totalOf } from '../combine.ts';
import type { Ledger } from '../ledger.ts';
import { sumOf } from '../sum.ts';
import type { ValueId } from '../vocabulary/index.ts';
import { shareSealing } from './sealing.ts';

/** What is worked out last: castings that nobody needs, and what one casting of each part costs. */
export function workSetEnd(ledger: Ledger): void {
  const { set } = ledger.given;
  if (set === undefined) return;
  ledger.setText('set.kind', kindOf(set));
  for (const { id, given } of set.members) {
    ledger.setText('set.use', given.part.quality.use, { item: id, at: given.part.quality.at });
    const kind = set.kinds.get(id);
    if (kind !== undefined) ledger.setText('set.machine-kind', kind, { item: id, at: given.part.at });
  }
  ledger.attempt('set.surplus', 'Castings that are not needed', () => workSurplus(ledger, set));
  ledger.attempt('set.cost', 'Cost of a casting of each part', () => workCosts(ledger, set));
}

/** In the words of the trade: common practice, no source. */
function kindOf({ members, layout }: CastingSet): string {
  if (layout.castings.length === 1) return 'single-cavity die';
  return members.length === 1 ? 'multiple-cavity die' : 'family die';
}

function workSurplus(ledger: Ledger, set: CastingSet): void {
  const sets = ledger.maybe('production.per-year');
  if (sets === undefined) return;
  for (const { id, count } of set.members) {
    const needed = ledger.maybe('set.needed', id);
    if (needed === undefined) continue;
    const more = ledger.apply(surplus, { sets, count, needed }, { id: 'set.surplus', item: id });
    ledger.apply(surplusShare, { surplus: more, sets, count }, { item: id });
  }
}

const METAL = ['cost.metal', 'cost.melt-loss', 'cost.returns', 'cost.melting'] as const;
const CASTING = ['cost.machine', 'cost.trimming'] as const;
const SEALING = ['cost.impregnation', 'cost.leakers'] as const;
const DIE = ['cost.die-per-part', 'cost.trim-die-per-part'] as const;

/**
 * Metal is shared out by mass, casting by the metal that flows to the part, impregnation among the castings that are leak-tested,
 * machining by features, the dies by toolmaking hours:
 * a rule of ours, by what each part takes of the shot.
 */
function workCosts(ledger: Ledger, set: CastingSet): void {
  const sum = (id: string, title: string, lines: readonly ValueId[]) =>
    ledger.put(
      sumOf(
        id,
        title,
        '1',
        lines.flatMap((line) => ledger.maybe(line)?.in('1') ?? []),
      ),
    );
  ledger.value('cost.per-part');
  const metal = sum('set.metal-cost', 'Metal of a good set', METAL);
  const casting = sum('set.casting-cost', 'Casting of a good set', CASTING);
  const dies = sum('set.die-cost', 'Dies of a good set', DIE);
  const isSealed = SEALING.some((id) => ledger.maybe(id) !== undefined);
  const sealing = isSealed ? shareSealing(ledger, set, sum('set.sealing-cost', 'Impregnation of a good set', SEALING)) : undefined;
  const machining = ledger.maybe('cost.machining');
  const features = set.members.map(({ id, count }) => ({ value: ledger.value('set.machine-features', id), count }));
  const allFeatures = features.reduce((all, { value, count }) => all + value.value * count.value, 0);
  const volume = ledger.value('part.volume');
  for (const [i, { id, count }] of set.members.entries()) {
    const metalShare = ledger.put(shareOf(`set.metal-share[${id}]`, 'Share in the mass', { value: ledger.value('set.volume', id), count }, volume));
    const lines = [
      ledger.apply(castingShare, { whole: metal, share: metalShare, count }, { id: 'set.cost-metal', item: id }),
      ledger.apply(castingShare, { whole: casting, share: ledger.value('set.flow-share', id), count }, { id: 'set.cost-casting', item: id }),
      ledger.apply(castingShare, { whole: dies, share: ledger.value('set.hours-share', id), count }, { id: 'set.cost-die', item: id }),
    ];
    const sealed = sealing?.get(id);
    if (sealed !== undefined) lines.push(sealed);
    if (machining !== undefined && allFeatures > 0) {
      const feature = features[i] as (typeof features)[number];
      const whole = totalOf('set.all-features', 'Features machined on all castings', features);
      const machiningShare = ledger.put(
        shareOf(`set.machining-share[${id}]`, 'Share in the machined features', feature, ledger.maybe('set.all-features') ?? ledger.put(whole)),
      );
      lines.push(ledger.apply(castingShare, { whole: machining, share: machiningShare, count }, { id: 'set.cost-machining', item: id }));
    }
    ledger.put(sumOf(`set.cost[${id}]`, 'Cost of a good casting', '1', lines));
  }
}
