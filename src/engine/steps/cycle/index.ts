import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { VERTICAL } from '../squeeze.ts';
import { cores, inserts, ladle, movements, removal, shot, shotSize, spray, sprayCheck } from './elements.ts';
import { assumeTime } from './range.ts';
import { show } from './show.ts';
import { openTime, sums, textbook } from './sums.ts';
import { published, tradeRanges } from './trade.ts';

/**
 * The cycle element by element, one after the other: the movements of the machine, the metal, the dwell, and what is done
 * in the open die. Beside it the ranges of the trade, the elements that run in parallel, and the sum of a textbook.
 */
export const cycleStep: Step = {
  id: 'cycle',
  title: 'Cycle',
  work: (ledger) => {
    if (!ledger.texts.has('machine.chamber')) return;
    const attempt = ledger.attempt.bind(ledger);
    attempt('cycle.path', 'How the elements follow each other', () => choose(ledger, 'cycle.path'));
    attempt('cycle.close', 'Movements of the machine', () => movements(ledger));
    attempt('cycle.shot-size', 'Size of the whole shot', () => shotSize(ledger));
    attempt('cycle.dwell-least', 'Elements of the trade', () => tradeRanges(ledger));
    attempt('cycle.ladle', 'Ladling', () => ladle(ledger));
    attempt('cycle.slow-shot', 'Shot', () => shot(ledger));
    attempt('cycle.dwell', 'Dwell', () => ledger.put(ledger.value('cooling.dwell').as('cycle.dwell')));
    attempt('cycle.cores-out', 'Hydraulic cores', () => cores(ledger));
    attempt('cycle.extract', 'Taking the shot out', () => removal(ledger));
    attempt('cycle.spray', 'Spray', () => spray(ledger));
    attempt('cycle.spray-other', 'Spray by another rule', () => sprayCheck(ledger));
    attempt('cycle.inserts', 'Inserts', () => inserts(ledger));
    attempt('cycle.signals', 'Signals and waits', () =>
      assumeTime(ledger, 'signals', 'a planning allowance; small stops and longer waits are in the share of the hours in which the machine makes shots'),
    );
    attempt('cycle.hold', 'Beside the way of the cycle', () => beside(ledger));
    attempt('cycle.open-time', 'Time that the die is open', () => openTime(ledger));
    attempt('cycle.elements-time', 'Sum of the elements', () => sums(ledger));
    attempt('cycle.textbook-least', 'Cycle by a textbook', () => textbook(ledger));
    attempt('cycle.measured', 'Published cycles', () => published(ledger));
  },
  show,
};

/** What runs inside the dwell: the pressure on the metal, and in a hot chamber the plunger on its way back. */
function beside(ledger: Ledger): void {
  const vertical = ledger.text('machine.kind') === VERTICAL;
  ledger.put(ledger.value(vertical ? 'squeeze.hold' : 'intensification.hold').as('cycle.hold'));
  if (ledger.text('machine.chamber') === 'hot') assumeTime(ledger, 'recovery', 'inside the dwell, after the pressure is taken off');
}
