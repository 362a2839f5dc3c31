import { sectionOf } from '../../../physics/solve/section-of.ts';
import type { Section } from '../../../physics/solve/solidification.ts';
import type { Ledger } from '../../ledger.ts';

/** The nominal wall in the die, as the formulas were given it, for the curves of a figure; not a number where a figure is not known. */
export function wallSection(ledger: Ledger): Section {
  const number = (id: string): number => ledger.values.get(id)?.value ?? Number.NaN;
  return sectionOf({
    wall: number('part.wall-nominal'),
    gate_temperature: number('fill.gate-temperature'),
    die_temperature: number('fill.die-temperature'),
    liquidus: number('alloy.liquidus'),
    solidus: number('alloy.solidus'),
    density: number('alloy.density'),
    cp_liquid: number('cooling.liquid-heat'),
    cp_solid: number('alloy.specific-heat-solid'),
    latent: number('alloy.latent-heat'),
    conductivity: number('alloy.conductivity'),
    interface: number('cooling.interface'),
    gap: number('cooling.interface-gap'),
    die_conductivity: number('cooling.steel-conductivity'),
    die_density: number('cooling.steel-density'),
    die_specific_heat: number('cooling.steel-specific-heat'),
  });
}
