import { Traced } from '../../../kernel/traced.ts';
import {
  dieForCavities,
  dieHours,
  dieOfOne,
  dieSingle,
  dieSteelCost,
  ejectionHours,
  insertMass,
  shareOf,
  sizeHours,
  surfaceHours,
} from '../../../physics/cost-die.ts';
import { diePerPart, partsOfLife, partsOfYears } from '../../../physics/cost-spread.ts';
import { sets, shotsNeeded } from '../../../physics/die-life.ts';
import type { PricesSpec } from '../../../spec/index.ts';
import { workSetHours } from '../../die-set/hours.ts';
import { type Ledger, Missing } from '../../ledger.ts';
import { orPinned } from '../../planned.ts';
import type { ValueId } from '../../vocabulary/index.ts';

/** Ways of trimming that take a trim die. */
const WITH_TRIM_DIE: ReadonlySet<string> = new Set(['trim press', 'sawn, then trimmed']);

/** The die: estimated from hours and steel, or as the engineer has pinned it. */
export function workDie(ledger: Ledger, prices: PricesSpec): void {
  const exponent = ledger.look('cavities/demand', 'exponent', {}, 'cost.exponent');
  const cavities = ledger.value('machine.cavities');
  const die = orPinned(ledger, 'cost.die', () => {
    const single = estimate(ledger, prices, exponent);
    return ledger.apply(dieForCavities, { single, cavities, exponent }, { id: 'cost.die', note: 'estimated; pin it as soon as a toolmaker has quoted' });
  });
  if (die.kind !== 'pinned') {
    ledger.apply(shareOf, { whole: die, share: look(ledger, 'low', 'cost.low-share') }, { id: 'cost.die-low' });
    ledger.apply(shareOf, { whole: die, share: look(ledger, 'high', 'cost.high-share') }, { id: 'cost.die-high' });
  }
  ledger.apply(dieOfOne, { whole: die, cavities, exponent }, { id: 'cost.die-one' });
  ledger.apply(shareOf, { whole: die, share: look(ledger, 'set', 'cost.set-share') }, { id: 'cost.set' });
  if (!WITH_TRIM_DIE.has(ledger.texts.get('finish.trimming') ?? '')) return;
  const trim = ledger.apply(shareOf, { whole: die, share: look(ledger, 'trim_die', 'cost.trim-die-share') }, { id: 'cost.trim-die' });
  ledger.apply(dieOfOne, { whole: trim, cavities, exponent }, { id: 'cost.trim-die-one' });
}

const look = <K extends ValueId>(ledger: Ledger, column: string, id: K) => ledger.look('cost/die', column, {}, id);

function estimate(ledger: Ledger, prices: PricesSpec, exponent: Traced<'1'>): Traced<'1'> {
  if (prices.die === undefined) throw new Missing('prices of the die in the plant file, or a pinned cost.die');
  const { set } = ledger.given;
  const hours = set === undefined ? workHours(ledger) : workSetHours(ledger, set, exponent, workHours);
  const inserts = ledger.apply(insertMass, {
    width: ledger.value('die.insert-width'),
    height: ledger.value('die.insert-height'),
    depth: ledger.value('part.depth'),
    below: ledger.value('die.steel-below'),
    density: ledger.value('die.density'),
  });
  const steel = ledger.apply(dieSteelCost, {
    mass: ledger.value('die.mass'),
    inserts,
    holder_price: ledger.put(prices.die.holderSteel.as('cost.holder-steel-price')),
    cavity_price: ledger.put(prices.die.cavitySteel.as('cost.cavity-steel-price')),
    treatment: ledger.put(prices.die.heatTreatment.as('cost.hardening-price')),
  });
  const rate = ledger.put(prices.die.rate.as('cost.toolmaker-rate'));
  return ledger.apply(dieSingle, { hours, rate, steel, cavities: ledger.value('machine.cavities'), exponent });
}

/** Hours of design and toolmaking for a die with one casting. */
function workHours(ledger: Ledger): Traced<'h'> {
  const area = ledger.value('part.projected-area');
  return ledger.apply(dieHours, {
    base: look(ledger, 'base', 'cost.hours-base'),
    ejection: ledger.apply(ejectionHours, { area, each: look(ledger, 'ejection', 'cost.hours-ejection-each') }),
    size: ledger.apply(sizeHours, {
      area,
      base: look(ledger, 'size_base', 'cost.hours-size-base'),
      factor: look(ledger, 'size_factor', 'cost.hours-size-factor'),
      exponent: look(ledger, 'size_exponent', 'cost.hours-size-exponent'),
    }),
    surface: ledger.apply(surfaceHours, { surface: ledger.value('heat.casting-face'), each: look(ledger, 'surface', 'cost.hours-surface-each') }),
    pulls: ledger.value('parting.core-pulls'),
    pull: look(ledger, 'pull', 'cost.hours-pull'),
    feed: look(ledger, 'feed', 'cost.feed-added'),
    finish: ledger.look('cost/finish', 'added', { finish: ledger.text('quality.finish') }, 'cost.finish-added'),
    tolerance: isPrecise(ledger)
      ? look(ledger, 'tolerance', 'cost.tolerance-added')
      : ledger.put(Traced.choice('cost.tolerance-added', 0, '%', { note: 'no tolerance asks for the precision level', status: 'derived' })),
  });
}

function isPrecise(ledger: Ledger): boolean {
  const words = ['tolerance.verdict', 'tolerance.hole-verdict'] as const;
  return words.some((word) => ledger.items(word).some((item) => ledger.text(word, item) === 'precision'));
}

/**
 * The parts that pay for the dies: those of the life; some years of the yearly volume where no life is given; what one set
 * makes where no volume is. Whole sets are bought, and the parts pay for all of them.
 */
export function workSpread(ledger: Ledger): void {
  const parts = workParts(ledger);
  const count = workSets(ledger, parts);
  const die = ledger.value('cost.die');
  ledger.apply(diePerPart, { die, set: ledger.value('cost.set'), sets: count, parts });
  const trim = ledger.maybe('cost.trim-die');
  if (trim !== undefined) ledger.apply(diePerPart, { die: trim, parts }, { id: 'cost.trim-die-per-part' });
}

function workParts(ledger: Ledger): Traced<'1'> {
  const life = ledger.maybe('production.life');
  if (life !== undefined) return ledger.put(life.as('cost.die-parts'));
  const year = ledger.maybe('production.per-year');
  if (year !== undefined) {
    const years = ledger.look('cost/life', 'years', {}, 'cost.die-years');
    const note = 'the part gives no number of parts over its life';
    return ledger.apply(partsOfYears, { parts: year, years }, { id: 'cost.die-parts', note });
  }
  const args = { life: ledger.value('die.life'), cavities: ledger.value('machine.cavities'), reject_share: ledger.value('cavities.reject-share') };
  return ledger.apply(partsOfLife, args, { id: 'cost.die-parts', note: 'the part gives no volume: what one set of inserts makes' });
}

function workSets(ledger: Ledger, parts: Traced<'1'>): Traced<'1'> {
  const known = ledger.maybe('die.sets');
  if (known !== undefined) return ledger.put(known.as('cost.sets'));
  if (!ledger.values.has('production.life') && !ledger.values.has('production.per-year'))
    return ledger.put(Traced.choice('cost.sets', 1, '1', { note: 'the parts that one set makes', status: 'derived', parents: [parts] }));
  const args = { parts, cavities: ledger.value('machine.cavities'), reject_share: ledger.value('cavities.reject-share') };
  const shots = ledger.apply(shotsNeeded, args, { id: 'cost.die-shots' });
  return ledger.apply(sets, { shots, life: ledger.value('die.life') }, { id: 'cost.sets' });
}
