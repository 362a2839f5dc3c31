import type { Diagnostic } from './kernel/diagnostic.ts';
import type { SourceText } from './kernel/place.ts';
import { orList } from './kernel/spelling.ts';
import { alloyHelp, findAlloy } from './rulebook/alloys.ts';
import type { Alloy, Rulebook } from './rulebook/types.ts';
import { alloyNamed, type PartSpec } from './spec/index.ts';

export function alloyOf(rulebook: Rulebook, { alloy }: Pick<PartSpec, 'alloy'>): { readonly found: Alloy } | { readonly fault: Diagnostic } {
  const search = findAlloy(rulebook, alloy.value);
  if ('found' in search) return search;
  const fault = (code: string, message: string, fix: string): { fault: Diagnostic } => ({ fault: { code, severity: 'error', message, fix, at: alloy.at } });
  if ('unknown' in search) {
    const near = search.suggestion === undefined ? '' : `; did you mean "${search.suggestion}"?`;
    return fault('spec/unknown-alloy', `no alloy is called "${alloy.value}"${near}`, alloyHelp(rulebook, alloy.value));
  }
  const ids = search.ambiguous.map((candidate) => candidate.id);
  const message = search.near
    ? `"${alloy.value}" is near to ${orList(ids)}, but not the same alloy`
    : `"${alloy.value}" names more than one alloy: ${orList(ids)}`;
  return fault('spec/ambiguous-alloy', message, `write ${orList(ids.map((id) => `"${id}"`))} if that is what you cast`);
}

/** What is wrong with the alloy of a part file that has other faults. */
export function faultsOfAlloyNamed(rulebook: Rulebook, source: SourceText): Diagnostic[] {
  const alloy = alloyNamed(source);
  const search = alloy && alloyOf(rulebook, { alloy });
  return search !== undefined && 'fault' in search ? [search.fault] : [];
}
