import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadRulebook, type Rulebook } from '../../src/index.ts';
import { cpuTime } from '../cpu-time.ts';
import { BASES, type Kind } from './bases.ts';
import { COMMANDS, slowRuns } from './commands.ts';
import { must, reading } from './invariants.ts';
import { type Mutation, mutated, mutations } from './mutate.ts';
import { leastTime, SLOWEST, timeWith } from './slow.ts';
import { type Depth, TARGETS } from './targets.ts';

// Damaged files of every kind and odd command lines. `node tests/fuzz/run.mjs RUNS SEED` runs many more of them.

const RUNS = Number(process.env['DIEWRIGHT_FUZZ_RUNS'] ?? 1600);
const SEED = Number(process.env['DIEWRIGHT_FUZZ_SEED'] ?? 20251125);
const HEAP = 300_000_000;
const TIMEOUT = Math.max(60_000, RUNS * 100);

/** How many of a hundred cases each kind gets. */
const SHARES: Readonly<Record<Kind, number>> = {
  part: 26,
  die: 5,
  plant: 10,
  project: 6,
  baseline: 5,
  plan: 3,
  limit: 10,
  table: 6,
  choice: 6,
  caution: 4,
  alloy: 4,
  sources: 3,
};
const OF_COMMANDS = 12;

const gc = (() => {
  setFlagsFromString('--expose_gc');
  return runInNewContext('gc') as () => void;
})();

let rulebook: Rulebook;
const times: { readonly ms: number; readonly what: string }[] = [];
const prototypes = [Object.prototype, Array.prototype, Function.prototype, String.prototype].map((of) => ({
  of,
  names: Object.getOwnPropertyNames(of).length,
}));

beforeAll(async () => {
  rulebook = await loadRulebook();
  timeWith(rulebook);
  for (const kind of Object.keys(TARGETS) as Kind[]) {
    const base = BASES[kind][0] as { text: string; path: string };
    for (let i = 0; i < 3; i += 1) await TARGETS[kind]({ ...base, depth: 'outputs' }, rulebook);
  }
  for (const { arbitrary, run } of Object.values(COMMANDS)) for (const given of fc.sample(arbitrary, { seed: 1, numRuns: 12 })) await run(given);
  slowRuns.length = 0;
}, TIMEOUT);

async function harmless(what: () => string, work: () => Promise<void>): Promise<void> {
  await work();
  for (const { of, names } of prototypes) must(Object.getOwnPropertyNames(of).length === names, () => `a prototype was changed by ${what()}`);
}

async function timed(what: () => string, work: () => Promise<void>): Promise<void> {
  const once = async (): Promise<number> => {
    const [start, read] = [cpuTime(), reading.ms];
    await harmless(what, work);
    return cpuTime() - start - (reading.ms - read);
  };
  const ms = await leastTime(await once(), once);
  if (ms > 100) times.push({ ms, what: what() });
}

afterAll(() => {
  const slow = [...times, ...slowRuns].sort((a, b) => b.ms - a.ms).slice(0, 5);
  process.stdout.write(`fuzz: ${RUNS} runs, seed ${SEED}; slowest: ${slow.map(({ ms, what }) => `${Math.round(ms)} ms ${what}`).join('; ')}\n`);
});

describe(`damaged files, seed ${SEED}`, () => {
  test.each(Object.keys(TARGETS) as Kind[])(
    '%s',
    async (kind) => {
      const bases = BASES[kind];
      const depth = fc.oneof({ weight: 39, arbitrary: fc.constant<Depth>('findings') }, { weight: 1, arbitrary: fc.constant<Depth>('outputs') });
      gc();
      const before = process.memoryUsage().heapUsed;
      await fc.assert(
        fc.asyncProperty(mutations(bases.length), depth, async (mutation: Mutation, to) => {
          const text = mutated(bases, mutation);
          await timed(
            () => `${kind} ${JSON.stringify(mutation).slice(0, 300)}`,
            () => TARGETS[kind]({ text, path: bases[mutation.base]?.path ?? '', depth: to }, rulebook),
          );
        }),
        { seed: SEED, numRuns: Math.ceil((RUNS * SHARES[kind]) / 100) },
      );
      gc();
      expect(process.memoryUsage().heapUsed - before).toBeLessThan(HEAP);
    },
    TIMEOUT,
  );
});

describe(`command lines, seed ${SEED}`, () => {
  test.each(Object.keys(COMMANDS))(
    '%s',
    async (name) => {
      const { arbitrary, run } = COMMANDS[name] as (typeof COMMANDS)[string];
      await fc.assert(
        fc.asyncProperty(arbitrary, (given) =>
          harmless(
            () => name,
            () => run(given),
          ),
        ),
        { seed: SEED, numRuns: Math.ceil((RUNS * OF_COMMANDS) / 100 / Object.keys(COMMANDS).length) },
      );
    },
    TIMEOUT,
  );
});

test('no case took longer than a second', () => {
  expect([...times, ...slowRuns].filter(({ ms }) => ms > SLOWEST)).toEqual([]);
});
