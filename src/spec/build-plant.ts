import type { YamlPath } from '../kernel/located-yaml.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';
import { buildEquipment } from './build-equipment.ts';
import { buildPrices } from './build-prices.ts';
import type { Reading } from './leaves.ts';
import type { MachineSpec, PlantSpec } from './plant.ts';
import { plantFigures } from './plant-figure.ts';
import { PLANT_SOURCE, type PlantOrigin } from './plant-origin.ts';
import type { PlantData } from './plant-schema.ts';
import { present } from './present.ts';

/** The plant of a file without faults: every quantity becomes a traced value. */
export function buildPlant(data: PlantData, origin: PlantOrigin): PlantSpec {
  const { name, invented = false, note } = data.plant;
  return {
    source: origin.source,
    name,
    invented,
    ...present({ note }),
    machines: data.machines.map((machine, i) => buildMachine(machine, ['machines', i], origin, invented)),
    ...buildEquipment(data, origin, invented),
    ...present({ prices: data.prices === undefined ? undefined : buildPrices(data.prices, origin, invented) }),
  };
}

function buildMachine(machine: PlantData['machines'][number], path: YamlPath, origin: PlantOrigin, invented: boolean): MachineSpec {
  const { id, chamber, shot, ejector, shot_end: end } = machine;
  const { of: figure } = plantFigures('machine', id, path, origin, invented);
  const as = <U extends Unit>(name: string, reading: Reading<U>, ...rest: YamlPath): Traced<U> => figure(`machine.${name}[${id}]`, reading, ...rest);
  const maybe = <U extends Unit>(name: string, reading: Reading<U> | undefined, ...rest: YamlPath): Traced<U> | undefined =>
    reading === undefined ? undefined : as(name, reading, ...rest);
  return {
    id,
    chamber,
    shot,
    lockingForce: as('locking-force', machine.locking_force, 'locking_force'),
    tieBarX: as('tie-bar-x', machine.tie_bar_clearance[0], 'tie_bar_clearance', 0),
    tieBarY: as('tie-bar-y', machine.tie_bar_clearance[1], 'tie_bar_clearance', 1),
    dieHeightLeast: as('die-height-least', machine.die_height[0], 'die_height', 0),
    dieHeightGreatest: as('die-height-greatest', machine.die_height[1], 'die_height', 1),
    openingStroke: as('opening-stroke', machine.opening_stroke, 'opening_stroke'),
    ejectorForce: as('ejector-force', ejector.force, 'ejector', 'force'),
    ejectorStroke: as('ejector-stroke', ejector.stroke, 'ejector', 'stroke'),
    plungers: end.plungers.map((plunger, i) => figure(`machine.plunger[${id}/${plunger.written}]`, plunger, 'shot_end', 'plungers', i)),
    shotStroke: as('shot-stroke', end.stroke, 'shot_end', 'stroke'),
    cylinderDiameter: as('cylinder-diameter', end.cylinder_diameter, 'shot_end', 'cylinder_diameter'),
    tailRodDiameter:
      maybe('tail-rod-diameter', end.tail_rod_diameter, 'shot_end', 'tail_rod_diameter') ??
      Traced.default(`machine.tail-rod-diameter[${id}]`, 0, 'mm', {
        note: 'no tail rod, because none is given',
        source: PLANT_SOURCE,
        at: origin.place([...path, 'shot_end']),
      }),
    pressureFill: as('pressure-fill', end.pressure_fill, 'shot_end', 'pressure_fill'),
    dryShotSpeed: as('dry-shot-speed', end.dry_speed, 'shot_end', 'dry_speed'),
    dryCycle: as('dry-cycle', machine.dry_cycle, 'dry_cycle'),
    ...present({
      sleeveLength: maybe('sleeve-length', end.sleeve_length, 'shot_end', 'sleeve_length'),
      pressureIntensified: maybe('pressure-intensified', end.pressure_intensified, 'shot_end', 'pressure_intensified'),
      hourlyRate: maybe('hourly-rate', machine.hourly_rate, 'hourly_rate'),
      coreCircuits: maybe('core-circuits', machine.core_circuits, 'core_circuits'),
      vacuum: machine.vacuum,
      extraction: machine.extraction,
    }),
    ...present({ at: origin.place(path) }),
  };
}
