import { describe, expect, it } from 'vitest';
import { calc, forAll } from './calc.ts';

const RESIDUAL = 'vent.residual-pressure';

describe('gas in the cavity', () => {
  it('the residual pressure falls with the vent area, and rises with friction and with the pressure behind the vent', () => {
    forAll(
      [
        [0.2, 3],
        [0.1, 15],
        [0.1, 0.9],
      ],
      (area_ratio, friction_length, back_pressure) => {
        const x = { area_ratio, friction_length, back_pressure };
        const pressure = calc(RESIDUAL, x);
        expect(calc(RESIDUAL, { ...x, area_ratio: 1.1 * area_ratio })).toBeLessThan(pressure);
        expect(calc(RESIDUAL, { ...x, back_pressure: back_pressure + 0.1 })).toBeGreaterThanOrEqual(pressure * (1 - 1e-5));
        expect(calc(RESIDUAL, { ...x, friction_length: 1.2 * friction_length })).toBeGreaterThanOrEqual(pressure * (1 - 1e-4));
      },
    );
  });
  it('it lies between the pressure behind the vent and that of a closed cavity, and above the vent choked throughout', () => {
    forAll(
      [
        [0.05, 4],
        [0.1, 0.95],
        [0, 1],
      ],
      (area_ratio, stroke, back_pressure) => {
        const pressure = calc(RESIDUAL, { area_ratio, stroke, back_pressure });
        expect(pressure).toBeLessThanOrEqual((1 - stroke) ** -1.4 * (1 + 1e-6));
        expect(pressure).toBeGreaterThanOrEqual(calc('vent.residual-pressure-choked', { area_ratio, stroke }) * (1 - 1e-4));
        if (back_pressure === 1) expect(pressure).toBeGreaterThanOrEqual(1);
      },
    );
  });
  it('the area for a pressure leaves that pressure', () => {
    forAll(
      [
        [1.1, 8],
        [0.2, 15],
      ],
      (pressure, friction_length) => {
        const area_ratio = calc('vent.ratio-for-pressure', { pressure, friction_length });
        expect(Math.abs(calc(RESIDUAL, { area_ratio, friction_length }) / pressure - 1)).toBeLessThan(1e-4);
      },
    );
  });
  it('a tank of the least volume holds the gas at the pressure wanted', () => {
    forAll(
      [
        [100, 50000],
        [30, 300],
      ],
      (gas_volume, end) => {
        const tank = calc('vent.tank-volume', { gas_volume, start: 1013, end });
        expect(Math.abs(1013 * gas_volume - end * (gas_volume + 1000 * tank))).toBeLessThan(1e-6 * 1013 * gas_volume);
      },
    );
  });
});

describe('gas and shrinkage in the casting', () => {
  it('pores by content and pores by volume are the same gas', () => {
    forAll(
      [
        [10, 3000],
        [20, 1013],
        [5, 100],
        [10, 120],
      ],
      (gas_volume, pressure, trapped, metal_pressure) => {
        const metal = { density: 2.7, temperature: 540 };
        const mass = 1.3;
        const content = calc('porosity.gas-content', { gas_volume, pressure, temperature: 26.85, trapped, mass });
        const share = calc('porosity.gas-share', { content, ...metal, pressure: metal_pressure });
        const volume = calc('porosity.gas-volume', {
          gas_volume,
          gas_pressure: pressure,
          gas_temperature: 26.85,
          metal_pressure,
          metal_temperature: metal.temperature,
          trapped,
        });
        expect(Math.abs(share / ((100 * volume) / ((1000 * mass) / metal.density)) - 1)).toBeLessThan(1e-9);
      },
    );
  });
  it('trapped gas takes less room under more pressure, and less of it is trapped under vacuum', () => {
    forAll(
      [
        [1, 40],
        [10, 100],
      ],
      (content, pressure) => {
        const x = { content, density: 2.7, pressure, temperature: 540 };
        expect(calc('porosity.gas-share', { ...x, pressure: 1.1 * pressure })).toBeLessThan(calc('porosity.gas-share', x));
      },
    );
  });
  it('a thicker gate feeds more, a thicker wall is fed less, and no more than all is fed', () => {
    forAll(
      [
        [0.3, 4],
        [0.8, 12],
      ],
      (gate_thickness, wall) => {
        const fed = calc('porosity.fed-share', { gate_thickness, wall });
        expect(fed).toBeLessThanOrEqual(100);
        expect(calc('porosity.fed-share', { gate_thickness: 1.1 * gate_thickness, wall })).toBeGreaterThanOrEqual(fed);
        expect(calc('porosity.fed-share', { gate_thickness, wall: 1.1 * wall })).toBeLessThanOrEqual(fed);
        expect(calc('porosity.fed-share', { gate_thickness, wall, lead: 2 })).toBeGreaterThanOrEqual(fed);
      },
    );
  });
});

describe('runner', () => {
  it('grows towards the feeder at every stage and split', () => {
    forAll(
      [
        [10, 5000],
        [5, 40],
        [1, 20],
      ],
      (area, fall, loss) => {
        expect(calc('runner.stage-area', { area, fall })).toBeGreaterThan(area);
        expect(calc('runner.parent-area', { branches: 2, area, loss })).toBeGreaterThan(2 * area);
      },
    );
  });
  it('along the gate the area falls evenly, and its mean times the length is the volume', () => {
    forAll(
      [
        [20, 2000],
        [20, 500],
        [0.1, 0.2],
      ],
      (start, length, end_share) => {
        const at = (position: number): number => calc('runner.taper-area', { start, length, position, end_share });
        const steps = 100;
        let volume = 0;
        for (let i = 0; i < steps; i += 1) {
          expect(at((length * (i + 1)) / steps)).toBeLessThan(at((length * i) / steps));
          volume += (at((length * (i + 0.5)) / steps) * length) / steps / 1000;
        }
        const end_area = calc('runner.taper-end', { start, end_share });
        expect(Math.abs(at(length) - end_area)).toBeLessThan(1e-9 * start);
        expect(Math.abs(calc('runner.segment-volume', { count: 1, start_area: start, end_area, length }) / volume - 1)).toBeLessThan(1e-9);
      },
    );
  });
  it('gates in proportion to their volumes fill in one time', () => {
    forAll(
      [
        [10, 80],
        [5, 100],
        [1, 500],
      ],
      (velocity, time, volume) => {
        const area = (calc('gate.area-for-volume', { velocity, time }) * volume) / 100;
        expect(Math.abs(calc('gate.area', { volume, velocity, time }) / area - 1)).toBeLessThan(1e-12);
      },
    );
  });
});
