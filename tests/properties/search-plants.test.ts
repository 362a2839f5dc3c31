import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Case, Ledger } from '../../src/engine/ledger.ts';
import { withPlantLimits } from '../../src/engine/plant-limits.ts';
import { fileGiven } from '../../src/engine/steps/given.ts';
import { WORK_ORDER } from '../../src/engine/steps/index.ts';
import { machineStep, searchMachines } from '../../src/engine/steps/machine/index.ts';
import { loadRulebook, type Rulebook } from '../../src/index.ts';
import { findAlloy } from '../../src/rulebook/alloys.ts';
import { type PlantSpec, readPart, readPlant } from '../../src/spec/index.ts';
import { plantWith } from '../unit/engine/plant-with.ts';
import { MILLIMETRES, partOf, sizes, yamlOf } from './parts.ts';

const folder = join(import.meta.dirname, '..', '..', 'examples', 'plants');
/** Machines that differ in all that they may have beside them, presses and furnaces whose cheapest is not the smallest. */
const MIXED = plantWith(
  'furnaces:',
  '  - { id: a, kind: melting and holding, families: [aluminium, zinc, zinc-aluminium, magnesium, copper], capacity: 300 kg, melt_rate: 60 kg/h, temperature: [380 degC, 1100 degC], energy: 4 kWh/kg }',
  '  - { id: b, kind: melting, families: [aluminium, zinc, zinc-aluminium, magnesium, copper], capacity: 3000 kg, melt_rate: 900 kg/h, temperature: [380 degC, 1100 degC], energy: 0.3 kWh/kg }',
  'cooling:',
  '  - { id: c, medium: water, temperature: [15 degC, 60 degC], flow: 60 l/min, pressure: 3 bar }',
  '  - { id: d, medium: oil, temperature: [130 degC, 290 degC], flow: 90 l/min, pressure: 4 bar }',
  'trim_presses:',
  '  - { id: e, force: 60 kN, stroke: 400 mm, platen: [900 mm, 900 mm], hourly_rate: 90 }',
  '  - { id: f, force: 150 kN, stroke: 400 mm, platen: [900 mm, 900 mm], hourly_rate: 4 }',
  '  - { id: g, force: 900 kN, stroke: 600 mm, platen: [2000 mm, 2000 mm], hourly_rate: 200 }',
  'limits:',
  '  clamp.use: { greatest: 80 %, severity: error }',
  '  cycle.time: { greatest: 35 s }',
).replace(
  /^ {4}dry_cycle: (\d)/gm,
  (line, digit: string) =>
    `    extraction: ${Number(digit) % 2 === 0 ? 'by hand' : 'robot'}\n    vacuum: ${Number(digit) > 3}\n    core_circuits: ${Number(digit) % 3}\n${line}`,
);

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

function plantOf(text: string): PlantSpec {
  const { plant, diagnostics } = readPlant({ name: 'plant.yaml', text });
  if (plant === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return plant;
}

/** What the search comes to: the candidate, or that nothing fits. */
function found(text: string, plant: PlantSpec, all: boolean): { fits: boolean; name?: string; cost?: number | undefined } {
  const { part } = readPart({ name: 'made-up.part.yaml', text });
  if (part === undefined) throw new Error('the part cannot be read');
  const alloy = findAlloy(rulebook, part.alloy.value);
  if (!('found' in alloy)) throw new Error(`no alloy ${part.alloy.value}`);
  const given: Case = { part, plant, alloy: alloy.found, rulebook: withPlantLimits(rulebook, plant), first: {} };
  const ledger = new Ledger(given);
  fileGiven(ledger);
  for (const step of WORK_ORDER.slice(0, WORK_ORDER.indexOf(machineStep))) ledger.attempt(step.id, step.title, () => step.work(ledger));
  const search = searchMachines(ledger, all);
  if (search?.fits !== true) return { fits: false };
  const { cavities, machine, plunger } = search.chosen.candidate;
  return { fits: true, name: `${cavities} on ${machine.id} with ${plunger.value}`, cost: search.chosen.cost };
}

const PLANTS: readonly (readonly [string, string])[] = [
  ['mixed', MIXED],
  ...readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')] as const),
];

describe.each(PLANTS)('the search on the plant %s', (_, text) => {
  test('comes to what working every candidate out comes to, on 15 made-up parts', () => {
    const plant = plantOf(text);
    const parts = fc.sample(sizes, { numRuns: 15, seed: 20261126 });
    let fitted = 0;
    for (const [i, size] of parts.entries()) {
      const yaml = yamlOf(partOf(size, MILLIMETRES));
      const perYear = [5000, 40000, 300000][i % 3] as number;
      const part = yaml.includes('production:') ? yaml : `${yaml}production: { per_year: ${perYear}, life: ${5 * perYear} }\n`;
      const whole = found(part, plant, true);
      expect(found(part, plant, false), `part ${i}`).toEqual(whole);
      if (whole.fits) fitted += 1;
    }
    expect(fitted).toBeGreaterThan(2);
  }, 300_000);
});
