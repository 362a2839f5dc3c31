import type { Traced } from '../../kernel/traced.ts';
import { pressureAcross } from '../../physics/pressure-centre.ts';
import type { Ledger } from '../ledger.ts';

/** How far castings of several parts pull the pressure centre off the middle of the platen across. */
export function setAcross(ledger: Ledger, castings_offset: Traced<'mm'>): Traced<'mm'> {
  const [area, castings] = [ledger.value('clamp.projected-area'), ledger.value('part.projected-area')];
  return ledger.apply(pressureAcross, { area, castings, centre: ledger.value('set.centre-x'), castings_offset }, { id: 'set.offset-x' });
}
