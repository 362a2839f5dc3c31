import type { CoolingSpec } from '../../../spec/index.ts';
import { adopt } from '../../adopt.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { fileCores } from './cores.ts';
import { fileCoolant, fileFlow, fileLine } from './flow.ts';
import { fileLayout, fileReach, fileSurface, type LinePlace } from './layout.ts';
import { fileCycle, fileLines, fileShares } from './parts.ts';
import { filePump, fileRunning, fileTemperature } from './running.ts';
import { show } from './show.ts';
import { endOf, fileMedia, noteNoUnit, unitFits, unitsInOrder } from './unit.ts';

/**
 * Cooling of the die: the coolant, the lines of both halves and the slides, the flow in them, how warm the coolant runs,
 * the shortest cycle that they hold, and what each core needs. Lines that would make the machine wait in the usual place are laid
 * as close as the rules allow.
 */
export const coolingStep: Step = {
  id: 'cooling',
  title: 'Cooling of the die',
  work: (ledger) => {
    ledger.attempt('cooling.surface', 'Mean temperature of the die surface', () => fileSurface(ledger));
    const usual = ledger.fork();
    workLines(usual, 'usual');
    if (isShort(usual)) workLines(ledger, 'close');
    else adopt(ledger, usual);
    ledger.attempt('cooling.core', 'Cooling of the cores', () => fileCores(ledger));
  },
  show: (ledger: Ledger) => show(ledger),
};

/** Whether the lines make the machine wait; what cannot be said is no reason to lay them closer. */
function isShort(lines: Ledger): boolean {
  const [least, elements] = [lines.maybe('cooling.cycle-least'), lines.maybe('cycle.elements-time')];
  return least !== undefined && elements !== undefined && least.value > elements.value;
}

function workLines(ledger: Ledger, place: LinePlace): void {
  const attempt = ledger.attempt.bind(ledger);
  attempt('cooling.line-depth', 'Layout of the lines', () => fileLayout(ledger, place));
  ledger.setText('cooling.water-reach', 'yes', { at: ledger.part.alloy.at });
  attempt('cooling.least-heat', 'Heat of one line in each half with hot water', () => fileReach(ledger));
  fileMedia(ledger);
  attempt('cooling.medium', 'Coolant', () => choose(ledger, 'cooling.medium'));
  attempt('cooling.unit', 'Cooling unit', () => noteNoUnit(ledger));
  const units = ledger.texts.has('cooling.medium') ? unitsInOrder(ledger) : [];
  if (units.length < 2) workFlow(ledger, units[0]);
  else adopt(ledger, withUnits(ledger, units));
}

/** Lines are laid out for the coldest that their unit gives, so each unit has lines of its own: the first whose lines it runs, else those of the nearest. */
function withUnits(ledger: Ledger, units: readonly CoolingSpec[]): Ledger {
  const tried = (unit: CoolingSpec | undefined): Ledger => {
    const fork = ledger.fork();
    workFlow(fork, unit);
    return fork;
  };
  for (const unit of units) {
    const fork = tried(unit);
    if (unitFits(fork, unit) && !isShort(fork)) return fork;
  }
  const coldest = endOf(units, 'coldest');
  const fork = tried(coldest);
  const nearest = units.find(({ id }) => id === fork.texts.get('cooling.unit'));
  return nearest === undefined || nearest === coldest ? fork : tried(nearest);
}

/** Flow, lines and temperatures with the coolant as cold as the unit gives it. */
function workFlow(ledger: Ledger, unit: CoolingSpec | undefined): void {
  const attempt = ledger.attempt.bind(ledger);
  attempt('cooling.coolant-least', 'Properties of the coolant', () => fileCoolant(ledger, unit));
  attempt('cooling.share', 'Shares of halves and slides', () => fileShares(ledger));
  attempt('cooling.flow', 'Flow of a circuit', () => fileFlow(ledger));
  attempt('cooling.line-conductance', 'Heat of one line', () => fileLine(ledger));
  attempt('cooling.length', 'Lines of halves and slides', () => fileLines(ledger));
  attempt('cooling.cycle-least', 'Shortest cycle that the lines hold', () => fileCycle(ledger));
  attempt('cooling.coolant-temperature', 'Coolant temperature to run', () => fileTemperature(ledger));
  attempt('cooling.running-heat', 'Lines as they run', () => fileRunning(ledger));
  attempt('cooling.pressure-drop', 'Pressure and flow of the cooling unit', () => filePump(ledger, unit));
}
