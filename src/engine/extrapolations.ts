import type { Diagnostic } from '../kernel/diagnostic.ts';

/** So many figures outside their range are said one by one; more of them have one cause, and are said together. */
const MOST_SINGLY = 8;
const NAMED = 4;

const isOutside = ({ code, severity }: Diagnostic): boolean => code.startsWith('range/') && severity === 'warning';

/**
 * Extrapolated figures as one finding where each by itself would drown what a part is about: those that follow from a value which
 * breaks a limit of its own, as a note, and the others when there are many of them.
 */
export function gatherExtrapolations(findings: readonly Diagnostic[]): Diagnostic[] {
  return gatherMany(gatherEchoes(findings));
}

/** What follows from a broken limit is mended with it, and is no finding to be decided on. */
function gatherEchoes(findings: readonly Diagnostic[]): Diagnostic[] {
  const broken = new Set(findings.filter(({ code, severity }) => !code.startsWith('range/') && severity !== 'note').flatMap(({ on = [] }) => on));
  const echoes = findings.filter((finding) => isOutside(finding) && (finding.on ?? []).length > 0 && finding.on?.every((id) => broken.has(id)));
  if (echoes.length === 0) return [...findings];
  const values = valuesOf(echoes);
  const causes = [...new Set(echoes.flatMap(({ on = [] }) => on))].sort();
  const figures = values.length === 1 ? '1 figure lies' : `${values.length} figures lie`;
  const cause = causes.length === 1 ? `${causes[0]} breaks a limit of its own` : `${causes.join(' and ')} break limits of their own`;
  return [
    ...findings.filter((finding) => !echoes.includes(finding)),
    {
      code: 'range/follows',
      severity: 'note',
      message: `${figures} outside the range of the formula, because ${cause}: ${values.join(', ')}`,
      ...placeOf(echoes),
      fix: 'mend what breaks the limit, which has a finding of its own; until then treat these figures as guesses',
      values,
      gathers: codesOf(echoes),
    },
  ];
}

function gatherMany(findings: readonly Diagnostic[]): Diagnostic[] {
  const outside = findings.filter(isOutside);
  if (outside.length <= MOST_SINGLY) return [...findings];
  const values = valuesOf(outside);
  const named = values.slice(0, NAMED).join(', ');
  return [
    ...findings.filter((finding) => !outside.includes(finding)),
    {
      code: 'range/many',
      severity: 'warning',
      message: `${values.length} figures lie outside the range of their formula or table, ${named} and others; each is an extrapolation`,
      ...placeOf(outside),
      fix: 'mend the errors first; if the part stays as it is, treat the plan as a guess (in the JSON plan each such figure has the range "extrapolated")',
      values,
      gathers: codesOf(outside),
    },
  ];
}

const valuesOf = (findings: readonly Diagnostic[]): string[] => [...new Set(findings.flatMap(({ values = [] }) => values))].sort();
const codesOf = (findings: readonly Diagnostic[]): string[] => [...new Set(findings.map(({ code }) => code))].sort();

function placeOf(findings: readonly Diagnostic[]): Pick<Diagnostic, 'at'> {
  const at = findings[0]?.at;
  return at === undefined ? {} : { at };
}
