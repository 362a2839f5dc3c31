import * as z from 'zod';
import { COOLANTS, FAMILIES, FURNACE_KINDS, PRESS_DRIVES, SEVERITIES, SPRAY_KINDS } from './equipment.ts';
import { id, prose, quantity, text, word } from './leaves.ts';
import { atLeastOne, MOST_ENTRIES } from './schema-parts.ts';

const furnace = () =>
  atLeastOne(
    ['families', 'alloys'],
    'families: [aluminium]',
    z
      .strictObject({
        id: id('melt-al'),
        kind: word(FURNACE_KINDS, 'What it does: a dosing furnace holds metal and meters each shot'),
        families: z
          .array(word(FAMILIES, 'Family of alloys'))
          .min(1)
          .max(FAMILIES.length)
          .meta({ description: 'Families of alloys that it is used for', examples: [['aluminium']] })
          .optional(),
        alloys: z
          .array(text('Designation of an alloy', 'A380'))
          .min(1)
          .max(200)
          .meta({ description: 'Single alloys that it is used for, by any designation', examples: [['A380']] })
          .optional(),
        capacity: quantity('furnace', 'Metal in the full furnace', '1200 kg'),
        melt_rate: quantity('meltRate', 'Metal melted an hour; of a furnace that melts', '500 kg/h').optional(),
        temperature: z
          .tuple([quantity('holding', 'Coldest metal that it holds', '640 degC'), quantity('holding', 'Hottest metal that it holds', '760 degC')])
          .meta({ description: 'Coldest and hottest metal that it holds', examples: [['640 degC', '760 degC']] }),
        energy: quantity(
          'meltingEnergy',
          'Energy for melting and holding, for each kilogram melted; of a furnace that melts. Goes before the figure under prices',
          '0.8 kWh/kg',
        ).optional(),
      })
      // What the reader checks after the schema, in words of JSON Schema for editors.
      .meta({
        if: { properties: { kind: { enum: ['holding', 'dosing'] } }, required: ['kind'] },
        // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
        then: { properties: { melt_rate: false, energy: false } },
        else: { required: ['melt_rate'] },
      }),
  );

const coolingUnit = () =>
  z.strictObject({
    id: id('tower water'),
    medium: word(COOLANTS, 'What it sends through the die; open water stays below its boiling point'),
    temperature: z
      .tuple([quantity('coolant', 'Coldest coolant that it gives', '25 degC'), quantity('coolant', 'Hottest coolant that it gives', '60 degC')])
      .meta({ description: 'Coldest and hottest coolant that it gives', examples: [['25 degC', '60 degC']] }),
    flow: quantity('coolantFlow', 'Flow for one die, all its circuits together', '150 l/min'),
    pressure: quantity('coolantPressure', 'Pressure that the pump drives with, through hoses and die', '5 bar'),
  });

const trimPress = () =>
  z.strictObject({
    id: id('trim-250'),
    force: quantity('pressForce', 'Closing force', '250 kN'),
    stroke: quantity('stroke', 'Stroke of the ram', '400 mm'),
    platen: z
      .tuple([quantity('platen', 'Width of the platen', '800 mm'), quantity('platen', 'Depth of the platen', '600 mm')])
      .meta({ description: 'Width and depth of the platen that the trim die stands on', examples: [['800 mm', '600 mm']] }),
    drive: word(PRESS_DRIVES, 'How the ram is driven: the safety rules hang on it; the plan asks when absent').optional(),
    hourly_rate: quantity('hourlyRate', 'Money per hour for the press with its people; the rate under prices.trimming when absent', '36', {
      bare: true,
    }).optional(),
  });

const LIMIT_ID = /^[a-z][a-z0-9-]*\.[a-z][a-z0-9-]*$/;

const limit = () =>
  atLeastOne(
    ['least', 'greatest'],
    'greatest: 85 %',
    z.strictObject({
      least: text('The least that the house allows, in a unit of the value', '5 mm').optional(),
      greatest: text('The greatest that the house allows, in a unit of the value', '85 %').optional(),
      severity: word(SEVERITIES, 'How grave it is when a plan does not keep it; warning when absent').optional(),
      reason: prose('Why the house sets it', 'The tie bars of hall 2 are old').optional(),
    }),
  );

/** The lists of a plant file beside machines and prices. A list that is given has one entry at least. */
export function equipment() {
  return {
    furnaces: z
      .array(furnace())
      .min(1)
      .max(MOST_ENTRIES)
      .meta({
        description: 'Furnaces; without them nothing is said of how the metal is melted and held',
        examples: [
          [{ id: 'melt-al', kind: 'melting', families: ['aluminium'], capacity: '1200 kg', melt_rate: '500 kg/h', temperature: ['640 degC', '760 degC'] }],
        ],
      })
      .optional(),
    cooling: z
      .array(coolingUnit())
      .min(1)
      .max(MOST_ENTRIES)
      .meta({
        description: 'Cooling units and mains; without them the coolant is planned with usual temperatures',
        examples: [[{ id: 'tower water', medium: 'water', temperature: ['25 degC', '60 degC'], flow: '150 l/min', pressure: '5 bar' }]],
      })
      .optional(),
    spray: z
      .strictObject({
        kind: word(SPRAY_KINDS, 'Lubricant diluted in water, which cools the die too, or a mist of it undiluted'),
        dilution: quantity('dilution', 'Parts of water to one of concentrate; of a water-based spray', '80', { bare: true }).optional(),
        flow: quantity('sprayFlow', 'Flow of all nozzles of one die together', '12 l/min').optional(),
        time: quantity('sprayTime', 'Time of one spraying, whatever the size of the shot; by a rule when absent', '6 s').optional(),
        blow: quantity('sprayTime', 'Time of blowing the die off after it; a usual one when absent', '2 s').optional(),
      })
      .meta({
        description: 'How dies are sprayed; planned with usual figures when absent',
        examples: [{ kind: 'water-based', dilution: 80, flow: '12 l/min' }],
      })
      .optional(),
    trim_presses: z
      .array(trimPress())
      .min(1)
      .max(MOST_ENTRIES)
      .meta({
        description: 'Trim presses; without them a press is planned from a series of usual sizes',
        examples: [[{ id: 'trim-250', force: '250 kN', stroke: '400 mm', platen: ['800 mm', '600 mm'] }]],
      })
      .optional(),
    limits: z
      .record(z.string().regex(LIMIT_ID), limit())
      .meta({
        description: 'Limits of the house on values of every plan, by the name of the value; for those of a list, such as hole.draft, on every item',
        examples: [{ 'clamp.use': { greatest: '85 %' }, 'cycle.time': { greatest: '60 s' } }],
      })
      .optional(),
  };
}
