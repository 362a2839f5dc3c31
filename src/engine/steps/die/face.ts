import type { Traced } from '../../../kernel/traced.ts';
import { feederStrip, overhang, size, sizeBySteel } from '../../../physics/die-block.ts';
import { edgeUsual } from '../../../physics/die-insert.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { isFedBelow } from './slides.ts';

/** The strip for biscuit or sprue, and with it the least height of the block. It is the plunger that this hangs on. */
export function workStrip(ledger: Ledger): void {
  const allowance = ledger.value('die.feeder-allowance');
  if (ledger.text('machine.chamber') === 'hot') ledger.put(allowance.as('die.feeder-strip'));
  else {
    const margin = ledger.look('die/block', 'feeder_margin', {}, 'die.feeder-margin');
    ledger.apply(feederStrip, { allowance, diameter: ledger.value('clamp.feeder-diameter'), margin });
  }
  const steel = ledger.value('die.steel-around');
  const side = ledger.put(sumOf('die.feeder-side', 'Side of the die with the feeder', 'mm', [steel, ledger.value('die.feeder-strip')]));
  ledger.apply(sizeBySteel, { field: ledger.value('die.field-height'), one: steel, other: side }, { id: 'die.block-height' });
}

/** The face of the die between the tie bars: the usual steel and the room for slides, as far as the bars leave it. */
export function workFace(ledger: Ledger): void {
  workUsual(ledger);
  const { width, height } = workBars(ledger);
  const clearance = ledger.look('die/block', 'bar_clearance', {}, 'die.bar-clearance');
  const least = { width: ledger.value('die.block-width'), height: ledger.value('die.block-height') };
  const room = { width: ledger.value('die.room-width'), height: ledger.value('die.room-height') };
  const dieWidth = ledger.apply(
    size,
    { least: least.width, usual: ledger.value('die.usual-width'), room: room.width, bars: width, clearance },
    { id: 'die.width' },
  );
  const dieHeight = ledger.apply(
    size,
    { least: least.height, usual: ledger.value('die.usual-height'), room: room.height, bars: height, clearance },
    { id: 'die.breadth' },
  );
  ledger.apply(overhang, { least: least.width, room: room.width, size: dieWidth }, { id: 'die.overhang-width' });
  ledger.apply(overhang, { least: least.height, room: room.height, size: dieHeight }, { id: 'die.overhang-height' });
  ledger.put(greater('die.face-longer', 'the longer side of the die face', dieWidth, dieHeight));
}

function workUsual(ledger: Ledger): void {
  const edge = ledger.apply(edgeUsual, {
    area: ledger.value('part.projected-area'),
    small: ledger.look('die/block', 'edge_least', {}, 'die.edge-small'),
    common: ledger.look('die/block', 'edge', {}, 'die.edge-common'),
  });
  const frame = ledger.look('die/frame', 'least', { field: ledger.value('die.field-longer') }, 'die.frame');
  const side = ledger.put(sumOf('die.side-usual', 'Steel beside the cavities, usual', 'mm', [edge, frame]));
  ledger.apply(sizeBySteel, { field: ledger.value('die.field-width'), one: side, other: side }, { id: 'die.usual-width' });
  const other = isFedBelow(ledger) ? ledger.value('die.feeder-side') : side;
  ledger.apply(sizeBySteel, { field: ledger.value('die.field-height'), one: side, other }, { id: 'die.usual-height' });
}

/** Clear distances between the tie bars as the die stands in them; a die that fits only on its side is turned. */
function workBars(ledger: Ledger): { readonly width: Traced<'mm'>; readonly height: Traced<'mm'> } {
  const [x, y] = [ledger.value('machine.tie-bar-x'), ledger.value('machine.tie-bar-y')];
  const [width, height] = [ledger.value('die.block-width').value, ledger.value('die.block-height').value];
  const turned = !(width <= x.value && height <= y.value) && width <= y.value && height <= x.value;
  const note = turned ? 'the die fits on its side only' : undefined;
  return { width: ledger.put((turned ? y : x).as('die.bars-width', note)), height: ledger.put((turned ? x : y).as('die.bars-height', note)) };
}

export function greater(id: string, note: string, one: Traced<'mm'>, other: Traced<'mm'>): Traced<'mm'> {
  return (other.value > one.value ? other : one).as(id, note);
}
