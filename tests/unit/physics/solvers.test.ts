import { describe, expect, it } from 'vitest';
import { erf } from '../../../src/physics/solve/erf.ts';
import { entryMach, fannoLength } from '../../../src/physics/solve/fanno.ts';
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
