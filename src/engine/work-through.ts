import { type Case, type FirstPlan, Ledger } from './ledger.ts';
import { gateStep } from './steps/gate.ts';
import { fileGiven } from './steps/given.ts';
import { WORK_ORDER } from './steps/index.ts';
import { pq2Step } from './steps/pq2/index.ts';
import { runnerNetworkStep } from './steps/runner-network/index.ts';

/** The count of cavities that a runner was laid out for may turn out otherwise; it settles at once or not at all. */
const LAYOUTS = 3;

/** The first step that a first plan can change: gates are the earliest that depend on what is laid out after them. */
const FIRST_TO_CHANGE = WORK_ORDER.indexOf(gateStep);

/**
 * Works through every step. What must be known early but shows only later, such as the runner of a die that is not laid
 * out yet, is planned with a usual figure first; as soon as it shows, the steps are worked through again with it, from the
 * first step that it can change. The steps before that one are worked once: they cannot ask for what a first plan shows.
 */
export function workThrough(given: Case): Ledger {
  const before = new Ledger({
    ...given,
    get first(): never {
      throw new TypeError('a step asks for a first plan before there can be one');
    },
  });
  before.attempt('part', 'Part data', () => fileGiven(before));
  for (const step of WORK_ORDER.slice(0, FIRST_TO_CHANGE)) before.attempt(step.id, step.title, () => step.work(before));

  let first: FirstPlan = {};
  for (let layouts = 0; ; ) {
    const ledger = before.continuedWith({ ...given, first });
    const shown = work(ledger, first, layouts < LAYOUTS);
    if (shown === undefined) return ledger;
    if (shown.runner !== undefined) layouts += 1;
    first = { ...first, ...shown };
  }
}

/** Works until something shows that the plan must be worked through again with, or to the end. */
function work(ledger: Ledger, first: FirstPlan, layOut: boolean): FirstPlan | undefined {
  for (const step of WORK_ORDER.slice(FIRST_TO_CHANGE)) {
    ledger.attempt(step.id, step.title, () => step.work(ledger));
    const shown =
      step === runnerNetworkStep && layOut
        ? runnerLaidOut(ledger, first)
        : step === pq2Step && first.velocity === undefined
          ? velocityOfMachine(ledger)
          : undefined;
    if (shown !== undefined) return shown;
  }
  return undefined;
}

/** The runner of one cavity by its layout, if the shot was not yet counted with that. A pinned runner stays as it is. */
function runnerLaidOut(ledger: Ledger, first: FirstPlan): FirstPlan | undefined {
  if (['runner.volume', 'runner.area-share'].some((id) => ledger.part.pinned.has(id))) return undefined;
  const volume = ledger.maybe('runner.network-volume');
  const area = ledger.maybe('runner.network-area');
  if (volume === undefined || area === undefined) return undefined;
  const cavities = ledger.value('machine.cavities').value;
  if (first.runner?.cavities === cavities) return undefined;
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
