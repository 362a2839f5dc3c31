import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { planDie } from '../../../src/die.ts';
import { isUnchanged } from '../../../src/engine/replan/set.ts';
import type { Rulebook } from '../../../src/index.ts';
import { replanPart } from '../../../src/replan.ts';
import { makeFolder } from '../../cli/folder.ts';
import { yamlOf } from '../parts.ts';
import { fileOf, METRIC, made } from './made.ts';
import { at, expectNear, forEvery, planOf, ready } from './plans.ts';

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await ready();
});
const folder = makeFolder();
afterAll(() => folder.remove());

test('planning again with the alloy that the part has changes nothing, in every family', () => {
  forEvery(made, (part) => {
    const { change } = replanPart({
      part: { name: 'a.part.yaml', text: yamlOf(fileOf(part, METRIC)) },
      before: { rulebook },
      after: { rulebook, set: [`alloy=${part.sizes.alloy}`] },
      compare: { leastChange: 0, everyValue: true },
      version: '0',
    });
    expect(change && isUnchanged(change)).toBe(true);
    expect(change?.before).toEqual(change?.after);
  });
});

describe('a die of one part', () => {
  test('with n castings is the part with n cavities: metal, area, gates and overflows of a shot', () => {
    let met = 0;
    forEvery(
      fc.tuple(made, fc.constantFrom(1, 2, 4)),
      ([part, count]) => {
        const text = yamlOf({ ...fileOf(part, METRIC), holes: [], undercuts: [] });
        const pins = { 'machine.model': 'cold-8000', 'machine.kind': 'cold-chamber', 'fill.time': '30 ms', 'gate.velocity': '38 m/s' };
        const set = Object.entries(pins).map(([id, value]) => `pinned.${id}=${value}`);
        const alone = planOf(text, [...set, `pinned.machine.cavities=${count}`]);
        const die = { diewright: 'die/1', die: { name: 'A die' }, parts: [{ file: 'a.part.yaml', count }], pinned: pins };
        const { plan, diagnostics } = planDie({
          die: { name: 'a.die.yaml', text: yamlOf(die) },
          partText: () => ({ name: 'a.part.yaml', text }),
          rulebook,
          version: '0',
        });
        if (plan === undefined) throw new Error(diagnostics.map((d) => d.message).join('\n'));
        if (!alone.values.has('shot.flow')) return;
        met += 1;
        expectNear(at(plan, 'part.volume'), count * at(alone, 'part.volume'), 1e-9, 'metal in the castings');
        expectNear(at(plan, 'part.projected-area'), count * at(alone, 'part.projected-area'), 1e-9, 'area of the castings');
        expectNear(at(plan, 'gate.area'), count * at(alone, 'gate.area'), 1e-9, 'gates of a shot');
        expectNear(at(plan, 'overflow.volume'), count * at(alone, 'overflow.volume'), 1e-9, 'overflows of a shot');
      },
      12,
    );
    expect(met).toBeGreaterThan(6);
  });
});

describe('the same bytes', () => {
  test('whatever the zone, the language, the count of threads and the order of the files', () => {
    const names = fc.sample(made, { seed: 5, numRuns: 12 }).map((part, i) => {
      const name = `p${i}.part.yaml`;
      folder.write(name, yamlOf(fileOf(part, METRIC)));
      return name;
    });
    const check = (files: readonly string[], env: Record<string, string>, ...more: string[]): string =>
      folder.run(['check', ...files, '--fail-on', 'never', '--format', 'json', ...more], { env }).out;
    const here = check(names, { TZ: 'UTC', LC_ALL: 'C' }, '--threads', '0');
    for (const name of names) expect(here).toContain(`"${name}"`);
    expect(check([...names].reverse(), { TZ: 'Asia/Kathmandu', LC_ALL: 'de_DE.UTF-8', LANG: 'ar_EG.UTF-8' }, '--threads', '3')).toBe(here);
    expect(check(['p*.part.yaml'], { TZ: 'America/St_Johns', LC_ALL: 'tr_TR.UTF-8' })).toBe(here);
  });
});
