import angle from 'convert-units/lib/definitions/angle.js';
import area from 'convert-units/lib/definitions/area.js';
import length from 'convert-units/lib/definitions/length.js';
import mass from 'convert-units/lib/definitions/mass.js';
import pressure from 'convert-units/lib/definitions/pressure.js';
import time from 'convert-units/lib/definitions/time.js';
import volume from 'convert-units/lib/definitions/volume.js';
import flow from 'convert-units/lib/definitions/volumeFlowRate.js';

/**
 * The one unit table. Every unit has a dimension and a factor to the SI unit of that dimension; point temperatures
 * also have an offset. A point temperature (`degC`) and a temperature difference (`K`) are different dimensions,
 * so one can never stand for the other.
 *
 * Metric factors come from the definitions of `convert-units`, read as data: its converter searches every measure at
 * each call, which would cost a third of the start-up. Its customary factors are rounded (1 in comes out as
 * 25.39999919 mm), so the inch, pound and psi carry their exact definitions here; units that it lacks (force, density,
 * thermal) do too.
 */
const METRIC = { ...area.metric, ...angle.metric, ...length.metric, ...mass.metric, ...pressure.metric, ...time.metric, ...volume.metric, ...flow.metric };
const metric = (unit: string, si: string): number => anchor(unit) / anchor(si);

function anchor(unit: string): number {
  const definition = METRIC[unit];
  if (definition === undefined) throw new TypeError(`convert-units has no ${unit}`);
  return definition.to_anchor;
}

const INCH = 0.0254; // international yard and pound agreement, 1959: exact
const POUND = 0.45359237; // same agreement: exact
const GRAVITY = 9.80665; // standard gravity, exact by definition
const POUND_FORCE = POUND * GRAVITY;

const unit = <D extends string>(dimension: D, factor: number, ucum: string, offset = 0) => ({ dimension, factor, ucum, offset }) as const;

export const UNITS = {
  '1': unit('number', 1, '1'),
  '%': unit('number', 0.01, '%'),
  um: unit('length', 1e-6, 'um'),
  mm: unit('length', metric('mm', 'm'), 'mm'),
  cm: unit('length', metric('cm', 'm'), 'cm'),
  m: unit('length', 1, 'm'),
  in: unit('length', INCH, '[in_i]'),
  ft: unit('length', 12 * INCH, '[ft_i]'),
  mm2: unit('area', metric('mm2', 'm2'), 'mm2'),
  cm2: unit('area', metric('cm2', 'm2'), 'cm2'),
  m2: unit('area', 1, 'm2'),
  in2: unit('area', INCH ** 2, '[in_i]2'),
  mm3: unit('volume', metric('mm3', 'm3'), 'mm3'),
  cm3: unit('volume', metric('cm3', 'm3'), 'cm3'),
  dm3: unit('volume', 1e-3, 'dm3'),
  l: unit('volume', metric('l', 'm3'), 'L'),
  ml: unit('volume', metric('ml', 'm3'), 'mL'),
  m3: unit('volume', 1, 'm3'),
  in3: unit('volume', INCH ** 3, '[in_i]3'),
  g: unit('mass', metric('g', 'kg'), 'g'),
  kg: unit('mass', 1, 'kg'),
  t: unit('mass', metric('mt', 'kg'), 't'),
  lb: unit('mass', POUND, '[lb_av]'),
  oz: unit('mass', POUND / 16, '[oz_av]'),
  ms: unit('time', metric('ms', 's'), 'ms'),
  s: unit('time', 1, 's'),
  min: unit('time', metric('min', 's'), 'min'),
  h: unit('time', metric('h', 's'), 'h'),
  'm/s': unit('speed', 1, 'm/s'),
  'mm/s': unit('speed', 1e-3, 'mm/s'),
  'cm/s': unit('speed', 1e-2, 'cm/s'),
  'in/s': unit('speed', INCH, '[in_i]/s'),
  'ft/s': unit('speed', 12 * INCH, '[ft_i]/s'),
  'm/s2': unit('acceleration', 1, 'm/s2'),
  'cm3/s': unit('flow', metric('cm3/s', 'm3/s'), 'cm3/s'),
  'l/s': unit('flow', metric('l/s', 'm3/s'), 'L/s'),
  'l/min': unit('flow', metric('l/min', 'm3/s'), 'L/min'),
  'm3/s': unit('flow', 1, 'm3/s'),
  'in3/s': unit('flow', INCH ** 3, '[in_i]3/s'),
  Pa: unit('pressure', 1, 'Pa'),
  kPa: unit('pressure', metric('kPa', 'Pa'), 'kPa'),
  MPa: unit('pressure', metric('MPa', 'Pa'), 'MPa'),
  GPa: unit('pressure', 1e9, 'GPa'),
  bar: unit('pressure', metric('bar', 'Pa'), 'bar'),
  mbar: unit('pressure', 100, 'mbar'),
  'N/mm2': unit('pressure', 1e6, 'N/mm2'),
  'kgf/cm2': unit('pressure', GRAVITY * 1e4, 'kgf/cm2'),
  psi: unit('pressure', POUND_FORCE / INCH ** 2, '[psi]'),
  ksi: unit('pressure', (1000 * POUND_FORCE) / INCH ** 2, 'k[psi]'),
  N: unit('force', 1, 'N'),
  kN: unit('force', 1e3, 'kN'),
  MN: unit('force', 1e6, 'MN'),
  kgf: unit('force', GRAVITY, 'kgf'),
  lbf: unit('force', POUND_FORCE, '[lbf_av]'),
  'kg/m3': unit('density', 1, 'kg/m3'),
  'g/cm3': unit('density', 1e3, 'g/cm3'),
  'kg/dm3': unit('density', 1e3, 'kg/dm3'),
  'lb/in3': unit('density', POUND / INCH ** 3, '[lb_av]/[in_i]3'),
  degC: unit('temperature', 1, 'Cel', 273.15),
  degF: unit('temperature', 5 / 9, '[degF]', 459.67 * (5 / 9)),
  K: unit('temperature difference', 1, 'K'),
  J: unit('energy', 1, 'J'),
  kJ: unit('energy', 1e3, 'kJ'),
  MJ: unit('energy', 1e6, 'MJ'),
  kWh: unit('energy', 3.6e6, 'kW.h'),
  W: unit('power', 1, 'W'),
  kW: unit('power', 1e3, 'kW'),
  'J/kg': unit('heat per mass', 1, 'J/kg'),
  'kJ/kg': unit('heat per mass', 1e3, 'kJ/kg'),
  'kWh/kg': unit('heat per mass', 3.6e6, 'kW.h/kg'),
  'J/(kg.K)': unit('specific heat', 1, 'J.kg-1.K-1'),
  'kJ/(kg.K)': unit('specific heat', 1e3, 'kJ.kg-1.K-1'),
  'W/(m.K)': unit('thermal conductivity', 1, 'W.m-1.K-1'),
  'W/(m2.K)': unit('heat transfer coefficient', 1, 'W.m-2.K-1'),
  'kW/(m2.K)': unit('heat transfer coefficient', 1e3, 'kW.m-2.K-1'),
  'W/K': unit('thermal conductance', 1, 'W.K-1'),
  'W/m': unit('heat rate per length', 1, 'W.m-1'),
  'W/m2': unit('heat flux', 1, 'W.m-2'),
  'kW/m2': unit('heat flux', 1e3, 'kW.m-2'),
  'kJ/m2': unit('heat per area', 1e3, 'kJ.m-2'),
  'MJ/m2': unit('heat per area', 1e6, 'MJ.m-2'),
  'kg/s': unit('mass flow', 1, 'kg/s'),
  'kg/h': unit('mass flow', 1 / 3600, 'kg/h'),
  'Pa.s': unit('viscosity', 1, 'Pa.s'),
  'mPa.s': unit('viscosity', 1e-3, 'mPa.s'),
  '1/K': unit('thermal expansion', 1, 'K-1'),
  'um/(m.K)': unit('thermal expansion', 1e-6, 'um.m-1.K-1'),
  deg: unit('angle', metric('deg', 'rad'), 'deg'),
  rad: unit('angle', 1, 'rad'),
  's/mm': unit('time per length', 1e3, 's/mm'),
  's/in': unit('time per length', 1 / INCH, 's/[in_i]'),
  's/mm2': unit('time per area', 1e6, 's/mm2'),
  'K/%': unit('temperature difference per number', 100, 'K/%'),
  '1/h': unit('rate', 1 / 3600, 'h-1'),
} as const;

/** A unit the tool knows, as it is printed. */
export type Unit = keyof typeof UNITS;
/** The dimension of a unit: `length`, `pressure`, `temperature`, `temperature difference` and so on. */
export type Dimension = (typeof UNITS)[Unit]['dimension'];
/** The dimension of the unit `U`. */
export type DimensionOf<U extends Unit> = (typeof UNITS)[U]['dimension'];
/** All units of the dimension of `U`. */
export type SameDimension<U extends Unit> = {
  [K in Unit]: DimensionOf<K> extends DimensionOf<U> ? K : never;
}[Unit];

export function isUnit(text: string): text is Unit {
  return Object.hasOwn(UNITS, text);
}

export function dimensionOf(unitName: Unit): Dimension {
  return UNITS[unitName].dimension;
}

/** All units of a dimension, in table order. */
export function unitsOf(dimension: Dimension): Unit[] {
  return (Object.keys(UNITS) as Unit[]).filter((name) => UNITS[name].dimension === dimension);
}

/**
 * `value` of unit `from`, expressed in unit `to`.
 * @throws RangeError when the two units are of different dimensions (a fault of the caller, never of user input).
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value;
  const a = UNITS[from];
  const b = UNITS[to];
  if (a.dimension !== b.dimension) {
    throw new RangeError(`cannot express ${a.dimension} (${from}) in ${b.dimension} (${to})`);
  }
  return (value * a.factor + a.offset - b.offset) / b.factor;
}
