import * as z from 'zod';
import { currency, day, id, money, quantity } from './leaves.ts';
import { PRICED_FAMILIES } from './prices.ts';
import { MOST_ENTRIES } from './schema-parts.ts';

const metal = () => ({
  price: money('metalPrice', 'Money per kilogram of ingot', '2.4'),
  melt_loss: quantity('meltLoss', 'Metal lost each time it is melted, as a share of what goes in; a usual figure when absent', '3 %').optional(),
  melting_energy: quantity(
    'meltingEnergy',
    'Energy for melting and holding, for each kilogram melted; worked out from the heat of the metal when absent',
    '0.8 kWh/kg',
  ).optional(),
});

const family = (name: string) =>
  z
    .strictObject(metal())
    .meta({ description: `Ingot of ${name} alloys`, examples: [{ price: 2.4 }] })
    .optional();

const families = () =>
  z
    .strictObject(
      Object.fromEntries(Object.entries(PRICED_FAMILIES).map(([key, name]) => [key, family(name)])) as Record<
        keyof typeof PRICED_FAMILIES,
        ReturnType<typeof family>
      >,
    )
    .meta({ description: 'Ingot, by family of alloys', examples: [{ aluminium: { price: 2.4 } }] });

/** The part `prices` of a plant file. Every amount is a bare number in its currency. */
export function prices() {
  return z
    .strictObject({
      currency: currency('Currency of every amount in this file', 'EUR'),
      date: day('Day of the prices', '2026-03-31'),
      metal: families(),
      alloys: z
        .array(z.strictObject({ id: id('A380'), ...metal() }))
        .max(MOST_ENTRIES)
        .meta({ description: 'Ingot of single alloys, by any designation; goes before the family', examples: [[{ id: 'A380', price: 2.3 }]] })
        .optional(),
      returns_sold: quantity(
        'share',
        'Where runners, overflows and rejects are sold instead of melted again: what they fetch, as a share of the price of ingot',
        '65 %',
      ).optional(),
      dross: money('price', 'Money for a kilogram of dross that is sold', '0.3').optional(),
      energy: money('price', 'Money per kWh for melting and holding', '0.12').optional(),
      trimming: z
        .strictObject({
          rate: money('hourlyRate', 'Money per hour for the trim press with its people', '40'),
          cycle: quantity('workTime', 'Time for each shot, however many castings hang on it', '8 s'),
          each: quantity('workTime', 'Time added for each casting of the shot; 0 s when absent', '2 s').optional(),
        })
        .meta({ description: 'Trimming', examples: [{ rate: 40, cycle: '8 s' }] })
        .optional(),
      machining: z
        .strictObject({
          rate: money('hourlyRate', 'Money per hour for the machine tool with its people', '60'),
          feature: quantity('workTime', 'Time for each face, hole, thread or dimension that is machined', '6 s'),
          handling: quantity('workTime', 'Time to load, clamp and unload a casting; 0 s when absent', '15 s').optional(),
        })
        .meta({ description: 'Machining', examples: [{ rate: 60, feature: '6 s' }] })
        .optional(),
      impregnation: money('price', 'Money for impregnating one casting', '2').optional(),
      die: z
        .strictObject({
          rate: money('hourlyRate', 'Money per hour of design and toolmaking', '60'),
          cavity_steel: money('price', 'Money per kilogram of steel for cavities, cores and slides', '12'),
          holder_steel: money('price', 'Money per kilogram of steel for holder, plates and ejector box', '3'),
          heat_treatment: money('price', 'Money per kilogram for hardening the cavity steel', '4'),
        })
        .meta({ description: 'What the estimate of the die needs', examples: [{ rate: 60, cavity_steel: 12, holder_steel: 3, heat_treatment: 4 }] })
        .optional(),
    })
    .meta({
      description: 'Prices in one currency and of one day; without them no cost is worked out',
      examples: [{ currency: 'EUR', date: '2026-03-31', metal: { aluminium: { price: 2.4 } } }],
    });
}
export type PricesData = z.output<ReturnType<typeof prices>>;
