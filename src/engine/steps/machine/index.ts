import { didYouMean, orList } from '../../../kernel/spelling.ts';
import { Traced } from '../../../kernel/traced.ts';
import { hoursNeeded } from '../../../physics/clamp-use.ts';
import { meanRate } from '../../../physics/machine.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block } from '../../plan.ts';
import { cell, type Step, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { fileCandidate } from './candidate.ts';
import { cavitiesToTry } from './cavities.ts';
import { countBecause, recordDecisions } from './decisions.ts';
import { workPartLayout } from './layout.ts';
import { type Search, search } from './search.ts';

/** The search over all that the part leaves open, from a ledger on which the gates are worked out; `all` works every candidate out. */
export function searchMachines(ledger: Ledger, all = false): Search | undefined {
  workPartLayout(ledger);
  const counts = cavitiesToTry(ledger);
  return search(ledger, machinesToTry(ledger), counts, all);
}

function work(ledger: Ledger): void {
  const found = searchMachines(ledger);
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
  fileCandidate(ledger, candidate, countBecause(ledger, found));
  fileExtent(ledger, found);
  fileRanking(ledger, found);
  ledger.attempt('machine.hours-needed', 'Machine hours a year', () => hours(ledger));
  recordDecisions(ledger, found);
}

/** What ranked, for the rules and for the reader. */
function fileRanking(ledger: Ledger, { byCost }: Search): void {
  ledger.setText('machine.ranked-by', ledger.given.set === undefined && ledger.part.pinned.has('machine.cavities') ? 'pin' : byCost ? 'cost' : 'size');
  if (!byCost) return;
  ledger.look('machine/search', 'alike', {}, 'machine.alike');
  ledger.look('machine/search', 'warning_weight', {}, 'machine.warning-weight');
  ledger.look('machine/search', 'miss_weight', {}, 'machine.miss-weight');
}

/** How much was tried, and how much of it passes. */
function fileExtent(ledger: Ledger, { tried, chosen, fits, byCost }: Search): void {
  const put = (id: string, value: number, note: string) => ledger.put(Traced.choice(id, value, '1', { note, status: 'derived' }));
  put(
    'machine.tried',
    tried.length,
    byCost ? 'a machine that is ruled out with every plunger at once counts as one' : 'machines from the smallest up, each with its plungers',
  );
  const passing = tried.filter(({ reached, waived }) => reached === 'done' && waived.length <= chosen.waived.length).length;
  const broken = chosen.waived.length === 1 ? '1 warning or none' : `${chosen.waived.length} warnings or fewer`;
  const note = fits
    ? `of those; they break no error and ${chosen.waived.length === 0 ? 'no warning that weighs in the ranking' : broken}`
    : 'of those; every one breaks an error';
  put('machine.fitting', fits ? Math.max(1, passing) : 0, note);
  put('machine.smaller', smallerInPlant(ledger, chosen.candidate.machine), 'whether they were tried or not');
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
  const isSet = ledger.given.set !== undefined;
  const counts = isSet ? [] : ledger.items('machine.count-outcome');
  const shown = (ids: readonly ValueId[]) => ids.filter((id) => !isSet || !OF_ALIKE.has(id));
  return [
    ...valuesBlock(ledger, shown(DEMAND_IDS)),
    isSet && ledger.texts.get('machine.ranked-by') !== 'size'
      ? textBlock(
          'Machines and plungers are tried as plans of their own for the set of castings, against the same limits. What breaks the limit of an error is out. The rest is ranked by the cost of a good set; a broken warning adds ',
          { value: 'machine.warning-weight' },
          ' to it, or ',
          { value: 'machine.miss-weight' },
          ' of what it is missed by where that is more. Of those that cost the same within ',
          { value: 'machine.alike' },
          ', the one with the most in reserve is taken.',
        )
      : counts.length > 0
        ? textBlock(
            'Counts of cavities, machines and plungers are tried as plans of their own, against the same limits. What breaks the limit of an error is out. The rest is ranked by the cost of a good part; a broken warning adds ',
            { value: 'machine.warning-weight' },
            ' to it, or ',
            { value: 'machine.miss-weight' },
            ' of what it is missed by where that is more. Of those that cost the same within ',
            { value: 'machine.alike' },
            ', the one with the most in reserve is taken. Castings with slides are turned half round in the die so that as few slides as can be stand between them.',
          )
        : textBlock(
            'The count of cavities is the least balanced one that makes the yearly volume at the pace of the alloy family, or the one that is pinned; machines are tried from the smallest up. Castings with slides are turned half round in the die so that as few slides as can be stand between them.',
          ),
    ...tableBlock(
      'The best of each count of cavities',
      ['Cavities', 'Machine', 'Plunger', 'Cost of a good part', 'Outcome'],
      counts.map((item) => [
        item,
        textCell(ledger, 'machine.count-model', item),
        cell(ledger, 'machine.count-plunger', item),
        cell(ledger, 'machine.count-cost', item),
        textCell(ledger, 'machine.count-outcome', item),
      ]),
    ),
    ...valuesBlock(ledger, shown(MACHINE_IDS)),
    ...tableBlock(
      ledger.values.get('machine.fitting')?.value === 0 ? 'Nearest misses, and what stands in the way of each' : 'Machines looked at and what stopped them',
      ['Machine', 'Stopped because'],
      rejected.map((entry) => [entry.value, entry.because]),
    ),
  ];
}

/** Values that say something of cavities that are all alike. */
const OF_ALIKE: ReadonlySet<string> = new Set<ValueId>(['machine.cavities', 'cavities.demand', 'die.columns', 'die.rows']);
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
  'machine.reserve-clamp',
  'machine.reserve-speed',
  'machine.reserve-stroke',
  'machine.reserve-fill',
  'machine.reserve-window',
  'machine.margin',
  'machine.tried',
  'machine.fitting',
];

export const machineStep: Step = { id: 'machine', title: 'Machine and cavities', work, show };
