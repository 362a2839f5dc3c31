import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';

/** How a trim press is driven; the rules of safety hang on it. */
export const PRESS_DRIVES = ['hydraulic', 'pneumatic', 'part-revolution clutch', 'full-revolution clutch'] as const;

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

/** What a plant has besides its machines. A list that is absent was not given: the plan then works with the figures of its tables. */
export interface EquipmentSpec {
  readonly trimPresses?: readonly TrimPressSpec[];
}
