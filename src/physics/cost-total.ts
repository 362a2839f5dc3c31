import { defineFormula } from '../kernel/formula.ts';

/** Money in every formula is a bare number, in the one currency that all of its inputs are in. */
const amount = (symbol: string, meaning: string) => ({ symbol, unit: '1', meaning, range: [0, 1e8], domain: 'not-negative', default: 0 }) as const;
const needed = (symbol: string, meaning: string) => ({ symbol, unit: '1', meaning, range: [0, 1e8], domain: 'not-negative' }) as const;

/** Everything but die and trim die. */
export const withoutDie = defineFormula({
  id: 'cost.without-die',
  title: 'Cost of a good part without its dies',
  symbol: 'c_w',
  inputs: {
    metal: needed('c_m', 'metal of the part'),
    melt_loss: amount('c_l', 'metal lost in melting'),
    returns: amount('c_r', 'loss on returns that are sold'),
    melting: amount('c_e', 'energy for melting and holding'),
    machine: amount('c_d', 'die casting machine'),
    trimming: amount('c_t', 'trimming'),
    machining: amount('c_f', 'machining'),
    impregnation: amount('c_i', 'impregnation'),
    leakers: amount('c_s', 'castings that still leak'),
  },
  unit: '1',
  equation: 'c_m + c_l + c_r + c_e + c_d + c_t + c_f + c_i + c_s',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum; what is not in it is listed beside it',
  compute: (x) => x.metal + x.melt_loss + x.returns + x.melting + x.machine + x.trimming + x.machining + x.impregnation + x.leakers,
});

/** With the dies, each spread over the parts that it makes. */
export const perPart = defineFormula({
  id: 'cost.per-part',
  title: 'Cost of a good part',
  symbol: 'c_p',
  inputs: {
    without_die: needed('c_w', 'everything but the dies'),
    die: amount('c_k', 'die and its sets of inserts'),
    trim_die: amount('c_x', 'trim die'),
  },
  unit: '1',
  equation: 'c_w + c_k + c_x',
  outside: 'extrapolate',
  source: ['SAREMA-COST'],
  status: 'derived',
  accuracy: 'exact sum of tooling, process and material; what is not in it is listed beside it',
  compute: (x) => x.without_die + x.die + x.trim_die,
});

/** Share of one line in the whole. */
export const share = defineFormula({
  id: 'cost.share',
  title: 'Share of the cost',
  symbol: 'p',
  inputs: {
    line: { symbol: 'c', unit: '1', meaning: 'one line of the cost', range: [0, 1e8], domain: 'not-negative' },
    total: { symbol: 'c_p', unit: '1', meaning: 'cost of a good part', range: [1e-6, 1e8] },
  },
  unit: '%',
  equation: '100 * c / c_p',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ line, total }) => (100 * line) / total,
});

/** What is spent on castings that are rejected, out of the lines that carry them. */
export const rejectsCost = defineFormula({
  id: 'cost.rejects',
  title: 'Cost of rejects in a good part',
  symbol: 'c_q',
  inputs: {
    machine: amount('c_d', 'die casting machine'),
    trimming: amount('c_t', 'trimming'),
    melt_loss: amount('c_l', 'metal lost in melting'),
    melting: amount('c_e', 'energy for melting and holding'),
    reject_share: { symbol: 'q', unit: '%', meaning: 'castings rejected, start-up scrap included', range: [0, 50], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'q / 100 * (c_d + c_t + c_l + c_e)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact: that share of these lines is for castings nobody can use',
  compute: (x) => (x.reject_share / 100) * (x.machine + x.trimming + x.melt_loss + x.melting),
});

/** Money for a number of good parts. */
export const forParts = defineFormula({
  id: 'cost.for-parts',
  title: 'Cost of all parts',
  symbol: 'C_n',
  inputs: {
    per_part: { symbol: 'c_p', unit: '1', meaning: 'cost of a good part', range: [1e-6, 1e8] },
    parts: { symbol: 'N', unit: '1', meaning: 'good parts', range: [1, 1e9] },
  },
  unit: '1',
  equation: 'c_p * N',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact, at prices that stay as they are',
  compute: (x) => x.per_part * x.parts,
});

/** Number of parts from which dearer tooling pays by what it saves on each. */
export const breakEven = defineFormula({
  id: 'cost.break-even',
  title: 'Parts from which dearer tooling pays',
  symbol: 'N_b',
  inputs: {
    extra: { symbol: 'C_x', unit: '1', meaning: 'what the dearer tooling costs more', range: [0.001, 1e11] },
    before: { symbol: 'c_1', unit: '1', meaning: 'cost of a part without it, tooling left out', range: [1e-6, 1e8] },
    after: { symbol: 'c_2', unit: '1', meaning: 'cost of a part with it, tooling left out', range: [0, 1e8], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'C_x / (c_1 - c_2)',
  requires: [{ text: 'a saving: before > after', holds: (x) => x.before > x.after }],
  outside: 'extrapolate',
  source: ['BASILIUS-CAVITATION'],
  status: 'derived',
  accuracy: 'exact arithmetic, interest left out',
  compute: (x) => x.extra / (x.before - x.after),
});

/** What of the cost does not change with the number of cavities. */
export const costRest = defineFormula({
  id: 'cost.rest',
  title: 'Cost that does not change with the cavities',
  symbol: 'c_0',
  inputs: { total: needed('c_p', 'cost of a good part'), modelled: needed('c_n', 'machine, trimming and first dies by the closed form') },
  unit: '1',
  equation: 'c_p - c_n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact difference',
  compute: ({ total, modelled }) => total - modelled,
});
