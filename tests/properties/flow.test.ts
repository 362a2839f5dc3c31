import { describe, expect, it } from 'vitest';
import { entryMach, fannoLength } from '../../src/physics/solve/fanno.ts';
import { bracketedRoot } from '../../src/physics/solve/root.ts';
import { segmentAngle, segmentShare } from '../../src/physics/solve/segment.ts';
import { calc, forAll } from './calc.ts';

/** Equal to about ten digits. */
const same = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-10 * Math.max(Math.abs(a), Math.abs(b)));

const MACHINE = [
  [20, 100],
  [2, 60],
  [1500, 7000],
  [0.35, 0.7],
  [20, 2000],
] as const;

describe('PQ2', () => {
  it('the operating point lies on the line of the machine and on that of the die', () => {
    forAll(MACHINE, (static_pressure, dry_flow, density, discharge, gate_area) => {
      const flow = calc('pq2.operating-flow', { static_pressure, dry_flow, density, discharge, gate_area });
      expect(flow).toBeLessThan(dry_flow);
      const velocity = calc('gate.velocity-from-flow', { flow, area: gate_area });
      const pressure = calc('pq2.die-pressure', { density, velocity, discharge });
      // The line of the machine near the dry flow is a difference of like numbers, so it is compared with its own size.
      expect(Math.abs(static_pressure * (1 - (flow / dry_flow) ** 2) - pressure)).toBeLessThan(1e-10 * static_pressure);
    });
  });
  it('a larger gate passes more at a lower velocity; no gate passes nothing, no die the dry flow', () => {
    forAll(MACHINE, (static_pressure, dry_flow, density, discharge, gate_area) => {
      const x = { static_pressure, dry_flow, density, discharge };
      const small = calc('pq2.operating-flow', { ...x, gate_area });
      const large = calc('pq2.operating-flow', { ...x, gate_area: 1.2 * gate_area });
      expect(large).toBeGreaterThan(small);
      expect(large / 1.2).toBeLessThan(small);
      expect(calc('pq2.operating-flow', { ...x, gate_area: 1e-9 })).toBeLessThan(1e-9);
      same(calc('pq2.operating-flow', { ...x, gate_area: 1e12 }), dry_flow);
    });
  });
  it('hydraulic pressure moves flow with its root when the dry speed follows', () => {
    forAll([...MACHINE, [1.1, 3]], (static_pressure, dry_flow, density, discharge, gate_area, times = 2) => {
      const x = { density, discharge, gate_area };
      same(
        calc('pq2.operating-flow', { ...x, static_pressure: times * static_pressure, dry_flow: Math.sqrt(times) * dry_flow }),
        Math.sqrt(times) * calc('pq2.operating-flow', { ...x, static_pressure, dry_flow }),
      );
    });
  });
  it('the best plunger beats its neighbours, at two thirds of the static pressure and 1/sqrt(3) of the dry flow', () => {
    forAll(
      [
        [50, 1000],
        [2, 8],
        [1500, 7000],
        [0.35, 0.7],
        [20, 2000],
      ],
      (hydraulic_force, dry_speed, density, discharge, gate_area) => {
        const die = { density, discharge, gate_area };
        const best = calc('pq2.best-plunger-area', { hydraulic_force, dry_speed, ...die });
        const at = (area: number): { dry: number; flow: number; pressure: number } => {
          const diameter = Math.sqrt((4 * area) / Math.PI);
          const dry = calc('pq2.dry-flow', { dry_speed, plunger_diameter: diameter });
          const pressure = (1000 * hydraulic_force) / area;
          return { dry, pressure, flow: calc('pq2.operating-flow', { static_pressure: pressure, dry_flow: dry, ...die }) };
        };
        const here = at(best);
        expect(at(best * 1.05).flow).toBeLessThan(here.flow);
        expect(at(best / 1.05).flow).toBeLessThan(here.flow);
        same(here.flow, here.dry / Math.sqrt(3));
        same(calc('pq2.die-pressure', { density, discharge, velocity: (1000 * here.flow) / gate_area }), (2 / 3) * here.pressure);
      },
    );
  });
  it('a tail rod takes its share of the pressure; metal pressure without one is the same lever', () => {
    forAll(
      [
        [5, 30],
        [80, 400],
        [40, 200],
        [0.1, 0.9],
      ],
      (hydraulic_pressure, cylinder_diameter, plunger_diameter, share) => {
        const x = { hydraulic_pressure, cylinder_diameter, plunger_diameter };
        const full = calc('pq2.static-pressure', x);
        same(full, calc('machine.metal-pressure', x));
        same(calc('pq2.static-pressure', { ...x, rod_diameter: Math.sqrt(share) * cylinder_diameter }), (1 - share) * full);
      },
    );
  });
});

describe('sleeve', () => {
  const SPEEDS = ['sleeve.critical-speed-energy', 'sleeve.critical-speed-momentum'];
  it.each(SPEEDS)('%s goes with the root of the diameter and falls as the sleeve is fuller', (id) => {
    forAll(
      [
        [30, 200],
        [5, 95],
        [1.1, 4],
      ],
      (diameter, fill, times) => {
        same(calc(id, { diameter: times * diameter, fill }), Math.sqrt(times) * calc(id, { diameter, fill }));
        expect(calc(id, { diameter, fill: fill + 1 })).toBeLessThan(calc(id, { diameter, fill }));
      },
    );
  });
  it('the momentum balance asks for more speed than the energy balance, and the two meet in a full sleeve', () => {
    forAll(
      [
        [30, 200],
        [5, 95],
      ],
      (diameter, fill) => {
        expect(calc('sleeve.critical-speed-momentum', { diameter, fill })).toBeGreaterThan(calc('sleeve.critical-speed-energy', { diameter, fill }));
      },
    );
    expect(
      calc('sleeve.critical-speed-momentum', { diameter: 100, fill: 99.9 }) / calc('sleeve.critical-speed-energy', { diameter: 100, fill: 99.9 }),
    ).toBeCloseTo(1, 3);
  });
  it('limits: a full sleeve needs no speed, an empty one that of a free fall through its height', () => {
    for (const id of SPEEDS) expect(calc(id, { diameter: 100, fill: 100 })).toBeLessThan(1e-9);
    expect(calc('sleeve.critical-speed-energy', { diameter: 100, fill: 1e-9 })).toBeCloseTo(Math.sqrt(2 * 9.80665 * 0.1), 4);
  });
  it('the segment angle is the inverse of the segment area, symmetric about half full', () => {
    forAll([[0.001, 0.999]], (share) => {
      expect(Math.abs(segmentShare(segmentAngle(share)) - share)).toBeLessThan(1e-14);
      expect(Math.abs(segmentAngle(share) + segmentAngle(1 - share) - 2 * Math.PI)).toBeLessThan(1e-11);
    });
    expect(() => segmentAngle(1.01)).toThrow(RangeError);
    expect(() => segmentAngle(-0.01)).toThrow(RangeError);
  });
  it('fill and length are inverse; full, at the gate and change-over follow one another by the volumes between', () => {
    forAll(
      [
        [40, 150],
        [300, 900],
        [25, 85],
        [0.05, 0.3],
      ],
      (diameter, length, fill, runnerShare) => {
        const area = (Math.PI * diameter ** 2) / 4;
        const volume = (area * length * fill) / 1e5;
        same(calc('sleeve.fill', { volume, diameter, length }), fill);
        same(calc('sleeve.length-for-fill', { volume, diameter, fill }), length);
        const runner_volume = runnerShare * volume;
        const full = calc('sleeve.travel-when-full', { length, volume, diameter });
        const gate = calc('sleeve.travel-at-gate', { length, volume, diameter, runner_volume });
        expect(Math.abs(full - length * (1 - fill / 100))).toBeLessThan(1e-9);
        expect(Math.abs(((gate - full) * area) / 1000 - runner_volume)).toBeLessThan(1e-9 * volume);
        const x = { length, volume, diameter, runner_volume, fast_speed: 3, acceleration: 200 };
        expect(calc('sleeve.change-over', { ...x, slow_speed: 0.5 })).toBeLessThan(gate);
        expect(calc('sleeve.change-over', { ...x, slow_speed: 3 })).toBe(gate);
      },
    );
  });
  it('fast speed times plunger area is the flow, and a biscuit is a cylinder of it', () => {
    forAll(
      [
        [0.1, 100],
        [30, 200],
      ],
      (flow, diameter) => {
        const speed = calc('sleeve.fast-speed', { flow, diameter });
        same(calc('pq2.dry-flow', { dry_speed: speed, plunger_diameter: diameter }), flow);
        same(calc('sleeve.biscuit-volume', { diameter, thickness: speed * 10 }), flow * 10);
      },
    );
  });
});

describe('vent', () => {
  const SOUND = (celsius: number): number => Math.sqrt(1.4 * 287.05 * (celsius + 273.15));
  it('without friction 0.5787 of the speed of sound, less with friction, nothing at the end', () => {
    forAll(
      [
        [0, 500],
        [0.001, 100],
      ],
      (gas_temperature, friction_length) => {
        same(calc('vent.choked-velocity', { gas_temperature }), SOUND(gas_temperature) / 1.2 ** 3);
        const velocity = calc('vent.choked-velocity', { gas_temperature, friction_length });
        expect(velocity).toBeLessThan(SOUND(gas_temperature) / 1.2 ** 3);
        expect(calc('vent.choked-velocity', { gas_temperature, friction_length: 1.1 * friction_length })).toBeLessThan(velocity);
      },
    );
    expect(calc('vent.choked-velocity', { gas_temperature: 20, friction_length: 1e-12 })).toBeCloseTo(SOUND(20) / 1.728, 4);
    // Far out M goes with 1/sqrt(1.4 X).
    expect(calc('vent.choked-velocity', { gas_temperature: 20, friction_length: 1e10 }) / SOUND(20)).toBeCloseTo(Math.sqrt(1 / 1.4e10), 9);
  });
  it('goes with the root of the absolute temperature', () => {
    forAll(
      [
        [0, 200],
        [0, 20],
      ],
      (gas_temperature, friction_length) => {
        const hot = 4 * (gas_temperature + 273.15) - 273.15;
        same(calc('vent.choked-velocity', { gas_temperature: hot, friction_length }), 2 * calc('vent.choked-velocity', { gas_temperature, friction_length }));
      },
    );
  });
  it('the entry Mach number is the inverse of the Fanno function', () => {
    forAll([[0.01, 60]], (length) => expect(Math.abs(fannoLength(entryMach(length)) - length)).toBeLessThan(1e-12 * (1 + length) ** 2));
    expect(entryMach(0)).toBe(1);
    expect(() => entryMach(-1)).toThrow(RangeError);
    // Across the border between the series and the root: dM/M = -0.6 dw, and dw = dq/s.
    expect(entryMach(8.58e-9) / entryMach(8.56e-9)).toBeCloseTo(1 - (0.6 * (7 / 6) * 2e-11) / Math.sqrt(2e-8), 11);
  });
  it('area carries the gas in the time, whatever the units of the words; width times depth is the area', () => {
    forAll(
      [
        [1, 20000],
        [5, 500],
        [30, 340],
        [0.05, 1],
      ],
      (gas_volume, time, velocity, depth) => {
        const area = calc('vent.area', { gas_volume, time, velocity });
        same((area * velocity * time) / 1000, gas_volume);
        same(calc('vent.width', { area, depth }) * depth, area);
      },
    );
  });
  it('a choked vent of the critical area keeps the pressure; a larger one lowers it, a smaller one does not hold it', () => {
    forAll(
      [
        [0.05, 0.95],
        [1.05, 4],
      ],
      (stroke, times) => {
        const pressure = (area_ratio: number): number => calc('vent.residual-pressure-choked', { area_ratio, stroke });
        expect(Math.abs(pressure(1) - 1)).toBeLessThan(1e-12);
        expect(pressure(times)).toBeLessThan(1);
        expect(pressure(1 / times)).toBeGreaterThan(1);
      },
    );
    // No vent: isentropic compression to a tenth of the volume.
    expect(calc('vent.residual-pressure-choked', { area_ratio: 0 })).toBeCloseTo(10 ** 1.4, 9);
  });
});

describe('root finding', () => {
  it('finds the zero of a bracket, at its ends too, and refuses one without a change of sign', () => {
    forAll([[-5, 5]], (zero) => {
      expect(Math.abs(bracketedRoot((x) => (x - zero) ** 3 + 0.1 * (x - zero), -10, 11) - zero)).toBeLessThan(1e-14);
      expect(Math.abs(bracketedRoot((x) => Math.exp(x) - Math.exp(zero), -10, 11) - zero)).toBeLessThan(1e-12);
    });
    expect(bracketedRoot((x) => x, 0, 3)).toBe(0);
    expect(bracketedRoot((x) => x - 3, 0, 3)).toBe(3);
    expect(() => bracketedRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
    expect(() => bracketedRoot(() => Number.NaN, -1, 1)).toThrow(RangeError);
  });
});
