import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';

/** How a trim press is driven; the rules of safety hang on it. */
export const PRESS_DRIVES = ['hydraulic', 'pneumatic', 'part-revolution clutch', 'full-revolution clutch'] as const;

/** What a furnace does; one that doses holds, and meters each shot itself. */
export const FURNACE_KINDS = ['holding', 'dosing', 'melting', 'melting and holding'] as const;
/** Families of alloys in the words of plans. */
export const FAMILIES = ['zinc', 'zinc-aluminium', 'aluminium', 'magnesium', 'copper', 'lead', 'tin'] as const;

export interface FurnaceSpec {
  readonly id: string;
  readonly kind: (typeof FURNACE_KINDS)[number];
  /** What it is used for: families of alloys, and alloys by any designation. */
  readonly families: readonly string[];
  readonly alloys: readonly { readonly id: string; readonly at?: Place }[];
  readonly capacity: Traced<'kg'>;
  /** Of a furnace that melts. */
  readonly meltRate?: Traced<'kg/h'>;
  /** Coldest and hottest metal that it holds. */
  readonly coldest: Traced<'degC'>;
  readonly hottest: Traced<'degC'>;
  /** For melting and holding, for each kilogram melted; of a furnace that melts. */
  readonly energy?: Traced<'kWh/kg'>;
  readonly at?: Place;
}

/** What a cooling unit sends through the die; open water stays below its boiling point. */
export const COOLANTS = ['water', 'pressurised water', 'oil'] as const;

export interface CoolingSpec {
  readonly id: string;
  readonly medium: (typeof COOLANTS)[number];
  readonly coldest: Traced<'degC'>;
  readonly hottest: Traced<'degC'>;
  /** Of all circuits of one die together. */
  readonly flow: Traced<'l/min'>;
  /** What the pump drives with, hoses and die together. */
  readonly pressure: Traced<'bar'>;
  readonly at?: Place;
}

/** How dies are sprayed: with lubricant diluted in water, or with a mist of it undiluted. */
export const SPRAY_KINDS = ['water-based', 'minimal-quantity'] as const;

export interface SpraySpec {
  readonly kind: (typeof SPRAY_KINDS)[number];
  /** Parts of water to one of concentrate. */
  readonly dilution?: Traced<'1'>;
  /** Of all nozzles of a die together. */
  readonly flow?: Traced<'l/min'>;
  /** Of one spraying, and of blowing the die off after it. */
  readonly time?: Traced<'s'>;
  readonly blow?: Traced<'s'>;
}

export interface TrimPressSpec {
  readonly id: string;
  readonly force: Traced<'kN'>;
  readonly stroke: Traced<'mm'>;
  /** Sides of the platen that the trim die stands on. */
  readonly platenX: Traced<'mm'>;
  readonly platenY: Traced<'mm'>;
  /** Absent: the plant file does not say, and the plan asks. */
  readonly drive?: (typeof PRESS_DRIVES)[number];
  /** Money per hour for the press with its people, in the currency of the plant. */
  readonly hourlyRate?: Traced<'1'>;
  readonly at?: Place;
}

export const SEVERITIES = ['warning', 'error', 'note'] as const;

/** A bound that the house sets on a value of every plan; which values there are and their units, the engine knows. */
export interface HouseBound {
  /** Name of the value, such as `clamp.use`. */
  readonly id: string;
  readonly ends: { readonly [E in 'least' | 'greatest']?: { readonly text: string; readonly at: Place } };
  readonly severity: (typeof SEVERITIES)[number];
  readonly reason?: string;
  /** Where its name stands. */
  readonly at: Place;
}

/** What a plant has besides its machines. A list that is absent was not given: the plan then works with the figures of its tables. */
export interface EquipmentSpec {
  readonly furnaces?: readonly FurnaceSpec[];
  readonly cooling?: readonly CoolingSpec[];
  readonly spray?: SpraySpec;
  readonly trimPresses?: readonly TrimPressSpec[];
  readonly limits?: readonly HouseBound[];
}
