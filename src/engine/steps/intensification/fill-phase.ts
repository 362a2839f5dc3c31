import { clampUse, scaledLoad } from '../../../physics/clamp-use.ts';
import { loweredFillPressure, loweredPressureLeft, staticLockingForce } from '../../../physics/intensification.ts';
import { staticPressure } from '../../../physics/pq2.ts';
import type { Ledger } from '../../ledger.ts';

/** What the metal sees before the intensifier acts, and what a hot chamber has at all. */
export function fillPressure(ledger: Ledger): void {
  const known = ledger.maybe('pq2.static-pressure');
  if (known !== undefined) {
    ledger.put(known.as('intensification.fill-pressure'));
    return;
  }
  const rod_diameter = ledger.maybe('machine.tail-rod-diameter');
  ledger.apply(
    staticPressure,
    {
      hydraulic_pressure: ledger.value('machine.pressure-fill'),
      cylinder_diameter: ledger.value('machine.cylinder-diameter'),
      ...(rod_diameter === undefined ? {} : { rod_diameter }),
      plunger_diameter: ledger.value('machine.plunger'),
    },
    { id: 'intensification.fill-pressure' },
  );
}

/** Where the fill phase presses harder than planned it is set lower, or the die is locked for it; elsewhere both stay as they are. */
export function lowered(ledger: Ledger): void {
  const fill_pressure = ledger.value('intensification.fill-pressure');
  const planned = ledger.value('clamp.pressure-reached');
  ledger.apply(loweredFillPressure, { hydraulic: ledger.value('machine.pressure-fill'), planned, fill_pressure });
  ledger.apply(staticLockingForce, { force: ledger.value('clamp.locking-force'), sizing: ledger.value('clamp.sizing-pressure'), fill_pressure });
  const dry_flow = ledger.maybe('pq2.dry-flow');
  if (dry_flow !== undefined) ledger.apply(loweredPressureLeft, { planned, fill_pressure, flow: ledger.value('shot.flow'), dry_flow });
  standing(ledger);
}

/** What stands on the metal where the fill phase presses harder than planned and cannot be set lower; elsewhere what is planned. */
function standing(ledger: Ledger): void {
  const stands = cannotBeLowered(ledger);
  const why = 'the fill phase presses harder than the class asks for and cannot be set lower';
  const [pressure, force] = stands
    ? [ledger.value('intensification.fill-pressure'), ledger.value('intensification.static-force')]
    : [ledger.value('clamp.sizing-pressure'), ledger.value('clamp.locking-force')];
  ledger.put(pressure.as('intensification.standing-pressure', stands ? why : 'as planned'));
  const needed = ledger.put(force.as('intensification.standing-force', stands ? why : 'as planned'));
  const rated = ledger.value('machine.locking-force');
  ledger.apply(clampUse, { needed, rated }, { id: 'intensification.standing-use' });
  ledger.apply(scaledLoad, { load: ledger.value('clamp.tie-bar-load'), force: needed, planned: ledger.value('clamp.locking-force') });
}

/** As `fill-pressure-held` and `fill-pressure-lock` among the limits of this topic have it. */
export function cannotBeLowered(ledger: Ledger): boolean {
  const [left, needed] = [ledger.maybe('intensification.lowered-left'), ledger.maybe('pq2.pressure')];
  const planned = ledger.value('clamp.pressure-reached');
  return left !== undefined && needed !== undefined && left.value < needed.value && ledger.value('intensification.fill-pressure').value > 1.02 * planned.value;
}

export function pressesHarder(ledger: Ledger): boolean {
  return (ledger.maybe('intensification.fill-pressure')?.value ?? 0) > (ledger.maybe('clamp.pressure-reached')?.value ?? Infinity);
}
