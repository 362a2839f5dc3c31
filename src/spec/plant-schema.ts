import * as z from 'zod';
import { equipment } from './equipment-schema.ts';
import { flag, id, prose, quantity, text, word } from './leaves.ts';
import { CHAMBERS, EXTRACTIONS, SHOTS } from './plant.ts';
import { prices } from './prices-schema.ts';
import { formatLine, MOST_ENTRIES, once } from './schema-parts.ts';

const machine = () =>
  z
    .strictObject({
      id: id('cold-4000'),
      chamber: word(CHAMBERS, 'Hot or cold chamber'),
      shot: word(SHOTS, 'Direction in which the plunger moves'),
      locking_force: quantity('lockingForce', 'Rated locking force', '4000 kN'),
      tie_bar_clearance: z
        .tuple([quantity('platen', 'Clear width between the tie bars, x', '620 mm'), quantity('platen', 'Clear height between the tie bars, y', '620 mm')])
        .meta({ description: 'Clear width and height between the tie bars', examples: [['620 mm', '620 mm']] }),
      die_height: z
        .tuple([quantity('platen', 'Least die height', '300 mm'), quantity('platen', 'Greatest die height', '750 mm')])
        .meta({ description: 'Least and greatest thickness of a die', examples: [['300 mm', '750 mm']] }),
      opening_stroke: quantity('stroke', 'Stroke of the moving platen', '450 mm'),
      ejector: z
        .strictObject({ force: quantity('ejectorForce', 'Force of the ejector', '180 kN'), stroke: quantity('stroke', 'Stroke of the ejector', '120 mm') })
        .meta({ description: 'Hydraulic ejector', examples: [{ force: '180 kN', stroke: '120 mm' }] }),
      shot_end: z
        .strictObject({
          plungers: z
            .array(quantity('plunger', 'Plunger diameter', '60 mm'))
            .min(1)
            .max(50)
            .meta({ description: 'Plunger diameters that can be fitted', examples: [['60 mm', '70 mm', '80 mm']] }),
          sleeve_length: quantity('platen', 'Cold chamber: from the start face of the plunger to the parting plane', '420 mm').optional(),
          stroke: quantity('stroke', 'Stroke of the plunger', '480 mm'),
          cylinder_diameter: quantity('cylinder', 'Bore of the shot cylinder', '140 mm'),
          tail_rod_diameter: quantity('tailRod', 'Diameter of a rod that leaves the back of the cylinder; 0 mm when absent', '0 mm').optional(),
          pressure_fill: quantity('hydraulicPressure', 'Pressure on the cylinder while the cavity fills', '14 MPa'),
          pressure_intensified: quantity(
            'hydraulicPressure',
            'Pressure on the cylinder after intensification; absent without intensifier',
            '32 MPa',
          ).optional(),
          dry_speed: quantity('dryShotSpeed', 'Plunger speed without metal', '5 m/s'),
        })
        .meta({ description: 'Shot end', examples: [{ plungers: ['60 mm'] }] }),
      dry_cycle: quantity('dryCycle', 'Cycle time without metal', '6 s'),
      hourly_rate: quantity('hourlyRate', 'Money per hour for the machine with its people and energy, in the currency of the plant', '95', {
        bare: true,
      }).optional(),
      core_circuits: quantity('coreCircuits', 'Circuits for hydraulic cores, with valves and switches; not judged when absent', '4', {
        bare: true,
        whole: true,
      }).optional(),
      vacuum: flag('Whether a vacuum unit stands at the machine; not judged when absent').optional(),
      extraction: word(EXTRACTIONS, 'How a shot that does not fall is taken out of the die; as by robot when absent').optional(),
    })
    // What the reader checks after the schema, in words of JSON Schema for editors.
    .meta({
      if: { properties: { chamber: { const: 'cold' } }, required: ['chamber'] },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: { properties: { shot_end: { required: ['sleeve_length'] } } },
      else: { properties: { shot_end: { properties: { sleeve_length: false } } } },
    });

/** The schema of plant files, built when the first one is read. The JSON Schema is generated from it too. */
export const plantSchema = once(() =>
  z
    .strictObject({
      diewright: formatLine('plant'),
      plant: z
        .strictObject({
          name: text('Name of the plant', 'Typical plant'),
          invented: flag('The plant does not exist, and plans say so; false when absent').optional(),
          note: prose('Anything else worth knowing', 'One hall, two shifts').optional(),
        })
        .meta({ description: 'What the plant is called', examples: [{ name: 'Typical plant' }] }),
      machines: z
        .array(machine())
        .min(1)
        .max(MOST_ENTRIES)
        .meta({ description: 'Die casting machines', examples: [[{ id: 'cold-4000' }]] }),
      ...equipment(),
      prices: prices().optional(),
    })
    .meta({ title: 'Plant description', description: 'The machines, equipment and prices of a die casting plant, as diewright reads them' }),
);
export type PlantData = z.output<ReturnType<typeof plantSchema>>;
