import { describe, expect, test } from 'vitest';
import { titleOf } from '../../../src/engine/step.ts';
import { machineStep } from '../../../src/engine/steps/machine/index.ts';
import { withoutFigures } from '../../without-figures.ts';
import { figure, findingsOf, LEVER, LID, rulebook, type SmallPart, workTo } from './work-to.ts';

const model = (part: SmallPart) => {
  const ledger = workTo('machine', part);
  const decision = ledger.decisions.get('machine.model');
  if (decision === undefined) throw new Error('no machine');
  return { ledger, decision };
};

describe('what the plan says of the machines it left', () => {
  test('machines that are far too small share one line, with the figures of the one that came nearest', () => {
    // 1180 cm2 x 1.375 = 1622 cm2 and more at 58.8 MPa: above 10 MN, so all of the plant's cold machines up to 10,000 kN are too small.
    const { ledger, decision } = model({
      ...LID,
      volume: 1180,
      wall: 2.5,
      least: 2.2,
      area: 1180,
      envelope: [520, 340, 120],
      partingLine: 1720,
      quality: 'use: loaded',
    });
    const small = decision.alternatives.filter((other) => other.because.includes('of locking force'));
    expect(small).toHaveLength(1);
    expect(small[0]?.value).toMatch(/^cold-1[02]\d+ with plunger \d+ mm, 1 cavity, and the \d+ smaller ones$/);
    const [, rated] = /^cold-(\d+)/.exec(small[0]?.value ?? '') ?? [];
    expect(small[0]?.because).toContain(`of the ${rated} kN machine`);
    expect(Number(rated)).toBeLessThan(figure(ledger, 'machine.locking-force'));
  });

  test('a waived warning is named where the machine is explained, and is no pass of every limit', () => {
    // A die block 275 mm high with 10 mm of play does not go between the 280 mm of the 630 kN machine; on the next one
    // 35 cm3 lie in a sleeve made for several times as much, far below 30 % of fill.
    const { ledger, decision } = model({ ...LID, volume: 20, wall: 3.2, least: 2.6, area: 17, envelope: [66, 40, 34], partingLine: 200 });
    expect(decision.value).toBe('cold-1000');
    expect(decision.because).toContain('with a weight for every warning broken');
    expect(decision.because).toContain('sleeve is filled enough');
    expect(titleOf('machine.fitting')).toContain('no more than the plan');
    expect(ledger.value('machine.fitting').note).toMatch(/no error and 1 warning or none$/);
    expect(decision.alternatives.length).toBeLessThanOrEqual(1);
  });

  test('a count that costs less and is not taken says what weighs against it; none that costs less is called dearer', () => {
    // Two cavities come cheaper here, but their larger plunger misses the slow speed in use by more than that saves.
    const { ledger, decision } = model({
      ...LID,
      volume: 236,
      wall: 3.4,
      least: 2.8,
      greatest: 6,
      area: 158,
      envelope: [164, 126, 38],
      quality: 'use: pressure-tight, finish: functional',
      production: 'per_year: 60000, life: 300000, hours_per_year: 4000',
    });
    const counts = ledger.items('machine.count-cost').map((item) => ({
      cost: figure(ledger, `machine.count-cost[${item}]`),
      outcome: ledger.text('machine.count-outcome', item),
    }));
    const planned = counts.find(({ outcome }) => outcome === 'planned')?.cost ?? Number.NaN;
    const cheaper = counts.filter(({ cost }) => cost < planned);
    expect(cheaper).toHaveLength(1);
    expect(cheaper[0]?.outcome).toMatch(/^cheaper, but what it breaks weighs more: .*asks for a slow shot of/);
    expect(counts.filter(({ cost, outcome }) => outcome === 'dearer' && cost < planned)).toEqual([]);
    expect(decision.because).toContain('It does not keep: "slow-shot speed');
    expect(ledger.decisions.get('machine.plunger')?.because).toMatch(/none that was worked out on this machine breaks fewer warnings$/);
  });

  test('of the plungers of a machine the one that came nearest is shown: for speed the largest', () => {
    const { decision } = model({ ...LID, volume: 690, wall: 3.2, least: 2.8, envelope: [238, 142, 86] });
    const slow = decision.alternatives.find((other) => other.because.includes('of plunger speed'));
    expect(slow?.value).toMatch(/^cold-4000 with plunger 80 mm, 1 cavity/);
  });

  test('of the misses the one that is missed by the least is shown, with all that stands in its way', () => {
    // Aluminium pinned into a hot chamber asks for 78.5 MPa at least; of the plant the 8000 kN machine reaches the most, 32.9 MPa.
    const { ledger, decision } = model({
      ...LID,
      volume: 96,
      area: 128,
      envelope: [150, 90, 60],
      quality: 'use: pressure-tight',
      pinned: { 'machine.kind': 'hot-chamber' },
    });
    expect(decision.because).toContain('nearest miss');
    expect(figure(ledger, 'machine.locking-force')).toBe(8000);
    expect(ledger.text('machine.stopped')).toContain('the metal reaches');
    expect(ledger.decisions.get('machine.plunger')?.because).not.toContain('passes');
    expect(findingsOf(ledger).get('machine/some-fit')?.fix).toContain(ledger.text('machine.needed'));
    const named = decision.alternatives.map(({ value }) => value.split(' ')[0]);
    expect(new Set(named).size).toBe(named.length);
  });

  test('of a part for which every machine is too small the largest is shown', () => {
    const panel = { alloy: 'AlSi10MnMg', volume: 14_000, wall: 3, area: 30_000, envelope: [2400, 1900, 300] } as const;
    const { ledger, decision } = model(panel);
    expect(decision.because).toContain('nearest miss');
    const plant = ledger.plant.machines.map(({ lockingForce }) => lockingForce.value);
    expect(figure(ledger, 'machine.locking-force')).toBe(Math.max(...plant));
  });

  test('where no machine can be worked out, the one is shown whose other limits hold', () => {
    const ledger = workTo('machine', LID, undefined, withoutFigures(rulebook, 'clamp/factor'));
    expect(ledger.decisions.get('machine.model')?.because).toContain('nearest miss');
    expect(ledger.text('machine.stopped')).toMatch(/clamp\/factor/);
    // With a factor the search takes this size too.
    expect(figure(ledger, 'machine.locking-force')).toBeGreaterThan(3000);
    expect(figure(ledger, 'machine.locking-force')).toBeLessThan(10_000);
  });

  test('an oversized machine names what stopped the next smaller one, the smallest of the plant says that it is', () => {
    const wide = workTo('intensification', {
      ...LEVER,
      volume: 9,
      area: 12,
      envelope: [78, 24, 14],
      quality: 'use: loaded',
      pinned: { 'machine.cavities': '6' },
    });
    const next = findingsOf(wide).get('clamp/oversized')?.fix;
    expect(next).toContain('does not fit between tie bars');
    expect(findingsOf(wide).has('clamp/oversized-smallest')).toBe(false);
    const small = findingsOf(workTo('intensification', { ...LEVER, quality: 'use: loaded' }));
    expect(small.has('clamp/oversized')).toBe(false);
    expect(small.get('clamp/oversized-smallest')?.fix).toContain('more cavities than 1');
  });
});

describe('machine hours a year', () => {
  test('go by the size of the machine, rejects included', () => {
    // 45 to 75 shots an hour between 4,000 and 10,000 kN: sqrt(45 x 75) = 58.1. 120,000 parts at 80 % of the hours and 5 % rejects:
    // 120,000 / (58.1 x 0.8 x 0.95) = 2718 h.
    const ledger = workTo('machine', {
      ...LID,
      volume: 690,
      wall: 3.2,
      least: 2.8,
      envelope: [238, 142, 86],
      production: 'per_year: 120000, hours_per_year: 5000',
      pinned: { 'machine.cavities': '1' },
    });
    expect(figure(ledger, 'machine.locking-force')).toBe(5000);
    expect(Math.abs(figure(ledger, 'machine.rate') - 58.1)).toBeLessThan(0.05);
    expect(Math.abs(figure(ledger, 'machine.hours-needed') - 2718)).toBeLessThan(2);
  });

  test('a hot chamber has a pace of its own, magnesium another', () => {
    const one = { 'machine.cavities': '1' };
    const zinc = workTo('machine', { ...LEVER, production: 'per_year: 100000', pinned: one });
    expect(Math.abs(figure(zinc, 'machine.rate') - Math.sqrt(200 * 450))).toBeLessThan(0.01);
    const magnesium = workTo('machine', { ...LEVER, alloy: 'AZ91D', quality: 'use: general', production: 'per_year: 100000', pinned: one });
    expect(Math.abs(figure(magnesium, 'machine.rate') - Math.sqrt(100 * 250))).toBeLessThan(0.01);
  });

  test('the section shows the opening stroke and the machines left once', () => {
    const ledger = workTo('machine', { ...LEVER, production: 'per_year: 100000' });
    const shown = JSON.stringify(machineStep.show(ledger));
    expect(shown.split('die.opening-stroke')).toHaveLength(2);
    expect(shown).not.toContain('parting.opening-need');
  });
});

describe('the pace that the count of cavities is taken at', () => {
  const yearly = { ...LEVER, wall: 3, production: 'per_year: 38000' };
  test('of ZA-12 in a cold chamber is that of aluminium, and says so with its mark', () => {
    const least = workTo('machine', { ...yearly, alloy: 'ZA-12' }).value('machine.shots-least');
    expect([least.value, least.status]).toEqual([40, 'practice']);
    expect(least.note).toContain('printed for aluminium');
  });
  test('of ZA-8 in a hot chamber is that of zinc, and of aluminium that of aluminium', () => {
    expect(figure(workTo('machine', { ...yearly, alloy: 'ZA-8' }), 'machine.shots-least')).toBe(200);
    const own = workTo('machine', { ...LID, production: 'per_year: 38000' }).value('machine.shots-least');
    expect([own.value, own.status, own.note]).toEqual([40, 'source', undefined]);
  });
});
