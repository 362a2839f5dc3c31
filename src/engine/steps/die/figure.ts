import type { Ledger } from '../../ledger.ts';
import type { Block, Drawing, Shape } from '../../plan.ts';
import { type Face, faceOf, markOf, type Place } from './places.ts';

/** Diameter of a tie bar over the clear width beside it, for the eye: a plant file does not give it. */
const BAR_SHARE = 0.2;
/** Share of the cavity's side that a slide is drawn wide; its true width is the die maker's. */
const SLIDE_SHARE = 0.6;

type Roles = Drawing['roles'];
type Dimensions = Drawing['dimensions'];

/** The die face between the tie bars, to scale; nothing where its size is not known. */
export function layoutFigure(ledger: Ledger): Block[] {
  const face = faceOf(ledger);
  if (face === undefined) return [];
  const lines = coolingLines(ledger, face);
  const slides = slideShapes(face);
  const bars = barShapes(face);
  const { die, insert, feeder } = face;
  const roles: Roles = [
    { role: 'outline', title: 'Die' },
    { role: 'steel', title: 'Inserts' },
    ...(slides.length > 0 ? ([{ role: 'slide', title: 'Slides, closed' }] as const) : []),
    { role: 'cavity', title: 'Castings' },
    { role: 'feeder', title: ledger.texts.get('machine.chamber') === 'hot' ? 'Sprue' : 'Biscuit' },
    ...(lines.length > 0 ? ([{ role: 'line', title: 'Cooling lines of the ejector half' }] as const) : []),
    { role: 'bar', title: 'Tie bars' },
  ];
  return [
    {
      kind: 'figure',
      form: 'drawing',
      id: 'die-layout',
      title: `The die between the tie bars${marks(ledger)}`,
      text: 'The face of the die to scale: castings as the boxes that they take, in their inserts, with the slides in their places and the point where the metal enters. Sizes of die, inserts and castings and the room of the slides are those of the plan; the widths of slides and the diameters of sprue and tie bars are drawn by eye, overflows and runner are left out.',
      unit: 'mm',
      roles,
      shapes: [
        box('outline', die),
        box('steel', insert),
        ...lines,
        ...slides,
        ...face.cavities.map((cavity) => box('cavity', cavity, cavity.label)),
        { shape: 'circle', role: 'feeder', ...feeder },
        ...bars,
      ],
      dimensions: dimensions(face),
    },
  ];
}

/** What the letters on castings of several parts stand for. */
function marks({ given: { set } }: Ledger): string {
  return set === undefined ? '' : `: ${set.members.map(({ id }) => `${markOf(set, id)} ${id}`).join(', ')}`;
}

function box(role: Shape['role'], { x, y, width, height }: Place, label?: string): Shape {
  return { shape: 'box', role, x, y, width, height, ...(label === undefined ? {} : { label }) };
}

/** A slide stands at its cavity and takes the steel of its side with its room; between cavities it takes half the steel. */
function slideShapes({ cavities, inner, outer }: Face): Shape[] {
  return cavities.flatMap((cavity) =>
    cavity.slides.map(({ side, room }) => {
      const reach = room + (cavity.edges.includes(side) ? outer[side] : inner);
      const upright = side === 'top' || side === 'bottom';
      const sign = side === 'right' || side === 'top' ? 1 : -1;
      const from = (upright ? cavity.height : cavity.width) / 2;
      const middle = sign * (from + reach / 2);
      const wide = SLIDE_SHARE * (upright ? cavity.width : cavity.height);
      return upright
        ? box('slide', { x: cavity.x, y: cavity.y + middle, width: wide, height: reach })
        : box('slide', { x: cavity.x + middle, y: cavity.y, width: reach, height: wide });
    }),
  );
}

/** As many lines as the ejector half has, spread over the field of the castings, along its longer side. */
function coolingLines(ledger: Ledger, { die, insert }: Face): Shape[] {
  const pitch = ledger.maybe('cooling.laid-pitch')?.value;
  const count = ledger.maybe('cooling.lines', 'ejector half')?.value;
  if (pitch === undefined || count === undefined) return [];
  const level = insert.width >= insert.height;
  return Array.from({ length: count }, (_, i): Shape => {
    const off = (i - (count - 1) / 2) * pitch;
    const points = level
      ? ([
          [die.x - die.width / 2, insert.y + off],
          [die.x + die.width / 2, insert.y + off],
        ] as const)
      : ([
          [insert.x + off, die.y - die.height / 2],
          [insert.x + off, die.y + die.height / 2],
        ] as const);
    return { shape: 'path', role: 'line', points };
  });
}

function barShapes({ bars }: Face): Shape[] {
  const diameter = BAR_SHARE * Math.min(bars.width, bars.height);
  return [-1, 1].flatMap((up) =>
    [-1, 1].map(
      (across): Shape => ({
        shape: 'circle',
        role: 'bar',
        x: (across * (bars.width + diameter)) / 2,
        y: (up * (bars.height + diameter)) / 2,
        diameter,
      }),
    ),
  );
}

/** Sizes of the die and its inserts, and the clear room between the bars, each outside of what it measures. */
function dimensions({ die, insert, bars }: Face): Dimensions {
  const diameter = BAR_SHARE * Math.min(bars.width, bars.height);
  const level = (text: string, value: string, { x, width }: Place, y: number): Dimensions[number] => ({
    from: [x - width / 2, y],
    to: [x + width / 2, y],
    text,
    values: [value],
  });
  const upright = (text: string, value: string, { y, height }: Place, x: number): Dimensions[number] => ({
    from: [x, y - height / 2],
    to: [x, y + height / 2],
    text,
    values: [value],
  });
  const room: Place = { x: 0, y: 0, ...bars };
  return [
    level('Inserts', 'die.insert-width', insert, insert.y - insert.height / 2),
    level('Die', 'die.width', die, die.y - die.height / 2),
    level('Between tie bars', 'die.bars-width', room, (bars.height + diameter) / 2),
    upright('Inserts', 'die.insert-height', insert, insert.x + insert.width / 2),
    upright('Die', 'die.breadth', die, die.x + die.width / 2),
    upright('Between tie bars', 'die.bars-height', room, -(bars.width + diameter) / 2),
  ];
}
