import { biscuitFace, castingSurface, heatPerArea, runnerFace } from '../../../physics/heat-face.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';

/** Die face that takes the heat of a shot: castings, overflows, runner and the end of the biscuit. */
export function fileFaces(ledger: Ledger): void {
  const byWall = ledger.apply(castingSurface, { volume: ledger.value('part.volume'), wall: ledger.value('part.wall-nominal') }, { id: 'heat.face-by-wall' });
  const given = ledger.maybe('part.surface-area');
  const casting = ledger.put(
    given === undefined ? byWall.as('heat.casting-face', 'no surface area is given: two sides of the nominal wall') : given.as('heat.casting-face'),
  );
  const cavity = [casting];
  const overflow = ledger.maybe('overflow.face');
  if (overflow !== undefined) cavity.push(ledger.put(overflow.as('heat.overflow-face')));
  const faces = [ledger.put(sumOf('heat.cavity-face', 'Die face of all castings with overflows', 'cm2', cavity, ledger.value('machine.cavities')))];
  const projected = ledger.maybe('runner.network-area');
  if (projected !== undefined && projected.value > 0)
    faces.push(ledger.apply(runnerFace, { projected, depth: ledger.value('runner.depth'), width: ledger.value('runner.width') }));
  if (ledger.values.has('heat.biscuit')) faces.push(ledger.apply(biscuitFace, { diameter: ledger.value('machine.plunger') }));
  ledger.put(sumOf('heat.face-area', 'Die face that takes heat', 'cm2', faces));
}

export function perFace(ledger: Ledger): void {
  ledger.apply(heatPerArea, { heat: ledger.value('heat.die'), area: ledger.value('heat.face-area') });
}
