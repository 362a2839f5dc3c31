import { describe, expect, it } from 'vitest';
import { calc, forAll } from './calc.ts';

/** Equal to about ten digits. */
const same = (a: number, b: number, size = 0): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-10 * Math.max(Math.abs(a), Math.abs(b), size));

interface Machine {
  readonly hydraulic: number;
  readonly cylinder: number;
  readonly rod: number;
  readonly speed: number;
}
interface Die {
  readonly density: number;
  readonly discharge: number;
  readonly gate_area: number;
}
interface Crossing {
  readonly static_pressure: number;
  readonly dry_flow: number;
  readonly flow: number;
  readonly pressure: number;
  readonly velocity: number;
}

/** Where the machine with a plunger meets the die, by the formulas of the plan. */
function cross(machine: Machine, die: Die, plunger: number, setting: { readonly throttle?: number; readonly times?: number } = {}): Crossing {
  const { throttle = 100, times = 1 } = setting;
  const dry_speed = calc('pq2.dry-speed', {
    dry_speed: machine.speed,
    pressure: times * machine.hydraulic,
    rated_pressure: machine.hydraulic,
    throttle,
  });
  const static_pressure = calc('pq2.static-pressure', {
    hydraulic_pressure: times * machine.hydraulic,
    cylinder_diameter: machine.cylinder,
    rod_diameter: machine.rod,
    plunger_diameter: plunger,
  });
  const dry_flow = calc('pq2.dry-flow', { dry_speed, plunger_diameter: plunger });
  const flow = calc('pq2.operating-flow', { static_pressure, dry_flow, ...die });
  const pressure = calc('pq2.machine-pressure', { static_pressure, dry_flow, flow });
  return { static_pressure, dry_flow, flow, pressure, velocity: calc('gate.velocity-from-flow', { flow, area: die.gate_area }) };
}

const RANGES = [
  [5, 25], // hydraulic pressure, MPa
  [80, 300], // cylinder, mm
  [0, 0.6], // tail rod over cylinder
  [2, 8], // dry speed, m/s
  [1500, 7800], // density, kg/m3
  [0.35, 0.7], // discharge
  [30, 3000], // gate area, mm2
  [40, 200], // plunger, mm
] as const;

/** Runs a property over machines, dies and plungers. */
function forShots(holds: (machine: Machine, die: Die, plunger: number) => void): void {
  forAll(RANGES, (...drawn) => {
    const [hydraulic, cylinder, share, speed, density, discharge, gate_area, plunger] = drawn as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    holds({ hydraulic, cylinder, rod: share * cylinder, speed }, { density, discharge, gate_area }, plunger);
  });
}

const forceOf = (machine: Machine): number =>
  calc('pq2.hydraulic-force', { pressure: machine.hydraulic, cylinder_diameter: machine.cylinder, rod_diameter: machine.rod });

describe('plunger diameter', () => {
  it('gate velocity has one maximum over the diameter, at two thirds of the static pressure', () => {
    forShots((machine, die) => {
      const area = calc('pq2.best-plunger-area', { hydraulic_force: forceOf(machine), dry_speed: machine.speed, ...die });
      const best = calc('pq2.best-plunger-diameter', { area });
      const peak = cross(machine, die, best);
      same(peak.pressure, (2 / 3) * peak.static_pressure);
      same(peak.flow, calc('pq2.greatest-power-flow', { dry_flow: peak.dry_flow }));
      const velocities = Array.from({ length: 41 }, (_, i) => cross(machine, die, best * 2 ** ((i - 20) / 10)).velocity);
      const rises = velocities.slice(1).map((velocity, i) => velocity > (velocities[i] as number));
      expect(rises).toEqual(rises.map((_, i) => i < 20));
    });
  });
  it('a larger plunger lowers the static pressure and raises the dry flow with its area; their product is the same', () => {
    forShots((machine, die, plunger) => {
      const [one, two] = [cross(machine, die, plunger), cross(machine, die, 1.3 * plunger)];
      same(two.static_pressure * 1.69, one.static_pressure);
      same(two.dry_flow, 1.69 * one.dry_flow);
    });
  });
  it('between the smallest and the largest plunger that reach a point the machine has pressure to spare, outside it lacks some', () => {
    forShots((machine, die, plunger) => {
      const point = cross(machine, { ...die, gate_area: 0.8 * die.gate_area }, plunger);
      const asked = { flow: 0.9 * point.flow, pressure: 0.81 * point.pressure };
      const x = { force: forceOf(machine), dry_speed: machine.speed, ...asked };
      const [least, greatest] = [calc('pq2.least-plunger', x), calc('pq2.greatest-plunger', x)];
      const use = (diameter: number): number => {
        const { static_pressure, dry_flow } = cross(machine, die, diameter);
        return calc('pq2.machine-use', { static_pressure, dry_flow, ...asked });
      };
      expect(least).toBeLessThan(plunger);
      expect(greatest).toBeGreaterThan(plunger);
      for (const end of [least, greatest]) expect(Math.abs(use(end) - 100)).toBeLessThan(1e-5);
      expect(use(Math.sqrt(least * greatest))).toBeLessThan(100);
      expect(use(0.98 * least)).toBeGreaterThan(100);
      expect(use(1.02 * greatest)).toBeGreaterThan(100);
    });
  });
});

describe('hydraulic pressure and throttle', () => {
  it('flow and gate velocity go with the root of the hydraulic pressure, and the share of the static pressure stays', () => {
    forShots((machine, die, plunger) => {
      const [one, two] = [cross(machine, die, plunger), cross(machine, die, plunger, { times: 1.44 })];
      same(two.flow, 1.2 * one.flow);
      same(two.velocity, 1.2 * one.velocity);
      same(two.static_pressure, 1.44 * one.static_pressure);
      // The pressure near the dry flow is a difference of like numbers, so it is compared with the static pressure.
      same(two.pressure / two.static_pressure, one.pressure / one.static_pressure, 1);
    });
  });
  it('a throttle keeps the static pressure and takes flow', () => {
    forShots((machine, die, plunger) => {
      const [open, half] = [cross(machine, die, plunger), cross(machine, die, plunger, { throttle: 50 })];
      same(half.static_pressure, open.static_pressure);
      same(half.dry_flow, 0.5 * open.dry_flow);
      expect(half.flow).toBeLessThan(open.flow);
      expect(half.flow).toBeGreaterThan(0.5 * open.flow);
    });
  });
  it('the setting worked out for a point brings the crossing onto it, and so does the hydraulic pressure', () => {
    forShots((machine, die, plunger) => {
      const open = cross(machine, die, plunger);
      const flow = 0.7 * open.flow;
      const velocity = calc('gate.velocity-from-flow', { flow, area: die.gate_area });
      const pressure = calc('pq2.die-pressure', { ...die, velocity });
      const line = { static_pressure: open.static_pressure, dry_flow: open.dry_flow };
      const throttle = calc('pq2.needed-throttle', { throttle: 100, ...line, flow, pressure });
      same(cross(machine, die, plunger, { throttle }).flow, flow);
      const use = calc('pq2.machine-use', { ...line, flow, pressure });
      const needed = calc('pq2.needed-pressure', { hydraulic_pressure: machine.hydraulic, use });
      same(cross(machine, die, plunger, { times: needed / machine.hydraulic }).flow, flow);
      same(use, 49);
    });
  });
});

describe('gate area', () => {
  it('an infinite gate passes the dry flow at no pressure, a vanishing one nothing at the static pressure', () => {
    forShots((machine, die, plunger) => {
      const wide = cross(machine, { ...die, gate_area: 1e12 }, plunger);
      same(wide.flow, wide.dry_flow);
      expect(wide.pressure).toBeLessThan(1e-9 * wide.static_pressure);
      const shut = cross(machine, { ...die, gate_area: 1e-6 }, plunger);
      expect(shut.flow).toBeLessThan(1e-6 * shut.dry_flow);
      same(shut.pressure, shut.static_pressure);
    });
  });
  it('the velocity that the pressure left drives gives the gate on the line of the machine', () => {
    forShots((machine, die, plunger) => {
      const { static_pressure, dry_flow } = cross(machine, die, plunger);
      const flow = 0.8 * dry_flow;
      const pressure = calc('pq2.machine-pressure', { static_pressure, dry_flow, flow });
      const velocity = calc('pq2.driven-velocity', { ...die, pressure });
      same(calc('pq2.die-pressure', { ...die, velocity }), pressure);
      same(cross(machine, { ...die, gate_area: (1000 * flow) / velocity }, plunger).flow, flow);
    });
  });
  it('a poorer discharge is a smaller gate: less flow, more pressure', () => {
    forShots((machine, die, plunger) => {
      const discharge = calc('pq2.spread-discharge', { discharge: die.discharge, share: -20 });
      const [poor, planned] = [cross(machine, { ...die, discharge }, plunger), cross(machine, die, plunger)];
      expect(poor.flow).toBeLessThan(planned.flow);
      expect(poor.pressure).toBeGreaterThan(planned.pressure);
      same(poor.flow, cross(machine, { ...die, gate_area: 0.8 * die.gate_area }, plunger).flow);
    });
  });
});

describe('line of the machine', () => {
  it('read from flow to pressure and back', () => {
    forAll(
      [
        [10, 150],
        [1, 100],
        [0.01, 0.99],
      ],
      (static_pressure, dry_flow, share) => {
        const pressure = calc('pq2.machine-pressure', { static_pressure, dry_flow, flow: share * dry_flow });
        const flow = calc('pq2.machine-flow', { static_pressure, dry_flow, pressure });
        expect(Math.abs(flow / dry_flow - share)).toBeLessThan(1e-9);
        same(calc('pq2.machine-use', { static_pressure, dry_flow, flow, pressure }), 100);
      },
    );
  });
  it('no point has more power than that of the greatest power, 0.385 of force times dry speed for every plunger', () => {
    forShots((machine, die, plunger) => {
      const { static_pressure, dry_flow, flow, pressure } = cross(machine, die, plunger);
      const greatest = calc('pq2.power', {
        pressure: calc('pq2.greatest-power-pressure', { static_pressure }),
        flow: calc('pq2.greatest-power-flow', { dry_flow }),
      });
      expect(Math.abs(greatest / (forceOf(machine) * machine.speed) - 2 / (3 * Math.sqrt(3)))).toBeLessThan(1e-12);
      expect(calc('pq2.power-use', { power: calc('pq2.power', { pressure, flow }), greatest_power: greatest })).toBeLessThanOrEqual(100 + 1e-9);
    });
  });
  it('the printed 2/3 of the flow and its mean of 0.1388 belong to q^2 (1 - q), not to the power of this line', () => {
    // Bar-Meir, Fundamentals of Die Casting Design: 0.1388 as the mean over a range of one third.
    const mean = (f: (q: number) => number): number => {
      const steps = 10000;
      return Array.from({ length: steps }, (_, i) => f(1 / 2 + (i + 0.5) / (3 * steps))).reduce((sum, y) => sum + y, 0) / steps;
    };
    const printed = (q: number): number => q ** 2 * (1 - q);
    expect(mean(printed)).toBeCloseTo(0.13889, 5);
    expect(printed(2 / 3)).toBeGreaterThan(Math.max(printed(2 / 3 - 0.01), printed(2 / 3 + 0.01)));
    const power = (q: number): number => calc('pq2.power', { flow: q, pressure: calc('pq2.machine-pressure', { static_pressure: 1, dry_flow: 1, flow: q }) });
    const peak = calc('pq2.greatest-power-flow', { dry_flow: 1 });
    expect(power(peak)).toBeCloseTo(0.385, 3);
    expect(power(peak)).toBeGreaterThan(Math.max(power(peak - 0.01), power(peak + 0.01), power(2 / 3)));
  });
});
