import { describe, expect, it } from 'vitest';
import { groupSlides } from '../../../src/engine/steps/parting/cores.ts';
import { across, degreesBetween, dot, type Feature, type Vector } from '../../../src/engine/steps/parting/directions.ts';
import { partingStep } from '../../../src/engine/steps/parting/index.ts';
import { codes, review } from './parts.ts';

const blind = (id: string, direction: string, more = ''): string => `{ id: ${id}, diameter: 8 mm, depth: 16 mm, kind: blind, direction: ${direction}${more} }`;
const through = (id: string, direction: string, more = ''): string =>
  `{ id: ${id}, diameter: 8 mm, depth: 16 mm, kind: through, direction: ${direction}${more} }`;
const holes = (...list: string[]): { holes: string } => ({ holes: `[${list.join(', ')}]` });
const undercut = (id: string, direction: string, more = ''): string => `{ id: ${id}, direction: ${direction}, depth: 9 mm, face_area: 12 cm2${more} }`;
const SIZES = 'volume: 100 cm3, wall: { nominal: 3 mm }';

describe('core pulls are the directions off the die opening', () => {
  it.each<[string, string[], number]>([
    ['no hole', [], 0],
    ['holes along the opening, both ways', [blind('A', 'z'), blind('B', '-z')], 0],
    ['two holes the same way', [blind('A', 'x'), blind('B', '[1, 0, 0]')], 1],
    ['two holes from opposite sides', [blind('A', 'x'), blind('B', '-x')], 2],
    ['one hole on each of four sides', [blind('A', 'x'), blind('B', '-x'), blind('C', 'y'), blind('D', '-y')], 4],
    ['directions half a degree apart share a slide', [blind('A', 'x'), blind('B', '[1, 0.0087, 0]')], 1],
    ['directions two degrees apart do not', [blind('A', 'x'), blind('B', '[1, 0.035, 0]')], 2],
    ['the count of equal holes is no count of slides', [blind('A', 'y', ', count: 6')], 1],
  ])('%s', (_, list, expected) => {
    const ledger = review({
      ...(list.length === 0 ? {} : holes(...list)),
      geometry: `{ ${SIZES}, envelope: [200 mm, 200 mm, 50 mm], projected_area: { z: 300 cm2 } }`,
    });
    expect(ledger.text('parting.die-opening')).toBe('z');
    expect(ledger.value('parting.core-pulls').value).toBe(expected);
    expect(ledger.decisions.get('parting.core-pulls')?.value).toBe(String(expected));
    expect([...ledger.values.keys()].filter((id) => id.startsWith('slide.face-area['))).toHaveLength(expected);
    expect([...ledger.values.keys()].filter((id) => id.startsWith('slide.lock-angle['))).toHaveLength(expected);
  });

  it('a through hole takes the side that has a slide, before or after it in the file', () => {
    for (const list of [
      [through('T', 'x'), blind('B', '-x')],
      [blind('B', '-x'), through('T', 'x')],
    ]) {
      const ledger = review(holes(...list));
      expect(ledger.value('parting.core-pulls').value).toBe(1);
      expect(ledger.text('slide.direction', 'S1')).toBe('-x');
      expect(ledger.text('parting.hole-core', 'T')).toBe('slide S1');
    }
  });

  it('a through hole between slides on both sides goes the way it is drawn', () => {
    const ledger = review(holes(blind('A', '-x'), blind('B', 'x'), through('T', 'x')));
    expect(ledger.text('parting.hole-core', 'T')).toBe(ledger.text('parting.hole-core', 'B'));
    expect(ledger.value('parting.core-pulls').value).toBe(2);
  });

  it('an undercut shares the slide of a hole that leaves the same way', () => {
    const ledger = review({ ...holes(blind('A', '-x')), undercuts: `[${undercut('U', '-x')}]` });
    expect(ledger.value('parting.core-pulls').value).toBe(1);
    expect(ledger.text('slide.forms', 'S1')).toBe('A, U');
  });

  it('grouping does not depend on the order of blind features', () => {
    const feature = (id: string, direction: Vector, isThrough = false): Feature => ({ kind: 'hole', id, direction, text: id, through: isThrough });
    const list = [feature('a', [1, 0, 0]), feature('b', [0, 1, 0]), feature('c', [1, 0, 0]), feature('t', [0, -1, 0], true)];
    for (const order of [list, [...list].reverse()]) {
      const groups = groupSlides(order, 1).map((group) =>
        group.features
          .map((f) => f.id)
          .sort()
          .join(''),
      );
      expect(groups.sort()).toEqual(['ac', 'bt']);
    }
  });
});

describe('the die opening', () => {
  const AREAS = 'projected_area: { x: 60 cm2, y: 90 cm2, z: 250 cm2 }';
  it('is the axis with the fewest core pulls, with all three tried and shown', () => {
    const ledger = review({
      geometry: `{ ${SIZES}, envelope: [200 mm, 140 mm, 50 mm], ${AREAS} }`,
      ...holes(blind('A', 'x'), blind('B', '-x'), blind('C', 'x')),
    });
    expect(ledger.text('parting.die-opening')).toBe('x');
    expect(ledger.value('parting.core-pulls').value).toBe(0);
    expect(['x', 'y', 'z'].map((axis) => ledger.value('parting.core-pulls-tried', axis).value)).toEqual([0, 2, 2]);
    expect(ledger.decisions.get('parting.die-opening')?.alternatives.map((a) => a.value)).toEqual(['z', 'y']);
    expect(ledger.value('part.depth').value).toBe(200);
    expect(ledger.value('part.projected-area').value).toBe(60);
    expect([ledger.value('part.side-a').value, ledger.value('part.side-b').value]).toEqual([140, 50]);
    const table = partingStep.show(ledger).find((block) => block.kind === 'table' && block.title === 'Die openings tried');
    expect(table?.kind === 'table' && table.rows.map((row) => row[0])).toEqual(['x', 'y', 'z']);
  });

  it('then the one with the least depth of draw, then the least projected area', () => {
    const depth = review({ geometry: `{ ${SIZES}, envelope: [200 mm, 140 mm, 50 mm], ${AREAS} }` });
    expect(depth.text('parting.die-opening')).toBe('z');
    const cube = review({ geometry: `{ ${SIZES}, envelope: [60 mm, 60 mm, 60 mm], projected_area: { x: 30 cm2, y: 20 cm2, z: 25 cm2 } }` });
    expect(cube.text('parting.die-opening')).toBe('y');
  });

  it('without a projected area is tried but comes last, and the plan says that it would save core pulls', () => {
    const ledger = review(holes(blind('A', 'x')));
    expect(ledger.text('parting.die-opening')).toBe('z');
    expect(ledger.value('parting.core-pulls').value).toBe(1);
    expect(ledger.decisions.get('parting.die-opening')?.alternatives.find((a) => a.value === 'x')?.because).toContain('no projected area given');
    expect(codes(ledger)).toContain('parting/other-opening');
    expect(codes(ledger)).not.toContain('parting/die-opening');
    const finding = ledger.findings.find(({ code }) => code === 'parting/other-opening');
    expect(finding?.message).toContain('along z asks for 1 core pull; by the holes and undercuts alone it would be 0 core pulls along x');
    expect(finding?.message).not.toContain('reaches');
  });

  it('as given is kept and judged, with the envelope standing in for an area that is not given', () => {
    const ledger = review({
      geometry: `{ ${SIZES}, envelope: [200 mm, 140 mm, 50 mm], projected_area: { z: 250 cm2 }, die_opening: x }`,
      ...holes(blind('A', 'z')),
    });
    expect(ledger.decisions.get('parting.die-opening')).toMatchObject({ value: 'x', kind: 'input' });
    expect(ledger.value('part.projected-area')).toMatchObject({ value: 70, kind: 'assumption' });
    expect(codes(ledger)).toEqual(expect.arrayContaining(['parting/area-given', 'parting/die-opening']));
  });

  it('as pinned is kept, and a word that is no axis is refused', () => {
    const pinned = review({ pinned: '{ parting.die-opening: y }' });
    expect(pinned.decisions.get('parting.die-opening')).toMatchObject({ value: 'y', kind: 'pinned' });
    expect(pinned.value('part.depth').value).toBe(142);
    const wrong = review({ pinned: '{ parting.die-opening: up }' });
    expect(wrong.text('parting.die-opening')).toBe('z');
    expect(codes(wrong)).toContain('spec/unknown-word');
  });

  it('along a vector has the depth of the turned envelope', () => {
    const ledger = review({ geometry: `{ ${SIZES}, envelope: [100 mm, 80 mm, 60 mm], projected_area: { z: 60 cm2 }, die_opening: [0, 1, 1] }` });
    expect(ledger.text('parting.die-opening')).toBe('[0, 1, 1]');
    // (80 + 60) / sqrt(2), along and across; x stays 100.
    expect(ledger.value('part.depth').value).toBeCloseTo(98.99, 1);
    expect(ledger.value('part.side-a').value).toBeCloseTo(100, 6);
    expect(ledger.value('part.side-b').value).toBeCloseTo(98.99, 1);
  });

  it('directions across an oblique axis are at right angles', () => {
    const axis: Vector = [0.48, 0.6, 0.64];
    const [a, b] = across(axis);
    for (const pair of [dot(a, b), dot(a, axis), dot(b, axis)]) expect(Math.abs(pair)).toBeLessThan(1e-12);
    expect(degreesBetween([1, 0, 0], [-1, 0, 0])).toBe(180);
  });
});

describe('fixed cores and what no core reaches', () => {
  it('the half with more core surface keeps the casting and is the ejector half', () => {
    const ledger = review(holes(blind('DEEP', '-z', ', count: 4'), blind('SHORT', 'z'), through('T', 'z')));
    expect(ledger.text('parting.ejector-side')).toBe('minus side');
    expect(ledger.text('parting.hole-core', 'DEEP')).toBe('ejector half');
    expect(ledger.text('parting.hole-core', 'SHORT')).toBe('cover half');
    expect(ledger.text('parting.hole-core', 'T')).toBe('ejector half');
  });

  it('an oblique hole is drilled, with a warning; an oblique undercut is an error', () => {
    const ledger = review({ ...holes(blind('A', '[1, 0, 1]')), undercuts: `[${undercut('U', '[1, 0, 1.2]')}]` });
    expect(ledger.text('parting.hole-place', 'A')).toBe('drilled');
    expect(ledger.text('hole.making', 'A')).toBe('drilled');
    expect(ledger.text('parting.undercut-place', 'U')).toBe('machined');
    expect(ledger.value('parting.core-pulls').value).toBe(0);
    expect(ledger.value('parting.unreachable').value).toBe(2);
    expect(codes(ledger)).toEqual(expect.arrayContaining(['hole/reachable[A]', 'undercut/reachable[U]']));
    expect(ledger.findings.find((f) => f.code === 'hole/reachable')?.at?.path).toBe('holes[0].diameter');
  });

  it('a slide out of the parting plane is special', () => {
    const ledger = review(holes(blind('A', '[1, 0, 0.27]')));
    expect(ledger.value('slide.rise', 'S1').value).toBeCloseTo(15.1, 1);
    expect(codes(ledger)).toContain('slide/oblique[S1]');
  });

  it('a hole pinned to be drilled asks for no slide in any opening', () => {
    const ledger = review({ ...holes(blind('A', 'x'), blind('B', 'y')), pinned: '{ "parting.hole-place[A]": drilled }' });
    expect(ledger.value('parting.core-pulls').value).toBe(1);
    expect(ledger.text('slide.forms', 'S1')).toBe('B');
    expect(ledger.decisions.get('parting.hole-place[A]')).toMatchObject({ kind: 'pinned', value: 'drilled' });
  });

  it('a pinned count of core pulls is kept and judged against the slides', () => {
    const ledger = review({ ...holes(blind('A', 'x'), blind('B', 'y')), pinned: '{ parting.core-pulls: 1 }' });
    expect(ledger.value('parting.core-pulls').value).toBe(1);
    expect(ledger.decisions.get('parting.core-pulls')).toMatchObject({ kind: 'pinned', value: '1' });
    expect(codes(ledger)).toContain('parting/core-pulls');
  });
});

describe('the parting line', () => {
  it('is the one given, else the outline of the envelope, marked as an assumption', () => {
    expect(review().value('part.parting-line')).toMatchObject({ value: 760, kind: 'assumption' });
    const given = review({ geometry: `{ ${SIZES}, envelope: [238 mm, 142 mm, 46 mm], projected_area: { z: 268 cm2 }, parting_line: 700 mm }` });
    expect(given.value('part.parting-line')).toMatchObject({ value: 700, kind: 'input' });
  });
});
