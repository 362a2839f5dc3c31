import { nearestWord } from '../kernel/spelling.ts';
import type { Alloy, Rulebook } from './types.ts';

export type AlloySearch =
  | { readonly found: Alloy }
  | { readonly ambiguous: readonly Alloy[]; readonly near: boolean }
  | { readonly unknown: true; readonly suggestion?: string };

/** Upper case, without the signs that people put or leave: `EN AC-46000` and `en ac 46000` are one. */
function fold(text: string): string {
  return text.toUpperCase().replace(/[\s\-_.,/()[\]]+/g, '');
}

/** Also found without the standard's prefix: `EN AC-46000` as `46000`, `No. 3` as `NO3`. */
function spellings(code: string): string[] {
  const folded = fold(code);
  return [folded, folded.replace(/^(ENAC|ENMC|EN|ASTM|UNS|AA|JIS|DIN|BS)/, '')].filter((text) => text.length > 1);
}

/** The alloy that a designation names, by any of its standards. Exact designations win over near ones. */
export function findAlloy(rulebook: Rulebook, designation: string): AlloySearch {
  // The id as it is printed is found without reading the records of all other alloys.
  if (Object.hasOwn(rulebook.alloys, designation)) return { found: rulebook.alloys[designation] as Alloy };
  const wanted = fold(designation);
  const exact = new Set<Alloy>();
  const near = new Set<Alloy>();
  const known: string[] = [];
  for (const alloy of Object.values(rulebook.alloys)) {
    if (fold(alloy.id) === wanted || fold(alloy.name) === wanted) return { found: alloy };
    known.push(alloy.id);
    for (const entry of alloy.designations) {
      if (!entry.near) known.push(entry.code);
      if (spellings(entry.code).includes(wanted)) (entry.near ? near : exact).add(alloy);
    }
  }
  if (exact.size === 1) return { found: [...exact][0] as Alloy };
  if (exact.size > 1) return { ambiguous: [...exact], near: false };
  if (near.size > 0) return { ambiguous: [...near], near: true };
  const suggestion = nearestWord(designation, known);
  return suggestion === undefined ? { unknown: true } : { unknown: true, suggestion };
}

/** What to write for a text that names no alloy: a family is no alloy, and a part is cast in one. */
export function alloyHelp(rulebook: Rulebook, text: string): string {
  const word = text
    .trim()
    .toLowerCase()
    .replace(/^aluminum$/, 'aluminium');
  const family = Object.values(rulebook.alloys).find((alloy) => alloy.family === word)?.family;
  if (family !== undefined) return `name one alloy of the family; see "diewright list alloys ${family}"`;
  const several = text.split(/,|;|\bor\b/).map((one) => one.trim());
  if (several.length > 1 && several.every((one) => 'found' in findAlloy(rulebook, one)))
    return `write one of them; to compare: diewright options FILE --alloys "${several.join(',')}"`;
  return 'see "diewright list alloys"';
}
