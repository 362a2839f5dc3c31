import { type Case, type FirstPlan, Ledger } from './ledger.ts';
import { fileGiven } from './steps/given.ts';
import { WORK_ORDER } from './steps/index.ts';

/** Beyond this factor between the runner laid out and the runner counted, the shot is worked out again with the layout. */
const RUNNER_FACTOR = 2;

/**
 * Works through every step. What must be known early but shows only at the end, such as the runner of a die that is not
 * laid out yet, is planned with a usual figure first; where that turns out wrong the steps are worked through again.
 */
export function workThrough(given: Case): Ledger {
  let first: FirstPlan = {};
  for (;;) {
    const ledger = workOnce({ ...given, first });
    const known = first.runner === undefined ? runnerLaidOut(ledger) : undefined;
    // The machine follows the runner, and the velocity that it drives follows the machine.
    const driven = known === undefined && first.velocity === undefined ? velocityOfMachine(ledger) : undefined;
    if (known === undefined && driven === undefined) return ledger;
    first = { ...first, ...known, ...driven };
  }
}

function workOnce(given: Case): Ledger {
  const ledger = new Ledger(given);
  ledger.attempt('part', 'Part data', () => fileGiven(ledger));
  for (const step of WORK_ORDER) ledger.attempt(step.id, step.title, () => step.work(ledger));
  return ledger;
}

/** The runner by its layout, when its usual share of the projected area is off by more than the factor. */
function runnerLaidOut(ledger: Ledger): FirstPlan | undefined {
  if (['runner.volume', 'runner.area-share'].some((id) => ledger.part.pinned.has(id))) return undefined;
  const ratio = ledger.maybe('runner.network-ratio')?.value;
  const volume = ledger.maybe('runner.network-volume');
  const area = ledger.maybe('runner.network-area');
  if (ratio === undefined || volume === undefined || area === undefined) return undefined;
  if (ratio <= RUNNER_FACTOR && ratio >= 1 / RUNNER_FACTOR) return undefined;
  const cavities = ledger.value('machine.cavities').value;
  return { runner: { volume: volume.value / cavities, area: area.value / cavities, cavities, machine: ledger.text('machine.model') } };
}

/**
 * The gate velocity that the best machine of the plant can drive, when it falls short of the planned one and larger gates
 * would bring the shot within its reach. Gates that the engineer has pinned stay as they are.
 */
function velocityOfMachine(ledger: Ledger): FirstPlan | undefined {
  if (ledger.texts.get('pq2.remedy') !== 'gate area') return undefined;
  if (['gate.velocity', 'gate.area'].some((id) => ledger.part.pinned.has(id))) return undefined;
  const velocity = ledger.maybe('pq2.needed-velocity');
  if (velocity === undefined) return undefined;
  return { velocity: { value: velocity.value, machine: ledger.text('machine.model'), plunger: ledger.value('machine.plunger').value } };
}
