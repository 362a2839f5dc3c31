import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { fileOf, METRIC, made, type Units } from './made.ts';
import { at, expectNear, forEvery, planOf, ready } from './plans.ts';

beforeAll(ready);

/** The system of units in which everything is written `factor` times as long; 1.25 and 0.8 have exact squares and cubes. */
function grown(factor: number): Units {
  const by = (power: number, text: string): string => text.replace(/^[\d.]+/, (number) => String(Number(number) * factor ** power));
  return { ...METRIC, length: (n) => by(1, METRIC.length(n)), area: (n) => by(2, METRIC.area(n)), volume: (n) => by(3, METRIC.volume(n)) };
}

/** Each value with the power of the size that it goes with, where no table of thicknesses or sizes decides. */
const POWERS: readonly (readonly [id: string, power: number])[] = [
  ['part.volume', 3],
  ['part.mass', 3],
  ['part.projected-area', 2],
  ['part.depth', 1],
  ['part.wall-nominal', 1],
  ['wall.side-area', 2],
  ['wall.ratio', 0],
  ['parting.box-area', 2],
  ['parting.box-perimeter', 1],
  ['parting.core-pulls', 0],
  ['draft.least-inside', -0.5],
  ['draft.least-outside', -0.5],
  ['hole.core-depth[H1]', 1],
  ['slide.face-area[S1]', 2],
  ['rib.tip-radius-greatest[R1]', 1],
  ['fillet.least-radius[F1]', 1],
  ['die.core-slenderness[H1]', 0],
  ['heat.casting-face', 2],
];

test('lengths, areas and volumes of a part of another size go with the first, second and third power', () => {
  const met = new Map<string, number>();
  forEvery(fc.tuple(made, fc.constantFrom(0.8, 1.25)), ([part, factor]) => {
    const [small, large] = [planOf(fileOf(part, METRIC)), planOf(fileOf(part, grown(factor)))];
    for (const [id, power] of POWERS) {
      if (!small.values.has(id) || !large.values.has(id)) continue;
      met.set(id, (met.get(id) ?? 0) + 1);
      // The tangent of a draft goes with the root of the length, and an angle of a few degrees nearly so.
      expectNear(at(large, id), at(small, id) * factor ** power, power === -0.5 ? 2e-3 : 1e-9, `${id} at ${factor}`);
    }
  });
  for (const [id] of POWERS) expect(met.get(id) ?? 0, `plans that have ${id}`).toBeGreaterThan(3);
});

test('with pressure, fill time and gate velocity pinned, flow and gate go with the volume', () => {
  const pins = ['clamp.pressure=40 MPa', 'fill.time=40 ms', 'gate.velocity=40 m/s', 'machine.cavities=1', 'overflow.share=10 %'].map((pin) => `pinned.${pin}`);
  let met = 0;
  forEvery(fc.tuple(made, fc.constantFrom(0.8, 1.25)), ([part, factor]) => {
    const [small, large] = [planOf(fileOf(part, METRIC), pins), planOf(fileOf(part, grown(factor)), pins)];
    if (!small.values.has('gate.area') || !large.values.has('gate.area')) return;
    met += 1;
    for (const id of ['gate.flow-volume', 'gate.flow', 'gate.area']) expectNear(at(large, id), at(small, id) * factor ** 3, 1e-9, id);
  });
  expect(met).toBeGreaterThan(10);
});
