import { forParts, perPart, share } from '../../../physics/cost-total.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import type { ValueId } from '../../vocabulary/index.ts';

/** The lines of the cost in their order, with the word under which the share of each is filed. */
export const LINES: readonly (readonly [string, ValueId])[] = [
  ['metal', 'cost.metal'],
  ['metal lost', 'cost.melt-loss'],
  ['returns', 'cost.returns'],
  ['energy', 'cost.melting'],
  ['machine', 'cost.machine'],
  ['trimming', 'cost.trimming'],
  ['machining', 'cost.machining'],
  ['impregnation', 'cost.impregnation'],
  ['leaking castings', 'cost.leakers'],
  ['die', 'cost.die-per-part'],
  ['trim die', 'cost.trim-die-per-part'],
];
export const TOTAL = 'total';

/** Cost of a good part, the share of each line in it, and the money of a year and of the whole life. */
export function workTotal(ledger: Ledger): void {
  const total = ledger.apply(perPart, {
    without_die: ledger.value('cost.without-die'),
    die: ledger.value('cost.die-per-part'),
    trim_die: ledger.maybe('cost.trim-die-per-part'),
  });
  const shares = LINES.flatMap(([item, id]) => {
    const line = ledger.maybe(id);
    return line === undefined ? [] : [ledger.apply(share, { line: line.in('1'), total }, { item })];
  });
  ledger.put(sumOf(`cost.share[${TOTAL}]`, 'All shares', '%', shares));
  const dies = ['die', 'trim die'].flatMap((item) => ledger.maybe('cost.share', item) ?? []);
  ledger.put(sumOf('cost.dies-share', 'Share of the dies', '%', dies));
  const year = ledger.maybe('production.per-year');
  if (year !== undefined) ledger.apply(forParts, { per_part: total, parts: year }, { id: 'cost.per-year' });
  const life = ledger.maybe('production.life');
  if (life !== undefined) ledger.apply(forParts, { per_part: total, parts: life }, { id: 'cost.life' });
  ledger.setText('cost.state', 'worked out');
}
