import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { setFields } from '../../../src/spec/set-field.ts';

const TEXT = `# a part
diewright: part/1
part: { name: Cover, revision: A }   # drawing
alloy: A380
geometry:
  volume: 412 cm3   # by the model
  envelope: [238 mm, 142 mm, 46 mm]
  projected_area:
    z: 268 cm2
  wall: { nominal: 2.8 mm }
holes:
  - { id: H1, diameter: 8.5 mm, depth: 24 mm, kind: blind, direction: z }
  - id: H2
    diameter: 9 mm
    depth: 20 mm
    kind: blind
    direction: z
    # last remark
pinned: { gate.velocity: 42 m/s }
`;

function set(...settings: string[]) {
  const { source, diagnostics } = setFields({ name: 'a.part.yaml', text: TEXT }, settings);
  return { text: source.text, data: parse(source.text), diagnostics };
}

describe('--set', () => {
  test('a value that is there changes in place: every other character and every line stays', () => {
    const { text } = set('geometry.volume=500 cm3');
    expect(text).toBe(TEXT.replace('412 cm3', '500 cm3'));
  });

  test.each([
    ['alloy: A380', 'AZ91D', 'alloy: AZ91D'],
    ["alloy: 'A380'", 'AZ91D', "alloy: 'AZ91D'"],
    ["alloy: 'A380'", "O'x", "alloy: 'O''x'"],
    ['alloy: "A380"', 'AZ91D', 'alloy: "AZ91D"'],
    ['alloy: A380', 'a # b', 'alloy: "a # b"'],
    ['alloy: A380', 'a, b', 'alloy: "a, b"'],
    ['alloy: A380', 'a: b', 'alloy: "a: b"'],
    ['alloy: A380', '- a', 'alloy: "- a"'],
    ['alloy: A380   # of the drawing', 'Zamak 3', 'alloy: Zamak 3   # of the drawing'],
  ])('%s set to %s keeps the quotes it had, where it can', (text, word, wanted) => {
    const setting = `alloy=${JSON.stringify(word)}`;
    expect(setFields({ name: 'a', text }, [setting]).source.text).toBe(wanted);
    expect(parse(wanted).alloy).toBe(word);
  });

  test.each([
    ['geometry.wall.nominal=3 mm', (d: typeof TEXT_DATA) => d.geometry.wall.nominal, '3 mm'],
    ['geometry.wall.least=2 mm', (d: typeof TEXT_DATA) => d.geometry.wall.least, '2 mm'],
    ['geometry.parting_line=760 mm', (d: typeof TEXT_DATA) => d.geometry.parting_line, '760 mm'],
    ['geometry.projected_area.x=62 cm2', (d: typeof TEXT_DATA) => d.geometry.projected_area, { z: '268 cm2', x: '62 cm2' }],
    ['geometry.projected_area={ z: 300 cm2 }', (d: typeof TEXT_DATA) => d.geometry.projected_area, { z: '300 cm2' }],
    ['geometry.envelope[2]=50 mm', (d: typeof TEXT_DATA) => d.geometry.envelope, ['238 mm', '142 mm', '50 mm']],
    ['production.per_year=180000', (d: typeof TEXT_DATA) => d.production, { per_year: 180000 }],
    ['pinned.gate.velocity=45 m/s', (d: typeof TEXT_DATA) => d.pinned, { 'gate.velocity': '45 m/s' }],
    ['pinned.hole.draft[H1]=1 deg', (d: typeof TEXT_DATA) => d.pinned, { 'gate.velocity': '42 m/s', 'hole.draft[H1]': '1 deg' }],
    ['holes[H1].depth=30 mm', (d: typeof TEXT_DATA) => d.holes[0]?.depth, '30 mm'],
    ['holes[1].depth=30 mm', (d: typeof TEXT_DATA) => d.holes[1]?.depth, '30 mm'],
    ['holes[H2].thread=M8', (d: typeof TEXT_DATA) => d.holes[1]?.thread, 'M8'],
    ['alloy=EN AC-46000', (d: typeof TEXT_DATA) => d.alloy, 'EN AC-46000'],
  ])('%s', (setting, pick, wanted) => {
    expect(pick(set(setting).data)).toEqual(wanted);
  });

  test('an absent key of a block mapping gets its own line, after remarks on the line of the last value', () => {
    const { text } = set('geometry.parting_line=760 mm');
    expect(text.split('\n')[10]).toBe('  parting_line: "760 mm"');
  });

  test('a number is written as it was typed, so that 007 stays 007', () => {
    expect(set('part.revision=007').text).toContain('revision: 007 }');
  });

  test('a second setting sees the first', () => {
    expect(set('production.life=900000', 'production.per_year=180000').data.production).toEqual({ life: 900000, per_year: 180000 });
  });

  test.each([
    ['geometry.wal.nominal=3 mm', 'set/unknown-field', 'wall', 10],
    ['geometrie=3 mm', 'set/unknown-field', 'geometry', 1],
    ['geometry.volume.x=3', 'set/unknown-field', '', 17],
    ['holes.diameter=3 mm', 'set/unknown-field', 'list', 6],
    ['holes[H9].depth=3 mm', 'set/unknown-item', 'H1, H2', 1],
    ['ribs[R1].height=3 mm', 'set/unknown-item', 'no such list', 1],
    ['alloy', 'set/form', 'path', 1],
    ['alloy=[1', 'set/value', 'YAML', 7],
    ['alloy=# nothing', 'set/value', 'YAML', 7],
  ])('%s is a finding in the argument', (setting, code, word, column) => {
    const { text, diagnostics } = set(setting);
    expect(text).toBe(TEXT);
    expect(diagnostics).toHaveLength(1);
    expect(diagnostics[0]?.code).toBe(code);
    expect(`${diagnostics[0]?.message} ${diagnostics[0]?.fix}`).toContain(word);
    expect(diagnostics[0]?.at?.position().column).toBe(column);
  });
});

const TEXT_DATA = parse(TEXT);
