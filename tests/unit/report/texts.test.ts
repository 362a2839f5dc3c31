import { describe, expect, test } from 'vitest';
import { calculate } from '../../../src/engine/calculate.ts';
import type { Alloy, Limit, Table } from '../../../src/engine/rule-data.ts';
import { alloyText } from '../../../src/report/alloy-text.ts';
import { alignRows, columnsOf } from '../../../src/report/columns.ts';
import { calculationJson, calculationText, formulaText } from '../../../src/report/formula-text.ts';
import { explainInPlan, limitInPlan } from '../../../src/report/in-plan-text.ts';
import { listJson, listText } from '../../../src/report/list-text.ts';
import { limitText } from '../../../src/report/rule-text.ts';
import { tableText } from '../../../src/report/table-text.ts';
import { FORCE, handMade } from './hand-made.ts';

const LIMIT: Limit = {
  id: 'test/force',
  title: 'Force stays small',
  uses: [
    { name: 'f', id: 'test.force', unit: 'kN' },
    { name: 'family', id: 'alloy.family' },
  ],
  when: 'true',
  require: 'f <= 500.0',
  severity: 'error',
  message: 'Too much',
  why: 'It opens.',
  fix: 'Take less.',
  status: 'practice',
  source: [],
  examples: [
    { given: { f: 400, family: 'zinc' }, holds: true },
    { given: { f: 600, family: 'zinc' }, holds: false },
  ],
};

describe('formulas', () => {
  test('a formula prints equation, inputs with unit and range, source and a call to fill in', () => {
    const text = formulaText(FORCE as never);
    expect(text).toContain('test.force: Force\n');
    expect(text).toMatch(/formula +F = p \* A \/ 10\n/);
    expect(text).toMatch(/pressure {2}p {2}MPa {2}1 to 100 MPa +pressure\n/);
    expect(text).toMatch(/source +KEY-A table 3\n/);
    expect(text).toContain('diewright calc test.force pressure="NUMBER MPa" area="NUMBER cm2"');
  });

  // 768 cm3 through 45 m/s in 50 ms: A = V / (v t) = 768e-6 / (45 * 0.05) m2 = 341.3 mm2, by hand.
  const gate = {
    formula: 'gate.area',
    given: [
      { name: 'volume', text: '768 cm3' },
      { name: 'velocity', text: '45 m/s' },
      { name: 'time', text: '50 ms' },
    ],
  };

  test('a calculation prints the numbers put in, and its JSON has all digits', () => {
    const { calculation, diagnostics } = calculate(gate);
    if (calculation === undefined) throw new Error('no result');
    expect(diagnostics).toEqual([]);
    expect(calculationText(calculation)).toMatch(/with numbers +A_g = 1000 \* 768 \/ \(45 \* 50\) = 341 mm2\n/);
    const json = JSON.parse(calculationJson(calculation));
    expect(Object.keys(json)).toEqual(['id', 'value', 'unit', 'substitution', 'source', 'status', 'range']);
    expect(json.value).toBeCloseTo(341.3333, 4);
    expect(json).toMatchObject({ id: 'gate.area', unit: 'mm2', range: 'inside' });
  });

  test('the result comes in the unit asked for, and the substitution stays in its own', () => {
    const { calculation } = calculate({ ...gate, unit: 'cm²' });
    expect(calculation?.value).toBeCloseTo(3.413333, 6);
    expect(calculationText(calculation as never)).toMatch(/= 341 mm2\n +result +3.41 cm2\n/);
  });

  test('all that is wrong with a request is named together', () => {
    const { calculation, diagnostics } = calculate({
      formula: 'gate.area',
      given: [
        { name: 'velocty', text: '45 m/s' },
        { name: 'time', text: '50 mm' },
        { name: 'time', text: '50 ms' },
      ],
      unit: 'kg',
    });
    expect(calculation).toBeUndefined();
    expect(diagnostics.map((d) => d.code)).toEqual([
      'calc/unknown-input',
      'calc/wrong-dimension',
      'calc/input-twice',
      'calc/missing-input',
      'calc/missing-input',
      'calc/wrong-result-unit',
    ]);
    expect(diagnostics[0]?.message).toContain('did you mean "velocity"?');
  });

  test('every value outside the range is named; a formula that goes on still gives its result', () => {
    const { calculation, diagnostics } = calculate({
      formula: 'clamp.opening-force',
      given: [
        { name: 'pressure', text: '500 MPa' },
        { name: 'area', text: '4 m2' },
      ],
    });
    expect(diagnostics.map((d) => d.code)).toEqual(['range/clamp.opening-force', 'range/clamp.opening-force']);
    expect(calculation?.range).toBe('extrapolated');
  });

  test('an impossible value gives no result and is said once', () => {
    const { calculation, diagnostics } = calculate({
      formula: 'clamp.opening-force',
      given: [
        { name: 'pressure', text: '-5 MPa' },
        { name: 'area', text: '100 cm2' },
      ],
    });
    expect(calculation).toBeUndefined();
    expect(diagnostics).toHaveLength(1);
  });

  test('an unknown formula names the near ones', () => {
    expect(calculate({ formula: 'gate.aera', given: [] }).diagnostics[0]?.message).toContain('gate.area');
  });
});

describe('rule data', () => {
  test('a limit prints its condition, its reason and both kinds of example', () => {
    const text = limitText(LIMIT);
    expect(text).toMatch(/uses +f = test.force in kN\n +family = alloy.family\n/);
    expect(text).toMatch(/applies when +always\n/);
    expect(text).toMatch(/holds for +f = 400, family = zinc\n/);
    expect(text).toMatch(/broken by +f = 600, family = zinc\n/);
    expect(text).toMatch(/source +common practice\n/);
  });

  test('a table signs each figure that is not from a source, and keeps remarks and notes', () => {
    const table: Table = {
      id: 'test/t',
      title: 'T',
      about: 'A table.',
      axes: [
        { name: 'family', kind: 'word', values: ['zinc', 'tin'] },
        { name: 'area', kind: 'number', unit: 'cm2', reading: 'up-to', outside: 'refuse' },
      ],
      gives: [{ name: 'least', unit: 'mm', meaning: 'least wall' }],
      rows: [
        { at: { family: 'zinc', area: 25 }, cells: { least: { value: 0.5, status: 'source', source: ['KEY-A'] } } },
        { at: { family: 'zinc', area: Number.POSITIVE_INFINITY }, cells: { least: { value: 2, status: 'memory', source: [], note: 'remembered' } } },
        { at: { family: 'tin', area: 25 }, cells: { least: null } },
      ],
      notes: ['A doubt.'],
    };
    const text = tableText(table);
    expect(text).toMatch(/family {2}area {3}least\n +zinc +25 +0.5\n +zinc +above +2 m \[1\]\n +tin +25 +–\n/);
    expect(text).toMatch(/signs +m: from memory, unverified\n/);
    expect(text).toMatch(/remarks +\[1\] remembered\n/);
    expect(text).toMatch(/notes +A doubt.\n/);
    expect(text).toMatch(/source +KEY-A\n +from memory, unverified\n/);
  });

  test('an alloy shows near designations as near, figures in dispute, and limits that have one end', () => {
    const alloy: Alloy = {
      id: 'X1',
      family: 'zinc',
      name: 'X1',
      designations: [
        { system: 'AA', code: 'X1.0' },
        { system: 'JIS', code: 'Y', near: true },
      ],
      chamber: { allows: ['hot', 'cold'], status: 'source', source: ['KEY-A'] },
      composition: { unit: 'wt %', balance: 'Zn', limits: { Al: [3.9, 4.3], Fe: [0, 0.1], Mg: [0.02, null] }, status: 'source', source: ['KEY-A'] },
      properties: {
        density: { value: 6.6, unit: 'g/cm3', status: 'source', source: ['KEY-A'], others: [{ value: 6.7, source: ['KEY-B'] }] },
        casting_temperature: { least: 400, greatest: 430, unit: 'degC', status: 'memory', source: [] },
      },
      ratings: { status: 'memory', source: [], scale: '1 best', hot_cracking: 2 },
      notes: [],
    };
    const text = alloyText(alloy);
    expect(text).toContain('JIS Y (near, not the same)');
    expect(text).toMatch(/Al {2}3.9 to 4.3 +wt %\n +Fe {2}up to 0.1 +wt %\n +Mg {2}0.02 or more +wt %\n/);
    expect(text).toMatch(/casting temperature {2}400 to 430 degC {2}from memory, unverified\n/);
    expect(text).toContain('density 6.7 g/cm3 (KEY-B)');
    expect(text).toContain('hot cracking 2');
  });
});

describe('in a plan', () => {
  test('a limit shows how it came out and the values it was held against', () => {
    expect(limitInPlan(handMade(), LIMIT)).toBe(
      'test/force in cover.part.yaml\n  verdict  broken\n           f = test.force = 720 kN\n           family = alloy.family = aluminium\n           Too much\n           do: Take less.\n  here     active, as built in\n',
    );
  });

  test('a limit per item names the items; a part without such items says so', () => {
    const perHole: Limit = { ...LIMIT, id: 'test/hole', each: 'hole', uses: [{ name: 'd', id: 'hole.diameter', unit: 'mm' }] };
    expect(limitInPlan(handMade(), perHole)).toMatch(/H1 +broken\n +d = hole.diameter\[H1\] = 8.5 mm\n/);
    expect(limitInPlan(handMade({ judged: [] }), perHole)).toContain('the part has no hole');
  });

  test('a limit that could not be judged says what is missing', () => {
    const open = handMade({
      judged: [{ id: 'test/force', outcome: 'open' }],
      findings: [],
      unchecked: [{ id: 'test/force', title: 'F', missing: 'needs test.q' }],
    });
    expect(limitInPlan(open, LIMIT)).toMatch(/could not be judged\n(.*\n)*.*needs test.q\n/);
  });

  test('an id shows its decision and its value; a name without item shows every item', () => {
    expect(explainInPlan(handMade(), 'machine.cavities')).toMatch(/taken +2\n(.*\n)*machine.cavities = 2/);
    expect(explainInPlan(handMade(), 'hole.diameter')).toContain('hole.diameter[H1] = 8.5 mm');
    expect(explainInPlan(handMade(), 'alloy.family')).toContain('alloy.family = aluminium');
    expect(explainInPlan(handMade(), 'nothing.here')).toBeUndefined();
  });
});

describe('lists', () => {
  const listing = {
    columns: ['id', 'words'],
    rows: [
      { id: 'a', words: ['x', 'y'] },
      { id: '日本', words: 'z' },
    ],
  };

  test('columns line up by what a terminal shows, without space at the end of a line', () => {
    expect(listText(listing)).toBe('id    words\na     x, y\n日本  z\n');
    expect(JSON.parse(listJson(listing))).toEqual(listing.rows);
  });

  test('widths: wide characters two, marks none', () => {
    expect([columnsOf('ab'), columnsOf('日本'), columnsOf('e\u0301'), columnsOf('ｱ'), columnsOf('！'), columnsOf('👍')]).toEqual([2, 4, 1, 1, 2, 2]);
    expect(
      alignRows([
        ['a', 'b'],
        ['ccc', ''],
      ]),
    ).toEqual(['a    b', 'ccc']);
  });
});
