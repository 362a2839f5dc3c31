import { Refusal } from '../../kernel/apply.ts';
import type { Traced } from '../../kernel/traced.ts';
import { biscuitThickness, sleeveAir } from '../../physics/shot-plan.ts';
import { biscuitVolume, sleeveFill, sleeveLengthForFill } from '../../physics/sleeve/fill.ts';
import { plungerForFill } from '../../physics/sleeve/plunger.ts';
import type { Ledger } from '../ledger.ts';
import { assumeMiddle } from '../planned.ts';

/** Aluminium needs the thicker least biscuit of the two in use; the others take the published least. */
export function workBiscuit(ledger: Ledger): void {
  const diameter = ledger.value('machine.plunger');
  const least = ledger.look('sleeve/biscuit', ledger.alloy.family === 'aluminium' ? 'used' : 'least', {}, 'sleeve.biscuit-least');
  const share = ledger.look('sleeve/biscuit', 'share_least', {}, 'sleeve.biscuit-share');
  ledger.look('sleeve/biscuit', 'greatest', {}, 'sleeve.biscuit-greatest');
  const thickness = ledger.apply(biscuitThickness, { least, runner_depth: deepestRunner(ledger), diameter, share });
  ledger.apply(biscuitVolume, { diameter, thickness });
}

/** The biscuit freezes after every run, so the deepest counts: that is the main runner, where the runner is laid out. */
export function deepestRunner(ledger: Ledger): Traced<'mm'> {
  const runs = ledger.items('runner.segment-depth').map((run) => ledger.value('runner.segment-depth', run));
  return runs.reduce((deepest, run) => (run.value > deepest.value ? run : deepest), ledger.value('runner.depth'));
}

/** What the biscuit of another plunger hangs on; one that is pinned stays as it is. */
export function otherBiscuit(ledger: Ledger) {
  const planned = ledger.value('sleeve.biscuit-thickness');
  const densities = { density: ledger.value('alloy.density'), liquid_density: ledger.value('gate.liquid-density') };
  if (planned.kind === 'pinned') return { ...densities, least: planned };
  return { ...densities, least: ledger.value('sleeve.biscuit-least'), runner_depth: deepestRunner(ledger), share: ledger.value('sleeve.biscuit-share') };
}

/** How the sleeve is filled, and what would fill it as much as is usual. */
export function workSleeve(ledger: Ledger): void {
  const volume = ledger.value('shot.liquid-volume');
  const diameter = ledger.value('machine.plunger');
  const length = ledger.value('machine.sleeve-length');
  const level = ledger.apply(sleeveFill, { volume, diameter, length });
  ledger.apply(sleeveAir, { volume, diameter, length });
  if (ledger.text('machine.kind') === 'cold-chamber-vertical-shot') {
    ledger.look('sleeve/fill-vertical', 'least', {}, 'sleeve.fill-least');
    ledger.look('sleeve/fill-vertical', 'greatest', {}, 'sleeve.fill-greatest');
    return;
  }
  const least = ledger.look('sleeve/fill', 'least', {}, 'sleeve.fill-least');
  ledger.look('sleeve/fill', 'greatest', {}, 'sleeve.fill-greatest');
  const usualLeast = ledger.look('sleeve/fill', 'usual_least', {}, 'sleeve.fill-usual-least');
  const usualGreatest = ledger.look('sleeve/fill', 'usual_greatest', {}, 'sleeve.fill-usual-greatest');
  const fill = assumeMiddle(ledger, 'sleeve.fill-aim', usualLeast, usualGreatest);
  ledger.apply(sleeveLengthForFill, { volume, diameter, fill });
  plungerFor(ledger, fill, 'sleeve.plunger-for-fill');
  if (level.value < least.value) plungerFor(ledger, least, 'sleeve.plunger-for-least');
  else ledger.put(diameter.as('sleeve.plunger-for-least', 'the plunger at hand; it fills no less'));
}

/** The plunger that fills the sleeve so. In a sleeve that is far too short for its metal none does; then the one at hand stands there. */
function plungerFor(ledger: Ledger, fill: Traced<'%'>, id: 'sleeve.plunger-for-fill' | 'sleeve.plunger-for-least'): void {
  const args = {
    volume: ledger.value('shot.liquid-volume'),
    biscuit_volume: ledger.value('sleeve.biscuit-volume'),
    length: ledger.value('machine.sleeve-length'),
    fill,
    ...otherBiscuit(ledger),
  };
  try {
    ledger.apply(plungerForFill, args, { id, aside: true });
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    ledger.put(ledger.value('machine.plunger').as(id, 'the plunger at hand; none fills this sleeve so'));
  }
}
