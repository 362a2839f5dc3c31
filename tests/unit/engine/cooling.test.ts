import { describe, expect, test } from 'vitest';
import { calculate } from '../../../src/engine/calculate.ts';
import { coolingStep } from '../../../src/engine/steps/cooling/index.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const coolingOf = (part: SmallPart, pins: Readonly<Record<string, string>> = {}) => workTo('cooling', { ...part, pinned: { ...part.pinned, ...pins } });
const near = (value: number, expected: number, relative = 1e-9): void => expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
const THIN: SmallPart = { alloy: 'AZ91D', volume: 164, wall: 1.8, area: 382, envelope: [248, 172, 34] };

describe('a lid in A380 with water', () => {
  const ledger = coolingOf(LID);
  const at = (id: string): number => figure(ledger, id);

  test('lies as planned', () => {
    expect(ledger.text('cooling.medium')).toBe('water');
    expect([at('cooling.line-diameter'), at('cooling.line-depth'), at('cooling.pitch')]).toEqual([10, 20, 35]);
    near(at('cooling.line-length'), Math.max(at('cooling.field-width'), at('cooling.field-height')) / 1000);
    expect(at('cooling.lines-fit')).toBe(Math.floor(at('cooling.field-across') / 35) + 2 * Math.floor(46 / 35));
  });
  test('the flow is the greater of two and turbulent', () => {
    near(at('cooling.flow'), Math.max(at('cooling.flow-for-reynolds'), at('cooling.flow-for-rise')));
    expect(at('cooling.reynolds')).toBeGreaterThanOrEqual(9999);
    expect(ledger.text('cooling.regime')).toBe('turbulent');
    // At one coolant temperature for both halves a line of the ejector half takes a little more or less than its share.
    expect(at('cooling.rise')).toBeLessThanOrEqual(at('cooling.rise-used') * 1.05);
  });
  test('film and steel are in series, and the steel holds most of the heat back', () => {
    const film = at('cooling.film') * Math.PI * 0.01 * at('cooling.line-length');
    const steel = at('cooling.row-shape-factor') * at('cooling.steel-conductivity');
    near(at('cooling.line-conductance'), 1 / (1 / film + 1 / steel));
    expect(at('cooling.line-conductance') / steel).toBeGreaterThan(0.8);
  });
  test('the halves share the heat of the lines and are laid whole', () => {
    near(at('cooling.rate[ejector half]') + at('cooling.rate[cover half]'), at('heat.lines-rate'));
    for (const half of ['ejector half', 'cover half']) {
      near(at(`cooling.length-needed[${half}]`) * at('cooling.heat-per-length'), 1000 * at(`cooling.rate[${half}]`));
      const lines = at(`cooling.lines[${half}]`);
      expect(lines).toBeLessThanOrEqual(Math.min(Math.ceil(at(`cooling.length-needed[${half}]`) / at('cooling.line-length')), at('cooling.lines-fit')));
      // The fewest that take the heat when they are spread over the field: the steel by its own formula, the film by the bore.
      const takes = (n: number): number => {
        const [pitch, z, d, length] = [Math.max(35, at('cooling.field-across') / n), 20, 10, at('cooling.line-length')];
        const spread = Math.log(pitch / (Math.PI * d)) + (2 * Math.PI * z) / pitch - Math.log(1 - Math.exp((-4 * Math.PI * z) / pitch));
        const steel = spread / (2 * Math.PI * length * at('cooling.steel-conductivity'));
        return (n * (at('cooling.surface') - at('cooling.coolant-least'))) / (steel + 1 / (at('cooling.film') * Math.PI * 0.01 * length));
      };
      expect(takes(lines)).toBeGreaterThanOrEqual(1000 * at(`cooling.rate[${half}]`));
      if (lines > 1) expect(takes(lines - 1)).toBeLessThan(1000 * at(`cooling.rate[${half}]`));
      near(at(`cooling.part-conductance[${half}]`) * (at('cooling.surface') - at('cooling.coolant-least')), takes(lines));
    }
    near(at('cooling.length'), at('cooling.length-laid[ejector half]') + at('cooling.length-laid[cover half]'));
  });
  test('the coolant runs just so warm that all lines take what they are left', () => {
    const running = at('cooling.coolant-temperature');
    near(at('cooling.conductance') * (at('cooling.surface') - running), 1000 * at('heat.lines-rate'), 1e-3);
    expect(running).toBeGreaterThanOrEqual(at('cooling.coolant-least'));
    near(
      at('cooling.running-heat') * at('cooling.lines[ejector half]'),
      at('cooling.part-conductance[ejector half]') * (at('cooling.surface') - running),
      1e-3,
    );
    for (const half of ['ejector half', 'cover half'])
      near(at(`cooling.part-conductance[${half}]`) * (at('cooling.surface') - at(`cooling.part-coolant[${half}]`)), 1000 * at(`cooling.rate[${half}]`), 1e-3);
    expect(at('cooling.wall-temperature')).toBeLessThan(at('cooling.wall-greatest') - 15);
  });
  test('holds a cycle no longer than its elements, and says so', () => {
    expect(at('cooling.cycle-least')).toBeLessThanOrEqual(at('cycle.elements-time'));
    expect(
      [...findingsOf(ledger).keys()].filter((code) =>
        /^cooling\/(short|rise|reynolds|turbulence|boiling|pressure-drop|speed|line-near|line-cracks)/.test(code),
      ),
    ).toEqual([]);
    const shown = JSON.stringify(coolingStep.show(ledger));
    for (const text of ['Lines by the parts of the die', 'The coolant runs at', 'Gnielinski']) expect(shown).toContain(text);
  });
});

test('lines that would make the machine wait lie as near and as close as the rules allow, and others in the middle', () => {
  const usual = coolingOf(LID);
  expect(usual.text('cooling.line-place')).toBe('usual');
  const close = coolingOf(LEVER);
  expect(close.text('cooling.line-place')).toBe('close');
  expect(figure(close, 'cooling.line-depth')).toBe(figure(close, 'cooling.depth-least'));
  const [diameter, depth] = [figure(close, 'cooling.line-diameter'), figure(close, 'cooling.line-depth')];
  expect(figure(close, 'cooling.pitch')).toBe(Math.max(2.5 * diameter, 1.5 * depth));
  // A pinned pitch of the usual place shows what it would have been: fewer lines and a longer cycle.
  const pinned = coolingOf(LEVER, { 'cooling.pitch': '26.25 mm' });
  expect(figure(close, 'cooling.cycle-least')).toBeLessThan(figure(pinned, 'cooling.cycle-least'));
});

test('half the cycle asks for twice the line', () => {
  const [slow, fast] = ['60 s', '30 s'].map((time) =>
    coolingOf(LID, { 'cycle.elements-time': time, 'cooling.surface-excess': '30 K', 'cooling.flow': '10 l/min', 'machine.model': 'cold-4000' }),
  );
  for (const half of ['ejector half', 'cover half'])
    near(figure(fast as never, `cooling.length-needed[${half}]`), 2 * figure(slow as never, `cooling.length-needed[${half}]`));
});

describe('lines that are short of the heat', () => {
  test('run at their coldest, and the cycle waits for them', () => {
    const ledger = coolingOf(LID, { 'cycle.elements-time': '8 s' });
    const least = figure(ledger, 'cooling.cycle-least');
    expect(least).toBeGreaterThan(8);
    expect(figure(ledger, 'cooling.coolant-temperature')).toBeCloseTo(figure(ledger, 'cooling.coolant-least'), 6);
    const finding = findingsOf(ledger).get('cooling/short');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fix).toContain(`${least.toFixed(1)} s`);
  });
  test('at that cycle they are enough', () => {
    const least = figure(coolingOf(LID, { 'cycle.elements-time': '8 s' }), 'cooling.cycle-least');
    const again = coolingOf(LID, { 'cycle.elements-time': `${least} s` });
    near(figure(again, 'cooling.cycle-least'), least, 0.02);
    expect(findingsOf(again).has('cooling/short')).toBe(false);
  });
});

describe('little heat', () => {
  test('one half is worth a part of a line: warmer water, and a note', () => {
    const ledger = coolingOf(LID, { 'cycle.elements-time': '250 s' });
    expect(figure(ledger, 'cooling.lines[cover half]')).toBe(1);
    const finding = findingsOf(ledger).get('cooling/fraction');
    expect(finding?.severity).toBe('note');
    expect(JSON.stringify(coolingStep.show(ledger))).toContain('of a line');
    expect(findingsOf(coolingOf(LID)).has('cooling/fraction')).toBe(false);
  });
  test('so little that water would cool too far: oil', () => {
    const ledger = coolingOf(LID, { 'cycle.elements-time': '110 s', 'heat.share-spray': '85 %' });
    expect(ledger.text('cooling.water-reach')).toBe('no');
    expect(ledger.text('cooling.medium')).toBe('oil');
  });
  test('none at all: hot oil heats the die, hotter than it, with lines for what is missing', () => {
    const ledger = coolingOf(LID, { 'cycle.elements-time': '600 s' });
    expect(ledger.text('cooling.medium')).toBe('oil');
    near(figure(ledger, 'cooling.coolant-temperature'), figure(ledger, 'cooling.surface') + 30);
    near(figure(ledger, 'cooling.rate[ejector half]') + figure(ledger, 'cooling.rate[cover half]'), figure(ledger, 'heat.missing'));
    expect(ledger.values.has('cooling.cycle-least')).toBe(false);
    expect(findingsOf(ledger).has('cooling/short')).toBe(false);
    expect(JSON.stringify(coolingStep.show(ledger))).toContain('Lines that heat the die');
  });
});

describe('the coolant by family', () => {
  test.each([
    ['A380', 'water'],
    ['Zamak 3', 'water'],
    ['AZ91D', 'oil'],
    ['C85800', 'oil'],
  ])('%s: %s', (alloy, medium) => {
    expect(coolingOf({ ...LID, alloy }).text('cooling.medium')).toBe(medium);
  });
  test('water with magnesium is an error with the coolant to pin', () => {
    const finding = findingsOf(coolingOf(THIN, { 'cooling.medium': 'water' })).get('cooling/water-magnesium');
    expect(finding?.severity).toBe('error');
    expect(finding?.fix).toContain('cooling.medium: oil');
    expect(findingsOf(coolingOf(THIN)).has('cooling/water-magnesium')).toBe(false);
  });
  test('oil takes far less heat than water in the same lines', () => {
    const [oil, water] = ['oil', 'water'].map((medium) => coolingOf(LID, { 'cooling.medium': medium }));
    expect(figure(oil as never, 'cooling.heat-per-length')).toBeLessThan(0.6 * figure(water as never, 'cooling.heat-per-length'));
    expect(figure(oil as never, 'cooling.coolant-least')).toBe(150);
  });
  test('a pinned coolant temperature is what the lines are laid out for', () => {
    const ledger = coolingOf(LID, { 'cooling.coolant-temperature': '80 degC' });
    expect([figure(ledger, 'cooling.coolant-least'), figure(ledger, 'cooling.coolant-temperature')]).toEqual([80, 80]);
    expect(figure(ledger, 'cooling.heat-per-length')).toBeLessThan(figure(coolingOf(LID), 'cooling.heat-per-length'));
  });
});

describe('limits, each with the number that helps', () => {
  test('laminar flow is not forced through a turbulent correlation', () => {
    const ledger = coolingOf(LID, { 'cooling.flow': '0.4 l/min' });
    expect(ledger.text('cooling.regime')).toBe('laminar');
    expect(figure(ledger, 'cooling.nusselt')).toBe(3.66);
    near(figure(ledger, 'cooling.friction'), 64 / figure(ledger, 'cooling.reynolds'));
    const findings = findingsOf(ledger);
    expect(findings.get('cooling/reynolds')?.fix).toMatch(/to 1\.\d l\/min/);
    expect(findings.get('cooling/rise')?.severity).toBe('warning');
    expect(findings.has('cooling/boiling')).toBe(true);
    expect(ledger.findings.some(({ code }) => code === 'range/cooling.nusselt-gnielinski')).toBe(false);
  });
  test('flow in the transition is noted', () => {
    expect(findingsOf(coolingOf(LID, { 'cooling.flow': '2.4 l/min' })).has('cooling/turbulence')).toBe(true);
  });
  test('too much flow: pressure and speed', () => {
    const findings = findingsOf(coolingOf(LID, { 'cooling.flow': '60 l/min' }));
    expect(findings.has('cooling/pressure-drop')).toBe(true);
    expect(findings.get('cooling/speed')?.severity).toBe('note');
  });
  test('a line too near the surface, and one that opens into the cavity', () => {
    expect(findingsOf(coolingOf(LID, { 'cooling.line-depth': '13 mm' })).get('cooling/line-near')?.fix).toContain('15.0 mm');
    const findings = findingsOf(coolingOf(LID, { 'cooling.line-depth': '9 mm' }));
    expect(findings.get('cooling/line-cracks')?.severity).toBe('error');
  });
  test('water hotter than an open unit gives it', () => {
    const findings = findingsOf(coolingOf(LID, { 'cooling.coolant-temperature': '130 degC' }));
    expect(findings.get('cooling/pressurised')?.severity).toBe('note');
    expect(findings.has('cooling/boiling')).toBe(false);
    expect(findingsOf(coolingOf(LID, { 'cooling.coolant-temperature': '160 degC', 'cooling.flow': '2 l/min' })).has('cooling/boiling')).toBe(true);
  });
});

test('small zinc brings much heat for its size: more line for its volume than aluminium', () => {
  const [zinc, aluminium] = [coolingOf(LEVER), coolingOf(LID)];
  const needed = (ledger: typeof zinc) => ['ejector half', 'cover half'].reduce((sum, half) => sum + figure(ledger, `cooling.length-needed[${half}]`), 0);
  expect(needed(zinc) / 22).toBeGreaterThan(2 * (needed(aluminium) / 412));
});

describe('by hand: calc', () => {
  const of = (formula: string, given: Readonly<Record<string, string>>) =>
    calculate({ formula, given: Object.entries(given).map(([name, text]) => ({ name, text })) });
  test('the friction factor follows from the Reynolds number when it is not given', () => {
    const { calculation, diagnostics } = of('cooling.nusselt-gnielinski', { reynolds: '30383', prandtl: '4.325' });
    expect(diagnostics).toEqual([]);
    expect(calculation?.value).toBeCloseTo(174.9, 1);
    expect(calculation?.numbers['friction']).toBeCloseTo(0.02357, 5);
  });
  test.each([
    ['true', 247.4004],
    ['yes', 247.4004],
    ['false', 242.9306],
    ['0', 242.9306],
  ])('heating=%s', (heating, expected) => {
    expect(of('cooling.nusselt-dittus-boelter', { reynolds: '1e5', prandtl: '1.2', heating }).calculation?.value).toBeCloseTo(expected, 3);
  });
  test('heating by default, and no other word', () => {
    expect(of('cooling.nusselt-dittus-boelter', { reynolds: '1e5', prandtl: '1.2' }).calculation?.value).toBeCloseTo(247.4004, 3);
    const { calculation, diagnostics } = of('cooling.nusselt-dittus-boelter', { reynolds: '1e5', prandtl: '1.2', heating: 'maybe' });
    expect(calculation).toBeUndefined();
    expect(diagnostics.map(({ code, fix }) => [code, fix])).toEqual([['calc/not-true-or-false', 'write heating=true or heating=false']]);
  });
  test('laminar flow is refused', () => {
    expect(of('cooling.nusselt-gnielinski', { reynolds: '2000', prandtl: '4.3' }).calculation).toBeUndefined();
  });
});
