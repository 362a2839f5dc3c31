/** The only door of this folder: texts in, part and plant descriptions or findings out. */

export { alloyNamed } from './alloy-named.ts';
export type { BaselineEntry } from './baseline.ts';
export { readBaseline } from './baseline.ts';
export { CODES } from './codes.ts';
export type { DecisionRecord, FindingRecord, PlanRecord, ValueRecord } from './committed-plan.ts';
export { readCommittedPlans } from './committed-plan.ts';
export type { DieEntry, DieSpec } from './die.ts';
export type { CoolingSpec, FurnaceSpec, HouseBound, TrimPressSpec } from './equipment.ts';
export { jsonSchema } from './json-schema.ts';
export type * from './part.ts';
export { ACROSS, COLD_SHUTS, FINISHES, HEAT_TREATMENTS, HOLE_KINDS, MARKETS, USES, WALL_SIDES } from './part.ts';
export type { MachineSpec, PlantSpec } from './plant.ts';
export type { PlantData } from './plant-schema.ts';
export type { MetalPrice, PricesSpec } from './prices.ts';
export { PRICED_FAMILIES } from './prices.ts';
export type { FailOn } from './project-schema.ts';
export { FAIL_ON } from './project-schema.ts';
export { readDie } from './read-die.ts';
export { readPart } from './read-part.ts';
export { builtInPlant, compilePlant, readPlant } from './read-plant.ts';
export type { ProjectSpec } from './read-project.ts';
