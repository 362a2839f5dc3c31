import type { Rulebook } from '../../src/index.ts';
import { planPart } from '../../src/index.ts';
import { cpuTime } from '../cpu-time.ts';
import { BASES } from './bases.ts';

/** No case takes more ms; measured without the first ones, while the code is still being compiled. */
export const SLOWEST = 1000;

/**
 * ms that the plan of the first example takes, warm, on two cores with nothing else to do: where the bound was set. Reckoned, not timed:
 * it takes some nine tenths of the median of the examples, which was 41 ms then, and a tenth more as the tests load it.
 */
const USUAL = 45;
const EXAMPLE = { name: 'a.part.yaml', text: (BASES.part[0] as { text: string }).text };
let rulebook: Rulebook | undefined;

/** Before anything is timed. */
export function timeWith(given: Rulebook): void {
  rulebook = given;
}

/**
 * What is slow is slow each time: the least of three of what seems too slow, so that no collection of garbage counts. Shared machines
 * are at times several times slower than at others, so it is taken against a plan made right then.
 */
export async function leastTime(first: number, again: () => Promise<number>): Promise<number> {
  let least = first;
  for (let runs = 1; runs < 3 && least > SLOWEST; runs += 1) least = Math.min(least, await again());
  return least > SLOWEST ? least / slowness() : least;
}

/** How many times as long as usual a plan takes now; 1 at least. */
function slowness(): number {
  if (rulebook === undefined) return 1;
  const times: number[] = [];
  for (let run = 0; run < 5; run += 1) {
    const start = cpuTime();
    planPart({ part: EXAMPLE, rulebook, version: '0' });
    times.push(cpuTime() - start);
  }
  return Math.max(1, Math.min(...times) / USUAL);
}
