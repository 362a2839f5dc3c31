import { defineFormula } from '../../kernel/formula.ts';

const DIAMETER = { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [30, 250] } as const;
const FILL = { symbol: 'f', unit: '%', meaning: 'sleeve fill', range: [20, 90] } as const;
const NOT_OVERFULL = { text: 'a fill of 100 % or less', holds: ({ fill }: { readonly fill: number }) => fill <= 100 };

/** Critical slow-shot speed by the linear rule of the trade: a check on the balances. */
export const linearSpeed = defineFormula({
  id: 'slow-shot.linear-speed',
  title: 'Critical slow-shot speed, linear rule',
  symbol: 'v_l',
  inputs: { diameter: DIAMETER, fill: FILL },
  unit: 'm/s',
  equation: '0.1149 * (1 - f / 100) * sqrt(D)',
  requires: [NOT_OVERFULL],
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered; follows the energy balance within 2.4 % for 40 to 80 % fill, 4 % lower at 30 %',
  compute: ({ diameter, fill }) => 0.1149 * (1 - fill / 100) * Math.sqrt(diameter),
});

/** How far the critical speed by momentum lies above that by energy. */
export const balanceDifference = defineFormula({
  id: 'slow-shot.balance-difference',
  title: 'Critical speed by momentum over that by energy',
  symbol: 'd',
  inputs: {
    energy: { symbol: 'v_e', unit: 'm/s', meaning: 'critical speed by the energy balance', range: [0.1, 1.5] },
    momentum: { symbol: 'v_m', unit: 'm/s', meaning: 'critical speed by the momentum balance', range: [0.1, 2] },
  },
  unit: '%',
  equation: '100 * (v_m / v_e - 1)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; the two balances differ by less than 5 % above about 60 % fill',
  compute: ({ energy, momentum }) => 100 * (momentum / energy - 1),
});

/** The slow-shot speed planned: the lower of the two critical speeds. */
export const slowSpeed = defineFormula({
  id: 'slow-shot.speed',
  title: 'Slow-shot speed',
  symbol: 'v_s',
  inputs: {
    energy: { symbol: 'v_e', unit: 'm/s', meaning: 'critical speed by the energy balance', range: [0.1, 1.5] },
    momentum: { symbol: 'v_m', unit: 'm/s', meaning: 'critical speed by the momentum balance', range: [0.1, 2] },
  },
  unit: 'm/s',
  equation: 'min(v_e, v_m)',
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy:
    'the lower one is that of a plunger that gathers speed gently, where the method of characteristics gives the same within 2 % from 30 to 80 % fill; with the ramps planned the wave solution fills nine tenths to the whole of the depth at it',
  compute: ({ energy, momentum }) => Math.min(energy, momentum),
});

/** Sleeve fill at which the linear rule asks a plunger for a given speed. */
export const fillForSpeed = defineFormula({
  id: 'slow-shot.fill-for-window',
  title: 'Sleeve fill at the greatest slow speed in use',
  symbol: 'f_w',
  inputs: {
    diameter: DIAMETER,
    speed: { symbol: 'v_w', unit: 'm/s', meaning: 'slow speed to come down to', range: [0.1, 0.6] },
  },
  unit: '%',
  equation: '100 * (1 - v_w / (0.1149 * sqrt(D)))',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'by the linear rule, which is remembered',
  compute: ({ diameter, speed }) => 100 * (1 - speed / (0.1149 * Math.sqrt(diameter))),
});

/** Temperature lost in ladle and sleeve by the fill: the published trend laid over the range in common use. */
export const lossByFill = defineFormula({
  id: 'slow-shot.loss-by-fill',
  title: 'Temperature lost in ladle and sleeve, by the fill',
  symbol: 'dT',
  inputs: {
    fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill', range: [20, 90] },
    fill_least: { symbol: 'f_1', unit: '%', meaning: 'lowest usual fill, which loses most', range: [20, 40] },
    fill_greatest: { symbol: 'f_2', unit: '%', meaning: 'highest usual fill, which loses least', range: [60, 90] },
    loss_least: { symbol: 'l_1', unit: 'K', meaning: 'loss between furnace and gate, least', range: [5, 40], domain: 'not-negative' },
    loss_greatest: { symbol: 'l_2', unit: 'K', meaning: 'loss between furnace and gate, greatest', range: [40, 100], domain: 'not-negative' },
  },
  unit: 'K',
  equation: 'l_2 - (l_2 - l_1) * min(1, max(0, (f - f_1) / (f_2 - f_1)))',
  requires: [
    { text: 'fill_greatest > fill_least', holds: (x) => x.fill_greatest > x.fill_least },
    { text: 'loss_greatest >= loss_least', holds: (x) => x.loss_greatest >= x.loss_least },
  ],
  outside: 'extrapolate',
  source: ['GL-FILLING-LEVEL'],
  status: 'practice',
  accuracy: 'that the loss falls with the fill was read; the straight line between the ends of the range in use is a planning rule',
  compute: (x) => x.loss_greatest - (x.loss_greatest - x.loss_least) * Math.min(1, Math.max(0, (x.fill - x.fill_least) / (x.fill_greatest - x.fill_least))),
});

/** Time to dip, carry and pour the metal of one shot. */
export const ladleTime = defineFormula({
  id: 'slow-shot.ladle-time',
  title: 'Time to ladle and pour',
  symbol: 't_l',
  inputs: { volume: { symbol: 'V', unit: 'cm3', meaning: 'all metal of one shot', range: [20, 20000] } },
  unit: 's',
  equation: '2 + 0.0048 * V',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered from a textbook on design for manufacture; a mean over many ladles, dipping and pouring together',
  compute: ({ volume }) => 2 + 0.0048 * volume,
});
