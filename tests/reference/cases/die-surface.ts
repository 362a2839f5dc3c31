import type { Case } from '../case.ts';

const HAND = 'derived, worked by hand';
const WALL = {
  wall: 3.2,
  gate_temperature: 635,
  liquidus: 595,
  solidus: 540,
  density: 2.71,
  cp_liquid: 1177,
  cp_solid: 963,
  latent: 451,
  conductivity: 96.2,
  interface: 10000,
  gap: 2000,
  die_conductivity: 25,
  die_density: 7800,
  die_specific_heat: 460,
  cycle: 45,
  dwell: 10,
  spray: 8,
  spray_share: 30,
  surroundings_share: 10,
  depth: 20,
  conductance: 250,
  coolant: 40,
};
const FINE = 'the same equations with five times the cells and twenty times the steps';
/** Without spray or surroundings, over lines far below the face: pulses into a deep body. */
const BARE = { ...WALL, spray: 0, spray_share: 0, surroundings_share: 0, conductance: 400 };

export const cases: readonly Case[] = [
  { formula: 'heat.surface-before', inputs: WALL, expected: 184.6, tolerance: { absolute: 2 }, from: FINE },
  {
    formula: 'heat.surface-before',
    inputs: BARE,
    expected: 188,
    tolerance: { absolute: 4 },
    from: 'closed form for pulses into a deep body: 233.0 degC on average less 45.1 K',
  },
  {
    formula: 'heat.surface-before',
    inputs: { ...WALL, conductance: 500 },
    expected: 89,
    tolerance: { absolute: 8 },
    from: `${HAND}: lines of twice the conductance need half of the 185 K above the coolant, the excess stays and the shot gives a little more`,
  },
  { formula: 'heat.surface-peak', inputs: WALL, expected: 405, tolerance: { absolute: 3 }, from: FINE },
  {
    formula: 'heat.surface-peak',
    inputs: { ...WALL, interface: 60000 },
    expected: 470,
    tolerance: { absolute: 25 },
    from: 'limiting case: near perfect contact, two half-spaces at 540 to 595 and 184 degC that touch come to about 490 degC',
  },
  {
    formula: 'heat.surface-peak',
    inputs: { ...WALL, interface: 1000, gap: 1000 },
    expected: 245,
    tolerance: { absolute: 15 },
    from: `${HAND}: a flux of about 0.35 MW/m2 for some seconds into steel of 9,470 W s^0.5/(m2.K) raises it by 2 q sqrt(t/pi)/e, about 100 K at 6 s, from about 150 degC`,
  },
  {
    formula: 'heat.surface-mean',
    inputs: WALL,
    expected: 224.9,
    tolerance: { absolute: 1 },
    from: `${HAND}: 40 degC and 60 % of 3.466 MJ/m2 in 45 s over 250 W/(m2.K); the heat is that of the run, the balance is not`,
  },
  { formula: 'heat.surface-mean', inputs: WALL, expected: 226.2, tolerance: { absolute: 2 }, from: FINE },
  { formula: 'heat.surface-mean', inputs: BARE, expected: 234, tolerance: { absolute: 2 }, from: FINE },
  { formula: 'heat.surface-swing', inputs: { peak: 405, before: 185 }, expected: 220, tolerance: { absolute: 1e-9 }, from: HAND },
  {
    formula: 'cooling.surface-excess',
    inputs: { heat: 3475, cycle: 45, die_conductivity: 25, die_density: 7800, die_specific_heat: 460 },
    expected: 45.06,
    tolerance: { absolute: 0.05 },
    from: `${HAND}: 1.4604 x 3.475e6 / (9,471 x sqrt(pi 45)); the figure is minus the Hurwitz zeta function of 1/2 at 1, in any table of it`,
  },
  {
    formula: 'heat.wall-per-area',
    inputs: { density: 2.7, wall: 3, per_mass: 600 },
    expected: 2430,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: 2,700 kg/m3 x 1.5 mm x 600 kJ/kg`,
  },
  {
    formula: 'cooling.face-conductance',
    inputs: { conductance: 100, area: 5000, wall_heat: 2000, mean_heat: 4000 },
    expected: 100,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: 200 W/(m2.K) on average, half of it where half of the heat is`,
  },
];
