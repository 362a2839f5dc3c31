import type { RootContent } from 'mdast';
import { allFindings, type Plan } from '../../engine/plan.ts';
import type { Diagnostic } from '../../kernel/diagnostic.ts';
import { code, type Inline, item, list, paragraph, strong, table } from '../markdown/nodes.ts';
import type { Line, PlanTable } from './form.ts';
import { rowsOf, rowsTable } from './lines.ts';
import { legend, planRows } from './parts.ts';
import { linesFor } from './sets.ts';

/** Hold points, then the order of the first shots; each is signed for before the next. */
export const TRIAL_STEPS: readonly Line[] = [
  {
    title: 'Hold: clamp',
    pieces: [
      { id: 'intensification.standing-force', label: 'needed' },
      { id: 'clamp.locking-force', label: 'needed', unless: ['intensification.standing-force'] },
      { id: 'machine.locking-force', label: 'rated' },
      { id: 'intensification.standing-use', label: 'use' },
      { id: 'clamp.use', label: 'use', unless: ['intensification.standing-force'] },
    ],
    note: 'slides locked, parting faces clean and tight',
  },
  { title: 'Hold: interlocks', pieces: [], note: 'guards tried one by one; opening of the die with timer and guard' },
  {
    title: 'Hold: leak test',
    pieces: [
      { id: 'cooling.medium', label: 'lines for' },
      { id: 'cooling.pressure', label: 'pressure in use, absolute,' },
    ],
  },
  { title: 'Hold: dryness', pieces: [], note: 'die without a drop in corners, pin holes and slides; sleeve, ladle and tools dry and warm' },
  { title: 'Dry run', pieces: [{ id: 'ejection.return' }], note: 'clamp, ejectors and cores without metal, until every switch proves its place' },
  {
    title: 'Preheat',
    pieces: [{ id: 'die.preheat' }, { id: 'die.preheat-least', to: 'die.preheat-greatest', label: 'within' }],
    note: 'evenly, both halves, slides and cores, no coolant running',
  },
  {
    title: 'Short shots',
    pieces: [
      { id: 'cycle.start-shots', label: 'about', after: 'until the die is warm' },
      { id: 'clamp.pressure-reached', label: 'pressure raised last to' },
    ],
    note: 'slow, low pressure; then the shot sheet',
  },
];

/** What is written down beside the plan once the die runs evenly. */
export const TRIAL_RECORD: readonly Line[] = [
  {
    title: 'Metal in the furnace',
    pieces: [{ id: 'fill.holding-temperature', unless: ['pot.temperature'] }],
    within: [{ id: 'alloy.casting-temperature-least', to: 'alloy.casting-temperature-greatest' }],
  },
  { title: 'Pot', pieces: [{ id: 'pot.temperature' }], within: [{ id: 'pot.temperature-least', to: 'pot.temperature-greatest' }] },
  {
    title: 'Die before the shot',
    pieces: [{ id: 'heat.surface-before' }, { id: 'fill.die-temperature', label: 'wanted' }],
    within: [{ id: 'fill.die-temperature-least', to: 'fill.die-temperature-greatest' }],
  },
  { title: 'Coolant', pieces: [{ id: 'cooling.coolant-temperature' }], within: [{ id: 'cooling.rise-greatest', label: 'rise at most' }] },
  { title: 'Flow of a circuit', pieces: [{ id: 'cooling.flow' }], within: [{ id: 'cooling.rise', label: 'rise' }] },
  { title: 'Metal of a shot', pieces: [{ id: 'shot.mass' }] },
  { title: 'Biscuit', pieces: [{ id: 'sleeve.biscuit-thickness' }], within: [{ id: 'sleeve.biscuit-least', to: 'sleeve.biscuit-greatest' }] },
  { title: 'Slow-shot speed', pieces: [{ id: 'slow-shot.speed' }], within: [{ id: 'slow-shot.window-least', to: 'slow-shot.window-greatest' }] },
  { title: 'Change-over', pieces: [{ id: 'slow-shot.change-over' }], within: [{ id: 'slow-shot.change-over-window', label: 'plus-minus' }] },
  { title: 'Fast-shot speed', pieces: [{ id: 'sleeve.fast-speed' }], within: [{ id: 'shot.speed-available', label: 'at most' }] },
  {
    title: 'Plunger speed',
    pieces: [{ id: 'pot.plunger-speed' }],
    within: [{ id: 'shot.speed-available', label: 'at most', unless: ['sleeve.fast-speed'] }],
  },
  { title: 'Plunger travel', pieces: [{ id: 'pot.stroke-needed' }], within: [{ id: 'machine.shot-stroke', label: 'at most', unless: ['sleeve.fast-speed'] }] },
  { title: 'Fill time', pieces: [{ id: 'fill.time' }], within: [{ id: 'fill.longest-time', label: 'at most' }] },
  {
    title: 'Metal pressure',
    pieces: [{ id: 'clamp.pressure-reached' }, { id: 'intensification.rise-needed', label: 'within' }],
    within: [{ id: 'clamp.pressure-least', to: 'clamp.pressure-greatest' }],
  },
  { title: 'Hold time', pieces: [{ id: 'cooling.hold' }], within: [{ id: 'intensification.hold-least', to: 'intensification.hold-greatest' }] },
  { title: 'Vacuum reached', pieces: [{ id: 'vent.vacuum-pressure', label: 'at most' }] },
  { title: 'Dwell', pieces: [{ id: 'cooling.dwell' }], within: [{ id: 'cooling.retention-least', to: 'cooling.retention-greatest', label: 'handbooks' }] },
  {
    title: 'Casting as the die opens',
    pieces: [{ id: 'cooling.opening-temperature' }],
    within: [{ id: 'cooling.eject-temperature', label: 'at most' }],
  },
  { title: 'Ejection force', pieces: [{ id: 'ejection.force' }], within: [{ id: 'ejection.force-low', to: 'ejection.force-high' }] },
  {
    title: 'One spraying',
    pieces: [{ id: 'lubricant.spray' }, { id: 'lubricant.concentrate', unless: ['lubricant.spray'] }, { id: 'cycle.spray-each', label: 'in' }],
    within: [{ id: 'lubricant.dilution-least', to: 'lubricant.dilution-greatest', label: 'water to one of concentrate' }],
  },
  { title: 'Cycle', pieces: [{ id: 'cycle.time' }], within: [{ id: 'cooling.cycle-least', label: 'lines hold' }] },
];

/** The inspection list of the plan. */
export const INSPECTION: PlanTable = { section: 'finish', title: 'Inspection' };
/** What of it is looked at on the first castings, by its last column. */
const FIRST = /first casting|new die/;
const MOST_CHECKS = 5;
const MOST_FINDINGS = 3;

export function trialBody(plan: Plan): RootContent[] {
  const steps = rowsOf(plan, linesFor(plan, 'trial', TRIAL_STEPS, false));
  const record = rowsOf(plan, linesFor(plan, 'trial', TRIAL_RECORD));
  return [
    rowsTable(steps, { title: 'In this order', planned: plan.standing.hold, empty: ['Signed'] }),
    rowsTable(record, { title: 'To be recorded', planned: 'Planned', within: 'Window or bound', empty: ['Measured'] }),
    ...legend([...steps, ...record]),
    ...checks(plan),
    ...findings(plan),
  ];
}

function checks(plan: Plan): RootContent[] {
  const rows = planRows(plan, INSPECTION).filter((row) => FIRST.test(row.at(-1) ?? ''));
  if (rows.length === 0) return [];
  const shown = rows.slice(0, MOST_CHECKS).map((row) => [...row.slice(0, -1).map((text): Inline[] => [text]), []]);
  const more = rows.slice(MOST_CHECKS);
  return [
    table(['On the first castings', 'How', 'Against', 'Plus-minus', 'Measured'], shown),
    ...(more.length === 0 ? [] : [paragraph(`And ${more.length} more, in the inspection list of the plan.`)]),
  ];
}

/** What the plan could not settle: errors first, then warnings, the first few in full, all by their code. */
function findings(plan: Plan): RootContent[] {
  const of = (severity: Diagnostic['severity']): Diagnostic[] => allFindings(plan).filter((finding) => finding.severity === severity);
  const open = [...of('error'), ...of('warning')];
  if (open.length === 0) return [paragraph('No error and no warning of the plan is open.')];
  const more = open.slice(MOST_FINDINGS).flatMap((finding, i): Inline[] => [i === 0 ? '' : ', ', code(finding.code)]);
  return [
    paragraph(strong('Findings that the trial must answer')),
    list([
      ...open
        .slice(0, MOST_FINDINGS)
        .map((finding) => item([strong(severityText(finding)), ' ', code(finding.code), `: ${finding.message}. ${finding.fix ?? ''}`])),
      ...(more.length === 0 ? [] : [item(['With what to do, in the plan: ', ...more])]),
    ]),
  ];
}

/** Accepting a finding for a run answers nothing at the machine, so that the trial still looks at it. */
function severityText({ severity, accepted }: Diagnostic): string {
  return accepted === undefined ? severity : `${severity}, accepted`;
}
