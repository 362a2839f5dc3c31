import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { workLines } from './lines.ts';
import { comparePlungers } from './plungers.ts';
import { show } from './show.ts';
import { isSqueezeFill } from './squeeze-fill.ts';
import { workBounds, workPlace } from './window.ts';

/**
 * The line of the machine and the line of the die in pressure over flow, the window in which a shot should lie, the
 * planned point in it, what to change when it lies outside, and the machine's plungers side by side.
 */
export const pq2Step: Step = {
  id: 'pq2',
  title: 'Pressure and flow (PQ²)',
  work: (ledger) => {
    if (!isSqueezeFill(ledger)) work(ledger);
    // Without a verdict the rules of this topic have nothing to judge; what is missing for it is said once.
    ledger.setText('pq2.judged', ledger.texts.has('pq2.place') ? 'yes' : 'no');
  },
  show,
};

function work(ledger: Ledger): void {
  if (workLines(ledger)) {
    ledger.attempt('pq2.plunger-verdict', 'Plungers of the machine', () => comparePlungers(ledger));
    workBounds(ledger);
  }
  workPlace(ledger);
}

/** Whether the machine reaches the planned point, without the comparison of its plungers: for the search of the machine. */
export function workReach(ledger: Ledger): void {
  if (!isSqueezeFill(ledger)) {
    if (workLines(ledger)) workBounds(ledger);
    workPlace(ledger);
  }
  ledger.setText('pq2.judged', ledger.texts.has('pq2.place') ? 'yes' : 'no');
}
