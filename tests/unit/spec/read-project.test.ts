import { describe, expect, test } from 'vitest';
import { readProject } from '../../../src/spec/read-project.ts';
import { STARTER_PROJECT } from '../../../src/spec/starters.ts';

const GOOD = `diewright: project/1
plant: plants/hall-2.yaml
rules: [house-rules, ../shared/rules]
fail_on: warning
adjusted:
  - { rule: clamp/oversized, severity: off, reason: The cells are bought as they are }
  - rule: vent/room
    severity: error
    reason: >-
      No die leaves the shop
      without room for its vents
`;

const read = (text: string) => readProject({ name: '../diewright.yaml', text });

describe('a project file', () => {
  test('the good one, with the place of each setting', () => {
    const { project, diagnostics } = read(GOOD);
    expect(diagnostics).toEqual([]);
    expect(project?.plant?.value).toBe('plants/hall-2.yaml');
    expect(project?.rules?.map(({ value, at }) => [value, at.position().line, at.position().column])).toEqual([
      ['house-rules', 3, 9],
      ['../shared/rules', 3, 22],
    ]);
    expect(project?.failOn?.value).toBe('warning');
    expect(project?.adjusted.map(({ rule, severity, reason, at }) => [rule, severity, reason, at.position().line])).toEqual([
      ['clamp/oversized', 'off', 'The cells are bought as they are', 6],
      ['vent/room', 'error', 'No die leaves the shop without room for its vents', 7],
    ]);
  });

  test('the least one, and the starter as it is and with its lines taken in', () => {
    expect(read('diewright: project/1\n')).toMatchObject({ diagnostics: [], project: { adjusted: [] } });
    expect(read(STARTER_PROJECT).project?.failOn?.value).toBe('error');
    const all = STARTER_PROJECT.replace(/^# (plant|rules|adjusted):/gm, '$1:').replace(/^# {3}- /gm, '  - ');
    expect(read(all)).toMatchObject({ diagnostics: [], project: { plant: { value: 'plant.yaml' }, adjusted: [{ rule: 'clamp/oversized' }] } });
  });

  test.each([
    ['no first line', 'diewright: project/1\n', '', 'wrong-format', 1, 1],
    ['another kind of file', 'diewright: project/1', 'diewright: plant/1', 'wrong-format', 1, 12],
    ['a later version', 'project/1', 'project/2', 'wrong-format', 1, 12],
    ['an unknown key, the nearest named', 'fail_on:', 'fail-on:', 'unknown-key', 4, 1],
    ['a key of a plant file', 'fail_on: warning', 'machines: []', 'unknown-key', 4, 1],
    ['one text for the list of folders', 'rules: [house-rules, ../shared/rules]', 'rules: house-rules', 'wrong-type', 3, 8],
    ['a mapping for the plant', 'plant: plants/hall-2.yaml', 'plant: { name: Hall }', 'wrong-type', 2, 8],
    ['an unknown threshold', 'fail_on: warning', 'fail_on: warnings', 'unknown-word', 4, 10],
    ['an unknown severity', 'severity: off', 'severity: none', 'unknown-word', 6, 40],
    ['a severity that YAML reads as true or false', 'severity: off', 'severity: false', 'wrong-type', 6, 40],
    ['no reason', ', reason: The cells are bought as they are', '', 'missing-field', 6, 5],
    ['an empty reason', 'reason: The cells are bought as they are', "reason: ' '", 'missing-field', 6, 53],
    ['a reason without words', 'reason: The cells are bought as they are', 'reason:', 'missing-field', 6, 45],
    ['no rule', 'rule: clamp/oversized, ', '', 'missing-field', 6, 5],
    ['an unknown key of an adjustment', 'severity: off', 'severty: off', 'unknown-key', 6, 30],
    ['a key twice', 'fail_on: warning', 'plant: x', 'duplicate-key', 4, 1],
    ['no YAML', 'plant: plants/hall-2.yaml', 'plant: "plants', 'yaml-syntax', 2, 8],
  ])('%s', (_, from, to, code, line, column) => {
    const { project, diagnostics } = read(GOOD.replace(from, to));
    expect(project).toBe(undefined);
    expect(diagnostics.map((d) => `${d.code} ${d.at?.position().line}:${d.at?.position().column}`)).toEqual([`spec/${code} ${line}:${column}`]);
    expect(diagnostics[0]?.message).not.toMatch(/undefined|\[object|Invalid input/);
  });

  test('all faults at once', () => {
    const { diagnostics } = read(GOOD.replace('fail_on: warning', 'fail_on: no').replace('severity: off', 'severity: of').replace('plant:', 'plnt:'));
    expect(diagnostics.map((d) => [d.code, d.at?.position().line])).toEqual([
      ['spec/unknown-key', 2],
      ['spec/unknown-word', 4],
      ['spec/unknown-word', 6],
    ]);
  });
});
