import { defineFormula } from '../kernel/formula.ts';

const parts = { symbol: 'N', unit: '1', meaning: 'castings made over the life, rejects included', range: [1, 1e9] } as const;
const machine_rate = {
  symbol: 'k_1',
  unit: '1',
  meaning: 'money per hour of a machine, without what grows with its locking force',
  range: [0.001, 1e7],
} as const;
const cycle = { symbol: 't_d', unit: 's', meaning: 'machine time of a shot', range: [0.5, 600] } as const;
const trim_time = {
  symbol: 't_p',
  unit: 's',
  meaning: 'trimming time of a shot, without what each casting adds',
  range: [0, 600],
  domain: 'not-negative',
} as const;
const trim_rate = { symbol: 'C_r', unit: '1', meaning: 'money per hour of trimming', range: [0, 1e7], domain: 'not-negative' } as const;
const die_cost = { symbol: 'C_d', unit: '1', meaning: 'die with one cavity', range: [0.1, 1e11] } as const;
const trim_die_cost = { symbol: 'C_t', unit: '1', meaning: 'trim die for one cavity', range: [0, 1e11], domain: 'not-negative' } as const;
const exponent = { symbol: 'm', unit: '1', meaning: 'exponent of the die cost on the number of cavities', range: [0.3, 1] } as const;
const force = { symbol: 'F', unit: 'kN', meaning: 'locking force of the machine', range: [100, 1e5] } as const;
const CLOSED = 'machine size in proportion to the cavities, a rate that is linear in locking force, one cycle for every count';

/** Count of cavities at which die and machine together cost least; not rounded to a count that can be laid out. */
export const bestCavities = defineFormula({
  id: 'cost.best-cavities',
  title: 'Cheapest number of cavities',
  symbol: 'n_b',
  inputs: { parts, machine_rate, cycle, trim_time, trim_rate, die_cost, trim_die_cost, exponent },
  unit: '1',
  equation: '(N * (k_1 * t_d + t_p * C_r) / 3600 / (m * (C_d + C_t)))^(1 / (m + 1))',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: `closed form of a textbook on design for manufacture, not read again; its derivation was checked. It holds for ${CLOSED}; the minimum is flat`,
  compute: (x) =>
    ((x.parts * (x.machine_rate * x.cycle + x.trim_time * x.trim_rate)) / 3600 / (x.exponent * (x.die_cost + x.trim_die_cost))) ** (1 / (x.exponent + 1)),
});

/** Cost of a good part with another count of cavities: the sum whose minimum the closed form gives. */
export const withCavities = defineFormula({
  id: 'cost.with-cavities',
  title: 'Cost of a good part with a count of cavities',
  symbol: 'c_n',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [0.5, 64] },
    parts,
    good: { symbol: 'N_g', unit: '1', meaning: 'good parts over the life', range: [1, 1e9] },
    machine_rate,
    force_rate: { symbol: 'k_f', unit: '1', meaning: 'money per hour for the locking force of one cavity', range: [0, 1e7], domain: 'not-negative' },
    cycle,
    trim_time,
    trim_rate,
    die_cost,
    trim_die_cost,
    exponent,
    rest: { symbol: 'c_0', unit: '1', meaning: 'what does not change with the cavities', range: [-1000, 1e8], domain: 'any', default: 0 },
  },
  unit: '1',
  where: [
    { symbol: 'c_s', equation: '((k_1 / n + k_f) * t_d + C_r * t_p / n) / 3600' },
    { symbol: 'c_k', equation: '(C_d + C_t) * n^m' },
  ],
  equation: 'N / N_g * c_s + c_k / N_g + c_0',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: `structure of a textbook, from memory; ${CLOSED}`,
  compute: (x) => {
    const shot = ((x.machine_rate / x.cavities + x.force_rate) * x.cycle + (x.trim_rate * x.trim_time) / x.cavities) / 3600;
    return (x.parts / x.good) * shot + ((x.die_cost + x.trim_die_cost) * x.cavities ** x.exponent) / x.good + x.rest;
  },
});

/** Castings that have to be made for the good ones. */
export const castings = defineFormula({
  id: 'cost.castings',
  title: 'Castings made for the good parts',
  symbol: 'N',
  inputs: {
    good: { symbol: 'N_g', unit: '1', meaning: 'good parts', range: [1, 1e8] },
    reject_share: { symbol: 'q', unit: '%', meaning: 'castings rejected', range: [0, 50], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'N_g / (1 - q / 100)',
  requires: [{ text: 'a reject share below 100 %', holds: ({ reject_share }) => reject_share < 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ good, reject_share }) => good / (1 - reject_share / 100),
});

/** How the hourly rate grows with locking force, from two machines of a plant. */
export const rateSlope = defineFormula({
  id: 'cost.rate-slope',
  title: 'Hourly rate for each kN of locking force',
  symbol: 'm_1',
  inputs: {
    small_rate: { symbol: 'R_1', unit: '1', meaning: 'money per hour of the smallest machine', range: [0.001, 1e7] },
    small_force: { symbol: 'F_1', unit: 'kN', meaning: 'its locking force', range: [100, 1e5] },
    large_rate: { symbol: 'R_2', unit: '1', meaning: 'money per hour of the largest machine', range: [0.001, 1e7] },
    large_force: { symbol: 'F_2', unit: 'kN', meaning: 'its locking force', range: [100, 1e5] },
  },
  unit: '1',
  equation: '(R_2 - R_1) / (F_2 - F_1)',
  requires: [{ text: 'large_force > small_force', holds: (x) => x.large_force > x.small_force }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a plant whose rates lie on a line',
  compute: (x) => (x.large_rate - x.small_rate) / (x.large_force - x.small_force),
});

/** The same from one machine, with the proportion of a remembered line of rates. */
export const rateSlopeUsual = defineFormula({
  id: 'cost.rate-slope-usual',
  title: 'Hourly rate for each kN of locking force, usual',
  symbol: 'm_1',
  inputs: {
    rate: { symbol: 'R', unit: '1', meaning: 'money per hour of the machine', range: [0.001, 1e7] },
    force,
    base: { symbol: 'b', unit: '1', meaning: 'remembered line: money per hour at no force', range: [1, 1000] },
    slope: { symbol: 'g', unit: '1', meaning: 'remembered line: money per hour and kN', range: [0.0001, 1] },
  },
  unit: '1',
  equation: 'R * g / (b + g * F)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'scales a remembered line so that it passes through the rate given',
  compute: (x) => (x.rate * x.slope) / (x.base + x.slope * x.force),
});

/** What of an hourly rate does not grow with locking force. */
export const rateBase = defineFormula({
  id: 'cost.rate-base',
  title: 'Hourly rate without what grows with locking force',
  symbol: 'k_1',
  inputs: {
    rate: { symbol: 'R', unit: '1', meaning: 'money per hour of the machine', range: [0.001, 1e7] },
    force,
    slope: { symbol: 'm_1', unit: '1', meaning: 'money per hour and kN', range: [0, 10000], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'R - m_1 * F',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for rates that are linear in locking force',
  compute: (x) => x.rate - x.slope * x.force,
});

/** Locking force of one cavity, in money per hour. */
export const forceRate = defineFormula({
  id: 'cost.force-rate',
  title: 'Hourly rate for the locking force of one cavity',
  symbol: 'k_f',
  inputs: {
    force,
    slope: { symbol: 'm_1', unit: '1', meaning: 'money per hour and kN', range: [0, 10000], domain: 'not-negative' },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] },
  },
  unit: '1',
  equation: 'm_1 * F / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => (x.slope * x.force) / x.cavities,
});
