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
import { meltLoss, metalOfPlant } from '../../melt-loss.ts';
import { assumeUsual } from '../../planned.ts';

/** What the metal of this part costs: by its alloy, else by its family. @throws Missing where the plant has no price of it. */
export function metalPriceOf(ledger: Ledger): MetalPrice {
  const price = metalOfPlant(ledger);
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
  metalPriceOf(ledger);
  const loss = meltLoss(ledger);
  const scrap = ledger.value('cavities.reject-share');
  const melted = ledger.apply(meltedPerPart, { shot_mass, scrap, loss });
  ledger.apply(returnsPerPart, { part_mass, shot_mass, scrap });
  ledger.setText('metal.returns', prices.returnsSold === undefined ? 'melted again' : 'sold');
  if (prices.returnsSold === undefined) {
    const fresh = ledger.apply(newPerPart, { part_mass, shot_mass, scrap, loss });
    ledger.apply(lossShare, { new_metal: fresh, part_mass });
  } else ledger.put(melted.as('metal.new-per-part', 'returns are sold, so all that is melted is new'));
}

/** Energy of melting and holding: of the furnace planned, else of the prices, else the heat of the metal over what a furnace brings into it. */
export function workEnergy(ledger: Ledger): void {
  const price = metalPriceOf(ledger);
  const melting = ledger.texts.get('furnace.melting');
  const own = ledger.plant.furnaces?.find(({ id }) => id === melting)?.energy ?? price.meltingEnergy;
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
