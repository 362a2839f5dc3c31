import type { Step } from '../../step.ts';
import { workCoreStrength, workCores, workLineRoom } from './cores.ts';
import { workHeight, workMass } from './heights.ts';
import { workInserts } from './inserts.ts';
import { workHeatCheck, workLife, workPreheat, workSets } from './life.ts';
import { workPlates } from './plates.ts';
import { show } from './show.ts';
import { workSteels } from './steels.ts';

/** Steels, size, plates, cores, life and preheat of the die, with its layout between the tie bars. */
export const dieStep: Step = {
  id: 'die',
  title: 'The die',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    attempt('die.life', 'Die life', () => workLife(ledger));
    workSteels(ledger);
    attempt('die.insert-width', 'Inserts', () => workInserts(ledger));
    attempt('die.height', 'Die height', () => workHeight(ledger));
    attempt('die.mass', 'Mass of the die', () => workMass(ledger));
    attempt('die.plate-bow', 'Bow of the support plate', () => workPlates(ledger));
    attempt('die.core-bending', 'Slender cores', () => workCores(ledger));
    attempt('die.line-room', 'Holes between the cooling lines', () => workLineRoom(ledger));
    attempt('die.sets', 'Sets of inserts', () => workSets(ledger));
    attempt('die.heat-check-index', 'Heat checking', () => workHeatCheck(ledger));
    attempt('die.core-stress-greatest', 'Strength of the cores', () => workCoreStrength(ledger));
    attempt('die.preheat', 'Preheat of the die', () => workPreheat(ledger));
  },
  show,
};
