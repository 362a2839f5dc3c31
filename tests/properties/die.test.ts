import { describe, expect, it } from 'vitest';
import { calc, forAll } from './calc.ts';

const PLATE: readonly (readonly [number, number])[] = [
  [1, 60],
  [60, 600],
  [25, 150],
  [190, 215],
];

describe('plates and pillars', () => {
  it('the bow grows with pressure, with the fourth power of the span, and falls with the cube of the thickness', () => {
    forAll(PLATE, (pressure, span, thickness, modulus) => {
      const x = { pressure, span, thickness, modulus };
      const bow = calc('die.plate-bow', x);
      expect(calc('die.plate-bow', { ...x, pressure: 2 * pressure })).toBeCloseTo(2 * bow, 6);
      expect(calc('die.plate-bow', { ...x, span: span / 2 }) / bow).toBeCloseTo(1 / 16, 9);
      expect(calc('die.plate-bow', { ...x, thickness: 2 * thickness }) / bow).toBeCloseTo(1 / 8, 9);
    });
  });
  it('with the rows worked out the bow is allowed, with one row less it is not', () => {
    forAll(PLATE, (pressure, span, thickness, modulus) => {
      const x = { pressure, thickness, modulus };
      const rows = calc('die.pillar-rows', { bow: calc('die.plate-bow', { ...x, span }), allowed: 0.05 });
      const bow = (n: number): number => calc('die.plate-bow', { ...x, span: calc('die.bay', { span, rows: n }) });
      expect(bow(rows)).toBeLessThanOrEqual(0.05 * (1 + 1e-6));
      if (rows > 0) expect(bow(rows - 1)).toBeGreaterThan(0.05);
    });
  });
  it('the plate for a bow allowed has that bow', () => {
    forAll(PLATE, (pressure, span, bow100, modulus) => {
      const bow = bow100 / 1000;
      const thickness = calc('die.plate-thickness', { pressure, span, bow, modulus });
      expect(calc('die.plate-bow', { pressure, span, thickness, modulus }) / bow).toBeCloseTo(1, 9);
    });
  });
  it('a pillar of the diameter worked out carries its load', () => {
    forAll(
      [
        [5, 2000],
        [60, 200],
      ],
      (load, allowed) => {
        const diameter = calc('die.pillar-diameter', { load, allowed });
        expect(calc('die.pillar-stress', { load, diameter })).toBeLessThanOrEqual(allowed * (1 + 1e-9));
        expect(calc('die.pillar-stress', { load, diameter: diameter - 5 || 1 })).toBeGreaterThan(allowed);
      },
    );
  });
});

describe('cores', () => {
  it('length and diameter for the bend allowed have that bend, and a bore makes a core weaker', () => {
    forAll(
      [
        [0.5, 8],
        [2, 40],
        [5, 200],
        [0.02, 0.2],
      ],
      (pressure, diameter, height, bend) => {
        const modulus = 200;
        const longest = calc('die.core-greatest-height', { pressure, diameter, bend, modulus });
        expect(calc('die.core-bending', { pressure, diameter, height: longest, modulus }) / bend).toBeCloseTo(1, 6);
        const thickest = calc('die.core-least-diameter', { pressure, height, bend, modulus });
        expect(calc('die.core-bending', { pressure, diameter: thickest, height, modulus }) / bend).toBeCloseTo(1, 6);
        const x = { pressure, diameter, height, modulus };
        expect(calc('die.core-bending', { ...x, bore: 0.7 * diameter })).toBeGreaterThan(calc('die.core-bending', x));
      },
    );
  });
});

describe('face of the die', () => {
  const FACE: readonly (readonly [number, number])[] = [
    [50, 700],
    [40, 120],
    [0, 200],
    [0, 300],
    [150, 1500],
  ];
  it('is never below the least, and above the usual size or the bars only if the least is', () => {
    forAll(FACE, (field, steel, more, room, bars) => {
      const least = field + 2 * steel;
      const x = { least, usual: least + more, room, bars, clearance: 10 };
      const size = calc('die.size', x);
      expect(size).toBeGreaterThanOrEqual(least);
      expect(size).toBeLessThanOrEqual(Math.max(least, Math.min(least + more + room, bars - 10)));
    });
  });
  it('cavities, steel, the slides inside and the size add up, and the steel is never below the least', () => {
    forAll(FACE, (field, steel, more, room, bars) => {
      const least = field + 2 * steel;
      const size = calc('die.size', { least, usual: least + more, room, bars, clearance: 10 });
      const overhang = calc('die.overhang', { least, room, size });
      const side = calc('die.steel-side', { size, field, room, overhang });
      expect(field + 2 * side + room - overhang).toBeCloseTo(size, 6);
      expect(side).toBeGreaterThanOrEqual(steel - 1e-9);
      expect(overhang).toBeLessThanOrEqual(room + 1e-9);
    });
  });
  it('the insert keeps its edge, or gives way in proportion with the holder', () => {
    forAll(
      [
        [40, 300],
        [40, 80],
        [25, 150],
      ],
      (steel, edge, frame) => {
        const got = calc('die.insert-edge', { steel, edge, frame });
        expect(got).toBeLessThanOrEqual(edge + 1e-9);
        expect(got).toBeLessThan(steel);
        if (steel >= edge + frame) expect(got).toBeCloseTo(edge, 9);
        else expect(got / (steel - got)).toBeCloseTo(edge / frame, 6);
      },
    );
  });
});

describe('life', () => {
  it('more cavities, fewer rejects and a longer life never ask for more sets', () => {
    forAll(
      [
        [1000, 5e6],
        [1, 16],
        [0, 20],
        [5000, 2e6],
      ],
      (parts, cavities, reject_share, life) => {
        const sets = (n: number, rejects: number, shots: number): number =>
          calc('die.sets', { shots: calc('die.shots-needed', { parts, cavities: n, reject_share: rejects }), life: shots });
        const all = sets(cavities, reject_share, life);
        expect(sets(cavities + 1, reject_share, life)).toBeLessThanOrEqual(all);
        expect(sets(cavities, reject_share / 2, life)).toBeLessThanOrEqual(all);
        expect(sets(cavities, reject_share, 1.5 * life)).toBeLessThanOrEqual(all);
      },
    );
  });
  it('the swing for an index has that index', () => {
    forAll(
      [
        [0.3, 1.5],
        [300, 1100],
        [150, 212],
        [11, 14],
      ],
      (index, hot_yield, modulus, expansion) => {
        const steel = { modulus, expansion, poisson: 0.3 };
        const swing = calc('die.swing-for-index', { index, hot_yield, ...steel });
        const stress = calc('die.thermal-stress', { swing, ...steel });
        expect(calc('die.heat-check-index', { stress, hot_yield })).toBeCloseTo(index, 9);
      },
    );
  });
});
