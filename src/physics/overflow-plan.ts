import { defineFormula } from '../kernel/formula.ts';

/** Parting line of one cavity where the drawing does not give it: the outline of the envelope across the die opening. */
export const partingLineEstimate = defineFormula({
  id: 'overflow.parting-line',
  title: 'Parting line of one cavity, estimated',
  symbol: 'L_p',
  inputs: {
    side_a: { symbol: 'a', unit: 'mm', meaning: 'longer side of the part across the die opening', range: [5, 3000] },
    side_b: { symbol: 'b', unit: 'mm', meaning: 'shorter side of the part across the die opening', range: [5, 3000] },
  },
  unit: 'mm',
  equation: '2 * (a + b)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a rectangular outline; a round part has 21 % less, a branched one more',
  compute: ({ side_a, side_b }) => 2 * (side_a + side_b),
});

/** Number of overflows: several modest ones along the half of the parting line that fills last; none without a volume. */
export const overflowNumber = defineFormula({
  id: 'overflow.number',
  title: 'Overflows of one cavity',
  symbol: 'n_o',
  inputs: {
    volume: { symbol: 'V_o', unit: 'cm3', meaning: 'overflow volume of one cavity', range: [0, 10000], domain: 'not-negative' },
    parting_line: { symbol: 'L_p', unit: 'mm', meaning: 'length of the parting line of one cavity', range: [20, 20000] },
    spacing: { symbol: 's', unit: 'mm', meaning: 'distance from overflow to overflow', range: [20, 150] },
    least: { symbol: 'n_1', unit: '1', meaning: 'least number of overflows', range: [1, 4] },
  },
  unit: '1',
  equation: 'V_o > 0 ? max(n_1, ceil(L_p / (2 * s))) : 0',
  outside: 'extrapolate',
  source: ['OVERFLOWS-DIGEST'],
  status: 'practice',
  accuracy: 'several modest overflows rather than few large ones is published, the spacing is a planning figure; the flow pattern decides',
  compute: (x) => (x.volume > 0 ? Math.max(x.least, Math.ceil(x.parting_line / (2 * x.spacing))) : 0),
});

/** Volume of one overflow. */
export const overflowEach = defineFormula({
  id: 'overflow.each',
  title: 'Volume of one overflow',
  symbol: 'V_1',
  inputs: {
    volume: { symbol: 'V_o', unit: 'cm3', meaning: 'overflow volume of one cavity', range: [0.01, 10000] },
    number: { symbol: 'n_o', unit: '1', meaning: 'number of overflows', range: [1, 200] },
  },
  unit: 'cm3',
  equation: 'V_o / n_o',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; segments of unequal volume want overflows of unequal volume',
  compute: ({ volume, number }) => volume / number,
});

/** Depth of the overflows: deeper than the wall, so that the metal in them stays hot, within what is shallow and deep. */
export const overflowDepth = defineFormula({
  id: 'overflow.depth',
  title: 'Depth of the overflows',
  symbol: 'd_o',
  inputs: {
    wall: { symbol: 'h', unit: 'mm', meaning: 'nominal wall', range: [0.4, 25] },
    multiple: { symbol: 'k', unit: '1', meaning: 'depth over the wall', range: [1, 8] },
    least: { symbol: 'd_1', unit: 'mm', meaning: 'shallowest', range: [1, 20] },
    greatest: { symbol: 'd_2', unit: 'mm', meaning: 'deepest', range: [2, 40] },
  },
  unit: 'mm',
  equation: 'min(max(k * h, d_1), d_2)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule; the flow pattern and the room in the die decide',
  compute: (x) => Math.min(Math.max(x.multiple * x.wall, x.least), x.greatest),
});

/** Projected area of the overflows of one cavity. */
export const overflowArea = defineFormula({
  id: 'overflow.area',
  title: 'Projected area of the overflows of one cavity',
  symbol: 'A_o',
  inputs: {
    volume: { symbol: 'V_o', unit: 'cm3', meaning: 'overflow volume of one cavity', range: [0, 10000], domain: 'not-negative' },
    depth: { symbol: 'd_o', unit: 'mm', meaning: 'depth of the overflows', range: [1, 40] },
  },
  unit: 'cm2',
  equation: '10 * V_o / d_o',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for upright sides; with their draft overflows are a little wider at the parting plane',
  compute: ({ volume, depth }) => (10 * volume) / depth,
});

/** Overflow area over casting area. */
export const overflowAreaShare = defineFormula({
  id: 'overflow.area-share',
  title: 'Overflow area, share of the casting area',
  symbol: 's_o',
  inputs: {
    area: { symbol: 'A_o', unit: 'cm2', meaning: 'projected area of the overflows', range: [0, 20000], domain: 'not-negative' },
    casting_area: { symbol: 'A_c', unit: 'cm2', meaning: 'projected area of the casting', range: [0.1, 20000] },
  },
  unit: '%',
  equation: '100 * A_o / A_c',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ area, casting_area }) => (100 * area) / casting_area,
});

/** Wall that a square overflow counts as: twice its volume over its surface. */
export const overflowWall = defineFormula({
  id: 'overflow.wall',
  title: 'Wall that an overflow counts as',
  symbol: 'h_e',
  inputs: {
    area: { symbol: 'A_o', unit: 'cm2', meaning: 'projected area of the overflows', range: [0.01, 20000] },
    number: { symbol: 'n_o', unit: '1', meaning: 'number of overflows', range: [1, 1000] },
    depth: { symbol: 'd_o', unit: 'mm', meaning: 'depth of the overflows', range: [1, 40] },
  },
  unit: 'mm',
  equation: 's * d_o / (s + 2 * d_o)',
  where: [{ symbol: 's', equation: '10 * sqrt(A_o / n_o)' }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'equal volume over surface (the modulus of founders) for square overflows of one size; long ones freeze sooner',
  compute: ({ area, number, depth }) => {
    const side = 10 * Math.sqrt(area / number);
    return (side * depth) / (side + 2 * depth);
  },
});

/** Overflow share by a smooth fit over the wall: a check on the table. */
export const overflowShareFit = defineFormula({
  id: 'overflow.share-fit',
  title: 'Overflow share by a textbook fit',
  symbol: 'o_f',
  inputs: { wall: { symbol: 'h', unit: 'mm', meaning: 'mean wall', range: [0.8, 6] } },
  unit: '%',
  equation: '80 / h^1.25',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered; meets the table at 2.5 mm, gives up to 1.6 times less on thin walls and does not end at 3.2 mm',
  compute: ({ wall }) => 80 / wall ** 1.25,
});

/** Area of all overflow gates of one cavity. */
export const overflowGateArea = defineFormula({
  id: 'overflow.gate-area',
  title: 'Overflow gate area of one cavity',
  symbol: 'A_og',
  inputs: {
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of one cavity', range: [1, 20000] },
    share: { symbol: 's', unit: '%', meaning: 'overflow gates as a share of the gate area', range: [40, 80] },
  },
  unit: 'mm2',
  equation: 'A_g * s / 100',
  outside: 'extrapolate',
  source: ['OVERFLOWS-DIGEST'],
  status: 'source',
  accuracy: 'one digest has 50 %, handbooks have 60 to 75 % (memory)',
  compute: ({ gate_area, share }) => (gate_area * share) / 100,
});

/** Thickness of the overflow gates: the middle of their range, and more behind a thick gate. */
export const overflowGateThickness = defineFormula({
  id: 'overflow.gate-thickness',
  title: 'Overflow gate thickness',
  symbol: 'T_o',
  inputs: {
    least: { symbol: 'T_1', unit: 'mm', meaning: 'thinnest of the family', range: [0.2, 2] },
    greatest: { symbol: 'T_2', unit: 'mm', meaning: 'thickest of the family', range: [0.2, 3] },
    gate_thickness: { symbol: 'T_g', unit: 'mm', meaning: 'thickness of the gate', range: [0.2, 12] },
    gate_share: { symbol: 'q', unit: '1', meaning: 'overflow gate over gate', range: [0.2, 1] },
    thickest: { symbol: 'T_3', unit: 'mm', meaning: 'thickest of any alloy', range: [0.5, 3] },
  },
  unit: 'mm',
  equation: 'max((T_1 + T_2) / 2, min(q * T_g, T_3))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule; an overflow gate must break off and must not drain the cavity before it is full',
  compute: (x) => Math.max((x.least + x.greatest) / 2, Math.min(x.gate_share * x.gate_thickness, x.thickest)),
});

/** Width of the gate of one overflow. */
export const overflowGateWidth = defineFormula({
  id: 'overflow.gate-width',
  title: 'Gate width of one overflow',
  symbol: 'w_o',
  inputs: {
    area: { symbol: 'A_og', unit: 'mm2', meaning: 'overflow gate area of one cavity', range: [0.5, 15000] },
    number: { symbol: 'n_o', unit: '1', meaning: 'number of overflows', range: [1, 200] },
    thickness: { symbol: 'T_o', unit: 'mm', meaning: 'thickness of the overflow gate', range: [0.3, 2] },
  },
  unit: 'mm',
  equation: 'A_og / (n_o * T_o)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for overflows of one size',
  compute: (x) => x.area / (x.number * x.thickness),
});
