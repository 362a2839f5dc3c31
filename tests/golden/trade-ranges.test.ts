import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EXAMPLES } from './examples.ts';

/**
 * What the trade sees of a die, typed here from the facts a second time; where an example lies outside, its plan must say
 * so with a finding of its own.
 */
const SHOTS_AN_HOUR: Readonly<Record<string, readonly (readonly [greatestForce: number, least: number, greatest: number])[]>> = {
  // Remembered and common practice: zinc hot chamber to 20 t 500 to 1,500, 80 to 200 t 200 to 450; between, the lower end.
  'zinc hot': [
    [200, 500, 1500],
    [2000, 200, 450],
  ],
  'magnesium hot': [[5000, 100, 250]],
  // Cold chamber: 150 to 400 t 60 to 120, 600 to 1,000 t 45 to 75, 1,600 to 2,500 t 30 to 50.
  cold: [
    [4000, 60, 120],
    [10000, 45, 75],
    [25000, 30, 50],
  ],
};
/** How far a remembered range is believed. */
const SLACK = 1.25;
/** Usual die surface before the shot, degC: a knowledge base of the trade; zinc-aluminium and copper remembered. */
const SURFACE: Readonly<Record<string, readonly [number, number]>> = {
  zinc: [150, 200],
  'zinc-aluminium': [200, 240],
  aluminium: [180, 250],
  magnesium: [200, 280],
  copper: [300, 400],
};

describe.each(EXAMPLES)('$name', ({ folder }) => {
  const plan = JSON.parse(readFileSync(join(folder, 'plan.json'), 'utf8')) as {
    alloy: { family: string };
    values: Record<string, { value: number } | undefined>;
    texts: Record<string, string>;
    findings: { code: string }[];
  };
  const figure = (id: string): number => plan.values[id]?.value ?? Number.NaN;
  const said = (...codes: string[]): boolean => plan.findings.some(({ code }) => codes.includes(code));
  const hot = plan.texts['machine.chamber'] === 'hot';

  test('the die surface before the shot lies in the window of the family, or the plan says so', () => {
    const [least, greatest] = SURFACE[plan.alloy.family] as readonly [number, number];
    const before = figure('heat.surface-before');
    expect((before >= least && before <= greatest) || said('heat/surface-low', 'heat/surface-high'), `${before} degC`).toBe(true);
    expect(figure('heat.surface-peak')).toBeLessThan(figure('fill.gate-temperature'));
    expect(figure('heat.surface-peak')).toBeGreaterThan(before + 30);
  });
  test('shots an hour are those of machines of its size, or the plan says so', () => {
    const kind = hot ? `${plan.alloy.family.startsWith('magnesium') ? 'magnesium' : 'zinc'} hot` : 'cold';
    const force = figure('machine.locking-force');
    const known = SHOTS_AN_HOUR[kind] ?? [];
    const [, least, greatest] = (known.find(([limit]) => force <= limit) ?? known[known.length - 1]) as readonly [number, number, number];
    const shots = figure('cycle.shots');
    const usual = shots >= least / SLACK && shots <= greatest * SLACK;
    expect(usual || said('cycle/rate-fast', 'cycle/rate-slow'), `${shots} an hour at ${force} kN`).toBe(true);
  });
  test('the time in the die is some seconds, and part of a cycle of seconds to a minute or two', () => {
    expect(figure('cooling.dwell')).toBeGreaterThan(1);
    expect(figure('cooling.dwell') <= 20 || said('cooling/long-dwell')).toBe(true);
    expect(figure('cycle.time')).toBeGreaterThan(figure('cooling.dwell') + 2);
    expect(figure('cycle.time')).toBeLessThan(240);
  });
  test('cooling lines carry some kilowatts a metre, and are metres for kilograms', () => {
    const perMetre = figure('heat.lines-rate') / figure('cooling.length');
    expect(perMetre).toBeGreaterThan(1);
    expect(perMetre).toBeLessThan(12);
    expect(figure('cooling.length')).toBeGreaterThan(0.2);
    expect(figure('cooling.length')).toBeLessThan(30);
    expect(figure('cooling.wall-temperature') < figure('cooling.wall-greatest') || said('cooling/boiling')).toBe(true);
    expect(figure('cooling.reynolds') >= 4000 || said('cooling/reynolds', 'cooling/turbulence'), `Re ${figure('cooling.reynolds')}`).toBe(true);
  });
  test('ejector pins are 3 to 12 mm thick and push no harder than the casting bears, or the plan says so', () => {
    const each = figure('ejection.cavity-pins');
    expect(each).toBeGreaterThanOrEqual(3);
    expect(each).toBeLessThanOrEqual(60);
    const diameter = figure('ejection.pin-diameter');
    expect((diameter >= 3 && diameter <= 12) || said('ejection/pin-least', 'ejection/pin-greatest'), `${diameter} mm`).toBe(true);
    expect(figure('ejection.pin-pressure') <= figure('ejection.push-pressure') || said('ejection/pin-pressure')).toBe(true);
    expect(figure('ejection.force') <= figure('machine.ejector-force') || said('ejection/machine-force')).toBe(true);
  });
  test('the die fits the machine by its height and is as heavy as its steel', () => {
    const height = figure('die.height');
    const fits = height >= figure('machine.die-height-least') && height <= figure('machine.die-height-greatest');
    expect(fits || said('die/height-least', 'die/height-greatest')).toBe(true);
    const litres = (figure('die.width') * figure('die.breadth') * height) / 1e6;
    expect(figure('die.mass') / litres).toBeGreaterThan(6);
    expect(figure('die.mass') / litres).toBeLessThan(7.8);
  });
  test('a swing of the surface that checks the steel early is said', () => {
    expect(figure('die.heat-check-index') <= 0.7 || said('die/heat-check', 'die/heat-check-yield')).toBe(true);
  });
});
