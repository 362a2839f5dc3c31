import { Traced } from '../../../kernel/traced.ts';
import { blockWidth, openingStroke } from '../../../physics/die.ts';
import { steelAround } from '../../../physics/die-steel.ts';
import type { Ledger } from '../../ledger.ts';

/**
 * Die block from the cavity layout: rows and columns so that the block is as near square as the count allows, steel
 * between and around, room for biscuit or sprue below. Slides can ask for more at the edge; that is said, not guessed.
 */
export function workLayout(ledger: Ledger): void {
  const small = ledger.look('die/block', 'edge_least', {}, 'die.steel-small');
  const common = ledger.look('die/block', 'between', {}, 'die.steel-common');
  const growth = ledger.look('die/block', 'between_per_100cm2', {}, 'die.steel-growth');
  const steel = ledger.apply(steelAround, { area: ledger.value('part.projected-area'), small, common, growth });
  const cold = ledger.text('machine.chamber') === 'cold';
  const extra = cold
    ? ledger.look('die/block', 'sprue_side', {}, 'die.feeder-allowance')
    : ledger.put(steel.as('die.feeder-allowance', 'hot chamber: the sprue takes the room of one steel width'));

  const cavities = ledger.value('machine.cavities');
  const a = ledger.value('part.side-a');
  const b = ledger.value('part.side-b');
  const [columns, rows] = bestLayout(cavities.value, a.value, b.value, steel.value, extra.value);
  const columnCount = ledger.put(
    Traced.choice('die.columns', columns, '1', { note: 'block as near square as the count allows', status: 'practice', parents: [cavities] }),
  );
  const rowCount = ledger.put(
    Traced.choice('die.rows', rows, '1', { note: 'block as near square as the count allows', status: 'practice', parents: [cavities] }),
  );
  ledger.apply(blockWidth, { cavities: columnCount, envelope: a, steel_between: steel, steel_to_edge: steel }, { id: 'die.block-width' });
  ledger.apply(blockWidth, { cavities: rowCount, envelope: b, steel_between: steel, steel_to_edge: steel, extra }, { id: 'die.block-height' });
}

/** Opening stroke that the part asks for, whatever machine it is. */
export function workOpening(ledger: Ledger): void {
  ledger.apply(openingStroke, { depth: ledger.value('part.depth') });
}

/** Columns and rows with the smallest longer side of the block; more columns win a tie. */
function bestLayout(count: number, a: number, b: number, steel: number, extra: number): readonly [number, number] {
  let best: readonly [number, number] = [count, 1];
  let size = Number.POSITIVE_INFINITY;
  for (let rows = 1; rows <= count; rows += 1) {
    if (count % rows !== 0) continue;
    const columns = count / rows;
    const width = columns * a + (columns + 1) * steel;
    const height = rows * b + (rows + 1) * steel + extra;
    const longer = Math.max(width, height);
    if (longer < size - 1e-9) {
      best = [columns, rows];
      size = longer;
    }
  }
  return best;
}
