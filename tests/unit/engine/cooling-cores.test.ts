import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Ledger } from '../../../src/engine/ledger.ts';
import { coolingStep } from '../../../src/engine/steps/cooling/index.ts';
import { workThrough } from '../../../src/engine/work-through.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import { builtInPlant, type PlantData, readPart } from '../../../src/spec/index.ts';
import { figure, findingsOf, rulebook } from './work-to.ts';

/** The plan of an example, with a change to its text. */
function planOf(name: string, change: (text: string) => string = (text) => text): Ledger {
  const file = `${name}.part.yaml`;
  const { part, diagnostics } = readPart({ name: file, text: change(readFileSync(join(import.meta.dirname, '../../../examples', name, file), 'utf8')) });
  if (part === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const alloy = findAlloy(rulebook, part.alloy.value);
  if (!('found' in alloy)) throw new Error(`no alloy ${part.alloy.value}`);
  return workThrough({ part, plant: builtInPlant(rulebook.plants['typical'] as PlantData), alloy: alloy.found, rulebook });
}
const gearbox = planOf('gearbox-housing');
const fitting = planOf('hose-fitting');

test('every core has its cooling, by how hot a solid one gets', () => {
  const allowed = figure(gearbox, 'cooling.core-excess-greatest');
  const bubbler = figure(gearbox, 'cooling.bubbler-core');
  for (const { id } of gearbox.part.holes) {
    const [steel, tungsten, diameter] = [`cooling.core-excess[${id}]`, `cooling.core-excess-tungsten[${id}]`, `hole.diameter[${id}]`].map((key) =>
      figure(gearbox, key),
    );
    expect(tungsten).toBeLessThan(steel as number);
    const core = gearbox.text('cooling.core', id);
    if (core === 'solid core') expect(steel).toBeLessThanOrEqual(allowed);
    if (core === 'bubbler') expect(diameter).toBeGreaterThanOrEqual(bubbler);
  }
  expect(gearbox.text('cooling.core', 'shaft bore')).toBe('bubbler');
  expect(gearbox.text('cooling.core', 'breather')).toBe('solid core');
  expect(JSON.stringify(coolingStep.show(gearbox))).toContain('Tip above the die, steel');
});

test('a hole that is drilled has no core to cool', () => {
  const drilled = planOf('filter-manifold');
  expect(drilled.text('hole.making', 'orifice')).toBe('drilled');
  expect(drilled.texts.has('cooling.core[orifice]')).toBe(false);
  expect(findingsOf(drilled).has('cooling/core')).toBe(false);
});

test('a thin long core that even tungsten does not save is a warning with the depth to core', () => {
  // Within the depth that its diameter may have, but with thick walls round it.
  const long = planOf(
    'brake-valve-body',
    (text) =>
      `${text.replace('diameter: 5 mm, depth: 16 mm', 'diameter: 9.5 mm, depth: 36 mm').replace(', count: 6, thread: M6', '')}pinned: { machine.cavities: 1, machine.model: cold-1600, machine.plunger: 50 mm }\n`,
  );
  expect(long.text('hole.making', 'cover screws')).not.toBe('drilled');
  expect(long.text('cooling.core', 'cover screws')).toBe('tungsten alloy core and spray');
  const finding = findingsOf(long).get('cooling/core');
  expect([finding?.severity, finding?.item]).toEqual(['warning', 'cover screws']);
  expect(finding?.fix).toMatch(/Core it \d\d mm deep/);
  expect(findingsOf(gearbox).has('cooling/core')).toBe(false);
});

test('slides with a share of the face worth it have lines of their own, and the halves so much less', () => {
  const own = ['S1', 'S2'].map((slide) => figure(fitting, `cooling.share[${slide}]`));
  const sum = own.reduce((a, b) => a + b, 0);
  expect(Math.min(...own)).toBeGreaterThanOrEqual(figure(fitting, 'cooling.slide-share-least'));
  expect(figure(fitting, 'cooling.share[ejector half]')).toBeCloseTo(0.6 * (100 - sum), 9);
  expect(figure(fitting, 'cooling.share[cover half]')).toBeCloseTo(0.4 * (100 - sum), 9);
  const laid = ['ejector half', 'cover half', 'S1', 'S2'].map((part) => figure(fitting, `cooling.length-laid[${part}]`));
  expect(figure(fitting, 'cooling.length')).toBeCloseTo(
    laid.reduce((a, b) => a + b, 0),
    9,
  );
  // Small slides of a large die are cooled through their guides.
  expect(gearbox.values.has('cooling.slide-share[S1]')).toBe(true);
  expect(gearbox.values.has('cooling.share[S1]')).toBe(false);
});
