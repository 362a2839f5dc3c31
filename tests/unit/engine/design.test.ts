import { describe, expect, it } from 'vitest';
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
  it('take half of the surface where it is given, and say which', () => {
    const given = review(shape('surface_area: 1100 cm2, wall: { nominal: 3 mm }'));
    expect(given.value('wall.side-area').value).toBe(550);
    expect(given.value('wall.normal').value).toBe(4);
    expect(review(WALL).value('wall.side-area').note).toContain('projected area');
  });
  it.each([
    ['nominal: 3 mm', []],
    ['nominal: 2.9 mm', ['wall/normal']],
    ['least: 1.7 mm, nominal: 3 mm', ['wall/least']],
    ['nominal: 3 mm, greatest: 6.1 mm', ['wall/ratio', 'wall/usual-greatest']],
    ['nominal: 3 mm, greatest: 9.5 mm', ['wall/ratio-great', 'wall/usual-greatest']],
    ['nominal: 6 mm, greatest: 13 mm', ['wall/absolute-greatest', 'wall/ratio']],
  ])('{ %s }: %j', (wall, expected) => {
    expect(
      codes(review(shape(`wall: { ${wall} }`)))
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
    ['diameter: 7.3 mm, depth: 14 mm, thread: M8', 'usual', 'cored and tapped', ['thread/cored-depth[H]']],
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

describe('tolerances', () => {
  // Vendor page that quotes the linear tolerances of the trade for aluminium: 5 in, +/-0.014 in standard (0.35 mm metric), +/-0.006 in precision.
  it('of 127 mm in aluminium are 0.35 mm standard and 0.15 mm precision', () => {
    const ledger = review(dimension('nominal: 127 mm, tolerance: 0.35 mm'));
    expect(ledger.value('tolerance.plus-standard', 'D').value).toBeCloseTo(0.35, 9);
    expect(ledger.value('tolerance.minus-standard', 'D').value).toBeCloseTo(0.35, 9);
    expect(ledger.value('tolerance.plus-precision', 'D').value).toBeCloseTo(0.15, 9);
  });
  it.each([
    ['0.35 mm', 'holds', []],
    ['0.3 mm', 'precision', ['tolerance/standard[D]']],
    ['0.15 mm', 'precision', ['tolerance/standard[D]']],
    ['0.14 mm', 'machine it', ['tolerance/as-cast[D]']],
  ])('of %s asked on 127 mm: %s', (asked, verdict, expected) => {
    const ledger = review(dimension(`nominal: 127 mm, tolerance: ${asked}`));
    expect(ledger.text('tolerance.verdict', 'D')).toBe(verdict);
    expect(codes(ledger).filter((code) => code.startsWith('tolerance/'))).toEqual(expected);
  });
  // The parting line adds on the plus side only; aluminium to 50 in2: 0.190 mm standard, 0.127 mm precision (the same vendor page).
  it('across the parting line grow on the plus side only', () => {
    const ledger = review(dimension('nominal: 127 mm, tolerance: 0.3 mm, across: parting'));
    expect(ledger.value('tolerance.plus-standard', 'D').value).toBeCloseTo(0.54, 9);
    expect(ledger.value('tolerance.minus-standard', 'D').value).toBeCloseTo(0.35, 9);
    expect(ledger.value('tolerance.plus-precision', 'D').value).toBeCloseTo(0.277, 9);
    expect(ledger.value('tolerance.centred-precision', 'D').value).toBeCloseTo(0.2135, 9);
  });
  // 5 in set by a slide of 75 in2: +0.038 / -0.014 in standard, +0.024 / -0.006 in precision; the amount of the slide is remembered.
  it('formed by a slide of 75 in2 are +0.038/-0.014 in standard and +0.024/-0.006 in precision', () => {
    const ledger = review({
      geometry: '{ volume: 2000 cm3, envelope: [400 mm, 300 mm, 200 mm], projected_area: { z: 900 cm2 }, wall: { nominal: 4 mm } }',
      undercuts: '[{ id: U, direction: x, depth: 20 mm, face_area: 75 in2 }, { id: V, direction: y, depth: 20 mm, face_area: 5 cm2 }]',
      dimensions: '[{ id: D, nominal: 5 in, tolerance: 0.5 mm, across: slide, slide: U }, { id: E, nominal: 5 in, tolerance: 0.5 mm, across: slide }]',
    });
    const inches = (id: Parameters<typeof ledger.value>[0], item = 'D') => ledger.value(id, item).value / 25.4;
    expect(inches('tolerance.plus-standard')).toBeCloseTo(0.038, 3);
    expect(inches('tolerance.minus-standard')).toBeCloseTo(0.014, 3);
    expect(inches('tolerance.plus-precision')).toBeCloseTo(0.024, 3);
    expect(inches('tolerance.minus-precision')).toBeCloseTo(0.006, 3);
    expect(ledger.value('tolerance.plus-standard', 'D').status).toBe('memory');
    // Without a name the slide with the greatest face is taken, and the plan says so.
    expect(ledger.value('tolerance.plus-standard', 'E').value).toBe(ledger.value('tolerance.plus-standard', 'D').value);
    expect(ledger.value('tolerance.slide-face', 'E').note).toContain('no slide is named');
  });
  it('formed by a slide that is not there are not judged, and the plan says what is missing', () => {
    const ledger = review({
      ...WALL,
      holes: '[{ id: H, diameter: 8 mm, depth: 10 mm, kind: blind, direction: z }]',
      dimensions: '[{ id: D, nominal: 20 mm, tolerance: 0.5 mm, across: slide, slide: H }]',
    });
    expect(ledger.maybe('tolerance.plus-standard', 'D')).toBeUndefined();
    expect(ledger.unchecked.find((entry) => entry.id === 'tolerance.verdict[D]')?.missing).toContain('half');
  });
  // ISO 8062-3 table 2: 80 mm, DCTG 6 is 0.78 mm wide; 120 mm, DCTG 5 is 0.62 mm.
  it.each([
    ['nominal: 80 mm, tolerance: 0.39 mm', 'DCTG 6', 0.78],
    ['nominal: 120 mm, tolerance: 0.31 mm', 'DCTG 5', 0.62],
    ['nominal: 120 mm, tolerance: 0.309 mm', 'DCTG 4', 0.44],
  ])('{ %s } allows %s', (text, grade, width) => {
    const ledger = review(dimension(text));
    expect(ledger.text('tolerance.iso-grade', 'D')).toBe(grade);
    expect(ledger.value('tolerance.iso-width', 'D').value).toBe(width);
  });
  it('finer than the first ISO grade are said to be', () => {
    expect(review(dimension('nominal: 80 mm, tolerance: 0.05 mm')).text('tolerance.iso-grade', 'D')).toContain('finer');
  });
  it('across a parting line beyond the published areas are left open, not judged', () => {
    const ledger = review({
      geometry: '{ volume: 8000 cm3, envelope: [600 mm, 500 mm, 60 mm], projected_area: { z: 2500 cm2 }, wall: { nominal: 4 mm } }',
      dimensions: '[{ id: D, nominal: 50 mm, tolerance: 0.5 mm, across: parting }]',
    });
    expect(ledger.texts.has('tolerance.verdict[D]')).toBe(false);
    expect(ledger.unchecked.map((entry) => entry.id)).toContain('tolerance.added-standard[D]');
    expect(codes(ledger).filter((code) => code.startsWith('range/tolerance'))).toEqual([]);
  });
});

describe('shrink', () => {
  // A die caster's FAQ (vendor): 0.006 in an inch; 100 mm of A380 is cut 100.60 mm.
  it('makes the cavity of 100 mm of A380 100.60 mm', () => {
    const ledger = review(dimension('nominal: 100 mm, tolerance: 0.5 mm'));
    expect(ledger.value('shrink.cavity-dimension', 'D').value).toBeCloseTo(100.6, 9);
    expect(ledger.value('shrink.added', 'D').value).toBeCloseTo(0.6, 9);
  });
  // By hand with the remembered 385 degC at ejection, 220 degC die and 12 um/(m.K) of steel: 21.8 x 365 - 12 x 200 = 5557 um/m.
  it('is held against contraction by physics, 0.56 % for A380', () => {
    expect(review(WALL).value('shrink.from-contraction').value).toBeCloseTo(0.5557, 4);
    expect(review(WALL).value('shrink.from-contraction').status).toBe('memory');
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
