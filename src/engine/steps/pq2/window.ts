import { gateArea, velocityFromFlow } from '../../../physics/gate.ts';
import { diePressure } from '../../../physics/pq2.ts';
import { flowMargin, machineMargin, velocityMarginGreatest, velocityMarginLeast } from '../../../physics/pq2-margin.ts';
import { fillTimeAtFlow, metalPower } from '../../../physics/pq2-plan.ts';
import {
  drivenVelocity,
  greatestPlunger,
  leastPlunger,
  machineFlow,
  machinePressure,
  machineUse,
  neededPressure,
  neededThrottle,
  powerUse,
} from '../../../physics/pq2-window.ts';
import { shotFlow } from '../../../physics/shot-plan.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { die } from './lines.ts';
import { advisePlunger } from './plungers.ts';

/** The word of `pq2.place` for a point that the machine does not reach. */
const INSIDE = 'inside';
const BEYOND = 'beyond the machine';

/** The planned point, the bounds of the window, and how far the point is from each. */
export function workBounds(ledger: Ledger): void {
  ledger.attempt('pq2.pressure', 'Planned point', () => plannedPoint(ledger));
  ledger.attempt('pq2.least-flow', 'Least flow', () => {
    const least = ledger.apply(
      shotFlow,
      { cavities: ledger.value('machine.cavities'), volume: ledger.value('gate.flow-volume'), time: ledger.value('fill.longest-time') },
      { id: 'pq2.least-flow' },
    );
    ledger.apply(flowMargin, { flow: ledger.value('shot.flow'), least });
  });
  ledger.attempt('pq2.least-pressure', 'Bounds by the gate velocity', () => velocityBounds(ledger));
}

/** Where the planned point lies, and the ways in when the machine does not reach it. */
export function workPlace(ledger: Ledger): void {
  ledger.attempt('pq2.place', 'Window of pressure and flow', () => {
    const place = choose(ledger, 'pq2.place');
    if (place.value === INSIDE && isLateWhenPoor(ledger))
      ledger.record({ ...place, because: `${place.because} Outside if the discharge coefficient is as low as looked at: it then fills too slowly.` });
    if (place.value === BEYOND) ledger.attempt('pq2.remedy', 'Way into the window', () => waysIn(ledger));
  });
}

/** Whether the poorest discharge that is looked at fills beyond the longest time. */
function isLateWhenPoor(ledger: Ledger): boolean {
  const [low, least] = [ledger.maybe('pq2.spread-flow', 'low'), ledger.maybe('pq2.least-flow')];
  return low !== undefined && least !== undefined && low.value < least.value;
}

const lineOf = (ledger: Ledger) => ({ static_pressure: ledger.value('pq2.static-pressure'), dry_flow: ledger.value('pq2.dry-flow') });

/** The flow of the plan through its gates: at the planned gate velocity, unless the gate area is pinned. */
function plannedPoint(ledger: Ledger): void {
  const line = lineOf(ledger);
  const flow = ledger.value('shot.flow');
  const velocity = ledger.apply(velocityFromFlow, { flow, area: ledger.value('pq2.gate-area') }, { id: 'pq2.velocity' });
  const pressure = ledger.apply(diePressure, { ...die(ledger), velocity }, { id: 'pq2.pressure' });
  ledger.apply(machinePressure, { ...line, flow }, { id: 'pq2.pressure-left' });
  ledger.apply(machineUse, { ...line, flow, pressure });
  ledger.apply(machineMargin, { flow, operating_flow: ledger.value('pq2.operating-flow') });
  const power = ledger.apply(metalPower, { pressure, flow });
  const use = ledger.apply(powerUse, { power, greatest_power: ledger.value('pq2.greatest-power') });
  if (pressure.value < line.static_pressure.value) ledger.apply(neededThrottle, { ...line, throttle: ledger.value('pq2.throttle'), flow, pressure });
  if (use.value > 100) return;
  const point = { force: ledger.value('pq2.hydraulic-force'), dry_speed: ledger.value('pq2.dry-speed'), flow, pressure };
  ledger.apply(leastPlunger, point);
  ledger.apply(greatestPlunger, point);
}

function velocityBounds(ledger: Ledger): void {
  const velocity = ledger.value('pq2.velocity');
  const least = ledger.value('gate.velocity-least');
  const greatest = ledger.value('gate.velocity-greatest');
  const pressure = ledger.apply(diePressure, { ...die(ledger), velocity: least }, { id: 'pq2.least-pressure' });
  ledger.apply(diePressure, { ...die(ledger), velocity: greatest }, { id: 'pq2.greatest-pressure' });
  ledger.apply(velocityMarginLeast, { velocity, least });
  ledger.apply(velocityMarginGreatest, { velocity, greatest });
  ledger.apply(machineUse, { ...lineOf(ledger), flow: ledger.value('pq2.least-flow'), pressure }, { id: 'pq2.corner-use' });
}

/** Each way by its own number; which of them is taken is a decision of its own. */
function waysIn(ledger: Ledger): void {
  const line = lineOf(ledger);
  ledger.apply(neededPressure, { hydraulic_pressure: ledger.value('machine.pressure-fill'), use: ledger.value('pq2.machine-use') });
  const velocity = ledger.apply(drivenVelocity, { pressure: ledger.value('pq2.pressure-left'), ...die(ledger) }, { id: 'pq2.needed-velocity' });
  const volume = ledger.value('gate.flow-volume');
  if (velocity.value > 0) ledger.apply(gateArea, { volume, velocity, time: ledger.value('fill.time') }, { id: 'pq2.needed-gate-area' });
  const flow = ledger.apply(machineFlow, { ...line, pressure: ledger.value('pq2.pressure') }, { id: 'pq2.flow-at-pressure' });
  if (flow.value > 0) ledger.apply(fillTimeAtFlow, { cavities: ledger.value('machine.cavities'), volume, flow }, { id: 'pq2.needed-time' });
  // The plungers of a machine are compared in a plan only, and without that there is nothing to choose by.
  if (!ledger.explains) return;
  advisePlunger(ledger);
  choose(ledger, 'pq2.remedy');
}
