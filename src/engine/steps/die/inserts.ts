import { Traced } from '../../../kernel/traced.ts';
import { steelAbove, steelSide } from '../../../physics/die-block.ts';
import { insertEach, insertEdge, insertSize } from '../../../physics/die-insert.ts';
import { choose } from '../../choose.ts';
import { fileSetInserts } from '../../die-set/inserts.ts';
import type { Ledger } from '../../ledger.ts';
import { isFedBelow } from './slides.ts';

/** The inserts in the face of the die: their edges, sizes and number. */
export function workInserts(ledger: Ledger): void {
  const [across, upright] = [ledger.value('die.field-width'), ledger.value('die.field-height')];
  const sideWidth = ledger.apply(
    steelSide,
    { size: ledger.value('die.width'), field: across, room: ledger.value('die.room-width'), overhang: ledger.value('die.overhang-width') },
    { id: 'die.side-width' },
  );
  const args = { size: ledger.value('die.breadth'), field: upright, room: ledger.value('die.room-height'), overhang: ledger.value('die.overhang-height') };
  const filed = { id: 'die.side-height' } as const;
  const sideHeight = isFedBelow(ledger)
    ? ledger.apply(steelAbove, { ...args, feeder: ledger.value('die.feeder-side') }, filed)
    : ledger.apply(steelSide, args, filed);
  const narrower = sideHeight.value < sideWidth.value ? sideHeight : sideWidth;
  const steel = ledger.put(narrower.as('die.side-narrower', 'the narrower side'));
  const edge = ledger.apply(insertEdge, { steel, edge: ledger.value('die.edge-usual'), frame: ledger.value('die.frame') });
  const width = ledger.apply(insertSize, { field: across, edge }, { id: 'die.insert-width' });
  const height = ledger.apply(insertSize, { field: upright, edge }, { id: 'die.insert-height' });
  ledger.look('die/volume', 'insert', {}, 'die.insert-shared');
  const castings = ledger.put((ledger.maybe('set.castings') ?? ledger.value('machine.cavities')).as('die.castings'));
  const layout = choose(ledger, 'die.insert-layout').value;
  const single = layout === 'insert for each cavity';
  ledger.put(Traced.choice('die.insert-count', single ? castings.value : 1, '1', { note: layout, status: 'practice', parents: [castings] }));
  const { set } = ledger.given;
  if (single && set !== undefined) {
    fileSetInserts(ledger, set, edge);
    return;
  }
  if (single) {
    ledger.apply(insertEach, { whole: width, number: ledger.value('die.columns') }, { id: 'die.insert-each-width' });
    ledger.apply(insertEach, { whole: height, number: ledger.value('die.rows') }, { id: 'die.insert-each-height' });
    return;
  }
  ledger.put(width.as('die.insert-each-width', layout));
  ledger.put(height.as('die.insert-each-height', layout));
}
