import type { Traced } from '../../../kernel/traced.ts';
import { heatPerMass } from '../../../physics/heat.ts';
import { heatOfMass, heatShare, heatToDie, leavingTemperature, sensibleHeat } from '../../../physics/heat-plan.ts';
import { metalMass } from '../../../physics/metal.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';

/** What leaves the die together: the castings with their overflows, and the thick metal of runner and biscuit. */
export const CASTING = 'casting';
export const THICK = 'thick metal';

/** Heat per mass down to the ejection temperature, the textbook figure, and its parts. */
export function heatPerKilogram(ledger: Ledger): void {
  const data = alloyData(ledger);
  const eject_temperature = ledger.value('cooling.eject-temperature');
  ledger.apply(heatPerMass, { ...data, eject_temperature });
  ledger.apply(sensibleHeat, { specific_heat: data.cp_liquid, from: data.gate_temperature, to: data.liquidus }, { id: 'heat.liquid' });
  ledger.apply(sensibleHeat, { specific_heat: data.cp_solid, from: data.liquidus, to: data.solidus }, { id: 'heat.mushy' });
  ledger.apply(sensibleHeat, { specific_heat: data.cp_solid, from: data.solidus, to: eject_temperature }, { id: 'heat.solid' });
}

/**
 * Heat of all metal of a shot down to the temperature at which it leaves the die. Thin walls have been ready for a while
 * when biscuit or runner let the die open, so they leave colder than they must; thick metal leaves hotter.
 */
export function heatOfShot(ledger: Ledger): void {
  const eject = ledger.value('cooling.eject-temperature');
  const open = ledger.maybe('cooling.opening-temperature');
  const leaves =
    open !== undefined && open.value < eject.value
      ? open.as(`heat.leaves[${CASTING}]`, 'ready before the die opens, so it leaves colder than it must')
      : eject.as(`heat.leaves[${CASTING}]`, 'leaves as soon as it can be ejected');
  const casting = perMass(ledger, CASTING, ledger.put(leaves));
  const cavities = ledger.value('machine.cavities');
  const parts = [ledger.apply(heatOfMass, { mass: ledger.value('part.mass'), per_mass: casting, count: cavities }, { id: 'heat.casting' })];
  const overflow = ledger.maybe('overflow.mass');
  if (overflow !== undefined && overflow.value > 0)
    parts.push(ledger.apply(heatOfMass, { mass: overflow, per_mass: casting, count: cavities }, { id: 'heat.overflow' }));
  parts.push(...thickMetal(ledger, eject));
  ledger.put(sumOf('heat.per-shot', 'Heat of a shot', 'kJ', parts));
}

function thickMetal(ledger: Ledger, eject_temperature: Traced<'degC'>): Traced<'kJ'>[] {
  const density = ledger.value('alloy.density');
  const masses = (
    [
      ['runner', 'runner.total-volume'],
      ['biscuit', 'sleeve.biscuit-volume'],
    ] as const
  ).flatMap(([name, id]) => {
    const volume = ledger.maybe(id);
    return volume === undefined || volume.value <= 0 ? [] : [[name, ledger.apply(metalMass, { volume, density }, { id: `heat.${name}-mass` })] as const];
  });
  if (masses.length === 0) return [];
  const share = ledger.look('heat/planned', 'thick_share', {}, 'heat.thick-share');
  const leaves = ledger.apply(leavingTemperature, { eject_temperature, solidus: ledger.value('alloy.solidus'), share }, { id: 'heat.leaves', item: THICK });
  const per_mass = perMass(ledger, THICK, leaves);
  return masses.map(([name, mass]) => ledger.apply(heatOfMass, { mass, per_mass }, { id: `heat.${name}` }));
}

/** What plunger tip, with water of its own, and sleeve take of the biscuit; the rest of the shot goes into the die. */
export function heatOfTip(ledger: Ledger): void {
  const whole = ledger.value('heat.per-shot');
  const heat = ledger.maybe('heat.biscuit');
  if (heat === undefined) {
    ledger.put(whole.as('heat.die'));
    return;
  }
  const tip = ledger.apply(heatShare, { heat, share: ledger.look('heat/planned', 'tip_share', {}, 'heat.tip-share') }, { id: 'heat.tip' });
  ledger.apply(heatToDie, { heat: whole, tip });
}

function perMass(ledger: Ledger, item: string, eject_temperature: Traced<'degC'>): Traced<'kJ/kg'> {
  return ledger.apply(heatPerMass, { ...alloyData(ledger), eject_temperature }, { id: 'heat.each', item });
}

function alloyData(ledger: Ledger) {
  const melt = ledger.maybe('cooling.liquid-heat') ?? ledger.value('alloy.specific-heat-liquid');
  return {
    gate_temperature: ledger.value('fill.gate-temperature'),
    liquidus: ledger.value('alloy.liquidus'),
    solidus: ledger.value('alloy.solidus'),
    cp_liquid: ledger.maybe('heat.specific-heat') ?? ledger.put(melt.as('heat.specific-heat')),
    cp_solid: ledger.value('alloy.specific-heat-solid'),
    latent: ledger.value('alloy.latent-heat'),
  };
}
