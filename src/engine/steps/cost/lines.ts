import { Traced } from '../../../kernel/traced.ts';
import {
  byMass,
  leakersCost,
  machineCost,
  machineTime,
  machiningCost,
  meltingCost,
  meltLossCost,
  returnsCost,
  sealingCost,
  trimmingCost,
} from '../../../physics/cost.ts';
import { rejectsCost, withoutDie } from '../../../physics/cost-total.ts';
import type { PricesSpec } from '../../../spec/index.ts';
import { spentOnTested } from '../../die-set/sealing.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { plannedPress } from '../finish/press.ts';
import { metalPriceOf } from './metal.ts';

/** Metal in the part, metal lost, returns sold, energy. */
export function workMetal(ledger: Ledger, prices: PricesSpec): void {
  const price = ledger.put(metalPriceOf(ledger).price.as('cost.metal-price'));
  const melted = ledger.value('metal.melted-per-part');
  ledger.apply(byMass, { mass: ledger.value('part.mass'), price }, { id: 'cost.metal' });
  const dross_price = prices.dross === undefined ? undefined : ledger.put(prices.dross.as('cost.dross-price'));
  ledger.apply(meltLossCost, { melted, loss: ledger.value('metal.melt-loss'), price, ...(dross_price === undefined ? {} : { dross_price }) });
  if (prices.returnsSold === undefined) return;
  const sold = ledger.put(prices.returnsSold.as('cost.returns-sold'));
  ledger.apply(returnsCost, { returns: ledger.value('metal.returns-per-part'), price, sold });
}

export function workMelting(ledger: Ledger, prices: PricesSpec): void {
  if (prices.energy === undefined) return;
  const price = ledger.put(prices.energy.as('cost.energy-price'));
  ledger.apply(meltingCost, { melted: ledger.value('metal.melted-per-part'), energy: ledger.value('metal.melting-energy'), price });
}

/** The machine is paid for the hours that it takes, with its stops; good castings carry the rejects. */
export function workMachine(ledger: Ledger): void {
  const efficiency = ledger.look('cavities/demand', 'efficiency', {}, 'cost.efficiency');
  const time = ledger.apply(machineTime, { cycle: ledger.value('cycle.time'), efficiency });
  ledger.apply(machineCost, { rate: ledger.value('machine.hourly-rate'), time, ...shared(ledger) });
}

/** Charged the same whether a press, a saw or hands take the gates off; a press of the plant with a rate of its own goes before the general one. */
export function workTrimming(ledger: Ledger, prices: PricesSpec): void {
  if (prices.trimming === undefined) return;
  ledger.apply(trimmingCost, {
    rate: ledger.put((plannedPress(ledger)?.hourlyRate ?? prices.trimming.rate).as('cost.trim-rate')),
    cycle: ledger.put(prices.trimming.cycle.as('cost.trim-cycle')),
    each: ledger.put(prices.trimming.each.as('cost.trim-each')),
    ...shared(ledger),
  });
}

const shared = (ledger: Ledger) => ({ cavities: ledger.value('machine.cavities'), reject_share: ledger.value('cavities.reject-share') });

/** Faces with stock, holes that are not left as cast, and dimensions that no casting holds. */
export function workFeatures(ledger: Ledger): void {
  const { machining, holes, dimensions } = ledger.part;
  const cut = holes.filter(({ id, thread }) => thread !== undefined || (ledger.texts.get(`hole.making[${id}]`) ?? 'cored as cast') !== 'cored as cast');
  const faces = machining.filter(({ id }) => !holes.some((hole) => hole.id === id));
  const counts = cut.map(({ id }) => ledger.value('hole.count', id));
  const missed = dimensions.filter(({ id }) => ledger.texts.get(`tolerance.verdict[${id}]`) === 'machine it');
  const features = counts.reduce((sum, count) => sum + count.value, faces.length + missed.length);
  const note = 'faces with machining stock, holes drilled, reamed, machined or threaded, dimensions that no casting holds';
  ledger.put(Traced.choice('cost.machining-features', features, '1', { note, status: 'derived', parents: counts }));
}

export function workMachining(ledger: Ledger, prices: PricesSpec): void {
  const features = ledger.value('cost.machining-features');
  if (features.value === 0 || prices.machining === undefined) return;
  ledger.apply(machiningCost, {
    rate: ledger.put(prices.machining.rate.as('cost.machining-rate')),
    features,
    feature: ledger.put(prices.machining.feature.as('cost.machining-feature')),
    handling: ledger.put(prices.machining.handling.as('cost.machining-handling')),
  });
}

/** Castings that leak are sealed, or all are, and those that are lost for leaks are lost with what was spent on them. */
export function workSealing(ledger: Ledger, prices: PricesSpec): void {
  const [share, leaking] = [ledger.maybe('finish.impregnated'), ledger.maybe('finish.leaking')];
  if (share !== undefined && prices.impregnation === undefined) return;
  const sealing =
    share === undefined || prices.impregnation === undefined
      ? []
      : [ledger.apply(sealingCost, { price: ledger.put(prices.impregnation.as('cost.impregnation-price')), leaking: share })];
  if (leaking === undefined) return;
  const others = ['cost.metal', 'cost.melt-loss', 'cost.returns', 'cost.melting', 'cost.machine', 'cost.trimming', 'cost.machining'] as const;
  const spent = others.flatMap((id) => ledger.maybe(id) ?? []);
  const sum = ledger.put(sumOf('cost.spent', 'Spent on a casting', '1', [...spent, ...sealing]));
  const { set } = ledger.given;
  ledger.apply(leakersCost, { spent: set === undefined ? sum : spentOnTested(ledger, set, sum), leaking, still: ledger.value('finish.lost') });
}

export function workWithoutDie(ledger: Ledger): void {
  ledger.apply(withoutDie, {
    metal: ledger.value('cost.metal'),
    melt_loss: ledger.value('cost.melt-loss'),
    returns: ledger.maybe('cost.returns'),
    melting: ledger.maybe('cost.melting'),
    machine: ledger.value('cost.machine'),
    trimming: ledger.maybe('cost.trimming'),
    machining: ledger.maybe('cost.machining'),
    impregnation: ledger.maybe('cost.impregnation'),
    leakers: ledger.maybe('cost.leakers'),
  });
  ledger.apply(rejectsCost, {
    machine: ledger.value('cost.machine'),
    trimming: ledger.maybe('cost.trimming'),
    melt_loss: ledger.value('cost.melt-loss'),
    melting: ledger.maybe('cost.melting'),
    reject_share: ledger.value('cavities.reject-share'),
  });
}
