import { defineFormula } from '../kernel/formula.ts';
import { erf } from './solve/erf.ts';
import { ejectionTimeOf, meanAfter, timeToSolid } from './solve/freezing-times.ts';
import { bracketedRoot } from './solve/root.ts';
import { DIE_TEMPERATURE, FACE, GAP, METAL, STEEL, WALL } from './solve/section-inputs.ts';
import { sectionOf } from './solve/section-of.ts';

const HEAT = { symbol: 'q', unit: 'kJ/kg', meaning: 'heat per mass until it is solid', range: [50, 900] } as const;
const METAL_TEMPERATURE = { symbol: 'T_m', unit: 'degC', meaning: 'temperature of the metal while it freezes', range: [370, 950], domain: 'any' } as const;

const BASE = { wall: WALL, ...METAL, die_temperature: DIE_TEMPERATURE, interface: FACE, ...STEEL } as const;
type BaseNumbers = { readonly [K in keyof typeof BASE]: number };

const BALANCE =
  'd(rho*H)/dt = d/dx(k*dT/dx) in the half section, the same in the steel, q = h_i*(T - T_die) between them, H with the latent heat over T_S to T_L';
const REQUIRES = [
  { text: 'gate_temperature >= liquidus', holds: (x: BaseNumbers) => x.gate_temperature >= x.liquidus },
  { text: 'liquidus >= solidus', holds: (x: BaseNumbers) => x.liquidus >= x.solidus },
  { text: 'a solidus at least 20 K above the die', holds: (x: BaseNumbers) => x.solidus >= x.die_temperature + 20 },
] as const;
const LIMITS =
  'the equations are solved to 1 %; the coefficient at the face is known to a factor of two or three, and the die is taken as deep and at one temperature before the shot';

const STEPPED = { solution: 'time-stepped', outside: 'extrapolate', source: [], status: 'derived', accuracy: LIMITS } as const;

/** Time from the full cavity until the middle of a section is solid, by the heat solution. */
export const solidificationTime = defineFormula({
  ...STEPPED,
  id: 'cooling.solidification-time',
  title: 'Time until the section is solid',
  symbol: 't_s',
  inputs: BASE,
  unit: 's',
  equation: BALANCE,
  requires: REQUIRES,
  compute: (x) => timeToSolid(sectionOf({ ...x, gap: x.interface })),
});

/** Time from the full cavity until a section is solid and, on average, at the temperature at which it can be ejected. */
export const ejectionTime = defineFormula({
  ...STEPPED,
  id: 'cooling.ejection-time',
  title: 'Time until the section can be ejected',
  symbol: 't_e',
  inputs: {
    ...BASE,
    gap: GAP,
    eject_temperature: { symbol: 'T_e', unit: 'degC', meaning: 'mean temperature of the section at ejection', range: [150, 700], domain: 'any' },
  },
  unit: 's',
  equation: `${BALANCE}, and h_g in its place once the middle is solid, until the mean is T_e`,
  requires: [
    ...REQUIRES,
    {
      text: 'an ejection temperature between that of the die and the solidus',
      holds: (x) => x.eject_temperature < x.solidus && x.eject_temperature > x.die_temperature + 5,
    },
  ],
  compute: (x) => ejectionTimeOf(sectionOf(x), x.eject_temperature),
});

/** Mean temperature of a section some time after the cavity was full. */
export const openingTemperature = defineFormula({
  ...STEPPED,
  id: 'cooling.opening-temperature',
  title: 'Mean temperature of the section when the die opens',
  symbol: 'T_o',
  inputs: { ...BASE, gap: GAP, time: { symbol: 't', unit: 's', meaning: 'time from the full cavity to the opening of the die', range: [0.2, 200] } },
  unit: 'degC',
  equation: `${BALANCE}, and h_g in its place once the middle is solid, up to t`,
  requires: REQUIRES,
  compute: (x) => meanAfter(sectionOf(x), x.time),
});

/** Heat that a kilogram gives off from the gate until it is solid: superheat, latent heat, and what the freezing range holds. */
export const heatToSolid = defineFormula({
  id: 'cooling.heat-to-solid',
  title: 'Heat given off until solid, per mass',
  symbol: 'q',
  inputs: {
    gate_temperature: METAL.gate_temperature,
    liquidus: METAL.liquidus,
    solidus: METAL.solidus,
    cp_liquid: METAL.cp_liquid,
    cp_solid: METAL.cp_solid,
    latent: METAL.latent,
  },
  unit: 'kJ/kg',
  equation: 'c_l * (T_i - T_L) / 1000 + L_f + c_s * (T_L - T_S) / 1000',
  requires: [
    { text: 'gate_temperature >= liquidus', holds: (x) => x.gate_temperature >= x.liquidus },
    { text: 'liquidus >= solidus', holds: (x) => x.liquidus >= x.solidus },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact balance; published latent heats of aluminium-silicon alloys spread from 389 to 550 kJ/kg',
  compute: (x) => (x.cp_liquid * (x.gate_temperature - x.liquidus) + x.cp_solid * (x.liquidus - x.solidus)) / 1000 + x.latent,
});

/** Freezing time if the interface alone held the heat back: the whole section at one temperature, the die cold to the end. */
export const interfaceTime = defineFormula({
  id: 'cooling.interface-time',
  title: 'Time to freeze, by the interface alone',
  symbol: 't_h',
  inputs: {
    wall: WALL,
    density: METAL.density,
    heat: HEAT,
    interface: FACE,
    metal_temperature: METAL_TEMPERATURE,
    die_temperature: DIE_TEMPERATURE,
  },
  unit: 's',
  equation: '1000 * rho * h / 2 * q / (h_i * (T_m - T_d))',
  requires: [{ text: 'a metal hotter than the die', holds: (x) => x.metal_temperature > x.die_temperature }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a lower bound: nothing is conducted in the casting and the die stays cold',
  compute: (x) => (((1000 * x.density * x.wall) / 2) * x.heat) / (x.interface * (x.metal_temperature - x.die_temperature)),
});

/**
 * Constant of the exact solution of Neumann and Schwarz: how far a melt at its freezing temperature has frozen against a
 * deep die that it touches perfectly, over twice the diffusion length in the solid. Superheat and freezing range count as
 * latent heat.
 */
export const freezingConstant = defineFormula({
  id: 'cooling.freezing-constant',
  title: 'Constant of freezing in perfect contact',
  symbol: 'z',
  inputs: {
    heat: HEAT,
    metal_temperature: METAL_TEMPERATURE,
    die_temperature: DIE_TEMPERATURE,
    density: METAL.density,
    cp_solid: METAL.cp_solid,
    conductivity: METAL.conductivity,
    ...STEEL,
  },
  unit: '1',
  where: [
    { symbol: 'b', equation: 'sqrt(1000 * k * rho * c_s / (k_d * rho_d * c_d))' },
    { symbol: 's', equation: 'c_s * (T_m - T_d) / (1000 * q * sqrt(pi))' },
  ],
  equation: 'z * exp(z^2) * (erf(z) + b) - s',
  implicit: true,
  requires: [{ text: 'a metal hotter than the die', holds: (x) => x.metal_temperature > x.die_temperature }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a pure metal without superheat, until the fronts meet in the middle',
  compute: (x) => {
    const side = (x.cp_solid * (x.metal_temperature - x.die_temperature)) / (1000 * x.heat * Math.sqrt(Math.PI));
    const ratio = Math.sqrt((1000 * x.conductivity * x.density * x.cp_solid) / (x.die_conductivity * x.die_density * x.die_specific_heat));
    return bracketedRoot((z) => z * Math.exp(z * z) * (erf(z) + ratio) - side, 0, Math.max(1, side));
  },
});

/** Freezing time of a section in perfect contact with the die: the fronts from both faces meet in the middle. */
export const contactTime = defineFormula({
  id: 'cooling.contact-time',
  title: 'Time to freeze, in perfect contact with the die',
  symbol: 't_k',
  inputs: {
    wall: WALL,
    constant: { symbol: 'z', unit: '1', meaning: 'constant of freezing in perfect contact', range: [0.02, 2] },
    density: METAL.density,
    cp_solid: METAL.cp_solid,
    conductivity: METAL.conductivity,
  },
  unit: 's',
  equation: '(h / 2000)^2 * 1000 * rho * c_s / (4 * z^2 * k)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a lower bound for a die casting, which never touches the die perfectly; it grows with the square of the wall',
  compute: (x) => ((x.wall / 2000) ** 2 * 1000 * x.density * x.cp_solid) / (4 * x.constant ** 2 * x.conductivity),
});
