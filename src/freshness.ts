import { refreshCommand } from './engine/check/refresh.ts';
import { stalePlan, staleText } from './engine/check/stale.ts';
import { comparePlans } from './engine/compare/plans.ts';
import { baseName } from './engine/compare/same.ts';
import { allFigures, type Plan } from './engine/plan.ts';
import { titleOf } from './engine/step.ts';
import type { Diagnostic } from './kernel/diagnostic.ts';
import type { SourceText } from './kernel/place.ts';
import { type PlanRecord, readCommittedPlans } from './spec/index.ts';

/** A plan that lies beside a part file. */
export interface CommittedText {
  readonly source: SourceText;
  readonly form: 'json' | 'markdown';
  /** It is not named after the part, so that it may be the plan of another part of the folder. */
  readonly shared: boolean;
}

export interface FreshnessRequest {
  /** The part file, by the name that the check gives it. */
  readonly part: string;
  /** A fresh plan; it may have been made under another name of the part file, such as `nameIn` gives. */
  readonly plan: Plan;
  /** The part is the only one in its folder, so that a plan there is its own whatever part it names. */
  readonly alone: boolean;
  readonly committed: readonly CommittedText[];
  /** Plans the same part under other names of its files, or with the wave in the sleeve. */
  readonly again: (as: { readonly part: string; readonly plant?: string | undefined; readonly wave: boolean }) => Plan | undefined;
  /** The plant and the fields set for this run, as the command line gives them. */
  readonly plant?: string | undefined;
  readonly set: readonly string[];
}

/**
 * Holds the plans beside a part against a fresh one. Which version of the program made a plan, and from which folder its
 * part was named, does not count. A plan that was made with the wave in the sleeve is held against one with it.
 */
export async function checkFreshness(request: FreshnessRequest): Promise<Diagnostic[]> {
  const { committed } = request;
  const found: Diagnostic[] = [];
  const { planJson } = await import('./report/json.ts');
  const json = committed.some(({ form }) => form === 'json') ? planJson(request.plan) : '';
  const records = new Map<CommittedText, { readonly own: PlanRecord; readonly all: readonly PlanRecord[] }>();
  for (const one of committed.filter(({ form, source }) => form === 'json' && source.text !== json)) {
    const { plans, diagnostics } = readCommittedPlans(one.source);
    found.push(...diagnostics);
    const own =
      plans.find(({ part }) => baseName(part.file) === baseName(request.part)) ?? (one.shared && !(request.alone && plans.length === 1) ? undefined : plans[0]);
    if (own !== undefined) records.set(one, { own, all: plans });
  }
  const texts = new Map(committed.filter(({ form }) => form === 'markdown').flatMap((one) => [[one, ownText(one, request)] as const]));
  const wave =
    [...records.values()].some(({ own }) => isWave(own)) || [...texts.values()].some((text) => text?.includes(titleOf('slow-shot.wave-trapped')) === true);
  const command = commandFor(
    request,
    [...records].map(([{ source }, { all }]) => ({ source, all })),
    texts,
    wave,
  );
  for (const [{ source }, { own }] of records) {
    const plan = isWave(own) ? request.again({ part: request.part, plant: request.plant, wave: true }) : undefined;
    const fresh = plan === undefined ? json : planJson(plan);
    const stale = stalePlan(source, comparePlans(own, recordOf(fresh)), command);
    if (stale !== undefined) found.push(stale);
  }
  for (const [{ source }, text] of texts) {
    const stale = text === undefined ? undefined : await staleMarkdown(source, text, request, wave, command);
    if (stale !== undefined) found.push(stale);
  }
  return found;
}

/** A plan of this program as a record, read as one that lies in a repository is. */
function recordOf(json: string): PlanRecord {
  const [record] = readCommittedPlans({ name: 'fresh plan', text: json }).plans;
  if (record === undefined) throw new TypeError('a fresh plan is no plan');
  return record;
}

/**
 * The name of a part file as the plans beside it spell it, or else as it is given: a plan that is made under that name can be
 * held against them letter by letter.
 */
export function nameIn(committed: readonly CommittedText[], part: string): string {
  for (const { source, form } of committed) {
    const name = form === 'markdown' ? MADE_FROM.exec(source.text)?.[1] : fileInJson(source.text);
    if (name !== undefined && baseName(name) === baseName(part)) return name;
  }
  return part;
}

function fileInJson(text: string): string | undefined {
  const named = /^ {4}"file": ("(?:[^"\\]|\\.)*")/m.exec(text.slice(0, HEAD))?.[1];
  if (named === undefined) return undefined;
  try {
    return JSON.parse(named) as string;
  } catch {
    // The plan will be found to be none.
    return undefined;
  }
}

/** A plan as JSON names its part in so many characters. */
const HEAD = 20_000;

async function staleMarkdown(source: SourceText, text: string, request: FreshnessRequest, wave: boolean, command: string): Promise<Diagnostic | undefined> {
  const { markdownText } = await import('./report/markdown/index.ts');
  const part = spelledIn(text, request.part);
  const plant = request.plant === undefined ? undefined : spelledIn(text, request.plant);
  const same = part === request.plan.part.file && plant === request.plant && !wave;
  const plan = same ? request.plan : request.again({ part, plant, wave });
  if (plan === undefined) return undefined;
  const figures = new Map(allFigures(plan).flatMap(({ id }) => linkTo(text, id).map((file) => [id, file] as const)));
  const fresh = markdownText(plan, { workings: hasWorkings(text), figures });
  return staleText(source, text.replace(MADE_BY, `$1${plan.tool.version}`), fresh, command);
}

/** A plan of a die says it of each of its parts too. */
const MADE_BY = /^(- Read from .*, worked out by diewright )\S+$/gm;

/** The plan of the part in a Markdown file that may hold several, or may be some other text. */
function ownText({ source, shared }: CommittedText, { part, alone }: FreshnessRequest): string | undefined {
  const texts = source.text.replaceAll('\r\n', '\n').split(/\n(?=# Casting plan: )/);
  const plans = texts.filter((text) => text.startsWith('# Casting plan: '));
  const own = plans.find((text) => baseName(MADE_FROM.exec(text)?.[1] ?? '') === baseName(part));
  return own ?? (shared && !(alone && plans.length === 1) ? undefined : plans[0]);
}

const MADE_FROM = /^- Read from `([^`\n]+)`, worked out by /m;

/** How a plan in Markdown spells the name of a file: as it was named when the plan was made. */
function spelledIn(markdown: string, name: string): string {
  for (const [, words = ''] of markdown.matchAll(/`([^`\n]+)`/g)) {
    const spelled = words.replace(/:\d+:\d+$/, '');
    if (baseName(spelled) === baseName(name)) return spelled;
  }
  return name;
}

/** The file that a plan in Markdown shows as this figure, if any. */
function linkTo(markdown: string, figure: string): string[] {
  const link = new RegExp(`\\]\\(([^()\\s]*-${figure}\\.svg)\\)`).exec(markdown)?.[1];
  if (link === undefined) return [];
  try {
    return [decodeURIComponent(link)];
  } catch {
    return [link];
  }
}

function hasWorkings(markdown: string): boolean {
  return !markdown.includes('`--workings` prints them here');
}

function isWave({ texts }: PlanRecord): boolean {
  const word = texts['slow-shot.wave'];
  return word !== undefined && word !== 'not computed';
}

/** The command that renews every plan beside the part; a file of several plans is renewed from all its parts. */
function commandFor(
  { part, plant, set }: FreshnessRequest,
  records: readonly { readonly source: SourceText; readonly all: readonly PlanRecord[] }[],
  texts: ReadonlyMap<CommittedText, string | undefined>,
  wave: boolean,
): string {
  const folder = part.slice(0, part.length - baseName(part).length);
  const several = records.find(({ all }) => all.length > 1)?.all.map((record) => `${folder}${baseName(record.part.file)}`);
  const [markdown] = [...texts].filter(([, text]) => text !== undefined);
  const text = markdown?.[1];
  return refreshCommand({
    parts: several ?? [part],
    json: records[0]?.source.name,
    markdown: markdown?.[0].source.name,
    workings: text !== undefined && hasWorkings(text),
    figures: text !== undefined && /\]\([^()\s]*\.svg\)/.test(text),
    wave,
    plant,
    set,
  });
}
