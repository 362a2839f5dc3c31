import { Refusal } from '../../../kernel/apply.ts';
import { SEARCH_STAGES } from '../../../rulebook/types.ts';
import { type Ledger, Missing } from '../../ledger.ts';
import type { Trial } from '../../trial.ts';
import { workClamp } from '../clamp.ts';
import { coolingStep } from '../cooling/index.ts';
import { costStep } from '../cost/index.ts';
import { cycleStep } from '../cycle/index.ts';
import { cycleRateStep } from '../cycle-rate/index.ts';
import { dieStep } from '../die/index.ts';
import { ejectionStep } from '../ejection/index.ts';
import { finishStep } from '../finish/index.ts';
import { furnaceStep } from '../furnace/index.ts';
import { heatStep } from '../heat/index.ts';
import { intensificationStep } from '../intensification/index.ts';
import { workReach } from '../pq2/index.ts';
import { workShot } from '../shot.ts';
import { slowShotStep } from '../slow-shot/index.ts';
import { solidificationStep } from '../solidification/index.ts';
import { squeezeStep } from '../squeeze.ts';
import { ventStep } from '../vent.ts';
import { type Candidate, fileCavities, fileMachine, filePlunger } from './candidate.ts';
import type { Least } from './floor.ts';
import { workLayout } from './layout.ts';
import { drivesGates, workMargin } from './margin.ts';
import { brokenAt, type Stage, Stop } from './stops.ts';

/** The steps after the shot that cost and the limits of machine and die hang on. */
const REST = [
  squeezeStep,
  ventStep,
  intensificationStep,
  solidificationStep,
  cycleStep,
  heatStep,
  coolingStep,
  cycleRateStep,
  ejectionStep,
  dieStep,
  finishStep,
  furnaceStep,
  costStep,
];

/** What is worked out at each stage of a trial. */
const STAGES: Readonly<Record<Stage, (trial: Ledger) => void>> = {
  clamp: workClamp,
  shot: workShot,
  reach: (trial) => {
    workReach(trial);
    workMargin(trial);
    // It needs nothing but the shot, and its limits weigh against most candidates.
    trial.attempt(slowShotStep.id, slowShotStep.title, () => slowShotStep.work(trial));
  },
  whole: (trial) => {
    for (const step of REST) trial.attempt(step.id, step.title, () => step.work(trial));
  },
};

/** A candidate as far as it was tried. */
export interface Tried {
  readonly candidate: Candidate;
  /** The stage in which it was stopped or left, or `done`. */
  readonly reached: Stage | 'begin' | 'done';
  /** What stopped it. */
  readonly stop?: Stop;
  /** Limits that it breaks and that are waived. */
  readonly waived: readonly Stop[];
  /** It cannot come to less than this; set where it was left because that is already too much. */
  readonly floor?: Least;
  /** Cost of a good part, in the money of the plant, where prices and rates are known. */
  readonly cost?: number;
  /** Least reserve in %. */
  readonly margin?: number;
  /** Whether the machine has the pressure for the gates as they are planned; one that is not judged has no gates to judge. */
  readonly drivesGates?: boolean;
  /** Stopped by what stopped a larger machine; stop and trial are of that one. */
  readonly inferred?: true;
  /** What it was worked out on; a search lets go of it as soon as nobody can ask for more of it. */
  readonly trial?: Trial;
}

/** A trial that others begin from, and why none of them can be worked out, if so. */
export interface Begun {
  readonly trial: Trial;
  readonly failed?: Error | undefined;
}

/** With what is the same for all machines: the count of cavities, and the die that follows from it. */
export function layOut(from: Trial, cavities: number): Begun {
  const trial = from.fork();
  return {
    trial,
    failed: failureOf(() => {
      fileCavities(trial, cavities, 'tried');
      workLayout(trial);
    }),
  };
}

/** With the figures of a machine. */
export function onMachine({ trial, failed }: Begun, machine: Candidate['machine']): Begun {
  const begun = trial.fork();
  return { trial: begun, failed: failed ?? failureOf(() => fileMachine(begun, machine)) };
}

/** A candidate in its first stage. */
export interface Probed extends Tried {
  readonly trial: Trial;
  readonly waived: Stop[];
}

/** Tries a candidate in its first stage only. */
export function probe(from: Begun, candidate: Candidate): Probed {
  const trial = from.trial.fork();
  const failed = from.failed ?? failureOf(() => filePlunger(trial, candidate.plunger));
  if (failed !== undefined) return { candidate, trial, reached: 'begin', stop: Stop.failure(failed), waived: [] };
  const entry: Probed = { candidate, trial, reached: SEARCH_STAGES[0], waived: [] };
  const stop = stopIn(entry, SEARCH_STAGES[0]);
  return stop === undefined ? entry : { ...entry, stop };
}

/**
 * Tries a candidate stage by stage, on from the first, until a limit stops it. Before the last stage, which takes far longer than the
 * others, `tooDear` may give what the candidate must cost at least, where that already rules it out.
 */
export function evaluate(probed: Probed, tooDear: (trial: Trial, waived: readonly Stop[]) => Least | undefined): Tried {
  if (probed.stop !== undefined) return probed;
  const { candidate, trial, waived } = probed;
  for (const stage of SEARCH_STAGES.slice(1)) {
    if (stage === 'whole') {
      const floor = tooDear(trial, waived);
      if (floor !== undefined) return { candidate, trial, reached: stage, waived, floor };
    }
    const stop = stopIn(probed, stage);
    if (stop !== undefined) return { candidate, trial, reached: stage, stop, waived };
  }
  const cost = trial.maybe('cost.per-part')?.value;
  const margin = trial.maybe('machine.margin')?.value;
  const known = { ...(cost === undefined ? {} : { cost }), ...(margin === undefined ? {} : { margin }) };
  return { candidate, trial, reached: 'done', waived, drivesGates: drivesGates(trial), ...known };
}

/** What stops a candidate in a stage; limits that it breaks and that are waived are noted with it. */
function stopIn({ trial, waived }: Probed, stage: Stage): Stop | undefined {
  const failure = failureOf(() => STAGES[stage](trial));
  if (failure !== undefined) return Stop.failure(failure);
  const broken = brokenAt(trial, stage);
  waived.push(...broken.waived);
  return broken.stop;
}

/** Works a candidate that was stopped on to the last stage but one, to see what else stands in its way. */
export function workOn(trial: Trial, reached: Tried['reached']): Trial {
  const from = SEARCH_STAGES.indexOf(reached as Stage);
  for (const stage of SEARCH_STAGES.slice(from + 1, -1)) failureOf(() => STAGES[stage](trial));
  return trial;
}

/** Why a candidate cannot be worked out; any other error is a fault of ours. */
function failureOf(work: () => void): Error | undefined {
  try {
    work();
    return undefined;
  } catch (error) {
    if (error instanceof Refusal || error instanceof Missing) return error;
    throw error;
  }
}
