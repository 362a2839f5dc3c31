import { Traced } from '../../../kernel/traced.ts';
import { leavingMean, quenchHeat, quenchRate } from '../../../physics/finish.ts';
import { leakers, leakersLeft } from '../../../physics/impregnation.ts';
import { choose } from '../../choose.ts';
import { LEAK_TESTED } from '../../die-set/sealing.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';

/** Cooling after the die, heat treatment, threads, and sealing of what leaks. */
export function after(ledger: Ledger): void {
  const attempt = ledger.attempt.bind(ledger);
  attempt('finish.cooling', 'Cooling after the die', () => choose(ledger, 'finish.cooling'));
  attempt('finish.quench-heat', 'Heat given off after ejection', () => cooling(ledger));
  attempt('finish.heat-treatment', 'Heat treatment', () => heatTreatment(ledger));
  for (const hole of ledger.part.holes) {
    if (hole.thread !== undefined) attempt(`finish.threading[${hole.id}]`, `Thread of hole ${hole.id}`, () => choose(ledger, 'finish.threading', hole.id));
  }
  attempt('finish.impregnation', 'Impregnation', () => impregnation(ledger));
}

function cooling(ledger: Ledger): void {
  const heat = ledger.apply(quenchHeat, {
    mass: ledger.value('shot.mass'),
    specific_heat: ledger.value('alloy.specific-heat-solid'),
    eject_temperature: leaving(ledger),
    handling_temperature: ledger.look('finish/handling', 'temperature', {}, 'finish.handling-temperature'),
  });
  ledger.apply(quenchRate, { heat, shots: ledger.value('cycle.shots') });
}

/** As the heat balance has it; where that is not known, the ejection temperature stands for all. */
function leaving(ledger: Ledger): Traced<'degC'> {
  const [thin, thick] = [ledger.maybe('heat.leaves', 'casting'), ledger.maybe('heat.leaves', 'thick metal')];
  const masses = [ledger.maybe('heat.runner-mass'), ledger.maybe('heat.biscuit-mass')].filter((mass) => mass !== undefined);
  if (thin === undefined || thick === undefined || masses.length === 0) return ledger.value('cooling.eject-temperature');
  const thick_mass = ledger.put(sumOf('finish.thick-mass', 'Runner and biscuit', 'kg', masses));
  return ledger.apply(leavingMean, { mass: ledger.value('shot.mass'), thick_mass, thin, thick });
}

/** The blister test belongs to castings that may hold little gas: solution treated, welded or structural ones of aluminium. */
function heatTreatment(ledger: Ledger): void {
  choose(ledger, 'finish.heat-treatment');
  if (ledger.alloy.family !== 'aluminium' || ledger.texts.get('porosity.need') !== 'little-gas') return;
  ledger.look('finish/blister', 'least', {}, 'finish.blister-least');
  ledger.look('finish/blister', 'greatest', {}, 'finish.blister-greatest');
  ledger.look('finish/blister', 'time', {}, 'finish.blister-time');
}

/** Numbers of castings only; the money comes with the cost. */
function impregnation(ledger: Ledger): void {
  const { quality } = ledger.part;
  ledger.setText('finish.leak-rate', quality.leakRate ?? 'not given', { at: quality.at });
  const way = choose(ledger, 'finish.impregnation').value;
  const isTested = ledger.text('quality.use') === LEAK_TESTED;
  // In a die with several parts only those that are leak-tested are looked at.
  if (way === 'every casting' && (isTested || ledger.given.set === undefined)) all(ledger, 'finish.impregnated', 'every casting is impregnated');
  if (!isTested) return;
  const leaking = ledger.look('finish/leak', 'leaking', {}, 'finish.leaking');
  if (way === 'what fails the leak test') ledger.put(leaking.as('finish.impregnated', 'what fails the leak test'));
  const still =
    way === 'none'
      ? all(ledger, 'finish.lost', 'what leaks is scrapped, for nothing is impregnated')
      : ledger.put(ledger.look('finish/leak', 'still', {}, 'finish.still-leaking').as('finish.lost', 'what impregnation does not save'));
  const parts = ledger.maybe('production.per-year');
  if (parts === undefined) return;
  ledger.apply(leakersLeft, { leakers: ledger.apply(leakers, { parts, leaking }), still });
}

function all(ledger: Ledger, id: 'finish.impregnated' | 'finish.lost', note: string): Traced<'%'> {
  return ledger.put(Traced.choice(id, 100, '%', { note, status: 'derived' }));
}
