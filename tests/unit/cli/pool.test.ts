import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { share, usualThreads } from '../../../src/cli/pool/pool.ts';

let folder: string;
let script: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'diewright-test-'));
  script = join(folder, 'worker.cjs');
  // Doubles numbers; some of them end the thread in one of the ways in which a thread can end.
  writeFileSync(
    script,
    `const { parentPort, workerData } = require('node:worker_threads');
    parentPort.on('message', (item) => {
      if (item === 3) process.exit(7);
      if (item === 5) throw new Error('out of its mind');
      if (item === 6) parentPort.postMessage({ fault: 'cannot double 6' });
      else parentPort.postMessage({ result: workerData.setting * item });
    });`,
  );
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const numbers = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

async function doubled(items: readonly number[], threads: number, stopAfter = Number.POSITIVE_INFINITY) {
  const results: (number | string)[] = [];
  await share<number, number>({
    items,
    threads,
    script,
    job: 'check',
    setting: 2,
    here: async () => async (item) => {
      if ([3, 5, 6].includes(item)) throw new Error('not here either');
      return 2 * item;
    },
    stopped: () => Object.keys(results).length >= stopAfter,
    take: (result, index) => {
      results[index] = result;
    },
    lost: (item, index, why) => {
      results[index] = `${item}: ${why.split('\n')[0]}`;
    },
  });
  return results;
}

describe('work shared among threads', () => {
  test.each([1, 2, 4])('with %i threads, one that ends loses its item and no other', async (threads) => {
    const results = await doubled(numbers(12), threads);
    expect(results).toEqual([0, 2, 4, '3: a thread ended with 7', 8, '5: Error: out of its mind', '6: cannot double 6', 14, 16, 18, 20, 22]);
  });

  test('without threads an item that fails stops no other', async () => {
    const results = await doubled(numbers(8), 0);
    expect(results.map((result) => typeof result === 'number')).toEqual([true, true, true, false, true, false, false, true]);
  });

  test('a thread that ends fails the work where nobody takes what is lost', async () => {
    const common = { items: numbers(6), threads: 2, script, job: 'check', setting: 2, here: async () => async (item: number) => item } as const;
    await expect(share<number, number>({ ...common, take: () => undefined })).rejects.toThrow(/ended with 7|out of its mind/);
  });

  test('what hears a result may fail, and then the work does', async () => {
    const take = () => {
      throw new Error('no room');
    };
    const work = share<number, number>({ items: [1, 2], threads: 1, script, job: 'check', setting: 2, here: async () => async (item) => item, take });
    await expect(work).rejects.toThrow('no room');
  });

  test('is stopped between two items', async () => {
    expect((await doubled([1, 2, 4, 7, 8, 9], 1, 2)).length).toBeLessThanOrEqual(3);
    expect(await doubled([1, 2, 4, 7, 8, 9], 0, 2)).toEqual([2, 4]);
  });

  test('few files are worth no thread', () => {
    expect([usualThreads(1), usualThreads(20)]).toEqual([0, 0]);
    expect(usualThreads(10_000)).toBeGreaterThan(0);
  });
});
