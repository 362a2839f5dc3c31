import { defineFormula } from '../kernel/formula.ts';

/** Volume of the liquid metal that passes a gate, from its mass. */
export const flowVolume = defineFormula({
  id: 'gate.flow-volume',
  title: 'Flow volume through the gate',
  symbol: 'V',
  inputs: {
    mass: { symbol: 'm', unit: 'kg', meaning: 'all metal past the gate: casting, overflows, vacuum channel', range: [0.0005, 250] },
    density: { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the liquid metal at casting temperature', range: [1.5, 11] },
  },
  unit: 'cm3',
  equation: '1000 * m / rho',
  outside: 'extrapolate',
  source: ['GL-GATE-AREA'],
  status: 'source',
  accuracy: 'exact with the density of the liquid metal; that of the solid casting is several per cent higher',
  compute: ({ mass, density }) => (1000 * mass) / density,
});

/** Flow that fills a volume in a time. */
export const gateFlow = defineFormula({
  id: 'gate.flow',
  title: 'Metal flow through the gate',
  symbol: 'Q',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'flow volume', range: [0.1, 100000] },
    time: { symbol: 't', unit: 'ms', meaning: 'fill time', range: [1, 500] },
  },
  unit: 'l/s',
  equation: 'V / t',
  outside: 'extrapolate',
  source: ['DC-WORKSHEET'],
  status: 'source',
  accuracy: 'exact for a constant flow',
  compute: ({ volume, time }) => volume / time,
});

/** Area of the gate for a flow volume, a gate velocity and a fill time. */
export const gateArea = defineFormula({
  id: 'gate.area',
  title: 'Gate area',
  symbol: 'A_g',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'flow volume through this gate, overflows included', range: [0.1, 100000] },
    velocity: { symbol: 'v_g', unit: 'm/s', meaning: 'gate velocity', range: [0.2, 100] },
    time: { symbol: 't', unit: 'ms', meaning: 'fill time', range: [1, 500] },
  },
  unit: 'mm2',
  equation: '1000 * V / (v_g * t)',
  outside: 'extrapolate',
  source: ['GL-GATE-AREA'],
  status: 'source',
  accuracy: 'exact for a full gate and a constant flow',
  compute: ({ volume, velocity, time }) => (1000 * volume) / (velocity * time),
});

/** Velocity in a gate that carries a flow. */
export const velocityFromFlow = defineFormula({
  id: 'gate.velocity-from-flow',
  title: 'Gate velocity at a flow',
  symbol: 'v_g',
  inputs: {
    flow: { symbol: 'Q', unit: 'l/s', meaning: 'metal flow through the gate', range: [0.01, 500] },
    area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area', range: [1, 20000] },
  },
  unit: 'm/s',
  equation: '1000 * Q / A_g',
  outside: 'extrapolate',
  source: ['GL-GATE-AREA'],
  status: 'derived',
  accuracy: 'exact for a full gate',
  compute: ({ flow, area }) => (1000 * flow) / area,
});

/** Width of a gate of even thickness. */
export const gateWidth = defineFormula({
  id: 'gate.width',
  title: 'Gate width',
  symbol: 'w_g',
  inputs: {
    area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area', range: [1, 20000] },
    thickness: { symbol: 'T_g', unit: 'mm', meaning: 'gate thickness', range: [0.2, 12] },
  },
  unit: 'mm',
  equation: 'A_g / T_g',
  outside: 'extrapolate',
  source: ['DC-WORKSHEET'],
  status: 'source',
  accuracy: 'exact',
  compute: ({ area, thickness }) => area / thickness,
});

/** Exponent of the velocity in the atomisation index. */
const ATOMISATION_EXPONENT = 1.71;

const STREAM_INPUTS = {
  thickness: { symbol: 'T_g', unit: 'mm', meaning: 'gate thickness', range: [0.25, 3] },
  density: { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the liquid metal', range: [1600, 7800] },
} as const;

/** Whether the stream leaves the gate as a spray: compare with the index at the edge of atomised flow. */
export const atomisationIndex = defineFormula({
  id: 'gate.atomisation-index',
  title: 'Atomisation index',
  symbol: 'J',
  inputs: { velocity: { symbol: 'v_g', unit: 'm/s', meaning: 'gate velocity', range: [5, 100] }, ...STREAM_INPUTS },
  unit: '1',
  equation: 'v_g^1.71 * T_g * rho',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy:
    'number belongs to m/s, mm and kg/m3; lower edge 526,000, usual least 625,000, thin walls 987,000 (400, 475 and 750 in inch units). Advisory: sources disagree whether a spray is wanted',
  compute: ({ velocity, thickness, density }) => velocity ** ATOMISATION_EXPONENT * thickness * density,
});

/** Gate velocity at which the atomisation index is reached. */
export const leastAtomisedVelocity = defineFormula({
  id: 'gate.least-atomised-velocity',
  title: 'Least gate velocity for an atomised stream',
  symbol: 'v_at',
  inputs: { index: { symbol: 'J', unit: '1', meaning: 'atomisation index asked for', range: [500000, 1000000] }, ...STREAM_INPUTS },
  unit: 'm/s',
  equation: '(J / (T_g * rho))^(1 / 1.71)',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'as the index: advisory, off for structural parts under vacuum and for squeeze casting; 400 against 750 in inch units moves it by 44 %',
  compute: ({ index, thickness, density }) => (index / (thickness * density)) ** (1 / ATOMISATION_EXPONENT),
});
