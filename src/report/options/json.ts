import { jsonText } from '../json-text.ts';
import type { OptionsReport } from './report.ts';

/** The options as JSON: `options/1`. Lengths in mm, times in s, masses in kg, forces in kN, shares as shares, reserves and fills in %; of a die, figures of a set. */
export function optionsJson({ tool, standing, part, castings, alloy, plant, options, variants }: OptionsReport): string {
  return jsonText({
    format: 'options/1',
    tool,
    standing,
    part,
    ...(castings === undefined ? {} : { castings }),
    alloy,
    plant,
    ...(options === undefined ? { fits: false } : options),
    variants,
  });
}
