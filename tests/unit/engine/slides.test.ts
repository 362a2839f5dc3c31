import { describe, expect, it } from 'vitest';
import { partingStep } from '../../../src/engine/steps/parting/index.ts';
import { codes, review } from './parts.ts';

const blind = (id: string, direction: string, more = ''): string => `{ id: ${id}, diameter: 8 mm, depth: 16 mm, kind: blind, direction: ${direction}${more} }`;
const holes = (...list: string[]): { holes: string } => ({ holes: `[${list.join(', ')}]` });
const undercut = (id: string, direction: string, more = ''): string => `{ id: ${id}, direction: ${direction}, depth: 9 mm, face_area: 12 cm2${more} }`;
const SIZES = 'volume: 100 cm3, wall: { nominal: 3 mm }';

describe('slides', () => {
  const one = (depth: string, more: Readonly<Record<string, string>> = {}) =>
    review({
      geometry: `{ ${SIZES}, envelope: [400 mm, 200 mm, 40 mm], projected_area: { z: 600 cm2 } }`,
      undercuts: `[{ id: U, direction: x, depth: ${depth}, face_area: 12 cm2 }]`,
      ...more,
    });

  it('make a stroke of depth, boss and clearance (toolmaker’s rule, 5 to 10 mm)', () => {
    const ledger = review({ undercuts: `[${undercut('U', 'x', ', boss: 4 mm')}]` });
    expect(ledger.value('slide.stroke', 'S1').value).toBe(9 + 4 + ledger.value('slide.clearance').value);
  });

  // W26: a stroke of 30 mm at 18 degrees keeps the pin engaged over 92.3 mm; geometry.
  it('a stroke of 30 mm at 18 degrees takes 92.3 mm of opening and 97.1 mm of pin', () => {
    const ledger = one('22 mm');
    expect(ledger.value('slide.stroke', 'S1').value).toBe(30);
    expect(ledger.value('slide.pin-angle', 'S1').value).toBe(18);
    expect(ledger.value('slide.pin-engagement', 'S1').value).toBeCloseTo(92.3, 1);
    expect(ledger.value('slide.pin-length', 'S1').value).toBeCloseTo(97.1, 1);
    expect(ledger.value('slide.lock-angle', 'S1').value).toBe(21);
    expect(ledger.text('parting.slide-drive', 'S1')).toBe('angle pin');
  });

  // The part opens the die by 2 x 40 + 120 = 200 mm: 65 mm at 18 degrees, 80.8 mm at 22 degrees.
  it.each([
    ['56 mm', 'angle pin'],
    ['58 mm', 'steep angle pin'],
    ['72 mm', 'steep angle pin'],
    ['74 mm', 'hydraulic cylinder'],
  ])('an undercut of %s is driven by: %s', (depth, drive) => {
    const ledger = one(depth);
    expect(ledger.text('parting.slide-drive', 'S1')).toBe(drive);
    const engaged = ledger.maybe('slide.pin-engagement', 'S1');
    if (drive === 'hydraulic cylinder') expect(engaged).toBeUndefined();
    else expect(engaged?.value).toBeLessThanOrEqual(200 + 1e-9);
  });

  it('the drive of one slide can be pinned', () => {
    const ledger = one('22 mm', { pinned: '{ "parting.slide-drive[S1]": hydraulic cylinder }' });
    expect(ledger.decisions.get('parting.slide-drive[S1]')).toMatchObject({ kind: 'pinned', value: 'hydraulic cylinder' });
    expect(ledger.value('slide.lock-angle', 'S1').value).toBeGreaterThan(0);
  });

  it('faces add up: pi d2 / 4 for each hole, and the undercut', () => {
    const ledger = review({ ...holes(blind('A', 'x', ', count: 3')), undercuts: `[${undercut('U', 'x')}]` });
    expect(ledger.value('slide.face-area', 'S1').value).toBeCloseTo(12 + (3 * Math.PI * 0.8 ** 2) / 4, 9);
  });

  it('the pulling force rests on remembered figures, and magnesium has none', () => {
    const ledger = one('22 mm');
    expect(ledger.value('slide.pulling-force', 'S1')).toMatchObject({ unit: 'kN', status: 'memory' });
    const magnesium = review({ undercuts: `[${undercut('U', 'x')}]` }, 'AZ91D');
    expect(magnesium.maybe('slide.pulling-force', 'S1')).toBeUndefined();
    // The draft of its core is asked for all the same; magnesium takes less than aluminium.
    expect(magnesium.value('slide.draft', 'S1').value).toBeLessThan(review({ undercuts: `[${undercut('U', 'x')}]` }).value('slide.draft', 'S1').value);
    expect(magnesium.unchecked.map((entry) => entry.id)).toContain('slide.grip-pressure');
  });

  it('more than four are special', () => {
    const five = review(holes(blind('A', 'x'), blind('B', '-x'), blind('C', 'y'), blind('D', '-y'), blind('E', '[1, 1, 0]')));
    expect(codes(five)).toContain('parting/sides');
  });

  it('bring lines for the die maker, which a part without slides has not', () => {
    const said = (ledger: ReturnType<typeof review>): string => JSON.stringify(partingStep.show(ledger));
    expect(said(one('22 mm'))).toMatch(/Angle pins have a play/);
    expect(said(one('22 mm'))).not.toMatch(/limit switches/);
    expect(said(one('150 mm'))).toMatch(/limit switches/);
    expect(said(review())).not.toMatch(/No ejector pin/);
  });
});
