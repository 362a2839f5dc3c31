import type { YamlPath } from '../kernel/located-yaml.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';
import type { Reading } from './leaves.ts';
import { PLANT_SOURCE, type PlantOrigin } from './plant-origin.ts';

/** Makes the traced figures of one entry of a plant file. */
export interface PlantFigures {
  /** A figure of its own name, from a path below the entry. */
  readonly of: <U extends Unit>(id: string, reading: Reading<U>, ...path: YamlPath) => Traced<U>;
  readonly maybe: <U extends Unit>(id: string, reading: Reading<U> | undefined, ...path: YamlPath) => Traced<U> | undefined;
}

/**
 * Figures of the user's plant are inputs with their place; those of an invented plant are practice, so that no plan takes them
 * for something that stands somewhere. `kind` is what the entry is, such as `trim press`.
 */
export function plantFigures(kind: string, id: string, path: YamlPath, origin: PlantOrigin, invented: boolean): PlantFigures {
  const of = <U extends Unit>(name: string, reading: Reading<U>, ...rest: YamlPath): Traced<U> => {
    const at = origin.place([...path, ...rest]);
    return invented
      ? Traced.table(name, reading.value, reading.unit, {
          table: `plant ${id}`,
          source: [PLANT_SOURCE],
          status: 'practice',
          note: `${kind} of an invented plant`,
          at,
        })
      : Traced.input(name, reading.value, reading.unit, { at, written: reading.written, source: PLANT_SOURCE });
  };
  return { of, maybe: (name, reading, ...rest) => (reading === undefined ? undefined : of(name, reading, ...rest)) };
}
