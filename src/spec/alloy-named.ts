import { readLocatedYaml } from '../kernel/located-yaml.ts';
import type { SourceText } from '../kernel/place.ts';
import type { PartSpec } from './part.ts';
import { partSchema } from './part-schema.ts';

/**
 * The alloy that a part file names, though the file may have other faults, so that an unknown one is told beside them.
 * Undefined where no sound name stands.
 */
export function alloyNamed(source: SourceText): PartSpec['alloy'] | undefined {
  const yaml = readLocatedYaml(source, { prefix: 'spec', numbersAsText: true });
  if (typeof yaml.data !== 'object' || yaml.data === null) return undefined;
  const { data } = partSchema().shape.alloy.safeParse((yaml.data as Readonly<Record<string, unknown>>)['alloy']);
  return data === undefined ? undefined : { value: data, at: yaml.place(['alloy']) };
}
