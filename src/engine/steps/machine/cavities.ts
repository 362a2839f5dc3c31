import { cavitiesDemand } from '../../../physics/cavities.ts';
import { meanRate } from '../../../physics/machine.ts';
import type { Ledger } from '../../ledger.ts';

/** Counts that lie in a balanced layout with runners of equal length. */
const SERIES = [1, 2, 4, 6, 8, 12, 16] as const;

/**
 * The counts of cavities to try, best first: the least of the series that makes the yearly volume on one machine at
 * the shots an hour of the trade, then smaller ones in case no machine runs that. A pinned count is the only one.
 */
export function cavitiesToTry(ledger: Ledger): readonly number[] {
  const pinned = ledger.pinnedNumber('machine.cavities');
  fileDemand(ledger);
  if (pinned !== undefined) return [pinned];
  const demand = ledger.maybe('cavities.demand')?.value ?? 1;
  const enough = SERIES.find((count) => count >= demand) ?? SERIES[SERIES.length - 1];
  return SERIES.filter((count) => count <= (enough as number)).reverse();
}

function fileDemand(ledger: Ledger): void {
  ledger.attempt('cavities.demand', 'Cavities for the yearly volume', () => {
    const family = ledger.alloy.family;
    const chamber = ledger.text('machine.chamber');
    // ZA-12, ZA-27 and large magnesium run at the pace of the cold chamber, whatever the family's table says.
    const paceOf = chamber === 'cold' && (family === 'zinc' || family === 'zinc-aluminium') ? 'aluminium' : family;
    const least_rate = ledger.look('machine/shots-per-hour', 'least', { family: paceOf }, 'machine.shots-least');
    const greatest_rate = ledger.look('machine/shots-per-hour', 'greatest', { family: paceOf }, 'machine.shots-greatest');
    const rate = ledger.apply(meanRate, { least_rate, greatest_rate });
    const use_share = ledger.look('cavities/demand', 'capacity_use', {}, 'cavities.use-share');
    const reject_share = ledger.assume('cavities.reject-share', 5, '%', {
      note: 'start-up and running rejects together, until the foundry gives its own',
      status: 'practice',
    });
    const parts_per_year = ledger.value('production.per-year');
    const hours_per_year = ledger.maybe('production.hours-per-year') ?? ledger.look('cavities/demand', 'hours', {}, 'production.hours-per-year');
    ledger.apply(cavitiesDemand, { parts_per_year, hours_per_year, shots_per_hour: rate, use_share, reject_share });
  });
}
