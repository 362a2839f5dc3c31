import { didYouMean, orList } from '../../../kernel/spelling.ts';
import { Traced } from '../../../kernel/traced.ts';
import { hoursNeeded } from '../../../physics/clamp-use.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block, Decision } from '../../plan.ts';
import { type Step, tableBlock, textBlock, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { fileCandidate } from './candidate.ts';
import { cavitiesToTry } from './cavities.ts';
import { workOpening } from './layout.ts';
import { type Search, search, type Tried } from './search.ts';

function work(ledger: Ledger): void {
  workOpening(ledger);
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
  fileCandidate(ledger, candidate);
  const passing = found.tried.filter(
    (entry) => entry.stop === undefined || (found.fits && entry.stop.soft && entry.candidate.machine === candidate.machine),
  ).length;
  ledger.put(
    Traced.choice('machine.tried', found.tried.length, '1', {
      note: 'machines from the smallest up to the one taken, each with its plungers',
      status: 'derived',
    }),
  );
  ledger.put(Traced.choice('machine.fitting', found.fits ? Math.max(1, passing) : 0, '1', { note: 'of those', status: 'derived' }));
  ledger.attempt('machine.hours-needed', 'Machine hours a year', () =>
    ledger.apply(hoursNeeded, {
      parts: ledger.value('production.per-year'),
      cavities: ledger.value('machine.cavities'),
      rate: ledger.value('machine.mean-rate'),
      use_share: ledger.value('cavities.use-share'),
    }),
  );
  recordDecisions(ledger, found);
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

function recordDecisions(ledger: Ledger, found: Search): void {
  const { machine } = found.chosen.candidate;
  const pinned = ledger.part.pinned.get('machine.model');
  const because = found.fits
    ? 'smallest machine of the plant with a plunger that passes every limit looked at'
    : 'nearest miss: no machine of the plant passes every limit';
  const common = { status: 'derived', source: ['PLANT'], parents: [], alternatives: [] } as const;
  const model: Decision = {
    ...common,
    id: 'machine.model',
    title: 'Machine',
    kind: pinned === undefined ? 'search' : 'pinned',
    value: machine.id,
    because: pinned === undefined ? because : `pinned by the engineer; ${found.fits ? 'it passes the limits looked at' : 'it does not pass every limit'}`,
    alternatives: rejectedMachines(found),
    ...(pinned === undefined ? {} : { at: pinned.at }),
  };
  ledger.record(model);
  const count = ledger.value('machine.cavities');
  const plunger = ledger.value('machine.plunger');
  ledger.record({
    ...common,
    id: 'machine.cavities',
    title: 'Cavities',
    kind: count.kind === 'pinned' ? 'pinned' : 'search',
    value: String(count.value),
    because: count.note ?? '',
    parents: count.parents.map((p) => p.id),
  });
  ledger.record({
    ...common,
    id: 'machine.plunger',
    title: 'Plunger',
    kind: plunger.kind === 'pinned' ? 'pinned' : 'search',
    value: `${plunger.value} mm`,
    because:
      plunger.kind === 'pinned'
        ? (plunger.note ?? '')
        : ledger.text('machine.chamber') === 'cold'
          ? 'of the plungers that pass, the one whose sleeve fill is nearest the middle of its window'
          : 'the largest plunger that passes, for the lower plunger speed',
  });
}

/** For each machine and count of cavities that was stopped, its plunger that came furthest, with the rule and its figures. */
function rejectedMachines(found: Search): Decision['alternatives'] {
  const furthest = new Map<string, Tried>();
  for (const entry of found.tried) {
    if (entry.stop === undefined || entry.candidate.machine === found.chosen.candidate.machine) continue;
    const key = `${entry.candidate.machine.id}/${entry.candidate.cavities}`;
    const known = furthest.get(key);
    if (known === undefined || entry.reached > known.reached) furthest.set(key, entry);
  }
  return [...furthest.values()].map(({ candidate, stop }) => ({
    value: `${candidate.machine.id} with plunger ${candidate.plunger.value} mm, ${candidate.cavities} ${candidate.cavities === 1 ? 'cavity' : 'cavities'}`,
    because: stop?.message ?? '',
  }));
}

function show(ledger: Ledger): Block[] {
  const rejected = ledger.decisions.get('machine.model')?.alternatives ?? [];
  return [
    ...valuesBlock(ledger, DEMAND_IDS),
    textBlock(
      'The count of cavities is the least balanced one that makes the yearly volume; machines are tried from the smallest up. Cost does not rank them yet. The die block is estimated from cavities, steel and feeder; slides can need more room at its edge.',
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
  'machine.hours-needed',
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
  'machine.tried',
  'machine.fitting',
];

export const machineStep: Step = { id: 'machine', title: 'Machine and cavities', work, show };
