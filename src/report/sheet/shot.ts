import type { RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import type { Line } from './form.ts';
import { rowsOf, rowsTable } from './lines.ts';
import { legend } from './parts.ts';
import { linesFor } from './sets.ts';

/** What is set at the machine. */
export const SHOT_LINES: readonly Line[] = [
  {
    title: 'Machine',
    pieces: [
      { id: 'machine.model' },
      { id: 'machine.plunger', label: 'plunger' },
      { id: 'machine.sleeve-length', label: 'sleeve' },
      { id: 'machine.cavities', label: 'cavities' },
    ],
  },
  {
    title: 'Locking force',
    pieces: [
      { id: 'intensification.standing-force', label: 'at least' },
      { id: 'clamp.locking-force', label: 'at least', unless: ['intensification.standing-force'] },
    ],
    within: [
      { id: 'machine.locking-force', label: 'rated' },
      { id: 'intensification.standing-use', label: 'use' },
      { id: 'clamp.use', label: 'use', unless: ['intensification.standing-force'] },
    ],
  },
  {
    title: 'Die height, opening',
    pieces: [{ id: 'die.height' }, { id: 'die.opening-stroke', label: 'opens at least' }],
    within: [
      { id: 'machine.die-height-least', to: 'machine.die-height-greatest' },
      { id: 'machine.opening-stroke', label: 'opens' },
    ],
  },
  {
    title: 'Metal held',
    pieces: [{ id: 'fill.holding-temperature', unless: ['pot.temperature'] }],
    within: [{ id: 'alloy.casting-temperature-least', to: 'alloy.casting-temperature-greatest' }],
  },
  { title: 'Pot', pieces: [{ id: 'pot.temperature' }], within: [{ id: 'pot.temperature-least', to: 'pot.temperature-greatest' }] },
  { title: 'Nozzle', pieces: [{ id: 'gooseneck.nozzle-least', to: 'gooseneck.nozzle-greatest' }] },
  {
    title: 'Metal at the gate',
    pieces: [{ id: 'fill.gate-temperature' }],
    within: [{ id: 'fill.gate-temperature-least', to: 'fill.gate-temperature-greatest' }],
  },
  { title: 'Preheat of the die', pieces: [{ id: 'die.preheat' }], within: [{ id: 'die.preheat-least', to: 'die.preheat-greatest' }] },
  {
    title: 'Die before the shot',
    pieces: [{ id: 'fill.die-temperature' }],
    within: [{ id: 'fill.die-temperature-least', to: 'fill.die-temperature-greatest' }],
  },
  {
    title: 'Coolant',
    pieces: [
      { id: 'cooling.medium' },
      { id: 'cooling.unit', label: 'unit' },
      { id: 'cooling.coolant-temperature', label: 'at' },
      { id: 'cooling.flow', label: 'flow of a circuit' },
      { id: 'cooling.pump-flow', label: 'of all' },
    ],
    within: [
      { id: 'cooling.rise', label: 'rises' },
      { id: 'cooling.rise-greatest', label: 'at most' },
    ],
  },
  {
    title: 'Metal of a shot',
    pieces: [{ id: 'shot.mass' }, { id: 'cycle.ladle', label: 'ladled in' }, { id: 'cycle.delay', label: 'at rest for' }],
  },
  { title: 'Sleeve fill', pieces: [{ id: 'sleeve.fill' }], within: [{ id: 'sleeve.fill-least', to: 'sleeve.fill-greatest' }] },
  { title: 'Biscuit', pieces: [{ id: 'sleeve.biscuit-thickness' }], within: [{ id: 'sleeve.biscuit-least', to: 'sleeve.biscuit-greatest' }] },
  {
    title: 'At: pour hole shut',
    pieces: [{ id: 'slow-shot.travel-hole-closed' }, { id: 'slow-shot.hole-speed' }],
    within: [{ id: 'slow-shot.hole-speed-limit', label: 'at most' }],
  },
  {
    title: 'At: slow speed',
    pieces: [{ id: 'slow-shot.travel-ramp-end' }, { id: 'slow-shot.speed' }],
    within: [{ id: 'slow-shot.window-least', to: 'slow-shot.window-greatest' }],
  },
  { title: 'At: sleeve full', pieces: [{ id: 'sleeve.travel-when-full' }] },
  {
    title: 'At: change-over',
    pieces: [{ id: 'slow-shot.change-over' }, { id: 'slow-shot.fast-acceleration' }],
    within: [
      { id: 'slow-shot.change-over-window', label: 'plus-minus' },
      { id: 'slow-shot.acceleration-greatest', label: 'at most' },
    ],
  },
  { title: 'At: gate reached', pieces: [{ id: 'sleeve.travel-at-gate' }, { id: 'slow-shot.gate-speed' }] },
  {
    title: 'At: fast speed',
    pieces: [{ id: 'slow-shot.travel-fast' }, { id: 'sleeve.fast-speed' }],
    within: [{ id: 'shot.speed-available', label: 'at most' }],
  },
  { title: 'At: braking begins', pieces: [{ id: 'slow-shot.travel-brake' }] },
  { title: 'At: cavities full', pieces: [{ id: 'slow-shot.travel-filled' }] },
  { title: 'At: end of travel', pieces: [{ id: 'slow-shot.travel-end' }], within: [{ id: 'machine.shot-stroke', label: 'stroke' }] },
  {
    title: 'Plunger speed',
    pieces: [{ id: 'pot.plunger-speed' }, { id: 'pot.stroke-needed', label: 'over' }],
    within: [
      { id: 'shot.speed-available', label: 'at most', unless: ['sleeve.fast-speed'] },
      { id: 'machine.shot-stroke', label: 'stroke', unless: ['sleeve.fast-speed'] },
    ],
  },
  { title: 'Shot valve', pieces: [{ id: 'pq2.needed-throttle', after: 'of the dry-shot speed' }], within: [{ id: 'pq2.dry-speed', label: 'dry shot' }] },
  { title: 'Gate velocity', pieces: [{ id: 'gate.velocity' }], within: [{ id: 'gate.velocity-least', to: 'gate.velocity-greatest' }] },
  { title: 'Fill time', pieces: [{ id: 'fill.time' }], within: [{ id: 'fill.longest-time', label: 'at most' }] },
  {
    title: 'Pressure rise',
    pieces: [{ id: 'intensification.rise-needed', label: 'within' }],
    within: [{ id: 'intensification.rise-least', to: 'intensification.rise-greatest', label: 'machines' }],
  },
  {
    title: 'Hold time',
    pieces: [
      { id: 'cooling.hold', label: 'under pressure for' },
      { id: 'cooling.biscuit-time', label: 'on the biscuit for' },
    ],
    within: [{ id: 'intensification.hold-least', to: 'intensification.hold-greatest' }],
  },
  {
    title: 'Dwell',
    pieces: [
      { id: 'cooling.dwell', label: 'shut after the fill for' },
      { id: 'solidification.governs', label: 'set by' },
    ],
    within: [{ id: 'cooling.retention-least', to: 'cooling.retention-greatest', label: 'handbooks' }],
  },
  { title: 'Hydraulic, fill', pieces: [{ id: 'machine.pressure-fill' }, { id: 'intensification.fill-pressure', label: 'on the metal' }] },
  {
    title: 'Hydraulic, full',
    pieces: [{ id: 'intensification.hydraulic-pressure' }, { id: 'intensification.set-pressure', label: 'on the metal' }],
    within: [
      { id: 'machine.pressure-intensified', label: 'at most' },
      { id: 'clamp.pressure-least', to: 'clamp.pressure-greatest', label: 'metal' },
    ],
  },
  {
    title: 'Vacuum',
    pieces: [{ id: 'vent.vacuum' }, { id: 'vent.vacuum-pressure', label: 'down to' }, { id: 'vent.evacuation-time', label: 'within' }],
    within: [{ id: 'vent.window-least', to: 'vent.window-greatest', label: 'there are' }],
  },
  {
    title: 'Ejectors',
    pieces: [{ id: 'ejection.stroke' }, { id: 'ejection.return' }],
    within: [{ id: 'machine.ejector-stroke', label: 'stroke' }],
  },
  {
    title: 'Spray',
    pieces: [
      { id: 'lubricant.spray' },
      { id: 'lubricant.concentrate', unless: ['lubricant.spray'] },
      { id: 'cycle.spray-each', label: 'in' },
      { id: 'cycle.spray-interval', label: 'shots to a spraying' },
      { id: 'cycle.blow-each', label: 'blown off for' },
    ],
  },
  {
    title: 'Lubricant',
    pieces: [{ id: 'lubricant.kind' }, { id: 'lubricant.dilution', label: 'water to one' }, { id: 'lubricant.plunger', label: 'plunger' }],
    within: [{ id: 'lubricant.dilution-least', to: 'lubricant.dilution-greatest', label: 'water' }],
  },
  {
    title: 'Cycle',
    pieces: [{ id: 'cycle.time' }, { id: 'cycle.shots' }],
    within: [{ id: 'cooling.cycle-least', label: 'lines hold' }],
  },
];

export function shotBody(plan: Plan): RootContent[] {
  const rows = rowsOf(plan, linesFor(plan, 'shot', SHOT_LINES));
  return [rowsTable(rows, { title: 'At the machine', planned: 'Set', within: 'Window or bound' }), ...legend(rows)];
}
