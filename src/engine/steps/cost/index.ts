import type { Step } from '../../step.ts';
import { workCavities } from './cavities.ts';
import { workDie, workSpread } from './dies.ts';
import { workFeatures, workMachine, workMachining, workMelting, workMetal, workSealing, workTrimming, workWithoutDie } from './lines.ts';
import { reportUnknownAlloys, workBalance, workEnergy } from './metal.ts';
import { show } from './show.ts';
import { workTotal } from './total.ts';

/** Where the metal goes and what a good part costs, by the prices of the plant; nothing of it without prices. */
export const costStep: Step = {
  id: 'cost',
  title: 'Metal and money',
  work: (ledger) => {
    const { prices } = ledger.plant;
    ledger.setText('cost.state', 'not worked out');
    if (prices === undefined) {
      ledger.leaveUnchecked({ id: 'cost.per-part', title: 'Cost of a good part', missing: 'the plant file gives no prices' });
      return;
    }
    ledger.setText('cost.currency', prices.currency);
    ledger.setText('cost.date', prices.date);
    const attempt = ledger.attempt.bind(ledger);
    reportUnknownAlloys(ledger, prices);
    attempt('metal.new-per-part', 'Metal balance', () => workBalance(ledger, prices));
    attempt('metal.melting-energy', 'Energy for melting', () => workEnergy(ledger));
    attempt('cost.metal', 'Cost of the metal', () => workMetal(ledger, prices));
    attempt('cost.melting', 'Cost of melting', () => workMelting(ledger, prices));
    attempt('cost.machine', 'Cost of the machine', () => workMachine(ledger));
    attempt('cost.trimming', 'Cost of trimming', () => workTrimming(ledger, prices));
    attempt('cost.machining-features', 'Features machined', () => workFeatures(ledger));
    attempt('cost.machining', 'Cost of machining', () => workMachining(ledger, prices));
    attempt('cost.impregnation', 'Cost of impregnation', () => workSealing(ledger, prices));
    attempt('cost.without-die', 'Cost without the dies', () => workWithoutDie(ledger));
    attempt('cost.die', 'Cost of the die', () => workDie(ledger, prices));
    attempt('cost.die-per-part', 'Die cost of a part', () => workSpread(ledger));
    attempt('cost.per-part', 'Cost of a good part', () => workTotal(ledger));
    // The closed form knows castings of one part only.
    if (ledger.given.set === undefined) attempt('cost.best-cavities', 'Cheapest number of cavities', () => workCavities(ledger));
  },
  show,
};
