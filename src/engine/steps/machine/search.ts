import { Refusal } from '../../../kernel/apply.ts';
import type { Diagnostic } from '../../../kernel/diagnostic.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import { judge } from '../../judge.ts';
import { type Ledger, Missing } from '../../ledger.ts';
import { workClamp } from '../clamp.ts';
import { workReach } from '../pq2/index.ts';
import { workShot } from '../shot.ts';
import { type Candidate, fileCavities, fileMachine, filePlunger } from './candidate.ts';
import { workLayout } from './layout.ts';

/**
 * The limits that stop a candidate, in the order in which they are looked at; they are the plan's own limits, judged on
 * a trial ledger. `soft` ones are warnings: they stop a candidate only while another one passes them too. What a limit
 * `needs` is worked out just before it. A limit of the `machine` stops its larger plungers as well, since they only add
 * to the projected area; a `wider` plunger comes nearer to the limits that say so.
 */
const STOPS: readonly {
  readonly id: string;
  readonly needs: 'clamp' | 'shot' | 'reach';
  readonly soft?: true;
  readonly machine?: true;
  readonly wider?: true;
}[] = [
  { id: 'clamp/machine-use', needs: 'clamp', machine: true },
  { id: 'machine/tie-bar-fit', needs: 'clamp', machine: true },
  { id: 'machine/opening-stroke', needs: 'clamp', machine: true },
  { id: 'clamp/off-centre', needs: 'clamp', machine: true },
  { id: 'shot/metal-pressure', needs: 'shot' },
  { id: 'sleeve/fill-greatest', needs: 'shot', wider: true },
  { id: 'sleeve/fill-vertical', needs: 'shot', wider: true },
  { id: 'sleeve/plunger-speed', needs: 'shot', wider: true },
  { id: 'pot/stroke', needs: 'shot', wider: true },
  { id: 'pot/plunger-speed', needs: 'shot', wider: true },
  ...['plunger', 'gate-area', 'slower-fill', 'fill-time', 'hydraulic-pressure', 'throttle', 'machine'].map(
    (name) => ({ id: `pq2/${name}`, needs: 'reach', soft: true }) as const,
  ),
  { id: 'clamp/usual-use', needs: 'shot', soft: true },
  { id: 'sleeve/fill-least', needs: 'shot', soft: true },
];

/** The limit that stopped a candidate; `ofMachine` and `wider` say whether a larger machine or plunger comes nearer to it. */
export interface Stop {
  readonly id: string;
  readonly title: string;
  readonly message: string;
  readonly soft: boolean;
  readonly ofMachine?: boolean;
  readonly wider?: boolean;
}

/** A candidate with what stopped it, if anything. */
export interface Tried {
  readonly candidate: Candidate;
  /** Place of the stopping limit in the list; the greater, the nearer it came. */
  readonly reached: number;
  readonly stop?: Stop;
  /** Distance of the sleeve fill from the middle of its window, or for a hot chamber minus the plunger diameter. */
  readonly preference: number;
}

export interface Search {
  readonly chosen: Tried;
  readonly fits: boolean;
  readonly tried: readonly Tried[];
}

/**
 * Tries machines from the smallest up, their plungers, and the counts of cavities in the order given, and takes the
 * first machine with a candidate that passes every limit; among its plungers the one with the best sleeve fill. When
 * none passes, first the warnings are waived, then the candidate that came furthest is taken as the nearest miss.
 */
export function search(ledger: Ledger, machines: readonly MachineSpec[], counts: readonly number[]): Search | undefined {
  const bySize = [...machines].sort((a, b) => a.lockingForce.value - b.lockingForce.value || (a.id < b.id ? -1 : 1));
  const tried: Tried[] = [];
  let waived: Tried | undefined;
  for (const cavities of counts) {
    const laidOut = layOut(ledger, cavities);
    for (const machine of bySize) {
      const here = tryPlungers(laidOut, cavities, machine);
      tried.push(...here);
      const passing = best(here.filter((entry) => entry.stop === undefined));
      if (passing !== undefined) return { chosen: passing, fits: true, tried };
      waived ??= best(here.filter((entry) => entry.stop?.soft === true));
    }
    if (waived !== undefined) return { chosen: waived, fits: true, tried };
  }
  const nearest = tried.reduce<Tried | undefined>(
    (near, entry) => (near === undefined || entry.reached > near.reached || (entry.reached === near.reached && nearer(entry, near)) ? entry : near),
    undefined,
  );
  return nearest === undefined ? undefined : { chosen: nearest, fits: false, tried };
}

/** Of two that the same limit stopped: the larger machine comes nearer to a machine's limit, the larger plunger to some of its own. */
function nearer(a: Tried, b: Tried): boolean {
  if (a.candidate.cavities !== b.candidate.cavities) return false;
  if (a.candidate.machine === b.candidate.machine) return a.stop?.wider === true && a.candidate.plunger.value > b.candidate.plunger.value;
  return a.stop?.ofMachine === true && a.candidate.machine.lockingForce.value > b.candidate.machine.lockingForce.value;
}

function best(list: readonly Tried[]): Tried | undefined {
  return list.reduce<Tried | undefined>((chosen, entry) => (chosen === undefined || entry.preference < chosen.preference ? entry : chosen), undefined);
}

/** A trial with what is the same for all machines: the count of cavities, and the die block that follows from it. */
function layOut(ledger: Ledger, cavities: number): Trial {
  const trial = ledger.fork();
  fileCavities(trial, cavities);
  return { ledger: trial, failed: failureOf(() => workLayout(trial)) };
}

/** A ledger that trials begin from, and why none of them can be worked out, if so. */
interface Trial {
  readonly ledger: Ledger;
  readonly failed?: Error | undefined;
}

/** The machine's plungers from the smallest up, until a limit of the machine itself stops them. */
function tryPlungers({ ledger, failed }: Trial, cavities: number, machine: MachineSpec): Tried[] {
  const onMachine = ledger.fork();
  fileMachine(onMachine, machine);
  const tried: Tried[] = [];
  for (const plunger of [...machine.plungers].sort((a, b) => a.value - b.value)) {
    const entry = attempt({ ledger: onMachine, failed }, { cavities, machine, plunger });
    tried.push(entry);
    if (entry.stop !== undefined && STOPS[entry.reached]?.machine === true) break;
  }
  return tried;
}

function attempt(from: Trial, candidate: Candidate): Tried {
  const trial = from.ledger.fork();
  const done = new Set<string>();
  const prepare = (what: string, work: (trial: Ledger) => void): void => {
    if (!done.has(what)) work(trial);
    done.add(what);
  };
  let reached = 0;
  let stop: Tried['stop'];
  const failed =
    from.failed ??
    failureOf(() => {
      filePlunger(trial, candidate.plunger);
      for (; reached < STOPS.length && stop === undefined; reached += 1) {
        const { id, needs, soft = false, machine = false, wider = false } = STOPS[reached] as (typeof STOPS)[number];
        prepare('clamp', workClamp);
        if (needs !== 'clamp') prepare('shot', workShot);
        if (needs === 'reach') prepare('reach', workReach);
        const finding = stopped(trial, id);
        if (finding === undefined) continue;
        stop = { id, title: trial.rulebook.limits[id]?.title ?? id, message: finding.message, soft, ofMachine: machine, wider };
        break;
      }
    });
  if (failed !== undefined) {
    stop = { id: 'machine/not-worked-out', title: 'Could not be worked out', message: failed.message, soft: false };
    reached = -1;
  }
  const fill = trial.maybe('sleeve.fill');
  const preference = fill === undefined ? -candidate.plunger.value : Math.abs(fill.value - 50);
  return { candidate, reached, preference, ...(stop === undefined ? {} : { stop }) };
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

function stopped(trial: Ledger, id: string): Diagnostic | undefined {
  const limit = trial.rulebook.limits[id];
  if (limit === undefined) return undefined;
  const verdict = judge(trial, limit);
  return verdict.kind === 'fail' ? verdict.finding : undefined;
}
