import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/index.ts';
import { fileOf, METRIC, made } from './made.ts';
import { at, expectNear, itemsOf, planOf, ready, sumOf } from './plans.ts';

const SHARE = 1e-9;
let plans: readonly Plan[];
beforeAll(async () => {
  await ready();
  // The laws read whole plans, so all of them read the same ones.
  plans = fc.sample(made, { seed: 20261125, numRuns: 60 }).map((part) => planOf(fileOf(part, METRIC)));
}, 120_000);

/** Holds every plan to a law that says whether the plan had what it speaks of; a law that few plans try is no test. */
function holds(law: (plan: Plan) => boolean, least = 30): void {
  expect(plans.filter((plan) => law(plan)).length).toBeGreaterThanOrEqual(least);
}
const has = (plan: Plan, ...ids: string[]): boolean => ids.every((id) => plan.values.has(id));
const zeroWithout = (value: number): number => (Number.isNaN(value) ? 0 : value);

describe('heat', () => {
  test('what the metal of a shot gives off is what casting, overflows, runner and biscuit give off', () => {
    holds((plan) => {
      if (!has(plan, 'heat.per-shot')) return false;
      const parts = ['heat.casting', 'heat.overflow', 'heat.runner', 'heat.biscuit'].map((id) => zeroWithout(at(plan, id)));
      expectNear(
        at(plan, 'heat.per-shot'),
        parts.reduce((a, b) => a + b, 0),
        SHARE,
        'heat.per-shot',
      );
      return true;
    });
  });

  test('what the die takes up in a shot leaves by lines, spray and surroundings', () => {
    holds((plan) => {
      if (!has(plan, 'heat.lines-rate', 'cycle.time')) return false;
      const rates = at(plan, 'heat.lines-rate') + at(plan, 'heat.spray-planned') + at(plan, 'heat.surroundings-planned');
      // kW times s over a shot.
      expectNear(rates * at(plan, 'cycle.time'), at(plan, 'heat.die'), SHARE, 'heat of the die over a cycle');
      expectNear(at(plan, 'heat.die') + zeroWithout(at(plan, 'heat.tip')), at(plan, 'heat.per-shot'), SHARE, 'die and plunger tip');
      expectNear(at(plan, 'heat.share-lines') + at(plan, 'heat.share-spray') + at(plan, 'heat.share-surroundings'), 100, SHARE, 'shares of heat');
      return true;
    });
  });

  test('a kilogram of casting gives off no more than it would by cooling all the way from the furnace to the room', () => {
    holds((plan) => {
      if (!has(plan, 'heat.each[casting]')) return false;
      for (const item of itemsOf(plan, 'heat.each')) expect(at(plan, `heat.each[${item}]`), item).toBeLessThan(at(plan, 'metal.melting-heat'));
      return true;
    });
  });
});

describe('metal', () => {
  test('the shot is castings, overflows, runner and biscuit', () => {
    holds((plan) => {
      if (!has(plan, 'shot.volume')) return false;
      const castings = at(plan, 'machine.cavities') * (at(plan, 'part.volume') + zeroWithout(at(plan, 'overflow.volume')));
      const feed = zeroWithout(at(plan, 'runner.total-volume')) + zeroWithout(at(plan, 'sleeve.biscuit-volume'));
      expectNear(at(plan, 'shot.volume'), castings + feed, SHARE, 'shot.volume');
      expectNear(at(plan, 'shot.mass'), (at(plan, 'shot.volume') * at(plan, 'alloy.density')) / 1000, SHARE, 'shot.mass');
      return true;
    });
  });

  test('what is poured into a sleeve is where the plunger says it is, and what is solid at the end is the biscuit planned', () => {
    holds((plan) => {
      if (!has(plan, 'slow-shot.travel-filled') || !has(plan, 'intensification.biscuit-left')) return false;
      const [length, filled] = [at(plan, 'machine.sleeve-length'), at(plan, 'slow-shot.travel-filled')];
      expectNear(at(plan, 'intensification.biscuit-full'), length - filled, SHARE, 'metal before the plunger when the cavities are full');
      expectNear(at(plan, 'intensification.biscuit-left'), at(plan, 'sleeve.biscuit-thickness'), SHARE, 'biscuit left');
      expectNear(length - at(plan, 'slow-shot.travel-end'), at(plan, 'sleeve.biscuit-thickness'), SHARE, 'end of travel');
      // The feeding of the castings is part of the way that the plunger follows.
      expect(at(plan, 'intensification.follow-travel')).toBeGreaterThan(at(plan, 'intensification.feed-travel'));
      return true;
    }, 25);
  });

  test('what is melted for a good part is the part, what goes back and what is lost', () => {
    holds((plan) => {
      if (!has(plan, 'metal.melted-per-part')) return false;
      const lost = (at(plan, 'metal.melted-per-part') * at(plan, 'metal.melt-loss')) / 100;
      expectNear(at(plan, 'metal.melted-per-part'), at(plan, 'part.mass') + at(plan, 'metal.returns-per-part') + lost, SHARE, 'melted');
      expectNear(at(plan, 'metal.new-per-part'), at(plan, 'part.mass') + lost, SHARE, 'new metal');
      return true;
    });
  });

  test('the furnace of an hour takes in what the shots of an hour take out', () => {
    holds((plan) => {
      if (!has(plan, 'furnace.melted')) return false;
      expectNear(at(plan, 'furnace.melted'), at(plan, 'furnace.new-metal') + at(plan, 'furnace.returned'), SHARE, 'furnace.melted');
      expectNear(at(plan, 'furnace.poured'), at(plan, 'shot.mass') * at(plan, 'cycle.shots'), SHARE, 'furnace.poured');
      expectNear(at(plan, 'furnace.new-metal'), at(plan, 'metal.new-per-part') * at(plan, 'cycle.good-parts'), SHARE, 'furnace.new-metal');
      return true;
    });
  });

  test('gate, flow and fill time agree: what goes through the gates in the fill time fills cavities and overflows', () => {
    holds((plan) => {
      if (!has(plan, 'gate.area', 'gate.velocity', 'fill.time')) return false;
      // mm2 times m/s is cm3/s.
      expectNear((at(plan, 'gate.area') * at(plan, 'gate.velocity') * at(plan, 'fill.time')) / 1000, at(plan, 'gate.flow-volume'), SHARE, 'gate');
      expectNear(at(plan, 'gate.area'), at(plan, 'gate.width') * at(plan, 'gate.thickness'), SHARE, 'gate.area');
      expectNear(at(plan, 'shot.flow') / at(plan, 'gate.flow'), at(plan, 'machine.cavities'), SHARE, 'shot.flow');
      return true;
    });
  });
});

describe('cost and time', () => {
  const LINES = ['metal', 'melt-loss', 'returns', 'melting', 'machine', 'trimming', 'machining', 'impregnation', 'leakers'].map((line) => `cost.${line}`);

  test('the lines add up to the part', () => {
    holds((plan) => {
      if (!has(plan, 'cost.per-part')) return false;
      const lines = [...LINES, 'cost.die-per-part', 'cost.trim-die-per-part'].map((id) => zeroWithout(at(plan, id)));
      expectNear(
        lines.reduce((a, b) => a + b, 0),
        at(plan, 'cost.per-part'),
        SHARE,
        'cost.per-part',
      );
      return true;
    });
  });

  test('their shares add up to 100 %', () => {
    holds((plan) => {
      if (!has(plan, 'cost.share[total]')) return false;
      expectNear(sumOf(plan, 'cost.share') - at(plan, 'cost.share[total]'), 100, SHARE, 'cost.share');
      expectNear(at(plan, 'cost.share[total]'), 100, SHARE, 'cost.share[total]');
      return true;
    });
  });

  test('the elements of the cycle add up, and their shares stay below the whole', () => {
    holds((plan) => {
      if (!has(plan, 'cycle.elements-time')) return false;
      expectNear(at(plan, 'cycle.time'), Math.max(at(plan, 'cycle.elements-time'), zeroWithout(at(plan, 'cooling.cycle-least'))), SHARE, 'cycle.time');
      const shares = ['dwell', 'machine', 'metal', 'spray', 'handling'].map((what) => zeroWithout(at(plan, `cycle.share-${what}`)));
      expectNear(
        shares.reduce((a, b) => a + b, 0),
        100,
        SHARE,
        'cycle.share',
      );
      expectNear(at(plan, 'cycle.shots') * at(plan, 'cycle.time'), 3600, SHARE, 'cycle.shots');
      return true;
    });
  });

  test('hours and shots of a year make the parts of a year', () => {
    holds((plan) => {
      if (!has(plan, 'cycle.shots-year', 'cost.castings')) return false;
      const good = at(plan, 'cycle.good-parts') / at(plan, 'cycle.gross-parts');
      expectNear(at(plan, 'cycle.shots-year') * at(plan, 'machine.cavities') * good, at(plan, 'production.per-year'), SHARE, 'parts of a year');
      return true;
    });
  });
});

describe('forces', () => {
  test('locking force, area and pressure', () => {
    holds((plan) => {
      if (!has(plan, 'clamp.locking-force')) return false;
      expectNear(at(plan, 'clamp.opening-force'), (at(plan, 'clamp.sizing-pressure') * at(plan, 'clamp.projected-area')) / 10, SHARE, 'opening force');
      const slides = at(plan, 'machine.cavities') * sumOf(plan, 'clamp.slide-opening-force');
      expectNear(at(plan, 'clamp.locking-force'), at(plan, 'clamp.factor') * (at(plan, 'clamp.opening-force') + slides), SHARE, 'clamp.locking-force');
      // Four bars that were all loaded alike would bear a quarter each; the worst one bears no less.
      expect(at(plan, 'clamp.tie-bar-load') * 4).toBeGreaterThanOrEqual(at(plan, 'clamp.locking-force') * (1 - SHARE));
      return true;
    });
  });

  test('the ejection force is that of the cores and faces on the ejector side, and the pins bear it', () => {
    holds((plan) => {
      if (!has(plan, 'ejection.force')) return false;
      const onSlides = sumOf(plan, 'ejection.slide-force');
      const all = sumOf(plan, 'ejection.core-force');
      const cover = zeroWithout(at(plan, 'ejection.cover-force'));
      expectNear(all, at(plan, 'ejection.cavity-force') + onSlides + cover, 1e-6, 'ejection.cavity-force');
      expectNear(at(plan, 'ejection.force'), at(plan, 'machine.cavities') * at(plan, 'ejection.cavity-force'), SHARE, 'ejection.force');
      for (const which of ['', '-high']) expect(at(plan, `ejection.force${which}`)).toBeGreaterThanOrEqual(at(plan, 'ejection.force-low'));
      if (!has(plan, 'ejection.pin-force')) return false;
      expectNear(at(plan, 'ejection.pin-force') * at(plan, 'ejection.cavity-pins'), at(plan, 'ejection.cavity-force'), SHARE, 'pins');
      return true;
    });
  });

  test('pressure and area of the plunger give the pressure on the metal', () => {
    holds((plan) => {
      if (!has(plan, 'pq2.static-pressure', 'pq2.hydraulic-force', 'machine.plunger')) return false;
      // kN over mm2 of the plunger.
      const pressure = (1000 * at(plan, 'pq2.hydraulic-force')) / ((Math.PI * at(plan, 'machine.plunger') ** 2) / 4);
      expectNear(at(plan, 'pq2.static-pressure'), pressure, SHARE, 'pq2.static-pressure');
      // The line of the machine falls with the square of the flow, and the working point lies on the line of the die too.
      const { 'pq2.operating-flow': flow, 'pq2.dry-flow': dry } = Object.fromEntries(['pq2.operating-flow', 'pq2.dry-flow'].map((id) => [id, at(plan, id)]));
      expectNear(
        at(plan, 'pq2.operating-pressure'),
        at(plan, 'pq2.static-pressure') * (1 - ((flow as number) / (dry as number)) ** 2),
        1e-6,
        'pq2.operating-pressure',
      );
      return true;
    });
  });
});
