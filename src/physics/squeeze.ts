import { defineFormula } from '../kernel/formula.ts';

/** Largest gate that a cavity can have: the width that the parting line gives, as thick as squeeze casting makes it. */
export const largestGate = defineFormula({
  id: 'squeeze.largest-gate',
  title: 'Largest gate of one cavity',
  symbol: 'A_2',
  inputs: {
    width: { symbol: 'w', unit: 'mm', meaning: 'greatest gate width of one cavity', range: [5, 3000] },
    thickness: { symbol: 'T', unit: 'mm', meaning: 'thickest gate of squeeze casting', range: [2, 20] },
    wall: { symbol: 'h', unit: 'mm', meaning: 'wall beside the gate: a gate is about as thick as it and no thicker', range: [2, 20] },
  },
  unit: 'mm2',
  equation: 'w * min(T, h)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a first look at what fits; where the gate stands decides',
  compute: ({ width, thickness, wall }) => width * Math.min(thickness, wall),
});

/** Time in which a volume passes a gate at a velocity. */
export const squeezeFillTime = defineFormula({
  id: 'squeeze.fill-time',
  title: 'Fill time through a gate at a velocity',
  symbol: 't',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'flow volume of one cavity', range: [0.1, 100000] },
    area: { symbol: 'A', unit: 'mm2', meaning: 'gate area', range: [10, 50000] },
    velocity: { symbol: 'v_g', unit: 'm/s', meaning: 'gate velocity', range: [0.05, 100] },
  },
  unit: 'ms',
  equation: '1000 * V / (v_g * A)',
  outside: 'extrapolate',
  source: ['GL-GATE-AREA'],
  status: 'derived',
  accuracy: 'exact for a full gate and a constant flow',
  compute: ({ volume, area, velocity }) => (1000 * volume) / (velocity * area),
});

/** How far the metal at the gate lies above its liquidus. */
export const superheat = defineFormula({
  id: 'squeeze.superheat',
  title: 'Superheat at the gate',
  symbol: 'dT',
  inputs: {
    gate_temperature: { symbol: 'T_i', unit: 'degC', meaning: 'metal temperature at the gate', range: [200, 1200], domain: 'any' },
    liquidus: { symbol: 'T_l', unit: 'degC', meaning: 'liquidus of the alloy', range: [150, 1150], domain: 'any' },
  },
  unit: 'K',
  equation: 'T_i - T_l',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; negative when the metal arrives with solids in it',
  compute: (x) => x.gate_temperature - x.liquidus,
});
