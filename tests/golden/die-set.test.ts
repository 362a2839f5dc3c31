import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { planDie } from '../../src/die.ts';
import type { Plan } from '../../src/engine/plan.ts';
import { loadRulebook, planPart, type Rulebook } from '../../src/index.ts';
import { DIES, planExample } from './examples.ts';

let rulebook: Rulebook;
const plans = new Map<string, Plan>();
beforeAll(async () => {
  rulebook = await loadRulebook();
  for (const example of DIES) plans.set(example.name, planOf(planExample(example, rulebook).plan));
});

function planOf(plan: Plan | undefined): Plan {
  if (plan === undefined) throw new Error('cannot be planned');
  return plan;
}
const value = (plan: Plan, id: string): number => plan.values.get(id)?.value ?? Number.NaN;
const plan = (name: string): Plan => planOf(plans.get(name));
const member = (name: string, part: string): Plan => planOf(plan(name).parts?.find(({ id }) => id === part)?.plan);

test('the thinnest gate of a die is held against the wall of its own casting, not against the thickest of another', () => {
  // The badge of 2 mm has the thinner gate; the body of 6 mm would take a gate of 4.8 mm.
  const die = plan('pump-parts');
  expect(value(die, 'gate.thickness')).toBe(value(die, 'set.gate-thickness[pump-badge]'));
  expect(value(die, 'intensification.gate-wall')).toBe(2);
  const finding = die.findings.find(({ code }) => code === 'intensification/rise-machine');
  expect(finding?.fix).toMatch(/up to some 1\.60 mm at its wall of 2 mm\.$/);
});

describe('the lamp body with its lid, against a hand calculation', () => {
  // Body 186 cm3 and 168 cm2, lid 74 cm3 and 122 cm2, one of each; alloy of 2.75 kg/dm3.
  const at = (id: string): number => value(plan('lamp-housing'), id);

  test('volume, area and mass of the castings are sums', () => {
    expect(at('part.volume')).toBeCloseTo(186 + 74, 9);
    expect(at('part.projected-area')).toBeCloseTo(168 + 122, 9);
    expect(at('part.mass')).toBeCloseTo(((186 + 74) * at('alloy.density')) / 1000, 9);
  });

  test('the shot is castings, overflows, runner and biscuit', () => {
    const overflows = value(member('lamp-housing', 'lamp-body'), 'overflow.volume') + value(member('lamp-housing', 'lamp-lid'), 'overflow.volume');
    expect(at('overflow.volume')).toBeCloseTo(overflows, 9);
    expect(at('shot.volume')).toBeCloseTo(260 + overflows + at('runner.network-volume') + at('sleeve.biscuit-volume'), 9);
  });

  test('the locking force follows from the pressure over all areas', () => {
    const shares = 1 + (at('runner.area-share') + at('clamp.overflow-share')) / 100;
    const area = 290 * shares + (Math.PI * at('machine.plunger') ** 2) / 400;
    expect(at('clamp.projected-area')).toBeCloseTo(area, 9);
    expect(at('clamp.opening-force')).toBeCloseTo((at('clamp.sizing-pressure') * area) / 10, 9);
    // One slide of 4.2 cm2 at its lock, and the factor of a die with slides.
    const slide = ((at('clamp.sizing-pressure') * 4.2) / 10) * Math.tan((at('slide.lock-angle[S1]') * Math.PI) / 180);
    expect(at('clamp.slide-force-total')).toBeCloseTo(slide, 9);
    expect(at('clamp.locking-force')).toBeCloseTo(at('clamp.factor') * (at('clamp.opening-force') + slide), 9);
  });

  test('the fill time is the shorter of the two, and gates stand to each other as the metal through them', () => {
    const own = ['lamp-body', 'lamp-lid'].map((part) => at(`set.own-time[${part}]`));
    expect(at('fill.time')).toBe(Math.min(...own));
    const flow = (part: string): number => at(`set.flow-volume[${part}]`);
    expect(at('set.gate-area[lamp-body]') / at('set.gate-area[lamp-lid]')).toBeCloseTo(flow('lamp-body') / flow('lamp-lid'), 9);
    for (const part of ['lamp-body', 'lamp-lid']) {
      // Area times velocity times time is the metal that goes through: mm2 * m/s * ms = mm3.
      expect((at(`set.gate-area[${part}]`) * at('gate.velocity') * at('fill.time')) / 1000).toBeCloseTo(flow(part), 9);
      expect(value(member('lamp-housing', part), 'gate.area')).toBe(at(`set.gate-area[${part}]`));
      expect(value(member('lamp-housing', part), 'fill.time')).toBe(at('fill.time'));
    }
    expect(at('gate.area')).toBeCloseTo(at('set.gate-area[lamp-body]') + at('set.gate-area[lamp-lid]'), 9);
  });

  test('the metal goes at one speed in the runs to both', () => {
    const runs = ['lamp-body', 'lamp-lid'].map((part) => at(`runner.segment-speed[run to ${part}]`));
    expect(runs[0]).toBeCloseTo(runs[1] as number, 6);
  });

  test('the pressure centre is that of statics', () => {
    const hangingOut = (): number => (at('die.room-height') > 0 ? (at('die.room-below') * at('die.overhang-height')) / at('die.room-height') : 0);
    const moment = (axis: string): number => 168 * at(`set.place-${axis}[lamp-body]`) + 122 * at(`set.place-${axis}[lamp-lid]`);
    expect(at('set.centre-x')).toBeCloseTo(moment('x') / 290, 9);
    expect(at('set.offset-x')).toBeCloseTo(at('clamp.castings-aside') + moment('x') / at('clamp.projected-area'), 9);
    const biscuit = (Math.PI * at('machine.plunger') ** 2) / 400;
    // The lower edge of the castings lies above the strip of the biscuit and the steel; the runner in between, half way.
    const middle = at('die.room-below') + at('die.feeder-side') + at('die.field-height') / 2 - at('die.breadth') / 2 - hangingOut();
    const runner = (at('clamp.feeder-distance') + at('die.field-height') / 2) / 2;
    const pull = biscuit * at('clamp.feeder-distance') + at('clamp.runner-area') * runner;
    const inDie = middle + (moment('y') - pull) / at('clamp.projected-area');
    const play = (at('die.bars-height') - at('die.breadth')) / 2;
    expect(Math.abs(at('set.offset-y'))).toBeCloseTo(Math.max(0, Math.abs(inDie) - play), 9);
    // Biscuit, pressure centre and die keep their distances: what it stands below the platen's middle, it stands below the die's, and the die hangs lower.
    expect(at('clamp.feeder-below') - (at('clamp.feeder-distance') - middle)).toBeCloseTo(inDie - at('set.offset-y'), 9);
  });

  test('what the castings bear adds up to the cost of the set', () => {
    expect(at('set.cost[lamp-body]') + at('set.cost[lamp-lid]')).toBeCloseTo(at('cost.per-part'), 9);
    expect(at('set.cost[lamp-body]')).toBeGreaterThan(at('set.cost[lamp-lid]'));
  });

  test('the hours of the die are those of both parts by the exponent for cavities', () => {
    const hours = ['lamp-body', 'lamp-lid'].map((part) => at(`set.hours[${part}]`));
    expect(at('cost.die-hours')).toBeCloseTo((((hours[0] as number) + (hours[1] as number)) / 2) * 2 ** at('cost.exponent'), 9);
  });

  test('forces and pins of both are added, and the longest stroke counts', () => {
    for (const id of ['ejection.cavity-force', 'ejection.cavity-force-high', 'ejection.contact-area'])
      expect(at(id)).toBeCloseTo(value(member('lamp-housing', 'lamp-body'), id) + value(member('lamp-housing', 'lamp-lid'), id), 9);
    expect(at('ejection.stroke')).toBe(Math.max(...['lamp-body', 'lamp-lid'].map((part) => value(member('lamp-housing', part), 'ejection.stroke'))));
  });
});

describe('two files of one part against one file with as many cavities', () => {
  const text = readFileSync(join((DIES[0] as (typeof DIES)[number]).folder, '../latch-lever-pair/left-lever.part.yaml'), 'utf8');

  test.each([1, 2, 4])('%i castings of each', (count) => {
    const die = planOf(
      planDie({
        die: {
          name: 'd.die.yaml',
          text: `diewright: die/1\ndie: { name: D }\nparts:\n  - { file: a.part.yaml, count: ${count} }\n  - { file: b.part.yaml, count: ${count} }\n`,
        },
        partText: ({ file }) => ({ name: file.value, text: text.replace('per_year: 900000', `per_year: ${450000}`).replace('life: 4500000', 'life: 2250000') }),
        rulebook,
        version: '0',
      }).plan,
    );
    const pins = `pinned: { machine.cavities: ${2 * count}, machine.model: ${die.texts.get('machine.model')}, machine.plunger: ${value(die, 'machine.plunger')} mm }\n`;
    const one = planOf(planPart({ part: { name: 'a.part.yaml', text: text + pins }, rulebook, version: '0' }).plan);
    const n = 2 * count;
    const same = (id: string, times = 1, tolerance = 1e-9): void =>
      expect(value(die, id) / (value(one, id) * times), `${id}: ${value(die, id)} against ${value(one, id)} * ${times}`).toBeCloseTo(
        1,
        -Math.log10(tolerance) - 0.4,
      );
    for (const id of ['fill.time', 'gate.velocity', 'shot.flow', 'pot.plunger-speed', 'clamp.pressure-reached', 'cooling.ejection-time', 'cooling.thick-time'])
      same(id);
    for (const id of [
      'part.volume',
      'part.mass',
      'part.projected-area',
      'overflow.volume',
      'gate.area',
      'gate.flow-volume',
      'ejection.contact-area',
      'ejection.cavity-pins',
    ])
      same(id, n);
    // Runner pins stand under every casting, feeder pins under the shot.
    same('ejection.pins');
    for (const id of ['ejection.stroke', 'gate.thickness', 'finish.shot-section']) same(id, 1, 1e-6);
    // The hours are those of the rule for alike cavities; the runner and the field are laid out by two roads.
    expect(value(die, 'cost.die-hours')).toBeCloseTo(value(one, 'cost.die-hours') * n ** value(one, 'cost.exponent'), 6);
    for (const id of ['shot.volume', 'clamp.locking-force']) expect(value(die, id) / value(one, id)).toBeGreaterThan(0.75);
    for (const id of ['shot.volume', 'clamp.locking-force']) expect(value(die, id) / value(one, id)).toBeLessThan(1.35);
    expect(value(die, 'set.cost[a]')).toBeCloseTo(value(die, 'set.cost[b]'), 9);
    expect(value(die, 'set.cost[a]') / value(one, 'cost.per-part')).toBeGreaterThan(0.85);
    expect(value(die, 'set.cost[a]') / value(one, 'cost.per-part')).toBeLessThan(1.15);
    expect(value(die, 'set.wall-ratio')).toBe(1);
    // Each part has its own estimate of pores, of the gas that the shot leaves; its share of the runner is laid out by another road.
    const part = planOf(die.parts?.[0]?.plan);
    for (const id of ['porosity.unfed-low', 'porosity.unfed-high', 'porosity.trapped-low']) expect(value(part, id) / value(one, id), id).toBeCloseTo(1, 3);
    for (const id of ['porosity.gas-high', 'porosity.content-high[vented]']) {
      expect(value(part, id) / value(one, id), id).toBeGreaterThan(0.75);
      expect(value(part, id) / value(one, id), id).toBeLessThan(1.35);
    }
  });
});

describe('the words of a plan of a die', () => {
  const title = (of: Plan, id: string): string | undefined => of.titles.get(id);

  test('what is of a cavity in other plans is of all castings of the shot', () => {
    const die = plan('latch-lever-pair');
    for (const text of die.titles.values()) expect(text).not.toMatch(/\b(of|from|into) one cavity\b|, one cavity$/);
    expect(title(die, 'vent.area')).toBe('Vent area of all castings');
    expect(title(die, 'cycle.gross-parts')).toBe('Sets an hour');
    expect(title(die, 'metal.new-per-part')).toBe('New metal for a good set');
    expect(title(die, 'set.ejection-force[left-lever]')).toContain('one casting');
    expect(title(die, 'runner.area')).toBe('Runner area at the gate, whole shot');
    expect(title(die, 'ejection.runner-pins')).toBe('Pins on the runner of one casting');
  });

  test('the force of the castings of one part is not called that of the shot, and pins of the die are none of a part', () => {
    const left = member('latch-lever-pair', 'left-lever');
    expect(title(left, 'ejection.force')).toBe('Ejection force of all castings of the part');
    expect(value(left, 'ejection.force')).toBeCloseTo(4 * value(left, 'ejection.cavity-force'), 9);
    expect(left.values.has('ejection.pins')).toBe(false);
    // 8 castings with 7 pins, 2 overflows with a pin each and 2 pins on the runner, and 1 on the sprue.
    expect(value(plan('latch-lever-pair'), 'ejection.pins')).toBe(8 * (7 + 2 * 1 + 2) + 1);
  });
});

describe('what does not go together is said', () => {
  const codes = (name: string): string[] => plan(name).findings.map(({ code }) => code);

  test('a thick body and a thin badge: fill times, walls, volumes, numbers, pressure', () => {
    expect(codes('pump-parts')).toEqual(expect.arrayContaining(['set/fill-times', 'set/walls', 'set/volumes', 'set/demand', 'set/pressure']));
    const found = plan('pump-parts').findings.find(({ code }) => code === 'set/demand');
    expect([found?.item, found?.at?.source.name, found?.at?.position().line]).toEqual(['pump-badge', 'pump-parts.die.yaml', 6]);
  });

  test('left and right hand of one part have nothing to be said of', () => {
    expect(codes('latch-lever-pair').filter((code) => code.startsWith('set/'))).toEqual([]);
    expect(codes('lamp-housing').filter((code) => code.startsWith('set/'))).toEqual([]);
  });

  test('no plan of a part alone judges what only a die of several has', () => {
    const { plan: alone } = planPart({
      part: { name: 'a.part.yaml', text: readFileSync(join((DIES[0] as (typeof DIES)[number]).folder, 'lamp-lid.part.yaml'), 'utf8') },
      rulebook,
      version: '0',
    });
    expect(alone?.judged.filter(({ id }) => id.startsWith('set/'))).toEqual([]);
    expect(alone?.unchecked.filter(({ id }) => id.startsWith('set/'))).toEqual([]);
  });
});
