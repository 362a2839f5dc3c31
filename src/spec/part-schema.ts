import * as z from 'zod';
import { accepted, pinned } from './decision-schema.ts';
import { direction, directionOrAuto } from './direction.ts';
import { ELEMENTS } from './elements.ts';
import { flag, id, prose, quantity, text, thread, word } from './leaves.ts';
import { ACROSS, COLD_SHUTS, FINISHES, HEAT_TREATMENTS, HOLE_KINDS, MARKETS, USES, WALL_SIDES } from './part.ts';
import type { Partly } from './salvage.ts';
import { atLeastOne, formatLine, list, once } from './schema-parts.ts';

const geometry = () =>
  atLeastOne(
    ['volume', 'mass'],
    'volume: 412 cm3',
    z.strictObject({
      volume: quantity('volume', 'Volume of metal in the part', '412 cm3').optional(),
      mass: quantity('mass', 'Mass of the part', '1.12 kg').optional(),
      envelope: z
        .tuple([quantity('envelope', 'Size along x', '238 mm'), quantity('envelope', 'Size along y', '142 mm'), quantity('envelope', 'Size along z', '46 mm')])
        .meta({ description: 'Smallest box around the part: sizes along x, y and z', examples: [['238 mm', '142 mm', '46 mm']] }),
      projected_area: atLeastOne(
        ['x', 'y', 'z'],
        'z: 268 cm2',
        z.strictObject({
          x: quantity('projectedArea', 'Area seen along x', '62 cm2').optional(),
          y: quantity('projectedArea', 'Area seen along y', '96 cm2').optional(),
          z: quantity('projectedArea', 'Area seen along z', '268 cm2').optional(),
        }),
      ).meta({ description: 'Projected area of the part, seen along the axis named', examples: [{ z: '268 cm2' }] }),
      surface_area: quantity('surfaceArea', 'Whole surface of the part', '1950 cm2').optional(),
      wall: z
        .strictObject({
          least: quantity('wall', 'Least wall thickness', '2.2 mm').optional(),
          nominal: quantity('wall', 'Wall thickness of most of the part', '2.8 mm'),
          greatest: quantity('wall', 'Greatest wall thickness', '6.5 mm').optional(),
        })
        .meta({ description: 'Wall thickness', examples: [{ least: '2.2 mm', nominal: '2.8 mm', greatest: '6.5 mm' }] }),
      die_opening: directionOrAuto('Direction in which the die opens; `auto` tries the axes').optional(),
      parting_line: quantity('partingLine', 'Length of the parting line around the part', '760 mm').optional(),
    }),
  ).meta({ description: 'Size and shape of the part', examples: [{ volume: '412 cm3' }] });

const hole = () =>
  z.strictObject({
    id: id('H1'),
    diameter: quantity('diameter', 'Diameter as drawn', '8.5 mm'),
    depth: quantity('depth', 'Depth of the cored length', '24 mm'),
    kind: word(HOLE_KINDS, 'Blind or through'),
    direction: direction('The way the core leaves the hole'),
    count: quantity('count', 'Number of such holes; 1 when absent', '6', { bare: true, whole: true }).optional(),
    tolerance: quantity('tolerance', 'Tolerance of the diameter, plus and minus', '0.1 mm').optional(),
    thread: thread('Thread that is cut or formed in the hole').optional(),
    edge_distance: quantity('edgeDistance', 'Distance from the edge of the hole to the nearest edge of the part', '6 mm').optional(),
  });

const LISTS = {
  walls: () =>
    list(
      'Drafted faces',
      'outer',
      z.strictObject({
        id: id('outer'),
        side: word(WALL_SIDES, 'Inside: the casting shrinks onto the die there. Outside: it shrinks away'),
        height: quantity('wallHeight', 'Height along the die opening', '44 mm'),
        draft: quantity('draft', 'Draft that the drawing allows', '1 deg').optional(),
      }),
    ),
  holes: () => list('Holes', 'H1', hole()),
  undercuts: () =>
    list(
      'Undercuts that need a slide',
      'U1',
      z.strictObject({
        id: id('U1'),
        direction: direction('The way the slide leaves the undercut'),
        depth: quantity('depth', 'Depth along the direction', '9 mm'),
        face_area: quantity('faceArea', 'Area of the slide face seen along the direction', '12 cm2'),
        boss: quantity('boss', 'Height of a boss that the slide has to clear besides the depth', '3 mm').optional(),
      }),
    ),
  inserts: () =>
    list(
      'Inserts that are cast in',
      'I1',
      z.strictObject({
        id: id('I1'),
        material: text('Material of the insert', 'steel'),
        diameter: quantity('diameter', 'Greatest diameter', '12 mm'),
        length: quantity('depth', 'Length', '18 mm'),
        cover: quantity('cover', 'Metal thickness around the insert', '2.5 mm').optional(),
      }),
    ),
  ribs: () =>
    list(
      'Ribs',
      'R1',
      z.strictObject({
        id: id('R1'),
        root_width: quantity('wall', 'Thickness at the root', '2 mm'),
        height: quantity('ribHeight', 'Height above the wall', '8 mm'),
        draft: quantity('draft', 'Draft of each flank', '1.5 deg').optional(),
        tip_radius: quantity('edgeRadius', 'Radius along the tip', '0.5 mm').optional(),
        root_fillet: quantity('edgeRadius', 'Fillet at the root', '1 mm').optional(),
      }),
    ),
  fillets: () =>
    list(
      'Fillets between two walls',
      'F1',
      z.strictObject({
        id: id('F1'),
        radius: quantity('radius', 'Radius of the fillet', '1.5 mm'),
        walls: z
          .tuple([quantity('wall', 'Thickness of one wall', '2.8 mm'), quantity('wall', 'Thickness of the other wall', '3 mm')])
          .meta({ description: 'Thickness of the two walls that meet', examples: [['2.8 mm', '3 mm']] }),
      }),
    ),
  dimensions: () =>
    list(
      'Dimensions with a tolerance',
      'D1',
      z.strictObject({
        id: id('D1'),
        nominal: quantity('nominal', 'Nominal size', '120 mm'),
        tolerance: quantity('tolerance', 'Tolerance, plus and minus', '0.3 mm'),
        across: word(ACROSS, 'Across the parting, across a slide, or within one die part (none, also when absent)').optional(),
        slide: text('Id of the undercut or hole whose slide forms the dimension', 'U1').optional(),
      }),
    ),
  machining: () =>
    list(
      'Faces that are machined',
      'gasket face',
      z.strictObject({
        id: id('gasket face'),
        stock: quantity('stock', 'Stock that is machined off', '0.4 mm'),
      }),
    ),
};

const quality = () =>
  z
    .strictObject({
      use: word(USES, 'What the part is used for; general when absent').optional(),
      finish: word(FINISHES, 'Class of surface finish; commercial when absent').optional(),
      heat_treatment: word(HEAT_TREATMENTS, 'Heat treatment after casting; none when absent').optional(),
      welded: flag('The part is welded; false when absent').optional(),
      cold_shut: word(COLD_SHUTS, 'Whether cold shuts are allowed; none when absent').optional(),
      leak_rate: text('Leak rate that is allowed, with its pressure', '0.5 cm3/min at 200 kPa').optional(),
      markets: z
        .array(word(MARKETS, 'A market with rules of its own'))
        .max(MARKETS.length)
        .meta({ description: 'Markets with rules of their own', examples: [['eu-vehicle']] })
        .optional(),
    })
    .meta({ description: 'What the casting has to fulfil', examples: [{ use: 'pressure-tight' }] });

const certificate = () => {
  const share = quantity('share', 'Share of mass', '0.9 %').optional();
  return z
    .strictObject(Object.fromEntries(ELEMENTS.map((symbol) => [symbol, share])) as Record<(typeof ELEMENTS)[number], typeof share>)
    .meta({ description: 'Measured shares of the melt, by chemical symbol', examples: [{ Fe: '0.9 %', Mn: '0.3 %' }] });
};

const production = () =>
  z
    .strictObject({
      per_year: quantity('parts', 'Parts in a year', '180000', { bare: true, whole: true }).optional(),
      life: quantity('parts', 'Parts in the life of the die or product', '900000', { bare: true, whole: true }).optional(),
      hours_per_year: quantity('hoursPerYear', 'Hours of production in a year', '4000', { bare: true }).optional(),
    })
    .meta({ description: 'How many parts are made', examples: [{ per_year: 180000 }] });

/** The parts of a part file, each with the making of its schema. */
const SECTIONS = {
  diewright: () => formatLine('part'),
  part: () =>
    z
      .strictObject({
        name: text('Name of the part', 'Valve cover'),
        number: text('Number of the part or drawing', 'VC-204').optional(),
        revision: text('Revision of the drawing', 'B').optional(),
        note: prose('Anything else worth knowing', 'Mates with the pump housing').optional(),
      })
      .meta({ description: 'What the part is called', examples: [{ name: 'Valve cover' }] }),
  alloy: () => text('Alloy, by any designation in use', 'A380'),
  geometry,
  ...LISTS,
  quality: () => quality().optional(),
  certificate: () => certificate().optional(),
  production: () => production().optional(),
  pinned,
  accepted,
};
type Sections = typeof SECTIONS;
const NAMES = Object.keys(SECTIONS) as (keyof Sections)[];
const REQUIRED: ReadonlySet<string> = new Set<keyof Sections>(['diewright', 'part', 'alloy', 'geometry']);

function schemaOf(names: readonly (keyof Sections)[]) {
  const shape = Object.fromEntries(names.map((name) => [name, SECTIONS[name]()])) as { [K in keyof Sections]: ReturnType<Sections[K]> };
  return z.strictObject(shape).meta({ title: 'Part description', description: 'A part to be die cast, as diewright reads it' });
}

/** The schema of part files, built when the first one is read. The JSON Schema is generated from it too. */
export const partSchema = once(() => schemaOf(NAMES));

/**
 * The schema of the parts that a file has, which is soon built. A file that it takes is a file that the whole schema takes,
 * and with the same data, for what is left out may be absent; of any other file the whole schema says what is wrong.
 */
export function partSchemaFor(data: object) {
  const names = NAMES.filter((name) => REQUIRED.has(name) || Object.hasOwn(data, name));
  const key = names.join();
  let schema = built.get(key);
  if (schema === undefined) {
    schema = schemaOf(names);
    built.set(key, schema);
  }
  return schema;
}

/** Files of one user mostly have the same parts. */
const built = new Map<string, ReturnType<typeof schemaOf>>();

export type PartData = z.output<ReturnType<typeof partSchema>>;
/** What could be read of a part file. */
export type PartDraft = Partly<PartData>;
