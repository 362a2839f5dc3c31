import type { Traced } from '../../../kernel/traced.ts';
import { changeOver, travelWhenAtGate, travelWhenFull } from '../../../physics/sleeve/travel.ts';
import { acceleration, fastAcceleration, fillDuration, phaseTime, slowShotTime, speedAtGate } from '../../../physics/slow-shot/motion.ts';
import {
  holeSpeed,
  plannedChangeOver,
  travelBrake,
  travelEnd,
  travelFast,
  travelFilled,
  travelHoleClosed,
  travelRampEnd,
} from '../../../physics/slow-shot/travel.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';

/** Share of the way from pour hole to full sleeve; found by running the wave for many sleeves. */
const RAMP_SHARE = 0.25;

/** Two ramps to the slow speed, the first to where the pour hole is closed, and where the sleeve is full and the metal at the gate. */
export function slowPhase(ledger: Ledger): void {
  const diameter = ledger.value('machine.plunger');
  const sleeve = { length: ledger.value('machine.sleeve-length'), volume: ledger.value('shot.liquid-volume'), diameter };
  const full_travel = ledger.apply(travelWhenFull, sleeve);
  ledger.apply(travelWhenAtGate, { ...sleeve, runner_volume: ledger.value('runner.total-volume') });
  const speed = ledger.value('slow-shot.speed');
  const hole_travel = holeClosed(ledger);
  const limit = ledger.look('sleeve/geometry', 'pour_hole_speed', {}, 'slow-shot.hole-speed-limit');
  const hole_speed = ledger.apply(holeSpeed, { limit, speed });
  const share = ledger.assume('slow-shot.ramp-share', RAMP_SHARE, '1', {
    note: 'planning rule from the wave solution: two constant accelerations, the second over a quarter of the way that is left when the pour hole is closed',
    status: 'derived',
  });
  const ramp_end = ledger.apply(travelRampEnd, { hole_travel, full_travel, share });
  const first = { travel_to: hole_travel, speed_to: hole_speed };
  ledger.apply(acceleration, first, { id: 'slow-shot.first-acceleration' });
  ledger.apply(phaseTime, first, { id: 'slow-shot.time-start' });
  const second = { travel_from: hole_travel, travel_to: ramp_end, speed_from: hole_speed, speed_to: speed };
  ledger.apply(phaseTime, second, { id: 'slow-shot.time-ramp' });
  ledger.attempt('slow-shot.second-acceleration', 'Ramp to the slow speed', () => ledger.apply(acceleration, second, { id: 'slow-shot.second-acceleration' }));
}

/** Where the plunger closes the pour hole; the vacuum asks for it before the slow shot does. */
export function holeClosed(ledger: Ledger): Traced<'mm'> {
  const known = ledger.maybe('slow-shot.travel-hole-closed');
  return known ?? ledger.apply(travelHoleClosed, { diameter: ledger.value('machine.plunger'), ratio: holeRatio(ledger) });
}

/** No plant file says how long its pour holes are. */
function holeRatio(ledger: Ledger) {
  const least = ledger.look('sleeve/geometry', 'pour_hole_length_least', {}, 'slow-shot.hole-ratio-least');
  const greatest = ledger.look('sleeve/geometry', 'pour_hole_length_greatest', {}, 'slow-shot.hole-ratio-greatest');
  return assumeMiddle(
    ledger,
    'slow-shot.hole-ratio',
    least,
    greatest,
    'a hole that begins at the start face of the plunger; pin slow-shot.travel-hole-closed to that of the sleeve',
  );
}

/** Change-over, fast shot, braking and the end, with the time that each takes. */
export function fastPhase(ledger: Ledger): void {
  const full_travel = ledger.value('sleeve.travel-when-full');
  const gate_travel = ledger.value('sleeve.travel-at-gate');
  const slow_speed = ledger.value('slow-shot.speed');
  const fast_speed = ledger.value('sleeve.fast-speed');
  const rate = acceleratingRate(ledger);
  const wanted = ledger.apply(changeOver, {
    length: ledger.value('machine.sleeve-length'),
    volume: ledger.value('shot.liquid-volume'),
    diameter: ledger.value('machine.plunger'),
    runner_volume: ledger.value('runner.total-volume'),
    fast_speed,
    slow_speed,
    acceleration: rate,
  });
  const change_over = ledger.apply(plannedChangeOver, { full_travel, wanted });
  ledger.look('sleeve/fast-shot', 'change_over_window', {}, 'slow-shot.change-over-window');
  ledger.look('sleeve/fast-shot', 'change_over_greatest', {}, 'slow-shot.change-over-greatest');
  const ramp_end = ledger.value('slow-shot.travel-ramp-end');
  const steady = ledger.apply(
    phaseTime,
    { travel_from: ramp_end, travel_to: change_over, speed_from: slow_speed, speed_to: slow_speed },
    { id: 'slow-shot.time-steady' },
  );
  ledger.apply(slowShotTime, { start: ledger.value('slow-shot.time-start'), ramp: ledger.value('slow-shot.time-ramp'), steady });

  const fast_travel = ledger.apply(travelFast, { change_over, slow_speed, fast_speed, acceleration: rate });
  ledger.apply(phaseTime, { travel_from: change_over, travel_to: fast_travel, speed_from: slow_speed, speed_to: fast_speed }, { id: 'slow-shot.time-change' });
  const gate_speed = ledger.apply(speedAtGate, { gate_travel, change_over, slow_speed, fast_speed, acceleration: rate });
  const shrink = ledger.maybe('alloy.shrink-allowance');
  const filled_travel = ledger.apply(travelFilled, {
    gate_travel,
    cavities: ledger.value('machine.cavities'),
    volume: ledger.value('part.volume'),
    overflows: ledger.value('overflow.volume'),
    ...(shrink === undefined ? {} : { shrink }),
    diameter: ledger.value('machine.plunger'),
  });
  ledger.apply(travelEnd, { length: ledger.value('machine.sleeve-length'), biscuit: ledger.value('sleeve.biscuit-thickness') });
  const brakeLeast = ledger.look('sleeve/fast-shot', 'brake_least', {}, 'slow-shot.brake-least');
  const brakeGreatest = ledger.look('sleeve/fast-shot', 'brake_greatest', {}, 'slow-shot.brake-greatest');
  const distance = assumeMiddle(ledger, 'slow-shot.brake-distance', brakeLeast, brakeGreatest, 'braked evenly to the slow speed');
  const brake_travel = ledger.apply(travelBrake, { filled_travel, distance });
  const brake_time = ledger.apply(
    phaseTime,
    { travel_from: brake_travel, travel_to: filled_travel, speed_from: fast_speed, speed_to: slow_speed },
    { id: 'slow-shot.time-brake' },
  );
  // A plunger that is still gaining speed where it must be braked has no fast phase; a limit says so.
  if (fast_travel.value > brake_travel.value) {
    ledger.leaveUnchecked({ id: 'slow-shot.time-fast', title: 'Time of the fast phase', missing: 'the fast speed is not reached before braking begins' });
    return;
  }
  ledger.apply(phaseTime, { travel_from: fast_travel, travel_to: brake_travel, speed_from: fast_speed, speed_to: fast_speed }, { id: 'slow-shot.time-fast' });
  ledger.apply(fillDuration, { gate_travel, fast_travel, brake_travel, gate_speed, fast_speed, brake_time });
}

/** The usual acceleration, or as much more of the range as the way from full sleeve to gate needs. */
function acceleratingRate(ledger: Ledger) {
  ledger.apply(
    acceleration,
    {
      speed_from: ledger.value('slow-shot.speed'),
      speed_to: ledger.value('sleeve.fast-speed'),
      travel_from: ledger.value('sleeve.travel-when-full'),
      travel_to: ledger.value('sleeve.travel-at-gate'),
    },
    { id: 'slow-shot.acceleration-needed' },
  );
  return ledger.apply(fastAcceleration, {
    needed: ledger.value('slow-shot.acceleration-needed'),
    usual: ledger.look('sleeve/fast-shot', 'acceleration_used', {}, 'slow-shot.acceleration-usual'),
    greatest: ledger.look('sleeve/fast-shot', 'acceleration_greatest', {}, 'slow-shot.acceleration-greatest'),
  });
}
