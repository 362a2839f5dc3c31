import type { YamlPath } from '../kernel/located-yaml.ts';
import type { Place } from '../kernel/place.ts';
import type { CoolingSpec, EquipmentSpec, FurnaceSpec, HouseBound, SpraySpec, TrimPressSpec } from './equipment.ts';
import { plantFigures } from './plant-figure.ts';
import type { PlantOrigin } from './plant-origin.ts';
import type { PlantData } from './plant-schema.ts';
import { present } from './present.ts';

/** What a plant has besides machines, as traced values. */
export function buildEquipment(data: PlantData, origin: PlantOrigin, invented: boolean): EquipmentSpec {
  return present({
    furnaces: data.furnaces?.map((one, i) => furnace(one, ['furnaces', i], origin, invented)),
    cooling: data.cooling?.map((one, i) => coolingUnit(one, ['cooling', i], origin, invented)),
    limits: data.limits === undefined ? undefined : Object.entries(data.limits).map(([id, one]) => houseBound(id, one, origin)),
    spray: data.spray === undefined ? undefined : sprayOf(data.spray, origin, invented),
    trimPresses: data.trim_presses?.map((press, i) => trimPress(press, ['trim_presses', i], origin, invented)),
  });
}

type Entry<K extends keyof PlantData> = NonNullable<PlantData[K]> extends readonly (infer E)[] ? E : never;

function furnace(one: Entry<'furnaces'>, path: YamlPath, origin: PlantOrigin, invented: boolean): FurnaceSpec {
  const { id, kind, families = [], alloys = [], capacity, melt_rate: rate, temperature, energy } = one;
  const { of, maybe } = plantFigures('furnace', id, path, origin, invented);
  return {
    id,
    kind,
    families,
    alloys: alloys.map((alloy, i) => ({ id: alloy, ...present({ at: origin.place([...path, 'alloys', i]) }) })),
    capacity: of(`plant.furnace-capacity[${id}]`, capacity, 'capacity'),
    coldest: of(`plant.furnace-coldest[${id}]`, temperature[0], 'temperature', 0),
    hottest: of(`plant.furnace-hottest[${id}]`, temperature[1], 'temperature', 1),
    ...present({
      meltRate: maybe(`plant.melt-rate[${id}]`, rate, 'melt_rate'),
      energy: maybe(`plant.furnace-energy[${id}]`, energy, 'energy'),
      at: origin.place(path),
    }),
  };
}

function coolingUnit(one: Entry<'cooling'>, path: YamlPath, origin: PlantOrigin, invented: boolean): CoolingSpec {
  const { id, medium, temperature, flow, pressure } = one;
  const { of } = plantFigures('cooling unit', id, path, origin, invented);
  return {
    id,
    medium,
    coldest: of(`plant.coolant-coldest[${id}]`, temperature[0], 'temperature', 0),
    hottest: of(`plant.coolant-hottest[${id}]`, temperature[1], 'temperature', 1),
    flow: of(`plant.coolant-flow[${id}]`, flow, 'flow'),
    pressure: of(`plant.coolant-pressure[${id}]`, pressure, 'pressure'),
    ...present({ at: origin.place(path) }),
  };
}

function sprayOf({ kind, dilution, flow, time, blow }: NonNullable<PlantData['spray']>, origin: PlantOrigin, invented: boolean): SpraySpec {
  const { maybe } = plantFigures('spray', 'spray', ['spray'], origin, invented);
  return {
    kind,
    ...present({
      dilution: maybe('plant.spray-dilution', dilution, 'dilution'),
      flow: maybe('plant.spray-flow', flow, 'flow'),
      time: maybe('plant.spray-time', time, 'time'),
      blow: maybe('plant.spray-blow', blow, 'blow'),
    }),
  };
}

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

/** A plant that was built in has no limits, for they have no place that a finding could name. */
function houseBound(id: string, one: NonNullable<PlantData['limits']>[string], origin: PlantOrigin): HouseBound {
  const path: YamlPath = ['limits', id];
  const end = (name: 'least' | 'greatest') => (one[name] === undefined ? undefined : { text: one[name], at: placeIn(origin, [...path, name]) });
  return {
    id,
    ends: present({ least: end('least'), greatest: end('greatest') }),
    severity: one.severity ?? 'warning',
    ...present({ reason: one.reason }),
    at: placeIn(origin, path, 'key'),
  };
}

function placeIn(origin: PlantOrigin, path: YamlPath, part: 'value' | 'key' = 'value'): Place {
  const at = origin.place(path, part);
  if (at === undefined) throw new TypeError(`no place of ${path.join('.')}`);
  return at;
}
