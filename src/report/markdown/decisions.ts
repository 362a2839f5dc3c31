import type { RootContent, Table } from 'mdast';
import type { Decision, Plan } from '../../engine/plan.ts';
import { originText } from '../words.ts';
import { paragraph, part, strong, table } from './nodes.ts';

/** Whether a decision is about one item of a list, such as how a hole is made; the summary leaves these to `decisionNodes`. */
export function isOfItem(decision: Decision): boolean {
  return decision.id.endsWith(']');
}

export function decisionTable(decisions: readonly Decision[]): Table {
  return table(
    ['Decision', 'Taken', 'Because', 'Source and status'],
    decisions.map((decision) => [[decision.title], [decision.value], [decision.because], [originText(decision.source, decision.status)]]),
  );
}

/** The decisions about single items, and what else was possible at every decision. */
export function decisionNodes(plan: Plan): RootContent[] {
  const decisions = [...plan.decisions.values()];
  const ofItems = decisions.filter(isOfItem);
  const others = decisions.flatMap((decision) => decision.alternatives.map((other) => [[decision.title], [decision.value], [other.value], [other.because]]));
  return part('Decisions and alternatives', [
    ...(ofItems.length === 0 ? [] : [paragraph(strong('Decisions for single items')), decisionTable(ofItems)]),
    ...(others.length === 0
      ? []
      : [paragraph(strong('Alternatives')), table(['Decision', 'Taken', 'Also looked at', 'What speaks for or against it'], others)]),
  ]);
}
