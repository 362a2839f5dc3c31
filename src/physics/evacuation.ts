import { defineFormula } from '../kernel/formula.ts';

/** Gas that is left for the vacuum when the plunger has closed the pour hole: what it swept until then went back out of the hole. */
export const evacuatedVolume = defineFormula({
  id: 'vent.evacuated-volume',
  title: 'Room to evacuate of one cavity',
  symbol: 'V_e',
  inputs: {
    die: { symbol: 'V_g', unit: 'cm3', meaning: 'gas in cavity, overflows and runner of one cavity', range: [1, 100000] },
    all: { symbol: 'V_a', unit: 'cm3', meaning: 'the same with its share of the air in the sleeve after pouring', range: [1, 200000] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
    hole_travel: { symbol: 'x_h', unit: 'mm', meaning: 'plunger travel when the pour hole is closed', range: [20, 400], domain: 'not-negative' },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
  },
  unit: 'cm3',
  equation: 'max(V_g, V_a - pi * D^2 * x_h / 4000 / n)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact where no metal splashes out; what the plunger sweeps while the vacuum works makes the room smaller still, which is on the safe side',
  compute: (x) => Math.max(x.die, x.all - (Math.PI * x.diameter ** 2 * x.hole_travel) / 4000 / x.cavities),
});

/** Time in which a choked vent or valve draws the cavity down to a vacuum. */
export const evacuationTime = defineFormula({
  id: 'vent.evacuation-time',
  title: 'Time to evacuate the cavity',
  symbol: 't_e',
  inputs: {
    gas_volume: { symbol: 'V_g', unit: 'cm3', meaning: 'room to evacuate: cavity, overflows, runner and empty sleeve', range: [1, 200000] },
    area: { symbol: 'A_v', unit: 'mm2', meaning: 'smallest passage to the tank', range: [0.5, 5000] },
    velocity: { symbol: 'v_e', unit: 'm/s', meaning: 'effective gas velocity in it', range: [20, 345] },
    start: { symbol: 'p_0', unit: 'mbar', meaning: 'absolute pressure at the start', range: [900, 1100] },
    end: { symbol: 'p_1', unit: 'mbar', meaning: 'absolute pressure wanted', range: [10, 800] },
  },
  unit: 'ms',
  equation: '1000 * V_g / (A_v * v_e) * log(p_0 / p_1)',
  requires: [{ text: 'a pressure wanted below that at the start', holds: ({ start, end }) => end < start }],
  outside: 'extrapolate',
  source: ['MIDLAND-VACUUM'],
  status: 'derived',
  accuracy:
    'choked flow into a tank far below the wanted pressure, at constant temperature; air that leaks past plunger, parting line and ejector pins adds to it',
  compute: (x) => ((1000 * x.gas_volume) / (x.area * x.velocity)) * Math.log(x.start / x.end),
});

/** Least volume of a vacuum tank, emptied before the shot, that takes in the gas and still ends at the pressure wanted. */
export const tankVolume = defineFormula({
  id: 'vent.tank-volume',
  title: 'Least volume of the vacuum tank',
  symbol: 'V_t',
  inputs: {
    gas_volume: { symbol: 'V_g', unit: 'cm3', meaning: 'room to evacuate of all cavities', range: [1, 400000] },
    start: { symbol: 'p_0', unit: 'mbar', meaning: 'absolute pressure at the start', range: [900, 1100] },
    end: { symbol: 'p_1', unit: 'mbar', meaning: 'absolute pressure wanted', range: [20, 500] },
    tank: { symbol: 'p_t', unit: 'mbar', meaning: 'absolute pressure in the tank before the shot', range: [0, 15], domain: 'not-negative', default: 0 },
  },
  unit: 'l',
  equation: 'V_g / 1000 * (p_0 - p_1) / (p_1 - p_t)',
  requires: [{ text: 'a tank pressure below the pressure wanted, and that below the one at the start', holds: (x) => x.tank < x.end && x.end < x.start }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'balance of the gas at constant temperature with the pump standing still; leaks, pipes and vapour come on top',
  compute: (x) => ((x.gas_volume / 1000) * (x.start - x.end)) / (x.end - x.tank),
});
