import { describe, expect, it } from 'vitest';
import { calc, forAll } from './calc.ts';

/** Equal to about ten digits. */
const same = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-10 * Math.max(Math.abs(a), Math.abs(b)));

describe('product design', () => {
  it('draft distance grows with the root of the depth, the angle falls with it, outside faces take half of inside', () => {
    forAll(
      [
        [2.5, 30],
        [17, 60],
      ],
      (length, constant) => {
        same(calc('draft.taper', { length: 4 * length, constant }), 2 * calc('draft.taper', { length, constant }));
        same(calc('draft.angle', { length: 4 * length, constant }), calc('draft.angle', { length, constant }) / 2);
        same(calc('draft.angle', { length, constant: 2 * constant }), calc('draft.angle', { length, constant }) / 2);
        same(calc('draft.taper', { length, constant, factor: 0.8 }), 0.8 * calc('draft.taper', { length, constant }));
      },
    );
  });
  it('linear tolerance is the base up to one inch, never falls, and one inch more costs one step', () => {
    forAll(
      [
        [1, 500],
        [0.02, 0.5],
        [0, 0.15],
      ],
      (dimension, base, step) => {
        const tolerance = calc('tolerance.linear', { dimension, base, step });
        if (dimension <= 25.4) same(tolerance, base);
        else expect(Math.abs(calc('tolerance.linear', { dimension: dimension + 25.4, base, step }) - tolerance - step)).toBeLessThan(1e-12);
        expect(calc('tolerance.linear', { dimension: dimension + 1, base, step })).toBeGreaterThanOrEqual(tolerance);
      },
    );
  });
  it('the cavity is larger than the part, in proportion to it', () => {
    forAll(
      [
        [1, 1000],
        [0.1, 1.5],
      ],
      (dimension, allowance) => {
        const cavity = calc('shrink.cavity-dimension', { dimension, allowance });
        expect(cavity).toBeGreaterThan(dimension);
        same(calc('shrink.cavity-dimension', { dimension: 3 * dimension, allowance }), 3 * cavity);
      },
    );
  });
  it('shrink rises with the ejection temperature, falls with the die temperature, and is nil for equal materials and temperatures', () => {
    forAll(
      [
        [15, 35],
        [250, 550],
        [100, 240],
      ],
      (alloy_expansion, eject_temperature, die_temperature) => {
        const x = { alloy_expansion, steel_expansion: 12, eject_temperature, die_temperature };
        expect(calc('shrink.from-contraction', { ...x, eject_temperature: eject_temperature + 10 })).toBeGreaterThan(calc('shrink.from-contraction', x));
        expect(calc('shrink.from-contraction', { ...x, die_temperature: die_temperature + 5 })).toBeLessThan(calc('shrink.from-contraction', x));
        expect(Math.abs(calc('shrink.from-contraction', { ...x, steel_expansion: alloy_expansion, die_temperature: eject_temperature }))).toBeLessThan(1e-12);
      },
    );
  });
  it('pin length, opening travel and slide stroke are a right triangle', () => {
    forAll(
      [
        [1, 300],
        [10, 25],
      ],
      (stroke, angle) => {
        same(calc('slide.pin-length', { stroke, angle }) ** 2, stroke ** 2 + calc('slide.pin-engagement', { stroke, angle }) ** 2);
        expect(calc('slide.pin-engagement', { stroke, angle: angle + 1 })).toBeLessThan(calc('slide.pin-engagement', { stroke, angle }));
      },
    );
  });
  it('the tip radius of a rib touches both flanks and the top', () => {
    forAll(
      [
        [3, 12],
        [1, 25],
        [1.5, 3],
      ],
      (root_width, height, draft) => {
        const radius = calc('rib.tip-radius', { root_width, height, draft });
        const angle = (draft * Math.PI) / 180;
        // Circle on the axis, its top at the height of the rib; distance of its centre from the drafted flank.
        const up = height - radius;
        same((root_width / 2) * Math.cos(angle) - up * Math.sin(angle), radius);
      },
    );
  });
  it('a fillet lies between its walls and does not care which is which', () => {
    forAll(
      [
        [0.5, 10],
        [0.5, 10],
      ],
      (wall_a, wall_b) => {
        const radius = calc('fillet.least-radius', { wall_a, wall_b });
        expect(radius).toBeGreaterThanOrEqual(Math.min(wall_a, wall_b));
        expect(radius).toBeLessThanOrEqual(Math.max(wall_a, wall_b));
        same(radius, calc('fillet.least-radius', { wall_a: wall_b, wall_b: wall_a }));
      },
    );
  });
});

describe('clamp', () => {
  it('opening force is linear in pressure and in area', () => {
    forAll(
      [
        [1, 150],
        [1, 10000],
        [1, 5],
      ],
      (pressure, area, times) => {
        const force = calc('clamp.opening-force', { pressure, area });
        same(calc('clamp.opening-force', { pressure: times * pressure, area }), times * force);
        same(calc('clamp.opening-force', { pressure, area: times * area }), times * force);
      },
    );
  });
  it('friction at a slide lock only helps, down to nothing', () => {
    forAll(
      [
        [1, 100],
        [1, 500],
        [10, 30],
        [0.001, 1],
      ],
      (pressure, face_area, lock_angle, friction) => {
        const free = calc('clamp.slide-opening-force', { pressure, face_area, lock_angle });
        const held = calc('clamp.slide-opening-force', { pressure, face_area, lock_angle, friction });
        same(free, ((pressure * face_area) / 10) * Math.tan((lock_angle * Math.PI) / 180));
        expect(held).toBeLessThan(free);
        expect(held).toBeGreaterThanOrEqual(0);
      },
    );
  });
  it('the usable force loads the worst bar with a quarter of the rating; off centre is never better', () => {
    forAll(
      [
        [500, 40000],
        [200, 1000],
        [200, 1000],
        [-90, 90],
        [-90, 90],
      ],
      (rated, half_span_x, half_span_y, offset_x, offset_y) => {
        const platen = { half_span_x, half_span_y, offset_x, offset_y };
        const usable = calc('clamp.off-centre-capacity', { rated, ...platen });
        same(calc('clamp.tie-bar-load', { force: usable, ...platen }), rated / 4);
        expect(usable).toBeLessThanOrEqual(rated);
        same(usable, calc('clamp.off-centre-capacity', { rated, ...platen, offset_x: -offset_x, offset_y: -offset_y }));
      },
    );
  });
  it('projected area adds up: two cavities are two castings with their shares and one biscuit', () => {
    forAll(
      [
        [1, 1000],
        [0, 100],
        [0, 100],
        [0, 200],
      ],
      (casting_area, runner_share, overflow_share, biscuit_diameter) => {
        const area = (cavities: number, diameter: number): number =>
          calc('clamp.projected-area-total', { casting_area, cavities, runner_share, overflow_share, biscuit_diameter: diameter });
        same(area(2, biscuit_diameter), 2 * area(1, 0) + area(1, biscuit_diameter) - area(1, 0));
      },
    );
  });
});

describe('fill and gate', () => {
  it('longest fill time is linear in the wall and rises with gate and die temperature and with the solids allowed', () => {
    forAll(
      [
        [0.5, 3],
        [600, 700],
        [150, 300],
        [5, 40],
      ],
      (wall, gate_temperature, die_temperature, solids) => {
        const x = { k: 0.0346, wall, gate_temperature, flow_temperature: 570, die_temperature, solids, conversion: 4.8 };
        const time = calc('fill.longest-time', x);
        same(calc('fill.longest-time', { ...x, wall: 2 * wall }), 2 * time);
        for (const more of ['gate_temperature', 'die_temperature', 'solids'] as const)
          expect(calc('fill.longest-time', { ...x, [more]: x[more] + 1 })).toBeGreaterThan(time);
      },
    );
  });
  it('recommended fill time is linear in the wall and rises with the die temperature', () => {
    forAll(
      [
        [0.5, 3],
        [600, 700],
        [150, 300],
      ],
      (wall, gate_temperature, die_temperature) => {
        const x = { wall, gate_temperature, liquidus: 585, die_temperature };
        same(calc('fill.recommended-time', { ...x, wall: 2 * wall }), 2 * calc('fill.recommended-time', x));
        expect(calc('fill.recommended-time', { ...x, die_temperature: die_temperature + 1 })).toBeGreaterThan(calc('fill.recommended-time', x));
      },
    );
  });
  it('area, velocity and time carry the volume; width and thickness make the area; flow gives the velocity back', () => {
    forAll(
      [
        [1, 20000],
        [5, 90],
        [5, 300],
        [0.3, 10],
      ],
      (volume, velocity, time, thickness) => {
        const area = calc('gate.area', { volume, velocity, time });
        same((area * velocity * time) / 1000, volume);
        same(calc('gate.width', { area, thickness }) * thickness, area);
        same(calc('gate.velocity-from-flow', { flow: calc('gate.flow', { volume, time }), area }), velocity);
      },
    );
  });
  it('the least atomised velocity gives the index back and falls with thickness and density', () => {
    forAll(
      [
        [500000, 1000000],
        [0.25, 3],
        [1600, 7800],
      ],
      (index, thickness, density) => {
        const velocity = calc('gate.least-atomised-velocity', { index, thickness, density });
        same(calc('gate.atomisation-index', { velocity, thickness, density }), index);
        expect(calc('gate.least-atomised-velocity', { index, thickness: 1.1 * thickness, density })).toBeLessThan(velocity);
        expect(calc('gate.least-atomised-velocity', { index, thickness, density: 1.1 * density })).toBeLessThan(velocity);
      },
    );
  });
});

describe('shot, metal and plant', () => {
  it('mass and volume are inverse; the liquid flows in a greater volume than the solid', () => {
    forAll(
      [
        [0.01, 50],
        [1.7, 8.5],
      ],
      (mass, density) => {
        same(calc('metal.part-mass', { volume: calc('metal.part-volume', { mass, density }), density }), mass);
        same(calc('shot.mass', { volume: calc('gate.flow-volume', { mass, density }), density }), mass);
      },
    );
  });
  it('trapped gas: halved by twice the pressure, proportional to absolute temperature and to the share', () => {
    forAll(
      [
        [1, 5000],
        [50, 1013],
        [10, 100],
        [1, 50],
      ],
      (gas_volume, gas_pressure, metal_pressure, trapped) => {
        const x = { gas_volume, gas_pressure, gas_temperature: 20, metal_pressure, metal_temperature: 20, trapped };
        same(calc('porosity.gas-volume', { ...x, metal_pressure: 2 * metal_pressure }), calc('porosity.gas-volume', x) / 2);
        same(calc('porosity.gas-volume', { ...x, metal_temperature: 2 * 293.15 - 273.15 }), 2 * calc('porosity.gas-volume', x));
        same(calc('porosity.gas-volume', { ...x, trapped: trapped / 2 }), calc('porosity.gas-volume', x) / 2);
        // Boyle: pressure times volume is kept.
        same(calc('porosity.gas-volume', { ...x, trapped: 100 }) * metal_pressure * 10000, gas_volume * gas_pressure);
      },
    );
  });
  it('the demand is met by the number of cavities given, and not by one less', () => {
    forAll(
      [
        [1000, 2e6],
        [1000, 8000],
        [20, 500],
        [50, 100],
        [0, 20],
      ],
      (parts_per_year, hours_per_year, shots_per_hour, use_share, reject_share) => {
        const cavities = calc('cavities.demand', { parts_per_year, hours_per_year, shots_per_hour, use_share, reject_share });
        const each = hours_per_year * shots_per_hour * (use_share / 100) * (1 - reject_share / 100);
        expect(Number.isInteger(cavities)).toBe(true);
        expect(cavities * each).toBeGreaterThanOrEqual(parts_per_year * (1 - 1e-8));
        expect((cavities - 1) * each).toBeLessThan(parts_per_year);
        // A demand of exactly seven cavities stays seven, whatever the last bits of the product say.
        const seven = (7 * (1 - reject_share / 100) * shots_per_hour * use_share * hours_per_year) / 100;
        expect(calc('cavities.demand', { parts_per_year: seven, hours_per_year, shots_per_hour, use_share, reject_share })).toBe(7);
      },
    );
  });
  it('the mean rate lies as many times above the least as below the greatest', () => {
    forAll(
      [
        [5, 200],
        [1, 20],
      ],
      (least_rate, times) => {
        const mean = calc('machine.mean-rate', { least_rate, greatest_rate: times * least_rate });
        same(mean / least_rate, (times * least_rate) / mean);
      },
    );
  });
});
