import json from 'virtual:rulebook';
import type { Rulebook } from './types.ts';

let rulebook: Rulebook | undefined;

/** The built-in rulebook, compiled and checked when the tool was built. */
export function builtinRulebook(): Rulebook {
  rulebook ??= JSON.parse(json) as Rulebook;
  return rulebook;
}
