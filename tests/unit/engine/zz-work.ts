import { readFileSync } from 'node:fs';
import { Ledger } from '../../../src/engine/ledger.ts';
import { fileGiven } from '../../../src/engine/steps/given.ts';
import { WORK_ORDER } from '../../../src/engine/steps/index.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import { readPart, readPlant } from '../../../src/spec/index.ts';
import { rulebook } from './work-to.ts';

export * from './work-to.ts';
export function exampleTo(last: string, text: string): Ledger {
  const read = readPart({ name: 'test.part.yaml', text });
  const plant = readPlant({ name: 'p.yaml', text: readFileSync('rules/plants/typical.yaml', 'utf8') }).plant!;
  const alloy = findAlloy(rulebook, read.part!.alloy.value) as any;
  const ledger = new Ledger({ part: read.part!, plant, alloy: alloy.found, rulebook });
  fileGiven(ledger);
  for (const step of WORK_ORDER) {
    ledger.attempt(step.id, step.title, () => step.work(ledger));
    if (step.id === last) break;
  }
  return ledger;
}
