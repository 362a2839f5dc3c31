import { describe, expect, test } from 'vitest';
import { entryMach, fannoLength } from '../../../src/physics/solve/fanno.ts';
import { gasAtStroke, gasThroughStroke, ratioThatLeaves, type VentedCavity } from '../../../src/physics/solve/vent-balance.ts';
import { massFlow, ventFlow } from '../../../src/physics/solve/vent-flow.ts';

const close = (a: number, b: number, within: number): void => expect(Math.abs(a / b - 1)).toBeLessThan(within);

describe('flow of a vent', () => {
  test('without friction it is that of a nozzle, which has a closed form', () => {
    const { choke, share } = ventFlow(0);
    close(choke, 1.2 ** 3.5, 1e-12);
    for (const ratio of [1.001, 1.05, 1.2, 1.5, 1.8, 1.89]) {
      const mach = Math.sqrt(5 * (ratio ** (1 / 3.5) - 1));
      close(share(ratio), massFlow(mach) / massFlow(1), 2e-5);
    }
  });

  test.each([0.5, 3, 5.45, 20])('with friction length %d it solves the Fanno equation, entry to exit', (length) => {
    const { choke, share } = ventFlow(length);
    // Backwards from an exit Mach number: the entry lies one friction length upstream, the ratio follows.
    for (const exit of [0.05, 0.2, 0.5, 0.8, 0.95]) {
      const entry = entryMach(fannoLength(exit) + length);
      const ratio = (1 + 0.2 * entry ** 2) ** 3.5 * (exit / entry) * Math.sqrt((1 + 0.2 * exit ** 2) / (1 + 0.2 * entry ** 2));
      expect(ratio).toBeLessThan(choke);
      expect(Math.abs(share(ratio) - massFlow(entry) / massFlow(entryMach(length)))).toBeLessThan(3e-5);
    }
  });

  test('it rises from rest to choked, and no further', () => {
    const { choke, share } = ventFlow(3);
    let last = 0;
    for (let ratio = 1.001; ratio < choke; ratio += 0.01) {
      expect(share(ratio)).toBeGreaterThan(last);
      last = share(ratio);
    }
    expect([share(0.5), share(1), share(choke), share(50)]).toEqual([0, 0, 1, 1]);
  });
});

/** Explicit Euler in time, with the mass as unknown and the Fanno equation solved at every step: another road to the same place. */
function euler({ areaRatio, frictionLength, backPressure }: VentedCavity, stroke: number, steps: number): { mass: number; pressure: number } {
  const choked = entryMach(frictionLength);
  const flowAt = (pressure: number): number => {
    const wanted = pressure / backPressure;
    if (wanted <= 1) return 0;
    let [low, high] = [1e-6, choked];
    for (let i = 0; i < 40; i += 1) {
      const entry = (low + high) / 2;
      const exit = entryMach(Math.max(0, fannoLength(entry) - frictionLength));
      const ratio = (1 + 0.2 * entry ** 2) ** 3.5 * (exit / entry) * Math.sqrt((1 + 0.2 * exit ** 2) / (1 + 0.2 * entry ** 2));
      if (ratio < wanted) low = entry;
      else high = entry;
    }
    return massFlow(low) / massFlow(choked);
  };
  let mass = 1;
  for (let i = 0; i < steps; i += 1) {
    const pressure = (mass / (1 - (stroke * i) / steps)) ** 1.4;
    mass -= (stroke / steps) * areaRatio * pressure ** (6 / 7) * flowAt(pressure);
  }
  return { mass, pressure: (mass / (1 - stroke)) ** 1.4 };
}

describe('gas through the stroke', () => {
  test.each([
    [0.5, 3, 1],
    [1, 3, 1],
    [1.5, 5.45, 1],
    [0.9, 1, 0.4],
  ])('area %d times the critical, friction length %d, %d behind: agrees with small steps of the mass in time', (areaRatio, frictionLength, backPressure) => {
    const cavity = { areaRatio, frictionLength, backPressure };
    const state = gasAtStroke(cavity, 0.9);
    const check = euler(cavity, 0.9, 4000);
    close(state.pressure, check.pressure, 3e-3);
    close(state.density * 0.1, check.mass, 2e-3);
  });

  test('choked throughout it is the closed form', () => {
    for (const areaRatio of [0.3, 0.8, 1, 1.5, 3]) {
      const density = (1 + areaRatio * (0.1 ** -0.2 - 1)) ** -5 / 0.1;
      close(gasAtStroke({ areaRatio, frictionLength: 3, backPressure: 0 }, 0.9).density, density, 1e-4);
    }
  });

  test('without a vent no gas is lost', () => {
    for (const state of gasThroughStroke({ areaRatio: 0, frictionLength: 3, backPressure: 1 }, 0.95)) close(state.density * (1 - state.stroke), 1, 1e-4);
  });

  test('a very large vent keeps the outside pressure: 1 into the air, next to nothing into an empty tank', () => {
    expect(Math.abs(gasAtStroke({ areaRatio: 50, frictionLength: 3, backPressure: 1 }, 0.9).pressure - 1)).toBeLessThan(2e-4);
    expect(gasAtStroke({ areaRatio: 50, frictionLength: 3, backPressure: 0 }, 0.9).pressure).toBeLessThan(1e-6);
    close(gasAtStroke({ areaRatio: 50, frictionLength: 3, backPressure: 0.4 }, 0.9).pressure, 0.4, 1e-3);
  });

  test('more area settles: above 1.2 times the critical area the pressure stops rising, at half of it it does not', () => {
    const rise = (areaRatio: number): number => {
      const states = gasThroughStroke({ areaRatio, frictionLength: 3, backPressure: 1 }, 0.9);
      return (states.at(-1)?.pressure ?? 0) / (states.find((state) => state.stroke > 0.75)?.pressure ?? 0);
    };
    expect(rise(1.5)).toBeLessThan(1.01);
    expect(rise(0.5)).toBeGreaterThan(1.5);
  });

  test('states run from the start to the stroke asked for', () => {
    const states = gasThroughStroke({ areaRatio: 1, frictionLength: 3, backPressure: 1 }, 0.9);
    expect(states[0]).toEqual({ stroke: 0, density: 1, pressure: 1 });
    expect(states.at(-1)?.stroke).toBe(0.9);
    expect(states.every((state, i) => i === 0 || state.stroke > (states[i - 1]?.stroke ?? 1))).toBe(true);
  });

  test('the inverse finds the area, and refuses what no area gives', () => {
    for (const areaRatio of [0.4, 1, 2.3]) {
      const { pressure } = gasAtStroke({ areaRatio, frictionLength: 5, backPressure: 1 }, 0.9);
      close(ratioThatLeaves(pressure, { frictionLength: 5, backPressure: 1 }, 0.9), areaRatio, 1e-4);
    }
    expect(() => ratioThatLeaves(0.9, { frictionLength: 5, backPressure: 1 }, 0.9)).toThrow(RangeError);
    expect(() => gasThroughStroke({ areaRatio: 1, frictionLength: 3, backPressure: 1 }, 1)).toThrow(RangeError);
  });
});
