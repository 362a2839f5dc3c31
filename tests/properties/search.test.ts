import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Case, Ledger } from '../../src/engine/ledger.ts';
import { fileGiven } from '../../src/engine/steps/given.ts';
import { WORK_ORDER } from '../../src/engine/steps/index.ts';
import type { Tried } from '../../src/engine/steps/machine/evaluate.ts';
import type { Least } from '../../src/engine/steps/machine/floor.ts';
import { machineStep, searchMachines } from '../../src/engine/steps/machine/index.ts';
import { rankedOf } from '../../src/engine/steps/machine/rank.ts';
import type { Search } from '../../src/engine/steps/machine/search.ts';
import { Trial } from '../../src/engine/trial.ts';
import { workThrough } from '../../src/engine/work-through.ts';
import { loadRulebook, type Rulebook } from '../../src/index.ts';
import { findAlloy } from '../../src/rulebook/alloys.ts';
import { builtInPlant, type PlantData, type PlantSpec, readPart } from '../../src/spec/index.ts';
import { EXAMPLES } from '../golden/examples.ts';
import { MILLIMETRES, partOf, sizes, yamlOf } from './parts.ts';

let rulebook: Rulebook;
let typical: PlantSpec;
beforeAll(async () => {
  rulebook = await loadRulebook();
  typical = builtInPlant(rulebook.plants['typical'] as PlantData);
});

function caseOf(text: string, plant: PlantSpec): Case {
  const { part } = readPart({ name: 'made-up.part.yaml', text });
  if (part === undefined) throw new Error('the part cannot be read');
  const alloy = findAlloy(rulebook, part.alloy.value);
  if (!('found' in alloy)) throw new Error(`no alloy ${part.alloy.value}`);
  return { part, plant, alloy: alloy.found, rulebook, first: {} };
}

/** A ledger on which all is worked out that the search needs. */
function beforeSearch(given: Case): Ledger {
  const ledger = new Ledger(given);
  fileGiven(ledger);
  for (const step of WORK_ORDER.slice(0, WORK_ORDER.indexOf(machineStep))) ledger.attempt(step.id, step.title, () => step.work(ledger));
  return ledger;
}

const find = (given: Case, all: boolean): Search | undefined => searchMachines(beforeSearch(given), all);
const nameOf = ({ candidate: { cavities, machine, plunger } }: Tried): string => `${cavities} on ${machine.id} with ${plunger.value}`;

/** Some machines of the typical plant, which still hold both chambers. */
function someOf(picks: readonly number[]): PlantSpec {
  const kinds = (['hot', 'cold'] as const).map((chamber) => typical.machines.filter((machine) => machine.chamber === chamber && machine.shot === 'horizontal'));
  const machines = kinds.flatMap((list) => [...new Set(picks.map((pick) => list[pick % list.length]))]).filter((machine) => machine !== undefined);
  return { ...typical, machines };
}

const production = (text: string, perYear: number): string =>
  text.includes('production:') ? text : `${text}production: { per_year: ${perYear}, life: ${5 * perYear} }\n`;

describe('the search', () => {
  test('comes to what working every candidate out to the end comes to, on 200 made-up parts', () => {
    const parts = fc.sample(sizes, { numRuns: 200, seed: 20261125 });
    const plants = fc.sample(fc.array(fc.nat(15), { minLength: 3, maxLength: 4 }), { numRuns: 200, seed: 7 });
    let [fitted, severalCounts] = [0, 0];
    for (const [i, size] of parts.entries()) {
      const given = caseOf(production(yamlOf(partOf(size, MILLIMETRES)), [2000, 20000, 400000, 6000000][i % 4] as number), someOf(plants[i] as number[]));
      const [quick, whole] = [find(given, false), find(given, true)];
      if (whole === undefined) {
        expect(quick, `part ${i}`).toBeUndefined();
        continue;
      }
      expect(quick?.fits, `part ${i}`).toBe(whole.fits);
      if (quick === undefined || !whole.fits) continue;
      fitted += 1;
      expect(nameOf(quick.chosen), `part ${i}`).toBe(nameOf(whole.chosen));
      expect(quick.chosen.cost, `part ${i}`).toBe(whole.chosen.cost);
      // Brute force of our own over all that the search has worked out.
      const ranks = whole.tried.filter(({ reached }) => reached === 'done').map((one) => whole.ranking.of(rankedOf(one)));
      expect(whole.ranking.of(rankedOf(quick.cheapest)), `part ${i}`).toBe(Math.min(...ranks));
      if (new Set(whole.tried.filter(({ reached }) => reached === 'done').map(({ candidate }) => candidate.cavities)).size > 1) severalCounts += 1;
      // What was left early could not have been better than it was held for.
      for (const left of quick.tried.filter(({ floor }) => floor !== undefined)) {
        const { cavities, machine, plunger } = left.candidate;
        const same = whole.tried.find(
          ({ candidate }) => candidate.cavities === cavities && candidate.machine === machine && candidate.plunger.value === plunger.value,
        );
        if (same?.cost !== undefined) expect(same.cost, `part ${i}, ${nameOf(left)}`).toBeGreaterThanOrEqual((left.floor as Least).cost * (1 - 1e-9));
        const hours = same?.trial?.maybe('cycle.hours')?.value;
        if (hours !== undefined) expect(hours, `hours of part ${i}, ${nameOf(left)}`).toBeGreaterThanOrEqual((left.floor as Least).hours * (1 - 1e-9));
      }
      for (const inferred of quick.tried.filter((one) => one.inferred === true)) {
        const { cavities, machine } = inferred.candidate;
        const same = whole.tried.filter(({ candidate }) => candidate.cavities === cavities && candidate.machine === machine);
        expect(
          same.every(({ reached }) => reached !== 'done'),
          `part ${i}, ${nameOf(inferred)}`,
        ).toBe(true);
      }
    }
    expect(fitted).toBeGreaterThan(60);
    expect(severalCounts).toBeGreaterThan(30);
  }, 300_000);

  test('a pinned cycle, shorter or longer than its elements, is what the floors are made of', () => {
    const parts = fc.sample(sizes, { numRuns: 30, seed: 815 });
    let left = 0;
    for (const [i, size] of parts.entries()) {
      const text = `${production(yamlOf(partOf(size, MILLIMETRES)), 400000)}\npinned: { cycle.time: ${[8, 25, 90][i % 3]} s }\n`;
      const given = caseOf(text, someOf([2, 4, 6, 9]));
      const [quick, whole] = [find(given, false), find(given, true)];
      expect(quick?.fits, `part ${i}`).toBe(whole?.fits);
      if (quick === undefined || whole?.fits !== true) continue;
      expect(nameOf(quick.chosen), `part ${i}`).toBe(nameOf(whole.chosen));
      left += quick.tried.filter(({ floor }) => floor !== undefined).length;
    }
    expect(left).toBeGreaterThan(30);
  }, 300_000);

  test('with a further machine the best is never dearer', () => {
    const parts = fc.sample(sizes, { numRuns: 25, seed: 4711 });
    let compared = 0;
    for (const [i, size] of parts.entries()) {
      const text = production(yamlOf(partOf(size, MILLIMETRES)), 30000);
      const [few, more] = [someOf([2, 6, 9]), someOf([2, 6, 9, 4 + (i % 8)])].map((plant) => find(caseOf(text, plant), false));
      if (few?.fits !== true) continue;
      expect(more?.fits, `part ${i}`).toBe(true);
      const rank = (found: Search): number => found.ranking.of(rankedOf(found.cheapest));
      expect(rank(more as Search), `part ${i}`).toBeLessThanOrEqual(rank(few) * (1 + 1e-12));
      compared += 1;
    }
    expect(compared).toBeGreaterThan(8);
  }, 120_000);
});

describe.each(EXAMPLES)('$name', ({ folder, file }) => {
  test('a trial without derivations comes to the numbers of the plan', () => {
    const planned = workThrough({ ...caseOf(readFileSync(join(folder, file), 'utf8'), typical) });
    // A search that works everything out lets go of no trial.
    const found = searchMachines(beforeSearch(planned.given), true);
    if (found?.fits !== true) return;
    const { trial } = found.chosen;
    if (!(trial instanceof Trial)) throw new Error('the trial of the chosen one is gone');
    let same = 0;
    for (const [id, value] of trial.values) {
      const plan = planned.values.get(id);
      if (plan === undefined || id.startsWith('machine.count-')) continue;
      expect(value.value, id).toBe(plan.value);
      same += 1;
    }
    expect(same).toBeGreaterThan(700);
    expect(found.chosen.cost).toBe(planned.value('cost.per-part').value);
    expect(nameOf(found.chosen)).toBe(
      `${planned.value('machine.cavities').value} on ${planned.text('machine.model')} with ${planned.value('machine.plunger').value}`,
    );
  });
});
