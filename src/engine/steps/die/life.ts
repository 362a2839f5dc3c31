import { heatCheckIndex, preheat, sets, swingForIndex, thermalStress } from '../../../physics/die-life.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';

/** Shots that cavities and cores last, by sources that disagree. Nothing is published for lead and tin. */
export function workLife(ledger: Ledger): void {
  const axes = { family: ledger.alloy.family };
  if (lookQuietly(ledger, 'die/life', 'average', axes, 'die.life', { title: 'Die life' }) === undefined) return;
  ledger.look('die/life', 'greatest', axes, 'die.life-table');
  ledger.look('die/life', 'brochure_least', axes, 'die.life-least');
  ledger.look('die/life', 'brochure_greatest', axes, 'die.life-greatest');
  ledger.look('die/life', 'core_least', axes, 'die.core-life-least');
  ledger.look('die/life', 'core_greatest', axes, 'die.core-life-greatest');
}

/** Sets that the parts over the life wear out; only where the part says how many those are. */
export function workSets(ledger: Ledger): void {
  const shots = ledger.maybe('die.shots-needed');
  if (shots === undefined || ledger.maybe('die.life') === undefined) return;
  ledger.apply(sets, { shots, life: ledger.value('die.life') });
  ledger.apply(sets, { shots, life: ledger.value('die.life-table') }, { id: 'die.sets-table' });
  ledger.apply(sets, { shots, life: ledger.value('die.life-greatest') }, { id: 'die.sets-least' });
  ledger.apply(sets, { shots, life: ledger.value('die.life-least') }, { id: 'die.sets-greatest' });
  ledger.apply(sets, { shots, life: ledger.value('die.core-life-greatest') }, { id: 'die.core-sets' });
  ledger.apply(sets, { shots, life: ledger.value('die.core-life-least') }, { id: 'die.core-sets-greatest' });
}

/** Stress of the surface from its swing, against the yield strength of the steel when hot. */
export function workHeatCheck(ledger: Ledger): void {
  const temperature = ledger.value('heat.surface-peak');
  const modulus = ledger.look('die/elastic', 'modulus', { temperature }, 'die.surface-modulus');
  const expansion = ledger.look('die/elastic', 'expansion', { temperature }, 'die.surface-expansion');
  const poisson = ledger.look('die/elastic', 'poisson', { temperature }, 'die.poisson');
  const hot_yield = ledger.look('die/hot-yield', 'yield', { steel: ledger.text('die.cavity-steel'), temperature }, 'die.hot-yield');
  const stress = ledger.apply(thermalStress, { modulus, expansion, swing: ledger.value('heat.surface-swing'), poisson });
  ledger.apply(heatCheckIndex, { stress, hot_yield });
  const index = ledger.look('die/heat-check', 'early', {}, 'die.heat-check-early');
  ledger.look('die/heat-check', 'yielding', {}, 'die.heat-check-yielding');
  ledger.apply(swingForIndex, { index, hot_yield, modulus, expansion, poisson });
}

export function workPreheat(ledger: Ledger): void {
  const { family } = ledger.alloy;
  // ZA-8 is cast at the temperatures of zinc; the row of its family is for its hotter kin.
  const axes = { family: family === 'zinc-aluminium' && ledger.texts.get('fill.group') === 'zinc' ? 'zinc' : family };
  const least = lookQuietly(ledger, 'die/preheat', 'least', axes, 'die.preheat-least', { title: 'Preheat of the die' });
  if (least === undefined) return;
  const greatest = ledger.look('die/preheat', 'greatest', axes, 'die.preheat-greatest');
  ledger.apply(preheat, { least, greatest, running: ledger.value('fill.die-temperature') });
  if (ledger.maybe('cooling.unit-hottest') !== undefined) choose(ledger, 'die.preheat-by');
}
