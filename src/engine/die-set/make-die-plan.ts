import type { Diagnostic } from '../../kernel/diagnostic.ts';
import { orList } from '../../kernel/spelling.ts';
import type { Traced } from '../../kernel/traced.ts';
import type { Alloy, Rulebook } from '../../rulebook/types.ts';
import type { DieSpec, PartSpec, PlantSpec } from '../../spec/index.ts';
import type { Case, CastingSet, Member } from '../case.ts';
import type { Ledger } from '../ledger.ts';
import { planOf, type Settle, type Tool } from '../make-plan.ts';
import type { Decision, Plan } from '../plan.ts';
import { workOn, workToGates } from '../work-through.ts';
import { begin } from './begin.ts';
import { DIE_EXTENT, isSetAside, PART_EXTENT, PART_STEPS } from './extent.ts';
import { layOut } from './layout.ts';
import { type Alone, withoutPins, workAlone, workShared } from './members.ts';
import { workSetEnd } from './totals.ts';
import { asOnePart } from './virtual.ts';
import { withShot } from './with-shot.ts';

/** A die with the parts that it names, in its order, all of one alloy. */
export interface DieCase {
  readonly die: DieSpec;
  readonly parts: readonly PartSpec[];
  readonly alloy: Alloy;
  readonly plant: PlantSpec;
  readonly rulebook: Rulebook;
  readonly wave?: boolean;
}

/**
 * Works out a die with castings of several parts. Each part is worked out as far as it stands alone; then all castings of a shot
 * are planned together as one, by the steps of any other plan; then each part is finished by the shot that it shares. `whole` is what
 * all castings together were planned of, where they could be.
 * Never throws for what a user can write.
 */
export function makeDiePlan(given: DieCase, tool: Tool, settle: SettleDie = KEPT): { readonly plan: Plan; readonly whole?: Case } {
  const { die, parts: specs, alloy, plant, rulebook } = given;
  const aside: Diagnostic[] = [];
  const alone = specs.map((spec, i) => {
    const { part, aside: pins } = withoutPins(spec, isSetAside);
    aside.push(...pins.map((pin) => ({ ...SET_ASIDE, message: `pinned ${pin.id} is for a die of this part alone, and is not used in this one`, at: pin.at })));
    return workAlone(die.parts[i] as DieSpec['parts'][number], { part, plant, alloy, rulebook });
  });
  const { before, setCase } = workTogether(given, alone);
  const set = setCase.set as CastingSet;
  const time = before.maybe('fill.time');
  const kind = before.texts.get('machine.kind');
  const members = time === undefined ? [] : alone.map((one) => workShared(onKind(one, kind), ofTheShot(time)));
  const whole: Case = { ...setCase, set: { ...set, members } };
  const ledger = members.length === 0 ? before : workOn(before, whole);
  workSetEnd(ledger);
  ledger.decisions.delete('machine.cavities');
  recordCastings(ledger, alone);
  ledger.findings.push(...aside);
  const parts = members.map((member, i) => ({
    id: member.id,
    count: member.count.value,
    plan: planOfPart(ledger, member, die, tool, (findings) => settle.part(i, findings)),
  }));
  return { plan: planOf(ledger, tool, DIE_EXTENT, settle.die, { parts }), ...(members.length === 0 ? {} : { whole }) };
}

/** Has the last word on the findings of the die, and of each of its parts. */
export interface SettleDie {
  readonly die: Settle;
  readonly part: (index: number, findings: readonly Diagnostic[]) => readonly Diagnostic[];
}
const KEPT: SettleDie = { die: (findings) => findings, part: (_, findings) => findings };

/** What the die file says of the castings, as a decision. */
function recordCastings(ledger: Ledger, alone: readonly Alone[]): void {
  const count = ledger.maybe('set.castings');
  if (count === undefined) return;
  ledger.record({
    id: 'set.castings',
    title: 'Castings of a shot',
    value: String(count.value),
    because: `${alone.map(({ entry }) => `${entry.count.value} of ${entry.id}`).join(', ')}, by the die file`,
    kind: 'input',
    status: 'source',
    source: ['DIE'],
    parents: alone.map(({ entry }) => entry.count.id),
    alternatives: [],
    at: alone[0]?.entry.at,
  } as Decision);
}

const SET_ASIDE = { code: 'die/pin-of-part', severity: 'note', fix: 'pin it in the die file if it holds for this die too' } as const;

/** The castings as one part, worked out as far as the gates. */
function workTogether({ die, alloy, plant, rulebook, wave }: DieCase, alone: readonly Alone[]): { readonly before: Ledger; readonly setCase: Case } {
  const steel = Math.max(...alone.map(({ ledger }) => ledger.maybe('die.steel-around')?.value ?? 0));
  const castings = alone.flatMap(({ entry, ledger, slides }) =>
    Array.from({ length: entry.count.value }, (_, i) => ({
      member: entry.id,
      id: entry.count.value === 1 ? entry.id : `${entry.id} ${i + 1}`,
      a: ledger.maybe('part.side-a')?.value ?? 0,
      b: ledger.maybe('part.side-b')?.value ?? 0,
      area: ledger.maybe('part.projected-area')?.value ?? 0,
      slides,
    })),
  );
  const layout = layOut(castings, steel);
  const { together, settled, filed } = begin(alone, layout, plant.prices);
  const set: CastingSet = { die, members: [], layout, filed, gated: new Map(), kinds: kindsOf(alone) };
  const part = asOnePart(die, alone, layout.castings, together);
  const setCase: Case = { part, plant, alloy, rulebook, settled, set, ...(wave === undefined ? {} : { wave }) };
  return { before: workToGates(setCase), setCase };
}

function kindsOf(alone: readonly Alone[]): Map<string, string> {
  return new Map(alone.map(({ entry, ledger }) => [entry.id, ledger.texts.get('machine.kind') ?? 'no known']));
}

/** The kind of machine is decided for the shot; a part that alone would go to another is worked out on this one. */
function onKind(one: Alone, kind: string | undefined): Alone {
  const { entry, given, ledger } = one;
  if (kind === undefined || ledger.texts.get('machine.kind') === kind) return one;
  const pinned = new Map([...given.part.pinned, ['machine.kind', { id: 'machine.kind', text: kind, at: entry.at }]]);
  return { ...one, given: { ...given, part: { ...given.part, pinned } } };
}

function ofTheShot(time: Traced<'ms'>): Traced<'ms'> {
  return time.as('fill.time', 'that of the whole shot, which all its castings share');
}

function planOfPart(shot: Ledger, member: Member, die: DieSpec, tool: Tool, settle: Settle): Plan {
  const ledger = withShot(shot, shot.given.set as CastingSet, member);
  for (const step of PART_STEPS) ledger.attempt(step.id, step.title, () => step.work(ledger));
  return planOf(ledger, tool, PART_EXTENT, settle, { inDie: { name: die.name, file: die.source.name } });
}

/** What is wrong with the alloys of the parts; undefined where they are one. */
export function otherAlloy(parts: readonly { readonly part: PartSpec; readonly alloy: Alloy }[]): Diagnostic | undefined {
  const [first] = parts;
  const other = parts.find(({ alloy }) => alloy.id !== first?.alloy.id);
  if (first === undefined || other === undefined) return undefined;
  const names = [...new Set(parts.map(({ alloy }) => alloy.id))];
  return {
    code: 'die/alloys-differ',
    severity: 'error',
    message: `the parts of a die are cast from one pot, but these are of ${orList(names).replace(/ or /, ' and ')}`,
    at: other.part.alloy.at,
    fix: `give "${other.part.name}" the alloy ${first.alloy.id}, or a die of its own`,
  };
}
