import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { criticalSpeedEnergy, criticalSpeedMomentum } from '../../src/physics/sleeve/wave.ts';
import { fillDuration, phaseTime, speedAtGate } from '../../src/physics/slow-shot/motion.ts';
import { linearSpeed } from '../../src/physics/slow-shot/speed.ts';
import { plannedChangeOver, travelFast } from '../../src/physics/slow-shot/travel.ts';
import { simulate } from '../../src/physics/solve/wave-shot.ts';

const SPEEDS = [criticalSpeedEnergy, criticalSpeedMomentum, linearSpeed] as const;
const diameter = fc.double({ min: 30, max: 250, noNaN: true });
const fill = fc.double({ min: 20, max: 90, noNaN: true });

describe.each(SPEEDS.map((formula) => [formula.id, formula.compute] as const))('%s', (_, speed) => {
  test('falls as the sleeve fills', () => {
    fc.assert(
      fc.property(diameter, fill, fc.double({ min: 0.1, max: 9, noNaN: true }), (d, f, more) => {
        expect(speed({ diameter: d, fill: f + more })).toBeLessThan(speed({ diameter: d, fill: f }));
      }),
    );
  });
  test('goes with the square root of the diameter', () => {
    fc.assert(
      fc.property(diameter, fill, fc.double({ min: 0.2, max: 5, noNaN: true }), (d, f, times) => {
        expect(speed({ diameter: d * times, fill: f }) / speed({ diameter: d, fill: f })).toBeCloseTo(Math.sqrt(times), 9);
      }),
    );
  });
  test('is nothing for a full sleeve', () => {
    expect(speed({ diameter: 70, fill: 100 })).toBeCloseTo(0, 9);
  });
});

describe('an all but empty sleeve', () => {
  test('asks for sqrt(2 g D) by energy, what a drop from the roof gives, and for no end of speed by momentum', () => {
    const drop = Math.sqrt(2 * 9.80665 * 0.07);
    expect(criticalSpeedEnergy.compute({ diameter: 70, fill: 0.001 }) / drop).toBeCloseTo(1, 2);
    expect(criticalSpeedMomentum.compute({ diameter: 70, fill: 0.001 })).toBeGreaterThan(100);
  });
});

test('momentum asks for more than energy at every usual fill', () => {
  fc.assert(
    fc.property(diameter, fc.double({ min: 20, max: 85, noNaN: true }), (d, f) => {
      expect(criticalSpeedMomentum.compute({ diameter: d, fill: f })).toBeGreaterThan(criticalSpeedEnergy.compute({ diameter: d, fill: f }));
    }),
  );
});

describe('the profile', () => {
  const shot = fc.record({
    gate_travel: fc.double({ min: 50, max: 600, noNaN: true }),
    back: fc.double({ min: 0, max: 80, noNaN: true }),
    slow_speed: fc.double({ min: 0.1, max: 1, noNaN: true }),
    more: fc.double({ min: 0.1, max: 5, noNaN: true }),
    acceleration: fc.double({ min: 50, max: 400, noNaN: true }),
  });
  test('never begins the fast shot before the sleeve is full', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), fc.double({ min: 0, max: 500, noNaN: true }), (full_travel, wanted) => {
        expect(plannedChangeOver.compute({ full_travel, wanted })).toBeGreaterThanOrEqual(full_travel);
      }),
    );
  });
  test('fills in no less than at the fast speed all the way', () => {
    fc.assert(
      fc.property(shot, ({ gate_travel, back, slow_speed, more, acceleration }) => {
        const fast_speed = slow_speed + more;
        const ramp = { change_over: gate_travel - Math.min(back, gate_travel), slow_speed, fast_speed, acceleration };
        const fast_travel = Math.max(gate_travel, travelFast.compute(ramp));
        const gate_speed = travelFast.compute(ramp) <= gate_travel ? fast_speed : speedAtGate.compute({ ...ramp, gate_travel });
        const [brake_travel, filled] = [fast_travel + 50, fast_travel + 60];
        const brake_time = phaseTime.compute({ travel_from: brake_travel, travel_to: filled, speed_from: fast_speed, speed_to: slow_speed });
        const time = fillDuration.compute({ gate_travel, fast_travel, brake_travel, gate_speed, fast_speed, brake_time });
        expect(time).toBeGreaterThanOrEqual((filled - gate_travel) / fast_speed - 1e-9);
      }),
    );
  });
});

/** Planned as the tool plans: the pour hole at a share of the travel, a quarter of the rest for the ramp. */
function planned(diameterMm: number, fillShare: number, lengthOverD: number, speed: number, hole = 0.35, holeShare = 0.6) {
  const full = lengthOverD * diameterMm * (1 - fillShare / 100);
  return {
    diameter: diameterMm,
    fill: fillShare,
    length: lengthOverD * diameterMm,
    hole_travel: hole * full,
    hole_speed: holeShare * speed,
    ramp_end: (hole + 0.25 * (1 - hole)) * full,
    speed,
  };
}
const share = (shot: ReturnType<typeof planned>): number =>
  (simulate(shot).trapped * 4000) / (Math.PI * shot.diameter ** 2 * shot.length * (1 - shot.fill / 100));

describe('the wave', () => {
  test('traps the same share in every sleeve of one fill, when speeds go with the square root of the diameter', () => {
    fc.assert(
      fc.property(fc.double({ min: 30, max: 75, noNaN: true }), fc.double({ min: 0.4, max: 0.9, noNaN: true }), (f, part) => {
        const speed = part * criticalSpeedEnergy.compute({ diameter: 70, fill: f });
        const [here, wider, longer] = [planned(70, f, 6, speed), planned(140, f, 6, speed * Math.SQRT2), planned(70, f, 9, speed)].map(share) as [
          number,
          number,
          number,
        ];
        expect(Math.abs(wider - here)).toBeLessThan(1e-6);
        expect(Math.abs(longer - here)).toBeLessThan(1e-6);
      }),
      { numRuns: 6 },
    );
  });
  test('leaves less than a twentieth of the air with the profile that is planned, and fills nine tenths to the whole of the depth', () => {
    for (const f of [30, 40, 50, 60, 70]) {
      const speed = criticalSpeedEnergy.compute({ diameter: 70, fill: f });
      for (const hole of [0.25, 0.4, 0.5]) {
        for (const holeShare of [0.6, 0.8]) {
          const shot = planned(70, f, 6, speed, hole, holeShare);
          const { head } = simulate(shot);
          expect(share(shot), `${f} %, hole ${hole}, ${holeShare}`).toBeLessThan(0.05);
          expect(head, `${f} %, hole ${hole}, ${holeShare}`).toBeGreaterThan(88);
          expect(head, `${f} %, hole ${hole}, ${holeShare}`).toBeLessThan(105);
        }
      }
    }
  });
  test('keeps its metal and stays finite for slow shots of every kind', () => {
    const wild = fc.record({
      diameter: fc.double({ min: 30, max: 250, noNaN: true }),
      fill: fc.double({ min: 10, max: 90, noNaN: true }),
      lengthOverD: fc.double({ min: 3, max: 10, noNaN: true }),
      speed: fc.double({ min: 0.1, max: 2, noNaN: true }),
      hole: fc.double({ min: 0.02, max: 0.8, noNaN: true }),
      holeShare: fc.double({ min: 0.2, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(wild, ({ diameter: d, fill: f, lengthOverD, speed, hole, holeShare }) => {
        const { trapped, closing, head, massError } = simulate(planned(d, f, lengthOverD, speed, hole, holeShare), 100);
        const full = lengthOverD * d * (1 - f / 100);
        expect(massError).toBeLessThan(1e-10);
        expect(head).toBeGreaterThan(0);
        expect(closing > 0 && closing <= full).toBe(true);
        expect(trapped >= 0 && trapped <= (1.001 * full * Math.PI * d ** 2) / 4000).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
  test.each([35, 50, 65])('closes over more air the slower the shot is below the critical speed, fill %d %', (f) => {
    const critical = criticalSpeedEnergy.compute({ diameter: 70, fill: f });
    const shares = [0.6, 0.75, 0.9, 1].map((part) => share(planned(70, f, 6, part * critical, 0.2)));
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(shares[0]).toBeGreaterThan(0.15);
  });
  test.each([35, 50, 65])('presses against the roof the more the faster the shot is above it, fill %d %', (f) => {
    const critical = criticalSpeedMomentum.compute({ diameter: 70, fill: f });
    const heads = [1, 1.2, 1.5].map((part) => simulate(planned(70, f, 6, part * critical)).head);
    expect(heads).toEqual([...heads].sort((a, b) => a - b));
    expect(heads[2]).toBeGreaterThan(110);
  });
});
