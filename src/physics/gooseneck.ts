import { defineFormula } from '../kernel/formula.ts';
import type { Unit } from '../kernel/units.ts';

/** Area of a round bore or of a plunger. */
export const boreArea = defineFormula({
  id: 'gooseneck.bore-area',
  title: 'Area of a round section',
  symbol: 'A',
  inputs: { diameter: { symbol: 'd', unit: 'mm', meaning: 'diameter', range: [2, 250] } },
  unit: 'mm2',
  equation: 'pi * d^2 / 4',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ diameter }) => (Math.PI * diameter ** 2) / 4,
});

/** Area of what all cavities have in common: runners or gates of one shot. */
export const shotArea = defineFormula({
  id: 'gooseneck.shot-area',
  title: 'Area of all cavities together',
  symbol: 'A_s',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    area: { symbol: 'A_1', unit: 'mm2', meaning: 'area of one cavity', range: [1, 5000] },
  },
  unit: 'mm2',
  equation: 'n * A_1',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ cavities, area }) => cavities * area,
});

/** Least bore of the gooseneck channel: one step of area above the nozzle. */
export const channelDiameter = defineFormula({
  id: 'gooseneck.channel-diameter',
  title: 'Least bore of the gooseneck channel',
  symbol: 'd_c',
  inputs: {
    nozzle: { symbol: 'd_n', unit: 'mm', meaning: 'nozzle bore', range: [3, 60] },
    ratio: { symbol: 'k', unit: '1', meaning: 'area over the area of the next section towards the gate', range: [1, 1.5] },
  },
  unit: 'mm',
  equation: 'd_n * sqrt(k)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'that the area falls from gooseneck to nozzle is common practice; the step is taken from nozzle over runner',
  compute: ({ nozzle, ratio }) => nozzle * Math.sqrt(ratio),
});

/** Mean speed of the metal in a section. */
export const flowSpeed = defineFormula({
  id: 'gooseneck.flow-speed',
  title: 'Speed of the metal in a section',
  symbol: 'v',
  inputs: {
    flow: { symbol: 'Q', unit: 'l/s', meaning: 'metal flow through all gates', range: [0.05, 100] },
    area: { symbol: 'A', unit: 'mm2', meaning: 'area of the section', range: [5, 50000] },
  },
  unit: 'm/s',
  equation: '1000 * Q / A',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact as a mean over the section',
  compute: ({ flow, area }) => (1000 * flow) / area,
});

/** Temperature of the pot above the liquidus. */
export const potSuperheat = defineFormula({
  id: 'gooseneck.superheat',
  title: 'Superheat of the pot',
  symbol: 'dT',
  inputs: {
    pot_temperature: { symbol: 'T_p', unit: 'degC', meaning: 'pot temperature', range: [300, 750], domain: 'any' },
    liquidus: { symbol: 'T_L', unit: 'degC', meaning: 'liquidus of the alloy', range: [180, 650], domain: 'any' },
  },
  unit: 'K',
  equation: 'T_p - T_L',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ pot_temperature, liquidus }) => pot_temperature - liquidus,
});

/** How much of a bound the shot takes: one formula for each kind of quantity. */
function useOf<const U extends Unit>(
  id: string,
  unit: U,
  of: { readonly title: string; readonly planned: string; readonly bound: string; readonly greatest: number },
) {
  const range = [of.greatest / 1000, of.greatest] as const;
  return defineFormula({
    id,
    title: of.title,
    symbol: 'u',
    inputs: {
      planned: { symbol: 'x', unit, meaning: of.planned, range },
      bound: { symbol: 'b', unit, meaning: of.bound, range },
    },
    unit: '%',
    equation: '100 * x / b',
    outside: 'extrapolate',
    source: [],
    status: 'derived',
    accuracy: 'exact',
    compute: ({ planned, bound }) => (100 * planned) / bound,
  });
}

export const useOfSpeed = useOf('gooseneck.use-speed', 'm/s', {
  title: 'Use of the plunger speed',
  planned: 'plunger speed of the shot',
  bound: 'plunger speed to plan with at most',
  greatest: 50,
});
export const useOfClassPressure = useOf('gooseneck.use-class-pressure', 'MPa', {
  title: 'Use of the pressure on the full die',
  planned: 'least metal pressure of the class of the part',
  bound: 'metal pressure with the plunger standing still',
  greatest: 100,
});
export const useOfStroke = useOf('gooseneck.use-stroke', 'mm', {
  title: 'Use of the shot stroke',
  planned: 'plunger travel for the shot',
  bound: 'shot stroke of the machine',
  greatest: 1000,
});
export const useOfTime = useOf('gooseneck.use-time', 'ms', {
  title: 'Use of the longest fill time',
  planned: 'planned fill time',
  bound: 'longest fill time',
  greatest: 500,
});

const USE = (symbol: string, meaning: string) => ({ symbol, unit: '%', meaning, range: [1, 10000], domain: 'not-negative' }) as const;

/** The greatest use of all bounds: what limits the shot. */
export const greatestUse = defineFormula({
  id: 'gooseneck.greatest-use',
  title: 'Use of the nearest bound',
  symbol: 'u_m',
  inputs: {
    speed: USE('u_v', 'use of the plunger speed'),
    machine: USE('u_q', 'use of the machine at the planned flow'),
    class_pressure: USE('u_c', 'use of the pressure on the full die'),
    stroke: USE('u_s', 'use of the shot stroke'),
    time: USE('u_t', 'use of the longest fill time'),
  },
  unit: '%',
  equation: 'max(u_v, u_q, u_c, u_s, u_t)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; above 100 % the bound is broken',
  compute: (x) => Math.max(x.speed, x.machine, x.class_pressure, x.stroke, x.time),
});
