import type { Unit } from '../../kernel/units.ts';
import { ALLOY_WORDS } from './alloy.ts';
import { COOLING_WORDS } from './cooling.ts';
import { COST_WORDS } from './cost.ts';
import { CYCLE_WORDS } from './cycle.ts';
import type { NumberWord, TextWord, Word } from './define.ts';
import { DESIGN_WORDS } from './design.ts';
import { DIE_WORDS } from './die.ts';
import { DIE_SURFACE_WORDS } from './die-surface.ts';
import { EJECTION_WORDS } from './ejection.ts';
import { FILL_WORDS } from './fill.ts';
import { FINISH_WORDS } from './finish.ts';
import { FURNACE_WORDS } from './furnace.ts';
import { GATE_WORDS } from './gate.ts';
import { GOOSENECK_WORDS } from './gooseneck.ts';
import { HEAT_WORDS } from './heat.ts';
import { LUBRICANT_WORDS } from './lubricant.ts';
import { MACHINE_WORDS } from './machine.ts';
import { PART_WORDS } from './part.ts';
import { PARTING_WORDS } from './parting.ts';
import { INTENSIFICATION_WORDS, POROSITY_WORDS } from './porosity.ts';
import { PQ2_WORDS } from './pq2.ts';
import { REPLAN_WORDS } from './replan.ts';
import { RUNNER_NETWORK_WORDS } from './runner-network.ts';
import { SET_WORDS } from './set.ts';
import { SHOT_WORDS } from './shot.ts';
import { SLOW_SHOT_WORDS } from './slow-shot.ts';
import { SOLIDIFICATION_WORDS } from './solidification.ts';
import { SQUEEZE_WORDS } from './squeeze.ts';
import { VENT_WORDS } from './vent.ts';
import { VENT_BALANCE_WORDS } from './vent-balance.ts';

/** Every value and every text fact that a plan can hold. Rules may bind these ids and no others. */
export const VOCABULARY = {
  ...PART_WORDS,
  ...ALLOY_WORDS,
  ...PARTING_WORDS,
  ...DESIGN_WORDS,
  ...FILL_WORDS,
  ...GATE_WORDS,
  ...SHOT_WORDS,
  ...SQUEEZE_WORDS,
  ...PQ2_WORDS,
  ...SLOW_SHOT_WORDS,
  ...GOOSENECK_WORDS,
  ...VENT_WORDS,
  ...VENT_BALANCE_WORDS,
  ...RUNNER_NETWORK_WORDS,
  ...INTENSIFICATION_WORDS,
  ...POROSITY_WORDS,
  ...MACHINE_WORDS,
  ...SOLIDIFICATION_WORDS,
  ...HEAT_WORDS,
  ...COOLING_WORDS,
  ...DIE_SURFACE_WORDS,
  ...CYCLE_WORDS,
  ...EJECTION_WORDS,
  ...DIE_WORDS,
  ...FINISH_WORDS,
  ...FURNACE_WORDS,
  ...LUBRICANT_WORDS,
  ...COST_WORDS,
  ...REPLAN_WORDS,
  ...SET_WORDS,
} as const satisfies Readonly<Record<string, Word>>;

type Words = typeof VOCABULARY;
export type ValueId = { [K in keyof Words]: Words[K] extends NumberWord ? K : never }[keyof Words];
export type TextId = { [K in keyof Words]: Words[K] extends TextWord ? K : never }[keyof Words];
export type UnitOf<K extends ValueId> = Words[K] extends NumberWord<infer U> ? U & Unit : never;

/** `hole.diameter[H1]` is the value of an item; its word is `hole.diameter`. */
export function wordOf(id: string): Word | undefined {
  return WORDS.get(id) ?? (id.endsWith(']') ? WORDS.get(id.slice(0, id.indexOf('['))) : undefined);
}
const WORDS: ReadonlyMap<string, Word> = new Map(Object.entries(VOCABULARY));

/** `id` for a value of the whole plan, `id[item]` for a value of an item. */
export function fullId(id: string, item?: string): string {
  return item === undefined ? id : `${id}[${item}]`;
}
