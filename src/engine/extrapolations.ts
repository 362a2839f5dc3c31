import type { Diagnostic } from '../kernel/diagnostic.ts';

/** So many figures outside their range are said one by one; more of them have one cause, and are said together. */
const MOST_SINGLY = 8;
const NAMED = 4;

/** Extrapolated figures as one finding when there are many: a part far beyond all tables would drown what it is about. */
export function gatherExtrapolations(findings: readonly Diagnostic[]): Diagnostic[] {
  const outside = findings.filter(({ code, severity }) => code.startsWith('range/') && severity === 'warning');
  const [first] = outside;
  if (first === undefined || outside.length <= MOST_SINGLY) return [...findings];
  const values = [...new Set(outside.flatMap((finding) => finding.values ?? []))].sort();
  const named = values.slice(0, NAMED).join(', ');
  const gathered: Diagnostic = {
    code: 'range/many',
    severity: 'warning',
    message: `${values.length} figures lie outside the range of their formula or table, ${named} and others; each is an extrapolation`,
    ...(first.at === undefined ? {} : { at: first.at }),
    fix: 'mend the errors first; if the part stays as it is, treat the plan as a guess (in the JSON plan each such figure has the range "extrapolated")',
    values,
  };
  return [...findings.filter((finding) => !outside.includes(finding)), gathered];
}
