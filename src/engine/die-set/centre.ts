import type { Traced } from '../../kernel/traced.ts';
import { setOffset } from '../../physics/casting-set.ts';
import type { Ledger } from '../ledger.ts';

/** How far castings of several parts and the biscuit pull the pressure centre off the middle of the platen, where the field of castings is centred. */
export function workSetCentre(ledger: Ledger, distance: Traced<'mm'>): { readonly offset_x: Traced<'mm'>; readonly offset_y: Traced<'mm'> } {
  const area = ledger.value('clamp.projected-area');
  const castings = ledger.value('part.projected-area');
  return {
    offset_x: ledger.apply(setOffset, { centre: ledger.value('set.centre-x'), castings, area }, { id: 'set.offset-x' }),
    offset_y: ledger.apply(
      setOffset,
      { centre: ledger.value('set.centre-y'), castings, area, feeder_diameter: ledger.value('clamp.feeder-diameter'), distance },
      { id: 'set.offset-y' },
    ),
  };
}
