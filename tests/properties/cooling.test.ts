import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calc } from './calc.ts';

/** A line that a die maker would drill: diameter, depth and pitch in mm with pitch and depth above 1.5 diameters. */
const lines = fc
  .record({
    diameter: fc.double({ min: 6, max: 14, noNaN: true }),
    depth: fc.double({ min: 1.5, max: 4, noNaN: true }),
    pitch: fc.double({ min: 2.5, max: 5, noNaN: true }),
  })
  .map(({ diameter, depth, pitch }) => ({ diameter, depth: depth * diameter, pitch: pitch * diameter }));
const flows = fc.record({ reynolds: fc.double({ min: 3000, max: 1e6, noNaN: true }), prandtl: fc.double({ min: 1, max: 100, noNaN: true }) });
const within = (a: number, b: number, share: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.abs(b));

/**
 * One line of a row in steel on a grid of 2 mm: even heat from above, no heat through the other sides, a sink in one cell. A sink in a
 * cell of side h stands for a line with the radius 0.1982 h (Peaceman); the line is wider, so the steel between the radii is taken off.
 */
function onGrid(pitch: number, depth: number, diameter: number): number {
  const h = 2;
  const [columns, rows] = [pitch / h, (2 * pitch) / h];
  const at = new Float64Array(columns * rows);
  const sink = Math.round(depth / h - 0.5) * columns + columns / 2;
  // Unit heat for each unit of length, in steel of unit conductivity.
  for (let sweep = 0; sweep < 2500; sweep += 1)
    for (let y = 0; y < rows; y += 1)
      for (let x = 0; x < columns; x += 1) {
        const cell = y * columns + x;
        let sum = (at[y * columns + ((x + 1) % columns)] as number) + (at[y * columns + ((x + columns - 1) % columns)] as number);
        if (y > 0) sum += at[cell - columns] as number;
        if (y < rows - 1) sum += at[cell + columns] as number;
        const source = (y === 0 ? 1 / columns : 0) - (cell === sink ? 1 : 0);
        const next = (sum + source) / (y === 0 || y === rows - 1 ? 3 : 4);
        at[cell] = (at[cell] as number) + 1.9 * (next - (at[cell] as number));
      }
  // The face lies half a cell above the middle of the first row.
  const face = at.subarray(0, columns).reduce((a, b) => a + b, 0) / columns + h / 2 / pitch;
  const line = (at[sink] as number) + Math.log(diameter / 2 / (0.1982 * h)) / (2 * Math.PI);
  return 1 / (face - line);
}

describe('shape factors', () => {
  test('a row tends to the single line as its pitch grows, and is always below it', () => {
    fc.assert(
      fc.property(lines, ({ diameter, depth, pitch }) => {
        const single = calc('cooling.shape-factor', { length: 1, diameter, depth });
        const row = (apart: number): number => calc('cooling.row-shape-factor', { length: 1, diameter, depth, pitch: apart });
        expect(row(pitch)).toBeLessThan(single * 1.02);
        // ln(4 z / D) in place of acosh(2 z / D): nearly 1.5 % apart at a depth of 1.5 diameters.
        within(row(1000 * depth), single, 0.017);
        within(row(1000 * depth), (2 * Math.PI) / Math.log((4 * depth) / diameter), 1e-4);
      }),
    );
  });
  test('a close row is the slab of steel above it: the pitch over the depth, less a little', () => {
    // S = w / z for a pitch far below the depth.
    within(calc('cooling.row-shape-factor', { length: 1, diameter: 12, depth: 150, pitch: 24 }), 24 / 150, 0.05);
  });
  test('spread lines under a face that takes the same heat everywhere, against a solution on a grid', () => {
    for (const [pitch, depth] of [
      [60, 21],
      [100, 21],
      [40, 25],
    ] as const)
      within(calc('cooling.spread-shape-factor', { length: 1, diameter: 10, depth, pitch }), onGrid(pitch, depth, 10), 0.02);
  });
  test('spread lines are a row when they lie close, and take less than a row ever would when they lie far apart', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const [row, spread] = ['cooling.row-shape-factor', 'cooling.spread-shape-factor'].map((id) => calc(id, { length: 1, ...line, pitch: 2 * line.depth }));
        within(spread as number, row as number, 2e-3);
        const far = { length: 1, ...line, pitch: 20 * line.depth };
        expect(calc('cooling.spread-shape-factor', far)).toBeLessThan(calc('cooling.row-shape-factor', far));
      }),
    );
  });
  test('deeper lines take less, wider and longer ones more', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const at = (change: Partial<typeof line> & { length?: number }): number => calc('cooling.row-shape-factor', { length: 1, ...line, ...change });
        expect(at({ depth: 1.1 * line.depth })).toBeLessThan(at({}));
        expect(at({ diameter: 1.1 * line.diameter })).toBeGreaterThan(at({}));
        within(at({ length: 3 }), 3 * at({}), 1e-12);
      }),
    );
  });
});

describe('film', () => {
  test('Gnielinski and Dittus-Boelter agree within 25 % at Re 1e5, for water at any temperature', () => {
    for (const prandtl of [0.7, 1.2, 2, 4.3, 7])
      within(
        calc('cooling.nusselt-gnielinski', { reynolds: 1e5, prandtl }),
        calc('cooling.nusselt-dittus-boelter', { reynolds: 1e5, prandtl, heating: 1 }),
        0.25,
      );
  });
  test('more flow, more film; thinner fluid for the same flow too', () => {
    fc.assert(
      fc.property(flows, ({ reynolds, prandtl }) => {
        expect(calc('cooling.nusselt-gnielinski', { reynolds: 1.05 * reynolds, prandtl })).toBeGreaterThan(
          calc('cooling.nusselt-gnielinski', { reynolds, prandtl }),
        );
        expect(calc('cooling.nusselt-gnielinski', { reynolds, prandtl: 1.05 * prandtl })).toBeGreaterThan(
          calc('cooling.nusselt-gnielinski', { reynolds, prandtl }),
        );
      }),
    );
  });
  test('a friction factor that is given like the one of Petukhov changes nothing', () => {
    fc.assert(
      fc.property(flows, ({ reynolds, prandtl }) => {
        const friction = calc('cooling.friction', { reynolds });
        within(calc('cooling.nusselt-gnielinski', { reynolds, prandtl, friction }), calc('cooling.nusselt-gnielinski', { reynolds, prandtl }), 1e-12);
      }),
    );
  });
});

describe('from the die surface to the coolant', () => {
  const chains = fc.record({ film: fc.double({ min: 200, max: 30000, noNaN: true }), surface: fc.double({ min: 120, max: 400, noNaN: true }), line: lines });
  test('what passes the steel passes the film: the wall lies where both agree', () => {
    fc.assert(
      fc.property(chains, ({ film, surface, line }) => {
        const [coolant, length, conductivity] = [40, 0.3, 25];
        const shape = calc('cooling.row-shape-factor', { length, ...line });
        const conductance = calc('cooling.line-conductance', { film, diameter: line.diameter, length, shape, conductivity });
        const heat = calc('cooling.line-heat', { conductance, warm: surface, cold: coolant });
        const wall = calc('cooling.wall-temperature', { coolant, heat, film, diameter: line.diameter, length });
        within(shape * conductivity * (surface - wall), heat, 1e-9);
        expect(wall).toBeGreaterThan(coolant);
        expect(wall).toBeLessThan(surface);
        // Neither resistance alone lets less through than both.
        expect(conductance).toBeLessThan(calc('cooling.steel-conductance', { shape, conductivity }));
        within(calc('cooling.coolant-temperature', { surface, rate: heat / 1000, conductance }), coolant, 1e-9);
      }),
    );
  });
  test('the coolant carries off what it takes up', () => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 5000, noNaN: true }), fc.double({ min: 1, max: 30, noNaN: true }), (heat, flow) => {
        const water = { density: 992, specific_heat: 4179 };
        const rise = calc('cooling.rise', { heat, flow, ...water });
        within(calc('cooling.flow-for-rise', { heat, rise, ...water }), flow, 1e-9);
      }),
    );
  });
  test('the flow for a Reynolds number reaches it', () => {
    fc.assert(
      fc.property(fc.double({ min: 1000, max: 1e5, noNaN: true }), fc.double({ min: 5, max: 16, noNaN: true }), (wanted, diameter) => {
        const fluid = { density: 782, viscosity: 1.65 };
        const flow = calc('cooling.flow-for-reynolds', { reynolds: wanted, diameter, ...fluid });
        within(calc('cooling.reynolds', { speed: calc('cooling.speed', { flow, diameter }), diameter, ...fluid }), wanted, 1e-9);
      }),
    );
  });
});

describe('cores', () => {
  test('longer and thinner ones get hotter, better conducting ones less, none hotter than the metal', () => {
    const cores = fc.record({
      diameter: fc.double({ min: 2, max: 40, noNaN: true }),
      depth: fc.double({ min: 2, max: 80, noNaN: true }),
      flux: fc.double({ min: 10, max: 150, noNaN: true }),
    });
    fc.assert(
      fc.property(cores, (core) => {
        const at = (change: Readonly<Record<string, number>>): number =>
          calc('cooling.core-excess', { metal: 540, surface: 215, conductivity: 25, ...core, ...change });
        expect(at({ depth: 1.2 * core.depth })).toBeGreaterThanOrEqual(at({}));
        expect(at({ diameter: 1.2 * core.diameter })).toBeLessThanOrEqual(at({}));
        expect(at({ conductivity: 90 })).toBeLessThanOrEqual(at({}));
        expect(at({})).toBeLessThanOrEqual(325);
      }),
    );
  });
});

/** Temperatures, specific heats and latent heats of the balance, density in kg/dm3, and MJ in a cubic decimetre of casting. */
test.each([
  ['A380', 660, 595, 540, 385, 1100, 963, 389, 2.75, 1.82],
  ['Zamak 3', 425, 387, 381, 300, 505, 419, 110, 6.6, 1.09],
  ['AZ91D', 650, 595, 470, 430, 1350, 1050, 373, 1.81, 1.12],
  ['C85800', 950, 900, 870, 500, 450, 380, 170, 8, 2.76],
] as const)('%s: magnesium and zinc bring about 0.6 of the heat of aluminium for their volume, brass half as much again', (...row) => {
  const [, gate_temperature, liquidus, solidus, eject_temperature, cp_liquid, cp_solid, latent, density, expected] = row;
  const heat = calc('heat.per-mass', { gate_temperature, liquidus, solidus, eject_temperature, cp_liquid, cp_solid, latent });
  expect(Math.abs((heat * density) / 1000 - expected)).toBeLessThan(0.006);
});
