import { describe, expect, it } from 'vitest';
import { gasAtStroke, gasThroughStroke, ratioThatLeaves } from '../../../src/physics/solve/vent-balance.ts';
import { massFlow, ventFlow } from '../../../src/physics/solve/vent-flow.ts';

describe('flow through a vent', () => {
  it('without friction chokes at the critical ratio of air, 1.2^3.5 = 1.8929', () => {
    expect(ventFlow(0).choke).toBeCloseTo(1.8929, 4);
    expect(massFlow(1)).toBeCloseTo(1 / 1.728, 12);
  });
  it.each([1.02, 1.1, 1.3, 1.6, 1.85])('without friction is that of an ideal nozzle at %s times the outside pressure', (ratio) => {
    // Isentropic: M^2 = 5 (ratio^(2/7) - 1), mass flow as M / (1 + M^2/5)^3 of the choked 1 / 1.2^3.
    const square = 5 * (ratio ** (2 / 7) - 1);
    const share = (Math.sqrt(square) / (1 + square / 5) ** 3) * 1.728;
    expect(Math.abs(ventFlow(0).share(ratio) - share)).toBeLessThan(2e-4);
  });
  it.each([0, 1, 3, 20])('with friction %s is nothing without excess pressure, full from choking on, and rises between', (friction) => {
    const flow = ventFlow(friction);
    expect([flow.share(0.5), flow.share(1), flow.share(flow.choke), flow.share(50)]).toEqual([0, 0, 1, 1]);
    const shares = Array.from({ length: 30 }, (_, i) => flow.share(1 + ((flow.choke - 1) * (i + 1)) / 31));
    for (const [i, share] of shares.entries()) {
      expect(share).toBeGreaterThan(shares[i - 1] ?? 0);
      expect(share).toBeLessThan(1.0001);
    }
  });
  it('needs more pressure to choke the longer the duct, and is worked once for each', () => {
    const chokes = [0, 0.5, 1, 3, 10].map((friction) => ventFlow(friction).choke);
    expect([...chokes].sort((a, b) => a - b)).toEqual(chokes);
    expect(ventFlow(3)).toBe(ventFlow(3));
  });
});

describe('gas in the cavity', () => {
  const closed = { areaRatio: 0, frictionLength: 3, backPressure: 1 };

  it('of a closed cavity is compressed without loss of heat', () => {
    for (const { stroke, density, pressure } of gasThroughStroke(closed, 0.9)) {
      expect(Math.abs(density * (1 - stroke) - 1)).toBeLessThan(1e-4);
      expect(Math.abs(pressure * (1 - stroke) ** 1.4 - 1)).toBeLessThan(2e-4);
    }
  });

  // Into a vacuum the vent is choked throughout. With u = d^-0.2 the balance dd/ds = d - r d^1.2 is linear: u = r + (1 - r) e^(-0.2 s).
  it.each([
    [0.5, 0.5],
    [0.5, 0.9],
    [1, 0.9],
    [2, 0.5],
    [2, 0.9],
  ])('that leaves through a choked vent of %s times the critical area follows the closed form at stroke %s', (areaRatio, stroke) => {
    const state = gasAtStroke({ areaRatio, frictionLength: 3, backPressure: 0 }, stroke);
    const density = (areaRatio + (1 - areaRatio) * (1 - stroke) ** 0.2) ** -5;
    expect(Math.abs(state.density / density - 1)).toBeLessThan(1e-4);
    expect(Math.abs(state.pressure / density ** 1.4 - 1)).toBeLessThan(2e-4);
    expect(state.stroke).toBe(stroke);
  });

  it('begins as it was, and takes as many steps as asked, more for large vents', () => {
    const states = gasThroughStroke(closed, 0.9, 8);
    expect(states[0]).toEqual({ stroke: 0, density: 1, pressure: 1 });
    expect(states).toHaveLength(9);
    expect(gasThroughStroke({ ...closed, areaRatio: 3 }, 0.9, 8)).toHaveLength(8 + 4 * 9 + 1);
    // Steps are equal in the root of s = -ln(1 - stroke): halfway is a quarter of s.
    expect(states[4]?.stroke).toBeCloseTo(1 - 0.1 ** 0.25, 12);
  });

  it.each([0, 1, -0.1, 1.5, Number.NaN])('is not worked at a stroke of %s', (stroke) => {
    expect(() => gasThroughStroke(closed, stroke)).toThrow('a stroke lies between 0 and 1');
  });
  it('has no area or pressure below 0', () => {
    expect(() => gasThroughStroke({ ...closed, areaRatio: -0.1 }, 0.5)).toThrow(RangeError);
    expect(() => gasThroughStroke({ ...closed, backPressure: -0.1 }, 0.5)).toThrow(RangeError);
    expect(() => gasThroughStroke({ ...closed, areaRatio: 0, backPressure: 0 }, 0.5)).not.toThrow();
  });
});

describe('the vent for a pressure', () => {
  it.each([1.2, 2, 5, 20])('leaves %s times the pressure at the start', (pressure) => {
    const vent = { frictionLength: 3, backPressure: 1 };
    const areaRatio = ratioThatLeaves(pressure, vent, 0.9);
    expect(Math.abs(gasAtStroke({ ...vent, areaRatio }, 0.9).pressure / pressure - 1)).toBeLessThan(1e-4);
  });
  it('is found beyond the first bracket, and not where none leaves that little', () => {
    expect(ratioThatLeaves(1.02, { frictionLength: 3, backPressure: 1 }, 0.9)).toBeGreaterThan(2);
    expect(() => ratioThatLeaves(30, { frictionLength: 3, backPressure: 1 }, 0.9)).toThrow(RangeError);
    expect(() => ratioThatLeaves(0.9, { frictionLength: 3, backPressure: 1 }, 0.5)).toThrow(RangeError);
  });
});
