import { choose } from '../../choose.ts';
import { workSetEjection } from '../../die-set/ejection.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { type Core, fileCores } from './cores.ts';
import { fileCoreForces, fileStrength } from './grip.ts';
import { fileFigures, filePins, filePinTotal, fileStroke } from './pins.ts';
import { show } from './show.ts';
import { fileSlideForces, fileTotals } from './totals.ts';

/**
 * How hard the casting grips its cores when it is ejected, and the pins, the stroke and the machine force that get it off.
 * Cores on slides are pulled before; they are worked out beside, at the same temperature.
 */
export const ejectionStep: Step = { id: 'ejection', title: 'Ejection', work, show };

function work(ledger: Ledger): void {
  const { set } = ledger.given;
  if (set === undefined) workCasting(ledger);
  else workSetEjection(ledger, set, workCasting);
}

function workCasting(ledger: Ledger): void {
  const cores = ledger.attempt('ejection.contact-area', 'Cores that the casting grips', () => fileCores(ledger));
  if (cores === undefined) return;
  ledger.attempt('ejection.hot-yield', 'Strength of the casting at ejection', () => fileStrength(ledger));
  if (ledger.maybe('ejection.hot-yield', 'boss') !== undefined) fileForces(ledger, cores);
  fileTotals(ledger, cores);
  fileFigures(ledger);
  ledger.attempt('ejection.stroke', 'Ejector stroke', () => fileStroke(ledger, cores));
  ledger.attempt('ejection.cavity-pins', 'Ejector pins', () => filePins(ledger));
  ledger.attempt('ejection.pins', 'Ejector pins of the die', () => filePinTotal(ledger, ledger.value('ejection.runner-pins')));
  ledger.attempt('ejection.return', 'Return of the ejectors', () => choose(ledger, 'ejection.return'));
}

function fileForces(ledger: Ledger, cores: readonly Core[]): void {
  for (const core of cores) {
    ledger.attempt(`ejection.core-force[${core.item}]`, `Force of ${core.item}`, () => fileCoreForces(ledger, core));
  }
  fileSlideForces(ledger, cores);
}
