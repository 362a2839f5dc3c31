import type { Traced } from '../../../kernel/traced.ts';
import { cycleShare, textbookCooling, textbookCycle } from '../../../physics/cycle-check.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';
import { titleOf } from '../../step.ts';
import { sumOf } from '../../sum.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { type Element, onPath, type PartName } from './path.ts';

/** Each part of the cycle beside the dwell: its time and its share. */
const PARTS = [
  ['machine', 'cycle.part-machine', 'cycle.share-machine'],
  ['metal', 'cycle.part-metal', 'cycle.share-metal'],
  ['spray', 'cycle.part-spray', 'cycle.share-spray'],
  ['handling', 'cycle.part-handling', 'cycle.share-handling'],
] as const satisfies readonly (readonly [PartName, ValueId, ValueId])[];

/** The sum of the elements on the way of the cycle, and the part that governs it. */
export function sums(ledger: Ledger): void {
  const whole = ledger.put(sumOf('cycle.elements-time', 'Sum of the elements', 's', times(ledger, onPath(ledger))));
  ledger.apply(cycleShare, { part: ledger.value('cycle.dwell'), whole }, { id: 'cycle.share-dwell' });
  for (const [name, id, share] of PARTS) {
    const elements = onPath(ledger).filter((element) => element.part === name);
    const part = ledger.put(sumOf(id, titleOf(id), 's', times(ledger, elements)));
    ledger.apply(cycleShare, { part, whole }, { id: share });
  }
  choose(ledger, 'cycle.governs');
}

/** What passes from the signal to open until the die is shut again. */
export function openTime(ledger: Ledger): void {
  const elements = onPath(ledger).filter(({ open }) => open);
  ledger.put(sumOf('cycle.open-time', titleOf('cycle.open-time'), 's', times(ledger, elements)));
}

/** @throws Missing when an element is not known, for a sum without it would lie. */
function times(ledger: Ledger, elements: readonly Element[]): Traced<'s'>[] {
  return elements.map(({ id }) => ledger.value(id));
}

/** The cycle as the textbook adds it up, with its cooling time in both forms that are remembered. */
export function textbook(ledger: Ledger): void {
  const family = { family: ledger.alloy.family };
  const wall = ledger.maybe('part.wall-greatest') ?? ledger.value('part.wall-nominal');
  const constant = lookQuietly(ledger, 'cycle/textbook', 'constant', family, 'cycle.textbook-constant', { title: 'Cooling time over the wall, textbook' });
  if (constant === undefined) return;
  const cooling = ledger.apply(textbookCooling, { constant, wall });
  const ladle = ledger.maybe('slow-shot.ladle-time') ?? ledger.maybe('cycle.ladle');
  const rest = {
    ...(ladle === undefined ? {} : { ladle }),
    fill: ledger.value('cycle.fill'),
    extraction: ledger.value('cycle.extraction'),
    lubrication: ledger.value('cycle.spray-rule'),
    interval: ledger.look('cycle/spray', 'textbook', family, 'cycle.textbook-interval'),
    dry_cycle: ledger.value('machine.dry-cycle'),
  };
  ledger.apply(textbookCycle, { ...rest, cooling }, { id: 'cycle.textbook-least' });
  const square = ledger.maybe('cooling.handbook-thick') ?? ledger.maybe('cooling.handbook-time');
  if (square !== undefined) ledger.apply(textbookCycle, { ...rest, cooling: square }, { id: 'cycle.textbook-greatest' });
}
