import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/engine/plan.ts';
import { explain, planPart, readPlantText } from '../../../src/index.ts';
import type { Diagnostic } from '../../../src/kernel/diagnostic.ts';
import { BARE_PLANT, plantWith } from './plant-with.ts';
import { LEVER, partText, rulebook, type SmallPart } from './work-to.ts';

const PART: SmallPart = { ...LEVER, production: 'per_year: 300000, life: 1500000' };
const limits = (...lines: readonly string[]): string => plantWith('limits:', ...lines.map((line) => `  ${line}`));
const plan = (plant: string, more = ''): { plan?: Plan; diagnostics: readonly Diagnostic[] } =>
  planPart({
    part: { name: 'lever.part.yaml', text: partText(PART) + more },
    plant: { name: 'hall.yaml', text: plant },
    rulebook,
    version: '0',
  });
const found = (given: ReturnType<typeof plan>, code: string): Diagnostic | undefined => given.diagnostics.find((one) => one.code === code);
const FIRST = BARE_PLANT.split('\n').length + 1;

describe('a limit of the house on a value', () => {
  const given = plan(limits('cycle.time: { greatest: 5 s, reason: Cells are paced to five seconds }', 'shot.mass: { least: 10 g }'));

  test('that the plan does not keep is a finding with its numbers, its reason, and where it stands', () => {
    const finding = found(given, 'house/cycle.time');
    expect(finding).toMatchObject({
      severity: 'warning',
      rule: `limit of the plant: hall.yaml:${FIRST}`,
      notes: ['Cells are paced to five seconds'],
      values: ['cycle.time'],
    });
    expect(finding?.message).toMatch(/^Cycle time is \d.* s, and the plant allows 5 s at most$/);
    expect(finding?.fix).toContain('until it is 5 s at most');
  });
  test('that it keeps is none', () => {
    expect(found(given, 'house/shot.mass')).toBeUndefined();
    expect(given.plan?.judged).toContainEqual({ id: 'house/shot.mass', outcome: 'pass' });
  });
  test('stands among what the house has changed', () => {
    expect(given.plan?.changes?.map(({ id, file, line, change, reason }) => [id, file, line, change, reason])).toEqual([
      ['house/cycle.time', 'hall.yaml', FIRST, 'added', 'Cells are paced to five seconds'],
      ['house/shot.mass', 'hall.yaml', FIRST + 1, 'added', undefined],
    ]);
  });
  test('can be accepted in the part, whichever plant it is planned with', () => {
    const accepted = 'accepted: [{ code: house/cycle.time, reason: agreed with the hall }]\n';
    expect(found(plan(limits('cycle.time: { greatest: 5 s }'), accepted), 'house/cycle.time')?.accepted?.reason).toBe('agreed with the hall');
    expect(plan(BARE_PLANT, accepted).diagnostics.map(({ code }) => code)).not.toContain('spec/unknown-code');
    expect('text' in explain(rulebook, 'house/cycle.time')).toBe(true);
  });
  test('of both ends, in any unit of the value, and in its own severity', () => {
    const both = plan(limits('cycle.time: { least: 0.5 min, greatest: 1 min, severity: error }'));
    expect(found(both, 'house/cycle.time')).toMatchObject({ severity: 'error', message: expect.stringContaining('the plant allows 0.5 min to 1 min') });
  });
  test('holds for every item of a list', () => {
    const draft = plan(
      limits('wall.draft: { least: 3 deg }'),
      'walls:\n  - { id: W1, side: outside, height: 10 mm, draft: 1 deg }\n  - { id: W2, side: inside, height: 9 mm, draft: 4 deg }\n',
    );
    expect(draft.diagnostics.filter(({ code }) => code === 'house/wall.draft').map(({ item, at }) => [item, at?.path])).toEqual([['W1', 'walls[0].draft']]);
  });
  test('that a plan cannot work out is listed as not judged', () => {
    const open = plan(limits('sleeve.fill: { greatest: 60 % }'));
    expect(open.plan?.unchecked).toContainEqual(expect.objectContaining({ id: 'house/sleeve.fill', missing: 'needs sleeve.fill' }));
  });
  test('takes part in the search: what breaks an error is passed over', () => {
    const free = plan(BARE_PLANT).plan?.values.get('machine.locking-force')?.value as number;
    const held = plan(limits(`machine.locking-force: { greatest: ${free - 1} kN, severity: error }`)).plan;
    expect(held?.values.get('machine.locking-force')?.value).toBeLessThan(free);
    expect(held?.decisions.get('machine.model')?.because).not.toContain('nearest miss');
  });
});

describe('faults of limits, at their line', () => {
  test.each([
    ['clamp.used: { greatest: 85 % }', 'spec/unknown-limit', 'did you mean "clamp.use"?'],
    ['machine.kind: { greatest: 3 }', 'spec/limit-of-text', 'is a word and no number'],
    ['cycle.time: { greatest: 60 mm }', 'spec/wrong-dimension', 'greatest: "60 mm" is a length'],
    ['cycle.time: { greatest: 60 }', 'spec/bare-number', 'greatest:'],
    ['cycle.time: { greatest: soon }', 'spec/not-a-quantity', 'greatest:'],
    ['cycle.time: { least: 2 min, greatest: 60 s }', 'spec/limit-order', 'the least of 2 min is above the greatest of 60 s'],
    ['cycle.time: {}', 'spec/missing-field', 'least or greatest is missing'],
    ['cycle.time: { most: 60 s }', 'spec/unknown-key', '"most"'],
    ['"hole.draft[H1]": { least: 1 deg }', 'spec/limit-form', 'is not the name of a value'],
    ['cycle time: { greatest: 60 s }', 'spec/limit-form', 'is not the name of a value'],
    ['cycle.time: { greatest: 60 s, severity: fatal }', 'spec/unknown-word', '"fatal"'],
    ['__proto__: { greatest: 60 s }', 'spec/limit-form', 'is not the name of a value'],
  ])('%s', (line, code, message) => {
    const faults = readPlantText({ name: 'hall.yaml', text: limits(line) });
    expect(faults.map((fault) => [fault.code, fault.at?.position().line, fault.severity])).toContainEqual([code, FIRST, 'error']);
    expect(faults.find((fault) => fault.code === code)?.message).toContain(message);
    expect(plan(limits(line)).plan).toBeUndefined();
  });
  test('say what to write: a number, or the unit of the value', () => {
    const fixOf = (line: string) => readPlantText({ name: 'hall.yaml', text: limits(line) }).map(({ fix }) => fix);
    expect(fixOf('machine.cavities: { greatest: many }')).toEqual(['write a number']);
    expect(fixOf('cycle.time: { greatest: 60 mm }')).toEqual(['write it in s or another unit of time']);
  });
  test('one figure may be both ends', () => {
    expect(readPlantText({ name: 'hall.yaml', text: limits('cycle.time: { least: 60 s, greatest: 1 min }') })).toEqual([]);
  });
  test('all of them are reported at once', () => {
    const faults = readPlantText({ name: 'hall.yaml', text: limits('clamp.used: { greatest: 85 % }', 'cycle.time: { greatest: 60 mm, least: 1 mm }') });
    expect(faults.map(({ code }) => code)).toEqual(['spec/unknown-limit', 'spec/wrong-dimension', 'spec/wrong-dimension']);
  });
});
