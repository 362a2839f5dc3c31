import type { YamlPath } from '../kernel/located-yaml.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';
import type { Reading } from './leaves.ts';
import { PLANT_SOURCE, type PlantOrigin } from './plant-origin.ts';
import { present } from './present.ts';
import { type MetalPrice, PRICED_FAMILIES, type PricesSpec } from './prices.ts';
import type { PricesData } from './prices-schema.ts';

type MetalData = NonNullable<PricesData['metal']['zinc']>;

/** Prices as traced values: those of the user's plant are inputs with their place, those of an invented plant are practice. */
export function buildPrices(data: PricesData, origin: PlantOrigin, invented: boolean): PricesSpec {
  const dated = `price of ${data.date}, ${data.currency}`;
  const figure = <U extends Unit>(name: string, reading: Reading<U>, path: YamlPath): Traced<U> => {
    const at = origin.place(['prices', ...path]);
    const id = `plant.${name}`;
    const note = [...(reading.unit === '1' ? [dated] : []), ...(invented ? ['of an invented plant'] : [])].join(', ');
    return invented
      ? Traced.table(id, reading.value, reading.unit, {
          table: 'prices of the plant',
          source: [PLANT_SOURCE],
          status: 'practice',
          note,
          at,
        })
      : Traced.input(id, reading.value, reading.unit, { at, written: reading.written, source: PLANT_SOURCE, ...(note === '' ? {} : { note }) });
  };
  const maybe = <U extends Unit>(name: string, reading: Reading<U> | undefined, path: YamlPath): Traced<U> | undefined =>
    reading === undefined ? undefined : figure(name, reading, path);
  const none = (name: string, path: YamlPath): Traced<'s'> =>
    Traced.default(`plant.${name}`, 0, 's', { note: 'none given', source: PLANT_SOURCE, at: origin.place(['prices', ...path]) });
  const metal = (name: string, { price, melt_loss: loss, melting_energy: energy }: MetalData, path: YamlPath): MetalPrice => ({
    price: figure(`metal-price[${name}]`, price, [...path, 'price']),
    ...present({
      meltLoss: maybe(`melt-loss[${name}]`, loss, [...path, 'melt_loss']),
      meltingEnergy: maybe(`melting-energy[${name}]`, energy, [...path, 'melting_energy']),
    }),
  });
  const families = (Object.entries(PRICED_FAMILIES) as [keyof typeof PRICED_FAMILIES, string][]).flatMap(([key, family]): [string, MetalPrice][] => {
    const given = data.metal[key];
    return given === undefined ? [] : [[family, metal(family, given, ['metal', key])]];
  });
  const { trimming, machining, die } = data;
  return {
    currency: data.currency,
    date: data.date,
    metal: new Map(families),
    alloys: (data.alloys ?? []).map((alloy, i) => ({
      id: alloy.id,
      ...metal(alloy.id, alloy, ['alloys', i]),
      ...present({ at: origin.place(['prices', 'alloys', i, 'id']) }),
    })),
    ...present({
      returnsSold: maybe('returns-sold', data.returns_sold, ['returns_sold']),
      dross: maybe('dross', data.dross, ['dross']),
      energy: maybe('energy', data.energy, ['energy']),
      impregnation: maybe('impregnation', data.impregnation, ['impregnation']),
      trimming: trimming && {
        rate: figure('trim-rate', trimming.rate, ['trimming', 'rate']),
        cycle: figure('trim-cycle', trimming.cycle, ['trimming', 'cycle']),
        each: maybe('trim-each', trimming.each, ['trimming', 'each']) ?? none('trim-each', ['trimming']),
      },
      machining: machining && {
        rate: figure('machining-rate', machining.rate, ['machining', 'rate']),
        feature: figure('machining-time', machining.feature, ['machining', 'feature']),
        handling: maybe('machining-handling', machining.handling, ['machining', 'handling']) ?? none('machining-handling', ['machining']),
      },
      die: die && {
        rate: figure('toolmaker-rate', die.rate, ['die', 'rate']),
        cavitySteel: figure('cavity-steel', die.cavity_steel, ['die', 'cavity_steel']),
        holderSteel: figure('holder-steel', die.holder_steel, ['die', 'holder_steel']),
        heatTreatment: figure('heat-treatment', die.heat_treatment, ['die', 'heat_treatment']),
      },
      at: origin.place(['prices']),
    }),
  };
}
