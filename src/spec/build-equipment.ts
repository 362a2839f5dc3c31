import type { YamlPath } from '../kernel/located-yaml.ts';
import type { EquipmentSpec, TrimPressSpec } from './equipment.ts';
import { plantFigures } from './plant-figure.ts';
import type { PlantOrigin } from './plant-origin.ts';
import type { PlantData } from './plant-schema.ts';
import { present } from './present.ts';

/** What a plant has besides machines, as traced values. */
export function buildEquipment(data: PlantData, origin: PlantOrigin, invented: boolean): EquipmentSpec {
  return present({
    trimPresses: data.trim_presses?.map((press, i) => trimPress(press, ['trim_presses', i], origin, invented)),
  });
}

type Entry<K extends keyof PlantData> = NonNullable<PlantData[K]> extends readonly (infer E)[] ? E : never;

function trimPress(press: Entry<'trim_presses'>, path: YamlPath, origin: PlantOrigin, invented: boolean): TrimPressSpec {
  const { id, force, stroke, platen, drive, hourly_rate: rate } = press;
  const { of, maybe } = plantFigures('trim press', id, path, origin, invented);
  return {
    id,
    force: of(`plant.press-force[${id}]`, force, 'force'),
    stroke: of(`plant.press-stroke[${id}]`, stroke, 'stroke'),
    platenX: of(`plant.press-width[${id}]`, platen[0], 'platen', 0),
    platenY: of(`plant.press-depth[${id}]`, platen[1], 'platen', 1),
    ...present({ drive, hourlyRate: maybe(`plant.press-rate[${id}]`, rate, 'hourly_rate'), at: origin.place(path) }),
  };
}
