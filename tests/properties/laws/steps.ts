import type { Plan } from '../../../src/index.ts';
import { at } from './plans.ts';

/** A root of a change: a value that moved far though none of the values it is worked out from did. */
export interface Root {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** More than this share of itself is far. */
const FAR = 0.02;
/** Less than this is nothing: a value that was zero and now is a rounding. */
const NOTHING = 1e-9;

const isFar = (a: number, b: number): boolean => Math.abs(a - b) > FAR * Math.max(Math.abs(a), Math.abs(b)) && Math.abs(a - b) > NOTHING;

/** The roots of what moved far between two plans; empty when one only of them has a value that the other has not, see `structureOf`. */
export function rootsOf(a: Plan, b: Plan): Root[] {
  const far = new Set([...a.values.keys()].filter((id) => b.values.has(id) && isFar(at(a, id), at(b, id))));
  const parents = (plan: Plan, id: string): string[] => (plan.values.get(id)?.parents ?? []).map((parent) => parent.id);
  return [...far]
    .filter((id) => ![...parents(a, id), ...parents(b, id)].some((parent) => parent !== id && far.has(parent)))
    .map((id) => ({ id, from: at(a, id), to: at(b, id) }));
}

/** What the plan has decided and which values it has: the same words mean that no decision changed. */
export function decided(plan: Plan): string[] {
  const words = [...plan.decisions.values()].map(({ id, value }) => `${id} ${value}`);
  return [...words, ...[...plan.values.keys()].map((id) => `has ${id}`)].sort();
}

/** What only one of two lists has. */
export function onlyInOne(a: readonly string[], b: readonly string[]): string[] {
  const [x, y] = [new Set(a), new Set(b)];
  return [...a.filter((one) => !y.has(one)), ...b.filter((one) => !x.has(one))];
}
