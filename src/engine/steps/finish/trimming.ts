import type { Traced } from '../../../kernel/traced.ts';
import { cavitySection, flashLength, holeFlash, shearEstimate, stripSection, trimForce } from '../../../physics/finish.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeUsual, orPinned } from '../../planned.ts';
import { sumOf } from '../../sum.ts';
import { press, SERIES } from './press.ts';

/** How gates and flash come off, what is sheared, with which force, and what is left on the edge. */
export function trimming(ledger: Ledger): void {
  const attempt = ledger.attempt.bind(ledger);
  attempt('finish.trimming', 'Way of trimming', () => choose(ledger, 'finish.trimming'));
  ledger.setText('finish.press-from', SERIES);
  ledger.setText('finish.plant-drive', 'not known');
  attempt('finish.cavity-section', 'Sheared section', () => section(ledger));
  attempt('finish.shear-strength', 'Shear strength', () => shearStrength(ledger));
  attempt('finish.trim-force', 'Trim force', () => force(ledger));
  attempt('finish.press', 'Trim press', () => press(ledger));
  attempt('finish.press-drive', 'Drive of the trim press', () => choose(ledger, 'finish.press-drive'));
  attempt('finish.die-trim', 'What is left after trimming', () => left(ledger));
}

function section(ledger: Ledger): void {
  const usual = ledger.look('finish/flash', 'thickness', { family: ledger.alloy.family }, 'finish.flash-usual');
  ledger.lookIfAny('finish/flash', 'vendor', { family: ledger.alloy.family }, 'finish.flash-vendor');
  const thickness = assumeUsual(ledger, 'finish.flash-thickness', usual, 'all along the parting line, for a die towards the end of its life');
  const overflows = ledger.maybe('overflow.number');
  const overflow_width = ledger.maybe('overflow.gate-width');
  const length = ledger.apply(flashLength, {
    parting_line: ledger.value('overflow.parting-line'),
    gate_width: ledger.value('gate.width'),
    ...(overflow_width === undefined ? {} : { overflows, overflow_width }),
  });
  const flash = ledger.apply(stripSection, { length, thickness }, { id: 'finish.flash-section' });
  const gates = ledger.put(ledger.value('gate.area').as('finish.gate-section', 'cut where the gate is thinnest, at the edge of the casting'));
  const total = ledger.maybe('overflow.gate-area');
  const shed = total === undefined ? undefined : ledger.put(total.as('finish.overflow-section'));
  ledger.apply(cavitySection, { gates, overflows: shed, flash, vents: vents(ledger), holes: holes(ledger, thickness) });
}

/** Only plain vents stand at the edge of the casting; a chill vent or a valve is reached through an overflow and comes off with it. */
function vents(ledger: Ledger): Traced<'mm2'> | undefined {
  const length = ledger.maybe('vent.width');
  const depth = ledger.maybe('vent.depth');
  if (ledger.texts.get('vent.kind') !== 'plain' || length === undefined || depth === undefined) return undefined;
  const note = 'as if every vent stood at the edge of the casting; those behind an overflow come off with it';
  return ledger.apply(stripSection, { length, thickness: depth }, { id: 'finish.vent-section', note });
}

/** Through holes along the die opening, which the trim die pierces; in holes on slides the press cannot reach the flash. */
function holes(ledger: Ledger, thickness: Traced<'mm'>): Traced<'mm2'> | undefined {
  const pierced = ledger.part.holes.filter(
    ({ id, kind }) =>
      kind === 'through' && ledger.texts.get(`parting.hole-place[${id}]`) === 'fixed core' && ledger.texts.get(`hole.making[${id}]`) !== 'drilled',
  );
  if (pierced.length === 0) return undefined;
  const each = pierced.map(({ id }) =>
    ledger.apply(
      holeFlash,
      { diameter: ledger.value('hole.diameter', id), count: ledger.value('hole.count', id), thickness },
      { id: 'finish.hole-flash', item: id },
    ),
  );
  return ledger.put(sumOf('finish.hole-section', 'Flash in through holes', 'mm2', each));
}

/** Of the alloy's record, else from its tensile strength. */
function shearStrength(ledger: Ledger): Traced<'MPa'> {
  return orPinned(ledger, 'finish.shear-strength', () => {
    const known = ledger.maybe('alloy.shear-strength');
    if (known !== undefined) return ledger.put(known.as('finish.shear-strength', 'cold; a casting trimmed hot needs less, by how much is not published'));
    const tensile = ledger.value('alloy.tensile-strength');
    const family = ledger.alloy.family;
    const ratio = ledger.look('finish/shear', 'ratio', { family }, 'finish.shear-ratio');
    const least = ledger.look('finish/shear', 'least', { family }, 'finish.shear-least');
    return ledger.apply(
      shearEstimate,
      { tensile, ratio, least },
      { id: 'finish.shear-strength', note: 'no shear strength of the alloy is published; an estimate' },
    );
  });
}

function force(ledger: Ledger): void {
  ledger.look('finish/force', 'factor_least', {}, 'finish.factor-least');
  const greatest = ledger.look('finish/force', 'factor_greatest', {}, 'finish.factor-greatest');
  const factor = assumeUsual(ledger, 'finish.factor', greatest, 'the high end, for worn trim edges');
  const shear_strength = ledger.value('finish.shear-strength');
  const cavity = ledger.value('finish.cavity-section');
  ledger.apply(trimForce, { shear_strength, sheared_area: cavity, factor }, { id: 'finish.cavity-force' });
  const shot = ledger.put(sumOf('finish.shot-section', 'Sheared section of the shot', 'mm2', [cavity], ledger.value('machine.cavities')));
  ledger.apply(trimForce, { shear_strength, sheared_area: shot, factor });
}

function left(ledger: Ledger): void {
  ledger.look('finish/left', 'line_least', {}, 'finish.line-least');
  ledger.look('finish/left', 'line_greatest', {}, 'finish.line-greatest');
  ledger.look('finish/left', 'die_trim', {}, 'finish.die-trim');
  ledger.look('finish/left', 'thin_gate', {}, 'finish.thin-gate');
  ledger.look('finish/left', 'thick_gate', {}, 'finish.thick-gate');
}
