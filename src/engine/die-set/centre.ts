import { pressureOffset } from '../../physics/pressure-centre.ts';
import type { Ledger } from '../ledger.ts';
import type { Lie, Offset } from '../steps/pressure-centre.ts';

/** How far castings of several parts, their runner and the biscuit pull the pressure centre off the middle of the platen. */
export function workSetCentre(ledger: Ledger, { across, upright, feeder }: Lie): Offset {
  const [area, castings] = [ledger.value('clamp.projected-area'), ledger.value('part.projected-area')];
  const x = { area, castings, centre: ledger.value('set.centre-x'), castings_offset: across };
  const y = { area, castings, centre: ledger.value('set.centre-y'), castings_offset: upright, ...feeder };
  return {
    offset_x: ledger.apply(pressureOffset, x, { id: 'set.offset-x' }),
    offset_y: ledger.apply(pressureOffset, y, { id: 'set.offset-y' }),
  };
}
