import {
  coreBending,
  coreGreatestHeight,
  coreLeastDiameter,
  coreSlenderness,
  coreSlendernessGreatest,
  coreStress,
  coreStressGreatest,
  lineRoom,
  streamPressure,
} from '../../../physics/die-cores.ts';
import type { Ledger } from '../../ledger.ts';
import { coredHoles } from './cored.ts';

/**
 * Bend of the cores while the cavity fills: the stream at gate velocity meets one side of the core over its whole length,
 * and nothing yet stands behind it. Once metal surrounds it the metal pressure acts from all sides and bends it no more.
 */
export function workCores(ledger: Ledger): void {
  const holes = coredHoles(ledger);
  if (holes.length === 0) return;
  const pressure = ledger.apply(streamPressure, { density: ledger.value('gate.liquid-density').in('kg/m3'), velocity: ledger.value('gate.velocity') });
  const bend = ledger.look('die/core', 'bend', {}, 'die.core-bend-greatest');
  ledger.look('die/core', 'yield_share', {}, 'die.core-yield-share');
  const modulus = ledger.look('die/elastic', 'modulus', { temperature: ledger.value('fill.die-temperature') }, 'die.core-modulus');
  for (const item of holes) {
    ledger.attempt(`die.core-bending[${item}]`, `Bend of the core, ${item}`, () => {
      const [diameter, height] = [ledger.value('hole.diameter', item), ledger.value('hole.depth', item)];
      ledger.apply(coreSlenderness, { height, diameter }, { item });
      ledger.apply(coreBending, { pressure, diameter, height, modulus }, { item });
      ledger.apply(coreStress, { pressure, diameter, height }, { item });
      ledger.apply(coreLeastDiameter, { pressure, height, bend, modulus }, { item });
      ledger.apply(coreGreatestHeight, { pressure, diameter, bend, modulus }, { item });
    });
  }
}

/** What the steel stands of that bending, by its strength at the peak temperature of the surface. */
export function workCoreStrength(ledger: Ledger): void {
  const pressure = ledger.maybe('die.stream-pressure');
  if (pressure === undefined) return;
  const stress = ledger.apply(coreStressGreatest, { hot_yield: ledger.value('die.hot-yield'), share: ledger.value('die.core-yield-share') });
  ledger.apply(coreSlendernessGreatest, { stress, pressure });
}

/** What fits between two cooling lines without coming too near to them. */
export function workLineRoom(ledger: Ledger): void {
  const steel = ledger.look('die/block', 'line_to_hole_least', {}, 'die.line-steel');
  ledger.look('die/block', 'line_to_hole_greatest', {}, 'die.line-steel-greatest');
  ledger.apply(lineRoom, { pitch: ledger.value('cooling.laid-pitch'), diameter: ledger.value('cooling.line-diameter'), steel });
}
