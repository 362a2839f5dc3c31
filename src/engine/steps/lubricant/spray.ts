import type { Traced } from '../../../kernel/traced.ts';
import {
  concentrate,
  concentrateUsed,
  diluted,
  filmLeft,
  hourly,
  plannedSpray,
  sprayedArea,
  sprayFlow,
  surfaceFromWall,
  waterFree,
} from '../../../physics/lubricant.ts';
import { boiledShare, boiledWater, coolingSpray, evaporationHeat } from '../../../physics/spray-cooling.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeUsual } from '../../planned.ts';
import { plantSpray, spraysLittle } from './spray-way.ts';

/** The die face by the heat balance, else by the surface of the casting, given or reckoned from volume and wall. */
export function area(ledger: Ledger): void {
  const whole = ledger.maybe('heat.face-area');
  if (whole !== undefined) {
    ledger.put(whole.as('lubricant.area', 'the die face that takes heat, both halves, all cavities'));
    return;
  }
  const given = ledger.maybe('part.surface-area');
  const size = { volume: ledger.value('part.volume'), wall: ledger.value('part.wall-nominal') };
  const face = given === undefined ? ledger.apply(surfaceFromWall, size, { id: 'lubricant.face' }) : ledger.put(given.as('lubricant.face'));
  ledger.apply(sprayedArea, { face, count: ledger.value('machine.cavities') }, { id: 'lubricant.area' });
}

/** Lubricant for a film of the thickness planned, sprayed undiluted: all of it is active, and it takes no heat worth counting. */
export function mist(ledger: Ledger): void {
  for (const end of ['least', 'greatest', 'severe'] as const) ledger.look('lubricant/film', `film_${end}`, {}, `lubricant.film-${end}`);
  const thickness = ledger.look('lubricant/film', 'film_used', {}, 'lubricant.film');
  const active = ledger.look('lubricant/minimal', 'active', {}, 'lubricant.active-usual');
  const solids = assumeUsual(ledger, 'lubricant.solids', active, 'undiluted and without water');
  const usual = ledger.look('lubricant/film', 'efficiency', {}, 'lubricant.efficiency-usual');
  const efficiency = assumeUsual(ledger, 'lubricant.efficiency', usual, 'known to a factor of two at best; nozzles, distance and pressure decide');
  ledger.apply(concentrate, { area: ledger.value('lubricant.area'), film: thickness, solids, efficiency });
}

/** Concentrate for a film of the thickness planned, and the spray that carries it. */
export function film(ledger: Ledger): void {
  for (const end of ['least', 'greatest', 'severe'] as const) ledger.look('lubricant/film', `film_${end}`, {}, `lubricant.film-${end}`);
  ledger.look('lubricant/dilution', 'least', {}, 'lubricant.dilution-least');
  ledger.look('lubricant/dilution', 'greatest', {}, 'lubricant.dilution-greatest');
  ledger.look('lubricant/film', 'missing', {}, 'lubricant.missing');
  const thickness = ledger.look('lubricant/film', 'film_used', {}, 'lubricant.film');
  const solids = ledger.look('lubricant/film', 'solids', {}, 'lubricant.solids');
  const usual = ledger.look('lubricant/film', 'efficiency', {}, 'lubricant.efficiency-usual');
  const efficiency = assumeUsual(ledger, 'lubricant.efficiency', usual, 'known to a factor of two at best; nozzles, distance and pressure decide');
  const mix = ledger.look('lubricant/dilution', 'used', {}, 'lubricant.dilution-usual');
  const own = plantSpray(ledger)?.dilution;
  const dilution =
    own === undefined
      ? assumeUsual(ledger, 'lubricant.dilution', mix, 'a middle figure; the sheet of the product rules')
      : ledger.put(own.as('lubricant.dilution'));
  const volume = ledger.apply(concentrate, { area: ledger.value('lubricant.area'), film: thickness, solids, efficiency });
  ledger.apply(diluted, { concentrate: volume, dilution }, { id: 'lubricant.film-spray' });
}

/** Water that must boil for the spray's share of the heat, against what the film alone would bring; the greater is planned. */
export function water(ledger: Ledger): void {
  const dilution = ledger.value('lubricant.dilution');
  const efficiency = ledger.value('lubricant.efficiency');
  const boiled = ledger.attempt('lubricant.boiled-water', 'Water for the heat of the spray', () => boiling(ledger));
  const cooling =
    boiled === undefined || boiled.value === 0 ? undefined : ledger.apply(coolingSpray, { boiled, efficiency, dilution }, { id: 'lubricant.cooling-spray' });
  const spray = ledger.apply(plannedSpray, { film: ledger.value('lubricant.film-spray'), ...(cooling === undefined ? {} : { cooling }) });
  const used = ledger.apply(concentrateUsed, { spray, dilution });
  ledger.apply(filmLeft, { concentrate: used, area: ledger.value('lubricant.area'), solids: ledger.value('lubricant.solids'), efficiency });
  if (boiled !== undefined && boiled.value > 0) {
    ledger.apply(boiledShare, { boiled, spray: ledger.value('lubricant.film-spray'), dilution }, { id: 'lubricant.boiled-of-film' });
    ledger.apply(boiledShare, { boiled, spray, dilution });
  }
  const ratio = ledger.look('lubricant/other', 'water_free', {}, 'lubricant.water-free-ratio');
  ledger.apply(waterFree, { spray, ratio });
}

function boiling(ledger: Ledger): Traced<'ml'> {
  const temperature = ledger.look('lubricant/water', 'temperature', {}, 'lubricant.water-temperature');
  const specific_heat = ledger.look('lubricant/water', 'specific_heat', {}, 'lubricant.water-specific-heat');
  const latent_heat = ledger.look('lubricant/water', 'latent_heat', {}, 'lubricant.water-latent-heat');
  const evaporation_heat = ledger.apply(evaporationHeat, { temperature, specific_heat, latent_heat });
  return ledger.apply(boiledWater, {
    heat: ledger.value('heat.per-shot'),
    less: ledger.maybe('heat.tip'),
    share: ledger.value('heat.share-spray'),
    evaporation_heat,
    interval: ledger.maybe('cycle.spray-interval'),
  });
}

/** At the pace of the machine, once the cycle is known. */
export function hour(ledger: Ledger): void {
  const head = plantSpray(ledger)?.flow;
  if (head !== undefined) ledger.put(head.as('lubricant.head-flow'));
  const shots = ledger.value('cycle.shots');
  const pace = { shots, interval: ledger.maybe('cycle.spray-interval') };
  if (spraysLittle(ledger)) {
    ledger.apply(hourly, { each: ledger.value('lubricant.concentrate'), ...pace }, { id: 'lubricant.hourly-concentrate' });
    return;
  }
  ledger.apply(hourly, { each: ledger.value('lubricant.spray'), ...pace }, { id: 'lubricant.hourly-spray' });
  ledger.apply(hourly, { each: ledger.value('lubricant.concentrate-used'), ...pace }, { id: 'lubricant.hourly-concentrate' });
  const time = ledger.maybe('cycle.spray-each');
  if (time !== undefined && time.value > 0) ledger.apply(sprayFlow, { spray: ledger.value('lubricant.spray'), time });
}
