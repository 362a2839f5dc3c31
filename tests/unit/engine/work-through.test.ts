import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Case, Ledger } from '../../../src/engine/ledger.ts';
import { fileGiven } from '../../../src/engine/steps/given.ts';
import { WORK_ORDER } from '../../../src/engine/steps/index.ts';
import { workThrough } from '../../../src/engine/work-through.ts';
import { loadRulebook, type Plan, planPart, type Rulebook } from '../../../src/index.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import { builtInPlant, type PlantData, readPart } from '../../../src/spec/index.ts';
import { EXAMPLES } from '../../golden/examples.ts';
import { MILLIMETRES, partOf, sizes, yamlOf } from '../../properties/parts.ts';

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

function plan(example: string, edit: (text: string) => string = (text) => text): Plan {
  const name = `${example}.part.yaml`;
  const text = edit(readFileSync(join(import.meta.dirname, '../../../examples', example, name), 'utf8'));
  const { plan: made, diagnostics } = planPart({ part: { name, text }, rulebook, version: '0' });
  if (made === undefined) throw new Error(diagnostics.map((one) => one.message).join('\n'));
  return made;
}
const pinned = (example: string, pins: string): Plan => plan(example, (text) => `${text}pinned: { ${pins} }\n`);
function value(of: Plan, id: string): number {
  const found = of.values.get(id);
  if (found === undefined) throw new Error(`${id} is not filed`);
  return found.value;
}
const codes = (of: Plan): string[] => of.findings.map((finding) => finding.code);

describe('working through again', () => {
  const madeUp = fc
    .sample(sizes, { numRuns: 200, seed: 20250613 })
    .map((part, i): [string, string] => [`made-up part ${i}`, yamlOf(partOf(part, MILLIMETRES))]);
  const examples = EXAMPLES.map(({ name, file, folder }): [string, string] => [name, readFileSync(join(folder, file), 'utf8')]);

  test('from the gates on comes to what working through everything with the same first plan comes to', () => {
    let again = 0;
    for (const [name, text] of [...examples, ...madeUp]) {
      const ledger = workThrough(caseOf(name, text));
      const whole = new Ledger(ledger.given);
      whole.attempt('part', 'Part data', () => fileGiven(whole));
      for (const step of WORK_ORDER) whole.attempt(step.id, step.title, () => step.work(whole));
      expect(recordOf(ledger), name).toEqual(recordOf(whole));
      if (Object.keys(ledger.given.first ?? {}).length === 0) continue;
      again += 1;
      // With the lowered velocity the search may take a machine that drives less again; it is lowered until one drives it.
      expect(ledger.texts.get('pq2.remedy'), name).not.toBe('gate area');
    }
    expect(again).toBeGreaterThan(5);
  }, 300_000);

  function caseOf(name: string, text: string): Case {
    const { part } = readPart({ name, text });
    if (part === undefined) throw new Error(`${name} cannot be read`);
    const alloy = findAlloy(rulebook, part.alloy.value);
    if (!('found' in alloy)) throw new Error(`no alloy ${part.alloy.value}`);
    return { part, plant: builtInPlant(rulebook.plants['typical'] as PlantData), alloy: alloy.found, rulebook };
  }

  /** All that is recorded, in its order; of a value what a plan prints. */
  function recordOf({ values, texts, decisions, findings, unchecked, usedPins }: Ledger): unknown {
    const printed = [...values.values()].map(({ id, value, unit, kind, status, note, parents }) => [
      id,
      value,
      unit,
      kind,
      status,
      note,
      parents.map((one) => one.id),
    ]);
    const found = findings.map(({ code, message, fix, values: ids }) => [code, message, fix, ids]);
    return { printed, texts: [...texts], decisions: [...decisions], found, unchecked, usedPins: [...usedPins] };
  }
});

describe('the runner', () => {
  test.each(['gearbox-housing', 'hose-fitting', 'suspension-node'])('%s: the shot counts what the layout of the plan holds', (example) => {
    const made = plan(example);
    expect(Math.abs(value(made, 'runner.network-ratio') - 1)).toBeLessThan(0.1);
    expect(value(made, 'clamp.runner-share')).toBeCloseTo((100 * value(made, 'runner.layout-area')) / value(made, 'part.projected-area'), 9);
    // What the usual share would have given stands beside it.
    expect(value(made, 'runner.share-volume')).toBeGreaterThan(0);
  });

  test('a pinned runner stays, and is held against the layout', () => {
    const made = pinned('gearbox-housing', 'runner.volume: 30 cm3');
    expect(value(made, 'runner.volume')).toBe(30);
    expect(made.values.has('runner.layout-volume')).toBe(false);
    expect(codes(made)).toContain('runner/network-volume');
  });

  test('six cavities of a small lever want far more runner than the usual share', () => {
    const made = plan('door-latch-lever');
    expect(value(made, 'runner.volume')).toBeGreaterThan(4 * value(made, 'runner.share-volume'));
    expect(codes(made)).not.toContain('runner/network-volume');
  });
});

describe('a machine that cannot drive the usual gate velocity', () => {
  test.each([
    ['door-latch-lever', 'machine.model: hot-1250, machine.cavities: 6'],
    ['instrument-cover', ''],
  ])('%s: the gates are made larger, and the plan lies within reach', (example, pins) => {
    const made = pinned(example, pins);
    const velocity = value(made, 'gate.velocity');
    expect(velocity).toBeCloseTo(0.97 * value(made, 'gate.machine-velocity'), 9);
    expect(velocity).toBeLessThan(value(made, 'gate.velocity-by-wall'));
    expect(velocity).toBeGreaterThan(value(made, 'gate.velocity-least'));
    expect(made.texts.get('pq2.place')).toBe('inside');
    expect(value(made, 'pq2.machine-use')).toBeLessThan(100);
    expect(codes(made)).toContain('gate/machine-velocity');
  });

  test('what the engineer pins is not changed, and the finding says what would do', () => {
    const free = plan('door-latch-lever');
    const kept = pinned('door-latch-lever', `gate.velocity: ${value(free, 'gate.velocity-by-wall')} m/s, machine.model: hot-1250, machine.plunger: 65 mm`);
    expect(value(kept, 'gate.velocity')).toBeCloseTo(value(free, 'gate.velocity-by-wall'), 9);
    expect(kept.values.has('gate.machine-velocity')).toBe(false);
    expect(codes(kept)).toContain('pq2/gate-area');
  });

  test('of plungers that cost the same one that drives the gates goes before one with more in reserve', () => {
    const text = `diewright: part/1
part: { name: Lever }
alloy: Zamak 5
geometry:
  volume: 6.4 cm3
  envelope: [62 mm, 18 mm, 9 mm]
  projected_area: { z: 7.5 cm2 }
  wall: { least: 1.2 mm, nominal: 1.8 mm, greatest: 4 mm }
quality: { finish: consumer }
production: { per_year: 400000, life: 2000000, hours_per_year: 4000 }
`;
    const { plan: made } = planPart({ part: { name: 'lever.part.yaml', text }, rulebook, version: '0' });
    expect(made === undefined ? [] : codes(made)).not.toContain('pq2/plunger');
    expect(value(made as Plan, 'pq2.machine-use')).toBeLessThanOrEqual(100.0001);
  });

  test('a machine that drives it leaves the velocity of the wall', () => {
    const made = plan('gearbox-housing');
    expect(made.values.has('gate.velocity-by-wall')).toBe(false);
    expect(made.texts.get('pq2.place')).toBe('inside');
  });
});
