import { workSetEjection } from '../../die-set/ejection.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { workBelow, workPlate } from '../die/heights.ts';
import { type Core, fileCores } from './cores.ts';
import { fileCoreForces, fileStrength } from './grip.ts';
import { fileFigures, filePins, filePinTotal, fileReturn, fileStroke } from './pins.ts';
import { show } from './show.ts';
import { fileSlideForces, fileTotals } from './totals.ts';

/**
 * How hard the casting grips its cores when it is ejected, and the pins, the stroke and the machine force that get it off.
 * Cores on slides are pulled before; they are worked out beside, at the same temperature.
 */
export const ejectionStep: Step = { id: 'ejection', title: 'Ejection', work, show };

function work(ledger: Ledger): void {
  const { set } = ledger.given;
  // The pins reach through both. In a die of several parts a part is given those of the die.
  if (ledger.maybe('die.steel-below') === undefined) ledger.attempt('die.steel-below', 'Steel below the cavity', () => workBelow(ledger));
  if (ledger.maybe('die.plate') === undefined) ledger.attempt('die.plate', 'Support plate', () => workPlate(ledger));
  if (set !== undefined) workSetEjection(ledger, set, { grip: workGrip, pins: workPins });
  else if (workGrip(ledger)) workPins(ledger);
}

/** Grip of the casting and the stroke that clears its cores; nothing where its cores cannot be worked out. */
function workGrip(ledger: Ledger): boolean {
  const cores = ledger.attempt('ejection.contact-area', 'Cores that the casting grips', () => fileCores(ledger));
  if (cores === undefined) return false;
  ledger.attempt('ejection.hot-yield', 'Strength of the casting at ejection', () => fileStrength(ledger));
  if (ledger.maybe('ejection.hot-yield', 'boss') !== undefined) fileForces(ledger, cores);
  fileTotals(ledger, cores);
  fileFigures(ledger);
  ledger.attempt('ejection.stroke', 'Ejector stroke', () => fileStroke(ledger, cores));
  return true;
}

function workPins(ledger: Ledger): void {
  ledger.attempt('ejection.cavity-pins', 'Ejector pins', () => filePins(ledger));
  ledger.attempt('ejection.pins', 'Ejector pins of the die', () => filePinTotal(ledger, ledger.value('ejection.runner-pins')));
  // One plate serves all castings of a die: how it returns is decided for all of them.
  if (ledger.texts.get('ejection.return') === undefined) fileReturn(ledger);
}

function fileForces(ledger: Ledger, cores: readonly Core[]): void {
  for (const core of cores) {
    ledger.attempt(`ejection.core-force[${core.item}]`, `Force of ${core.item}`, () => fileCoreForces(ledger, core));
  }
  fileSlideForces(ledger, cores);
}
