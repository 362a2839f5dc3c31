import type { RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import type { Diagnostic } from '../../kernel/diagnostic.ts';
import { placeText } from '../words.ts';
import { code, type Inline, item, list, paragraph, part, strong } from './nodes.ts';

/** Every finding, in the plan's order: severity, code, place, message, why, what to do. */
export function findingNodes(plan: Plan): RootContent[] {
  return part('Findings', [plan.findings.length === 0 ? paragraph('None.') : list(plan.findings.map(findingItem))]);
}

function findingItem(finding: Diagnostic) {
  const place: Inline[] = finding.at === undefined ? [] : [' at ', code(placeText(finding.at))];
  const below = [
    ...(finding.notes ?? []).map((note) => item([`Why: ${note}`])),
    ...(finding.fix === undefined ? [] : [item([`What to do: ${finding.fix}`])]),
    ...(finding.rule === undefined ? [] : [item([`Rule: ${finding.rule}`])]),
  ];
  return item([strong(finding.severity), ' ', code(finding.code), ...place, `: ${finding.message}`], ...(below.length === 0 ? [] : [list(below)]));
}
