import { describe, expect, it } from 'vitest';
import { calc, forAll } from './calc.ts';

const same = (a: number, b: number, within = 1e-10): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(within * Math.max(Math.abs(a), Math.abs(b)));
const MODULUS: readonly [number, number] = [25, 90];
const EXPANSION: readonly [number, number] = [18, 28];
const DROP: readonly [number, number] = [1, 400];
const WALL: readonly [number, number] = [0.8, 8];
const DIAMETER: readonly [number, number] = [3, 400];
const YIELD: readonly [number, number] = [8, 150];
const grip = (modulus: number, expansion: number, temperature_drop: number, wall: number, core_diameter: number, hot_yield: number) => ({
  modulus,
  expansion,
  temperature_drop,
  wall,
  core_diameter,
  poisson: 0.33,
  hot_yield,
});

describe('grip of the casting on a core', () => {
  it('rises with the wall and the cooling, and is capped by the yield strength', () => {
    forAll([MODULUS, EXPANSION, DROP, WALL, DIAMETER, YIELD], (modulus, expansion, drop, wall, diameter, hot_yield) => {
      const x = grip(modulus, expansion, drop, wall, diameter, hot_yield);
      for (const id of ['ejection.contact-pressure', 'ejection.boss-pressure']) {
        const p = calc(id, x);
        expect(p).toBeGreaterThan(0);
        expect(calc(id, { ...x, wall: 1.2 * x.wall })).toBeGreaterThan(p);
        expect(calc(id, { ...x, temperature_drop: 2 * x.temperature_drop })).toBeGreaterThanOrEqual(p);
        expect(calc(id, { ...x, hot_yield: 2 * x.hot_yield })).toBeGreaterThanOrEqual(p);
        expect(p).toBeLessThanOrEqual(((2 * x.wall) / x.core_diameter) * x.hot_yield * (1 + 1e-12));
        expect(calc(id, { ...x, temperature_drop: 0 })).toBe(0);
      }
    });
  });
  it('a thick ring yields at less than a thin one of the same wall, and at the same where the wall is thin', () => {
    forAll([MODULUS, EXPANSION, WALL, YIELD], (modulus, expansion, wall, hot_yield) => {
      const x = grip(modulus, expansion, 1e6, wall, 8, hot_yield);
      expect(calc('ejection.boss-pressure', x)).toBeLessThan(calc('ejection.contact-pressure', x));
      const wide = { ...x, core_diameter: 1e5 * wall };
      same(calc('ejection.boss-pressure', wide), calc('ejection.contact-pressure', wide), 1e-4);
    });
  });
  it('without yielding, the elastic pressure is the stress around the core in the balance of a ring', () => {
    forAll([MODULUS, EXPANSION, DROP, WALL, DIAMETER], (modulus, expansion, drop, wall, diameter) => {
      const x = grip(modulus, expansion, drop, wall, diameter, 1e9);
      same((calc('ejection.contact-pressure', x) * x.core_diameter) / (2 * x.wall), calc('ejection.hoop-stress', x));
    });
  });
  it('a wall stretched around a core presses in sum the same, whatever the outline', () => {
    forAll([MODULUS, EXPANSION, DROP, WALL, [20, 2000], YIELD, [5, 120]], (modulus, expansion, drop, wall, outline, hot_yield, height) => {
      const sum = (u: number): number => {
        const core_diameter = calc('ejection.core-diameter', { outline: u });
        const p = calc('ejection.contact-pressure', grip(modulus, expansion, drop, wall, core_diameter, hot_yield));
        return p * calc('ejection.face-area', { outline: u, height });
      };
      same(sum(outline), sum(3 * outline));
    });
  });
  it('a floor adds no more than all its pull, in proportion to how far it is closed, and nothing beside a core without height', () => {
    forAll(
      [MODULUS, EXPANSION, DROP, WALL, [5, 120], [40, 2000], YIELD, [0.1, 0.4]],
      (modulus, expansion, drop, wall, height, outline, hot_yield, friction) => {
        const { core_diameter: _, ...metal } = grip(modulus, expansion, drop, wall, 0, hot_yield);
        const x = { ...metal, height, outline, closed: 80, share: 0.5, friction, draft: 1 };
        const force = calc('ejection.floor-force', x);
        expect(force).toBeLessThanOrEqual((0.4 * friction * hot_yield * wall * outline) / 1000);
        same(calc('ejection.floor-force', { ...x, closed: 40 }), force / 2);
        same(calc('ejection.floor-force', { ...x, outline: 2 * outline }), 2 * force);
        expect(calc('ejection.floor-force', { ...x, draft: 2 })).toBeLessThan(force);
        expect(calc('ejection.floor-force', { ...x, height: 0 })).toBe(0);
        expect(calc('ejection.floor-force', { ...x, share: 0 })).toBe(0);
      },
    );
  });
  it('a core that cools as well takes from the cooling that counts, one that warms adds', () => {
    forAll([[150, 500], EXPANSION, [1, 80]], (eject_temperature, expansion, change) => {
      const x = { coherent_temperature: eject_temperature + 120, eject_temperature, expansion };
      const drop = calc('ejection.temperature-drop', x);
      expect(calc('ejection.temperature-drop', { ...x, die_change: change })).toBeLessThan(drop);
      expect(calc('ejection.temperature-drop', { ...x, die_change: -change })).toBeGreaterThan(drop);
    });
  });
});

describe('force to draw the casting off', () => {
  it('falls with draft, rises with friction, follows pressure and surface, and is none without contact', () => {
    forAll(
      [
        [0.5, 40],
        [1, 2000],
        [0.1, 0.4],
        [0, 4],
      ],
      (contact_pressure, contact_area, friction, draft) => {
        const x = { contact_pressure, contact_area, friction, draft };
        const force = calc('ejection.force', x);
        expect(force).toBeGreaterThan(0);
        expect(calc('ejection.force', { ...x, draft: draft + 0.5 })).toBeLessThan(force);
        expect(calc('ejection.force', { ...x, friction: friction + 0.05 })).toBeGreaterThan(force);
        same(calc('ejection.force', { ...x, contact_area: 2 * contact_area }), 2 * force);
        same(calc('ejection.force', { ...x, contact_pressure: 2 * contact_pressure }), 2 * force);
        expect(calc('ejection.force', { ...x, contact_area: 0 })).toBe(0);
        expect(calc('ejection.force', { ...x, contact_pressure: 0 })).toBe(0);
        same(calc('ejection.force', { ...x, draft: 0 }), (friction * contact_pressure * contact_area) / 10);
      },
    );
  });
  it('lasts the shorter the more draft there is, and never beyond the height of the core', () => {
    forAll([[0.5, 40], DIAMETER, WALL, MODULUS, [0.2, 4], [2, 120]], (contact_pressure, core_diameter, wall, modulus, draft, height) => {
      const x = { contact_pressure, core_diameter, wall, modulus, draft, height };
      const travel = calc('ejection.release-travel', x);
      expect(travel).toBeLessThanOrEqual(height);
      expect(calc('ejection.release-travel', { ...x, draft: 2 * draft })).toBeLessThanOrEqual(travel);
      expect(calc('ejection.release-travel', { ...x, draft: 0 })).toBe(height);
    });
  });
});

/**
 * Buckling load of a bar of length 1 and stiffness 1 by integrating w'''' + P w'' = 0 from a clamped end and looking for
 * the load at which the other end's conditions can be met; Runge and Kutta's steps, no closed form.
 */
function integratedLoad(far: 'clamped' | 'pinned'): number {
  const end = (load: number, start: readonly number[]): number[] => {
    const slope = (y: readonly number[]): number[] => [y[1] as number, y[2] as number, y[3] as number, -load * (y[2] as number)];
    const plus = (y: readonly number[], k: readonly number[], h: number): number[] => y.map((v, i) => v + h * (k[i] as number));
    let y = [...start];
    const steps = 400;
    const h = 1 / steps;
    for (let i = 0; i < steps; i += 1) {
      const a = slope(y);
      const b = slope(plus(y, a, h / 2));
      const c = slope(plus(y, b, h / 2));
      const d = slope(plus(y, c, h));
      y = y.map((v, j) => v + (h / 6) * ((a[j] as number) + 2 * (b[j] as number) + 2 * (c[j] as number) + (d[j] as number)));
    }
    return y;
  };
  const mismatch = (load: number): number => {
    const [p, q] = [end(load, [0, 0, 1, 0]), end(load, [0, 0, 0, 1])];
    const second = far === 'clamped' ? 1 : 2;
    return (p[0] as number) * (q[second] as number) - (q[0] as number) * (p[second] as number);
  };
  let [low, high] = [1, 1];
  while (mismatch(low) * mismatch(high) > 0) high += 0.5;
  low = high - 0.5;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (mismatch(low) * mismatch(middle) <= 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

describe('pins', () => {
  const PIN: readonly (readonly [number, number])[] = [
    [2, 16],
    [40, 400],
    [180, 215],
    [0.5, 1],
  ];
  it('Euler in the form of a stress over the square of the slenderness', () => {
    forAll(PIN, (diameter, length, modulus, end_factor) => {
      const slenderness = end_factor * calc('ejection.pin-slenderness', { length, diameter });
      const stress = (Math.PI ** 2 * modulus * 1000) / slenderness ** 2;
      same(calc('ejection.pin-buckling-force', { diameter, length, modulus, end_factor }), (stress * Math.PI * diameter ** 2) / 4 / 1000);
    });
  });
  it.each([
    ['guided at both ends', 0.5, 'clamped', 1e-6],
    ['one end free to tilt', 0.7, 'pinned', 0.003],
  ] as const)('%s: the factor %d is that of an integrated bar', (_, end_factor, far, within) => {
    const [diameter, length, modulus] = [6, 150, 200];
    const stiffness = (modulus * Math.PI * diameter ** 4) / 64 / length ** 2;
    same(calc('ejection.pin-buckling-force', { diameter, length, modulus, end_factor }), integratedLoad(far) * stiffness, within);
  });
  it('the diameter that just buckles buckles at that force', () => {
    forAll([[0.05, 20], ...PIN.slice(1)], (force, length, modulus, end_factor) => {
      const diameter = calc('ejection.pin-buckling-diameter', { force, length, modulus, end_factor });
      same(calc('ejection.pin-buckling-force', { diameter, length, modulus, end_factor }), force);
    });
  });
  it('the printed heads of the published buckling table do not fit its loads', () => {
    const load = (inches: number): number =>
      calc('ejection.pin-buckling-force', { diameter: inches * 25.4, length: 3 * 25.4, modulus: 206.8427, end_factor: 0.5 }) / 0.0044482216;
    expect(Math.round(load(5 / 64))).toBe(241);
    expect(Math.round(load(1 / 16))).toBe(99);
  });
  it('so many pins do not press in, and one less would', () => {
    forAll(
      [
        [0.5, 200],
        [30, 60],
        [3, 12],
      ],
      (force, pressure, diameter) => {
        const pins = calc('ejection.pins-by-force', { force, pressure, diameter });
        expect(calc('ejection.pin-pressure', { force, pins, diameter })).toBeLessThanOrEqual(pressure * (1 + 1e-8));
        if (pins > 1) expect(calc('ejection.pin-pressure', { force, pins: pins - 1, diameter })).toBeGreaterThan(pressure);
        same(calc('ejection.pin-pressure', { force, pins, diameter: calc('ejection.pin-pressure-diameter', { force, pins, pressure }) }), pressure);
      },
    );
  });
});
