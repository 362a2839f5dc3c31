import type { Step } from '../../step.ts';
import { fileSprayWay } from '../lubricant/spray-way.ts';
import { fileFaces, perFace } from './faces.ts';
import { heatOfShot, heatOfTip, heatPerKilogram } from './metal.ts';
import { show } from './show.ts';
import { duty, flux, losses, split } from './split.ts';

/**
 * Heat of a shot, the die face that takes it, the heat rate at the planned cycle, and where it goes: lines, spray and
 * surroundings by the shares of practice, with an estimate of what spray and surroundings could take beside them.
 */
export const heatStep: Step = {
  id: 'heat',
  title: 'Heat balance',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    attempt('heat.per-mass', 'Heat per mass', () => heatPerKilogram(ledger));
    attempt('heat.per-shot', 'Heat of a shot', () => heatOfShot(ledger));
    attempt('heat.die', 'Heat to plunger tip and die', () => heatOfTip(ledger));
    attempt('heat.face-area', 'Die face that takes heat', () => fileFaces(ledger));
    attempt('heat.per-area', 'Heat on the die face', () => perFace(ledger));
    fileSprayWay(ledger);
    attempt('heat.rate', 'Heat rate and its split', () => split(ledger));
    attempt('heat.face-flux', 'Heat flux of the die face', () => flux(ledger));
    attempt('heat.losses', 'Heat to spray and surroundings', () => losses(ledger));
    duty(ledger);
  },
  show,
};
