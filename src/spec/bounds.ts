import type { Unit } from '../kernel/units.ts';

/** Limits beyond which a figure is a slip of number or unit, never a part or a machine. */
export interface Bound<U extends Unit = Unit> {
  readonly unit: U;
  /** Smallest believable value above zero. */
  readonly least: number;
  readonly greatest: number;
  /** Zero is allowed. */
  readonly zero?: true;
  readonly why: string;
}

const bound = <const U extends Unit>(unit: U, least: number, greatest: number, why: string, zero?: 'zero'): Bound<U> =>
  zero === undefined ? { unit, least, greatest, why } : { unit, least, greatest, why, zero: true };

const LARGEST_PART = 'no die casting machine holds a die for a part of 5 m';

/**
 * Wide on purpose: inside these limits the rules judge, outside them a message about the slip helps more. Limits of
 * common practice without a published source, except where the reason is arithmetic.
 */
export const BOUNDS = {
  volume: bound('cm3', 0.001, 300_000, '500 kg of the lightest casting alloy fill 0.3 m3'),
  mass: bound('kg', 0.00001, 500, 'no die casting machine fills 500 kg in one shot'),
  envelope: bound('mm', 0.5, 5000, LARGEST_PART),
  projectedArea: bound('cm2', 0.005, 100_000, 'no die casting machine locks 10 m2'),
  surfaceArea: bound('cm2', 0.02, 1_000_000, 'a die cast part has less than 100 m2 of surface'),
  wall: bound('mm', 0.1, 100, 'die cast walls are between 0.1 mm and 100 mm thick'),
  partingLine: bound('mm', 1, 50_000, 'a parting line of 50 m fits no die'),
  wallHeight: bound('mm', 0.1, 5000, LARGEST_PART),
  draft: bound('deg', 0.001, 45, 'draft is the small angle between a wall and the direction of opening', 'zero'),
  diameter: bound('mm', 0.1, 1000, 'holes and inserts are between 0.1 mm and 1 m wide'),
  depth: bound('mm', 0.05, 5000, LARGEST_PART),
  count: bound('1', 1, 10_000, 'a part has at most 10,000 equal holes'),
  tolerance: bound('mm', 0.001, 50, 'tolerances of castings are between 1 um and 50 mm'),
  edgeDistance: bound('mm', 0.05, 5000, LARGEST_PART, 'zero'),
  faceArea: bound('cm2', 0.001, 100_000, 'no die casting machine locks 10 m2'),
  boss: bound('mm', 0.05, 1000, 'a boss that a slide has to clear is below 1 m high', 'zero'),
  cover: bound('mm', 0.05, 200, 'the metal around an insert is a wall of the casting', 'zero'),
  ribHeight: bound('mm', 0.1, 1000, 'ribs are between 0.1 mm and 1 m high'),
  radius: bound('mm', 0.05, 500, 'fillets are between 0.05 mm and 500 mm'),
  edgeRadius: bound('mm', 0.01, 100, 'radii at a rib are below 100 mm', 'zero'),
  nominal: bound('mm', 0.1, 5000, LARGEST_PART),
  share: bound('%', 0.000001, 100, 'a share of the whole is between 0 % and 100 %', 'zero'),
  stock: bound('mm', 0.01, 20, 'machining stock is between 0.01 mm and 20 mm'),
  parts: bound('1', 1, 1_000_000_000, 'no die makes more than a thousand million parts'),
  hoursPerYear: bound('h', 1, 8784, 'a leap year has 8784 h'),
  lockingForce: bound('kN', 10, 200_000, 'die casting machines lock with 10 kN to 200 MN'),
  platen: bound('mm', 20, 10_000, 'machine sizes are between 20 mm and 10 m'),
  stroke: bound('mm', 1, 10_000, 'machine strokes are between 1 mm and 10 m'),
  ejectorForce: bound('kN', 0.1, 20_000, 'ejectors push with 0.1 kN to 20 MN'),
  plunger: bound('mm', 5, 500, 'plungers are between 5 mm and 500 mm wide'),
  cylinder: bound('mm', 10, 2000, 'shot cylinders are between 10 mm and 2 m wide'),
  tailRod: bound('mm', 1, 1000, 'a tail rod fits inside its cylinder', 'zero'),
  hydraulicPressure: bound('MPa', 0.1, 100, 'shot hydraulics work between 0.1 MPa and 100 MPa'),
  dryShotSpeed: bound('m/s', 0.01, 50, 'plungers run at 0.01 m/s to 50 m/s without metal'),
  dryCycle: bound('s', 0.1, 600, 'a dry cycle takes 0.1 s to 10 min'),
  hourlyRate: bound('1', 0.0001, 10_000_000, 'the rate is money per hour', 'zero'),
} as const satisfies Record<string, Bound>;
export type BoundName = keyof typeof BOUNDS;
