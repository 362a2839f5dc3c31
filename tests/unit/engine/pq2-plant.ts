import { LID, type SmallPart } from './work-to.ts';

/** The machine of the worked example: cylinder 140 mm at 14 MPa, 5 m/s dry. */
export interface OneMachine {
  readonly id?: string;
  readonly chamber?: 'hot' | 'cold';
  readonly vertical?: true;
  readonly plungers?: readonly number[];
  readonly cylinder?: number;
  readonly rod?: number;
  readonly dry?: number;
  readonly sleeve?: number;
}

/** A plant of these machines and no others. */
export function plantWith(...machines: readonly OneMachine[]): string {
  return ['diewright: plant/1', 'plant: { name: Test plant, invented: true }', 'machines:', ...machines.flatMap(machineText), ''].join('\n');
}

function machineText({
  id = 'only',
  chamber = 'cold',
  vertical,
  plungers = [50, 60, 70, 80, 90, 100],
  cylinder = 140,
  rod,
  dry = 5,
  sleeve = 400,
}: OneMachine) {
  return [
    `  - id: ${id}`,
    `    chamber: ${chamber}`,
    `    shot: ${vertical ? 'vertical' : 'horizontal'}`,
    '    locking_force: 8000 kN',
    '    tie_bar_clearance: [900 mm, 900 mm]',
    '    die_height: [300 mm, 950 mm]',
    '    opening_stroke: 700 mm',
    '    ejector: { force: 300 kN, stroke: 180 mm }',
    '    shot_end:',
    `      plungers: [${plungers.map((diameter) => `${diameter} mm`).join(', ')}]`,
    ...(chamber === 'cold' ? [`      sleeve_length: ${sleeve} mm`, '      pressure_intensified: 32 MPa'] : []),
    `      cylinder_diameter: ${cylinder} mm`,
    ...(rod === undefined ? [] : [`      tail_rod_diameter: ${rod} mm`]),
    '      stroke: 480 mm',
    '      pressure_fill: 14 MPa',
    `      dry_speed: ${dry} m/s`,
    '    dry_cycle: 6 s',
  ];
}

/**
 * The worked example as a part: 500 cm3 through the gates, 2500 kg/m3, discharge coefficient 0.5, gate 222 mm2, plunger
 * 70 mm; filled in 50 ms, so 10 l/s at 45.05 m/s. Window of aluminium 30 to 60 m/s, longest fill time 80 ms.
 */
export function example(pins: Readonly<Record<string, string>> = {}): SmallPart {
  return {
    ...LID,
    volume: 500,
    pinned: {
      'alloy.density': '2.5 g/cm3',
      'gate.liquid-density': '2.5 g/cm3',
      'gate.flow-volume': '500 cm3',
      'gate.discharge': '0.5',
      'gate.area': '222 mm2',
      'overflow.volume': '60 cm3',
      'runner.volume': '150 cm3',
      'fill.time': '50 ms',
      'fill.longest-time': '80 ms',
      'machine.plunger': '70 mm',
      ...pins,
    },
  };
}

/** The example without some of its pins. */
export function exampleWithout(pins: Readonly<Record<string, string>>, ...left: readonly string[]): SmallPart {
  const { pinned = {}, ...rest } = example(pins);
  return { ...rest, pinned: Object.fromEntries(Object.entries(pinned).filter(([id]) => !left.includes(id))) };
}
