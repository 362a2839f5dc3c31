import type { Unit } from '../kernel/units.ts';

/** Limits beyond which a figure is a slip of number or unit, never a part or a machine. */
export interface Bound<U extends Unit = Unit> {
  readonly unit: U;
  /** Smallest believable value above zero. */
  readonly least: number;
  readonly greatest: number;
  /** Zero is allowed. */
  readonly zero?: true;
  /** What is believable, in words, for either end. */
  readonly why: string;
}

const bound = <const U extends Unit>(unit: U, least: number, greatest: number, why: string, zero?: 'zero'): Bound<U> =>
  zero === undefined ? { unit, least, greatest, why } : { unit, least, greatest, why, zero: true };

/**
 * Wide on purpose: inside these limits the rules judge, outside them a message about the slip helps more. Limits of
 * common practice without a published source, except where they are arithmetic (a share, the hours of a year).
 */
export const BOUNDS = {
  volume: bound('cm3', 0.001, 300_000, 'a die casting has between 1 mm3 and 0.3 m3 of metal (500 kg of the lightest alloy)'),
  mass: bound('kg', 0.00001, 500, 'a die casting weighs between 10 mg and 500 kg'),
  envelope: bound('mm', 0.5, 5000, 'a die casting is between 0.5 mm and 5 m long'),
  projectedArea: bound('cm2', 0.005, 100_000, 'a die casting covers between 0.5 mm2 and 10 m2'),
  surfaceArea: bound('cm2', 0.02, 1_000_000, 'a die casting has between 2 mm2 and 100 m2 of surface'),
  wall: bound('mm', 0.1, 100, 'die cast walls are between 0.1 mm and 100 mm thick'),
  partingLine: bound('mm', 1, 50_000, 'a parting line is between 1 mm and 50 m long'),
  wallHeight: bound('mm', 0.1, 5000, 'walls are between 0.1 mm and 5 m high'),
  draft: bound('deg', 0.001, 45, 'draft is 0 or between 0.001 deg and 45 deg', 'zero'),
  diameter: bound('mm', 0.1, 1000, 'holes and inserts are between 0.1 mm and 1 m wide'),
  depth: bound('mm', 0.05, 5000, 'holes, undercuts and inserts are between 0.05 mm and 5 m long'),
  count: bound('1', 1, 10_000, 'a part has between 1 and 10,000 equal holes'),
  castings: bound('1', 1, 64, 'a die has between 1 and 64 castings of a part'),
  tolerance: bound('mm', 0.001, 50, 'tolerances of castings are between 1 um and 50 mm'),
  edgeDistance: bound('mm', 0.05, 5000, 'a hole is 0 mm, or between 0.05 mm and 5 m, from an edge', 'zero'),
  faceArea: bound('cm2', 0.001, 100_000, 'the face of a slide has between 0.1 mm2 and 10 m2'),
  boss: bound('mm', 0.05, 1000, 'a boss that a slide has to clear is between 0.05 mm and 1 m high', 'zero'),
  cover: bound('mm', 0.05, 200, 'an insert has 0 mm, or between 0.05 mm and 200 mm, of metal around it', 'zero'),
  ribHeight: bound('mm', 0.1, 1000, 'ribs are between 0.1 mm and 1 m high'),
  radius: bound('mm', 0.05, 500, 'fillets are between 0.05 mm and 500 mm'),
  edgeRadius: bound('mm', 0.01, 100, 'radii at a rib are 0 mm or between 0.01 mm and 100 mm', 'zero'),
  nominal: bound('mm', 0.1, 5000, 'dimensions of a die casting are between 0.1 mm and 5 m'),
  share: bound('%', 0.000001, 100, 'a share of the whole is 0 % or between 0.000001 % and 100 %', 'zero'),
  stock: bound('mm', 0.01, 20, 'machining stock is between 0.01 mm and 20 mm'),
  parts: bound('1', 1, 1_000_000_000, 'between 1 and a thousand million parts are made'),
  hoursPerYear: bound('h', 1, 8784, 'a leap year has 8784 h'),
  lockingForce: bound('kN', 10, 200_000, 'die casting machines lock with 10 kN to 200 MN'),
  platen: bound('mm', 20, 10_000, 'machine sizes are between 20 mm and 10 m'),
  stroke: bound('mm', 1, 10_000, 'machine strokes are between 1 mm and 10 m'),
  ejectorForce: bound('kN', 0.1, 20_000, 'ejectors push with 0.1 kN to 20 MN'),
  plunger: bound('mm', 5, 500, 'plungers are between 5 mm and 500 mm wide'),
  cylinder: bound('mm', 10, 2000, 'shot cylinders are between 10 mm and 2 m wide'),
  tailRod: bound('mm', 1, 1000, 'tail rods are 0 mm or between 1 mm and 1 m wide', 'zero'),
  hydraulicPressure: bound('MPa', 0.1, 100, 'shot hydraulics work between 0.1 MPa and 100 MPa'),
  dryShotSpeed: bound('m/s', 0.01, 50, 'plungers run at 0.01 m/s to 50 m/s without metal'),
  dryCycle: bound('s', 0.1, 600, 'a dry cycle takes 0.1 s to 10 min'),
  hourlyRate: bound('1', 0.0001, 10_000_000, 'a rate is 0 or between 0.0001 and 10 million per hour', 'zero'),
  furnace: bound('kg', 1, 200_000, 'furnaces hold between 1 kg and 200 t'),
  meltRate: bound('kg/h', 0.1, 50_000, 'furnaces melt between 0.1 kg/h and 50 t/h'),
  holding: bound('degC', 150, 1300, 'die casting metals are held between 150 degC and 1300 degC'),
  coolant: bound('degC', 1, 400, 'coolants of dies run between 1 degC and 400 degC'),
  coolantFlow: bound('l/min', 0.5, 20_000, 'cooling units drive 0.5 l/min to 20 m3/min'),
  coolantPressure: bound('bar', 0.1, 40, 'cooling units drive with 0.1 bar to 40 bar'),
  dilution: bound('1', 1, 1000, 'die lubricant is mixed with 1 to 1000 parts of water'),
  sprayTime: bound('s', 0.05, 600, 'a die is sprayed and blown off for 0.05 s to 10 min'),
  sprayFlow: bound('l/min', 0.01, 500, 'spray heads give 0.01 l/min to 500 l/min'),
  coreCircuits: bound('1', 1, 40, 'a machine has 0 or between 1 and 40 core circuits', 'zero'),
  pressForce: bound('kN', 1, 50_000, 'trim presses close with 1 kN to 50 MN'),
  price: bound('1', 0.000001, 10_000_000_000, 'a price is 0 or between a millionth and ten thousand million', 'zero'),
  metalPrice: bound('1', 0.0001, 1_000_000_000, 'a kilogram of metal costs between 0.0001 and a thousand million'),
  meltLoss: bound('%', 0.001, 50, 'melting loses 0 %, or between 0.001 % and 50 %, of the metal', 'zero'),
  meltingEnergy: bound('kWh/kg', 0.01, 20, 'melting and holding take between 0.01 kWh/kg and 20 kWh/kg'),
  workTime: bound('s', 0.05, 36_000, 'work on a casting takes 0 s, or between 0.05 s and 10 h', 'zero'),
} as const satisfies Record<string, Bound>;
export type BoundName = keyof typeof BOUNDS;
