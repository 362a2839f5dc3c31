import type { RootContent } from 'mdast';
import { missesBound } from '../../engine/missed.ts';
import type { Plan } from '../../engine/plan.ts';
import { printTraced } from '../../kernel/traced.ts';
import { KEY_FIGURES } from '../key-figures.ts';
import { counted, countFindings } from '../words.ts';
import { decisionTable, isMain } from './decisions.ts';
import { code, heading, type Inline, item, list, paragraph, strong, table } from './nodes.ts';
import { titleOf } from './values.ts';

/** Title, what kind of document this is, what it is about. */
export function opening(plan: Plan): RootContent[] {
  const { part, alloy, plant, standing, tool } = plan;
  const marks = [part.number, part.revision === undefined ? undefined : `revision ${part.revision}`].filter((mark) => mark !== undefined);
  const asked = alloy.asked === alloy.id ? alloy.family : `${alloy.family}; asked for as ${alloy.asked}`;
  const { parts = [], inDie } = plan;
  // A part in a die has a heading of another form, so that the plans of one file can be told apart.
  const title = inDie !== undefined ? 'In this die' : parts.length > 0 ? 'Casting plan: die' : 'Casting plan:';
  return [
    heading(1, `${title}${inDie === undefined ? '' : ':'} ${[part.name, ...marks].join(', ')}`),
    ...(inDie === undefined ? [statement(standing.status)] : []),
    list([
      ...(part.note === undefined ? [] : [item([`${parts.length > 0 ? 'Die' : 'Part'}: ${part.note}`])]),
      ...parts.map(({ id, count, plan: { part: own } }) =>
        item([`${count} of ${id}: ${[own.name, own.number].filter((word) => word !== undefined).join(', ')}, read from `, code(own.file)]),
      ),
      ...(inDie === undefined
        ? []
        : [item([`In the die ${inDie.name}, read from `, code(inDie.file), ': what its castings have in common stands in the plan of the die'])]),
      item([`Alloy: ${alloy.id} (${asked})`]),
      item([`Plant: ${plant.name}${plant.invented ? ' (invented)' : ''}${plant.note === undefined ? '' : `. ${plant.note}`}`]),
      item(['Read from ', code(part.file), `, worked out by ${tool.name} ${tool.version}`]),
    ]),
  ];
}

function statement(text: string): RootContent {
  return { type: 'blockquote', children: [paragraph(strong(text))] };
}

/** Half a page: decisions, key figures, findings, what rests on unverified figures. */
export function summary(plan: Plan): RootContent[] {
  const decisions = [...plan.decisions.values()].filter(isMain);
  const figures = keyFigureRows(plan);
  return [
    heading(2, 'Summary'),
    ...(decisions.length === 0 ? [] : [decisionTable(decisions)]),
    ...(figures.length === 0 ? [] : [table(['Key figure', 'Planned', 'Held against'], figures)]),
    list([
      item([strong('Findings'), `: ${countFindings(plan.findings)}.`]),
      ...(plan.parts ?? []).map(({ id, plan: part }) => item([strong(`Findings of ${id}`), `: ${countFindings(part.findings)}; in its plan below.`])),
      item([strong('Unverified'), ...unverifiedPhrase(plan)]),
      ...(plan.unchecked.length === 0 ? [] : [item([strong('Not judged'), `: ${counted(plan.unchecked.length, 'point')}; see below.`])]),
      item([strong('Hold'), `: ${plan.standing.hold}`]),
    ]),
  ];
}

/** Key figures that a part has of its own in a die of several; the others stand in the plan of the die. */
const OF_A_PART: ReadonlySet<string> = new Set(['fill.time', 'gate.velocity', 'cooling.dwell']);

function keyFigureRows(plan: Plan): Inline[][][] {
  return KEY_FIGURES.filter(({ id }) => plan.inDie === undefined || OF_A_PART.has(id)).flatMap(({ title, id, bounds, unlessNone }) => {
    const value = plan.values.get(id);
    if (value === undefined || (unlessNone === true && value.value === 0)) return [];
    const held = bounds.flatMap(([label, bound, side]) => {
      if (plan.parts !== undefined && bound === 'part.mass') return [];
      const limit = plan.values.get(bound);
      if (limit === undefined) return [];
      if (side === 'where more') return missesBound(value, limit, 'least') ? [`${label} ${printTraced(limit)}`] : [];
      const missed = side !== undefined && missesBound(value, limit, side);
      return [`${label} ${printTraced(limit)}${missed ? ': missed' : ''}`];
    });
    return [[[plan.parts === undefined ? title : title.replace('good part', 'good set')], [printTraced(value)], [held.join(', ') || '–']]];
  });
}

function unverifiedPhrase(plan: Plan): Inline[] {
  const resting = [...plan.values.values()].filter((value) => value.status === 'memory').length;
  const first = plan.weak.find(({ figure }) => figure.status === 'memory');
  if (first === undefined) return [': no value rests on a figure from memory.'];
  return [
    `: ${resting} of ${counted(plan.values.size, 'value')} ${resting === 1 ? 'rests' : 'rest'} on a figure from memory. Check first: ${titleOf(plan, first.figure.id)}, ${printTraced(first.figure)} (`,
    code(first.figure.id),
    `), on which ${counted(first.count, 'other value')} ${first.count === 1 ? 'rests' : 'rest'}.`,
  ];
}
