import { coolantRise, drilledLength, pressureDrop } from '../../../physics/cooling/flow.ts';
import { lineHeat, wallFlux, wallTemperature } from '../../../physics/cooling/lines.ts';
import { coolantTemperature, pumpFlow } from '../../../physics/cooling/running.ts';
import type { CoolingSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import { mediumOf, sides } from './flow.ts';
import { cooledParts } from './parts.ts';
import { chooseUnit } from './unit.ts';

/**
 * What the lines do as they run. Whole lines take more than the balance leaves them, so the coolant runs warmer than the
 * coldest; where the lines that fit are short, it runs at its coldest and the cycle waits.
 */
export function fileTemperature(ledger: Ledger): void {
  const least = ledger.value('cooling.coolant-least');
  if (ledger.text('heat.duty') === 'heat') {
    ledger.put(least.as('cooling.coolant-temperature'));
    return;
  }
  const surface = ledger.value('cooling.surface');
  ledger.apply(coolantTemperature, { surface, rate: ledger.value('heat.lines-rate'), conductance: ledger.value('cooling.conductance'), least });
  for (const item of cooledParts(ledger)) {
    const [rate, conductance] = [ledger.value('cooling.rate', item), ledger.value('cooling.part-conductance', item)];
    ledger.apply(coolantTemperature, { surface, rate, conductance, least }, { id: 'cooling.part-coolant', item });
  }
}

/** Heat of one line of the ejector half, its wall against boiling, and the temperature rise of its coolant. */
export function fileRunning(ledger: Ledger): void {
  const coolant = ledger.value('cooling.coolant-temperature');
  const diameter = ledger.value('cooling.line-diameter');
  const length = ledger.value('cooling.line-length');
  const heat = ledger.apply(
    lineHeat,
    { conductance: ledger.value('cooling.laid-conductance', 'ejector half'), ...sides(ledger, coolant) },
    { id: 'cooling.running-heat' },
  );
  ledger.apply(wallFlux, { heat, diameter, length });
  ledger.apply(coolantRise, {
    heat,
    density: ledger.value('cooling.density'),
    specific_heat: ledger.value('cooling.specific-heat'),
    flow: ledger.value('cooling.flow'),
  });
  const at = { medium: ledger.text('cooling.medium'), temperature: coolant };
  ledger.look('cooling/pressure', 'pressure', at, 'cooling.pressure');
  ledger.look('cooling/pressure', 'wall_greatest', at, 'cooling.wall-greatest');
  if (ledger.text('heat.duty') === 'heat') ledger.put(coolant.as('cooling.wall-temperature', 'a line that heats is nowhere hotter than its coolant'));
  else ledger.apply(wallTemperature, { coolant, heat, film: ledger.value('cooling.film'), diameter, length });
}

/** Pressure that one circuit takes, the flow of all, and the unit that drives them. */
export function filePump(ledger: Ledger, unit: CoolingSpec | undefined): void {
  const each = ledger.value('cooling.line-length');
  const length = ledger.apply(drilledLength, { field: each, steel: ledger.value('die.steel-around') });
  ledger.apply(pressureDrop, {
    friction: ledger.value('cooling.friction'),
    length,
    diameter: ledger.value('cooling.line-diameter'),
    fittings: ledger.look('cooling/flow', 'fittings', mediumOf(ledger), 'cooling.fittings'),
    density: ledger.value('cooling.density'),
    speed: ledger.value('cooling.speed'),
  });
  ledger.apply(pumpFlow, { flow: ledger.value('cooling.flow'), length: ledger.value('cooling.length'), each });
  chooseUnit(ledger, unit);
}
