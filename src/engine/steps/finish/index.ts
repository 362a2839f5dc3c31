import type { Step } from '../../step.ts';
import { after } from './after.ts';
import { inspection } from './inspection.ts';
import { show } from './show.ts';
import { trimming } from './trimming.ts';

/** From the shot that leaves the die to the casting that leaves the house: trimming, cooling, treatment, machining, sealing, inspection. */
export const finishStep: Step = {
  id: 'finish',
  title: 'After the shot',
  work: (ledger) => {
    trimming(ledger);
    after(ledger);
    inspection(ledger);
  },
  show,
};
