import { choose } from '../choose.ts';
import type { Step } from '../step.ts';

/** The kind of machine comes first: metal temperatures, overflow and shot all depend on it. Shown with the machine. */
export const machineKindStep: Step = {
  id: 'machine-kind',
  title: 'Kind of machine',
  work: (ledger) => {
    const kind = choose(ledger, 'machine.kind');
    const chamber = kind.value === 'hot-chamber' ? 'hot' : 'cold';
    ledger.setText('machine.chamber', chamber);
    ledger.look('machine/metal-pressure', 'least', { chamber }, 'machine.metal-pressure-least');
    ledger.look('machine/metal-pressure', 'greatest', { chamber }, 'machine.metal-pressure-usual');
    ledger.attempt('machine/greatest-mass', 'Heaviest casting', () =>
      ledger.look('machine/greatest-mass', 'mass', { family: ledger.alloy.family }, 'machine.greatest-mass'),
    );
  },
  show: () => [],
};
