import { applyAcceptances } from './engine/acceptance.ts';
import type { Case } from './engine/case.ts';
import { findEntries, nearIds } from './engine/catalogue.ts';
import { type Listing, type ListingName, listing } from './engine/listings.ts';
import { makePlan } from './engine/make-plan.ts';
import { allFigures, type Plan } from './engine/plan.ts';
import { isPlantLimit, plantLimitFaults, withPlantLimits } from './engine/plant-limits.ts';
import { type Diagnostic, sortDiagnostics } from './kernel/diagnostic.ts';
import { Place, type SourceText } from './kernel/place.ts';
import { alloyOf, faultsOfAlloyNamed } from './part-alloy.ts';
import { codeText, entriesText } from './report/explain-text.ts';
import { FINDING_CODES } from './report/finding-codes.ts';
import { inPlanText } from './report/in-plan-text.ts';
import type { SheetName } from './report/sheet/names.ts';
import { RULE_CODES } from './rulebook/codes.ts';
import type { HouseRules, Laid } from './rulebook/house.ts';
import type { Rulebook } from './rulebook/types.ts';
import { builtInPlant, CODES, type PlantData, type PlantSpec, type ProjectSpec, readPart, readPlant } from './spec/index.ts';
import { setFields } from './spec/set-field.ts';

export * from './check.ts';
export { type Calculation, type CalculationRequest, calculate } from './engine/calculate.ts';
export { LISTINGS, type Listing, type ListingName } from './engine/listings.ts';
export { allFindings, type Plan } from './engine/plan.ts';
export { type Diagnostic, SEVERITIES, type Severity } from './kernel/diagnostic.ts';
export { Place, type SourceText } from './kernel/place.ts';
export { nearestWord, orList } from './kernel/spelling.ts';
export { findingsText } from './report/findings-text.ts';
export { calculationJson, calculationText } from './report/formula-text.ts';
export { listJson, listText } from './report/list-text.ts';
export type { Palette } from './report/palette.ts';
export { SHEETS, type SheetName } from './report/sheet/names.ts';
export { visibleLine } from './report/visible.ts';
export type { Adjustment } from './rulebook/adjust.ts';
export type { HouseRules, Laid, RuleFolder } from './rulebook/house.ts';
export type { Rulebook } from './rulebook/types.ts';
export { SCHEMAS, type SchemaName, STARTERS, type StarterName, schemaText, starterText } from './schemas.ts';
export { FAIL_ON, type FailOn, type ProjectSpec } from './spec/index.ts';

/** The built-in tables, choices, limits, cautions, alloys and bibliography. */
export async function loadRulebook(): Promise<Rulebook> {
  return (await import('./rulebook/builtin.ts')).builtinRulebook();
}

/**
 * A rulebook with house rules laid over it and limits adjusted; everything in them is checked as the built-in rules are,
 * their examples are run, and every fault is reported at its place.
 */
export async function houseRulebook(base: Rulebook, house: HouseRules): Promise<Laid> {
  const { layHouseRules } = await import('./rulebook/house.ts');
  const { HOUSE_WORDS } = await import('./engine/house-words.ts');
  return layHouseRules(base, house, HOUSE_WORDS);
}

/** Checks house rules and adjustments and runs the examples in the rules, without a part: how much was read and run, and every fault with its numbers. */
export async function testRules(base: Rulebook, house: HouseRules): Promise<Laid['read'] & Pick<Laid, 'diagnostics'>> {
  const { read, diagnostics } = await houseRulebook(base, house);
  return { ...read, diagnostics };
}

/** Reads the text of a project file. */
export async function readProject(source: SourceText): Promise<{ readonly project?: ProjectSpec; readonly diagnostics: readonly Diagnostic[] }> {
  return (await import('./spec/read-project.ts')).readProject(source);
}

export interface PlanRequest {
  readonly part: SourceText;
  /** A plant description; the built-in typical plant when absent. */
  readonly plant?: SourceText;
  /** Fields of the part description to set before it is read, as `path=value`. */
  readonly set?: readonly string[];
  /** Computes the wave in the shot sleeve too, which takes longer than the rest of a plan. */
  readonly wave?: boolean;
  readonly rulebook: Rulebook;
  /** Version of the program, printed in the plan. */
  readonly version: string;
}

export interface Planned {
  /** Absent when the input cannot be planned; then `diagnostics` says why. */
  readonly plan?: Plan;
  /** Faults of the input, or else the findings of the plan, in the order in which they are printed. */
  readonly diagnostics: readonly Diagnostic[];
  /** What the plan was made of, where there is one. */
  readonly given?: Case;
}

/** Reads a part description and works out its casting plan. Never throws for what a user can write. */
export function planPart(request: PlanRequest): Planned {
  const { rulebook } = request;
  const edited = setFields(request.part, request.set ?? []);
  if (edited.diagnostics.length > 0) return { diagnostics: edited.diagnostics };
  const read = readPart(edited.source);
  const plant = plantOf(rulebook, request.plant);
  const input = [...read.diagnostics, ...plant.diagnostics];
  if (read.part === undefined) return { diagnostics: sortDiagnostics([...input, ...faultsOfAlloyNamed(rulebook, edited.source)]) };
  if (plant.plant === undefined) return { diagnostics: input };
  const alloy = alloyOf(rulebook, read.part);
  if ('fault' in alloy) return { diagnostics: sortDiagnostics([...input, alloy.fault]) };
  const given = { part: read.part, plant: plant.plant, alloy: alloy.found, rulebook: withPlantLimits(rulebook, plant.plant), wave: request.wave === true };
  const { accepted } = read.part;
  const plan = makePlan(given, { name: 'diewright', version: request.version }, (own) =>
    applyAcceptances(accepted, sortDiagnostics([...input, ...own]), { rulebook: given.rulebook, others: Object.keys(FINDING_CODES) }),
  );
  const { findings } = plan;
  // A pin that cannot be read is found while the plan is made; such a plan is not what was asked for.
  if (findings.some((finding) => finding.severity === 'error' && finding.code.startsWith('spec/'))) return { diagnostics: findings };
  return { plan, diagnostics: findings, given };
}

const plants = new WeakMap<Rulebook, PlantSpec>();
const readPlants = new WeakMap<SourceText, ReturnType<typeof readPlant>>();

/** The plant given, or the built-in one, built once for each rulebook and text. */
export function plantOf(rulebook: Rulebook, given: SourceText | undefined): { readonly plant?: PlantSpec; readonly diagnostics: readonly Diagnostic[] } {
  if (given !== undefined) {
    const known = readPlants.get(given) ?? readWholePlant(given);
    readPlants.set(given, known);
    return known;
  }
  let plant = plants.get(rulebook);
  if (plant === undefined) {
    plant = builtInPlant(rulebook.plants['typical'] as PlantData);
    plants.set(rulebook, plant);
  }
  return { plant, diagnostics: [] };
}

/** Reads a plant, and holds its limits against the values that plans have. */
function readWholePlant(source: SourceText): ReturnType<typeof readPlant> {
  const { plant, diagnostics } = readPlant(source);
  const faults = plant === undefined ? [] : plantLimitFaults(plant);
  if (plant === undefined || faults.length === 0) return { ...(plant === undefined ? {} : { plant }), diagnostics };
  return { diagnostics: sortDiagnostics([...diagnostics, ...faults]) };
}

/** The faults of a plant description. */
export function readPlantText(source: SourceText): readonly Diagnostic[] {
  return readWholePlant(source).diagnostics;
}

/** What is wrong with a designation that was given as an option; empty when it names one alloy. */
export function alloyFaults(rulebook: Rulebook, designation: SourceText): readonly Diagnostic[] {
  const value = designation.text;
  const search = alloyOf(rulebook, { alloy: { value, at: new Place(designation, 'alloy', () => [0, value.length]) } });
  return 'fault' in search ? [search.fault] : [];
}

export const PLAN_FORMATS = ['markdown', 'json'] as const;
export type PlanFormat = (typeof PLAN_FORMATS)[number];

export interface RenderOptions {
  /** In Markdown, also every value that no section shows. */
  readonly workings?: boolean;
  /** In Markdown, for each plan in turn the files of its figures by figure id, to be linked; relative, with forward slashes. */
  readonly figures?: readonly ReadonlyMap<string, string>[];
}

/** Plans as one text. `several` asks for the form that holds more than one plan even where there is one. */
export async function renderPlans(format: PlanFormat, plans: readonly Plan[], several = plans.length > 1, options: RenderOptions = {}): Promise<string> {
  if (format === 'markdown') {
    const { markdownText } = await import('./report/markdown/index.ts');
    const { workings = false, figures = [] } = options;
    return plans.map((plan, i) => markdownText(plan, { workings, figures: figures[i] ?? new Map() })).join('\n');
  }
  const { planJson, plansJson } = await import('./report/json.ts');
  return several ? plansJson(plans) : plans.map(planJson).join('');
}

/** A sheet of each plan, one after the other as Markdown. `figures` holds the files of each plan's figures, as in `RenderOptions`. */
export async function renderSheets(sheet: SheetName, plans: readonly Plan[], figures: RenderOptions['figures'] = []): Promise<string> {
  const { sheetText } = await import('./report/sheet/index.ts');
  return plans.map((plan, i) => sheetText(sheet, plan, { figures: figures[i] ?? new Map() })).join('\n');
}

export interface RenderedFigure {
  /** Short word, unique in the plan, for the name of a file. */
  readonly id: string;
  /** An SVG document. */
  readonly svg: string;
}

/** The figures of a plan as drawings, in the plan's order. */
export async function renderFigures(plan: Plan): Promise<RenderedFigure[]> {
  const figures = allFigures(plan);
  if (figures.length === 0) return [];
  const { figureSvg } = await import('./report/figure/index.ts');
  return figures.map((figure) => ({ id: figure.id, svg: figureSvg(figure, plan.values) }));
}

/** What an id means: formula, limit, choice, table, alloy, source, value, finding code; or the ids that are near to it. */
export function explain(rulebook: Rulebook, id: string): { readonly text: string } | { readonly near: readonly string[] } {
  // A map, for a word of the user's may be one that every object knows, such as "constructor".
  const codes = new Map(Object.entries(findingCodes()));
  const entries = findEntries(rulebook, id);
  const range = id.startsWith('range/') ? findEntries(rulebook, id.slice('range/'.length)) : [];
  // A quantity is read in the same way for a file and for `calc`.
  const meaning =
    codes.get(id) ??
    codes.get(id.replace(/^(calc|rules)\//, 'spec/')) ??
    (range.length > 0 ? codes.get('range/…') : undefined) ??
    (isPlantLimit(id) ? codes.get('house/…') : undefined);
  const parts = [
    ...(entries.length === 0 ? [] : [entriesText(entries, rulebook.changes)]),
    ...(meaning === undefined ? [] : [codeText(id, meaning)]),
    ...(range.length === 0 ? [] : [entriesText(range, rulebook.changes)]),
  ];
  return parts.length === 0 ? { near: nearIds(rulebook, id, [...codes.keys()]) } : { text: parts.join('\n') };
}

/** What an id comes to in a plan: the derivation of a value, a decision, how a limit came out; undefined when it holds nothing of it. */
export function explainIn(plan: Plan, rulebook: Rulebook, id: string): string | undefined {
  return inPlanText(plan, { ...rulebook.limits, ...rulebook.switchedOff }, id);
}

/** Every code of a finding that is not a limit's, and what it means. */
export function findingCodes(): Readonly<Record<string, string>> {
  const under = (prefix: string, codes: Readonly<Record<string, string>>) => Object.entries(codes).map(([code, meaning]) => [`${prefix}/${code}`, meaning]);
  return { ...Object.fromEntries([...under('spec', CODES), ...under('rules', RULE_CODES)]), ...FINDING_CODES };
}

/** What is built in; machines come from the plant. */
export function list(
  name: ListingName,
  given: { readonly rulebook: Rulebook; readonly plant?: SourceText; readonly filter?: string },
): { readonly listing?: Listing; readonly diagnostics: readonly Diagnostic[] } {
  const { plant, diagnostics } = plantOf(given.rulebook, given.plant);
  return plant === undefined ? { diagnostics } : { listing: listing(name, { rulebook: given.rulebook, plant }, given.filter), diagnostics };
}
