import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Formula } from '../../src/kernel/formula.ts';
import { convert, type Dimension, dimensionOf, type Unit } from '../../src/kernel/units.ts';
import { formulaById } from '../../src/physics/index.ts';
import { between } from './calc.ts';

/** The SI unit of each dimension that these formulas use. */
const SI: Partial<Record<Dimension, Unit>> = {
  number: '1',
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  time: 's',
  speed: 'm/s',
  acceleration: 'm/s2',
  flow: 'm3/s',
  pressure: 'Pa',
  force: 'N',
  density: 'kg/m3',
  temperature: 'degC',
  angle: 'rad',
  'heat per mass': 'J/kg',
  'specific heat': 'J/(kg.K)',
  'time per length': 's/mm',
  'temperature difference per number': 'K/%',
};

const circle = (diameter: number): number => (Math.PI * diameter ** 2) / 4;
const kelvin = (celsius: number): number => celsius + 273.15;

/** The formulas as a textbook writes them, in SI units without a factor; per cent arrive as shares. */
const TEXTBOOK: Readonly<Record<string, (x: Record<string, number>) => number>> = {
  'clamp.opening-force': (x) => x.pressure! * x.area!,
  'clamp.slide-opening-force': (x) => x.pressure! * x.face_area! * Math.tan(x.lock_angle! - Math.atan(x.friction!)),
  'clamp.projected-area-total': (x) => x.cavities! * x.casting_area! * (1 + x.runner_share! + x.overflow_share!) + circle(x.biscuit_diameter!),
  'gate.flow-volume': (x) => x.mass! / x.density!,
  'gate.flow': (x) => x.volume! / x.time!,
  'gate.area': (x) => x.volume! / (x.velocity! * x.time!),
  'gate.velocity-from-flow': (x) => x.flow! / x.area!,
  'gate.width': (x) => x.area! / x.thickness!,
  'heat.per-mass': (x) => x.cp_liquid! * (x.gate_temperature! - x.liquidus!) + x.latent! + x.cp_solid! * (x.liquidus! - x.eject_temperature!),
  'machine.metal-pressure': (x) => (x.hydraulic_pressure! * circle(x.cylinder_diameter!)) / circle(x.plunger_diameter!),
  'metal.part-mass': (x) => x.volume! * x.density!,
  'metal.part-volume': (x) => x.mass! / x.density!,
  'overflow.volume': (x) => x.cavity_volume! * x.share!,
  'porosity.gas-volume': (x) =>
    (x.trapped! * x.gas_volume! * x.gas_pressure! * kelvin(x.metal_temperature!)) / (x.metal_pressure! * kelvin(x.gas_temperature!)),
  'pq2.static-pressure': (x) => (x.hydraulic_pressure! * (circle(x.cylinder_diameter!) - circle(x.rod_diameter!))) / circle(x.plunger_diameter!),
  'pq2.dry-flow': (x) => x.dry_speed! * circle(x.plunger_diameter!),
  'pq2.die-pressure': (x) => (x.density! / 2) * (x.velocity! / x.discharge!) ** 2,
  'pq2.operating-flow': (x) => Math.sqrt(x.static_pressure! / (x.static_pressure! / x.dry_flow! ** 2 + x.density! / (2 * (x.discharge! * x.gate_area!) ** 2))),
  'pq2.best-plunger-area': (x) => Math.cbrt((2 * x.hydraulic_force!) / ((x.density! / (2 * (x.discharge! * x.gate_area!) ** 2)) * x.dry_speed! ** 2)),
  'shot.mass': (x) => x.volume! * x.density!,
  'sleeve.fill': (x) => x.volume! / (circle(x.diameter!) * x.length!),
  'sleeve.length-for-fill': (x) => x.volume! / (circle(x.diameter!) * x.fill!),
  'sleeve.biscuit-volume': (x) => circle(x.diameter!) * x.thickness!,
  'sleeve.travel-when-full': (x) => x.length! - x.volume! / circle(x.diameter!),
  'sleeve.travel-at-gate': (x) => x.length! - (x.volume! - x.runner_volume!) / circle(x.diameter!),
  'sleeve.change-over': (x) =>
    x.length! - (x.volume! - x.runner_volume!) / circle(x.diameter!) - (x.fast_speed! ** 2 - x.slow_speed! ** 2) / (2 * x.acceleration!),
  'sleeve.fast-speed': (x) => x.flow! / circle(x.diameter!),
  'vent.area': (x) => x.gas_volume! / (x.time! * x.velocity!),
  'vent.width': (x) => x.area! / x.depth!,
  'vent.friction-length': (x) => (4 * x.friction! * x.land!) / (2 * x.depth!),
};

function known(id: string): Formula {
  const formula = formulaById(id);
  if (formula === undefined) throw new Error(`no formula ${id}`);
  return formula;
}

function siUnit(unit: Unit): Unit {
  const si = SI[dimensionOf(unit)];
  if (si === undefined) throw new Error(`no SI unit for ${unit}`);
  return si;
}

/** Points in the ranges of a formula that satisfy its conditions. */
function pointsOf(formula: Formula): fc.Arbitrary<Record<string, number>> {
  const record = Object.fromEntries(Object.entries(formula.inputs).map(([name, { range }]) => [name, between(range[0], range[1])]));
  return fc.record(record).filter((numbers) => (formula.requires ?? []).every((condition) => condition.holds(numbers)));
}

describe.each(Object.entries(TEXTBOOK))('%s in its declared units', (id, textbook) => {
  it('equals the textbook form in SI units', () => {
    const formula = known(id);
    const property = fc.property(pointsOf(formula), (numbers) => {
      const si: Record<string, number> = {};
      for (const [name, input] of Object.entries(formula.inputs)) si[name] = convert(numbers[name] as number, input.unit, siUnit(input.unit));
      const expected = convert(textbook(si), siUnit(formula.unit), formula.unit);
      // Differences of lengths are compared with the lengths.
      const size = Math.max(Math.abs(expected), formula.unit === 'mm' ? (numbers.length ?? 0) : 0);
      expect(Math.abs(formula.compute(numbers) - expected)).toBeLessThanOrEqual(1e-10 * size + 1e-300);
    });
    fc.assert(property, { seed: 20240917, numRuns: 100 });
  });
});

/** Powers of length, mass and time in a dimension. */
const POWERS: Partial<Record<Dimension, readonly [length: number, mass: number, time: number]>> = {
  number: [0, 0, 0],
  angle: [0, 0, 0],
  length: [1, 0, 0],
  area: [2, 0, 0],
  volume: [3, 0, 0],
  mass: [0, 1, 0],
  time: [0, 0, 1],
  speed: [1, 0, -1],
  acceleration: [1, 0, -2],
  flow: [3, 0, -1],
  pressure: [-1, 1, -2],
  force: [1, 1, -2],
  density: [-3, 1, 0],
  rate: [0, 0, -1],
};

/** Formulas without any constant of a dimension that the textbook forms above leave out. */
const LAWFUL = [
  'clamp.locking-force',
  'clamp.off-centre-capacity',
  'clamp.tie-bar-load',
  'fillet.least-radius',
  'machine.mean-rate',
  'rib.tip-radius',
  'shot.volume',
  'shrink.cavity-dimension',
  'slide.pin-engagement',
  'slide.pin-length',
  'slide.stroke',
  'thread.cored-depth',
];

describe('laws of nature do not know our units', () => {
  it.each(LAWFUL)('%s keeps its form when length, mass and time are counted in other units', (id) => {
    const formula = known(id);
    const scales = fc.tuple(between(0.5, 2), between(0.5, 2), between(0.5, 2));
    const factor = (unit: Unit, scale: readonly [number, number, number]): number => {
      const powers = POWERS[dimensionOf(unit)] as readonly [number, number, number];
      return scale[0] ** powers[0] * scale[1] ** powers[1] * scale[2] ** powers[2];
    };
    const property = fc.property(pointsOf(formula), scales, (numbers, scale) => {
      const scaled: Record<string, number> = {};
      for (const [name, input] of Object.entries(formula.inputs)) scaled[name] = (numbers[name] as number) * factor(input.unit, scale);
      const expected = formula.compute(numbers) * factor(formula.unit, scale);
      expect(Math.abs(formula.compute(scaled) - expected)).toBeLessThanOrEqual(1e-10 * Math.abs(expected));
    });
    fc.assert(property, { seed: 20240917, numRuns: 100 });
  });
});
