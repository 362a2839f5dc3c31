import { defineFormula } from '../kernel/formula.ts';

const count = { symbol: 'n', unit: '1', meaning: 'castings of the part in a shot', range: [1, 64] } as const;

/** Shots with good castings that a part asks for. */
export const setsNeeded = defineFormula({
  id: 'set.sets-for-parts',
  title: 'Shots with good castings for a number of castings',
  symbol: 'N_s',
  inputs: { castings: { symbol: 'N', unit: '1', meaning: 'castings needed', range: [1, 1e9] }, count },
  unit: '1',
  equation: 'N / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; shots with rejects come on top',
  compute: ({ castings, count: n }) => castings / n,
});

/** Castings that a die makes and nobody needs, because another part of the shot decides how many shots are made. */
export const surplus = defineFormula({
  id: 'set.surplus',
  title: 'Castings that are not needed',
  symbol: 'N_x',
  inputs: {
    sets: { symbol: 'N_s', unit: '1', meaning: 'shots with good castings that are made', range: [1, 1e9] },
    count,
    needed: { symbol: 'N', unit: '1', meaning: 'castings of the part needed', range: [1, 1e9] },
  },
  unit: '1',
  equation: 'max(0, n * N_s - N)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact while every cavity is cast in every shot',
  compute: ({ sets, count: n, needed }) => Math.max(0, n * sets - needed),
});

/** The same as a share of the castings made. */
export const surplusShare = defineFormula({
  id: 'set.surplus-share',
  title: 'Castings that are not needed, of those made',
  symbol: 'x',
  inputs: {
    surplus: { symbol: 'N_x', unit: '1', meaning: 'castings that are not needed', range: [0, 1e9], domain: 'not-negative' },
    sets: { symbol: 'N_s', unit: '1', meaning: 'shots with good castings that are made', range: [1, 1e9] },
    count,
  },
  unit: '%',
  equation: '100 * N_x / (n * N_s)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact while every cavity is cast in every shot',
  compute: ({ surplus: more, sets, count: n }) => (100 * more) / (n * sets),
});

/** What was spent on those castings of a set that are tested for leaks. */
export const testedSpent = defineFormula({
  id: 'set.tested-spent',
  title: 'Spent on the leak-tested castings of a set',
  symbol: 'c_t',
  inputs: {
    spent: { symbol: 'c', unit: '1', meaning: 'money spent on a set so far', range: [0, 1e8], domain: 'not-negative' },
    share: { symbol: 'p_t', unit: '%', meaning: 'share of the leak-tested castings in the flow', range: [0, 100], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'c * p_t / 100',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a rule of ours: what is spent on a casting goes by the metal that flows to it',
  compute: ({ spent, share }) => (spent * share) / 100,
});

/** Toolmaking hours of a die for castings of several parts, by the rule that is used for castings of one. */
export const setDieHours = defineFormula({
  id: 'set.die-hours',
  title: 'Design and toolmaking hours of a die with several parts',
  symbol: 'h_d',
  inputs: {
    all: { symbol: 'h_a', unit: 'h', meaning: 'hours of a die with one casting, added up over all castings', range: [10, 500000] },
    castings: { symbol: 'n', unit: '1', meaning: 'castings of a shot', range: [1, 64] },
    exponent: { symbol: 'm', unit: '1', meaning: 'exponent of the die cost on the number of cavities', range: [0.3, 1] },
  },
  unit: 'h',
  equation: 'h_a / n * n^m',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule of ours: what several cavities of one part save by being alike is given to those of several parts too, so this is the low side',
  compute: (x) => (x.all / x.castings) * x.castings ** x.exponent,
});

/** What one casting bears of money that is spent on all castings of a shot. */
export const castingShare = defineFormula({
  id: 'set.casting-share',
  title: 'Share of one casting in the cost of a set',
  symbol: 'C_1',
  inputs: {
    whole: { symbol: 'C', unit: '1', meaning: 'money for a good set', range: [0, 1e11], domain: 'not-negative' },
    share: { symbol: 's', unit: '%', meaning: 'share of all castings of the part', range: [0, 100], domain: 'not-negative' },
    count,
  },
  unit: '1',
  equation: 'C * s / 100 / n',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'exact for the key by which it is shared out, which is a rule of ours',
  compute: (x) => (x.whole * x.share) / 100 / x.count,
});
