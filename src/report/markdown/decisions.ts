import type { RootContent, Table } from 'mdast';
import type { Decision, Plan } from '../../engine/plan.ts';
import { originText } from '../words.ts';
import { paragraph, part, strong, table } from './nodes.ts';

/** Decisions that only pick a row of a table: nothing that an engineer would look for on the first page. */
const MINOR: ReadonlySet<string> = new Set([
  'fill.demand',
  'fill.group',
  'solidification.limit',
  'heat.duty',
  'die.steel-group',
  'die.intricacy',
  'die.steel-grade',
  'die.insert-layout',
  'ejection.pin-ends',
  'ejection.pins-by',
  'ejection.return',
  'cycle.path',
  'cycle.removal',
  'lubricant.kind',
  'lubricant.plunger',
  'finish.cooling',
  'finish.impregnation',
  'finish.press-drive',
  'finish.press-model',
  'cooling.unit',
  'furnace.holding',
  'furnace.melting',
]);
/** What else was looked at stands in a table of these decisions' own sections, with its figures. */
const SHOWN_IN_SECTION: ReadonlySet<string> = new Set(['parting.die-opening', 'machine.model']);

/** Whether a decision is for the first page; one about a single item, such as how a hole is made, is left to `decisionNodes`. */
export function isMain(decision: Decision): boolean {
  return !decision.id.endsWith(']') && !MINOR.has(decision.id);
}

export function decisionTable(decisions: readonly Decision[]): Table {
  return table(
    ['Decision', 'Taken', 'Because', 'Source and status'],
    decisions.map((decision) => [[decision.title], [decision.value], [decision.because], [originText(decision.source, decision.status)]]),
  );
}

/** The decisions that the summary leaves out, and what else was possible at every decision. */
export function decisionNodes(plan: Plan): RootContent[] {
  const decisions = [...plan.decisions.values()];
  const further = decisions.filter((decision) => !isMain(decision));
  const others = decisions
    .filter((decision) => !SHOWN_IN_SECTION.has(decision.id))
    .flatMap((decision) => decision.alternatives.map((other) => [[decision.title], [decision.value], [other.value], [other.because]]));
  return part('Decisions and alternatives', [
    ...(further.length === 0 ? [] : [paragraph(strong('Further decisions')), decisionTable(further)]),
    ...(others.length === 0
      ? []
      : [paragraph(strong('Alternatives')), table(['Decision', 'Taken', 'Also looked at', 'What speaks for or against it'], others)]),
  ]);
}
