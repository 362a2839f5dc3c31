import { defineFormula } from '../kernel/formula.ts';

const ABSOLUTE_ZERO = 273.15;
const WARM = { text: 'a temperature above absolute zero', holds: (x: { readonly temperature: number }) => x.temperature > -ABSOLUTE_ZERO };

/** Solidification shrinkage of an aluminium-silicon alloy, between two measured compositions. */
export const siliconShrinkage = defineFormula({
  id: 'porosity.silicon-shrinkage',
  title: 'Solidification shrinkage by silicon',
  symbol: 'b_s',
  inputs: {
    silicon: { symbol: 'c', unit: '%', meaning: 'silicon', range: [0, 11.6], domain: 'not-negative' },
    pure: { symbol: 'b_0', unit: '%', meaning: 'shrinkage of pure aluminium', range: [5, 8] },
    measured: { symbol: 'b_1', unit: '%', meaning: 'shrinkage measured near the eutectic', range: [3, 6] },
    measured_silicon: { symbol: 'c_1', unit: '%', meaning: 'silicon of that measurement', range: [10, 13], default: 11.6 },
  },
  unit: '%',
  equation: 'b_0 - (b_0 - b_1) * c / c_1',
  outside: 'clamp',
  source: ['MAGNUSSON-ARNBERG'],
  status: 'derived',
  accuracy: 'a straight line between two measurements, at 0 and 11.6 % silicon; alloys with more silicon take the figure of 11.6 %, they shrink less',
  compute: (x) => x.pure - ((x.pure - x.measured) * x.silicon) / x.measured_silicon,
});

/** Share of the gas that stays in the casting in a good case: no less than what the vents leave in the cavity. */
export const trappedLow = defineFormula({
  id: 'porosity.trapped-low',
  title: 'Share of the gas trapped, low',
  symbol: 'x_1',
  inputs: {
    least: { symbol: 'x_0', unit: '%', meaning: 'least share trapped in practice', range: [1, 100] },
    left: { symbol: 'm_r', unit: '%', meaning: 'gas that the vents have not passed at nine tenths of the stroke', range: [0.1, 100] },
    greatest: { symbol: 'x_2', unit: '%', meaning: 'greatest share trapped in practice', range: [1, 100] },
  },
  unit: '%',
  equation: 'min(max(x_0, m_r), x_2)',
  requires: [{ text: 'least <= greatest', holds: (x) => x.least <= x.greatest }],
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'gas is stirred in while the cavity fills, besides what is shut in at the end; only a casting melted under vacuum tells how much',
  compute: (x) => Math.min(Math.max(x.least, x.left), x.greatest),
});

/** Gas in 100 g of casting, in the cubic centimetres at 0 degC and 1013 mbar in which such analyses are given. */
export const gasContent = defineFormula({
  id: 'porosity.gas-content',
  title: 'Gas in 100 g of metal',
  symbol: 'c_g',
  inputs: {
    gas_volume: { symbol: 'V_g', unit: 'cm3', meaning: 'gas in cavity, overflows and runner before the fill', range: [0.1, 200000] },
    pressure: { symbol: 'p_g', unit: 'mbar', meaning: 'absolute pressure of that gas', range: [10, 1100] },
    temperature: { symbol: 'T_g', unit: 'degC', meaning: 'temperature of that gas', range: [0, 500], domain: 'any' },
    trapped: { symbol: 'x', unit: '%', meaning: 'share of it that is trapped', range: [0, 100], domain: 'not-negative' },
    mass: { symbol: 'm', unit: 'kg', meaning: 'metal in which it is trapped: casting and overflows', range: [0.0005, 250] },
  },
  unit: 'cm3',
  equation: 'x / 100 * V_g * p_g / 1013.25 * 273.15 / (T_g + 273.15) / (10 * m)',
  requires: [WARM, { text: 'a trapped share of 100 % or less', holds: ({ trapped }) => trapped <= 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the share trapped; vapour of release agent and plunger lubricant and hydrogen from the melt come on top',
  compute: (x) => (((x.trapped / 100) * x.gas_volume * x.pressure) / 1013.25) * (ABSOLUTE_ZERO / (x.temperature + ABSOLUTE_ZERO)) * (1 / (10 * x.mass)),
});

/** Pores that a gas content makes under a metal pressure. */
export const gasShare = defineFormula({
  id: 'porosity.gas-share',
  title: 'Gas pores under metal pressure',
  symbol: 'P_g',
  inputs: {
    content: { symbol: 'c_g', unit: 'cm3', meaning: 'gas in 100 g of metal, at 0 degC and 1013 mbar', range: [0, 100], domain: 'not-negative' },
    density: { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the metal', range: [1.5, 9] },
    pressure: { symbol: 'p_m', unit: 'MPa', meaning: 'metal pressure when the metal around the pores freezes', range: [2, 150] },
    temperature: { symbol: 'T_m', unit: 'degC', meaning: 'temperature of the metal then', range: [200, 1000], domain: 'any' },
  },
  unit: '%',
  equation: 'c_g * rho * 0.101325 / p_m * (T_m + 273.15) / 273.15',
  requires: [WARM],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'ideal gas; air so dense takes up more, by an estimate a fifth at 70 MPa. Pores grow again where the pressure is lost before the metal is solid',
  compute: (x) => ((x.content * x.density * 0.101325) / x.pressure) * ((x.temperature + ABSOLUTE_ZERO) / ABSOLUTE_ZERO),
});

/** Share of the shrinkage of a wall that can still be fed through the gate. */
export const fedShare = defineFormula({
  id: 'porosity.fed-share',
  title: 'Share of the shrinkage fed through the gate',
  symbol: 'f_s',
  inputs: {
    gate_thickness: { symbol: 'T_g', unit: 'mm', meaning: 'gate thickness', range: [0.2, 12] },
    wall: { symbol: 'h', unit: 'mm', meaning: 'wall that is to be fed', range: [0.5, 25] },
    lead: { symbol: 'q', unit: '1', meaning: 'freezing time of the gate over that of a wall of its thickness, 1 without help', range: [1, 4], default: 1 },
  },
  unit: '%',
  equation: '100 * min(1, T_g / h * sqrt(q))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'skins grow alike in gate and wall until they meet in the gate, whatever law they follow, so that share of the wall is solid by then; the rest is fed no more. Pressure that spreads through a mushy wall unevenly is not in it',
  compute: (x) => 100 * Math.min(1, (x.gate_thickness / x.wall) * Math.sqrt(x.lead)),
});

/** How much later than a still wall of its thickness a gate may freeze: the spread of published freezing times. */
export const freezingLead = defineFormula({
  id: 'porosity.lead',
  title: 'Freezing time of the gate over that of a wall of its thickness, at best',
  symbol: 'q',
  inputs: {
    least: { symbol: 't_1', unit: 'ms', meaning: 'published freezing time of a gate, low end', range: [1, 1000] },
    greatest: { symbol: 't_2', unit: 'ms', meaning: 'published freezing time of the same gate, high end', range: [1, 1000] },
  },
  unit: '1',
  equation: 't_2 / t_1',
  requires: [{ text: 'least <= greatest', holds: (x) => x.least <= x.greatest }],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'practice',
  accuracy: 'the gate is heated by all the metal that has passed it, the wall is not; the whole published spread is put down to that',
  compute: ({ least, greatest }) => greatest / least,
});

/** Shrinkage that nothing feeds. */
export const unfedShrinkage = defineFormula({
  id: 'porosity.unfed-shrinkage',
  title: 'Shrinkage that is not fed',
  symbol: 'P_s',
  inputs: {
    shrinkage: { symbol: 'b_s', unit: '%', meaning: 'solidification shrinkage', range: [1, 8] },
    fed: { symbol: 'f_s', unit: '%', meaning: 'share of it fed through the gate', range: [0, 100], domain: 'not-negative' },
  },
  unit: '%',
  equation: 'b_s * (1 - f_s / 100)',
  requires: [{ text: 'a fed share of 100 % or less', holds: ({ fed }) => fed <= 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'volume per cent of the wall, as pores; a part of it draws in the skin or shows as sinks instead',
  compute: ({ shrinkage, fed }) => shrinkage * (1 - fed / 100),
});

/** Pores of gas and shrinkage together. */
export const porosityTotal = defineFormula({
  id: 'porosity.total',
  title: 'Porosity',
  symbol: 'P',
  inputs: {
    gas: { symbol: 'P_g', unit: '%', meaning: 'gas pores under metal pressure', range: [0, 20], domain: 'not-negative' },
    shrinkage: { symbol: 'P_s', unit: '%', meaning: 'shrinkage that is not fed', range: [0, 8], domain: 'not-negative' },
  },
  unit: '%',
  equation: 'P_g + P_s',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a sum of two estimates; they share room, since gas fills shrinkage pores, so it is the upper side',
  compute: ({ gas, shrinkage }) => gas + shrinkage,
});
