import { Traced } from '../../../kernel/traced.ts';
import { filmCoefficient, friction, laminarFriction, nusseltGnielinski, prandtl, reynolds } from '../../../physics/cooling/film.ts';
import { flowAtSpeed, flowForReynolds, flowForRise, lineSpeed, plannedFlow } from '../../../physics/cooling/flow.ts';
import { heatPerLength, lineConductance, lineHeat } from '../../../physics/cooling/lines.ts';
import { heatingTemperature, sharedHeat } from '../../../physics/cooling/running.ts';
import type { CoolingSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';

/** Die surface and coolant, the warmer one first: a die that needs heat is the colder of the two. */
export function sides(ledger: Ledger, coolant: Traced<'degC'>): { readonly warm: Traced<'degC'>; readonly cold: Traced<'degC'> } {
  const surface = ledger.value('cooling.surface');
  return ledger.text('heat.duty') === 'heat' ? { warm: coolant, cold: surface } : { warm: surface, cold: coolant };
}

/** The coolant as an axis of the tables. */
export function mediumOf(ledger: Ledger): { readonly medium: string } {
  return { medium: ledger.text('cooling.medium') };
}

/** Coolant at the temperature that the lines are laid out for, and its properties there. */
export function fileCoolant(ledger: Ledger, unit: CoolingSpec | undefined): void {
  const medium = ledger.text('cooling.medium');
  ledger.look('cooling/flow', 'reynolds_used', mediumOf(ledger), 'cooling.reynolds-used');
  const coolant = layoutTemperature(ledger, medium, unit);
  const at = { medium, temperature: coolant };
  ledger.look('cooling/coolant', 'density', at, 'cooling.density');
  ledger.look('cooling/coolant', 'specific_heat', at, 'cooling.specific-heat');
  ledger.look('cooling/coolant', 'viscosity', at, 'cooling.viscosity');
  ledger.look('cooling/coolant', 'conductivity', at, 'cooling.conductivity');
}

/** The coldest that the unit gives, or that the coolant is planned; or, for a die that must be heated, so much above the die; a temperature fixed by the engineer stands. */
function layoutTemperature(ledger: Ledger, medium: string, unit: CoolingSpec | undefined): Traced<'degC'> {
  const fixed = ledger.pinnedNumber('cooling.coolant-temperature');
  if (fixed !== undefined) {
    const pin = ledger.pinnedWord('cooling.coolant-temperature');
    return ledger.put(Traced.pinned('cooling.coolant-least', fixed, 'degC', { at: pin?.at, written: pin?.text ?? '', source: 'PART' }));
  }
  if (ledger.text('heat.duty') !== 'heat') {
    if (unit !== undefined) return ledger.put(unit.coldest.as('cooling.coolant-least', `unit ${unit.id}`));
    return ledger.look('cooling/medium', 'least', { medium }, 'cooling.coolant-least');
  }
  const above = ledger.look('cooling/medium', 'heating_above', { medium }, 'cooling.heating-above');
  return ledger.apply(heatingTemperature, { surface: ledger.value('cooling.surface'), above }, { id: 'cooling.coolant-least' });
}

/** Flow of one circuit, which is one line: enough for turbulence, and for the rise by the heat that a line of the hotter half comes to take. */
export function fileFlow(ledger: Ledger): void {
  const diameter = ledger.value('cooling.line-diameter');
  const density = ledger.value('cooling.density');
  const most = ledger.apply(
    lineHeat,
    { conductance: ledger.value('cooling.lone-conductance'), ...sides(ledger, ledger.value('cooling.coolant-least')) },
    { id: 'cooling.line-heat-most' },
  );
  const rate = ledger.maybe('cooling.rate', 'ejector half');
  ledger.look('cooling/flow', 'reynolds_least', mediumOf(ledger), 'cooling.reynolds-least');
  ledger.look('cooling/flow', 'rise_greatest', mediumOf(ledger), 'cooling.rise-greatest');
  ledger.look('cooling/flow', 'speed_greatest', mediumOf(ledger), 'cooling.speed-greatest');
  const for_reynolds = ledger.apply(flowForReynolds, {
    reynolds: ledger.value('cooling.reynolds-used'),
    viscosity: ledger.value('cooling.viscosity'),
    density,
    diameter,
  });
  const for_rise = ledger.apply(flowForRise, {
    heat: rate === undefined ? most : ledger.apply(sharedHeat, { rate, most }),
    density,
    specific_heat: ledger.value('cooling.specific-heat'),
    rise: ledger.look('cooling/flow', 'rise_used', mediumOf(ledger), 'cooling.rise-used'),
  });
  const at_speed = ledger.apply(flowAtSpeed, { speed: ledger.value('cooling.speed-greatest'), diameter });
  const flow = ledger.apply(plannedFlow, { for_reynolds, for_rise, at_speed });
  ledger.setText('cooling.flow-governs', for_rise.value > for_reynolds.value ? (at_speed.value < for_rise.value ? 'speed' : 'temperature rise') : 'turbulence');
  const speed = ledger.apply(lineSpeed, { flow, diameter });
  ledger.apply(reynolds, { density, speed, diameter, viscosity: ledger.value('cooling.viscosity') });
}

/**
 * Film coefficient and heat of one line. Below the range of the turbulent correlation the Nusselt number of laminar flow
 * stands, which is the lower of the two and so on the safe side.
 */
export function fileLine(ledger: Ledger): void {
  const number = ledger.value('cooling.reynolds');
  const conductivity = ledger.value('cooling.conductivity');
  const prandtlNumber = ledger.apply(prandtl, {
    specific_heat: ledger.value('cooling.specific-heat'),
    viscosity: ledger.value('cooling.viscosity'),
    conductivity,
  });
  const least = ledger.look('cooling/flow', 'correlation_least', mediumOf(ledger), 'cooling.correlation-least');
  const turbulent = number.value >= least.value;
  ledger.setText('cooling.regime', turbulent ? 'turbulent' : 'laminar');
  const factor = turbulent ? ledger.apply(friction, { reynolds: number }) : ledger.apply(laminarFriction, { reynolds: number }, { id: 'cooling.friction' });
  const nusselt = turbulent
    ? ledger.apply(nusseltGnielinski, { reynolds: number, prandtl: prandtlNumber, friction: factor }, { id: 'cooling.nusselt' })
    : ledger.look('cooling/flow', 'nusselt_laminar', mediumOf(ledger), 'cooling.nusselt');
  const diameter = ledger.value('cooling.line-diameter');
  const film = ledger.apply(filmCoefficient, { nusselt, conductivity, diameter });
  const length = ledger.value('cooling.line-length');
  const conductance = ledger.apply(lineConductance, {
    film,
    diameter,
    length,
    shape: ledger.value('cooling.row-shape-factor'),
    conductivity: ledger.value('cooling.steel-conductivity'),
  });
  // With less than a third of the resistance in the film, more flow is of little use.
  const steel = ledger.value('cooling.steel-conductance');
  ledger.setText('cooling.resistance', conductance.value > (2 / 3) * steel.value ? 'steel' : 'steel and film');
  const heat = ledger.apply(lineHeat, { conductance, ...sides(ledger, ledger.value('cooling.coolant-least')) });
  ledger.apply(heatPerLength, { heat, length });
}
