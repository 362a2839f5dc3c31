import {
  backPressure,
  bay,
  pillarDiameter,
  pillarLoad,
  pillarRows,
  pillarStress,
  pillarsEach,
  plateBow,
  plateThickness,
  span,
} from '../../../physics/die-plates.ts';
import type { Ledger } from '../../ledger.ts';

/**
 * Bow of the support plate between the rails, and the pillars that keep it small. The inserts are thick and spread the
 * force of the cavities over their backs; the plate alone carries it, freely supported, loaded over the whole span.
 */
export function workPlates(ledger: Ledger): void {
  const modulus = ledger.look('die/pillar', 'modulus', {}, 'die.modulus');
  const allowed = ledger.look('die/block', 'bow_greatest', {}, 'die.bow-greatest');
  ledger.look('die/block', 'flash_gap', {}, 'die.flash-gap');
  const breadth = ledger.value('die.insert-height');
  const pressure = ledger.apply(backPressure, { force: ledger.value('die.back-force'), width: ledger.value('die.insert-width'), breadth });
  const free = ledger.apply(span, { width: ledger.value('die.width'), rail: ledger.value('die.rail'), insert: ledger.value('die.insert-width') });
  const thickness = ledger.value('die.plate');
  const bowFree = ledger.apply(plateBow, { pressure, span: free, thickness, modulus }, { id: 'die.plate-bow-free' });
  ledger.apply(plateThickness, { pressure, span: free, bow: allowed, modulus });
  const needed = ledger.apply(pillarRows, { bow: bowFree, allowed }, { id: 'die.rows-needed' });
  const rows = ledger.put(needed.as('die.pillar-rows'));
  const held = ledger.apply(bay, { span: free, rows });
  ledger.apply(plateBow, { pressure, span: held, thickness, modulus });
  ledger.apply(plateThickness, { pressure, span: held, bow: allowed, modulus }, { id: 'die.bay-thickness' });
  if (rows.value === 0) return;
  const pillars = ledger.apply(pillarsEach, { breadth, bay: held });
  const load = ledger.apply(pillarLoad, { pressure, bay: held, breadth, pillars });
  const stress = ledger.look('die/pillar', 'stress', {}, 'die.pillar-allowed');
  ledger.look('die/pillar', 'bay_share', {}, 'die.bay-share');
  const diameter = ledger.apply(pillarDiameter, { load, allowed: stress });
  ledger.apply(pillarStress, { load, diameter });
}
