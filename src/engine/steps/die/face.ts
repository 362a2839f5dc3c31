import { Traced } from '../../../kernel/traced.ts';
import { feederStrip, field, overhang, size, sizeBySteel, steelAbove, steelSide } from '../../../physics/die-block.ts';
import { edgeUsual, insertEach, insertEdge, insertSize } from '../../../physics/die-insert.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { AMID, BELOW, isFedBelow, workSlides } from './slides.ts';

/**
 * The face of the die: what the machine search took is the least it can be. The die maker takes the usual steel and the
 * room for slides where the tie bars leave it.
 */
export function workFace(ledger: Ledger): void {
  workFeeder(ledger);
  workSlides(ledger);
  workFields(ledger);
  workLeast(ledger);
  workUsual(ledger);
  const { width, height } = workBars(ledger);
  const clearance = ledger.look('die/block', 'bar_clearance', {}, 'die.bar-clearance');
  const least = { width: ledger.value('die.least-width'), height: ledger.value('die.least-height') };
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
  workInserts(ledger);
}

/** One sprue amid the cavities where their number leaves it a gap; else the metal enters below them. */
function workFeeder(ledger: Ledger): void {
  const hot = ledger.text('machine.chamber') === 'hot';
  const gap = ledger.value('die.columns').value % 2 === 0 || ledger.value('die.rows').value % 2 === 0;
  ledger.setText('die.feeder', hot && gap ? AMID : BELOW);
  const allowance = ledger.value('die.feeder-allowance');
  if (hot) ledger.put(allowance.as('die.feeder-strip'));
  else {
    const margin = ledger.look('die/block', 'feeder_margin', {}, 'die.feeder-margin');
    ledger.apply(feederStrip, { allowance, diameter: ledger.value('clamp.feeder-diameter'), margin });
  }
  ledger.put(sumOf('die.feeder-side', 'Side of the die with the feeder', 'mm', [ledger.value('die.steel-around'), ledger.value('die.feeder-strip')]));
}

function workFields(ledger: Ledger): void {
  const steel = ledger.value('die.steel-around');
  const width = ledger.apply(
    field,
    { cavities: ledger.value('die.columns'), side: ledger.value('part.side-a'), steel, room: ledger.value('die.room-width') },
    { id: 'die.field-width' },
  );
  const height = ledger.apply(
    field,
    { cavities: ledger.value('die.rows'), side: ledger.value('part.side-b'), steel, room: ledger.value('die.room-height') },
    { id: 'die.field-height' },
  );
  ledger.put(greater('die.field-longer', 'the longer extent of the cavities', width, height));
}

/** With the steel that the machine search took; wider than its block where the plunger or slides between cavities ask for more. */
function workLeast(ledger: Ledger): void {
  const steel = ledger.value('die.steel-around');
  ledger.apply(sizeBySteel, { field: ledger.value('die.field-width'), one: steel, other: steel }, { id: 'die.least-width' });
  ledger.apply(sizeBySteel, { field: ledger.value('die.field-height'), one: steel, other: ledger.value('die.feeder-side') }, { id: 'die.least-height' });
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

function workInserts(ledger: Ledger): void {
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
  const steel = ledger.put(lesser('die.side-narrower', 'the narrower side', sideWidth, sideHeight));
  const edge = ledger.apply(insertEdge, { steel, edge: ledger.value('die.edge-usual'), frame: ledger.value('die.frame') });
  const width = ledger.apply(insertSize, { field: across, edge }, { id: 'die.insert-width' });
  const height = ledger.apply(insertSize, { field: upright, edge }, { id: 'die.insert-height' });
  ledger.look('die/volume', 'insert', {}, 'die.insert-shared');
  const layout = choose(ledger, 'die.insert-layout').value;
  const cavities = ledger.value('machine.cavities');
  const single = layout === 'insert for each cavity';
  ledger.put(Traced.choice('die.insert-count', single ? cavities.value : 1, '1', { note: layout, status: 'practice', parents: [cavities] }));
  if (single) {
    ledger.apply(insertEach, { whole: width, number: ledger.value('die.columns') }, { id: 'die.insert-each-width' });
    ledger.apply(insertEach, { whole: height, number: ledger.value('die.rows') }, { id: 'die.insert-each-height' });
    return;
  }
  ledger.put(width.as('die.insert-each-width', layout));
  ledger.put(height.as('die.insert-each-height', layout));
}

function greater(id: string, note: string, one: Traced<'mm'>, other: Traced<'mm'>): Traced<'mm'> {
  return (other.value > one.value ? other : one).as(id, note);
}

function lesser(id: string, note: string, one: Traced<'mm'>, other: Traced<'mm'>): Traced<'mm'> {
  return (other.value < one.value ? other : one).as(id, note);
}
