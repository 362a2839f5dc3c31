import { defineFormula } from '../kernel/formula.ts';

/** Mass of all metal that passes the gates of one cavity. */
export const flowMass = defineFormula({
  id: 'gate.flow-mass',
  title: 'Metal through the gates of one cavity',
  symbol: 'm',
  inputs: {
    part_mass: { symbol: 'm_p', unit: 'kg', meaning: 'mass of the casting', range: [0.0005, 250] },
    overflow_mass: { symbol: 'm_o', unit: 'kg', meaning: 'mass of the overflows of the cavity', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'kg',
  equation: 'm_p + m_o',
  outside: 'extrapolate',
  source: ['GL-GATE-AREA'],
  status: 'source',
  accuracy: 'exact sum; a vacuum channel that fills comes on top',
  compute: ({ part_mass, overflow_mass }) => part_mass + overflow_mass,
});

/** Gate velocity to plan with, between the ends of the usual band: the upper end for thin walls. */
export const plannedVelocity = defineFormula({
  id: 'gate.velocity',
  title: 'Planned gate velocity',
  symbol: 'v_g',
  inputs: {
    least: { symbol: 'v_1', unit: 'm/s', meaning: 'usual gate velocity, low end', range: [15, 60] },
    greatest: { symbol: 'v_2', unit: 'm/s', meaning: 'usual gate velocity, high end', range: [20, 90] },
    position: { symbol: 'p', unit: '1', meaning: 'position in the usual band, 1 for thin walls', range: [0, 1], domain: 'not-negative' },
  },
  unit: 'm/s',
  equation: 'v_1 + p * (v_2 - v_1)',
  requires: [{ text: 'least <= greatest', holds: (x) => x.least <= x.greatest }],
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'anywhere in the usual band casts; the whole window is about three times as wide',
  compute: (x) => x.least + x.position * (x.greatest - x.least),
});

/** Gate velocity to plan with on a machine that cannot drive the usual one: a little below what it drives, never below the window. */
export const drivenGateVelocity = defineFormula({
  id: 'gate.velocity-of-machine',
  title: 'Gate velocity within reach of the machine',
  symbol: 'v_g',
  inputs: {
    driven: { symbol: 'v_m', unit: 'm/s', meaning: 'gate velocity at which the machine has just the pressure for the planned flow', range: [10, 120] },
    reserve: { symbol: 'r', unit: '%', meaning: 'reserve below it', range: [0, 20], domain: 'not-negative' },
    least: { symbol: 'v_1', unit: 'm/s', meaning: 'least gate velocity of the window', range: [0.1, 60] },
  },
  unit: 'm/s',
  equation: 'max(v_m * (1 - r / 100), v_1)',
  outside: 'extrapolate',
  source: ['KB-HPDC-PARAMETERS'],
  status: 'practice',
  accuracy: 'as good as the discharge coefficient, which is the least certain figure of the two lines',
  compute: (x) => Math.max(x.driven * (1 - x.reserve / 100), x.least),
});

/** Gate thickness to plan with: a share of the wall, kept inside the range of the family and inside the shares of the wall. */
export const plannedThickness = defineFormula({
  id: 'gate.thickness',
  title: 'Planned gate thickness',
  symbol: 'T_g',
  inputs: {
    wall: { symbol: 'h', unit: 'mm', meaning: 'wall beside the gate', range: [0.5, 15] },
    share: { symbol: 's', unit: '1', meaning: 'gate thickness as a share of the wall', range: [0.2, 1] },
    greatest_share: { symbol: 's_2', unit: '1', meaning: 'greatest share of the wall at which the gate still trims clean', range: [0.3, 1] },
    least: { symbol: 'T_1', unit: 'mm', meaning: 'thinnest gate of the family', range: [0.2, 5] },
    greatest: { symbol: 'T_2', unit: 'mm', meaning: 'thickest gate of the family', range: [0.5, 12] },
  },
  unit: 'mm',
  equation: 'min(max(s * h, T_1), T_2, s_2 * h)',
  requires: [{ text: 'least <= greatest', holds: (x) => x.least <= x.greatest }],
  outside: 'extrapolate',
  source: ['KB-GATING gate thickness'],
  status: 'practice',
  accuracy: 'published shares run from a quarter to four fifths of the wall; where family and wall disagree the wall rules',
  compute: (x) => Math.min(Math.max(x.share * x.wall, x.least), x.greatest, x.greatest_share * x.wall),
});

/** Number of gates of one cavity, none longer than the side it stands on. */
export const gateCount = defineFormula({
  id: 'gate.count',
  title: 'Gates of one cavity',
  symbol: 'n_g',
  inputs: {
    width: { symbol: 'w_g', unit: 'mm', meaning: 'gate width of the cavity, all gates', range: [1, 5000] },
    side: { symbol: 'a', unit: 'mm', meaning: 'longer side of the part across the die opening', range: [5, 3000] },
  },
  unit: '1',
  equation: 'ceil(w_g / a)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the least number by length alone; the flow pattern may ask for more',
  compute: ({ width, side }) => Math.ceil(width / side),
});

/** Width at most taken by gates, so that overflows and vents keep the rest of the parting line. */
export const greatestGateWidth = defineFormula({
  id: 'gate.greatest-width',
  title: 'Greatest gate width',
  symbol: 'w_max',
  inputs: {
    parting_line: { symbol: 'L_p', unit: 'mm', meaning: 'length of the parting line of one cavity', range: [20, 20000] },
    share: { symbol: 's', unit: '%', meaning: 'share of the parting line that gates may take', range: [20, 70] },
  },
  unit: 'mm',
  equation: 'L_p * s / 100',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning figure: the far side is needed for overflows and vents',
  compute: ({ parting_line, share }) => (parting_line * share) / 100,
});
