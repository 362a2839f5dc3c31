import type { Section } from './solidification.ts';

/** A section by the inputs of the heat formulas, in their units: mm, degC, g/cm3 (metal), kg/m3 (die), J/(kg.K), kJ/kg, W/(m.K), W/(m2.K). */
export interface SectionNumbers {
  readonly wall: number;
  readonly gate_temperature: number;
  readonly die_temperature: number;
  readonly liquidus: number;
  readonly solidus: number;
  readonly density: number;
  readonly cp_liquid: number;
  readonly cp_solid: number;
  readonly latent: number;
  readonly conductivity: number;
  readonly interface: number;
  readonly gap: number;
  readonly die_conductivity: number;
  readonly die_density: number;
  readonly die_specific_heat: number;
}

/** The same in SI units, for the solvers; the wall is cooled on both faces. */
export function sectionOf(x: SectionNumbers): Section {
  return {
    metal: {
      density: 1000 * x.density,
      conductivity: x.conductivity,
      liquidHeat: x.cp_liquid,
      solidHeat: x.cp_solid,
      latent: 1000 * x.latent,
      liquidus: x.liquidus,
      solidus: x.solidus,
    },
    steel: { density: x.die_density, conductivity: x.die_conductivity, specificHeat: x.die_specific_heat },
    half: x.wall / 2000,
    gateTemperature: x.gate_temperature,
    dieTemperature: x.die_temperature,
    interface: x.interface,
    gap: x.gap,
  };
}
