import { defineFormula } from '../kernel/formula.ts';
import { ENTRY_MACH_LINES, entryMach, HEAT_RATIO } from './solve/fanno.ts';
import { gasAtStroke, ratioThatLeaves } from './solve/vent-balance.ts';

const STROKE = { symbol: 's', unit: '1', meaning: 'share of the stroke done', range: [0.1, 0.95], domain: 'not-negative', default: 0.9 } as const;
const FRICTION_LENGTH = {
  symbol: 'X',
  unit: '1',
  meaning: 'friction length 4 f L / D_h of the vent',
  range: [0, 20],
  domain: 'not-negative',
  default: 3,
} as const;
const BACK_PRESSURE = {
  symbol: 'b',
  unit: '1',
  meaning: 'pressure behind the vent, times the pressure in the cavity at the start: 1 into the air, 0 into an empty tank',
  range: [0, 1],
  domain: 'not-negative',
  default: 1,
} as const;
const OUTSIDE_BELOW = { text: 'a back pressure of 1 or less', holds: (x: { readonly back_pressure: number }) => x.back_pressure <= 1 };
const BEFORE_END = { text: 'a stroke between 0 and 1', holds: (x: { readonly stroke: number }) => x.stroke > 0 && x.stroke < 1 };
const BALANCE = 'dm/ds = -r * P^(6/7) * phi(P / b), P = (m / (1 - s))^1.4, with phi the flow of the vent over its choked flow (Fanno, X)';
const BALANCE_ACCURACY =
  'air as an ideal gas that loses no heat, constant plunger speed, vent choked or not; the solution is good to four digits, the model to a tenth or two: unsteady flow, sprayed metal and release-agent vapour are not in it';

/** Gas pressure left in the cavity at a share of the stroke: what the metal has to push against, and what it encloses. */
export const residualPressure = defineFormula({
  id: 'vent.residual-pressure',
  title: 'Residual gas pressure in the cavity',
  symbol: 'P_r',
  inputs: {
    area_ratio: { symbol: 'r', unit: '1', meaning: 'vent area over the critical area', range: [0, 20], domain: 'not-negative' },
    stroke: STROKE,
    friction_length: FRICTION_LENGTH,
    back_pressure: BACK_PRESSURE,
  },
  unit: '1',
  equation: BALANCE,
  solution: 'time-stepped',
  requires: [BEFORE_END, OUTSIDE_BELOW],
  outside: 'clamp',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: `times the pressure at the start; ${BALANCE_ACCURACY}. A vent more than 20 times the critical leaves no excess worth a figure`,
  compute: (x) => gasAtStroke({ areaRatio: x.area_ratio, frictionLength: x.friction_length, backPressure: x.back_pressure }, x.stroke).pressure,
});

/** The inverse: how large a vent must be, against the critical area, to leave a wanted pressure. */
export const ratioForPressure = defineFormula({
  id: 'vent.ratio-for-pressure',
  title: 'Vent area over critical area for a wanted residual pressure',
  symbol: 'r',
  inputs: {
    pressure: { symbol: 'P_w', unit: '1', meaning: 'residual pressure wanted, times that at the start', range: [1.05, 20] },
    stroke: STROKE,
    friction_length: FRICTION_LENGTH,
    back_pressure: BACK_PRESSURE,
  },
  unit: '1',
  equation: `P = P_w at the stroke, from ${BALANCE}`,
  solution: 'time-stepped',
  requires: [
    BEFORE_END,
    OUTSIDE_BELOW,
    {
      text: 'a wanted pressure above the pressure behind the vent and below that of a closed cavity',
      holds: (x) => x.pressure >= x.back_pressure + 0.01 && x.pressure <= (1 - x.stroke) ** -HEAT_RATIO,
    },
  ],
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: BALANCE_ACCURACY,
  compute: (x) => ratioThatLeaves(x.pressure, { frictionLength: x.friction_length, backPressure: x.back_pressure }, x.stroke),
});

/** Share of the gas that the vents have not passed at a share of the stroke. */
export const gasLeft = defineFormula({
  id: 'vent.gas-left',
  title: 'Gas left in the cavity',
  symbol: 'm_r',
  inputs: {
    pressure: { symbol: 'P_r', unit: '1', meaning: 'residual pressure, times that at the start', range: [0.01, 20] },
    stroke: STROKE,
  },
  unit: '%',
  equation: '100 * P_r^(1 / 1.4) * (1 - s)',
  requires: [{ text: 'a stroke below 1', holds: ({ stroke }) => stroke < 1 }],
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: 'of the gas at the start, for a gas that loses no heat; what is stirred into the metal before is not in it',
  compute: ({ pressure, stroke }) => 100 * pressure ** (1 / HEAT_RATIO) * (1 - stroke),
});

/** Pressure in the cavity over that outside, above which a vent is choked. */
export const chokeRatio = defineFormula({
  id: 'vent.choke-ratio',
  title: 'Pressure ratio that chokes a vent',
  symbol: 'P_c',
  inputs: { friction_length: FRICTION_LENGTH },
  unit: '1',
  where: ENTRY_MACH_LINES.lines,
  equation: '(1 + 0.2 * M^2)^3 * sqrt(1.2) / M',
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: 'cavity over outside pressure, Fanno flow of air; exact for an even duct',
  compute: ({ friction_length }) => {
    const mach = entryMach(friction_length);
    return ((1 + 0.2 * mach ** 2) ** 3 * Math.sqrt(1.2)) / mach;
  },
});

/** Vent area over the critical area: the figure that decides how much gas stays. */
export const areaRatio = defineFormula({
  id: 'vent.area-ratio',
  title: 'Vent area over critical area',
  symbol: 'r',
  inputs: {
    area: { symbol: 'A_v', unit: 'mm2', meaning: 'vent area of one cavity', range: [0.1, 5000] },
    critical: { symbol: 'A_c', unit: 'mm2', meaning: 'area at which a choked vent passes the gas of one cavity within the fill time', range: [0.1, 5000] },
  },
  unit: '1',
  equation: 'A_v / A_c',
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: 'exact; equal to the fill time over the time in which the vent would empty the cavity',
  compute: ({ area, critical }) => area / critical,
});

/** Vent area that is a multiple of the critical one. */
export const multipleOfCritical = defineFormula({
  id: 'vent.multiple-area',
  title: 'Multiple of the critical vent area',
  symbol: 'A_m',
  inputs: {
    critical: { symbol: 'A_c', unit: 'mm2', meaning: 'critical vent area', range: [0.1, 5000] },
    ratio: { symbol: 'r', unit: '1', meaning: 'times the critical area', range: [0.1, 20] },
  },
  unit: 'mm2',
  equation: 'r * A_c',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ critical, ratio }) => ratio * critical,
});

/** Absolute pressure of the gas in the cavity. */
export const cavityPressure = defineFormula({
  id: 'vent.cavity-pressure',
  title: 'Gas pressure in the cavity',
  symbol: 'p_r',
  inputs: {
    start: { symbol: 'p_0', unit: 'mbar', meaning: 'absolute pressure in the cavity at the start of the fill', range: [10, 1100] },
    times: { symbol: 'P_r', unit: '1', meaning: 'residual pressure, times that at the start', range: [0.01, 20] },
  },
  unit: 'bar',
  equation: 'p_0 * P_r / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ start, times }) => (start * times) / 1000,
});

/** Pressure behind the vent of a vacuum, as a share of that in the cavity when the fill begins. */
export const backPressure = defineFormula({
  id: 'vent.back-pressure',
  title: 'Pressure behind the vent over that in the cavity',
  symbol: 'b',
  inputs: {
    behind: { symbol: 'p_b', unit: 'mbar', meaning: 'absolute pressure behind the vent: the air, or the tank', range: [0, 1100], domain: 'not-negative' },
    start: { symbol: 'p_0', unit: 'mbar', meaning: 'absolute pressure in the cavity at the start of the fill', range: [10, 1100] },
  },
  unit: '1',
  equation: 'p_b / p_0',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ behind, start }) => behind / start,
});

/** Area that plain vents can have on the free parting line, no more than they need. */
export const plainFit = defineFormula({
  id: 'vent.plain-fit',
  title: 'Plain vents that the parting line has room for',
  symbol: 'A_f',
  inputs: {
    needed: { symbol: 'A_v', unit: 'mm2', meaning: 'vent area needed', range: [0.1, 5000] },
    width: { symbol: 'w_a', unit: 'mm', meaning: 'width free for plain vents', range: [0, 20000], domain: 'not-negative' },
    depth: { symbol: 'd', unit: 'mm', meaning: 'depth of the vents', range: [0.03, 0.5] },
  },
  unit: 'mm2',
  equation: 'min(A_v, w_a * d)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the share of the parting line that vents can take',
  compute: ({ needed, width, depth }) => Math.min(needed, width * depth),
});
