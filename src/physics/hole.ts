import { defineFormula } from '../kernel/formula.ts';

const DIAMETER = { symbol: 'd', unit: 'mm', meaning: 'diameter of the hole at its mouth', range: [1, 300] } as const;

/** Diameter left at the bottom of a cored hole after its draft. */
export const bottomDiameter = defineFormula({
  id: 'hole.bottom-diameter',
  title: 'Diameter at the bottom of a cored hole',
  symbol: 'd_b',
  inputs: {
    diameter: DIAMETER,
    taper: { symbol: 'D', unit: 'mm', meaning: 'draft distance of the hole, on the diameter', range: [0, 10], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'd - D',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; below zero the core would end in a point before the depth is reached',
  compute: ({ diameter, taper }) => diameter - taper,
});

/** Diameter of the core at the mouth of a hole that is machined to its size afterwards. */
export const coreMouth = defineFormula({
  id: 'hole.core-mouth',
  title: 'Diameter of the core at the mouth of a machined hole',
  symbol: 'd_c',
  inputs: {
    diameter: DIAMETER,
    stock: { symbol: 's', unit: 'mm', meaning: 'stock to be cut, per side', range: [0, 5], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'd - 2 * s',
  requires: [{ text: 'less stock than half the diameter', holds: ({ diameter, stock }) => 2 * stock < diameter }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact where the stock is left at the mouth',
  compute: ({ diameter, stock }) => diameter - 2 * stock,
});

/** What a tool cuts at the bottom of a machined hole, per side: the stock, and the draft of the core on top. */
export const stockAtFoot = defineFormula({
  id: 'hole.stock-foot',
  title: 'Cut at the bottom of a machined hole, per side',
  symbol: 's_f',
  inputs: {
    stock: { symbol: 's', unit: 'mm', meaning: 'stock at the mouth, per side', range: [0, 5], domain: 'not-negative' },
    taper: { symbol: 'D', unit: 'mm', meaning: 'draft distance of the hole, on the diameter', range: [0, 10], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 's + D / 2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the standard draft; a core with less draft leaves less to cut',
  compute: ({ stock, taper }) => stock + taper / 2,
});

/** Depth of a cored hole as a multiple of its diameter, for diameters beyond the depth tables. */
export const depthByRatio = defineFormula({
  id: 'hole.depth-by-ratio',
  title: 'Depth of a cored hole by its diameter',
  symbol: 'h',
  inputs: {
    ratio: { symbol: 'r', unit: '1', meaning: 'depth over diameter', range: [1, 12] },
    diameter: DIAMETER,
  },
  unit: 'mm',
  equation: 'r * d',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the ratio',
  compute: ({ ratio, diameter }) => ratio * diameter,
});

/** Length that one core reaches into a hole: a through hole can be met by two cores from opposite sides. */
export const coreDepth = defineFormula({
  id: 'hole.core-depth',
  title: 'Depth of one core',
  symbol: 'h_c',
  inputs: {
    depth: { symbol: 'h', unit: 'mm', meaning: 'depth of the hole', range: [0.5, 500] },
    cores: { symbol: 'n', unit: '1', meaning: 'cores that meet in the hole', range: [1, 2] },
  },
  unit: 'mm',
  equation: 'h / n',
  outside: 'refuse',
  source: [],
  status: 'derived',
  accuracy: 'cores of equal length; where they meet a step and a film of flash remain',
  compute: ({ depth, cores }) => depth / cores,
});

/** Metal wanted beside a cored hole. */
export const edgeDistance = defineFormula({
  id: 'hole.edge-by-depth',
  title: 'Metal beside a cored hole by its depth',
  symbol: 'b',
  inputs: {
    share: { symbol: 's', unit: '1', meaning: 'metal over depth', range: [0.2, 0.4] },
    depth: { symbol: 'h', unit: 'mm', meaning: 'depth of the hole', range: [1, 150] },
  },
  unit: 'mm',
  equation: 's * h',
  outside: 'extrapolate',
  source: ['CN-COURSE-PARTS holes'],
  status: 'source',
  accuracy: 'rule of thumb of a course text, one quarter to one third of the depth',
  compute: ({ share, depth }) => share * depth,
});

/** Useful length of a tapped thread. */
export const threadLength = defineFormula({
  id: 'thread.length',
  title: 'Length of a tapped thread',
  symbol: 'L_t',
  inputs: {
    ratio: { symbol: 'r', unit: '1', meaning: 'thread length over thread size', range: [1, 3] },
    size: { symbol: 'd', unit: 'mm', meaning: 'nominal size of the thread', range: [1, 64] },
  },
  unit: 'mm',
  equation: 'r * d',
  outside: 'extrapolate',
  source: ['TAP-CHART'],
  status: 'source',
  accuracy: 'usual length in light metals, 2 to 3 sizes; the drawing decides',
  compute: ({ ratio, size }) => ratio * size,
});

/** Hole for a cut thread. */
export const tappingDiameter = defineFormula({
  id: 'thread.tapping-diameter',
  title: 'Hole diameter for a cut thread',
  symbol: 'd_h',
  inputs: {
    size: { symbol: 'd', unit: 'mm', meaning: 'nominal size of the thread', range: [1, 64] },
    pitch: { symbol: 'P', unit: 'mm', meaning: 'pitch of the thread', range: [0.25, 6] },
  },
  unit: 'mm',
  equation: 'd - P',
  requires: [{ text: 'a pitch below the size', holds: ({ size, pitch }) => pitch < size }],
  outside: 'extrapolate',
  source: ['TAP-CHART'],
  status: 'source',
  accuracy: 'gives about 77 % of the full thread; a formed thread wants a wider hole',
  compute: ({ size, pitch }) => size - pitch,
});
