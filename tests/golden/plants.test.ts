import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadRulebook, planPart, type Rulebook, readPlantText, renderPlans } from '../../src/index.ts';
import { BARE_PLANT } from '../unit/engine/plant-with.ts';
import { EXAMPLES, version } from './examples.ts';

const folder = join(import.meta.dirname, '..', '..', 'examples', 'plants');
const PLANTS = readdirSync(folder).map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

const read = (example: (typeof EXAMPLES)[number]) => ({ name: example.file, text: readFileSync(join(example.folder, example.file), 'utf8') });

describe.each(PLANTS)('the invented plant $name', (plant) => {
  it('has no fault and says that it is invented', () => {
    expect(readPlantText(plant)).toEqual([]);
    expect(plant.text).toMatch(/^ {2}invented: true$/m);
    expect(plant.text).toMatch(/^# An invented/);
  });

  it.each(EXAMPLES)('plans the example $name, with what is missing as findings', async (example) => {
    const { plan, diagnostics } = planPart({ part: read(example), plant, rulebook, version });
    expect(plan).toBeDefined();
    expect(diagnostics.filter(({ code }) => /^(spec|file|cli)\//.test(code))).toEqual([]);
    if (plan === undefined) return;
    expect((await renderPlans('markdown', [plan])).length).toBeGreaterThan(5000);
    // A part is either given furnace, unit and press of the plant, or told which of them the plant lacks.
    const codes = new Set([...diagnostics.map(({ code }) => code), ...plan.unchecked.map(({ id }) => id)]);
    const met = (decision: string, ...findings: readonly string[]): boolean => plan.decisions.has(decision) || findings.some((code) => codes.has(code));
    if (!plan.decisions.has('machine.model')) return;
    expect(met('furnace.melting', 'furnace/melting')).toBe(true);
    expect(plan.texts.get('machine.chamber') === 'hot' || met('furnace.holding', 'furnace/holding')).toBe(true);
    expect(met('cooling.unit', 'cooling/unit')).toBe(true);
    expect(plan.texts.get('finish.press-drive') === 'no press' || plan.decisions.has('finish.press-model')).toBe(true);
  });
});

describe('a plant of machines and prices alone', () => {
  it.each(EXAMPLES)('plans the example $name without a word of equipment', (example) => {
    const { plan } = planPart({ part: read(example), plant: { name: 'plant.yaml', text: BARE_PLANT }, rulebook, version });
    const ids = [...(plan?.values.keys() ?? []), ...(plan?.decisions.keys() ?? [])];
    expect(ids.length).toBeGreaterThan(300);
    expect(
      ids.filter((id) => /^furnace\.|^cooling\.unit|^finish\.press-(model|width|height|stroke)|^lubricant\.head-flow|^machine\.core-circuits/.test(id)),
    ).toEqual([]);
    expect(plan?.unchecked.filter(({ id }) => /^furnace\/|^cooling\/unit|^finish\/press|head-flow|core-circuits|vacuum-unit/.test(id))).toEqual([]);
  });
});
