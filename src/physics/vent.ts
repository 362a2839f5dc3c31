import { defineFormula } from '../kernel/formula.ts';
import { ENTRY_MACH_LINES, entryMach, GAS_CONSTANT, HEAT_RATIO } from './solve/fanno.ts';

const ABSOLUTE_ZERO = 273.15;

/** Friction length of a vent: 4 f L over the hydraulic diameter, which for a wide slot is twice its depth. */
export const frictionLength = defineFormula({
  id: 'vent.friction-length',
  title: 'Friction length of a vent',
  symbol: 'X',
  inputs: {
    depth: { symbol: 'd', unit: 'mm', meaning: 'depth of the vent', range: [0.05, 1] },
    land: { symbol: 'L', unit: 'mm', meaning: 'length of the vent at that depth', range: [1, 100] },
    friction: { symbol: 'f', unit: '1', meaning: 'Fanning friction factor, about 0.012 in a thin vent', range: [0.003, 0.03] },
  },
  unit: '1',
  equation: '4 * f * L / (2 * d)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a slot much wider than deep; the friction factor is an estimate for a clean vent',
  compute: ({ depth, land, friction }) => (4 * friction * land) / (2 * depth),
});

/** Mach number with which the gas enters a choked vent (Fanno flow, air). */
export const entryMachNumber = defineFormula({
  id: 'vent.entry-mach',
  title: 'Mach number at the entry of a choked vent',
  symbol: 'M',
  inputs: {
    friction_length: { symbol: 'X', unit: '1', meaning: 'friction length 4 f L / D_h', range: [0, 50], domain: 'not-negative' },
  },
  unit: '1',
  equation: '(1 - M^2) / (1.4 * M^2) + 2.4 / 2.8 * log(2.4 * M^2 / (2 + 0.4 * M^2)) - X',
  implicit: true,
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: 'exact for adiabatic flow of a perfect gas in an even duct; matches the standard gas tables',
  compute: ({ friction_length }) => entryMach(friction_length),
});

/** Speed of the gas in a choked vent, referred to the density in the cavity: what an area of vent carries away. */
export const chokedVelocity = defineFormula({
  id: 'vent.choked-velocity',
  title: 'Effective gas velocity of a choked vent',
  symbol: 'v_e',
  inputs: {
    gas_temperature: { symbol: 'T', unit: 'degC', meaning: 'temperature of the gas in the cavity', range: [0, 600], domain: 'any' },
    friction_length: {
      symbol: 'X',
      unit: '1',
      meaning: 'friction length 4 f L / D_h of the vent, 0 without friction',
      range: [0, 20],
      domain: 'not-negative',
      default: 0,
    },
  },
  unit: 'm/s',
  where: ENTRY_MACH_LINES.lines,
  equation: 'sqrt(1.4 * 287.05 * (T + 273.15)) * M / (1 + 0.2 * M^2)^3',
  requires: [{ text: 'a temperature above absolute zero', holds: ({ gas_temperature }) => gas_temperature > -ABSOLUTE_ZERO }],
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy:
    'ceiling of 201 m/s at 300 K without friction, about 100 m/s for a thin plain vent; holds while the pressure in the cavity is above 1.9 times that outside, with a friction length of 5 above 3.8 times',
  compute: ({ gas_temperature, friction_length }) => {
    const mach = entryMach(friction_length);
    return (Math.sqrt(HEAT_RATIO * GAS_CONSTANT * (gas_temperature + ABSOLUTE_ZERO)) * mach) / (1 + 0.2 * mach ** 2) ** 3;
  },
});

/** Area of the vents at their narrowest that lets the gas out in the time counted. */
export const ventArea = defineFormula({
  id: 'vent.area',
  title: 'Vent area',
  symbol: 'A_v',
  inputs: {
    gas_volume: { symbol: 'V_g', unit: 'cm3', meaning: 'gas to expel: cavity, overflows, runner and empty sleeve at the moment counted', range: [0.1, 200000] },
    time: { symbol: 't', unit: 'ms', meaning: 'time of the stage counted, for the fast shot the fill time', range: [1, 5000] },
    velocity: { symbol: 'v_e', unit: 'm/s', meaning: 'effective gas velocity', range: [20, 345] },
  },
  unit: 'mm2',
  equation: '1000 * V_g / (t * v_e)',
  outside: 'extrapolate',
  source: ['MIDLAND-VACUUM'],
  status: 'practice',
  accuracy: 'critical area only: it still leaves 1.6 times the outside pressure at 90 % of the stroke; 1.5 to 2 times this area is where more stops paying',
  compute: ({ gas_volume, time, velocity }) => (1000 * gas_volume) / (time * velocity),
});

/** Total width of vents of one depth. */
export const ventWidth = defineFormula({
  id: 'vent.width',
  title: 'Total vent width',
  symbol: 'w_v',
  inputs: {
    area: { symbol: 'A_v', unit: 'mm2', meaning: 'vent area', range: [0.1, 5000] },
    depth: { symbol: 'd', unit: 'mm', meaning: 'depth of the vents', range: [0.05, 1] },
  },
  unit: 'mm',
  equation: 'A_v / d',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ area, depth }) => area / depth,
});

/** Gas pressure left in the cavity when the vent stays choked to the end, as it does into a vacuum system. */
export const residualPressureChoked = defineFormula({
  id: 'vent.residual-pressure-choked',
  title: 'Residual gas pressure with the vent choked throughout',
  symbol: 'P_r',
  inputs: {
    area_ratio: { symbol: 'r', unit: '1', meaning: 'vent area over the critical area', range: [0.2, 4] },
    stroke: { symbol: 's', unit: '1', meaning: 'share of the stroke done', range: [0.1, 0.95], domain: 'not-negative', default: 0.9 },
  },
  unit: '1',
  where: [{ symbol: 'm', equation: '(1 + r * ((1 - s)^-0.2 - 1))^-5' }],
  equation: '(m / (1 - s))^1.4',
  requires: [{ text: 'a stroke below 1', holds: ({ stroke }) => stroke < 1 }],
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy:
    'times the pressure at the start; isentropic gas, constant plunger speed. Into the open air the vent unchokes and more gas stays: do not use it there',
  compute: ({ area_ratio, stroke }) => {
    const mass = (1 + area_ratio * ((1 - stroke) ** -0.2 - 1)) ** -5;
    return (mass / (1 - stroke)) ** 1.4;
  },
});
