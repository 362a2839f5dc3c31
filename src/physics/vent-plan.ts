import { defineFormula } from '../kernel/formula.ts';

/** Gas that the vents of one cavity must pass: all room that is empty at the moment counted, its share of the sleeve included. */
export const ventGasVolume = defineFormula({
  id: 'vent.gas-volume',
  title: 'Gas to expel from one cavity',
  symbol: 'V_g',
  inputs: {
    part_volume: { symbol: 'V_p', unit: 'cm3', meaning: 'volume of the cavity', range: [0.1, 50000] },
    overflow_volume: { symbol: 'V_o', unit: 'cm3', meaning: 'volume of its overflows', range: [0, 10000], domain: 'not-negative' },
    runner_volume: {
      symbol: 'V_r',
      unit: 'cm3',
      meaning: 'volume of its runner, where it is still empty at the moment counted',
      range: [0, 10000],
      domain: 'not-negative',
    },
    sleeve_air: {
      symbol: 'V_a',
      unit: 'cm3',
      meaning: 'air in the sleeve at the moment counted: none once the metal fills its section, all that the pour left if the fast shot comes too early',
      range: [0, 100000],
      domain: 'not-negative',
    },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities that share the sleeve', range: [1, 64] },
  },
  unit: 'cm3',
  equation: 'V_p + V_o + V_r + V_a / n',
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: 'exact sum for the moment counted; a good slow shot drives the air of the sleeve out before the fast shot begins, a bad one leaves it all',
  compute: (x) => x.part_volume + x.overflow_volume + x.runner_volume + x.sleeve_air / x.cavities,
});

/** Vent area to plan with, where more of the gas must be out before the metal shuts the rest in. */
export const ventAreaPlanned = defineFormula({
  id: 'vent.area-planned',
  title: 'Vent area with a reserve',
  symbol: 'A_v',
  inputs: {
    choked: { symbol: 'A_c', unit: 'mm2', meaning: 'vent area that carries the gas off choked in the fill time', range: [0.1, 5000] },
    multiple: { symbol: 'k', unit: '1', meaning: 'multiple of it', range: [0.5, 3] },
  },
  unit: 'mm2',
  equation: 'k * A_c',
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'practice',
  accuracy: 'from the choked area to its double more area pays, beyond it hardly; the multiple between is a planning figure',
  compute: ({ choked, multiple }) => multiple * choked,
});

/** Vent area as a share of the gate area, to hold against the trade's rule. */
export const ventGateShare = defineFormula({
  id: 'vent.gate-share',
  title: 'Vent area over gate area',
  symbol: 's_v',
  inputs: {
    vent_area: { symbol: 'A_v', unit: 'mm2', meaning: 'vent area of one cavity', range: [0.1, 5000] },
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of one cavity', range: [1, 20000] },
  },
  unit: '%',
  equation: '100 * A_v / A_g',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ vent_area, gate_area }) => (100 * vent_area) / gate_area,
});

/** Width that plain vents can take on the parting line of one cavity. */
export const ventWidthAvailable = defineFormula({
  id: 'vent.width-available',
  title: 'Width free for plain vents',
  symbol: 'w_a',
  inputs: {
    parting_line: { symbol: 'L_p', unit: 'mm', meaning: 'length of the parting line of one cavity', range: [20, 20000] },
    gate_width: { symbol: 'w_g', unit: 'mm', meaning: 'gate width of the cavity', range: [1, 5000] },
    share: { symbol: 's', unit: '%', meaning: 'share of the rest of the parting line that vents can take', range: [20, 80] },
  },
  unit: 'mm',
  equation: 'max(0, L_p - w_g) * s / 100',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning figure: vents stand apart so that the parting face between them seals',
  compute: (x) => (Math.max(0, x.parting_line - x.gate_width) * x.share) / 100,
});

/** Number of plain vents of the widest usual width. */
export const ventNumber = defineFormula({
  id: 'vent.number',
  title: 'Plain vents of one cavity',
  symbol: 'n_v',
  inputs: {
    width: { symbol: 'w_v', unit: 'mm', meaning: 'total vent width', range: [1, 5000] },
    each: { symbol: 'w_1', unit: 'mm', meaning: 'width of one vent', range: [5, 40] },
  },
  unit: '1',
  equation: 'ceil(w_v / w_1)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for vents of the widest usual width',
  compute: ({ width, each }) => Math.ceil(width / each),
});
