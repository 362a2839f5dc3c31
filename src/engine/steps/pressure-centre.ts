import type { Traced } from '../../kernel/traced.ts';
import { castingsAcross, castingsInDie, castingsOnPlaten, pressureOffset, runnerArea, runnerDistance } from '../../physics/pressure-centre.ts';
import { workSetCentre } from '../die-set/centre.ts';
import { halfOf } from '../half.ts';
import type { Ledger } from '../ledger.ts';
import { isFedBelow } from './die/slides.ts';

/** How far the pressure centre is off the middle of the platen. */
export interface Offset {
  readonly offset_x: Traced<'mm'>;
  readonly offset_y: Traced<'mm'>;
}

/** Where the middle of the castings lies on the platen, and what lies below it. */
export interface Lie {
  readonly across: Traced<'mm'>;
  readonly upright: Traced<'mm'>;
  readonly feeder: {
    readonly feeder_diameter: Traced<'mm'>;
    readonly distance: Traced<'mm'>;
    readonly runner_area: Traced<'cm2'>;
    readonly runner_distance: Traced<'mm'>;
  };
}

/** The pressure centre by where castings, runner and biscuit lie, in a die that hangs as the tie bars allow. */
export function workPressureCentre(ledger: Ledger): Offset {
  const central = ledger.text('machine.chamber') === 'hot';
  const distance = central
    ? ledger.assume('clamp.feeder-distance', 0, 'mm', { note: 'hot chamber: the sprue stands near the middle of the cavities', status: 'practice' })
    : ledger.put(halfOf('clamp.feeder-distance', 'biscuit at the lower edge of the least die block, castings in its middle', ledger.value('die.block-height')));
  const lie: Lie = {
    across: onPlaten(ledger, 'across'),
    upright: onPlaten(ledger, 'upright'),
    feeder: {
      feeder_diameter: ledger.value('clamp.feeder-diameter'),
      distance,
      runner_area: ledger.apply(runnerArea, {
        casting_area: ledger.value('part.projected-area'),
        cavities: ledger.value('machine.cavities'),
        share: ledger.value('clamp.runner-share'),
      }),
      runner_distance: ledger.apply(runnerDistance, { distance, field: ledger.value('die.field-height') }),
    },
  };
  if (ledger.given.set !== undefined) return workSetCentre(ledger, lie);
  const area = ledger.value('clamp.projected-area');
  return {
    offset_x: ledger.put(lie.across.as('clamp.offset-x', 'castings of one part, runner and biscuit lie alike to both sides of the middle')),
    offset_y: ledger.apply(pressureOffset, { area, castings_offset: lie.upright, ...lie.feeder }),
  };
}

/** Middle of the castings off the middle between the bars, along one axis. */
function onPlaten(ledger: Ledger, axis: 'across' | 'upright'): Traced<'mm'> {
  const across = axis === 'across';
  const slides = across
    ? { low: ledger.value('die.room-left'), room: ledger.value('die.room-width'), overhang: ledger.value('die.overhang-width') }
    : { low: ledger.value('die.room-below'), room: ledger.value('die.room-height'), overhang: ledger.value('die.overhang-height') };
  // A die that does not fit between the bars is cut down to them; where its castings would lie is a matter of the whole block.
  const whole = ledger.value(across ? 'die.block-width' : 'die.block-height');
  const between = ledger.value(across ? 'die.width' : 'die.breadth');
  const size = between.value < whole.value ? whole : between;
  const offset =
    across || !isFedBelow(ledger)
      ? ledger.apply(castingsAcross, slides, { id: across ? 'clamp.castings-across' : 'clamp.castings-in-die' })
      : ledger.apply(castingsInDie, { size, field: ledger.value('die.field-height'), side: ledger.value('die.feeder-side'), ...slides });
  const bars = ledger.value(across ? 'die.bars-width' : 'die.bars-height');
  return ledger.apply(castingsOnPlaten, { offset, bars, size }, { id: across ? 'clamp.castings-aside' : 'clamp.castings-above' });
}
