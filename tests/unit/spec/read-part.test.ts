import { describe, expect, it } from 'vitest';
import type { Place } from '../../../src/kernel/place.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import { alloyNamed, type PartSpec, readPart } from '../../../src/spec/index.ts';
import { BASE_PART } from '../../cli/bad-input/base.ts';

const good = (text: string): PartSpec => {
  const { part, diagnostics } = readPart({ name: 'valve-cover.part.yaml', text });
  expect(diagnostics.map((finding) => `${finding.code} ${finding.message}`)).toEqual([]);
  return part as PartSpec;
};
const at = (place: Place | undefined): string => {
  const { line, column, endLine, endColumn } = (place as Place).position();
  return `${line}:${column}-${endLine}:${endColumn}`;
};

/** The smallest part that is a part. */
const LEAST = `diewright: part/1
part: { name: Cap }
alloy: ZP5
geometry:
  mass: 40 g
  envelope: [30 mm, 20 mm, 10 mm]
  projected_area: { z: 5 cm2 }
  wall: { nominal: 1 mm }
`;

describe('a part with every field', () => {
  const part = good(BASE_PART);

  it('holds each quantity as a traced input in the unit of its field', () => {
    const found: string[] = [];
    const walk = (value: unknown): void => {
      if (value instanceof Traced) {
        expect(value.source).toEqual(['PART']);
        expect(value.status).toBe('source');
        found.push(`${value.id} ${value.kind} ${value.value} ${value.unit} (${value.written ?? ''}) ${value.at?.path}`);
      } else if (value instanceof Map || value instanceof Set || typeof value !== 'object' || value === null) return;
      else for (const [key, inner] of Object.entries(value)) if (key !== 'at' && key !== 'source') walk(inner);
    };
    walk(part);
    expect(found.sort()).toEqual(
      [
        'part.volume input 412 cm3 (412 cm3) geometry.volume',
        'part.mass input 1.12 kg (1.12 kg) geometry.mass',
        'part.envelope-x input 238 mm (238 mm) geometry.envelope[0]',
        'part.envelope-y input 142 mm (142 mm) geometry.envelope[1]',
        'part.envelope-z input 46 mm (46 mm) geometry.envelope[2]',
        'part.projected-area-x input 48 cm2 (48 cm2) geometry.projected_area.x',
        'part.projected-area-z input 268 cm2 (268 cm2) geometry.projected_area.z',
        'part.surface-area input 1950 cm2 (1950 cm2) geometry.surface_area',
        'part.wall-least input 2.2 mm (2.2 mm) geometry.wall.least',
        'part.wall-nominal input 2.8 mm (2.8 mm) geometry.wall.nominal',
        'part.wall-greatest input 6.5 mm (6.5 mm) geometry.wall.greatest',
        'part.parting-line input 760 mm (760 mm) geometry.parting_line',
        'wall.height[outer] input 44 mm (44 mm) walls[0].height',
        'wall.draft[outer] input 1 deg (1 deg) walls[0].draft',
        'hole.diameter[H1] input 8.5 mm (8.5 mm) holes[0].diameter',
        'hole.depth[H1] input 24 mm (24 mm) holes[0].depth',
        'hole.count[H1] input 6 1 (6) holes[0].count',
        'hole.tolerance[H1] input 0.1 mm (0.1 mm) holes[0].tolerance',
        'hole.diameter[H2] input 12 mm (12 mm) holes[1].diameter',
        'hole.depth[H2] input 31 mm (31 mm) holes[1].depth',
        'hole.count[H2] default 1 1 () holes[1]',
        'hole.edge-distance[H2] input 6 mm (6 mm) holes[1].edge_distance',
        'undercut.depth[U1] input 9 mm (9 mm) undercuts[0].depth',
        'undercut.face-area[U1] input 12 cm2 (12 cm2) undercuts[0].face_area',
        'undercut.boss[U1] input 3 mm (3 mm) undercuts[0].boss',
        'insert.diameter[I1] input 12 mm (12 mm) inserts[0].diameter',
        'insert.length[I1] input 18 mm (18 mm) inserts[0].length',
        'insert.cover[I1] input 2.5 mm (2.5 mm) inserts[0].cover',
        'rib.root-width[R1] input 2 mm (2 mm) ribs[0].root_width',
        'rib.height[R1] input 8 mm (8 mm) ribs[0].height',
        'rib.draft[R1] input 1.5 deg (1.5 deg) ribs[0].draft',
        'rib.tip-radius[R1] input 0.5 mm (0.5 mm) ribs[0].tip_radius',
        'rib.root-fillet[R1] input 1 mm (1 mm) ribs[0].root_fillet',
        'fillet.radius[F1] input 1.5 mm (1.5 mm) fillets[0].radius',
        'fillet.wall-a[F1] input 2.8 mm (2.8 mm) fillets[0].walls[0]',
        'fillet.wall-b[F1] input 3 mm (3 mm) fillets[0].walls[1]',
        'dimension.nominal[D1] input 120 mm (120 mm) dimensions[0].nominal',
        'dimension.tolerance[D1] input 0.3 mm (0.3 mm) dimensions[0].tolerance',
        'dimension.nominal[D2] input 60 mm (60 mm) dimensions[1].nominal',
        'dimension.tolerance[D2] input 0.2 mm (0.2 mm) dimensions[1].tolerance',
        'certificate.fe input 0.9 % (0.9 %) certificate.Fe',
        'certificate.mn input 0.3 % (0.3 %) certificate.Mn',
        'machining.stock[gasket face] input 0.4 mm (0.4 mm) machining[0].stock',
        'production.per-year input 180000 1 (180000) production.per_year',
        'production.life input 900000 1 (900000) production.life',
        'production.hours-per-year input 4000 h (4000 h) production.hours_per_year',
      ].sort(),
    );
  });

  it('holds every word', () => {
    expect(part).toMatchObject({ name: 'Valve cover', number: 'VC-204', revision: 'B', alloy: { value: 'A380' } });
    expect(part.walls[0]).toMatchObject({ id: 'outer', side: 'outside' });
    expect(part.holes.map(({ id, kind, thread, direction }) => [id, kind, thread, direction.text, direction.vector])).toEqual([
      ['H1', 'blind', 'M8', 'z', [0, 0, 1]],
      ['H2', 'through', undefined, '[1, 0, 0]', [1, 0, 0]],
    ]);
    expect(part.undercuts[0]?.direction).toMatchObject({ text: '-x', vector: [-1, 0, 0] });
    expect(part.inserts[0]?.material).toBe('steel');
    expect(part.dimensions.map(({ across, slide }) => [across, slide])).toEqual([
      ['parting', undefined],
      ['slide', 'U1'],
    ]);
    expect(part.quality).toMatchObject({
      use: 'pressure-tight',
      finish: 'consumer',
      heatTreatment: 'T5',
      welded: true,
      coldShut: 'some',
      leakRate: '0.5 cm3/min at 200 kPa',
      markets: ['eu-vehicle'],
    });
    expect([...part.quality.given]).toEqual(['use', 'finish', 'heat_treatment', 'welded', 'cold_shut', 'leak_rate', 'markets']);
    expect(part.certificate.map(({ element }) => element)).toEqual(['Fe', 'Mn']);
    expect([...part.pinned.values()].map(({ id, text }) => [id, text])).toEqual([
      ['machine.cavities', '1'],
      ['gate.velocity', '42 m/s'],
    ]);
  });

  it('knows where everything stands', () => {
    expect(at(part.alloy.at)).toBe('3:8-3:12');
    expect(at(part.geometry.volume?.at)).toBe('5:11-5:18');
    expect(at(part.geometry.envelope.y.at)).toBe('7:22-7:28');
    expect(at(part.geometry.dieOpeningAt)).toBe('11:16-11:17');
    expect(at(part.holes[1]?.depth.at)).toBe('17:39-17:44');
    expect(at(part.holes[1]?.direction.at)).toBe('17:72-17:81');
    expect(at(part.holes[1]?.at)).toBe('17:5-17:104');
    expect(at(part.pinned.get('gate.velocity')?.at)).toBe('34:47-34:53');
    expect(at(part.production.at)).toBe('33:13-33:69');
    expect(at(part.at)).toBe(`1:1-${BASE_PART.split('\n').length}:1`);
  });

  it.each([
    ['with a byte order mark', `\ufeff${BASE_PART}`],
    ['with Windows line ends', BASE_PART.replace(/\n/g, '\r\n')],
    ['with a mark at its end', `${BASE_PART}...\n`],
  ])('is the same %s', (_, text) => {
    const same = good(text);
    expect(at(same.holes[1]?.depth.at)).toBe('17:39-17:44');
    expect(at(same.alloy.at)).toBe('3:8-3:12');
    expect(same.machining[0]?.stock.value).toBe(0.4);
    expect(same.source.text.startsWith('diewright')).toBe(true);
  });
});

describe('a part with the needed fields only', () => {
  const part = good(LEAST);

  it('has the defaults of the format', () => {
    expect(part.quality).toMatchObject({ use: 'general', finish: 'commercial', heatTreatment: 'none', welded: false, coldShut: 'none', markets: [] });
    expect(part.quality.given.size).toBe(0);
    expect(part.geometry.dieOpening).toBe('auto');
    expect(Object.keys(part.geometry)).not.toContain('dieOpeningAt');
    expect(Object.keys(part)).not.toContain('number');
    for (const list of ['walls', 'holes', 'undercuts', 'inserts', 'ribs', 'fillets', 'dimensions', 'machining', 'certificate'] as const)
      expect(part[list]).toEqual([]);
    expect(part.pinned.size).toBe(0);
    expect(at(part.quality.at)).toBe('1:1-1:18');
  });
});

describe('units and spellings', () => {
  const geometry = (lines: string): PartSpec['geometry'] => good(LEAST.replace(/ {2}mass[\s\S]*$/, lines)).geometry;

  it('mixes inch and metric, and keeps what was written', () => {
    const { volume, mass, envelope, projectedArea, wall, partingLine } = geometry(
      '  volume: 25.14in3\n  mass: 2.469  lb\n  envelope: [9.37 in, 0.142 m, 46mm]\n  projected_area: { z: 41.5 in^2, x: 4800 mm2 }\n  wall: { nominal: 0.11 in, least: 2200 um }\n  parting_line: 2.5 ft\n',
    );
    // The inch is 25.4 mm and the pound 0.45359237 kg exactly (international yard and pound agreement, 1959).
    expect(volume?.value).toBeCloseTo(25.14 * 2.54 ** 3, 9);
    expect(volume?.written).toBe('25.14 in3');
    expect(mass?.value).toBeCloseTo(2.469 * 0.45359237, 12);
    expect(mass?.written).toBe('2.469 lb');
    expect([envelope.x, envelope.y, envelope.z].map((side) => [Number(side.value.toPrecision(12)), side.unit, side.written])).toEqual([
      [237.998, 'mm', '9.37 in'],
      [142, 'mm', '0.142 m'],
      [46, 'mm', '46 mm'],
    ]);
    expect(projectedArea.z?.value).toBeCloseTo(41.5 * 6.4516, 9);
    expect(projectedArea.z?.written).toBe('41.5 in^2');
    expect(projectedArea.x?.value).toBeCloseTo(48, 12);
    expect(wall.nominal.value).toBeCloseTo(2.794, 12);
    expect(wall.least?.value).toBeCloseTo(2.2, 12);
    expect(partingLine?.value).toBeCloseTo(762, 9);
  });

  it('reads superscripts, plus signs, exponents and quoted numbers', () => {
    const { volume, surfaceArea, projectedArea } = geometry(
      '  volume: 0.4 dm\u00b3\n  envelope: [\'238 mm\', "142 mm", +46 mm]\n  projected_area: { z: 2.68e2 cm\u00b2 }\n  surface_area: 1950 cm^2\n  wall: { nominal: 2.8\u00a0mm }\n',
    );
    expect(volume?.value).toBeCloseTo(400, 9);
    expect(volume?.written).toBe('0.4 dm\u00b3');
    expect(projectedArea.z?.value).toBeCloseTo(268, 9);
    expect(surfaceArea?.value).toBe(1950);
  });

  it('takes numbers where texts are wanted as they were written', () => {
    const part = good(LEAST.replace('{ name: Cap }', '{ name: 2024, number: 007, revision: 1.0, note: 3 }').replace('ZP5', '413'));
    expect([part.name, part.number, part.revision, part.note, part.alloy.value]).toEqual(['2024', '007', '1.0', '3', '413']);
  });

  it('makes a vector of any length a direction, with no negative zero', () => {
    const direction = good(BASE_PART.replace('[1, 0, 0]', '[-3, 0, 4]')).holes[1]?.direction;
    expect(direction?.text).toBe('[-3, 0, 4]');
    expect(direction?.vector).toEqual([-0.6, 0, 0.8]);
    const long = good(BASE_PART.replace('[1, 0, 0]', '[-1e200, -0, 0]')).holes[1]?.direction.vector;
    expect(long).toEqual([-1, 0, 0]);
  });

  it('allows zero where it has a meaning, and the M8\u00d71 way of writing', () => {
    const part = good(BASE_PART.replace('draft: 1 deg', 'draft: 0 deg').replace('thread: M8', 'thread: M8\u00d71').replace('Fe: 0.9 %', 'Fe: 0 %'));
    expect(part.walls[0]?.draft?.value).toBe(0);
    expect(part.holes[0]?.thread).toBe('M8x1');
    expect(part.certificate[0]?.share.value).toBe(0);
  });

  it('gives the part beside a warning or a note', () => {
    const { part, diagnostics } = readPart({ name: 'x', text: BASE_PART.replace('life: 900000', 'life: 90000') });
    expect(diagnostics.map((finding) => [finding.code, finding.severity])).toEqual([['spec/life-below-year', 'note']]);
    expect(part?.production.life?.value).toBe(90000);
  });

  it('a word known elsewhere is sent there, though a word like it stands where it was written', () => {
    const { diagnostics } = readPart({ name: 'a.part.yaml', text: `${BASE_PART}wall: { nominal: 2.8 mm }\n` });
    expect(diagnostics.map(({ code, fix }) => [code, fix])).toEqual([['spec/unknown-key', 'move it to "geometry"']]);
  });

  it('names the key beside it that knows a word', () => {
    const { diagnostics } = readPart({ name: 'a.part.yaml', text: BASE_PART.replace('finish: consumer', 'finish: plated') });
    expect(diagnostics.map(({ fix }) => fix)).toEqual(['write "use: plated" for that, and here utility, functional, commercial, consumer or superior']);
  });

  it('leaves the alloy of a faulty file to be looked up, where a sound name stands', () => {
    const named = (edit: (text: string) => string) => alloyNamed({ name: 'a.part.yaml', text: edit(BASE_PART) })?.value;
    expect(named((text) => text.replace('  volume:', '  volum:'))).toBe('A380');
    for (const alloy of ['[1]', '""', '"\\e[31mA380"', '*gone', '~']) expect(named((text) => text.replace('alloy: A380', `alloy: ${alloy}`))).toBeUndefined();
    expect(named((text) => text.replace('alloy: A380\n', ''))).toBeUndefined();
    expect(named(() => '- 1\n')).toBeUndefined();
  });
});
