import { Traced } from '../../../kernel/traced.ts';
import { metalPressure } from '../../../physics/machine.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import { workFace, workStrip } from '../die/face.ts';
import { workRunnerLayout } from '../runner-network/index.ts';
import { workLayout } from './layout.ts';

/** One combination that the search tries. */
export interface Candidate {
  readonly cavities: number;
  readonly machine: MachineSpec;
  readonly plunger: Traced<'mm'>;
}

/** Files the count of cavities with the die that follows from it, the machine's figures and the plunger, and what follows from them. */
export function fileCandidate(ledger: Ledger, { cavities, machine, plunger }: Candidate, because: string): void {
  fileCavities(ledger, cavities, because);
  workLayout(ledger);
  fileMachine(ledger, machine);
  filePlunger(ledger, plunger);
}

export function fileCavities(ledger: Ledger, cavities: number, because: string): void {
  const demand = ledger.maybe('cavities.demand');
  ledger.put(Traced.choice('machine.cavities', cavities, '1', { note: because, status: 'derived', parents: demand === undefined ? [] : [demand] }));
}

export function fileMachine(ledger: Ledger, machine: MachineSpec): void {
  ledger.setText('machine.model', machine.id);
  ledger.put(machine.lockingForce.as('machine.locking-force'));
  ledger.put(machine.tieBarX.as('machine.tie-bar-x'));
  ledger.put(machine.tieBarY.as('machine.tie-bar-y'));
  ledger.put(machine.dieHeightLeast.as('machine.die-height-least'));
  ledger.put(machine.dieHeightGreatest.as('machine.die-height-greatest'));
  ledger.put(machine.openingStroke.as('machine.opening-stroke'));
  ledger.put(machine.ejectorForce.as('machine.ejector-force'));
  ledger.put(machine.ejectorStroke.as('machine.ejector-stroke'));
  ledger.put(machine.shotStroke.as('machine.shot-stroke'));
  ledger.put(machine.cylinderDiameter.as('machine.cylinder-diameter'));
  ledger.put(machine.tailRodDiameter.as('machine.tail-rod-diameter'));
  ledger.put(machine.pressureFill.as('machine.pressure-fill'));
  ledger.put(machine.dryShotSpeed.as('machine.dry-shot-speed'));
  ledger.put(machine.dryCycle.as('machine.dry-cycle'));
  if (machine.sleeveLength !== undefined) ledger.put(machine.sleeveLength.as('machine.sleeve-length'));
  if (machine.pressureIntensified !== undefined) ledger.put(machine.pressureIntensified.as('machine.pressure-intensified'));
  if (machine.hourlyRate !== undefined) ledger.put(machine.hourlyRate.as('machine.hourly-rate'));
  if (machine.coreCircuits !== undefined) ledger.put(machine.coreCircuits.as('machine.core-circuits'));
  ledger.setText('machine.circuits-given', machine.coreCircuits === undefined ? 'no' : 'yes');
  ledger.setText('machine.vacuum', machine.vacuum === undefined ? 'not given' : machine.vacuum ? 'yes' : 'no');
  ledger.setText('machine.extraction', machine.extraction ?? 'not given');
}

/** The plunger, and what hangs on it: metal pressure, biscuit, the face of the die, and the way of the runner. */
export function filePlunger(ledger: Ledger, plunger: Traced<'mm'>): void {
  ledger.apply(metalPressure, {
    hydraulic_pressure: ledger.maybe('machine.pressure-intensified') ?? ledger.value('machine.pressure-fill'),
    cylinder_diameter: ledger.value('machine.cylinder-diameter'),
    plunger_diameter: ledger.put(plunger.as('machine.plunger')),
  });
  fileFeeder(ledger);
  workStrip(ledger);
  workFace(ledger);
  // Machine and pressure have no say in it.
  ledger.once(`runner ${ledger.value('machine.cavities').value} ${ledger.value('clamp.feeder-diameter').value}`, () => workRunnerLayout(ledger));
}

/** The biscuit of a cold chamber has the plunger's diameter; a hot chamber's sprue is counted in the runner share. */
function fileFeeder(ledger: Ledger): void {
  const plunger = ledger.value('machine.plunger');
  if (ledger.text('machine.chamber') === 'cold') ledger.put(plunger.as('clamp.feeder-diameter', 'the biscuit has the diameter of the plunger'));
  else
    ledger.assume('clamp.feeder-diameter', 0, 'mm', { note: 'hot chamber: no biscuit; the foot of the sprue is counted with the runner', status: 'derived' });
}
