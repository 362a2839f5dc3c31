import type { Ledger } from '../../../src/engine/ledger.ts';
import { cycleStep } from '../../../src/engine/steps/cycle/index.ts';
import { cycleRateStep } from '../../../src/engine/steps/cycle-rate/index.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import type { Unit } from '../../../src/kernel/units.ts';
import { LEVER, LID, type SmallPart, workTo } from './work-to.ts';

export const PINNED = { 'machine.model': 'cold-4000', 'machine.cavities': '1', 'cooling.dwell': '10 s', 'shot.liquid-volume': '700 cm3' };
export const YEAR = 'per_year: 120000, life: 600000, hours_per_year: 4000';
/** A lid in aluminium on a machine of 4 MN. */
export const CASE: SmallPart = { ...LID, production: YEAR, pinned: PINNED };
/** A plated zinc lever in a hot chamber. */
export const SMALL: SmallPart = { ...LEVER, production: YEAR, pinned: { 'cooling.dwell': '2.5 s' } };

export const pinnedTo = (pins: Readonly<Record<string, string>>, part = CASE): Ledger => workTo('cycle', { ...part, pinned: { ...part.pinned, ...pins } });

/** Stands in for what another step files, so that these tests rest on no more steps than they must. */
export function give<U extends Unit>(ledger: Ledger, id: string, value: number, unit: U): void {
  ledger.values.set(id, Traced.choice(id, value, unit, { note: 'given by the test', status: 'derived' }) as unknown as Traced);
}

/** The cycle step over values that were changed after the earlier steps. */
export function cycleOf(part: SmallPart, change: (ledger: Ledger) => void): Ledger {
  const ledger = workTo('solidification', part);
  change(ledger);
  cycleStep.work(ledger);
  return ledger;
}

/** The rate step right after the cycle, with the shortest cycle of the cooling lines given or not. */
export function ratedOf(part: SmallPart, cooling?: number): Ledger {
  const ledger = workTo('cycle', part);
  if (cooling !== undefined) give(ledger, 'cooling.cycle-least', cooling, 's');
  cycleRateStep.work(ledger);
  return ledger;
}
