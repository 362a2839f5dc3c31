import { describe, expect, it } from 'vitest';
import { codes, review } from './parts.ts';

const WALL = {
  geometry: '{ volume: 412 cm3, envelope: [238 mm, 142 mm, 60 mm], projected_area: { z: 240 cm2 }, wall: { nominal: 3 mm } }',
};
const dimension = (more: string) => ({ ...WALL, dimensions: `[{ id: D, ${more} }]` });

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
