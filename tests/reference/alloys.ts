import { readdirSync, readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { parse } from 'yaml';
import type { Status } from '../../src/kernel/status.ts';

/** The built-in alloy figures, read straight from their files: the tests beside it do not rest on the rulebook's reader. */

export interface Figure {
  value?: number;
  least?: number;
  greatest?: number;
  status: Status;
  source: string[];
  note?: string;
}
export type Property = Figure & { unit: string; others?: Figure[] };
export type Ratings = { status: Status; source: string[]; scale: string; sourced?: Omit<Ratings, 'sourced'> } & Record<string, unknown>;
export interface Alloy {
  name: string;
  designations: { system: string; code: string; near?: true; status?: Status }[];
  chamber: { allows: string[]; status: Status; source: string[] };
  composition: { unit: string; balance: string; limits: Record<string, [number, number | null]>; status: Status; source: string[] };
  properties: Record<string, Property>;
  ratings?: Ratings;
  notes: string[];
}

const FOLDER = new URL('../../rules/alloys/', import.meta.url);
export const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.yaml'));
export const ALLOYS = new Map<string, Alloy & { family: string }>();
for (const name of FILES) {
  const file = parse(readFileSync(new URL(name, FOLDER), 'utf8')) as { family: string; alloys: Record<string, Alloy> };
  for (const [id, alloy] of Object.entries(file.alloys)) ALLOYS.set(id, { ...alloy, family: file.family });
}
export const EACH = [...ALLOYS];

/** The alloy of that id. @throws Error when there is none */
export function of(id: string): Alloy & { family: string } {
  const alloy = ALLOYS.get(id);
  if (alloy === undefined) throw new Error(`no alloy ${id}`);
  return alloy;
}
/** One property of an alloy. @throws Error when it is not stored */
export function property(id: string, name: string): Property {
  const found = of(id).properties[name];
  if (found === undefined) throw new Error(`${id} has no ${name}`);
  return found;
}
/** The single figure of a property, in its unit of `UNIT`. @throws Error when a range is stored */
export function value(id: string, name: string): number {
  const figure = property(id, name);
  if (figure.value === undefined) throw new Error(`${name} of ${id} is a range`);
  return figure.value;
}
/** The single figures that other sources print for a property. */
export const others = (id: string, name: string): (number | undefined)[] => (property(id, name).others ?? []).map((o) => o.value);
/** Middle of an element's limits, in wt %. */
export function middle(id: string, element: string): number {
  const [least, greatest] = of(id).composition.limits[element] ?? [Number.NaN, null];
  return (least + (greatest ?? Number.NaN)) / 2;
}
/** Expects `actual` no further than `half` from `expected`: half the last digit printed, mostly. */
export const within = (actual: number, expected: number, half: number): void => {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(half);
};

/** The properties that an alloy may have, each with its one unit, in the order of the published tables. */
export const UNIT: Record<string, string> = {
  density: 'g/cm3',
  solidus: 'degC',
  liquidus: 'degC',
  specific_heat_solid: 'J/(kg.K)',
  specific_heat_liquid: 'J/(kg.K)',
  latent_heat: 'kJ/kg',
  conductivity: 'W/(m.K)',
  expansion: 'um/(m.K)',
  electrical_conductivity: '%',
  tensile_strength: 'MPa',
  yield_strength: 'MPa',
  elongation: '%',
  hardness_brinell: '1',
  shear_strength: 'MPa',
  fatigue_strength: 'MPa',
  modulus: 'GPa',
  casting_temperature: 'degC',
  shrink_allowance: '%',
  solidification_shrinkage: '%',
};
