import { describe, expect, it } from 'vitest';
import { choose } from '../../../src/engine/choose.ts';
import { designStep } from '../../../src/engine/steps/design/index.ts';
import { codes, review } from './parts.ts';

const shape = (more: string): Readonly<Record<string, string>> => ({
  geometry: `{ volume: 412 cm3, envelope: [238 mm, 142 mm, 60 mm], projected_area: { z: 240 cm2 }, ${more} }`,
});
const WALL = shape('wall: { nominal: 3 mm }');
const hole = (more: string, pinned?: string) => ({
  ...WALL,
  holes: `[{ id: H, kind: blind, direction: z, ${more} }]`,
  ...(pinned === undefined ? {} : { pinned }),
});
const dimension = (more: string) => ({ ...WALL, dimensions: `[{ id: D, ${more} }]` });

describe('draft', () => {
  const wall = (side: string, height: string, draft = '') => ({ ...WALL, walls: `[{ id: W, side: ${side}, height: ${height}${draft} }]` });

  // NADCA S-4A-7, aluminium, inside: 1 in deep, 0.033 in and 1.9 degrees; outside surfaces take half.
  it('of an inside aluminium face 25.4 mm deep is 1.91 degrees, of an outside one half of it', () => {
    const inside = review(wall('inside', '25.4 mm'));
    expect(inside.value('draft.wall-angle', 'W').value).toBeCloseTo(1.91, 2);
    expect(inside.value('draft.wall-taper', 'W').value).toBeCloseTo(0.8467, 3);
    expect(inside.value('draft.least-inside')).toMatchObject({ unit: 'deg', status: 'source' });
    expect(inside.value('draft.least-inside').value).toBe(inside.value('draft.wall-angle', 'W').value);
    expect(inside.value('draft.least-outside').value).toBeCloseTo(0.955, 3);
    expect(review(wall('outside', '25.4 mm')).value('draft.wall-angle', 'W').value).toBeCloseTo(0.955, 3);
  });

  // The same at the precision level, factor 0.8 and C = 40: 1.15 degrees; from memory.
  it('is 1.15 degrees there at the precision level, a remembered figure', () => {
    const precision = review(wall('inside', '25.4 mm')).value('draft.wall-precision', 'W');
    expect(precision.value).toBeCloseTo(1.15, 2);
    expect(precision.status).toBe('memory');
  });

  // Product-standard sheet of a die caster, total angle of the hole: 5, 3, 2 degrees at 0.31, 1 and 2 in, against 5.14, 2.86, 2.02 of the formula.
  it.each([
    [3.2, 7.874, 5.14],
    [6.4, 25.4, 2.86],
    [12.7, 50.8, 2.02],
  ])('of an aluminium hole of %d mm, %d mm deep, is %d degrees in total', (diameter, depth, total) => {
    const ledger = review(hole(`diameter: ${diameter} mm, depth: ${depth} mm`));
    expect(2 * ledger.value('draft.hole-angle', 'H').value).toBeCloseTo(total, 1);
    expect(ledger.value('hole.bottom-diameter', 'H').value).toBeCloseTo(diameter - ledger.value('draft.hole-taper', 'H').value, 9);
  });

  it('is taken for the deepest wall, else for the depth of the part', () => {
    expect(review(WALL).value('draft.depth').value).toBe(60);
    const walls = review({ ...WALL, walls: '[{ id: A, side: inside, height: 20 mm }, { id: B, side: outside, height: 44 mm }]' });
    expect(walls.value('draft.depth').value).toBe(44);
  });

  // Common practice, no single source: the lower an alloy melts, the less draft it needs. Aluminium and magnesium melt alike.
  it('is less the lower the family melts', () => {
    const at = (alloy: string) => {
      const ledger = review(wall('inside', '30 mm'), alloy);
      return {
        melts: ledger.value('alloy.liquidus').value,
        draft: ledger.value('draft.least-inside').value,
        least: ledger.value('draft.absolute-least').value,
      };
    };
    const [zinc, magnesium, aluminium, copper] = [at('Zamak 3'), at('AZ91D'), at('A380'), at('C85800')];
    expect(zinc.melts).toBeLessThan(Math.min(magnesium.melts, aluminium.melts));
    expect(copper.melts).toBeGreaterThan(Math.max(magnesium.melts, aluminium.melts));
    expect(zinc.draft).toBeLessThan(Math.min(magnesium.draft, aluminium.draft));
    expect(copper.draft).toBeGreaterThan(Math.max(magnesium.draft, aluminium.draft));
    expect(zinc.least).toBeLessThan(aluminium.least);
    expect(aluminium.least).toBeLessThan(copper.least);
  });

  it.each([
    ['2 deg', []],
    ['1.91 deg', []],
    ['1.8 deg', ['draft/wall[W]']],
    ['0.5 deg', ['draft/least-taper[W]']],
  ])('drawn with %s on an inside face of 25.4 mm: %j', (draft, expected) => {
    expect(codes(review(wall('inside', '25.4 mm', `, draft: ${draft}`))).filter((code) => code.startsWith('draft/'))).toEqual(expected);
  });

  it('of lead and tin is that of zinc, marked as an assumption', () => {
    const tin = review(WALL, 'CY44A');
    expect(tin.value('draft.constant-inside')).toMatchObject({ kind: 'assumption', value: review(WALL, 'Zamak 3').value('draft.constant-inside').value });
    expect(tin.maybe('draft.least-outside')).toBeDefined();
  });
});

describe('walls', () => {
  // Chinese die-casting design manual, table 2-20: 12 x 20 cm of aluminium, least 1.8, normal 3.0 mm.
  it('of 240 cm2 in aluminium are 1.8 mm at least and 3.0 mm normally', () => {
    const ledger = review(WALL);
    expect([ledger.value('wall.side-area').value, ledger.value('wall.least').value, ledger.value('wall.normal').value]).toEqual([240, 1.8, 3]);
  });
  it('are judged by the part seen along the opening, or half of the surface if that is less', () => {
    const given = review(shape('surface_area: 440 cm2, wall: { nominal: 3 mm }'));
    expect(given.value('wall.side-area').value).toBe(220);
    expect(review(shape('surface_area: 1100 cm2, wall: { nominal: 3 mm }')).value('wall.side-area').value).toBe(240);
    expect(review(WALL).value('wall.side-area').note).toContain('die opening');
  });
  it.each([
    // 240 cm2 on one side of aluminium: 1.8 mm least, 3 mm normal by area; 1.02 mm the least of small castings.
    ['nominal: 3 mm', []],
    ['nominal: 2.9 mm', ['wall/normal']],
    ['least: 1.7 mm, nominal: 3 mm', ['wall/least-by-area']],
    ['least: 1 mm, nominal: 1.9 mm', ['wall/least']],
    ['nominal: 3 mm, greatest: 6.1 mm', ['wall/usual-greatest']],
    ['nominal: 3 mm, greatest: 6.2 mm', ['wall/ratio', 'wall/usual-greatest']],
    ['nominal: 3 mm, greatest: 9.5 mm', ['wall/ratio-great', 'wall/usual-greatest']],
    ['nominal: 6 mm, greatest: 13 mm', ['wall/absolute-greatest', 'wall/ratio']],
  ] as [string, string[], string?][])('{ %s }: %j', (wall, expected, more = '') => {
    expect(
      codes(review(shape(`${more}wall: { ${wall} }`)))
        .filter((code) => code.startsWith('wall/'))
        .sort(),
    ).toEqual(expected);
  });
});

describe('holes', () => {
  // A caster in the United Kingdom: 10 mm wide, 20 mm deep in aluminium, 40 mm in zinc; the trade's own limit is 38 mm at 3/8 in for both.
  it('of 10 mm are cored 20 mm deep without care in aluminium, 40 mm in zinc', () => {
    expect(review(hole('diameter: 10 mm, depth: 20 mm')).value('hole.caution-depth', 'H').value).toBe(20);
    expect(review(hole('diameter: 10 mm, depth: 20 mm'), 'Zamak 3').value('hole.caution-depth', 'H').value).toBe(40);
    expect(review(hole('diameter: 9.525 mm, depth: 20 mm')).value('hole.greatest-depth', 'H').value).toBe(38.1);
  });
  it.each([
    ['diameter: 10 mm, depth: 20 mm', 'usual', 'cored as cast', []],
    ['diameter: 10 mm, depth: 30 mm', 'with care', 'cored as cast', ['hole/caution-depth[H]']],
    ['diameter: 10 mm, depth: 50 mm', 'too deep', 'drilled', ['hole/greatest-depth[H]']],
    ['diameter: 1.8 mm, depth: 3 mm', 'no published figure', 'drilled', ['hole/least-diameter[H]']],
    ['diameter: 30 mm, depth: 60 mm', 'usual', 'cored as cast', []],
    ['diameter: 10 mm, depth: 20 mm, tolerance: 0.3 mm', 'usual', 'cored as cast', ['hole/draft-and-tolerance[H]']],
    ['diameter: 10 mm, depth: 20 mm, tolerance: 0.1 mm', 'usual', 'cored as cast', ['hole/draft-and-tolerance[H]', 'hole/tolerance-precision[H]']],
    ['diameter: 10 mm, depth: 20 mm, tolerance: 0.02 mm', 'usual', 'cored and reamed', ['hole/tolerance-ream[H]']],
    // M8: minor diameter 8 - 1.0825 x 1.25 = 6.65 mm. A mouth of 7.3 mm loses 0.94 mm over 14 mm and ends at 6.36 mm; one of 7.7 mm at 6.76 mm.
    ['diameter: 7.3 mm, depth: 14 mm, thread: M8', 'usual', 'cored, drilled and tapped', ['thread/cored-depth[H]']],
    ['diameter: 7.7 mm, depth: 14 mm, thread: M8', 'usual', 'cored and tapped', ['thread/cored-depth[H]']],
    ['diameter: 5 mm, depth: 10 mm, thread: M5', 'usual', 'cored and tapped', ['thread/cored-depth[H]', 'thread/hole-size[H]']],
  ])('{ %s } is %s and %s', (text, reach, making, expected) => {
    const ledger = review(hole(text));
    expect(ledger.text('hole.reach', 'H')).toBe(reach);
    expect(ledger.text('hole.making', 'H')).toBe(making);
    expect(
      codes(ledger)
        .filter((code) => /^(hole|thread)\//.test(code))
        .sort(),
    ).toEqual(expected);
  });
  it('pinned to be drilled are not judged as cored', () => {
    const ledger = review(hole('diameter: 1.8 mm, depth: 30 mm, tolerance: 0.02 mm', '{ "parting.hole-place[H]": drilled }'));
    expect(ledger.text('hole.making', 'H')).toBe('drilled');
    expect(codes(ledger).filter((code) => code.startsWith('hole/'))).toEqual([]);
  });
  it('that go through along the opening are met by two cores where one would be too long', () => {
    const through = (depth: number, direction = 'z') =>
      review({ ...WALL, holes: `[{ id: H, diameter: 5 mm, depth: ${depth} mm, kind: through, direction: ${direction} }]` });
    expect([through(16).value('hole.cores', 'H').value, through(16).value('hole.core-depth', 'H').value]).toEqual([1, 16]);
    expect([through(30).value('hole.cores', 'H').value, through(30).value('hole.core-depth', 'H').value]).toEqual([2, 15]);
    expect(through(30).text('hole.making', 'H')).toBe('cored as cast');
    expect(through(50).value('hole.core-depth', 'H').value).toBe(50);
    expect(through(30, 'x').text('hole.making', 'H')).toBe('drilled');
  });
  it('whose draft leaves too thin a tip are refused', () => {
    expect(codes(review(hole('diameter: 3.2 mm, depth: 7.5 mm')))).not.toContain('hole/bottom-diameter[H]');
    expect(codes(review(hole('diameter: 2.5 mm, depth: 5 mm')))).toContain('hole/bottom-diameter[H]');
  });
  // Course text on die casting part design: a quarter to a third of the depth; 24 mm deep, 6 to 8 mm.
  it.each([
    ['8 mm', []],
    ['7 mm', ['hole/edge-advised[H]']],
    ['5.9 mm', ['hole/edge-least[H]']],
  ])('24 mm deep with %s to the edge: %j', (edge, expected) => {
    const ledger = review(hole(`diameter: 13 mm, depth: 24 mm, edge_distance: ${edge}`));
    expect(codes(ledger).filter((code) => code.startsWith('hole/edge'))).toEqual(expected);
  });
  // A caster's rule (vendor): three pitches under the thread. M6 x 1 with 12 mm of thread wants 15 mm.
  it('for M6 with two sizes of thread are cored 15 mm deep', () => {
    const ledger = review(hole('diameter: 5.5 mm, depth: 15 mm, thread: M6'));
    expect(ledger.value('thread.cored-depth', 'H').value).toBe(15);
    expect(codes(ledger)).not.toContain('thread/cored-depth[H]');
    expect(codes(review(hole('diameter: 5.5 mm, depth: 14.5 mm, thread: M6')))).toContain('thread/cored-depth[H]');
  });
  // A cut M8 wants 8 - 1.25 = 6.75 mm; a formed one 7.35 mm drilled, or a core from 7.61 to 7.69 down to 7.27 to 7.35 mm.
  it('for M8 are wider when the thread is formed than when it is cut', () => {
    const ledger = review(hole('diameter: 6.8 mm, depth: 22 mm, thread: M8'));
    const sizes = ['tapping-diameter', 'forming-drilled', 'forming-least', 'forming-greatest', 'forming-foot-least', 'forming-foot-greatest'] as const;
    expect(sizes.map((name) => ledger.value(`thread.${name}`, 'H').value)).toEqual([6.75, 7.35, 7.61, 7.69, 7.27, 7.35]);
  });
  it.each([
    ['M16x1.5', 'diameter: 14.5 mm, depth: 34 mm', 'cut', 'no hole for a formed thread'],
    ['M6x0.75', 'diameter: 5.3 mm, depth: 15 mm', 'cut', 'no hole for a formed thread'],
    // Fine and coarse are told by the pitch, not by whether it is written.
    ['M6x1', 'diameter: 5.5 mm, depth: 15 mm', 'formed', 'preferred'],
    ['M6', 'diameter: 5.5 mm, depth: 15 mm', 'formed', 'preferred'],
  ])('for %s, %s, have a %s thread, because the tables have or lack its hole', (thread, size, made, because) => {
    const ledger = review(hole(`${size}, thread: ${thread}`));
    const decision = choose(ledger, 'finish.threading', 'H');
    expect([decision.value, ledger.values.has('thread.forming-drilled[H]')]).toEqual([made, made === 'formed']);
    expect(decision.because).toContain(because);
  });
  it('with a thread of unknown pitch say so instead of guessing', () => {
    const ledger = review(hole('diameter: 10 mm, depth: 15 mm, thread: M12'));
    expect(ledger.maybe('thread.cored-depth', 'H')).toBeUndefined();
    expect(ledger.unchecked.find((entry) => entry.id === 'thread.pitch[H]')?.missing).toContain('M12x1');
    expect(review(hole('diameter: 10 mm, depth: 30 mm, thread: M12x1.75')).value('thread.cored-depth', 'H').value).toBeCloseTo(29.25, 9);
  });
  it('in copper alloys have no figure for usual depth: that is listed, and not an error', () => {
    const ledger = review(hole('diameter: 10 mm, depth: 20 mm'), 'C85800');
    expect(ledger.unchecked.map((entry) => entry.id)).toContain('hole.caution-depth[H]');
    expect(codes(ledger).filter((code) => code.startsWith('table/') || code.startsWith('range/'))).toEqual([]);
  });
});

describe('the section', () => {
  it('shows nothing but filed values, decisions and words', () => {
    const ledger = review({
      ...hole('diameter: 10 mm, depth: 20 mm, thread: M12x1'),
      ...dimension('nominal: 100 mm, tolerance: 0.5 mm'),
      certificate: '{ Fe: 0.9 % }',
    });
    const blocks = designStep.show(ledger);
    const seen = JSON.stringify(blocks).match(/"value":"[^"]+"/g) ?? [];
    for (const entry of seen) expect(ledger.values.has(JSON.parse(`{${entry}}`).value), entry).toBe(true);
    expect(blocks.filter((block) => block.kind === 'table').map((block) => block.title)).toEqual(
      expect.arrayContaining(['Holes', 'Threads', 'Tolerances', 'Cavity sizes', 'Certificate of the melt']),
    );
  });
  it('a plain part has no findings of its own making and no refusals', () => {
    const ledger = review(WALL);
    expect(codes(ledger).filter((code) => /^(draft|wall|hole|tolerance|parting|slide|range|table)\//.test(code))).toEqual([]);
  });
});
