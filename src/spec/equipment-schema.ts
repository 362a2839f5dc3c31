import * as z from 'zod';
import { PRESS_DRIVES } from './equipment.ts';
import { id, quantity, word } from './leaves.ts';
import { MOST_ENTRIES } from './schema-parts.ts';

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

/** The lists of a plant file beside machines and prices. A list that is given has one entry at least. */
export function equipment() {
  return {
    trim_presses: z
      .array(trimPress())
      .min(1)
      .max(MOST_ENTRIES)
      .meta({
        description: 'Trim presses; without them a press is planned from a series of usual sizes',
        examples: [[{ id: 'trim-250', force: '250 kN', stroke: '400 mm', platen: ['800 mm', '600 mm'] }]],
      })
      .optional(),
  };
}
