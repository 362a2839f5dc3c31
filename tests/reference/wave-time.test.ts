import { expect, test } from 'vitest';
import { type SlowShot, simulate } from '../../src/physics/solve/wave-shot.ts';
import { cpuTime } from '../cpu-time.ts';

const SHOT: SlowShot = { diameter: 70, fill: 52.37, length: 400, hole_travel: 87.5, hole_speed: 0.3, ramp_end: 113.25, speed: 0.455 };
const SLOW = { ...SHOT, hole_speed: 0.25, ramp_end: 120, speed: 0.3 };
const LARGE = { diameter: 110, fill: 30.6, length: 880, hole_travel: 137.5, hole_speed: 0.3, ramp_end: 256, speed: 0.6 };

test('a run takes tens of milliseconds once the tables are there', () => {
  const times = [SHOT, SLOW, LARGE, SHOT, SLOW].map((shot) => {
    const before = cpuTime();
    simulate(shot);
    return cpuTime() - before;
  });
  // The median, with room for a slow machine: other work may hold up one of them.
  expect([...times].sort((a, b) => a - b)[2]).toBeLessThan(250);
});
