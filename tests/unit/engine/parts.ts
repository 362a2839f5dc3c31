import { join } from 'node:path';
import { compileFolder } from '../../../.build/rulepack.ts';
import { judgeAll } from '../../../src/engine/judge.ts';
import { Ledger } from '../../../src/engine/ledger.ts';
import type { Step } from '../../../src/engine/step.ts';
import { designStep } from '../../../src/engine/steps/design/index.ts';
import { fileGiven } from '../../../src/engine/steps/given.ts';
import { partingStep } from '../../../src/engine/steps/parting/index.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import type { Rulebook } from '../../../src/rulebook/types.ts';
import { builtInPlant, type PlantData, readPart } from '../../../src/spec/index.ts';

let compiled: Rulebook | undefined;

/** The rulebook of the repository, compiled once. */
export function rulebook(): Rulebook {
  compiled ??= compileFolder(join(import.meta.dirname, '../../../rules')).rulebook;
  return compiled;
}

const PLAIN: Readonly<Record<string, string>> = {
  geometry: `{ volume: 412 cm3, envelope: [238 mm, 142 mm, 46 mm], projected_area: { z: 268 cm2 }, wall: { least: 2.2 mm, nominal: 2.8 mm, greatest: 4 mm } }`,
};

/** Works out parting and design review of a small part; `fields` are the top-level fields of its file, in YAML. */
export function review(fields: Readonly<Record<string, string>> = {}, alloyName = 'A380'): Ledger {
  const lines = Object.entries({ part: '{ name: Cover }', alloy: alloyName, ...PLAIN, ...fields }).map(([key, value]) => `${key}: ${value}`);
  const read = readPart({ name: 'cover.part.yaml', text: `diewright: part/1\n${lines.join('\n')}\n` });
  if (read.part === undefined) throw new Error(read.diagnostics.map((d) => d.message).join('\n'));
  const plant = builtInPlant(rulebook().plants['typical'] as PlantData);
  const alloy = findAlloy(rulebook(), alloyName);
  if (!('found' in alloy)) throw new Error(`no alloy ${alloyName}`);
  const ledger = new Ledger({ part: read.part, plant, alloy: alloy.found, rulebook: rulebook() });
  const steps: readonly Pick<Step, 'id' | 'title' | 'work'>[] = [{ id: 'part', title: 'Part', work: fileGiven }, partingStep, designStep];
  for (const step of steps) ledger.attempt(step.id, step.title, () => step.work(ledger));
  return ledger;
}

/** Codes of the findings of the review, with the item they concern: `hole/least-diameter[H1]`. */
export function codes(ledger: Ledger): string[] {
  judgeAll(ledger);
  return ledger.findings.map((finding) => (finding.item === undefined ? finding.code : `${finding.code}[${finding.item}]`));
}
