import text from 'virtual:rulebook';
import { unpackRulebook } from './pack.ts';
import type { Rulebook } from './types.ts';

let rulebook: Rulebook | undefined;

/** The built-in rulebook, compiled and checked when the tool was built. */
export function builtinRulebook(): Rulebook {
  rulebook ??= unpackRulebook(text);
  return rulebook;
}
