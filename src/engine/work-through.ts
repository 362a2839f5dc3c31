import { type Case, type FirstPlan, Ledger } from './ledger.ts';
import { gateStep } from './steps/gate.ts';
import { fileGiven } from './steps/given.ts';
import { WORK_ORDER } from './steps/index.ts';
import { pq2Step } from './steps/pq2/index.ts';

/** The first step that a first plan can change: gates are the earliest that depend on what is laid out after them. */
const FIRST_TO_CHANGE = WORK_ORDER.indexOf(gateStep);

/** How often a velocity is lowered: each time the search is free to take another machine, which may drive less again. */
const MOST_LOWERED = 4;

/**
 * Works through every step. What must be known early but shows only later is planned with a usual figure first: the gate
 * velocity. Where it shows that no machine drives it, the steps are worked through again with what one drives, from the
 * first step that it can change. The steps before that one are worked once: they cannot ask for what a first plan shows.
 */
export function workThrough(given: Case): Ledger {
  return workOn(workToGates(given), given);
}

/** The steps before the gates. */
export function workToGates(given: Case): Ledger {
  const before = new Ledger({
    ...given,
    get first(): never {
      throw new TypeError('a step asks for a first plan before there can be one');
    },
  });
  before.attempt('part', 'Part data', () => fileGiven(before));
  for (const step of WORK_ORDER.slice(0, FIRST_TO_CHANGE)) before.attempt(step.id, step.title, () => step.work(before));
  return before;
}

/** The gates and what follows, from a ledger that was worked as far as that. */
export function workOn(before: Ledger, given: Case): Ledger {
  let first: FirstPlan = {};
  for (let lowered = 0; ; lowered++) {
    const ledger = before.continuedWith({ ...given, first });
    const velocity = work(ledger, lowered < MOST_LOWERED);
    if (velocity === undefined) return ledger;
    first = { ...first, velocity };
  }
}
/** Works until it shows that the plan must be worked through again with another gate velocity, or to the end. */
function work(ledger: Ledger, mayLower: boolean): FirstPlan['velocity'] {
  for (const step of WORK_ORDER.slice(FIRST_TO_CHANGE)) {
    ledger.attempt(step.id, step.title, () => step.work(ledger));
    const velocity = step === pq2Step && mayLower ? velocityOfMachine(ledger) : undefined;
    if (velocity !== undefined) return velocity;
  }
  return undefined;
}

/**
 * The gate velocity that the best machine of the plant can drive, when it falls short of the planned one and larger gates
 * would bring the shot within its reach. Gates that the engineer has pinned stay as they are.
 */
function velocityOfMachine(ledger: Ledger): FirstPlan['velocity'] {
  if (ledger.texts.get('pq2.remedy') !== 'gate area') return undefined;
  if (['gate.velocity', 'gate.area'].some((id) => ledger.part.pinned.has(id))) return undefined;
  const velocity = ledger.maybe('pq2.needed-velocity');
  if (velocity === undefined) return undefined;
  return { value: velocity.value, machine: ledger.text('machine.model'), plunger: ledger.value('machine.plunger').value };
}
