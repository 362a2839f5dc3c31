import type { Traced } from '../../../kernel/traced.ts';
import {
  energyPerKg,
  lossShare,
  meltedPerPart,
  meltingEnergy,
  meltingHeat,
  metalYield,
  newPerPart,
  returnsPerPart,
  shotPerPart,
} from '../../../physics/metal-balance.ts';
import { findAlloy } from '../../../rulebook/alloys.ts';
import type { MetalPrice, PricesSpec } from '../../../spec/index.ts';
import { type Ledger, Missing } from '../../ledger.ts';
import { assumeUsual } from '../../planned.ts';

/** What the metal of this part costs: by its alloy, else by its family. @throws Missing where the plant has no price of it. */
export function metalPriceOf(ledger: Ledger, prices: PricesSpec): MetalPrice {
  const own = prices.alloys.find(({ id }) => {
    const search = findAlloy(ledger.rulebook, id);
    return 'found' in search && search.found.id === ledger.alloy.id;
  });
  const price = own ?? prices.metal.get(ledger.alloy.family);
  if (price === undefined) throw new Missing(`a price of ${ledger.alloy.id} or of ${ledger.alloy.family} in the plant file`);
  return price;
}

/** A price under a designation that no table has is a slip, and must not pass in silence. */
export function reportUnknownAlloys(ledger: Ledger, prices: PricesSpec): void {
  for (const { id, at } of prices.alloys) {
    const search = findAlloy(ledger.rulebook, id);
    if ('found' in search) continue;
    const code = 'unknown' in search ? 'spec/unknown-alloy' : 'spec/ambiguous-alloy';
    const message = 'unknown' in search ? `no alloy is called "${id}"; its price is not used` : `"${id}" does not name a single alloy; its price is not used`;
    ledger.findings.push({ code, severity: 'warning', message, fix: 'see "diewright list alloys"', ...(at === undefined ? {} : { at }) });
  }
}

/** Where the metal of a shot goes: into the casting, back into the furnace, into the dross. */
export function workBalance(ledger: Ledger, prices: PricesSpec): void {
  const part_mass = ledger.value('part.mass');
  const shot_mass = ledger.apply(shotPerPart, { shot: ledger.value('shot.mass'), cavities: ledger.value('machine.cavities') });
  ledger.apply(metalYield, { part_mass, shot_mass });
  const loss = workLoss(ledger, prices);
  const scrap = ledger.value('cavities.reject-share');
  const melted = ledger.apply(meltedPerPart, { shot_mass, scrap, loss });
  ledger.apply(returnsPerPart, { part_mass, shot_mass, scrap });
  ledger.setText('metal.returns', prices.returnsSold === undefined ? 'melted again' : 'sold');
  if (prices.returnsSold === undefined) {
    const fresh = ledger.apply(newPerPart, { part_mass, shot_mass, scrap, loss });
    ledger.apply(lossShare, { new_metal: fresh, part_mass });
  } else ledger.put(melted.as('metal.new-per-part', 'returns are sold, so all that is melted is new'));
}

function workLoss(ledger: Ledger, prices: PricesSpec): Traced<'%'> {
  const own = metalPriceOf(ledger, prices).meltLoss;
  if (own !== undefined) return ledger.put(own.as('metal.melt-loss'));
  const axes = { family: ledger.alloy.family };
  ledger.look('metal/melt-loss', 'least', axes, 'metal.melt-loss-least');
  ledger.look('metal/melt-loss', 'greatest', axes, 'metal.melt-loss-greatest');
  const usual = ledger.look('metal/melt-loss', 'used', axes, 'metal.melt-loss-usual');
  return assumeUsual(ledger, 'metal.melt-loss', usual, 'the plant file gives none; the furnace and the charge decide');
}

/** Energy of melting and holding: the plant's own, else the heat of the metal over what a furnace brings into it. */
export function workEnergy(ledger: Ledger, prices: PricesSpec): void {
  const own = metalPriceOf(ledger, prices).meltingEnergy;
  const energy = own === undefined ? workFurnace(ledger) : ledger.put(own.as('metal.melting-energy'));
  ledger.apply(energyPerKg, { melted: ledger.value('metal.melted-per-part'), energy, part_mass: ledger.value('part.mass') });
}

function workFurnace(ledger: Ledger): Traced<'kWh/kg'> {
  const cp_solid = ledger.value('alloy.specific-heat-solid');
  const cp_liquid = ledger.maybe('alloy.specific-heat-liquid');
  const heat = ledger.apply(
    meltingHeat,
    {
      holding: ledger.value('fill.holding-temperature'),
      liquidus: ledger.value('alloy.liquidus'),
      room: ledger.look('metal/furnace', 'room', {}, 'metal.room-temperature'),
      cp_liquid: cp_liquid ?? cp_solid,
      cp_solid,
      latent: ledger.value('alloy.latent-heat'),
    },
    cp_liquid === undefined
      ? { note: 'the specific heat of the solid stands for that of the liquid, which is not published; the superheat is the smaller part' }
      : {},
  );
  ledger.look('metal/furnace', 'least', {}, 'metal.efficiency-least');
  ledger.look('metal/furnace', 'greatest', {}, 'metal.efficiency-greatest');
  const usual = ledger.look('metal/furnace', 'used', {}, 'metal.efficiency-usual');
  const efficiency = assumeUsual(ledger, 'metal.efficiency', usual, 'the plant file gives no melting energy');
  return ledger.apply(meltingEnergy, { heat, efficiency });
}
