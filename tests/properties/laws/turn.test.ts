import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/index.ts';
import { fileOf, METRIC, made } from './made.ts';
import { at, expectNear, forEvery, planOf, ready } from './plans.ts';

beforeAll(ready);

const AXES = ['x', 'y', 'z'] as const;
type Axis = (typeof AXES)[number];
/** Where each axis of the part goes. The two cyclic turns are turns of the solid; a swap is its mirror image. */
type Turn = Readonly<Record<Axis, Axis>>;
const TURNS: readonly Turn[] = [
  { x: 'y', y: 'z', z: 'x' },
  { x: 'z', y: 'x', z: 'y' },
  { x: 'y', y: 'x', z: 'z' },
  { x: 'z', y: 'y', z: 'x' },
  { x: 'x', y: 'z', z: 'y' },
];

const turnedDirection = (direction: string, turn: Turn): string => direction.replace(/[xyz]/, (axis) => turn[axis as Axis]);
type Item = Record<string, unknown> & { direction?: string };

/** The part with its axes renamed; everything else stands as it stood. */
function turned(file: Record<string, unknown>, turn: Turn): Record<string, unknown> {
  const geometry = file['geometry'] as { envelope: string[]; projected_area: Partial<Record<Axis, string>>; die_opening: string };
  const envelope = [...geometry.envelope];
  for (const [i, axis] of AXES.entries()) envelope[AXES.indexOf(turn[axis])] = geometry.envelope[i] as string;
  const projected_area = Object.fromEntries(Object.entries(geometry.projected_area).map(([axis, area]) => [turn[axis as Axis], area]));
  const lists = Object.fromEntries(
    ['holes', 'undercuts'].map((list) => [
      list,
      (file[list] as Item[]).map((item) => ({ ...item, direction: turnedDirection(item.direction as string, turn) })),
    ]),
  );
  return { ...file, ...lists, geometry: { ...geometry, envelope, projected_area, die_opening: turnedDirection(geometry.die_opening, turn) } };
}

/** Values by id, what is named after an axis under the name that the axis has in the turned part. */
function valuesOf(plan: Plan, turn: Turn | undefined): Map<string, number> {
  const slides = new Map([...plan.texts].flatMap(([id, text]) => (id.startsWith('slide.direction[') ? [[id.slice(15), text] as const] : [])));
  const name = (id: string): string => {
    const bySlide = id.replace(/\[S\d+\]$/, (item) => `[slide ${slides.get(item)}]`);
    if (turn === undefined) return bySlide;
    return bySlide
      .replace(/\[slide ([+-]?[xyz])\]$/, (_, direction: string) => `[slide ${turnedDirection(direction, turn)}]`)
      .replace(/^(part\.(?:envelope|projected-area)|parting\.cosine)-([xyz])(?=$|\[)/, (_, stem: string, axis: string) => `${stem}-${turn[axis as Axis]}`)
      .replace(/^(parting\..*-tried|parting\.extent)\[([xyz])\]$/, (_, stem: string, axis: string) => `${stem}[${turn[axis as Axis]}]`);
  };
  return new Map([...plan.values].map(([id, value]) => [name(id), value.value]));
}

describe('a part with its axes renamed', () => {
  test('has the same plan up to the names of the axes, turned or mirrored', () => {
    forEvery(fc.tuple(made, fc.constantFrom(...TURNS)), ([part, turn]) => {
      const file = fileOf(part, METRIC);
      const [a, b] = [planOf(file), planOf(turned(file, turn))];
      const [x, y] = [valuesOf(a, turn), valuesOf(b, undefined)];
      expect([...y.keys()].sort()).toEqual([...x.keys()].sort());
      for (const [id, value] of x) expectNear(value, y.get(id) as number, 1e-9, id);
      expect(b.findings.map(({ code }) => code).sort()).toEqual(a.findings.map(({ code }) => code).sort());
      expect(b.texts.get('parting.die-opening')).toBe(turnedDirection(a.texts.get('parting.die-opening') as string, turn));
    });
  });
});

describe('a part laid into the die the other way up', () => {
  test('has the same force, shot, cycle and cost', () => {
    forEvery(made, (part) => {
      const file = fileOf(part, METRIC);
      const other = turned(file, { x: 'x', y: 'y', z: 'z' });
      const flip = (list: unknown): Item[] =>
        (list as Item[]).map((item) => ({
          ...item,
          direction: /^-?z$/.test(item.direction as string) ? (item.direction === 'z' ? '-z' : 'z') : (item.direction as string),
        }));
      const [a, b] = [planOf(file), planOf({ ...other, holes: flip(other['holes']), undercuts: flip(other['undercuts']) })];
      for (const id of ['clamp.locking-force', 'shot.mass', 'cycle.time', 'cost.per-part', 'ejection.force', 'parting.core-pulls']) {
        if (a.values.has(id)) expectNear(at(a, id), at(b, id), 1e-9, id);
      }
    });
  });
});
