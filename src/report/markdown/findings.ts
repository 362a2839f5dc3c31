import type { RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { type Diagnostic, SEVERITIES } from '../../kernel/diagnostic.ts';
import { ACCEPTED_WHERE, placeText } from '../words.ts';
import { code, type Inline, item, list, paragraph, part, strong } from './nodes.ts';

/** Every finding: severity, code, place, message, why, what to do. Errors come first, what is only a note last; among them the order is the plan's. */
export function findingNodes(plan: Plan): RootContent[] {
  const { findings } = plan;
  return part('Findings', [
    ...(findings.some(({ accepted }) => accepted !== undefined) ? [paragraph(ACCEPTED_STAY)] : []),
    findings.length === 0 ? paragraph('None.') : list(SEVERITIES.flatMap((severity) => findings.filter((one) => one.severity === severity)).map(findingItem)),
  ]);
}

/** Accepting is a word about a run, not about a hazard; a reader must not take it for more. */
const ACCEPTED_STAY =
  'An accepted finding stays in the plan, with its reason, and does not fail a run. Accepting takes no hazard away: the cautions hold as before, local codes and licensed practice prevail, and whoever reviews the plan reviews each acceptance too, above all where people can be hurt.';

function findingItem(finding: Diagnostic) {
  const place: Inline[] = finding.at === undefined ? [] : [' at ', code(placeText(finding.at))];
  const { accepted } = finding;
  const below = [
    ...(accepted === undefined ? [] : [item([strong('Accepted'), ` ${ACCEPTED_WHERE[accepted.where]}: ${accepted.reason}`])]),
    ...(finding.notes ?? []).map((note) => item([`Why: ${note}`])),
    ...(finding.fix === undefined ? [] : [item([`What to do: ${finding.fix}`])]),
    ...(finding.rule === undefined ? [] : [item([`Rule: ${finding.rule}`])]),
  ];
  return item(
    [strong(accepted === undefined ? finding.severity : `${finding.severity}, accepted`), ' ', code(finding.code), ...place, `: ${finding.message}`],
    ...(below.length === 0 ? [] : [list(below)]),
  );
}
