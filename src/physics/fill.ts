import { defineFormula } from '../kernel/formula.ts';

/** Longest cavity fill time: until the share of solids allowed has formed where the metal arrives last. */
export const longestFillTime = defineFormula({
  id: 'fill.longest-time',
  title: 'Longest fill time',
  symbol: 't_max',
  inputs: {
    k: { symbol: 'K', unit: 's/mm', meaning: 'constant of alloy family and die steel', range: [0.0124, 0.0346] },
    wall: { symbol: 'T', unit: 'mm', meaning: 'thinnest wall, or the typical thin one', range: [0.25, 6.4] },
    gate_temperature: { symbol: 'T_i', unit: 'degC', meaning: 'metal temperature at the gate', range: [390, 1000], domain: 'any' },
    flow_temperature: { symbol: 'T_f', unit: 'degC', meaning: 'least temperature at which the metal flows', range: [380, 910], domain: 'any' },
    die_temperature: { symbol: 'T_d', unit: 'degC', meaning: 'die surface temperature just before the shot', range: [100, 400], domain: 'any' },
    solids: { symbol: 'S', unit: '%', meaning: 'share of solids allowed at the end of fill', range: [5, 50], domain: 'not-negative' },
    conversion: { symbol: 'Z', unit: 'K/%', meaning: 'temperature worth of one per cent of solids', range: [2.5, 5.9] },
  },
  unit: 'ms',
  equation: '1000 * K * T * (T_i - T_f + S * Z) / (T_f - T_d)',
  requires: [
    { text: 'gate_temperature > flow_temperature', holds: (x) => x.gate_temperature > x.flow_temperature },
    { text: 'flow_temperature > die_temperature', holds: (x) => x.flow_temperature > x.die_temperature },
  ],
  outside: 'extrapolate',
  source: ['KB-HPDC-PARAMETERS'],
  status: 'source',
  accuracy: 'an upper limit, read in a secondary text; the choice of solids and gate temperature moves it by half, and the tabled solids end at 3 mm of wall',
  compute: (x) => (1000 * x.k * x.wall * (x.gate_temperature - x.flow_temperature + x.solids * x.conversion)) / (x.flow_temperature - x.die_temperature),
});

/** Fill time recommended for a good casting; a rule of its own, not tied to the longest time. */
export const recommendedFillTime = defineFormula({
  id: 'fill.recommended-time',
  title: 'Recommended fill time',
  symbol: 't_rec',
  inputs: {
    wall: { symbol: 'h', unit: 'mm', meaning: 'mean wall', range: [0.5, 6.4] },
    gate_temperature: { symbol: 'T_i', unit: 'degC', meaning: 'metal temperature at injection', range: [390, 1000], domain: 'any' },
    liquidus: { symbol: 'T_l', unit: 'degC', meaning: 'liquidus of the alloy', range: [375, 930], domain: 'any' },
    die_temperature: { symbol: 'T_m', unit: 'degC', meaning: 'die surface temperature before the shot', range: [100, 400], domain: 'any' },
  },
  unit: 'ms',
  equation: '35 * h * (T_i - T_l + 61) / (T_i - T_m)',
  requires: [
    { text: 'gate_temperature > die_temperature', holds: (x) => x.gate_temperature > x.die_temperature },
    { text: 'gate_temperature > liquidus - 61 K', holds: (x) => x.gate_temperature > x.liquidus - 61 },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy:
    'remembered form of a textbook, not read; 61 K stands for the solids allowed; for a 2 mm aluminium wall it gives 19 ms where the longest time is 46 ms, for thin zinc walls it can exceed the longest time',
  compute: (x) => (35 * x.wall * (x.gate_temperature - x.liquidus + 61)) / (x.gate_temperature - x.die_temperature),
});
