import type { Step } from '../../step.ts';
import { plunger } from './plunger.ts';
import { show } from './show.ts';
import { area, film, hour, mist, water } from './spray.ts';
import { fileSprayWay, spraysLittle } from './spray-way.ts';

/**
 * Lubricant of die and plunger: what the film takes, what the spray must carry to take its share of the heat, and
 * whether the two agree. It works after the cycle, whose pace it needs, and goes on without it.
 */
export const lubricantStep: Step = {
  id: 'lubricant',
  title: 'Lubricants',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    fileSprayWay(ledger);
    attempt('lubricant.area', 'Die face that is sprayed', () => area(ledger));
    attempt('lubricant.surface-least', 'Die surface for the film', () => {
      for (const end of ['least', 'greatest', 'special'] as const) ledger.look('lubricant/surface', end, {}, `lubricant.surface-${end}`);
    });
    if (spraysLittle(ledger)) attempt('lubricant.concentrate', 'Lubricant for the film', () => mist(ledger));
    else {
      attempt('lubricant.film-spray', 'Spray for the film', () => film(ledger));
      attempt('lubricant.spray', 'Spray for film and cooling', () => water(ledger));
    }
    attempt('lubricant.hourly-spray', 'Lubricant used in an hour', () => hour(ledger));
    attempt('lubricant.plunger', 'Plunger lubricant', () => plunger(ledger));
  },
  show,
};
