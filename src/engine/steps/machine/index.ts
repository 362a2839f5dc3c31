import { didYouMean, orList } from '../../../kernel/spelling.ts';
import { Traced } from '../../../kernel/traced.ts';
import { hoursNeeded } from '../../../physics/clamp-use.ts';
import { meanRate } from '../../../physics/machine.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block } from '../../plan.ts';
import { type Step, tableBlock, textBlock, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { fileCandidate } from './candidate.ts';
import { cavitiesToTry } from './cavities.ts';
import { recordDecisions } from './decisions.ts';
import { workPartLayout } from './layout.ts';
import { search } from './search.ts';

function work(ledger: Ledger): void {
  workPartLayout(ledger);
  const counts = cavitiesToTry(ledger);
  const found = search(ledger, machinesToTry(ledger), counts);
  if (found === undefined) {
    ledger.findings.push({
      code: 'machine/no-machine',
      severity: 'error',
      message: `the plant has no machine for ${ledger.text('machine.kind')}`,
      at: ledger.part.at,
      fix: 'plan with another plant, or add such a machine to the plant file',
    });
    ledger.leaveUnchecked({ id: 'machine.model', title: 'Machine', missing: `a ${ledger.text('machine.kind')} machine in the plant` });
    return;
  }
  const { candidate } = found.chosen;
  const waived = found.fits && found.chosen.stop !== undefined;
  fileCandidate(ledger, candidate);
  const passing = found.tried.filter(
    (entry) => entry.stop === undefined || (found.fits && entry.stop.soft && entry.candidate.machine === candidate.machine),
  ).length;
  ledger.put(
    Traced.choice('machine.tried', found.tried.length, '1', {
      note: found.fits && !waived ? 'machines from the smallest up to the one taken, each with its plungers' : 'all machines, each with its plungers',
      status: 'derived',
    }),
  );
  const note = waived ? 'of those, on the machine taken; one warning is waived, because nothing passes it' : 'of those';
  ledger.put(Traced.choice('machine.fitting', found.fits ? Math.max(1, passing) : 0, '1', { note, status: 'derived' }));
  ledger.put(
    Traced.choice('machine.smaller', smallerInPlant(ledger, candidate.machine), '1', {
      note: 'whether they were tried or not',
      status: 'derived',
    }),
  );
  ledger.attempt('machine.hours-needed', 'Machine hours a year', () => hours(ledger));
  recordDecisions(ledger, found);
}

function smallerInPlant(ledger: Ledger, { chamber, shot, lockingForce }: MachineSpec): number {
  const ofKind = ledger.plant.machines.filter((machine) => machine.chamber === chamber && (chamber === 'hot' || machine.shot === shot));
  return ofKind.filter((machine) => machine.lockingForce.value < lockingForce.value).length;
}

/** The count of cavities was taken at the pace of the family; now that the machine is known, its size gives a better one. */
function hours(ledger: Ledger): void {
  const { family } = ledger.alloy;
  const chamber = ledger.text('machine.chamber');
  const pace = chamber === 'cold' ? 'cold-chamber' : family === 'magnesium' ? 'magnesium-hot-chamber' : 'hot-chamber';
  const size = { pace, locking_force: ledger.value('machine.locking-force') };
  const rate = ledger.apply(
    meanRate,
    {
      least_rate: ledger.look('machine/shots-by-size', 'least', size, 'machine.size-rate-least'),
      greatest_rate: ledger.look('machine/shots-by-size', 'greatest', size, 'machine.size-rate-greatest'),
    },
    { id: 'machine.rate' },
  );
  ledger.setText('machine.hours-from', 'pace of the size');
  ledger.apply(hoursNeeded, {
    parts: ledger.value('production.per-year'),
    cavities: ledger.value('machine.cavities'),
    rate,
    use_share: ledger.value('cavities.use-share'),
    reject_share: ledger.value('cavities.reject-share'),
  });
}

/** Machines of the kind decided; a pinned machine is the only one, and a pinned plunger that some machine has narrows them. */
function machinesToTry(ledger: Ledger): MachineSpec[] {
  const kind = ledger.text('machine.kind');
  const chamber = kind === 'hot-chamber' ? 'hot' : 'cold';
  const shot = kind === 'cold-chamber-vertical-shot' ? 'vertical' : 'horizontal';
  let machines = ledger.plant.machines.filter((machine) => machine.chamber === chamber && (chamber === 'hot' || machine.shot === shot));
  const pin = ledger.pinnedWord('machine.model');
  if (pin !== undefined) {
    const named = ledger.plant.machines.filter((machine) => machine.id === pin.text);
    const ids = ledger.plant.machines.map((machine) => machine.id);
    if (named.length > 0) machines = named;
    else
      ledger.findings.push({
        code: 'spec/unknown-word',
        severity: 'error',
        message: `the plant has no machine "${pin.text}"${didYouMean(pin.text, ids)}`,
        at: pin.at,
        fix: `write ${orList(ids.slice(0, 12))}`,
      });
  }
  const plunger = ledger.pinnedNumber('machine.plunger');
  if (plunger === undefined) return machines;
  const having = machines
    .map((machine) => ({ ...machine, plungers: machine.plungers.filter((p) => Math.abs(p.value - plunger) < 0.01) }))
    .filter((machine) => machine.plungers.length > 0);
  return having.length > 0 ? having : machines.map((machine) => ({ ...machine, plungers: machine.plungers.slice(0, 1) }));
}

function show(ledger: Ledger): Block[] {
  const rejected = ledger.decisions.get('machine.model')?.alternatives ?? [];
  return [
    ...valuesBlock(ledger, DEMAND_IDS),
    textBlock(
      'The count of cavities is the least balanced one that makes the yearly volume at the pace of the alloy family; the machine hours are then taken at the pace of the machine. Machines are tried from the smallest up; cost does not rank them. The die block is estimated from cavities, steel and feeder; slides can need more room at its edge.',
    ),
    ...valuesBlock(ledger, MACHINE_IDS),
    ...tableBlock(
      'Machines looked at and what stopped them',
      ['Machine', 'Stopped because'],
      rejected.map((entry) => [entry.value, entry.because]),
    ),
  ];
}

const DEMAND_IDS: readonly ValueId[] = [
  'production.per-year',
  'production.hours-per-year',
  'machine.shots-least',
  'machine.shots-greatest',
  'machine.mean-rate',
  'cavities.use-share',
  'cavities.reject-share',
  'cavities.demand',
  'machine.cavities',
];
const MACHINE_IDS: readonly ValueId[] = [
  'die.steel-around',
  'die.columns',
  'die.rows',
  'die.block-width',
  'die.block-height',
  'die.opening-stroke',
  'machine.locking-force',
  'machine.tie-bar-x',
  'machine.tie-bar-y',
  'machine.opening-stroke',
  'machine.plunger',
  'machine.sleeve-length',
  'machine.shot-stroke',
  'machine.metal-pressure',
  'machine.metal-pressure-least',
  'machine.metal-pressure-usual',
  'machine.dry-shot-speed',
  'machine.rate',
  'machine.hours-needed',
  'machine.tried',
  'machine.fitting',
];

export const machineStep: Step = { id: 'machine', title: 'Machine and cavities', work, show };
