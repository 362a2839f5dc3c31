import { cavitiesDemand } from '../../../physics/cavities.ts';
import { meanRate } from '../../../physics/machine.ts';
import { BALANCED_COUNTS } from '../../counts.ts';
import type { Ledger } from '../../ledger.ts';

/**
 * The counts of cavities to try. Without a yearly volume it is one; a pinned count is the only one. Where the cost ranks all
 * balanced counts are tried, else the least that makes the yearly volume at the shots an hour of the trade, and then smaller
 * ones in case no machine runs that.
 */
export function cavitiesToTry(ledger: Ledger): readonly number[] {
  // Castings of several parts are one set: how many of each, the die file says.
  const pinned = ledger.given.set === undefined ? ledger.pinnedNumber('machine.cavities') : 1;
  fileDemand(ledger);
  if (pinned !== undefined) return [pinned];
  const demand = ledger.maybe('cavities.demand')?.value;
  if (demand === undefined) return [1];
  const enough = BALANCED_COUNTS.find((count) => count >= demand) ?? (BALANCED_COUNTS[BALANCED_COUNTS.length - 1] as number);
  if (ledger.plant.prices === undefined) return BALANCED_COUNTS.filter((count) => count <= enough).reverse();
  return [enough, ...BALANCED_COUNTS.filter((count) => count !== enough)];
}

function fileDemand(ledger: Ledger): void {
  ledger.attempt('cavities.demand', 'Cavities for the yearly volume', () => {
    const pace = { family: ledger.alloy.family, chamber: ledger.text('machine.chamber') };
    const least_rate = ledger.look('machine/shots-per-hour', 'least', pace, 'machine.shots-least');
    const greatest_rate = ledger.look('machine/shots-per-hour', 'greatest', pace, 'machine.shots-greatest');
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
