import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';

/** Families of alloys as the keys of `prices: { metal: ... }`, and the family that each stands for. */
export const PRICED_FAMILIES = {
  zinc: 'zinc',
  zinc_aluminium: 'zinc-aluminium',
  aluminium: 'aluminium',
  magnesium: 'magnesium',
  copper: 'copper',
  lead: 'lead',
  tin: 'tin',
} as const;

/** What a kilogram of ingot costs, and what melting it takes; money in the currency of the plant. */
export interface MetalPrice {
  readonly price: Traced<'1'>;
  /** Metal lost each time it is melted, as a share of what goes into the furnace. */
  readonly meltLoss?: Traced<'%'>;
  /** Melting and holding, for each kilogram melted. */
  readonly meltingEnergy?: Traced<'kWh/kg'>;
}

/** Prices of one plant in one currency, all of one day. What a plant does not give is left out of the cost and listed. */
export interface PricesSpec {
  readonly currency: string;
  /** Day of the prices, such as `2026-03-31`. */
  readonly date: string;
  /** By family, such as `zinc-aluminium`. */
  readonly metal: ReadonlyMap<string, MetalPrice>;
  /** By any designation of an alloy; these go before the family. */
  readonly alloys: readonly (MetalPrice & { readonly id: string; readonly at?: Place })[];
  /** What returns fetch when they are sold, as a share of the price of ingot; absent: they are melted again. */
  readonly returnsSold?: Traced<'%'>;
  /** What a kilogram of dross fetches. */
  readonly dross?: Traced<'1'>;
  /** Money per kWh. */
  readonly energy?: Traced<'1'>;
  readonly trimming?: { readonly rate: Traced<'1'>; readonly cycle: Traced<'s'>; readonly each: Traced<'s'> };
  readonly machining?: { readonly rate: Traced<'1'>; readonly feature: Traced<'s'>; readonly handling: Traced<'s'> };
  /** Money for impregnating one casting. */
  readonly impregnation?: Traced<'1'>;
  readonly die?: {
    /** Money per hour of design and toolmaking. */
    readonly rate: Traced<'1'>;
    /** Money per kilogram. */
    readonly cavitySteel: Traced<'1'>;
    readonly holderSteel: Traced<'1'>;
    readonly heatTreatment: Traced<'1'>;
  };
  readonly at?: Place;
}
