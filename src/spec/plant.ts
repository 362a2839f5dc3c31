import type { Place, SourceText } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';
import type { EquipmentSpec } from './equipment.ts';
import type { PricesSpec } from './prices.ts';

export const CHAMBERS = ['hot', 'cold'] as const;
export const EXTRACTIONS = ['robot', 'by hand'] as const;
export const SHOTS = ['horizontal', 'vertical'] as const;

export interface MachineSpec {
  readonly id: string;
  readonly chamber: (typeof CHAMBERS)[number];
  readonly shot: (typeof SHOTS)[number];
  readonly lockingForce: Traced<'kN'>;
  readonly tieBarX: Traced<'mm'>;
  readonly tieBarY: Traced<'mm'>;
  readonly dieHeightLeast: Traced<'mm'>;
  readonly dieHeightGreatest: Traced<'mm'>;
  readonly openingStroke: Traced<'mm'>;
  readonly ejectorForce: Traced<'kN'>;
  readonly ejectorStroke: Traced<'mm'>;
  /** Diameters that can be fitted, as listed. */
  readonly plungers: readonly Traced<'mm'>[];
  /** Cold chamber: from the plunger's start face to the parting plane. */
  readonly sleeveLength?: Traced<'mm'>;
  readonly shotStroke: Traced<'mm'>;
  readonly cylinderDiameter: Traced<'mm'>;
  readonly tailRodDiameter: Traced<'mm'>;
  readonly pressureFill: Traced<'MPa'>;
  /** Absent: the machine has no intensifier. */
  readonly pressureIntensified?: Traced<'MPa'>;
  readonly dryShotSpeed: Traced<'m/s'>;
  readonly dryCycle: Traced<'s'>;
  /** Money per hour for the machine with its people and energy, in the currency of the plant. */
  readonly hourlyRate?: Traced<'1'>;
  /** Circuits for hydraulic cores; absent: not given, and not judged. */
  readonly coreCircuits?: Traced<'1'>;
  /** Whether a vacuum unit stands at the machine; absent: not given. */
  readonly vacuum?: boolean;
  /** How a shot that does not fall is taken out; absent: not given, planned as by robot. */
  readonly extraction?: (typeof EXTRACTIONS)[number];
  readonly at?: Place;
}

/** A plant description, read and checked. */
export interface PlantSpec extends EquipmentSpec {
  readonly source: SourceText;
  readonly name: string;
  /** The plant does not exist; plans say so. */
  readonly invented: boolean;
  readonly note?: string;
  readonly machines: readonly MachineSpec[];
  /** Absent: the plan says nothing of money. */
  readonly prices?: PricesSpec;
}
