import { planDie } from '../../src/die.ts';
import {
  applyBaseline,
  checkedFindings,
  checkFreshness,
  type Diagnostic,
  findingsText,
  houseRulebook,
  type Planned,
  planPart,
  type Rulebook,
  readBaseline,
  readPlantText,
  readProject,
  renderFigures,
  renderPlans,
  renderSheets,
  ruleInfoOf,
  SHEETS,
  type SourceText,
} from '../../src/index.ts';
import { headOf, partCsv, type Replanned, replanJson, replanMarkdown, replanPart, summarise } from '../../src/replan.ts';
import { replanDie } from '../../src/replan-die.ts';
import { cpuTime } from '../cpu-time.ts';
import { BASES, type Kind, PARTS_BY_NAME } from './bases.ts';
import { must, reading, soundCsv, soundFindings, soundJson, soundMarkdown, soundReport, soundSvg, soundText } from './invariants.ts';

/** How far a case goes: to the findings, or through everything that is written of a plan too. */
export type Depth = 'findings' | 'outputs';

export interface Case {
  readonly text: string;
  /** The path of a rule file in its folder. */
  readonly path: string;
  readonly depth: Depth;
}

const version = '0';
const GOOD = (BASES.part[0] as { text: string }).text;

/** What a text of each kind goes through. Each throws when an invariant does not hold or a fault escapes. */
export const TARGETS: Readonly<Record<Kind, (one: Case, rulebook: Rulebook) => Promise<void>>> = {
  part: async ({ text, depth }, rulebook) => {
    const planned = planPart({ part: { name: 'parts/a.part.yaml', text }, rulebook, version });
    await judge(planned, depth, rulebook);
  },
  die: async ({ text, depth }, rulebook) => {
    const partText = ({ file, at }: { file: { value: string }; at: Diagnostic['at'] }) => {
      const found = PARTS_BY_NAME.get(file.value.split('/').at(-1) ?? '');
      if (found !== undefined) return { name: `parts/${file.value}`, text: found };
      return [{ code: 'file/not-found', severity: 'error', message: 'there is no such file', ...(at === undefined ? {} : { at }) } as const];
    };
    const die = { name: 'a.die.yaml', text };
    const planned = planDie({ die, partText, rulebook, version });
    await judge(planned, depth, rulebook);
    if (depth === 'findings') return;
    // Two plans more, which are not to be counted as one slow one.
    const [start, read] = [cpuTime(), reading.ms];
    await compared(replanDie({ die, partText, before: { rulebook }, after: { rulebook, set: ['alloy=AZ91D'] }, ...COMPARED }), 'made');
    reading.ms = read + cpuTime() - start;
  },
  plant: async ({ text, depth }, rulebook) => {
    const source = { name: 'plant.yaml', text };
    const findings = readPlantText(source);
    soundFindings(findings);
    await written(findings, rulebook);
    if (depth === 'outputs') await judge(planPart({ part: { name: 'a.part.yaml', text: GOOD }, plant: source, rulebook, version }), depth, rulebook);
  },
  project: async ({ text }, rulebook) => {
    const { project, diagnostics } = await readProject({ name: 'diewright.yaml', text });
    soundFindings(diagnostics);
    await written(diagnostics, rulebook);
    must(project !== undefined || diagnostics.length > 0, () => 'no project and no finding');
    if (project === undefined) return;
    const laid = await houseRulebook(rulebook, { adjusted: project.adjusted.map((entry) => ({ ...entry, file: 'diewright.yaml' })) });
    soundFindings(laid.diagnostics);
  },
  baseline: async ({ text }, rulebook) => {
    const { entries, diagnostics } = readBaseline({ name: 'known.yaml', text });
    soundFindings(diagnostics);
    await written(diagnostics, rulebook);
    if (entries === undefined) return;
    const { findings, stale } = applyBaseline([], entries, { judged: () => true, there: () => true });
    must(findings.length === 0, () => 'a baseline makes findings');
    soundFindings(stale);
    await written(stale, rulebook);
  },
  plan: async ({ text, depth }, rulebook) => {
    const source = { name: 'plan.json', text };
    const plan = goodPlan(rulebook);
    const stale = await checkFreshness({
      part: 'a.part.yaml',
      plan,
      alone: true,
      committed: [{ source, form: 'json', shared: true }],
      // The wave takes a second of its own, whatever the plan that is read.
      again: ({ part }) => planPart({ part: { name: part, text: GOOD }, rulebook, version }).plan,
      set: [],
    });
    soundFindings(stale);
    await written(stale, rulebook);
    if (depth === 'outputs') await replanned(source, rulebook);
  },
  limit: rule,
  table: rule,
  choice: rule,
  caution: rule,
  alloy: rule,
  sources: rule,
};

let good: { readonly of: Rulebook; readonly plan: NonNullable<Planned['plan']> } | undefined;

function goodPlan(rulebook: Rulebook): NonNullable<Planned['plan']> {
  if (good?.of !== rulebook)
    good = { of: rulebook, plan: planPart({ part: { name: 'a.part.yaml', text: GOOD }, rulebook, version }).plan as NonNullable<Planned['plan']> };
  return good.plan;
}

async function rule({ text, path, depth }: Case, base: Rulebook): Promise<void> {
  const { rulebook, diagnostics } = await houseRulebook(base, { folders: [{ name: 'house', files: [{ name: path, text }] }] });
  must((rulebook === undefined) === diagnostics.length > 0, () => 'faulty rules and no finding');
  soundFindings(diagnostics);
  await written(diagnostics, base);
  if (rulebook !== undefined && depth === 'outputs') await judge(planPart({ part: { name: 'a.part.yaml', text: GOOD }, rulebook, version }), depth, rulebook);
}

/** The change of a part against a plan that was committed, in the formats of a replanning. */
async function replanned(committed: SourceText, rulebook: Rulebook): Promise<void> {
  const part = { name: 'a.part.yaml', text: GOOD };
  const after = { rulebook, set: ['production.per_year=50000'] };
  await compared(replanPart({ part, before: { rulebook, committed }, after, ...COMPARED }), 'committed');
}

const COMPARED = { compare: { leastChange: 1, everyValue: false }, version };

/** A change in every form of a report, or why there is none. */
async function compared({ change, failure, diagnostics }: Pick<Replanned, 'change' | 'failure' | 'diagnostics'>, before: 'made' | 'committed'): Promise<void> {
  soundFindings(diagnostics);
  must((change === undefined) !== (failure === undefined), () => 'neither changed nor failed');
  const parts = change === undefined ? [] : [change];
  const failures = failure === undefined ? [] : [failure];
  const head = headOf({ version, settings: ['production.per_year=50000'], before, sameCavities: false, leastChange: 1 });
  const report = { head, set: summarise(parts, failures), parts, failures };
  soundCsv([...partCsv(report)].join(''), 'the table of parts');
  soundJson([...replanJson(report)].join(''), 'the replanning as JSON');
  soundMarkdown([...replanMarkdown(report)].join(''), 'the replanning');
}

/** Findings, and with `outputs` every form of the plan. */
async function judge({ plan, diagnostics }: Planned, depth: Depth, rulebook: Rulebook): Promise<void> {
  must(plan !== undefined || diagnostics.some(({ severity }) => severity === 'error'), () => 'no plan and no error');
  soundFindings(diagnostics);
  await written(diagnostics, rulebook);
  if (plan === undefined) return;
  for (const [id, value] of plan.values) must(Number.isFinite(value.in(value.unit).value), () => `${id} is ${value.in(value.unit).value}`);
  for (const { id, missing } of plan.unchecked) must(missing.trim() !== '', () => `${id} is unchecked without a reason`);
  if (depth === 'findings') return;
  soundJson(await renderPlans('json', [plan]), 'the plan as JSON');
  soundMarkdown(await renderPlans('markdown', [plan]), 'the plan');
  for (const sheet of SHEETS) soundMarkdown(await renderSheets(sheet, [plan]), `the sheet ${sheet}`);
  for (const { id, svg } of await renderFigures(plan)) soundSvg(svg, `the figure ${id}`);
}

/** The findings as a check writes them, in every format. */
async function written(diagnostics: readonly Diagnostic[], rulebook: Rulebook): Promise<void> {
  if (diagnostics.length === 0) return;
  soundText(findingsText(diagnostics), 'the findings');
  const findings = checkedFindings('parts/a.part.yaml', diagnostics, { shown: true });
  const files = [{ name: 'parts/a.part.yaml', judged: true }];
  await soundReport(findings, { tool: { name: 'diewright', version }, files, threshold: 'error', exit: 1, rule: ruleInfoOf(rulebook) });
}
