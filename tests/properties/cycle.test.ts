import { describe, expect, test } from 'vitest';
import { calc, forAll } from './calc.ts';

const CYCLE = [5, 240] as const;
const PARTS = [1000, 1e7] as const;
const CAVITIES = [1, 16] as const;
const SHARES = { use_share: 80, reject_share: 5 };
const near = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));

describe('hours a year', () => {
  const hours = (time: number, parts: number, cavities: number): number =>
    calc('machine.hours-needed', { parts, cavities, rate: calc('cycle.shots', { time }), ...SHARES });
  test('go with the parts and the cycle, and inversely with the cavities', () => {
    forAll([CYCLE, PARTS, CAVITIES, [1.1, 5]], (time, parts, cavities, times) => {
      const one = hours(time, parts, cavities);
      near(hours(time, times * parts, cavities), times * one);
      near(hours(times * time, parts, cavities), times * one);
      near(hours(time, parts, times * cavities), one / times);
    });
  });
  test('are just those available with the longest cycle', () => {
    forAll([[500, 8000], PARTS, CAVITIES], (available, parts, cavities) => {
      near(hours(calc('cycle.longest', { hours: available, cavities, parts, ...SHARES }), parts, cavities), available);
    });
  });
  test('hold the castings of the year: good ones an hour times the hours in use', () => {
    forAll([CYCLE, PARTS, CAVITIES], (time, parts, cavities) => {
      const gross = calc('cycle.gross-parts', { shots: calc('cycle.shots', { time }), cavities });
      near(calc('cycle.good-parts', { gross, reject_share: 5 }) * hours(time, parts, cavities) * 0.8, parts);
    });
  });
});

test('the cycle is never shorter than its elements or its lines, and waits for the difference', () => {
  forAll([CYCLE, [0, 240]], (elements, cooling) => {
    const time = calc('cycle.time', { elements, cooling });
    expect(time).toBeGreaterThanOrEqual(elements);
    expect(time).toBeGreaterThanOrEqual(cooling);
    near(calc('cycle.wait', { time, elements }) + elements, time);
  });
});

test('time saved brings the castings that the shorter cycle makes', () => {
  forAll([CYCLE, [0.1, 2.4]], (time, saved) => {
    const shots = calc('cycle.shots', { time });
    near(shots * (1 + calc('cycle.gain', { time, saved }) / 100), calc('cycle.shots', { time: time - saved }));
  });
});

describe('taking out and spraying', () => {
  test('never take less for a larger shot, and join where their forms meet', () => {
    for (const id of ['cycle.extraction', 'cycle.spray-rule']) {
      forAll(
        [
          [30, 1000],
          [30, 1000],
          [1, 500],
        ],
        (width, length, more) => {
          expect(calc(id, { width: width + more, length })).toBeGreaterThanOrEqual(calc(id, { width, length }));
          near(calc(id, { width, length }), calc(id, { width: length, length: width }));
        },
      );
      near(calc(id, { width: 125, length: 125 }), 3);
      expect(calc(id, { width: 125, length: 125.000001 })).toBeCloseTo(3, 6);
    }
  });
  test('cost a second more for each core pull', () => {
    forAll(
      [
        [30, 1000],
        [30, 1000],
        [0, 7],
      ],
      (width, length, pulls) => {
        const one = calc('cycle.spray-rule', { width, length, core_pulls: pulls });
        near(calc('cycle.spray-rule', { width, length, core_pulls: pulls + 1 }), one + 1);
      },
    );
  });
});

test('the textbook cycle rises with every part of it one for one', () => {
  const base = { ladle: 8, fill: 0.05, cooling: 4, extraction: 4, lubrication: 4, interval: 1, dry_cycle: 6 };
  forAll([[0.1, 10]], (more) => {
    for (const name of ['ladle', 'cooling', 'extraction', 'lubrication', 'dry_cycle'] as const)
      near(calc('cycle.textbook', { ...base, [name]: base[name] + more }), calc('cycle.textbook', base) + more);
  });
});

test('the start-up loss falls with longer runs and with more shots', () => {
  const share = (runs: number, parts: number): number => {
    const shots = calc('cycle.shots-year', { parts, cavities: 1, reject_share: 5 });
    const hours = calc('machine.hours-needed', { parts, cavities: 1, rate: 60, ...SHARES });
    return calc('cycle.start-up-share', { warming: calc('cycle.start-up-shots', { runs, after_start: 15, hours, interval: 8, after_stop: 5 }), shots });
  };
  forAll(
    [
      [1, 100],
      [5000, 500000],
    ],
    (runs, parts) => {
      expect(share(runs + 1, parts)).toBeGreaterThan(share(runs, parts));
      expect(share(runs, 2 * parts)).toBeLessThan(share(runs, parts));
    },
  );
});
