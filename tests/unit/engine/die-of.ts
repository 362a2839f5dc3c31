import { Ledger } from '../../../src/engine/ledger.ts';
import { fileGiven } from '../../../src/engine/steps/given.ts';
import { WORK_ORDER } from '../../../src/engine/steps/index.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import { builtInPlant, type PlantData, readPart } from '../../../src/spec/index.ts';
import { partText, rulebook, type SmallPart } from './work-to.ts';

const plant = builtInPlant(rulebook.plants['typical'] as PlantData);

/** The ledger after the die, for the text of a part file. */
export function dieOfText(text: string): Ledger {
  const read = readPart({ name: 'test.part.yaml', text });
  if (read.part === undefined) throw new Error(read.diagnostics.map((d) => d.message).join('\n'));
  const alloy = findAlloy(rulebook, read.part.alloy.value);
  if (!('found' in alloy)) throw new Error(`no alloy ${read.part.alloy.value}`);
  const ledger = new Ledger({ part: read.part, plant, alloy: alloy.found, rulebook });
  fileGiven(ledger);
  for (const step of WORK_ORDER) {
    ledger.attempt(step.id, step.title, () => step.work(ledger));
    if (step.id === 'die') break;
  }
  return ledger;
}

/** The same for a small part, with further lines of its file: holes, undercuts. */
export const dieOf = (part: SmallPart, more = ''): Ledger => dieOfText(`${partText(part)}${more}`);
