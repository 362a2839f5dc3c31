import { join } from 'node:path';
import { compileFolder } from '../../../.build/rulepack.ts';
import { judgeAll } from '../../../src/engine/judge.ts';
import { Ledger } from '../../../src/engine/ledger.ts';
import { fileGiven } from '../../../src/engine/steps/given.ts';
import { WORK_ORDER } from '../../../src/engine/steps/index.ts';
import type { Diagnostic } from '../../../src/kernel/diagnostic.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import { readPart, readPlant } from '../../../src/spec/index.ts';
import { BARE_PLANT } from './plant-with.ts';

const rules = join(import.meta.dirname, '..', '..', '..', 'rules');
export const { rulebook } = compileFolder(rules);

/** Machines and prices of the built-in plant, without the furnaces, units and presses that tests of those give themselves. */
const BUILT_IN = BARE_PLANT.replace('invented: false', 'invented: true');

/** A part as a test needs it; what is left out is not in the file. */
export interface SmallPart {
  readonly alloy: string;
  readonly volume: number;
  readonly wall: number;
  readonly least?: number;
  readonly greatest?: number;
  readonly area: number;
  readonly envelope?: readonly [number, number, number];
  readonly partingLine?: number;
  readonly quality?: string;
  readonly production?: string;
  readonly pinned?: Readonly<Record<string, string>>;
}

export function partText(part: SmallPart): string {
  const [x, y, z] = part.envelope ?? [120, 80, 30];
  const pins = Object.entries(part.pinned ?? {}).map(([id, text]) => `${id}: ${text}`);
  return [
    'diewright: part/1',
    'part: { name: Test piece }',
    `alloy: ${part.alloy}`,
    'geometry:',
    `  volume: ${part.volume} cm3`,
    `  envelope: [${x} mm, ${y} mm, ${z} mm]`,
    `  projected_area: { z: ${part.area} cm2 }`,
    `  wall: { nominal: ${part.wall} mm${part.least === undefined ? '' : `, least: ${part.least} mm`}${part.greatest === undefined ? '' : `, greatest: ${part.greatest} mm`} }`,
    '  die_opening: z',
    ...(part.partingLine === undefined ? [] : [`  parting_line: ${part.partingLine} mm`]),
    ...(part.quality === undefined ? [] : [`quality: { ${part.quality} }`]),
    ...(part.production === undefined ? [] : [`production: { ${part.production} }`]),
    ...(pins.length === 0 ? [] : [`pinned: { ${pins.join(', ')} }`]),
    '',
  ].join('\n');
}

/** The ledger after the steps up to and including the one named; `plant` is the text of a plant, else the typical one, `rules` are other rules. */
export function workTo(last: string, part: SmallPart, plant = BUILT_IN, rules = rulebook): Ledger {
  const read = readPart({ name: 'test.part.yaml', text: partText(part) });
  const machines = readPlant({ name: 'test.plant.yaml', text: plant });
  if (read.part === undefined || machines.plant === undefined) throw new Error([...read.diagnostics, ...machines.diagnostics].map((d) => d.message).join('\n'));
  const alloy = findAlloy(rules, read.part.alloy.value);
  if (!('found' in alloy)) throw new Error(`no alloy ${part.alloy}`);
  const ledger = new Ledger({ part: read.part, plant: machines.plant, alloy: alloy.found, rulebook: rules });
  fileGiven(ledger);
  for (const step of WORK_ORDER) {
    ledger.attempt(step.id, step.title, () => step.work(ledger));
    if (step.id === last) return ledger;
  }
  throw new Error(`no step ${last}`);
}

/** What the limits say over a ledger, by code. */
export function findingsOf(ledger: Ledger): Map<string, Diagnostic> {
  judgeAll(ledger);
  return new Map(ledger.findings.map((finding) => [finding.code, finding]));
}

/** The number filed under an id, in the unit of the vocabulary. */
export function figure(ledger: Ledger, id: string): number {
  const value = ledger.values.get(id);
  if (value === undefined) throw new Error(`${id} is not filed; unchecked: ${ledger.unchecked.map((u) => `${u.id}: ${u.missing}`).join('; ')}`);
  return value.value;
}

/** A lid in A380: 412 cm3, nominal wall 2.8 mm, least 2.2 mm. */
export const LID: SmallPart = { alloy: 'A380', volume: 412, wall: 2.8, least: 2.2, area: 268, envelope: [238, 142, 46], partingLine: 760 };
/** A small plated lever in Zamak 3: 22 cm3, wall 1.8 mm. */
export const LEVER: SmallPart = { alloy: 'Zamak 3', volume: 22, wall: 1.8, area: 24, envelope: [80, 40, 15], quality: 'use: plated, finish: superior' };
