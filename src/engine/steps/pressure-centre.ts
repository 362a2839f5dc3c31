import type { Traced } from '../../kernel/traced.ts';
import { castingsAcross, castingsInDie, feederBelow, onPlaten, pressureInDie, runnerArea, runnerDistance } from '../../physics/pressure-centre.ts';
import { setAcross } from '../die-set/centre.ts';
import { halfOf } from '../half.ts';
import type { Ledger } from '../ledger.ts';
import { isFedBelow } from './die/slides.ts';

/** How far the pressure centre is off the middle of the platen. */
interface Offset {
  readonly offset_x: Traced<'mm'>;
  readonly offset_y: Traced<'mm'>;
}

/** The pressure centre by where castings, runner and biscuit lie, in a die that hangs as is best between the bars. */
export function workPressureCentre(ledger: Ledger): Offset {
  return { offset_x: across(ledger), offset_y: upright(ledger) };
}

/** The shot axis stands in the middle across, and the die with its entry on it, as far as the bars leave it. */
function across(ledger: Ledger): Traced<'mm'> {
  const slides = { low: ledger.value('die.room-left'), room: ledger.value('die.room-width'), overhang: ledger.value('die.overhang-width') };
  const offset = ledger.apply(castingsAcross, slides);
  const castings = ledger.apply(
    onPlaten,
    { offset, bars: ledger.value('die.bars-width'), size: sizeOf(ledger, 'die.width', 'die.block-width') },
    { id: 'clamp.castings-aside' },
  );
  if (ledger.given.set !== undefined) return setAcross(ledger, castings);
  return ledger.put(castings.as('clamp.offset-x', 'castings of one part, runner and biscuit lie alike to both sides of the middle'));
}

/** Upright the die hangs so that its pressure centre comes as near the middle as the bars leave room. */
function upright(ledger: Ledger): Traced<'mm'> {
  const central = ledger.text('machine.chamber') === 'hot';
  const distance = central
    ? ledger.assume('clamp.feeder-distance', 0, 'mm', { note: 'hot chamber: the sprue stands near the middle of the cavities', status: 'practice' })
    : ledger.put(halfOf('clamp.feeder-distance', 'biscuit at the lower edge of the least die block, castings in its middle', ledger.value('die.block-height')));
  const size = sizeOf(ledger, 'die.breadth', 'die.block-height');
  const castings_offset = castingsUpright(ledger, size);
  const castings = ledger.value('part.projected-area');
  const runner = {
    runner_area: ledger.apply(runnerArea, { casting_area: castings, cavities: ledger.value('machine.cavities'), share: ledger.value('clamp.runner-share') }),
    runner_distance: ledger.apply(runnerDistance, { distance, field: ledger.value('die.field-height') }),
  };
  const { set } = ledger.given;
  const in_die = ledger.apply(pressureInDie, {
    castings_offset,
    feeder_diameter: ledger.value('clamp.feeder-diameter'),
    distance,
    area: ledger.value('clamp.projected-area'),
    ...runner,
    ...(set === undefined ? {} : { castings, centre: ledger.value('set.centre-y') }),
  });
  const bars = ledger.value('die.bars-height');
  const offset = ledger.apply(onPlaten, { offset: in_die, bars, size }, { id: set === undefined ? 'clamp.feeder-offset' : 'set.offset-y' });
  if (!central) ledger.apply(feederBelow, { distance, castings_offset, in_die, offset });
  return offset;
}

/** Middle of the castings above the middle of the die. */
function castingsUpright(ledger: Ledger, size: Traced<'mm'>): Traced<'mm'> {
  const slides = { low: ledger.value('die.room-below'), room: ledger.value('die.room-height'), overhang: ledger.value('die.overhang-height') };
  if (!isFedBelow(ledger)) return ledger.apply(castingsAcross, slides, { id: 'clamp.castings-in-die' });
  return ledger.apply(castingsInDie, { size, field: ledger.value('die.field-height'), side: ledger.value('die.feeder-side'), ...slides });
}

/** A die that does not fit between the bars is cut down to them; where its castings would lie is a matter of the whole block. */
function sizeOf(ledger: Ledger, between: 'die.width' | 'die.breadth', block: 'die.block-width' | 'die.block-height'): Traced<'mm'> {
  const [cut, whole] = [ledger.value(between), ledger.value(block)];
  return cut.value < whole.value ? whole : cut;
}
