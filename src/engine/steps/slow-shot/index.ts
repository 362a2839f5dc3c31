import type { Traced } from '../../../kernel/traced.ts';
import { plungerForSpeed } from '../../../physics/sleeve/plunger.ts';
import { criticalSpeedEnergy, criticalSpeedMomentum } from '../../../physics/sleeve/wave.ts';
import { balanceDifference, fillForSpeed, ladleTime, linearSpeed, lossByFill, slowSpeed } from '../../../physics/slow-shot/speed.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { otherBiscuit } from '../sleeve.ts';
import { fastPhase, slowPhase } from './phases.ts';
import { show } from './show.ts';
import { workWave } from './wave.ts';

/**
 * How the plunger of a horizontal cold chamber is driven: the speed at which the wave in the sleeve carries the air out,
 * the ramps to it, the positions of the shot, and the wave itself when it is asked for. A vertical sleeve has no wave.
 */
export const slowShotStep: Step = {
  id: 'slow-shot',
  title: 'Slow shot and positions',
  work: (ledger) => {
    if (ledger.texts.get('machine.kind') !== 'cold-chamber' || ledger.texts.get('machine.chamber') !== 'cold') return;
    const attempt = ledger.attempt.bind(ledger);
    attempt('slow-shot.ladle-time', 'Ladle and sleeve', () => ladle(ledger));
    attempt('slow-shot.speed', 'Slow-shot speed', () => speed(ledger));
    attempt('slow-shot.change-over', 'Slow phase', () => slowPhase(ledger));
    attempt('slow-shot.fill-duration', 'Fast phase', () => fastPhase(ledger));
    if (ledger.given.wave === true) attempt('slow-shot.wave', 'Wave in the sleeve', () => workWave(ledger));
    else ledger.setText('slow-shot.wave', 'not computed');
  },
  show,
};

function ladle(ledger: Ledger): void {
  ledger.apply(ladleTime, { volume: ledger.value('shot.liquid-volume') });
  ledger.apply(lossByFill, {
    fill: ledger.value('sleeve.fill'),
    fill_least: ledger.value('sleeve.fill-least'),
    fill_greatest: ledger.value('sleeve.fill-greatest'),
    loss_least: ledger.look('furnace/loss', 'least', {}, 'slow-shot.loss-least'),
    loss_greatest: ledger.look('furnace/loss', 'greatest', {}, 'slow-shot.loss-greatest'),
  });
}

function speed(ledger: Ledger): void {
  const diameter = ledger.value('machine.plunger');
  const fill = ledger.value('sleeve.fill');
  const energy = ledger.apply(criticalSpeedEnergy, { diameter, fill });
  const momentum = ledger.apply(criticalSpeedMomentum, { diameter, fill });
  const linear = ledger.apply(linearSpeed, { diameter, fill });
  ledger.apply(balanceDifference, { energy, momentum });
  ledger.look('sleeve/slow-speed', 'least', {}, 'slow-shot.window-least');
  const greatest = ledger.look('sleeve/slow-speed', 'greatest', {}, 'slow-shot.window-greatest');
  ledger.look('sleeve/slow-speed', 'ramp_greatest', {}, 'slow-shot.window-ramp');
  if (linear.value > greatest.value) smaller(ledger, greatest);
  else {
    const note = 'the plunger at hand; by the linear rule it needs no more than that speed';
    ledger.put(diameter.as('slow-shot.plunger-for-window', note));
    ledger.put(fill.as('slow-shot.fill-for-window', note));
  }
  const wave = ledger.apply(slowSpeed, { energy, momentum }, { id: 'slow-shot.speed-for-wave' });
  const fast = ledger.maybe('sleeve.fast-speed');
  ledger.put(
    fast !== undefined && fast.value < wave.value
      ? fast.as('slow-shot.speed', 'the fill asks for no faster plunger than this, so the whole shot runs at one speed, below what the wave asks for')
      : wave.as('slow-shot.speed'),
  );
}

/** The plunger that comes down to the greatest speed in use, with the biscuit that goes with it, and how far it fills the sleeve. */
function smaller(ledger: Ledger, speed: Traced<'m/s'>): void {
  const args = {
    diameter: ledger.value('machine.plunger'),
    fill: ledger.value('sleeve.fill'),
    biscuit: ledger.value('sleeve.biscuit-thickness'),
    length: ledger.value('machine.sleeve-length'),
    speed,
  };
  const diameter = ledger.apply(plungerForSpeed, { ...args, ...otherBiscuit(ledger) }, { aside: true });
  ledger.apply(fillForSpeed, { diameter, speed }, { aside: true });
}
