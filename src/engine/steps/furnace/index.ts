import { holdTime, meltedRate, meltUse, newRate, pouredRate, returnedRate } from '../../../physics/furnace.ts';
import type { Ledger } from '../../ledger.ts';
import { meltLoss } from '../../melt-loss.ts';
import type { Step } from '../../step.ts';
import { chooseHolding, chooseMelting, reportUnknown } from './choice.ts';
import { show } from './show.ts';

/** Metal an hour, and the furnaces of the plant that melt and hold it; nothing where the plant lists none. */
export const furnaceStep: Step = {
  id: 'furnace',
  title: 'Metal and furnaces',
  work: (ledger) => {
    const { furnaces } = ledger.plant;
    ledger.setText('furnace.given', furnaces === undefined ? 'no' : 'yes');
    if (furnaces === undefined || !ledger.texts.has('machine.chamber')) return;
    reportUnknown(ledger, furnaces);
    ledger.attempt('furnace.poured', 'Metal an hour', () => rates(ledger));
    ledger.attempt('furnace.holding', 'Holding furnace', () => holding(ledger));
    ledger.attempt('furnace.melting', 'Melting furnace', () => melting(ledger));
  },
  show,
};

function rates(ledger: Ledger): void {
  const poured = ledger.apply(pouredRate, { shot: ledger.value('shot.mass'), shots: ledger.value('cycle.shots') });
  const melted = ledger.apply(meltedRate, { poured, loss: meltLoss(ledger) });
  const sold = ledger.plant.prices?.returnsSold !== undefined;
  if (sold) {
    ledger.apply(newRate, { melted }, { note: 'returns are sold, so all that is melted is new' });
    return;
  }
  const returned = ledger.apply(returnedRate, { poured, good: ledger.value('cycle.good-parts'), part_mass: ledger.value('part.mass') });
  ledger.apply(newRate, { melted, returned });
}

/** The pot of a hot chamber machine is its holding furnace; a cold chamber pours from one beside it. */
function holding(ledger: Ledger): void {
  if (ledger.text('machine.chamber') === 'hot') {
    ledger.setText('furnace.holding', 'pot of the machine');
    return;
  }
  // Whether the plant has a furnace for the metal at all does not hang on how much is poured.
  const poured = ledger.maybe('furnace.poured');
  const usable = ledger.look('furnace/planned', 'usable', {}, 'furnace.usable');
  const least = ledger.look('furnace/planned', 'hold_least', {}, 'furnace.hold-least');
  const enough = (capacity: number): boolean =>
    poured === undefined || holdTime.compute({ capacity, usable: usable.value, poured: poured.value }) >= least.value;
  const chosen = chooseHolding(ledger, enough);
  if (chosen === undefined) {
    ledger.setText('furnace.holding', 'none');
    return;
  }
  ledger.setText('furnace.holding-kind', chosen.kind);
  ledger.put(chosen.coldest.as('furnace.coldest'));
  ledger.put(chosen.hottest.as('furnace.hottest'));
  const capacity = ledger.put(chosen.capacity.as('furnace.capacity'));
  if (poured !== undefined) ledger.apply(holdTime, { capacity, usable, poured });
}

function melting(ledger: Ledger): void {
  const melted = ledger.maybe('furnace.melted');
  const chosen = chooseMelting(ledger, melted?.value ?? 0);
  if (chosen?.meltRate === undefined) {
    ledger.setText('furnace.melting', 'none');
    return;
  }
  const rate = ledger.put(chosen.meltRate.as('furnace.melt-rate'));
  if (melted !== undefined) ledger.apply(meltUse, { melted, rate });
}
