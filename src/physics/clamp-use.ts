import { defineFormula } from '../kernel/formula.ts';

/** Pressure spike when the full cavity stops the plunger: a multiple of the pressure that drives the metal through the gate. */
export const spikePressure = defineFormula({
  id: 'clamp.spike-pressure',
  title: 'End-of-fill pressure spike',
  symbol: 'p_spike',
  inputs: {
    fill_pressure: { symbol: 'p_fill', unit: 'MPa', meaning: 'metal pressure at the gate during fill', range: [0.5, 80] },
    factor: { symbol: 'k_s', unit: '1', meaning: 'spike over fill pressure, 1.5 braked to 3 unbraked', range: [1, 3] },
  },
  unit: 'MPa',
  equation: 'k_s * p_fill',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'source',
  accuracy: 'a factor of two between a braked and an unbraked shot; lasts a few milliseconds',
  compute: ({ fill_pressure, factor }) => factor * fill_pressure,
});

/** Intensified pressure that really stands in the cavity: that of the class, or what the machine reaches if that is less. */
export const pressureReached = defineFormula({
  id: 'clamp.pressure-reached',
  title: 'Metal pressure reached in the cavity',
  symbol: 'p_int',
  inputs: {
    wanted: { symbol: 'p_class', unit: 'MPa', meaning: 'metal pressure that the class of the part asks for', range: [1, 150] },
    available: { symbol: 'p_m', unit: 'MPa', meaning: 'greatest metal pressure of machine and plunger', range: [5, 250] },
  },
  unit: 'MPa',
  equation: 'min(p_class, p_m)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; a machine set to more than the class needs more locking force',
  compute: ({ wanted, available }) => Math.min(wanted, available),
});

/** The pressure that the clamp must hold: the greater of the intensified pressure and the spike. */
export const sizingPressure = defineFormula({
  id: 'clamp.sizing-pressure',
  title: 'Pressure that sizes the clamp',
  symbol: 'p',
  inputs: {
    intensified: { symbol: 'p_int', unit: 'MPa', meaning: 'intensified metal pressure', range: [1, 150] },
    spike: { symbol: 'p_spike', unit: 'MPa', meaning: 'end-of-fill pressure spike', range: [0.5, 240] },
  },
  unit: 'MPa',
  equation: 'max(p_int, p_spike)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; as good as the two pressures',
  compute: ({ intensified, spike }) => Math.max(intensified, spike),
});

/** Share of the rated locking force that the die asks for. */
export const clampUse = defineFormula({
  id: 'clamp.use',
  title: 'Use of the rated locking force',
  symbol: 'u',
  inputs: {
    needed: { symbol: 'F_lock', unit: 'kN', meaning: 'locking force needed', range: [1, 200000] },
    rated: { symbol: 'F_r', unit: 'kN', meaning: 'rated locking force', range: [100, 200000] },
  },
  unit: '%',
  equation: '100 * F_lock / F_r',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; as good as the force',
  compute: ({ needed, rated }) => (100 * needed) / rated,
});

/** Machine hours a year for the yearly volume. */
export const hoursNeeded = defineFormula({
  id: 'machine.hours-needed',
  title: 'Machine hours a year',
  symbol: 'H',
  inputs: {
    parts: { symbol: 'N', unit: '1', meaning: 'good parts a year', range: [1, 1e8] },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] },
    rate: { symbol: 'r', unit: '1/h', meaning: 'shots an hour', range: [5, 5000] },
    use_share: { symbol: 's', unit: '%', meaning: 'share of the hours in which the machine makes shots', range: [30, 100] },
    reject_share: { symbol: 'q', unit: '%', meaning: 'share of the castings rejected', range: [0, 40], domain: 'not-negative' },
  },
  unit: 'h',
  equation: 'N / (n * r * s / 100 * (1 - q / 100))',
  requires: [{ text: 'a reject share below 100 %', holds: ({ reject_share }) => reject_share < 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the shots an hour, which the trade spreads over a factor of three to five',
  compute: ({ parts, cavities, rate, use_share, reject_share }) => parts / (((cavities * rate * use_share) / 100) * (1 - reject_share / 100)),
});

/** A load at another locking force. */
export const scaledLoad = defineFormula({
  id: 'intensification.standing-load',
  title: 'Load of the most loaded tie bar at that force',
  symbol: 'T_0',
  inputs: {
    load: { symbol: 'T_bar', unit: 'kN', meaning: 'load at the planned force', range: [0.5, 100000] },
    force: { symbol: 'F_0', unit: 'kN', meaning: 'locking force', range: [1, 200000] },
    planned: { symbol: 'F', unit: 'kN', meaning: 'planned locking force', range: [1, 200000] },
  },
  unit: 'kN',
  equation: 'T_bar * F_0 / F',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact: the pressure centre stays where it is',
  compute: ({ load, force, planned }) => (load * force) / planned,
});
