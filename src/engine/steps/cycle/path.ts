import type { Ledger } from '../../ledger.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { VERTICAL } from '../squeeze.ts';

export type PathId = Extract<
  ValueId,
  `cycle.${'close' | 'lock' | 'ladle' | 'delay' | 'slow-shot' | 'fill' | 'dwell' | 'open' | 'cores-out' | 'eject' | 'extract' | 'spray' | 'blow' | 'inserts' | 'cores-in' | 'signals'}`
>;

/** The parts by which a cycle is shortened; `cycle.governs` names one. */
export type PartName = 'dwell' | 'machine' | 'metal' | 'spray' | 'handling';

export interface Element {
  readonly id: PathId;
  readonly part: PartName;
  /** Whether the die is open: until it is shut again its faces give off heat to the air. */
  readonly open: boolean;
  /** Whether this plan has it at all. */
  readonly has: (ledger: Ledger) => boolean;
}

const ever = (): boolean => true;
const cold = (ledger: Ledger): boolean => ledger.text('machine.chamber') === 'cold';

/**
 * The elements on the way of the cycle, in their order, each with the part that it belongs to. Slides have their locks in the cover half,
 * so hydraulic cores move while the die is open; so do most signals and waits, which are those of robots.
 */
const PATH: readonly Element[] = [
  { id: 'cycle.close', part: 'machine', open: true, has: ever },
  { id: 'cycle.lock', part: 'machine', open: false, has: ever },
  { id: 'cycle.ladle', part: 'metal', open: false, has: cold },
  { id: 'cycle.delay', part: 'metal', open: false, has: (ledger) => cold(ledger) && ledger.text('machine.kind') !== VERTICAL },
  { id: 'cycle.slow-shot', part: 'metal', open: false, has: ever },
  { id: 'cycle.fill', part: 'metal', open: false, has: ever },
  { id: 'cycle.dwell', part: 'dwell', open: false, has: ever },
  { id: 'cycle.open', part: 'machine', open: true, has: ever },
  { id: 'cycle.cores-out', part: 'machine', open: true, has: hydraulic },
  { id: 'cycle.eject', part: 'machine', open: true, has: ever },
  { id: 'cycle.extract', part: 'handling', open: true, has: ever },
  { id: 'cycle.spray', part: 'spray', open: true, has: ever },
  { id: 'cycle.blow', part: 'spray', open: true, has: ever },
  { id: 'cycle.inserts', part: 'handling', open: true, has: (ledger) => ledger.value('parting.inserts').value > 0 },
  { id: 'cycle.cores-in', part: 'machine', open: true, has: hydraulic },
  { id: 'cycle.signals', part: 'handling', open: true, has: ever },
];

/** The elements that this plan has, in their order, known or not. */
export function onPath(ledger: Ledger): readonly Element[] {
  return PATH.filter(({ has }) => has(ledger));
}

/** Slides that a cylinder drives, by name; those on angle pins move with the die. */
export function hydraulicSlides(ledger: Ledger): string[] {
  return ledger.items('parting.slide-drive').filter((item) => ledger.text('parting.slide-drive', item) === 'hydraulic cylinder');
}

function hydraulic(ledger: Ledger): boolean {
  return hydraulicSlides(ledger).length > 0;
}
