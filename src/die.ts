import { applyAcceptances } from './engine/acceptance.ts';
import type { Case } from './engine/case.ts';
import { makeDiePlan, otherAlloy } from './engine/die-set/make-die-plan.ts';
import { allFindings } from './engine/plan.ts';
import { withPlantLimits } from './engine/plant-limits.ts';
import { type Planned, plantOf, type Rulebook } from './index.ts';
import { type Diagnostic, sortDiagnostics } from './kernel/diagnostic.ts';
import type { SourceText } from './kernel/place.ts';
import { alloyOf, faultsOfAlloyNamed } from './part-alloy.ts';
import { FINDING_CODES } from './report/finding-codes.ts';
import type { Alloy } from './rulebook/types.ts';
import { type DieEntry, type DieSpec, type PartSpec, readDie, readPart } from './spec/index.ts';
import { setFields } from './spec/set-field.ts';

export type { DieEntry } from './spec/index.ts';

export interface DieRequest {
  readonly die: SourceText;
  /** The text of a part file that the die names, or why it cannot be read. */
  readonly partText: (entry: DieEntry) => SourceText | readonly Diagnostic[];
  /** A plant description; the built-in typical plant when absent. */
  readonly plant?: SourceText;
  /** Fields of every part description to set before it is read, as `path=value`. */
  readonly set?: readonly string[];
  readonly wave?: boolean;
  readonly rulebook: Rulebook;
  readonly version: string;
}

export interface DiePlanned extends Planned {
  /** What each part was planned of, in the order of the die file; absent without a plan. */
  readonly members?: readonly Case[];
}

/** The part files that a die description names, as written; none where it has a fault. */
export function partFilesOf(source: SourceText): string[] {
  return readDie(source).die?.parts.map(({ file }) => file.value) ?? [];
}

/** Reads a die description with the parts that it names and works out the plan of the die. Never throws for what a user can write. */
export function planDie(request: DieRequest): DiePlanned {
  const { die, diagnostics } = readDie(request.die);
  const plant = plantOf(request.rulebook, request.plant);
  const input: Diagnostic[] = [...diagnostics, ...plant.diagnostics];
  if (die === undefined) return { diagnostics: input };
  const parts = die.parts.map((entry) => readMember(entry, request, input));
  const known = parts.flatMap((one) => one ?? []);
  const other = otherAlloy(known);
  if (other !== undefined) input.push(other);
  if (plant.plant === undefined || other !== undefined || known.length < parts.length) return { diagnostics: input };
  const first = known[0] as (typeof known)[number];
  const rulebook = withPlantLimits(request.rulebook, plant.plant);
  const tool = { name: 'diewright', version: request.version };
  const settled = (of: Pick<DieSpec | PartSpec, 'accepted'>, findings: readonly Diagnostic[]): Diagnostic[] =>
    applyAcceptances(of.accepted, findings, { rulebook, others: Object.keys(FINDING_CODES) });
  const common = { alloy: first.alloy, plant: plant.plant, rulebook, wave: request.wave === true };
  const { plan, whole } = makeDiePlan({ ...common, die, parts: known.map(({ part }) => part) }, tool, {
    die: (findings) => settled(die, sortDiagnostics([...input, ...findings])),
    part: (i, findings) => settled(ownAcceptances((known[i] as (typeof known)[number]).part, findings), findings),
  });
  const findings = allFindings(plan);
  if (findings.some((finding) => finding.severity === 'error' && finding.code.startsWith('spec/'))) return { diagnostics: findings };
  return { plan, diagnostics: findings, ...(whole === undefined ? {} : { given: whole }), members: known.map(({ part }) => ({ ...common, part })) };
}

/** What a part accepts of findings that only a die of its own has says nothing here: it is not told that they are not met. */
function ownAcceptances({ accepted }: PartSpec, findings: readonly Diagnostic[]): Pick<PartSpec, 'accepted'> {
  const met = new Set(findings.map(({ code }) => code));
  return { accepted: accepted.filter(({ code }) => met.has(code)) };
}

/** A part of the die with its alloy; its faults are added to those of the input. */
function readMember(
  entry: DieEntry,
  { partText, set = [], rulebook }: DieRequest,
  faults: Diagnostic[],
): { readonly part: PartSpec; readonly alloy: Alloy } | undefined {
  const text = partText(entry);
  if (!('text' in text)) {
    faults.push(...text);
    return undefined;
  }
  const edited = setFields(text, set);
  if (edited.diagnostics.length > 0) {
    faults.push(...edited.diagnostics);
    return undefined;
  }
  const { part, diagnostics } = readPart(edited.source);
  faults.push(...diagnostics);
  if (part === undefined) {
    faults.push(...faultsOfAlloyNamed(rulebook, edited.source));
    return undefined;
  }
  const alloy = alloyOf(rulebook, part);
  if ('found' in alloy) return { part, alloy: alloy.found };
  faults.push(alloy.fault);
  return undefined;
}
