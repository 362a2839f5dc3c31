import { Traced } from '../../kernel/traced.ts';
import type { CastingSet, Member } from '../case.ts';
import { Ledger } from '../ledger.ts';
import { Trial } from '../trial.ts';

/** Beginnings of the values that a shot has for all its castings together: what a part takes from the plan of its die. */
const OF_THE_SHOT =
  /^((machine|clamp|shot|sleeve|pot|slow-shot|pq2|intensification|squeeze|cooling|heat|cycle|cycle-rate|runner|die)\.|vent\.(air-pressure|gas-left|kind-start\[)|porosity\.shrinkage$|ejection\.return$)/;
/** Of these a part has its own. */
const OWN =
  /^(runner\.(area|volume|depth|width|.*-ratio|step|usual|share|handbook|bend|fan|wall)|die\.(lock|slide-room|steel-around|core-|stream-pressure|line-)|heat\.(casting-face|face-by-wall)|machine\.cavities)/;

/**
 * A ledger of a part with its gates, in which what the shot comes to is known: machine, pressures, times and temperatures are those
 * of the die; castings are those of the part. Over a trial it is a trial.
 */
export function withShot(shot: Ledger, set: CastingSet, member: Member): Ledger {
  const recorded = set.gated.get(member.id);
  if (recorded === undefined) throw new TypeError(`the gates of ${member.id} are not worked out`);
  const quick = shot instanceof Trial;
  const { settled: _filed, ...plain } = member.given;
  const base = new Ledger(plain, recorded);
  const part = quick ? new Trial(base) : base;
  for (const [id, value] of shot.values) {
    if (!OF_THE_SHOT.test(id) || OWN.test(id) || part.values.has(id)) continue;
    part.values.set(id, quick ? value : ofTheDie(value));
    part.filedItems.note(id);
  }
  for (const [id, text] of shot.texts) if (OF_THE_SHOT.test(id) && !part.texts.has(id)) part.texts.set(id, text);
  const surface = shot.maybe('set.surface', member.id);
  if (surface !== undefined) part.put(surface.as('heat.casting-face'));
  filePlateStroke(shot, part);
  const runner = ofTheRunner(shot, member);
  if (runner !== undefined) part.put(runner);
  if (!part.values.has('machine.cavities')) part.put(member.count.as('machine.cavities', 'castings of this part in the shot'));
  return part;
}

/** The stroke of the ejector plate that a part shares, once all parts have theirs. */
export function filePlateStroke(shot: Ledger, part: Ledger): void {
  const stroke = shot.maybe('ejection.stroke');
  if (stroke !== undefined) part.put(ofTheDie(stroke as unknown as Traced).as('ejection.plate-stroke', 'of the plan of the die'));
}

/** What a casting has of the runner of the shot, by the metal that flows to it. */
function ofTheRunner(shot: Ledger, { id, count }: Member): Traced<'cm3'> | undefined {
  const [runner, share] = [shot.maybe('runner.network-volume'), shot.maybe('set.flow-share', id)];
  if (runner === undefined || share === undefined) return undefined;
  const each = (runner.value * share.value) / 100 / count.value;
  const note = 'its share of the runner in the plan of the die, by the metal that flows to it';
  return Traced.choice('runner.volume', each, 'cm3', { note, status: runner.status, source: runner.source });
}

/** What the plan of the die has worked out, as a figure given to the plan of a part; how it came about stands there. */
function ofTheDie(value: Traced): Traced {
  const given = Traced.choice(value.id, value.value, value.unit, { note: 'of the plan of the die', status: value.status, source: value.source });
  return value.decimals === undefined ? given : given.printedWith(value.decimals);
}
