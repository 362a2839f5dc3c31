import type { Traced } from '../../../kernel/traced.ts';
import { pinSpacing, pinsByArea, pinsByForce, pinsByOutline, pinTotal } from '../../../physics/ejection/pin-count.ts';
import {
  pinAimDiameter,
  pinBucklingDiameter,
  pinBucklingForce,
  pinForce,
  pinNeededDiameter,
  pinPressure,
  pinPressureDiameter,
  pinSafeDiameter,
  pinSlenderness,
  pinStoutDiameter,
} from '../../../physics/ejection/pins.ts';
import { ejectionStroke, pinLength } from '../../../physics/ejection/stroke.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';
import { type Core, EJECTOR_HALF } from './cores.ts';

const TABLE = 'ejection/pin';
const FIGURES = {
  modulus: 'ejection.pin-modulus',
  hardness_least: 'ejection.pin-hardness-least',
  hardness_greatest: 'ejection.pin-hardness-greatest',
  diameter_least: 'ejection.pin-diameter-least',
  diameter_greatest: 'ejection.pin-diameter-greatest',
  wall_ratio_least: 'ejection.pin-wall-least',
  wall_ratio_greatest: 'ejection.pin-wall-greatest',
  spacing_ratio: 'ejection.spacing-ratio',
  spacing_least: 'ejection.spacing-least',
  spacing_greatest: 'ejection.spacing-greatest',
  field: 'ejection.pin-field',
  number_least: 'ejection.pins-least',
  buckling_factor: 'ejection.buckling-factor',
  slenderness: 'ejection.slenderness-greatest',
  stroke_clearance: 'ejection.stroke-clearance',
  gap: 'ejection.gap',
  guide: 'ejection.guide',
  overflow_pins: 'ejection.overflow-pins',
  runner_pins: 'ejection.runner-pins',
  feeder_pins: 'ejection.feeder-pins',
  mark: 'ejection.pin-mark',
} as const;

export function fileFigures(ledger: Ledger): void {
  for (const [column, id] of Object.entries(FIGURES)) ledger.look(TABLE, column, {}, id);
}

/** Stroke that clears the tallest core of the ejector half. */
export function fileStroke(ledger: Ledger, cores: readonly Core[]): void {
  const heights = cores
    .filter(({ place, item, kind }) => place === EJECTOR_HALF && kind !== 'floor' && item !== 'open box')
    .map(({ item }) => ledger.value('ejection.core-height', item));
  const depth = ledger.value('draft.depth');
  const height =
    heights.length === 0
      ? depth.as('ejection.height', 'the part file names no core in the ejector half, so the deepest wall, or the depth of the part')
      : greatest(heights).as('ejection.height', 'tallest of the cores named in the part file');
  ledger.apply(ejectionStroke, { height: ledger.put(height), clearance: ledger.value('ejection.stroke-clearance') }, { id: 'ejection.stroke' });
}

/** What lies between ejector plate and guide at the beginning of the stroke; a plate that serves other castings too has the stroke of all. */
function fileLength(ledger: Ledger): Traced<'mm'> {
  return ledger.apply(pinLength, {
    stroke: ledger.maybe('ejection.plate-stroke') ?? ledger.value('ejection.stroke'),
    gap: ledger.value('ejection.gap'),
    plate: ledger.value('die.plate'),
    steel: ledger.value('die.steel-below'),
    guide: ledger.value('ejection.guide'),
  });
}

/** Number of pins by the shape of the casting, then diameter, then more pins where the force asks for them. */
export function filePins(ledger: Ledger): void {
  const wall = ledger.value('part.wall-nominal');
  const length = fileLength(ledger);
  const spacing = ledger.apply(pinSpacing, {
    wall,
    ratio: ledger.value('ejection.spacing-ratio'),
    least: ledger.value('ejection.spacing-least'),
    greatest: ledger.value('ejection.spacing-greatest'),
  });
  const shape = greatest([
    ledger.value('ejection.pins-least'),
    ledger.apply(pinsByOutline, { outline: ledger.value('part.parting-line'), spacing }),
    ledger.apply(pinsByArea, { area: ledger.value('part.projected-area'), spacing, field: ledger.value('ejection.pin-field') }),
  ]);
  ledger.put(shape.as('ejection.pins-by-shape'));
  ledger.apply(pinStoutDiameter, { length, slenderness: ledger.value('ejection.slenderness-greatest') });
  choose(ledger, 'ejection.pin-ends');
  const end_factor = ledger.look('ejection/pin-ends', 'factor', { ends: ledger.text('ejection.pin-ends') }, 'ejection.end-factor');

  const force = ledger.value('ejection.cavity-force');
  const { family } = ledger.alloy;
  const pressure = lookQuietly(ledger, 'ejection/push-pressure', 'greatest', { family }, 'ejection.push-pressure', { title: 'Ejector pins' });
  if (pressure === undefined) return;
  const pressure_diameter = ledger.apply(
    pinPressureDiameter,
    { force, pins: ledger.value('ejection.pins-by-shape'), pressure },
    { id: 'ejection.pin-shape-diameter' },
  );
  const aim = ledger.apply(pinAimDiameter, {
    pressure_diameter,
    wall,
    ratio_least: ledger.value('ejection.pin-wall-least'),
    ratio_greatest: ledger.value('ejection.pin-wall-greatest'),
    greatest: ledger.value('ejection.pin-diameter-greatest'),
  });
  const stout = greatest([ledger.value('ejection.pin-stout-diameter'), ledger.value('ejection.pin-diameter-least')]);
  const size = ledger.put(
    greatest([
      ledger.look('ejection/pin-size', 'diameter', { rounding: 'nearest', wanted: aim }, 'ejection.pin-aim-size'),
      ledger.look('ejection/pin-size', 'diameter', { rounding: 'up', wanted: stout }, 'ejection.pin-stout-size'),
    ]).as('ejection.pin-size', 'greater of the size that suits the wall and the one that its length asks for'),
  );
  const byForce = ledger.apply(pinsByForce, { force, pressure, diameter: size });
  choose(ledger, 'ejection.pins-by');
  const pins = ledger.put(greatest([ledger.value('ejection.pins-by-shape'), byForce]).as('ejection.cavity-pins', 'greatest of shape and force'));
  fileDiameter(ledger, { force, pins, size, length, end_factor, pressure });
}

interface Known {
  readonly force: Traced<'kN'>;
  readonly pins: Traced<'1'>;
  readonly size: Traced<'mm'>;
  readonly length: Traced<'mm'>;
  readonly end_factor: Traced<'1'>;
  readonly pressure: Traced<'MPa'>;
}

/** The standard diameter that suits wall and length, does not buckle and does not press in; then what it really has. */
function fileDiameter(ledger: Ledger, { force, pins, size, length, end_factor, pressure }: Known): void {
  const modulus = ledger.value('ejection.pin-modulus');
  const each = ledger.apply(pinForce, { force, pins });
  const buckling = ledger.apply(pinBucklingDiameter, { force: each, length, modulus, end_factor });
  const safe = ledger.apply(pinSafeDiameter, { diameter: buckling, factor: ledger.value('ejection.buckling-factor') });
  const pressure_diameter = ledger.apply(pinPressureDiameter, { force, pins, pressure });
  const needed = ledger.apply(pinNeededDiameter, { size, safe, pressure_diameter });
  const diameter = ledger.look('ejection/pin-size', 'diameter', { rounding: 'up', wanted: needed }, 'ejection.pin-diameter');
  ledger.apply(pinPressure, { force, pins, diameter });
  ledger.apply(pinBucklingForce, { diameter, length, modulus, end_factor });
  ledger.apply(pinSlenderness, { length, diameter });
  const high = ledger.maybe('ejection.cavity-force-high');
  if (high === undefined) return;
  ledger.apply(pinPressure, { force: high, pins, diameter }, { id: 'ejection.pin-pressure-high' });
  ledger.apply(pinPressureDiameter, { force: high, pins, pressure }, { id: 'ejection.pin-high-diameter' });
  ledger.apply(pinsByForce, { force: high, pressure, diameter }, { id: 'ejection.pins-high' });
}

/**
 * All pins of the die. Those of overflows, runner and feeder push on metal that shrinks free, and carry none of the force reckoned.
 * `runner_pins` are those on the runner of what counts as one cavity.
 */
export function filePinTotal(ledger: Ledger, runner_pins: Traced<'1'>): void {
  ledger.apply(
    pinTotal,
    {
      cavities: ledger.value('machine.cavities'),
      casting: ledger.value('ejection.cavity-pins'),
      overflows: ledger.value('overflow.number'),
      overflow_pins: ledger.value('ejection.overflow-pins'),
      runner_pins,
      feeder_pins: ledger.value('ejection.feeder-pins'),
    },
    { id: 'ejection.pins' },
  );
}

/** How the ejector plate comes back. */
export function fileReturn(ledger: Ledger): void {
  ledger.attempt('ejection.return', 'Return of the ejectors', () => choose(ledger, 'ejection.return'));
}

function greatest<T extends { readonly value: number }>(values: readonly T[]): T {
  return values.reduce((a, b) => (b.value > a.value ? b : a));
}
