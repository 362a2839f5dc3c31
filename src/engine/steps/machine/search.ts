import type { Diagnostic } from '../../../kernel/diagnostic.ts';
import { Refusal } from '../../../kernel/traced.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import { judge } from '../../judge.ts';
import { type Ledger, Missing } from '../../ledger.ts';
import { workClamp } from '../clamp.ts';
import { workShot } from '../shot.ts';
import { type Candidate, fileCandidate } from './candidate.ts';

/**
 * The limits that stop a candidate, in the order in which they are looked at; they are the plan's own limits, judged on
 * a trial ledger. `soft` ones are warnings: they stop a candidate only while another one passes them too.
 */
const STOPS: readonly { readonly id: string; readonly soft?: true }[] = [
  { id: 'clamp/machine-use' },
  { id: 'machine/tie-bar-fit' },
  { id: 'machine/opening-stroke' },
  { id: 'clamp/off-centre' },
  { id: 'shot/metal-pressure' },
  { id: 'sleeve/fill-greatest' },
  { id: 'sleeve/plunger-speed' },
  { id: 'pot/stroke' },
  { id: 'clamp/usual-use', soft: true },
  { id: 'sleeve/fill-least', soft: true },
];

/** A candidate with what stopped it, if anything. */
export interface Tried {
  readonly candidate: Candidate;
  /** Place of the stopping limit in the list; the greater, the nearer it came. */
  readonly reached: number;
  readonly stop?: { readonly id: string; readonly title: string; readonly message: string; readonly soft: boolean };
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
    for (const machine of bySize) {
      const here = machine.plungers.map((plunger) => attempt(ledger, { cavities, machine, plunger }));
      tried.push(...here);
      const passing = best(here.filter((entry) => entry.stop === undefined));
      if (passing !== undefined) return { chosen: passing, fits: true, tried };
      waived ??= best(here.filter((entry) => entry.stop?.soft === true));
    }
    if (waived !== undefined) return { chosen: waived, fits: true, tried };
  }
  const nearest = tried.reduce<Tried | undefined>(
    (near, entry) => (near === undefined || entry.reached > near.reached || (entry.reached === near.reached && larger(entry, near)) ? entry : near),
    undefined,
  );
  return nearest === undefined ? undefined : { chosen: nearest, fits: false, tried };
}

const larger = (a: Tried, b: Tried): boolean =>
  a.candidate.cavities === b.candidate.cavities && a.candidate.machine.lockingForce.value > b.candidate.machine.lockingForce.value;

function best(list: readonly Tried[]): Tried | undefined {
  return list.reduce<Tried | undefined>((chosen, entry) => (chosen === undefined || entry.preference < chosen.preference ? entry : chosen), undefined);
}

function attempt(ledger: Ledger, candidate: Candidate): Tried {
  const trial = ledger.fork();
  let fault: string | undefined;
  try {
    fileCandidate(trial, candidate);
    workClamp(trial);
    workShot(trial);
  } catch (error) {
    if (!(error instanceof Refusal || error instanceof Missing)) throw error;
    fault = error.message;
  }
  const fill = trial.maybe('sleeve.fill');
  const preference = fill === undefined ? -candidate.plunger.value : Math.abs(fill.value - 50);
  for (const [reached, stop] of STOPS.entries()) {
    const finding = stopped(trial, stop.id);
    if (finding !== undefined) {
      const title = trial.rulebook.limits[stop.id]?.title ?? stop.id;
      return { candidate, reached, preference, stop: { id: stop.id, title, message: finding.message, soft: stop.soft === true } };
    }
  }
  if (fault !== undefined)
    return { candidate, reached: -1, preference, stop: { id: 'machine/not-worked-out', title: 'Could not be worked out', message: fault, soft: false } };
  return { candidate, reached: STOPS.length, preference };
}

function stopped(trial: Ledger, id: string): Diagnostic | undefined {
  const limit = trial.rulebook.limits[id];
  if (limit === undefined) return undefined;
  const verdict = judge(trial, limit);
  return verdict.kind === 'fail' ? verdict.finding : undefined;
}
