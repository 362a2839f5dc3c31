import type { Plan } from '../../../src/engine/plan.ts';
import { weakFigures } from '../../../src/engine/weak.ts';
import { applyFormula } from '../../../src/kernel/apply.ts';
import { defineFormula } from '../../../src/kernel/formula.ts';
import { Place, type SourceText } from '../../../src/kernel/place.ts';
import { Traced } from '../../../src/kernel/traced.ts';

export const SOURCE: SourceText = {
  name: 'cover.part.yaml',
  text: 'diewright: part/1\npart: { name: Cover }\nalloy: A380\nholes:\n  - { id: H1, diameter: 8.5 mm }\n',
};

export function placeOf(word: string, path = 'somewhere'): Place {
  const start = SOURCE.text.indexOf(word);
  if (start < 0) throw new Error(`${word} is not in the text`);
  return new Place(SOURCE, path, () => [start, start + word.length]);
}

/** A formula of the test's own, so that no number of the catalogue is needed. */
export const FORCE = defineFormula({
  id: 'test.force',
  title: 'Force',
  symbol: 'F',
  inputs: {
    pressure: { symbol: 'p', unit: 'MPa', meaning: 'pressure', range: [1, 100] },
    area: { symbol: 'A', unit: 'cm2', meaning: 'area', range: [1, 1000] },
  },
  unit: 'kN',
  equation: 'p * A / 10',
  outside: 'extrapolate',
  source: ['KEY-A table 3'],
  status: 'source',
  accuracy: 'exact',
  compute: ({ pressure, area }) => (pressure * area) / 10,
});

export const DOUBLE = defineFormula({
  id: 'test.double',
  title: 'Sum of a force and itself',
  symbol: 'S',
  inputs: {
    one: { symbol: 'F_1', unit: 'kN', meaning: 'a force', range: [0, 1e6] },
    other: { symbol: 'F_2', unit: 'kN', meaning: 'a force', range: [0, 1e6] },
  },
  unit: 'kN',
  equation: 'F_1 + F_2',
  outside: 'refuse',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ one, other }) => one + other,
});

export const pressure = Traced.table('test.pressure', 60, 'MPa', { table: 'test/pressure', source: [], status: 'memory', note: 'middle of the class' });
export const area = Traced.input('test.area', 120, 'cm2', { at: placeOf('A380'), written: '120 cm2', source: 'PART' });
export const force = applyFormula(FORCE, { pressure, area }).result;
export const double = applyFormula(DOUBLE, { one: force, other: force }).result;
export const cavities = Traced.choice('machine.cavities', 2, '1', { note: 'two fit', status: 'practice' });
export const factor = Traced.assumption('test.factor', 1.1, '1', { note: 'usual reserve', status: 'practice' });
export const unfiled = Traced.table('test.unfiled', 3, 'mm', { table: 'test/other', source: ['KEY-B'], status: 'source' });
export const stroke = Traced.choice('test.stroke', 9, 'mm', { note: 'by the depth', status: 'derived', parents: [unfiled] });
export const diameter = Traced.input('hole.diameter[H1]', 8.5, 'mm', { at: placeOf('8.5 mm', 'holes[0].diameter'), written: '8.5 mm', source: 'PART' });

/** A name with every sign that Markdown, GitHub, HTML or a terminal could act on. */
export const NASTY = 'A|B *x* _y_ <b>bold</b> &amp; [l](u) ~s~ $m$ `c` \u001b[31mred\u202e';

export function handMade(changes: Partial<Plan> = {}): Plan {
  const values = new Map([pressure, area, force, double, cavities, factor, stroke, diameter].map((value) => [value.id, value as Traced]));
  return {
    tool: { name: 'diewright', version: '9.9.9' },
    standing: { status: 'First-pass estimate', reviewers: ['a tooling engineer'], hold: 'No shot before the checks', notChecked: ['strength of the part'] },
    part: { name: 'Cover', number: 'C-1', revision: 'B', file: SOURCE.name },
    alloy: { id: 'A380', family: 'aluminium', asked: 'A380', designations: ['AA A380.0'] },
    plant: { name: 'Typical plant', invented: true },
    decisions: new Map([
      [
        'machine.cavities',
        {
          id: 'machine.cavities',
          title: 'Cavities',
          value: '2',
          because: 'two fit',
          kind: 'search',
          status: 'practice',
          source: [],
          parents: ['test.force'],
          alternatives: [{ value: '1', because: 'too slow' }],
        },
      ],
      [
        'machine.kind',
        {
          id: 'machine.kind',
          title: 'Kind of machine',
          value: 'cold-chamber',
          because: 'iron',
          kind: 'choice',
          status: 'source',
          source: ['KEY-A'],
          parents: [],
          alternatives: [],
        },
      ],
      [
        'hole.making[H1]',
        {
          id: 'hole.making[H1]',
          title: 'How a hole is made, H1',
          value: 'cored',
          because: 'wide enough',
          kind: 'choice',
          status: 'source',
          source: ['KEY-A'],
          parents: [],
          alternatives: [],
        },
      ],
    ]),
    texts: new Map([['alloy.family', 'aluminium']]),
    values,
    titles: new Map([...values.keys()].map((id) => [id, `Title of ${id}`])),
    sections: [
      {
        id: 'clamp',
        title: 'Clamp',
        blocks: [
          { kind: 'values', ids: ['test.pressure', 'test.force', 'test.double'] },
          {
            kind: 'table',
            title: 'Holes',
            columns: ['Hole', 'Diameter', 'Kind'],
            rows: [['H1', { value: 'hole.diameter[H1]' }, { decision: 'machine.kind' }]],
          },
          { kind: 'text', phrase: ['The force is ', { value: 'test.force' }, ' on a ', { decision: 'machine.kind' }, ' machine.'] },
        ],
      },
    ],
    findings: [
      {
        code: 'test/force',
        severity: 'error',
        message: 'Too much',
        at: placeOf('A380', 'alloy'),
        notes: ['It opens.'],
        fix: 'Take less.',
        values: ['test.force'],
      },
      { code: 'test/hole', severity: 'warning', message: 'H1: narrow', item: 'H1', at: placeOf('8.5 mm', 'holes[0].diameter'), values: ['hole.diameter[H1]'] },
    ],
    cautions: [{ id: 'melt/burn', title: 'Burns', text: 'Wear a shield.', defer: 'ISO 11612', because: ['alloy.family'], status: 'memory', source: ['KEY-B'] }],
    unchecked: [{ id: 'test/open', title: 'An open point', missing: 'needs test.x' }],
    judged: [
      { id: 'test/force', outcome: 'fail' },
      { id: 'test/hole', item: 'H1', outcome: 'fail' },
    ],
    weak: weakFigures(values),
    sources: new Map([
      ['KEY-A', 'Author, A work, 2001. Read in full.'],
      ['KEY-B', 'A page (vendor page). Read in part.'],
    ]),
    ...changes,
  };
}
