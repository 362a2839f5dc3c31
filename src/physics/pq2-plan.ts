import { defineFormula } from '../kernel/formula.ts';

const DRY_SPEED = { symbol: 'v_d', unit: 'm/s', meaning: 'dry-shot plunger speed', range: [0.5, 12] } as const;
const CAVITIES = { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] } as const;

/** Dry-shot speed at another hydraulic pressure and valve setting than those it was measured at. */
export const drySpeed = defineFormula({
  id: 'pq2.dry-speed',
  title: 'Dry-shot plunger speed at the planned pressure and valve setting',
  symbol: 'v_s',
  inputs: {
    dry_speed: { ...DRY_SPEED, meaning: 'dry-shot plunger speed of the machine, shot valve fully open' },
    pressure: { symbol: 'p_h', unit: 'MPa', meaning: 'hydraulic pressure planned for the fill phase', range: [3, 35] },
    rated_pressure: { symbol: 'p_r', unit: 'MPa', meaning: 'hydraulic pressure that the dry-shot speed was measured at', range: [3, 35] },
    throttle: { symbol: 'k', unit: '%', meaning: 'setting of the shot valve, as a share of the speed fully open', range: [5, 100] },
  },
  unit: 'm/s',
  equation: 'v_d * sqrt(p_h / p_r) * k / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a shot line that loses pressure with the square of the speed; the setting is counted in speed, not in turns of the valve',
  compute: (x) => (x.dry_speed * Math.sqrt(x.pressure / x.rated_pressure) * x.throttle) / 100,
});

/** All gates of the shot together: the machine sees them as one. */
export const gateAreaTotal = defineFormula({
  id: 'pq2.gate-area',
  title: 'Gate area of all cavities',
  symbol: 'A',
  inputs: { cavities: CAVITIES, area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of one cavity', range: [1, 20000] } },
  unit: 'mm2',
  equation: 'n * A_g',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for cavities that fill together',
  compute: ({ cavities, area }) => cavities * area,
});

/** Force of the shot cylinder that pushes the metal while the cavity fills. */
export const hydraulicForce = defineFormula({
  id: 'pq2.hydraulic-force',
  title: 'Force of the shot cylinder in the fill phase',
  symbol: 'F_h',
  inputs: {
    pressure: { symbol: 'p_h', unit: 'MPa', meaning: 'hydraulic pressure during fill, not intensified', range: [3, 35] },
    cylinder_diameter: { symbol: 'd_h', unit: 'mm', meaning: 'diameter of the shot cylinder', range: [40, 500] },
    rod_diameter: { symbol: 'd_r', unit: 'mm', meaning: 'diameter of a tail rod, 0 without one', range: [0, 300], domain: 'not-negative', default: 0 },
  },
  unit: 'kN',
  equation: 'p_h * pi * (d_h^2 - d_r^2) / 4000',
  requires: [{ text: 'rod_diameter < cylinder_diameter', holds: (x) => x.rod_diameter < x.cylinder_diameter }],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT'],
  status: 'derived',
  accuracy: 'exact without friction and back pressure; the accumulator drops during the shot',
  compute: (x) => (x.pressure * Math.PI * (x.cylinder_diameter ** 2 - x.rod_diameter ** 2)) / 4000,
});

/** Diameter of the plunger area at which the flow through the gates is greatest. */
export const bestPlungerDiameter = defineFormula({
  id: 'pq2.best-plunger-diameter',
  title: 'Plunger diameter of the greatest gate velocity',
  symbol: 'D',
  inputs: { area: { symbol: 'A_p', unit: 'mm2', meaning: 'plunger area of the greatest gate velocity', range: [200, 60000] } },
  unit: 'mm',
  equation: 'sqrt(4 * A_p / pi)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry',
  compute: ({ area }) => Math.sqrt((4 * area) / Math.PI),
});

/** A discharge coefficient off by a share, never above 1. */
export const dischargeOff = defineFormula({
  id: 'pq2.spread-discharge',
  title: 'Discharge coefficient, off by a share',
  symbol: 'C',
  inputs: {
    discharge: { symbol: 'C_d', unit: '1', meaning: 'discharge coefficient planned with', range: [0.3, 0.8] },
    share: { symbol: 's', unit: '%', meaning: 'by how much it is off, negative when lower', range: [-50, 50], domain: 'any' },
  },
  unit: '1',
  equation: 'min(1, C_d * (1 + s / 100))',
  requires: [{ text: 'a share above -100 %', holds: ({ share }) => share > -100 }],
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'practice',
  accuracy: 'shows how much hangs on the coefficient; one author holds that it can change by 100 % with the gate area alone',
  compute: ({ discharge, share }) => Math.min(1, discharge * (1 + share / 100)),
});

/** Time in which a flow fills all cavities. */
export const fillTimeAtFlow = defineFormula({
  id: 'pq2.fill-time',
  title: 'Fill time at a flow',
  symbol: 't',
  inputs: {
    cavities: CAVITIES,
    volume: { symbol: 'V', unit: 'cm3', meaning: 'flow volume of one cavity, liquid', range: [0.1, 100000] },
    flow: { symbol: 'Q', unit: 'l/s', meaning: 'metal flow through all gates', range: [0.05, 500] },
  },
  unit: 'ms',
  equation: 'n * V / Q',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a constant flow into cavities that all fill in the same time',
  compute: ({ cavities, volume, flow }) => (cavities * volume) / flow,
});

/** Power that the machine puts into the metal: 1 MPa times 1 l/s is 1 kW. */
export const metalPower = defineFormula({
  id: 'pq2.power',
  title: 'Power on the metal',
  symbol: 'W',
  inputs: {
    pressure: { symbol: 'P', unit: 'MPa', meaning: 'metal pressure', range: [0.1, 200] },
    flow: { symbol: 'Q', unit: 'l/s', meaning: 'metal flow', range: [0.05, 500] },
  },
  unit: 'kW',
  equation: 'P * Q',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ pressure, flow }) => pressure * flow,
});

/** Flow at which the machine has the greatest power for the metal. */
export const greatestPowerFlow = defineFormula({
  id: 'pq2.greatest-power-flow',
  title: 'Flow of the greatest power',
  symbol: 'Q_w',
  inputs: { dry_flow: { symbol: 'Q_max', unit: 'l/s', meaning: 'dry-shot flow', range: [0.5, 500] } },
  unit: 'l/s',
  equation: 'Q_max / sqrt(3)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'exact for the line P_0 (1 - (Q/Q_max)^2); the 2/3 of the flow that is also printed belongs to the greatest q^2 (1 - q), which is not the power of this line',
  compute: ({ dry_flow }) => dry_flow / Math.sqrt(3),
});

/** Metal pressure at which the machine has the greatest power for the metal. */
export const greatestPowerPressure = defineFormula({
  id: 'pq2.greatest-power-pressure',
  title: 'Metal pressure of the greatest power',
  symbol: 'P_w',
  inputs: { static_pressure: { symbol: 'P_0', unit: 'MPa', meaning: 'static metal pressure in the fill phase', range: [2, 200] } },
  unit: 'MPa',
  equation: '2 * P_0 / 3',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the line P_0 (1 - (Q/Q_max)^2)',
  compute: ({ static_pressure }) => (2 * static_pressure) / 3,
});

/** Sleeve fill with another plunger, from the metal poured with the planned one: only the biscuit changes. */
export const fillWithPlunger = defineFormula({
  id: 'pq2.plunger-sleeve-fill',
  title: 'Sleeve fill with another plunger',
  symbol: 'f',
  inputs: {
    liquid_volume: { symbol: 'V', unit: 'cm3', meaning: 'liquid metal of one shot with the planned plunger', range: [5, 100000] },
    biscuit_volume: { symbol: 'V_b', unit: 'cm3', meaning: 'biscuit of the planned plunger', range: [1, 5000] },
    density: { symbol: 'rho_s', unit: 'g/cm3', meaning: 'density of the solid metal', range: [1.5, 11] },
    liquid_density: { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the liquid metal', range: [1.5, 11] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the other plunger', range: [30, 250] },
    thickness: { symbol: 'b', unit: 'mm', meaning: 'its biscuit', range: [10, 100] },
    length: { symbol: 'L', unit: 'mm', meaning: 'active length of the sleeve', range: [100, 2000] },
  },
  unit: '%',
  where: [{ symbol: 'A_p', equation: 'pi * D^2 / 4' }],
  equation: '100 * (1000 * V + rho_s / rho * (A_p * b - 1000 * V_b)) / (A_p * L)',
  requires: [
    { text: 'a biscuit that is part of the shot', holds: (x) => x.biscuit_volume * x.density < x.liquid_volume * x.liquid_density },
    { text: 'a biscuit no longer than the sleeve', holds: (x) => x.thickness < x.length },
  ],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact geometry, as good as the poured volume',
  compute: (x) => {
    const area = (Math.PI * x.diameter ** 2) / 4;
    return (100 * (1000 * x.liquid_volume + (x.density / x.liquid_density) * (area * x.thickness - 1000 * x.biscuit_volume))) / (area * x.length);
  },
});
