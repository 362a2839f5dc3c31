import { describe, expect, test } from 'vitest';
import { freezingConstant } from '../../src/physics/solidification.ts';
import { CYCLE_FINENESS, type DieCycle, dieCycle } from '../../src/physics/solve/die-cycle.ts';
import { freeze, type Section, type Until } from '../../src/physics/solve/solidification.ts';

const A380 = { density: 2710, conductivity: 96.2, liquidHeat: 1177, solidHeat: 963, latent: 451e3, liquidus: 595, solidus: 540 };
const ZAMAK = { density: 6600, conductivity: 113, liquidHeat: 480, solidHeat: 419, latent: 110e3, liquidus: 387, solidus: 381 };
const AZ91 = { density: 1810, conductivity: 72.7, liquidHeat: 1320, solidHeat: 1050, latent: 373e3, liquidus: 598, solidus: 470 };
const BRASS = { density: 8440, conductivity: 83.9, liquidHeat: 450, solidHeat: 377, latent: 170e3, liquidus: 899, solidus: 871 };
const H13 = { density: 7800, conductivity: 25, specificHeat: 460 };

const SECTIONS: readonly (readonly [string, Section, number])[] = [
  ['aluminium, 3.2 mm', { metal: A380, steel: H13, half: 1.6e-3, gateTemperature: 635, dieTemperature: 215, interface: 1e4, gap: 2e3 }, 385],
  ['aluminium, biscuit', { metal: A380, steel: H13, half: 10e-3, gateTemperature: 635, dieTemperature: 215, interface: 1e4, gap: 2e3 }, 500],
  ['zinc, 1.8 mm', { metal: ZAMAK, steel: H13, half: 0.9e-3, gateTemperature: 407, dieTemperature: 175, interface: 5e3, gap: 2e3 }, 300],
  ['zinc, 0.8 mm', { metal: ZAMAK, steel: H13, half: 0.4e-3, gateTemperature: 407, dieTemperature: 175, interface: 15e3, gap: 3e3 }, 300],
  ['zinc, a gate of 0.2 mm', { metal: ZAMAK, steel: H13, half: 0.1e-3, gateTemperature: 407, dieTemperature: 175, interface: 15e3, gap: 3e3 }, 300],
  ['magnesium, 2 mm', { metal: AZ91, steel: H13, half: 1e-3, gateTemperature: 635, dieTemperature: 240, interface: 1.2e4, gap: 2e3 }, 430],
  ['brass, 6 mm', { metal: BRASS, steel: H13, half: 3e-3, gateTemperature: 930, dieTemperature: 350, interface: 1e4, gap: 2e3 }, 500],
];
const FINE = { cells: 60, steelCells: 96, steps: 1200 };

describe.each(SECTIONS)('a section of %s', (_, section, mean) => {
  test.each<readonly [string, Until]>([
    ['solid', 'solid'],
    ['cooled', { mean }],
  ])('heat is conserved to a thousandth until it is %s', (_what, until) => {
    const { heat, taken } = freeze(section, until);
    expect(Math.abs(taken / heat - 1)).toBeLessThan(1e-3);
  });
  test('a grid and steps many times as fine move no time by more than 1 %', () => {
    const [coarse, fine] = [freeze(section, { mean }), freeze(section, { mean }, FINE)];
    expect(Math.abs(coarse.solid / fine.solid - 1)).toBeLessThan(0.01);
    expect(Math.abs(coarse.end / fine.end - 1)).toBeLessThan(0.01);
    expect(Math.abs(coarse.surfacePeak - fine.surfacePeak)).toBeLessThan(2);
  });
  test('it only ever cools, from the face inwards, and the die never gets as hot as the metal', () => {
    const { samples, surfacePeak } = freeze(section, { mean });
    expect(surfacePeak).toBeGreaterThanOrEqual(Math.max(...samples.map(({ surface }) => surface)) - 1e-9);
    for (const [i, sample] of samples.entries()) {
      expect(sample.middle).toBeGreaterThanOrEqual(sample.face - 1e-9);
      expect(sample.surface).toBeLessThan(sample.face);
      const last = samples[i - 1];
      if (last !== undefined) expect(sample.mean).toBeLessThan(last.mean + 1e-9);
      if (last !== undefined) expect(sample.solidShare).toBeGreaterThanOrEqual(last.solidShare - 1e-12);
    }
    expect(samples.at(-1)?.solidShare).toBe(1);
  });
});

describe('against exact solutions', () => {
  // A pure metal at its freezing temperature in perfect contact with a deep die: Neumann's problem with Schwarz's die.
  const pure = { ...A380, solidus: 595 };
  const perfect = (half: number): Section => ({ metal: pure, steel: H13, half, gateTemperature: 595, dieTemperature: 215, interface: 1e8, gap: 1e8 });
  const exact = (half: number): number => {
    const z = freezingConstant.compute({
      heat: pure.latent / 1000,
      metal_temperature: 595,
      die_temperature: 215,
      density: pure.density / 1000,
      cp_solid: pure.solidHeat,
      conductivity: pure.conductivity,
      die_conductivity: H13.conductivity,
      die_density: H13.density,
      die_specific_heat: H13.specificHeat,
    });
    return (half / (2 * z)) ** 2 / (pure.conductivity / (pure.density * pure.solidHeat));
  };
  test.each([1e-3, 2e-3, 5e-3, 20e-3])('Neumann and Schwarz: the fronts meet after the exact time, half %d m', (half) => {
    expect(Math.abs(freeze(perfect(half), 'solid', FINE).end / exact(half) - 1)).toBeLessThan(0.01);
    expect(Math.abs(freeze(perfect(half), 'solid').end / exact(half) - 1)).toBeLessThan(0.04);
  });
  test('Neumann and Schwarz: the face of the die jumps to one temperature and stays there', () => {
    const half = 5e-3;
    const z = Math.sqrt(half ** 2 / 4 / (exact(half) * (pure.conductivity / (pure.density * pure.solidHeat))));
    // At the front latent heat is set free: T_m - T_i = L sqrt(pi) z exp(z^2) erf(z) / c; at the face the fluxes agree.
    const effusivity = (k: number, rho: number, c: number): number => Math.sqrt(k * rho * c);
    const front = (pure.latent * Math.sqrt(Math.PI) * z * Math.exp(z * z)) / pure.solidHeat;
    const face = 215 + (effusivity(pure.conductivity, pure.density, pure.solidHeat) * front) / effusivity(H13.conductivity, H13.density, H13.specificHeat);
    const run = freeze(perfect(half), 'solid', FINE);
    const middle = run.samples[Math.floor(run.samples.length / 2)];
    expect(Math.abs((middle?.surface ?? 0) - face)).toBeLessThan(2);
  });
  test('interface alone: a body of one temperature, whose closed form is rho h/2 dH / (h_i dT)', () => {
    // Steel and metal that conduct a thousand times better leave only the interface.
    const section: Section = {
      metal: { ...pure, conductivity: 1e5 },
      steel: { density: 7800, conductivity: 1e6, specificHeat: 46000 },
      half: 1.5e-3,
      gateTemperature: 595,
      dieTemperature: 215,
      interface: 5000,
      gap: 5000,
    };
    const closed = (pure.density * 1.5e-3 * pure.latent) / (5000 * (595 - 215));
    expect(Math.abs(freeze(section, 'solid').end / closed - 1)).toBeLessThan(0.01);
    // And then exponentially towards the die.
    const time = closed + ((pure.density * 1.5e-3 * pure.solidHeat) / 5000) * Math.log((595 - 215) / (405 - 215));
    expect(Math.abs(freeze(section, { mean: 405 }).end / time - 1)).toBeLessThan(0.01);
  });
  test('a slab cooled on one face is half of one cooled on both', () => {
    const [, section] = SECTIONS[0] as (typeof SECTIONS)[number];
    const one = freeze({ ...section, half: 2 * section.half }, 'solid').end;
    expect(one).toBeGreaterThan(2 * freeze(section, 'solid').end);
    expect(one).toBeLessThan(4 * freeze(section, 'solid').end);
  });
});

describe('laws of freezing', () => {
  const [, aluminium] = SECTIONS[0] as (typeof SECTIONS)[number];
  const time = (change: Partial<Section>): number => freeze({ ...aluminium, ...change }, 'solid').end;
  test('it rises with the square of the wall where conduction governs', () => {
    const exponent = Math.log2(time({ half: 8e-3, interface: 1e6 }) / time({ half: 4e-3, interface: 1e6 }));
    expect(exponent).toBeGreaterThan(1.9);
    expect(exponent).toBeLessThan(2.1);
  });
  test('it rises with the wall itself where the interface governs', () => {
    const exponent = Math.log2(time({ half: 0.4e-3, interface: 300 }) / time({ half: 0.2e-3, interface: 300 }));
    expect(exponent).toBeGreaterThan(0.98);
    expect(exponent).toBeLessThan(1.1);
  });
  test('a hotter die, hotter metal, a worse contact and a duller steel all take longer', () => {
    const base = time({});
    expect(time({ dieTemperature: 260 })).toBeGreaterThan(base);
    expect(time({ gateTemperature: 680 })).toBeGreaterThan(base);
    expect(time({ interface: 5e3 })).toBeGreaterThan(base);
    expect(time({ steel: { ...H13, conductivity: 18 } })).toBeGreaterThan(base);
  });
});

describe('a die that makes shot after shot', () => {
  const cycle: DieCycle = {
    ...(SECTIONS[0] as (typeof SECTIONS)[number])[1],
    cycle: 45,
    dwell: 10,
    spray: 8,
    sprayShare: 0.3,
    surroundingsShare: 0.1,
    depth: 0.02,
    conductance: 250,
    coolant: 40,
  };
  const CASES: readonly DieCycle[] = [
    cycle,
    { ...cycle, sprayShare: 0, surroundingsShare: 0, conductance: 400 },
    { ...cycle, ...(SECTIONS[2] as (typeof SECTIONS)[number])[1], cycle: 10, dwell: 3, spray: 1, conductance: 700 },
    { ...cycle, ...(SECTIONS[5] as (typeof SECTIONS)[number])[1], cycle: 60, dwell: 20, conductance: 300, coolant: 150 },
  ];

  test.each(CASES)('the lines take what spray and surroundings leave, and the mean temperature is the one that needs (%#)', (given) => {
    const { heat, toLines, mean } = dieCycle(given);
    const share = 1 - given.sprayShare - given.surroundingsShare;
    expect(Math.abs(toLines / (share * heat) - 1)).toBeLessThan(1e-3);
    const balance = given.coolant + (share * heat) / given.cycle / given.conductance;
    expect(Math.abs(mean - balance)).toBeLessThan(1);
  });
  test.each(CASES)('cells and steps many times as fine move no temperature by more than 4 K (%#)', (given) => {
    const coarse = dieCycle(given);
    const fine = dieCycle(given, { cells: 5 * CYCLE_FINENESS.cells, steelCells: 4 * CYCLE_FINENESS.steelCells, steps: 20 * CYCLE_FINENESS.steps });
    for (const what of ['before', 'peak', 'mean'] as const) expect(Math.abs(coarse[what] - fine[what])).toBeLessThan(4);
  });
  test('a cycle that is run longer stays as it is: it is steady', () => {
    const first = dieCycle(cycle);
    expect(Math.abs((first.samples.at(-1)?.surface ?? 0) - first.before)).toBeLessThan(1);
  });
  test('without spray the surface lies below its mean by the closed form for pulses into a deep body', () => {
    const { heat, mean, before } = dieCycle({ ...cycle, sprayShare: 0, surroundingsShare: 0, depth: 0.08, conductance: 200 });
    const closed = (1.4603545 * heat) / (Math.sqrt(H13.conductivity * H13.density * H13.specificHeat) * Math.sqrt(Math.PI * cycle.cycle));
    expect(Math.abs((mean - before) / closed - 1)).toBeLessThan(0.08);
  });
  test('more cooling, a longer cycle and colder water make it colder; a thicker wall makes it hotter', () => {
    const base = dieCycle(cycle).before;
    expect(dieCycle({ ...cycle, conductance: 300 }).before).toBeLessThan(base);
    expect(dieCycle({ ...cycle, cycle: 55 }).before).toBeLessThan(base);
    expect(dieCycle({ ...cycle, coolant: 20 }).before).toBeLessThan(base);
    expect(dieCycle({ ...cycle, half: 2e-3 }).before).toBeGreaterThan(base);
  });
});
