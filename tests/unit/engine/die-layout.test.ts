import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Ledger } from '../../../src/engine/ledger.ts';
import type { Drawing, Shape } from '../../../src/engine/plan.ts';
import { layoutFigure } from '../../../src/engine/steps/die/figure.ts';
import { EXAMPLES } from '../../golden/examples.ts';
import { dieOf, dieOfText } from './die-of.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart } from './work-to.ts';

const hole = (id: string, direction: string, depth = 16): string =>
  `  - { id: ${id}, diameter: 8 mm, depth: ${depth} mm, kind: blind, direction: ${direction} }\n`;
const withCavities = (part: SmallPart, count: number, more: Readonly<Record<string, string>> = {}): SmallPart => ({
  ...part,
  pinned: { 'machine.cavities': String(count), ...more },
});
const LARGE = { 'machine.model': 'cold-16000' };

const DIES: readonly (readonly [string, () => Ledger])[] = [
  ...EXAMPLES.map(({ name, file, folder }) => [name, () => dieOfText(readFileSync(join(folder, file), 'utf8'))] as const),
  ['lid', () => dieOf(LID)],
  ['lever', () => dieOf(LEVER)],
  ...[2, 4, 6, 8].map((count) => [`lever, ${count} cavities`, () => dieOf(withCavities(LEVER, count))] as const),
  ['lever, 3 cavities', () => dieOf(withCavities(LEVER, 3))],
  ...[1, 2, 4].map(
    (count) =>
      [
        `lid, ${count} cavities and slides on three sides`,
        () => dieOf(withCavities(LID, count, LARGE), `holes:\n${hole('A', 'x')}${hole('B', '-x', 20)}${hole('C', 'y')}`),
      ] as const,
  ),
  ['lid, slide towards the feeder', () => dieOf(LID, `holes:\n${hole('A', 'y')}${hole('B', '-y')}`)],
];

interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const drawingOf = (ledger: Ledger): Drawing => layoutFigure(ledger)[0] as Drawing;
const boxOf = (shape: Shape): Box => {
  if (shape.shape === 'path') throw new Error('a path has no box');
  const [w, h] = shape.shape === 'box' ? [shape.width, shape.height] : [shape.diameter, shape.diameter];
  return { left: shape.x - w / 2, right: shape.x + w / 2, bottom: shape.y - h / 2, top: shape.y + h / 2 };
};
const ROUNDING = 1e-6;
const inside = (one: Box, other: Box): boolean =>
  one.left >= other.left - ROUNDING && one.right <= other.right + ROUNDING && one.bottom >= other.bottom - ROUNDING && one.top <= other.top + ROUNDING;
const apart = (one: Box, other: Box): boolean =>
  one.right <= other.left + ROUNDING || other.right <= one.left + ROUNDING || one.top <= other.bottom + ROUNDING || other.top <= one.bottom + ROUNDING;
const boxes = (drawing: Drawing, role: string): Box[] => drawing.shapes.filter((shape) => shape.role === role).map(boxOf);

describe.each(DIES)('%s', (_, work) => {
  const ledger = work();
  const drawing = drawingOf(ledger);
  const [die] = boxes(drawing, 'outline') as [Box];
  const [insert] = boxes(drawing, 'steel') as [Box];
  const cavities = boxes(drawing, 'cavity');
  const [feeder] = boxes(drawing, 'feeder') as [Box];

  test('every casting is in the inserts, and these are in the die', () => {
    expect(cavities).toHaveLength(figure(ledger, 'machine.cavities'));
    for (const cavity of cavities) expect(inside(cavity, insert)).toBe(true);
    expect(inside(insert, die)).toBe(true);
  });

  test('castings and feeder keep apart', () => {
    for (const [i, one] of cavities.entries()) {
      expect(apart(one, feeder)).toBe(true);
      for (const other of cavities.slice(i + 1)) expect(apart(one, other)).toBe(true);
    }
    expect(inside(feeder, die)).toBe(true);
  });

  test('slides start at their casting, keep off the others and stay in the die by all but their overhang', () => {
    const slides = boxes(drawing, 'slide');
    for (const slide of slides) {
      for (const cavity of cavities) expect(apart(slide, cavity)).toBe(true);
      expect(die.left - slide.left).toBeLessThanOrEqual(figure(ledger, 'die.overhang-width') + ROUNDING);
      expect(slide.right - die.right).toBeLessThanOrEqual(figure(ledger, 'die.overhang-width') + ROUNDING);
      expect(slide.top - die.top).toBeLessThanOrEqual(figure(ledger, 'die.overhang-height') + ROUNDING);
      expect(die.bottom - slide.bottom).toBeLessThanOrEqual(figure(ledger, 'die.overhang-height') + ROUNDING);
    }
    const all = slides.map((slide) => Math.max(0, die.left - slide.left, slide.right - die.right, slide.top - die.top, die.bottom - slide.bottom));
    const hanging = figure(ledger, 'die.overhang-width') + figure(ledger, 'die.overhang-height') > ROUNDING;
    expect(Math.max(0, ...all) > ROUNDING).toBe(hanging);
  });

  test('tie bars stand outside of the die where it fits, and each dimension is as long as its value', () => {
    const fits = !findingsOf(ledger).has('die/tie-bar-fit');
    if (fits) for (const bar of boxes(drawing, 'bar')) expect(apart(bar, die)).toBe(true);
    for (const { from, to, values } of drawing.dimensions) {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      expect(length).toBeCloseTo(figure(ledger, values[0] as string), 6);
    }
    expect(drawing.roles.map(({ role }) => role).sort()).toEqual([...new Set(drawing.shapes.map(({ role }) => role))].sort());
  });
});

describe('slides and the tie bars', () => {
  test('where there is room the die grows by stroke and lock', () => {
    const [plain, slid] = [dieOf(withCavities(LID, 1, LARGE)), dieOf(withCavities(LID, 1, LARGE), `holes:\n${hole('A', 'x')}`)];
    expect(figure(slid, 'die.width') - figure(plain, 'die.width')).toBeCloseTo(figure(slid, 'slide.stroke[S1]') + 40, 9);
    expect(figure(slid, 'die.breadth')).toBeCloseTo(figure(plain, 'die.breadth'), 9);
    expect(slid.text('die.slide-side', 'S1')).toBe('right');
    expect(findingsOf(slid).has('die/overhang-sides')).toBe(false);
  });
  test('where there is none it hangs out, and a machine of the fix has room', () => {
    const part = withCavities(LID, 1, { 'machine.model': 'cold-2500' });
    const holes = `holes:\n${hole('A', 'x', 60)}${hole('B', '-x', 60)}`;
    const ledger = dieOf({ ...part, envelope: [238, 142, 46] }, holes.replaceAll('diameter: 8', 'diameter: 20'));
    const finding = findingsOf(ledger).get('die/overhang-sides');
    expect(finding?.severity).toBe('warning');
    const wider = Number(/with (\d+) mm/.exec(finding?.fix ?? '')?.[1]);
    expect(wider - figure(ledger, 'die.bars-width')).toBeGreaterThanOrEqual(figure(ledger, 'die.overhang-width') - 1);
    expect(figure(ledger, 'die.width')).toBeLessThanOrEqual(figure(ledger, 'die.bars-width'));
  });
  test('slides that leave upright go to the top; two opposite ones put one at the feeder', () => {
    expect(dieOf(LID, `holes:\n${hole('A', '-y')}`).text('die.slide-side', 'S1')).toBe('top');
    const both = dieOf(LID, `holes:\n${hole('A', 'y')}${hole('B', '-y')}`);
    expect(['S1', 'S2'].map((slide) => both.text('die.slide-side', slide))).toEqual(['top', 'bottom']);
    expect(findingsOf(both).get('die/slide-at-feeder')?.severity).toBe('warning');
  });
  test('slides between cavities widen the field', () => {
    const ledger = dieOf(withCavities(LID, 4, { ...LARGE, 'die.columns': '2', 'die.rows': '2' }), `holes:\n${hole('A', 'x')}${hole('B', '-x')}`);
    const steel = figure(ledger, 'die.steel-around');
    expect(figure(ledger, 'die.field-width')).toBeCloseTo(2 * 238 + steel + figure(ledger, 'die.slide-room[S1]') + figure(ledger, 'die.slide-room[S2]'), 9);
    expect(findingsOf(ledger).get('die/slide-between')?.severity).toBe('warning');
  });
  test('an oblique opening has its own sides', () => {
    const text = `diewright: part/1\npart: { name: Oblique }\nalloy: A380\ngeometry:\n  volume: 100 cm3\n  envelope: [120 mm, 80 mm, 60 mm]\n  projected_area: { z: 80 cm2 }\n  wall: { nominal: 3 mm }\n  die_opening: [0, 0.5, 1]\n  parting_line: 400 mm\nholes:\n${hole('A', 'x')}`;
    const ledger = dieOfText(text);
    expect(['left', 'right', 'top', 'bottom']).toContain(ledger.text('die.slide-side', 'S1'));
  });
});
