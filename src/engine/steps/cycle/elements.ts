import type { Traced } from '../../../kernel/traced.ts';
import {
  corePull,
  dipTime,
  dryPart,
  extractionTime,
  insertLoading,
  perShot,
  pourTime,
  shotSide,
  sprayEach,
  sprayOther,
  sprayRule,
} from '../../../physics/cycle.ts';
import { ladleTime } from '../../../physics/slow-shot/speed.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle, assumeUsual } from '../../planned.ts';
import { sumOf } from '../../sum.ts';
import { fileSprayWay, plantSpray, spraysLittle } from '../lubricant/spray-way.ts';
import { VERTICAL } from '../squeeze.ts';
import { hydraulicSlides } from './path.ts';
import { assumeTime } from './range.ts';

/** Close, lock, open and eject are what the dry cycle consists of, so that none of it is counted twice. */
export function movements(ledger: Ledger): void {
  const dry_cycle = ledger.value('machine.dry-cycle');
  for (const name of ['close', 'lock', 'open', 'eject'] as const) {
    const share = ledger.look('cycle/dry-split', name, {}, `cycle.dry-${name}`);
    ledger.apply(dryPart, { dry_cycle, share }, { id: `cycle.${name}` });
  }
}

/** The rectangle around all castings and the feeder: what is taken out, and what is sprayed. */
export function shotSize(ledger: Ledger): void {
  const steel = ledger.value('die.steel-around');
  const width = ledger.apply(shotSide, { block: ledger.value('die.block-width'), steel }, { id: 'cycle.shot-width' });
  const length = ledger.apply(shotSide, { block: ledger.value('die.block-height'), steel }, { id: 'cycle.shot-length' });
  ledger.put(sumOf('cycle.shot-size', 'Width plus length of the whole shot', 'mm', [width, length]));
}

/** Cold chamber: what is ladled. The slow shot has the time of a horizontal sleeve already. */
export function ladle(ledger: Ledger): void {
  if (ledger.text('machine.chamber') !== 'cold') return;
  // A vertical sleeve has no slow-shot section to have worked it out.
  const whole = ledger.maybe('slow-shot.ladle-time') ?? ledger.apply(ladleTime, { volume: ledger.value('shot.liquid-volume') });
  if (ledger.text('cycle.path') !== 'overlapped') {
    ledger.put(whole.as('cycle.ladle', 'dipping, carrying and pouring, after the die is locked'));
    return;
  }
  const least = ledger.look('cycle/handling', 'pour_least', { chamber: 'cold' }, 'cycle.pour-share-least');
  const greatest = ledger.look('cycle/handling', 'pour_greatest', { chamber: 'cold' }, 'cycle.pour-share-greatest');
  const share = assumeMiddle(ledger, 'cycle.pour-share', least, greatest, 'the ladle waits full at the sleeve while the die closes');
  const pour = ledger.apply(pourTime, { ladle: whole, share }, { id: 'cycle.ladle', note: 'pouring only; the ladle dips while the die is open' });
  ledger.apply(dipTime, { ladle: whole, pour }, { id: 'cycle.dip' });
}

/** From the signal to the full cavity. */
export function shot(ledger: Ledger): void {
  const fill = ledger.put(ledger.value('fill.time').in('s').as('cycle.fill'));
  ledger.put(sumOf('cycle.inject', 'Rest, slow shot and fill', 's', [...beforeFill(ledger), fill]));
}

function beforeFill(ledger: Ledger) {
  if (ledger.text('machine.chamber') === 'hot') {
    return [assumeTime(ledger, 'approach', 'the gooseneck is full, so that only nozzle, sprue and runner are to be filled before the gate')];
  }
  if (ledger.text('machine.kind') === VERTICAL) {
    const note = 'upright sleeve swung in and driven up slowly; the range is that of slow and fast shot together';
    return [assumeMiddle(ledger, 'cycle.slow-shot', ledger.value('cycle.inject-least'), ledger.value('cycle.inject-greatest'), note)];
  }
  const delay = assumeTime(ledger, 'delay', 'the wave from pouring runs out before the plunger moves');
  return [delay, ledger.put(ledger.value('slow-shot.time').as('cycle.slow-shot'))];
}

/** Hydraulic cores move on their own, one after the other; those on angle pins move with the die. */
export function cores(ledger: Ledger): void {
  const hydraulic = hydraulicSlides(ledger);
  if (hydraulic.length === 0) return;
  const axes = { chamber: ledger.text('machine.chamber') };
  const least = ledger.look('cycle/handling', 'core_speed_least', axes, 'cycle.core-speed-least');
  const greatest = ledger.look('cycle/handling', 'core_speed_greatest', axes, 'cycle.core-speed-greatest');
  const speed = assumeMiddle(ledger, 'cycle.core-speed', least, greatest, 'set by the core circuit of the machine and the size of the cylinder');
  const switching = assumeTime(ledger, 'switching', 'each core is proved by its switch before the next one moves');
  const each = hydraulic.map((item) => ledger.apply(corePull, { stroke: ledger.value('slide.stroke', item), speed, switching }, { item }));
  ledger.put(sumOf('cycle.cores-out', 'Hydraulic cores out', 's', each));
  ledger.put(sumOf('cycle.cores-in', 'Hydraulic cores in', 's', each));
}

/** A small zinc shot falls; any other is taken out, which grows with its size. */
export function removal(ledger: Ledger): void {
  const size = { width: ledger.value('cycle.shot-width'), length: ledger.value('cycle.shot-length') };
  const picked = ledger.apply(extractionTime, size);
  if (choose(ledger, 'cycle.removal').value === 'falls') {
    assumeTime(ledger, 'fall', 'falls through a light barrier or on a scale, which frees the next cycle');
    return;
  }
  // By hand it takes the slow end of what is usual, where the size does not ask for more already.
  const slow = ledger.text('machine.extraction') === 'by hand' ? ledger.maybe('cycle.extract-greatest') : undefined;
  if (slow !== undefined && slow.value > picked.value) ledger.put(slow.as('cycle.extract', 'taken out by hand through the guard: the slow end of the range'));
  else ledger.put(picked.as('cycle.extract', 'gripped, drawn off the ejectors and out of the die'));
}

/** By the size of the shot, no shorter than the trade sprays; the die is blown off after each spraying. */
export function spray(ledger: Ledger): void {
  const core_pulls = ledger.put(allPulls(ledger));
  const rule = ledger.apply(sprayRule, { width: ledger.value('cycle.shot-width'), length: ledger.value('cycle.shot-length'), core_pulls });
  fileSprayWay(ledger);
  const own = plantSpray(ledger);
  const least = ledger.value('cycle.spray-least');
  const each =
    own?.time !== undefined
      ? ledger.put(own.time.as('cycle.spray-each'))
      : spraysLittle(ledger)
        ? ledger.put(least.as('cycle.spray-each', 'a mist is on as long as the shortest spray of the trade'))
        : ledger.apply(sprayEach, { rule, least });
  const table = ledger.look('cycle/spray', 'interval', { family: ledger.alloy.family }, 'cycle.spray-usual');
  const interval = assumeUsual(ledger, 'cycle.spray-interval', table, 'dies that run cold are sprayed less often, those that solder at every shot');
  ledger.apply(perShot, { each, interval }, { id: 'cycle.spray' });
  const blown =
    own?.blow !== undefined
      ? ledger.put(own.blow.as('cycle.blow-each'))
      : assumeMiddle(ledger, 'cycle.blow-each', ledger.value('cycle.blow-least'), ledger.value('cycle.blow-greatest'), 'until no water is left in the die');
  ledger.apply(perShot, { each: blown, interval }, { id: 'cycle.blow' });
}

/** Every slide of the die has its faces to be sprayed, so those of all cavities count. */
function allPulls(ledger: Ledger): Traced<'1'> {
  const [pulls, cavities] = [ledger.value('parting.core-pulls'), ledger.value('machine.cavities')];
  if (pulls.value === 0 || cavities.value === 1) return pulls.as('cycle.core-pulls');
  return sumOf('cycle.core-pulls', 'Core pulls of all cavities', '1', [pulls], cavities);
}

/** The same by the other rule that is remembered, as a check. */
export function sprayCheck(ledger: Ledger): void {
  const size = { size: ledger.value('cycle.shot-size') };
  const base = ledger.look('cycle/spray-size', 'base', size, 'cycle.spray-base');
  const least = ledger.look('cycle/spray-size', 'cavity_least', size, 'cycle.spray-cavity-least');
  const greatest = ledger.look('cycle/spray-size', 'cavity_greatest', size, 'cycle.spray-cavity-greatest');
  const each = assumeMiddle(ledger, 'cycle.spray-cavity', least, greatest);
  ledger.apply(sprayOther, { base, each, cavities: ledger.value('machine.cavities'), core_pulls: ledger.value('cycle.core-pulls') });
}

/** Inserts go in after the spray and before the die closes. */
export function inserts(ledger: Ledger): void {
  const count = ledger.value('parting.inserts');
  if (count.value === 0) return;
  const reach = assumeTime(ledger, 'reach', 'by hand through the guard or by robot, once a shot');
  const each = assumeTime(ledger, 'insert', 'placed one after the other');
  ledger.apply(insertLoading, { reach, each, inserts: count, cavities: ledger.value('machine.cavities') }, { id: 'cycle.inserts' });
}
