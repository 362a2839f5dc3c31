import { describe, expect, it } from 'vitest';
import { calc, forAll } from './calc.ts';

const same = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(a), Math.abs(b), 1));

describe('metal', () => {
  it('new metal is the part and what is lost, never less, and rises with shot, scrap and loss', () => {
    forAll(
      [
        [0.01, 20],
        [1, 4],
        [0, 30],
        [0, 10],
      ],
      (part_mass, ratio, scrap, loss) => {
        const shot_mass = part_mass * ratio;
        const fresh = calc('metal.new-per-part', { part_mass, shot_mass, scrap, loss });
        expect(fresh).toBeGreaterThanOrEqual(part_mass);
        expect(calc('metal.new-per-part', { part_mass, shot_mass: 1.1 * shot_mass, scrap, loss })).toBeGreaterThanOrEqual(fresh);
        expect(calc('metal.new-per-part', { part_mass, shot_mass, scrap: scrap + 1, loss })).toBeGreaterThanOrEqual(fresh);
        expect(calc('metal.new-per-part', { part_mass, shot_mass, scrap, loss: loss + 1 })).toBeGreaterThan(fresh);
        // What is melted comes out as part, as returns, or not at all.
        const melted = calc('metal.melted-per-part', { shot_mass, scrap, loss });
        const returns = calc('metal.returns-per-part', { part_mass, shot_mass, scrap });
        same(melted - (melted * loss) / 100, part_mass + returns);
        same(fresh - part_mass, (melted * loss) / 100);
      },
    );
  });
});

describe('money', () => {
  it('a faster cycle, more cavities, fewer rejects and a lower rate each make the machine cheaper', () => {
    forAll(
      [
        [10, 300],
        [5, 120],
        [1, 16],
        [0, 30],
      ],
      (rate, time, cavities, reject_share) => {
        const cost = calc('cost.machine', { rate, time, cavities, reject_share });
        expect(calc('cost.machine', { rate, time: 0.9 * time, cavities, reject_share })).toBeLessThan(cost);
        expect(calc('cost.machine', { rate, time, cavities, reject_share: reject_share + 1 })).toBeGreaterThan(cost);
        same(calc('cost.machine', { rate, time, cavities: 2 * cavities, reject_share }), cost / 2);
        same(calc('cost.machine', { rate: 3 * rate, time, cavities, reject_share }), 3 * cost);
      },
    );
  });

  it('every amount in another currency gives the whole in that currency, and the same count of cavities', () => {
    forAll(
      [
        [1000, 5e6],
        [10, 200],
        [5, 120],
        [5000, 300000],
        [0.001, 500],
      ],
      (parts, machine_rate, cycle, die_cost, money) => {
        const rest = { parts, cycle, trim_time: 10, exponent: 0.7 };
        const one = calc('cost.best-cavities', { ...rest, machine_rate, trim_rate: 40, die_cost, trim_die_cost: 0.1 * die_cost });
        const other = calc('cost.best-cavities', {
          ...rest,
          machine_rate: money * machine_rate,
          trim_rate: money * 40,
          die_cost: money * die_cost,
          trim_die_cost: money * 0.1 * die_cost,
        });
        same(one, other);
      },
    );
  });

  it('is least at the closed form, and flat around it: within 2 % a quarter away', () => {
    forAll(
      [
        [10000, 5e6],
        [20, 200],
        [5, 120],
        [5000, 300000],
        [0.5, 0.78],
        [0, 100],
      ],
      (parts, machine_rate, cycle, die_cost, exponent, force_rate) => {
        const inputs = { parts, machine_rate, cycle, trim_time: 8, trim_rate: 40, die_cost, trim_die_cost: 0.1 * die_cost, exponent };
        const best = calc('cost.best-cavities', inputs);
        const at = (cavities: number): number => calc('cost.with-cavities', { ...inputs, cavities, good: parts, force_rate, rest: 0 });
        for (const away of [0.8, 0.95, 1.05, 1.25]) {
          expect(at(away * best)).toBeGreaterThanOrEqual(at(best) * (1 - 1e-12));
          expect(at(away * best)).toBeLessThan(1.02 * at(best));
        }
      },
    );
  });

  it('shares of any lines add up to the whole', () => {
    forAll(
      [
        [0.01, 50],
        [0, 20],
        [0, 20],
        [0, 20],
      ],
      (metal, machine, trimming, die) => {
        const without_die = calc('cost.without-die', { metal, machine, trimming });
        const total = calc('cost.per-part', { without_die, die });
        same(
          [metal, machine, trimming, die].reduce((sum, line) => sum + calc('cost.share', { line, total }), 0),
          100,
        );
      },
    );
  });

  it('dross that is sold is worth more than dross that is thrown away', () => {
    forAll(
      [
        [0.1, 20],
        [0.1, 10],
        [0.5, 10],
      ],
      (melted, loss, price) => {
        const thrown = calc('cost.melt-loss', { melted, loss, price });
        expect(calc('cost.melt-loss', { melted, loss, price, dross_price: 0.2 * price })).toBeLessThan(thrown);
        same(calc('cost.melt-loss-tolled', { melted, loss, price, toll: 0, recovery: 0 }), thrown);
      },
    );
  });
});
