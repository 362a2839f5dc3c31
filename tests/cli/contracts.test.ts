import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EXAMPLES } from '../golden/examples.ts';
import { CONTRACT_FORMULAS, CONVERTED, type ContractFormula, SPELLED } from './contracts/formulas.ts';
import { runHere } from './run-here.ts';

const call = (id: string, inputs: Readonly<Record<string, string>>): string[] => [
  'calc',
  id,
  ...Object.entries(inputs).map(([name, text]) => `${name}=${text}`),
];
const calcJson = async (args: readonly string[]) => {
  const { code, out, err } = await runHere([...args, '--json']);
  expect([code, err], args.join(' ')).toEqual([0, '']);
  return JSON.parse(out) as Record<string, unknown> & { value: number; unit: string; substitution: string };
};
const same = (a: number, b: number, within = 1e-9): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(within * Math.abs(b));

describe('calc, every formula of the contract', () => {
  test.each(CONTRACT_FORMULAS)('$id', async (formula: ContractFormula) => {
    const args = call(formula.id, formula.inputs);
    const { code, out, err } = await runHere(args);
    expect([code, err]).toEqual([0, '']);

    const json = await calcJson(args);
    expect(Object.keys(json).sort()).toEqual(['id', 'range', 'source', 'status', 'substitution', 'unit', 'value']);
    expect([json['id'], json.unit, json['range']]).toEqual([formula.id, formula.unit, 'inside']);
    expect(['source', 'derived', 'practice', 'memory']).toContain(json['status']);
    same(json.value, formula.value, formula.within);

    // Symbol and equation, the equation with numbers, the result and the source, each under its label.
    const label = (name: string): RegExp => new RegExp(`^ {2}${name} {2,}(\\S.*)$`, 'm');
    const equation = label('formula').exec(out)?.[1] ?? '';
    const [, symbol, relation] = /^([A-Za-z]\w*) (=|by time steps of) \S/.exec(equation) ?? [];
    const substitution = json.substitution.split('\n');
    for (const line of substitution) expect(out).toContain(line);
    const result = label('result').exec(out)?.[1] ?? '';
    expect(result).toMatch(new RegExp(`^-?[0-9.e+]+${formula.unit === '1' ? '' : ` ${formula.unit.replace(/[()/]/g, '\\$&')}`}$`));
    const last = substitution.at(-1) ?? '';
    expect(last.startsWith(`${symbol} = `)).toBe(true);
    if (relation === '=') expect(last.endsWith(` = ${result}`)).toBe(true);
    else expect(last).toBe(`${symbol} = ${result} by time steps`);
    expect(label('source').test(out)).toBe(true);

    const [unit, times] = CONVERTED[formula.unit] ?? ['', Number.NaN];
    const converted = await calcJson([...args, '--in', unit]);
    same(converted.value, json.value * times);
    expect((await runHere([...args, '--in', unit])).out).toMatch(label('result'));
  });

  test('input names are those of the contract, and nothing but a default beside them', async () => {
    const rows = JSON.parse((await runHere(['list', 'formulas', '--json'])).out) as { id: string; inputs: string[] }[];
    for (const { id, inputs, defaults = [] } of CONTRACT_FORMULAS) {
      const listed = rows.find((row) => row.id === id)?.inputs ?? [];
      const names = listed.map((text) => text.split(' ')[0] as string);
      expect([...names].sort(), id).toEqual([...new Set([...Object.keys(inputs), ...defaults])].sort());
      for (const name of defaults)
        expect(
          listed.find((text) => text.startsWith(name)),
          `${id} ${name}`,
        ).toMatch(/\(.+\)$/);
    }
  });

  test.each(SPELLED)('$id: $input in every spelling', async ({ id, input, texts }) => {
    const formula = CONTRACT_FORMULAS.find((candidate) => candidate.id === id) as ContractFormula;
    const first = texts[0] as string;
    const expected = (await calcJson(call(id, { ...formula.inputs, [input]: first }))).value;
    for (const text of texts) same((await calcJson(call(id, { ...formula.inputs, [input]: text }))).value, expected, 1e-8);
  });
});

describe('calc, bad input', () => {
  test.each(['tf', 't', 'ton', 'tons'])('a force in %s is refused with a question back', async (unit) => {
    const { code, out, err } = await runHere(['calc', 'clamp.locking-force', `opening_force=360 ${unit}`, 'slide_force=0 kN', 'factor=1.1']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('[calc/ambiguous-unit]');
    expect(err).toMatch(/metric .*9\.807 kN.* or US .*8\.896 kN.*\?/);
    // 360 x 9.80665 and 360 x 8.896443, so that either answer can be typed.
    expect(err).toContain('3530.4 kN');
    expect(err).toContain('3202.7 kN');
  });

  test('missing, unknown, wrong unit and out of range in one answer', async () => {
    const { code, out, err } = await runHere(['calc', 'gate.area', 'volume=768 mm', 'velocity=450 m/s', 'tme=50 ms']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/"768 mm" is a length, but a volume is wanted \[calc\/wrong-dimension\]/);
    expect(err).toMatch(/velocity = 450 m\/s lies outside 0\.2 to 100 m\/s.* \[range\/gate\.area\]/);
    expect(err).toMatch(/no input "tme"; did you mean "time"\? \[calc\/unknown-input\]/);
    expect(err).toMatch(/time is missing: .* \[calc\/missing-input\]/);
    expect(err).toContain('4 errors');
  });

  test('out of range alone prints the result beside the finding and still counts as bad input', async () => {
    const { code, out, err } = await runHere(['calc', 'gate.area', 'volume=768 cm3', 'velocity=450 m/s', 'time=50 ms', '--json']);
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject({ range: 'extrapolated', value: expect.closeTo(34.13, 2) });
    expect(err).toContain('[range/gate.area]');
  });
});

/** What every plan has, by the contract; `in` where it holds for one kind of machine only. */
const DECISIONS = [
  'machine.kind',
  'machine.model',
  'machine.cavities',
  'machine.plunger',
  'parting.die-opening',
  'parting.core-pulls',
  'vent.kind',
  'cooling.medium',
  'die.cavity-steel',
];
const VALUES: readonly (readonly [id: string, unit: string, kind?: RegExp])[] = [
  ['clamp.opening-force', 'kN'],
  ['clamp.locking-force', 'kN'],
  ['clamp.projected-area', 'cm2'],
  ['shot.volume', 'cm3'],
  ['shot.mass', 'kg'],
  ['fill.time', 'ms'],
  ['fill.longest-time', 'ms'],
  ['gate.velocity', 'm/s'],
  ['gate.area', 'mm2'],
  ['overflow.volume', 'cm3'],
  ['vent.area', 'mm2'],
  ['sleeve.fill', '%', /^cold-chamber/],
  ['draft.least-inside', 'deg'],
  ['draft.least-outside', 'deg'],
  ['cooling.dwell', 's'],
  ['cycle.time', 's'],
  ['ejection.force', 'kN'],
  ['cost.per-part', '1'],
];

type Json = Record<string, unknown>;

describe.each(EXAMPLES)('$name, plan.json', ({ folder }) => {
  const plan = JSON.parse(readFileSync(join(folder, 'plan.json'), 'utf8')) as Record<string, Json> & { findings: Json[]; unverified: string[] };
  const decisions = plan['decisions'] as Record<string, Json>;
  const values = plan['values'] as Record<string, Json>;
  const kind = String(decisions['machine.kind']?.['value']);

  test('has the keys of the contract', () => {
    const keys = ['format', 'tool', 'part', 'alloy', 'decisions', 'values', 'sections', 'findings', 'cautions', 'unchecked', 'unverified'];
    expect(Object.keys(plan)).toEqual(expect.arrayContaining(keys));
    expect(plan['format']).toBe('plan/1');
    expect(Object.keys(plan['tool'] as Json)).toEqual(['name', 'version']);
    for (const [id, decision] of Object.entries(decisions)) {
      expect(Object.keys(decision), id).toEqual(expect.arrayContaining(['value', 'because', 'source', 'alternatives']));
      expect(String(decision['because']).length, id).toBeGreaterThan(3);
    }
    for (const [id, value] of Object.entries(values)) {
      expect(Object.keys(value), id).toEqual(expect.arrayContaining(['value', 'unit', 'kind', 'parents', 'source', 'status', 'range']));
      expect(value['kind'] === 'formula', id).toBe(value['formula'] !== undefined);
    }
    for (const finding of plan.findings) {
      expect(Object.keys(finding)).toEqual(expect.arrayContaining(['code', 'severity', 'message', 'values']));
      expect(finding['code']).toMatch(/^[a-z][a-z0-9-]*\/[a-z0-9./-]+$/);
      expect(['error', 'warning', 'note']).toContain(finding['severity']);
      if (finding['at'] !== undefined) expect(Object.keys(finding['at'] as Json)).toEqual(['file', 'line', 'column']);
      for (const id of finding['values'] as string[]) expect(id in values || id in (plan['texts'] as Json), id).toBe(true);
    }
    for (const id of plan.unverified) expect(values[id]?.['status'], id).toBe('memory');
    expect(plan.unverified).toHaveLength(Object.values(values).filter((value) => value['status'] === 'memory').length);
  });

  test('has the decisions that every plan has', () => {
    for (const id of DECISIONS) expect(decisions[id], id).toBeDefined();
    expect(['hot-chamber', 'cold-chamber', 'cold-chamber-vertical-shot']).toContain(kind);
    expect(['plain', 'chill', 'vacuum']).toContain(decisions['vent.kind']?.['value']);
    for (const id of ['parting.core-pulls', 'machine.cavities', 'machine.plunger']) expect(typeof decisions[id]?.['value'], id).toBe('number');
  });

  test('has the values that every plan has, in their units', () => {
    for (const [id, unit, only] of VALUES) {
      if (only !== undefined && !only.test(kind)) expect(values[id], id).toBeUndefined();
      else expect(values[id], id).toMatchObject({ unit, value: expect.any(Number) });
    }
  });
});
