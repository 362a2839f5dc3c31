import type { Traced } from '../../../kernel/traced.ts';
import type { Ledger } from '../../ledger.ts';

/** What the heat solutions are fed with besides the section itself. */
export interface Materials {
  readonly metal: {
    readonly gate_temperature: Traced<'degC'>;
    readonly liquidus: Traced<'degC'>;
    readonly solidus: Traced<'degC'>;
    readonly density: Traced<'g/cm3'>;
    readonly cp_liquid: Traced<'J/(kg.K)'>;
    readonly cp_solid: Traced<'J/(kg.K)'>;
    readonly latent: Traced<'kJ/kg'>;
    readonly conductivity: Traced<'W/(m.K)'>;
  };
  readonly steel: DieMaterial;
  readonly pressed: Traced<'W/(m2.K)'>;
  readonly gap: Traced<'W/(m2.K)'>;
}

export interface DieMaterial {
  readonly die_conductivity: Traced<'W/(m.K)'>;
  readonly die_density: Traced<'kg/m3'>;
  readonly die_specific_heat: Traced<'J/(kg.K)'>;
}

/** Temperature of the die before the shot, as the fill was planned with. */
export function planned(ledger: Ledger): Traced<'degC'> {
  return ledger.value('fill.die-temperature');
}

/** Files the data of alloy, steel and interface. @throws Missing where the alloy's record has no heat data. */
export function fileMaterials(ledger: Ledger): Materials {
  const { family } = ledger.alloy;
  ledger.look('cooling/ejection-temperature', 'temperature', { family }, 'cooling.eject-temperature');
  const pressure = { pressure: ledger.value('clamp.pressure-reached') };
  const face = (column: string, id: `cooling.${'interface' | 'gap'}${'' | '-least' | '-greatest' | '-gap'}`) =>
    ledger.look('cooling/interface', column, pressure, id as 'cooling.interface');
  face('pressed_least', 'cooling.interface-least');
  face('pressed_greatest', 'cooling.interface-greatest');
  face('gap_least', 'cooling.gap-least');
  face('gap_greatest', 'cooling.gap-greatest');
  return {
    metal: {
      gate_temperature: ledger.value('fill.gate-temperature'),
      liquidus: ledger.value('alloy.liquidus'),
      solidus: ledger.value('alloy.solidus'),
      density: ledger.value('alloy.density'),
      cp_liquid: meltHeat(ledger),
      cp_solid: ledger.value('alloy.specific-heat-solid'),
      latent: ledger.value('alloy.latent-heat'),
      conductivity: ledger.value('alloy.conductivity'),
    },
    steel: {
      die_conductivity: ledger.look('cooling/steel', 'conductivity', {}, 'cooling.steel-conductivity'),
      die_density: ledger.look('cooling/steel', 'density', {}, 'cooling.steel-density'),
      die_specific_heat: ledger.look('cooling/steel', 'specific_heat', {}, 'cooling.steel-specific-heat'),
    },
    pressed: face('pressed', 'cooling.interface'),
    gap: face('gap', 'cooling.interface-gap'),
  };
}

function meltHeat(ledger: Ledger): Traced<'J/(kg.K)'> {
  const own = ledger.maybe('alloy.specific-heat-liquid');
  if (own !== undefined) return ledger.put(own.as('cooling.liquid-heat'));
  return ledger.look('cooling/liquid-heat', 'liquid', { family: ledger.alloy.family }, 'cooling.liquid-heat');
}

/** A cooled plunger tip in the place of die steel, with its own temperature before the shot. */
export function fileTip(ledger: Ledger): DieMaterial & { readonly die_temperature: Traced<'degC'> } {
  return {
    die_conductivity: ledger.look('cooling/steel', 'tip_conductivity', {}, 'cooling.tip-conductivity'),
    die_density: ledger.look('cooling/steel', 'tip_density', {}, 'cooling.tip-density'),
    die_specific_heat: ledger.look('cooling/steel', 'tip_specific_heat', {}, 'cooling.tip-specific-heat'),
    die_temperature: ledger.look('cooling/steel', 'tip_temperature', {}, 'cooling.tip-temperature'),
  };
}
