import { bubblerCore, coreExcess } from '../../../physics/cooling/cores.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';

/** Holes that are made by a core; what is drilled has none to cool. */
export function coredHoles(ledger: Ledger): string[] {
  return ledger.part.holes.map(({ id }) => id).filter((item) => ledger.texts.get(`hole.making[${item}]`) !== 'drilled');
}

/** How hot the tip of each core gets as a solid pin of steel and of tungsten alloy, and what it needs. */
export function fileCores(ledger: Ledger): void {
  const holes = coredHoles(ledger);
  if (holes.length === 0) return;
  const flux = ledger.value('heat.face-flux');
  const at = { family: ledger.alloy.family };
  ledger.look('cooling/core', 'excess_greatest', at, 'cooling.core-excess-greatest');
  const steel = ledger.value('cooling.steel-conductivity');
  const tungsten = ledger.look('cooling/core', 'tungsten', at, 'cooling.tungsten-conductivity');
  ledger.apply(bubblerCore, {
    bore: ledger.look('cooling/core', 'bore_least', at, 'cooling.bore-least'),
    wall: ledger.look('cooling/core', 'wall_least', at, 'cooling.bore-wall'),
  });
  for (const item of holes) {
    ledger.attempt(`cooling.core[${item}]`, `Cooling of the core of ${item}`, () => {
      const pin = {
        flux,
        metal: ledger.value('alloy.solidus'),
        surface: ledger.value('cooling.surface'),
        diameter: ledger.value('hole.diameter', item),
        depth: ledger.value('hole.core-depth', item),
      };
      ledger.apply(coreExcess, { ...pin, conductivity: steel }, { item });
      ledger.apply(coreExcess, { ...pin, conductivity: tungsten }, { id: 'cooling.core-excess-tungsten', item });
      choose(ledger, 'cooling.core', item);
    });
  }
}
