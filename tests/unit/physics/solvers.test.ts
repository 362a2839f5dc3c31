import { describe, expect, it } from 'vitest';
import { erf } from '../../../src/physics/solve/erf.ts';
import { entryMach, fannoLength } from '../../../src/physics/solve/fanno.ts';
import { HeatContent } from '../../../src/physics/solve/heat-content.ts';
import { bracketedRoot } from '../../../src/physics/solve/root.ts';
import { segmentAngle, segmentShare } from '../../../src/physics/solve/segment.ts';

describe('a root between two ends', () => {
  it.each([
    ['cube', (x: number) => x ** 3 - 2, 0, 2, Math.cbrt(2)],
    ['falling', (x: number) => 2 - x ** 3, 0, 2, Math.cbrt(2)],
    ['cosine', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['below zero', (x: number) => x + Math.exp(x), -1, 0, -0.5671432904097838],
    ['ends the other way round', (x: number) => x - 0.3, 1, 0, 0.3],
    ['steep at one end', (x: number) => x ** 9 - 1e-9, 0, 10, 0.1],
    ['a step', (x: number) => (x < 0.3 ? -1 : 2), 0, 1, 0.3],
  ] as const)('%s', (_, f, low, high, root) => {
    expect(Math.abs(bracketedRoot(f, low, high) - root)).toBeLessThan(1e-12);
  });
  it('may be an end itself, which costs no step', () => {
    let calls = 0;
    const counted = (x: number): number => {
      calls += 1;
      return x - 1;
    };
    expect([bracketedRoot(counted, 1, 3), bracketedRoot(counted, -2, 1)]).toEqual([1, 1]);
    expect(calls).toBe(4);
  });
  it('is refused without a change of sign, and where the function is no number', () => {
    expect(() => bracketedRoot((x) => x * x + 1, -1, 1)).toThrow('no change of sign between -1 and 1');
    expect(() => bracketedRoot((x) => -x - 5, -1, 1)).toThrow(RangeError);
    expect(() => bracketedRoot(() => Number.NaN, -1, 1)).toThrow(RangeError);
  });
  it('needs fewer steps for a wider tolerance, and few for a smooth function', () => {
    const callsFor = (tolerance?: number): number => {
      let calls = 0;
      const counted = (x: number): number => {
        calls += 1;
        return Math.exp(x) - 5;
      };
      bracketedRoot(counted, 0, 10, tolerance);
      return calls;
    };
    expect(callsFor(0.01)).toBeLessThan(callsFor());
    expect(callsFor()).toBeLessThan(30);
  });
});

describe('the way of the root finder', () => {
  // C. J. F. Ridders, IEEE Trans. Circuits Syst. 26 (1979), 979-980: the midpoint, then the point that an exponential through three
  // gives, and the tightest pair that holds the zero. Worked step by step outside of this program, printed to nine decimals; the first
  // point of the cubic by hand: 2.5 - 0.5 * 5.625 / sqrt(5.625^2 + 16).
  it.each([
    [
      'x^3 - 2x - 5',
      (x: number) => x ** 3 - 2 * x - 5,
      [2, 3, 2.5, 2.092522338, 2.296261169, 2.094540949, 2.195401059, 2.094551467, 2.144976263, 2.094551482, 2.119763872, 2.094551482],
    ],
    [
      'cos x - x, falling',
      (x: number) => Math.cos(x) - x,
      [0, 1, 0.5, 0.743269497, 0.621634748, 0.73909585, 0.680365299, 0.73908514, 0.70972522, 0.739085133, 0.724405176, 0.739085133],
    ],
    [
      'exp x - 3, of which the zero lies between midpoint and new point',
      (x: number) => Math.exp(x) - 3,
      [-3, 4, 0.5, 0.881048312, 2.440524156, 1.132291868, 1.00667009, 1.098584228, 1.115438048, 1.098612289, 1.098598258, 1.098612289],
    ],
    [
      '1/x - 3, steep at one end',
      (x: number) => 1 / x - 3,
      [
        0.1, 2, 1.05, 0.632347079, 0.36617354, 0.343529686, 0.221764843, 0.329659692, 0.336594689, 0.333333873, 0.331496782, 0.333333333, 0.333333603,
        0.333333333,
      ],
    ],
  ] as const)('%s', (_, f, points) => {
    const seen: number[] = [];
    const noted = (x: number): number => {
      seen.push(x);
      return f(x);
    };
    const root = bracketedRoot(noted, points[0], points[1], 1e-9);
    expect(seen.length).toBe(points.length);
    for (const [i, point] of points.entries()) expect(Math.abs((seen[i] as number) - point), `point ${i}`).toBeLessThan(6e-10);
    expect(root).toBe(seen.at(-1));
  });
  it('ends where a point happens to be the zero', () => {
    let calls = 0;
    const odd = (x: number): number => {
      calls += 1;
      return x ** 3;
    };
    // The midpoint of -1 and 1, and by symmetry the new point of an exponential curve.
    expect([bracketedRoot(odd, -1, 1), calls]).toEqual([0, 3]);
    calls = 0;
    const straight = (x: number): number => {
      calls += 1;
      return x - 1;
    };
    expect([bracketedRoot(straight, 0, 3), calls]).toEqual([1, 4]);
  });
});

describe('heat in the metal over its temperature', () => {
  // Silumin-like: solid below 540 degC, liquid above 595 degC; 451 kJ/kg spread evenly between, by hand.
  const metal = { density: 2710, conductivity: 96, liquidHeat: 1177, solidHeat: 963, latent: 451e3, liquidus: 595, solidus: 540 };
  const content = new HeatContent(metal);
  it.each([
    [440, -96300, 0],
    [540, 0, 0],
    [567.5, 27.5 * 963 + 225500, 0.5],
    [595, 55 * 963 + 451000, 1],
    [645, 55 * 963 + 451000 + 50 * 1177, 1],
  ])('at %s degC it is %s J/kg', (temperature, heat, molten) => {
    expect(content.at(temperature)).toBeCloseTo(heat, 6);
    expect(content.temperature(heat)).toBeCloseTo(temperature, 9);
    expect(1 - content.solidShare(heat)).toBeCloseTo(molten, 12);
  });
  it.each([-50e3, 250e3, 600e3])('a little more heat at %s J/kg warms it by the slope', (heat) => {
    expect(content.slope(heat)).toBeCloseTo((content.temperature(heat + 1) - content.temperature(heat - 1)) / 2, 9);
  });
  it('a pure metal freezes over 0.05 K', () => {
    const pure = new HeatContent({ ...metal, solidus: 595 });
    expect(pure.temperature(0)).toBeCloseTo(594.95, 9);
    expect(pure.at(595)).toBeCloseTo(451000 + 0.05 * 963, 6);
  });
});

describe('the error function', () => {
  // Abramowitz and Stegun, table 7.1, ten digits; the last from 1 - erfc(3).
  it.each([
    [0, 0],
    [0.1, 0.112462916],
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [2, 0.995322265],
    [3, 0.9999779095],
  ])('of %s is %s', (x, value) => {
    expect(Math.abs(erf(x) - value)).toBeLessThan(1e-10);
  });
  it('is 1 far out', () => {
    expect(erf(6)).toBe(1);
    expect(erf(1e9)).toBe(1);
    expect(Math.abs(erf(5.999) - 1)).toBeLessThan(1e-14);
  });
});

describe('Fanno flow of air', () => {
  // The printed tables for k = 1.4, remembered; each worked again by hand from the closed form.
  it.each([
    [1, 0],
    [0.8, 0.07229],
    [0.5, 1.06906],
    [0.2, 14.5333],
    [0.1, 66.9216],
  ])('at Mach %s a duct chokes at a friction length of %s', (mach, length) => {
    expect(Math.abs(fannoLength(mach) - length)).toBeLessThanOrEqual(1e-5 * Math.max(1, length));
    expect(Math.abs(entryMach(length) - mach)).toBeLessThan(1e-4);
  });
  it('is inverted to the last digits, for ducts so short that differences vanish too', () => {
    for (const mach of [0.02, 0.3, 0.6, 0.9, 0.99]) expect(Math.abs(entryMach(fannoLength(mach)) / mach - 1)).toBeLessThan(1e-9);
    // Where the two ways of working meet, 1e-8 of q, the Mach number does not jump: 1 - M goes as the root of the length.
    const meeting = 1e-8 / (7 / 6);
    const gap = (length: number): number => (1 - entryMach(length)) / Math.sqrt(length);
    expect(Math.abs(gap(meeting * 0.999) / gap(meeting * 1.001) - 1)).toBeLessThan(1e-4);
    expect(entryMach(0)).toBe(1);
  });
  it('has no friction below 0', () => {
    expect(() => entryMach(-1e-9)).toThrow('a friction length is 0 or more');
    expect(() => entryMach(Number.NaN)).toThrow(RangeError);
  });
});

describe('a segment of a circle', () => {
  it('covers half at half round, and (pi/2 - 1)/2pi at a quarter', () => {
    expect(segmentShare(Math.PI)).toBeCloseTo(0.5, 14);
    expect(segmentShare(Math.PI / 2)).toBeCloseTo(0.0908450569, 9);
    expect([segmentAngle(0), segmentAngle(1)]).toEqual([0, 2 * Math.PI]);
    expect(segmentAngle(0.0908450569)).toBeCloseTo(Math.PI / 2, 8);
    expect(segmentAngle(0.9091549431)).toBeCloseTo(1.5 * Math.PI, 8);
  });
  it('covers no share outside 0 to 1', () => {
    expect(() => segmentAngle(-0.01)).toThrow(RangeError);
    expect(() => segmentAngle(1.01)).toThrow(RangeError);
  });
});
