import type { Traced } from '../../../kernel/traced.ts';
import { velocityFromFlow } from '../../../physics/gate.ts';
import { bestPlungerArea, dryFlow, operatingFlow, staticPressure } from '../../../physics/pq2.ts';
import {
  bestPlungerDiameter,
  dischargeOff,
  drySpeed,
  fillTimeAtFlow,
  gateAreaTotal,
  greatestPowerFlow,
  greatestPowerPressure,
  hydraulicForce,
  metalPower,
} from '../../../physics/pq2-plan.ts';
import { machinePressure } from '../../../physics/pq2-window.ts';
import { fastSpeed } from '../../../physics/sleeve/travel.ts';
import type { Ledger } from '../../ledger.ts';
import type { ValueId } from '../../vocabulary/index.ts';

/** Items of the two discharge coefficients that stand beside the planned one. */
export const SPREAD = ['low', 'high'] as const;

/**
 * The line of the machine, the line of the die, where they cross, and the plunger that would give the greatest flow.
 * Says whether there is a crossing.
 */
export function workLines(ledger: Ledger): boolean {
  ledger.attempt('pq2.static-pressure', 'Line of the machine', () => machineLine(ledger));
  if (!ledger.values.has('pq2.static-pressure')) return false;
  ledger.attempt('pq2.operating-flow', 'Crossing of machine and die', () => crossings(ledger));
  return ledger.values.has('pq2.operating-flow');
}

function crossings(ledger: Ledger): void {
  const gate_area = ledger.apply(gateAreaTotal, { cavities: ledger.value('machine.cavities'), area: ledger.value('gate.area') });
  crossing(ledger, ledger.value('gate.discharge'), CROSSING);
  for (const item of SPREAD) {
    const share = ledger.look('pq2/planned', `spread_${item}`, {}, 'pq2.spread-share', item);
    const discharge = ledger.apply(dischargeOff, { discharge: ledger.value('gate.discharge'), share }, { item });
    crossing(ledger, discharge, SPREAD_CROSSING, item);
  }
  const drive = { hydraulic_force: ledger.value('pq2.hydraulic-force'), dry_speed: ledger.value('pq2.dry-speed') };
  ledger.apply(bestPlungerDiameter, { area: ledger.apply(bestPlungerArea, { ...drive, ...die(ledger), gate_area }) });
}

/** What the line of the die is made of besides the gate area. */
export function die(ledger: Ledger): { readonly density: Traced<'kg/m3'>; readonly discharge: Traced<'1'> } {
  return { density: ledger.value('gate.liquid-density').in('kg/m3'), discharge: ledger.value('gate.discharge') };
}

/** A tail rod takes its area from the cylinder; the pressure is that of the fill phase, which no intensifier raises. */
function machineLine(ledger: Ledger): void {
  const pressure = ledger.value('machine.pressure-fill');
  const throttle = ledger.look('pq2/planned', 'throttle', {}, 'pq2.throttle');
  const speed = ledger.apply(drySpeed, { dry_speed: ledger.value('machine.dry-shot-speed'), pressure, rated_pressure: ratedPressure(ledger), throttle });
  const cylinder = { cylinder_diameter: ledger.value('machine.cylinder-diameter'), rod_diameter: ledger.value('machine.tail-rod-diameter') };
  const plunger_diameter = ledger.value('machine.plunger');
  ledger.apply(hydraulicForce, { pressure, ...cylinder });
  const static_pressure = ledger.apply(staticPressure, { hydraulic_pressure: pressure, ...cylinder, plunger_diameter });
  const dry_flow = ledger.apply(dryFlow, { dry_speed: speed, plunger_diameter });
  const flow = ledger.apply(greatestPowerFlow, { dry_flow });
  ledger.apply(metalPower, { pressure: ledger.apply(greatestPowerPressure, { static_pressure }), flow }, { id: 'pq2.greatest-power' });
}

/** A plant states the dry-shot speed at its own pressure; one that the engineer has pinned belongs to the planned pressure. */
function ratedPressure(ledger: Ledger): Traced<'MPa'> {
  const machine = ledger.plant.machines.find((candidate) => candidate.id === ledger.text('machine.model'));
  return machine === undefined || ledger.value('machine.dry-shot-speed').kind === 'pinned'
    ? ledger.put(ledger.value('machine.pressure-fill').as('pq2.pressure-rated', 'the dry-shot speed is given for the planned pressure'))
    : ledger.put(machine.pressureFill.as('pq2.pressure-rated', 'the plant states the dry-shot speed at this pressure'));
}

interface CrossingIds {
  readonly flow: ValueId;
  readonly pressure: ValueId;
  readonly velocity: ValueId;
  readonly speed: ValueId;
  readonly time: ValueId;
}

const CROSSING: CrossingIds = {
  flow: 'pq2.operating-flow',
  pressure: 'pq2.operating-pressure',
  velocity: 'pq2.operating-velocity',
  speed: 'pq2.operating-speed',
  time: 'pq2.operating-time',
};
const SPREAD_CROSSING: CrossingIds = {
  flow: 'pq2.spread-flow',
  pressure: 'pq2.spread-pressure',
  velocity: 'pq2.spread-velocity',
  speed: 'pq2.spread-speed',
  time: 'pq2.spread-time',
};

function crossing(ledger: Ledger, discharge: Traced<'1'>, ids: CrossingIds, item?: string): void {
  const as = (id: ValueId): { id: ValueId; item?: string } => (item === undefined ? { id } : { id, item });
  const gate_area = ledger.value('pq2.gate-area');
  const line = { static_pressure: ledger.value('pq2.static-pressure'), dry_flow: ledger.value('pq2.dry-flow') };
  const flow = ledger.apply(operatingFlow, { ...line, density: die(ledger).density, discharge, gate_area }, as(ids.flow));
  ledger.apply(machinePressure, { ...line, flow }, as(ids.pressure));
  ledger.apply(velocityFromFlow, { flow, area: gate_area }, as(ids.velocity));
  ledger.apply(fastSpeed, { flow, diameter: ledger.value('machine.plunger') }, as(ids.speed));
  ledger.apply(fillTimeAtFlow, { cavities: ledger.value('machine.cavities'), volume: ledger.value('gate.flow-volume'), flow }, as(ids.time));
}
