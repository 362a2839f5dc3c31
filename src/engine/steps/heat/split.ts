import type { Traced } from '../../../kernel/traced.ts';
import { steelBelow } from '../../../physics/die-insert.ts';
import { dieOutside, faceFlux, sprayRate, surroundingsRate } from '../../../physics/heat-face.ts';
import { heatMissing, heatRate, linesShare, rateShare } from '../../../physics/heat-plan.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeUsual } from '../../planned.ts';
import { sumOf } from '../../sum.ts';
import { belowRule, workPlate } from '../die/heights.ts';
import { littleHeat, spraysLittle } from '../lubricant/spray-way.ts';

/** Heat rate at the cycle that the elements make, and its split by the shares of practice. */
export function split(ledger: Ledger): void {
  const cycle = ledger.value('cycle.elements-time');
  ledger.apply(heatRate, { heat: ledger.value('heat.per-shot'), cycle });
  const rate = ledger.apply(heatRate, { heat: ledger.value('heat.die'), cycle }, { id: 'heat.die-rate' });

  const at = { family: ledger.alloy.family };
  for (const to of ['lines', 'spray', 'surroundings'] as const)
    for (const end of ['least', 'greatest'] as const) ledger.look('heat/split', `${to}_${end}`, at, `heat.${to}-${end}`);
  const spray = ledger.look('heat/split', 'spray_used', at, 'heat.spray-usual');
  const surroundings = ledger.look('heat/split', 'surroundings_used', at, 'heat.surroundings-usual');
  const note = 'a rule of thumb of the trade; nobody has published a measured split';
  const toSpray = spraysLittle(ledger) ? littleHeat(ledger) : assumeUsual(ledger, 'heat.share-spray', spray, note);
  const toAir = assumeUsual(ledger, 'heat.share-surroundings', surroundings, note);
  const share = ledger.apply(linesShare, { spray: toSpray, surroundings: toAir });
  ledger.apply(rateShare, { rate, share }, { id: 'heat.lines-rate' });
  ledger.apply(rateShare, { rate, share: toSpray }, { id: 'heat.spray-planned' });
  ledger.apply(rateShare, { rate, share: toAir }, { id: 'heat.surroundings-planned' });
}

export function flux(ledger: Ledger): void {
  ledger.apply(faceFlux, {
    per_area: ledger.value('heat.per-area'),
    cycle: ledger.value('cycle.elements-time'),
    share: ledger.value('heat.share-lines'),
  });
}

/** What surroundings and spray could take at the planned die temperature, worked out beside the shares of practice. */
export function losses(ledger: Ledger): void {
  const die_temperature = ledger.value('fill.die-temperature');
  const area = ledger.apply(dieOutside, { width: ledger.value('die.width'), height: ledger.value('die.breadth'), thickness: hotThickness(ledger) });
  const coefficient = ledger.look('heat/planned', 'outside', {}, 'heat.outside-coefficient');
  const room = ledger.look('heat/planned', 'room', {}, 'heat.room');
  const rates = [ledger.apply(surroundingsRate, { area, coefficient, die_temperature, room })];
  const spray = ledger.value('cycle.spray');
  if (spray.value > 0 && !spraysLittle(ledger))
    rates.push(
      ledger.apply(sprayRate, {
        area: ledger.value('heat.face-area'),
        coefficient: ledger.look('heat/planned', 'spray', {}, 'heat.spray-coefficient'),
        die_temperature,
        spray_temperature: ledger.look('heat/planned', 'spray_temperature', {}, 'heat.spray-temperature'),
        spray,
        wetted: ledger.look('heat/planned', 'wetted', {}, 'heat.wetted'),
        cycle: ledger.value('cycle.elements-time'),
      }),
    );
  ledger.put(sumOf('heat.losses', 'Heat to spray and surroundings', 'kW', rates));
}

/** Both halves with their support plates; the ejector box stands on rails behind them and stays colder. */
function hotThickness(ledger: Ledger): Traced<'mm'> {
  const depth = ledger.value('part.depth');
  const below = ledger.apply(steelBelow, { depth, ...belowRule(ledger) }, { id: 'heat.steel-below' });
  // In a die of several parts a part is given the plate of the die.
  if (ledger.maybe('die.plate') === undefined) workPlate(ledger);
  const plate = ledger.value('die.plate');
  return ledger.put(sumOf('heat.die-thickness', 'Both halves of the die with their support plates', 'mm', [depth, below, below, plate, plate]));
}

/** Whether anything is left for the lines to take; where the balance is not known, they cool as nearly all lines do. */
export function duty(ledger: Ledger): void {
  const lost = ledger.maybe('heat.losses');
  const rate = ledger.maybe('heat.die-rate');
  const heats = lost !== undefined && rate !== undefined && lost.value >= rate.value;
  ledger.setText('heat.duty', heats ? 'heat' : 'cool', { at: ledger.part.alloy.at });
  if (heats) ledger.attempt('heat.missing', 'Heat that the lines must bring', () => ledger.apply(heatMissing, { losses: lost, rate }));
}
