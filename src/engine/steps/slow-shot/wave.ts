import { waveClosing, waveHead, waveShare, waveTrapped } from '../../../physics/slow-shot/wave.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';

/** Runs the wave of the planned slow shot; one run gives all three figures. */
export function workWave(ledger: Ledger): void {
  const shot = {
    diameter: ledger.value('machine.plunger'),
    fill: ledger.value('sleeve.fill'),
    length: ledger.value('machine.sleeve-length'),
    hole_travel: ledger.value('slow-shot.travel-hole-closed'),
    hole_speed: ledger.value('slow-shot.hole-speed'),
    ramp_end: ledger.value('slow-shot.travel-ramp-end'),
    speed: ledger.value('slow-shot.speed'),
  };
  const trapped = ledger.apply(waveTrapped, shot);
  ledger.apply(waveClosing, shot);
  ledger.apply(waveHead, shot);
  ledger.apply(waveShare, { trapped, air: ledger.value('sleeve.air-volume') });
  choose(ledger, 'slow-shot.wave');
}
