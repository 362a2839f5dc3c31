import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { didYouMean } from '../kernel/spelling.ts';
import { sourceKey } from '../kernel/status.ts';
import type { Limit } from '../rulebook/types.ts';
import { collectCautions } from './cautions.ts';
import { gatherExtrapolations } from './extrapolations.ts';
import { judgeAll } from './judge.ts';
import type { Case, Ledger } from './ledger.ts';
import type { Block, Plan, Section } from './plan.ts';
import { STANDING } from './standing.ts';
import { type Step, titleOf } from './step.ts';
import { PRINT_ORDER } from './steps/index.ts';
import { VOCABULARY, wordOf } from './vocabulary/index.ts';
import { weakFigures } from './weak.ts';
import { workThrough } from './work-through.ts';

export interface Tool {
  readonly name: string;
  readonly version: string;
}

/**
 * Works out the casting plan of one part: every step in the order in which they need each other, then every limit,
 * every caution, and the sections in the order in which they are read. `settle` has the last word on the findings.
 * Never throws for what a user can write.
 */
export function makePlan(given: Case, tool: Tool, settle?: Settle): Plan {
  return planOf(workThrough(given), tool, { sections: PRINT_ORDER, isJudged: ({ id }) => !id.startsWith('set/') }, settle);
}

/** Has the last word on the findings of a plan, such as which of them are accepted. */
export type Settle = (findings: readonly Diagnostic[]) => readonly Diagnostic[];

/** What of a ledger goes into a plan. */
export interface Extent {
  /** In the order in which they are read. */
  readonly sections: readonly Pick<Step, 'id' | 'title' | 'show'>[];
  /** The limits that are judged; all of them when absent. */
  readonly isJudged?: (limit: Limit) => boolean;
  /** The values, texts and decisions that are kept; all of them when absent. */
  readonly isKept?: (id: string) => boolean;
  /** The title of a value that is something else here than in other plans, by its id and its usual title. */
  readonly titled?: (id: string, usual: string) => string;
}

/** Judges what a ledger has come to and puts it together as a plan. `also` is what only plans of dies have. */
export function planOf(ledger: Ledger, tool: Tool, extent: Extent, settle: Settle = (findings) => findings, also: Pick<Plan, 'parts' | 'inDie'> = {}): Plan {
  const { isJudged, isKept, titled = (_, usual) => usual } = extent;
  reportUnusedPins(ledger);
  const judged = judgeAll(ledger, isJudged);
  const findings = settle(sortDiagnostics(gatherExtrapolations(ledger.findings)));
  const kept = <V>(record: ReadonlyMap<string, V>): ReadonlyMap<string, V> =>
    isKept === undefined ? record : new Map([...record].filter(([id]) => isKept(id)));
  const [values, texts, decisions] = [kept(ledger.values), kept(ledger.texts), kept(ledger.decisions)];
  // A check reads the findings and nothing else, so what only a printed plan needs is made when it is asked for.
  // Cautions come before sections, for both may add to what is not judged.
  const printed = once(() => ({ cautions: collectCautions(ledger), sections: sectionsOf(ledger, extent, values) }));
  const titles = once(() => new Map([...values.keys(), ...texts.keys()].map((id) => [id, titled(id, titleOf(id))])));
  const weak = once(() => weakFigures(values));
  const sources = once(() =>
    citedSources(
      { values, decisions, rulebook: ledger.rulebook },
      printed().cautions.flatMap((caution) => caution.source),
    ),
  );
  const { part, alloy, plant } = ledger.given;
  return {
    tool,
    standing: STANDING,
    part: {
      name: part.name,
      ...(part.number === undefined ? {} : { number: part.number }),
      ...(part.revision === undefined ? {} : { revision: part.revision }),
      ...(part.note === undefined ? {} : { note: part.note }),
      file: part.source.name,
    },
    alloy: {
      id: alloy.id,
      family: alloy.family,
      asked: part.alloy.value,
      designations: alloy.designations.filter((d) => !d.near).map((d) => `${d.system} ${d.code}`),
    },
    plant: { name: plant.name, invented: plant.invented, ...(plant.note === undefined ? {} : { note: plant.note }) },
    decisions,
    texts,
    values,
    get titles() {
      return titles();
    },
    get sections() {
      return printed().sections;
    },
    findings,
    get cautions() {
      return printed().cautions;
    },
    get unchecked() {
      printed();
      return isKept === undefined ? ledger.unchecked : ledger.unchecked.filter(({ id }) => isKept(id));
    },
    judged,
    get weak() {
      return weak();
    },
    get sources() {
      return sources();
    },
    ...changesOf(ledger.given),
    ...also,
  };
}

function sectionsOf(ledger: Ledger, { sections, isKept }: Extent, values: Plan['values']): Section[] {
  // What is not kept is not shown.
  const shown = (block: Block): Block[] => {
    if (isKept === undefined) return [block];
    if (block.kind === 'table') {
      const rows = block.rows.filter((row) => row.every((cell) => typeof cell === 'string' || isKept('value' in cell ? cell.value : cell.decision)));
      return rows.length === 0 ? [] : [{ ...block, rows }];
    }
    if (block.kind !== 'values') return [block];
    const ids = block.ids.filter((id) => values.has(id));
    return ids.length === 0 ? [] : [{ ...block, ids }];
  };
  return sections
    .map((step) => ({
      id: step.id,
      title: step.title,
      // Where house rules leave a table without a figure, a section may lack what it is laid out by; it is then listed as not judged.
      blocks: (ledger.attempt(step.id, step.title, () => step.show(ledger)) ?? []).flatMap(shown),
    }))
    .filter((section) => section.blocks.length > 0);
}

/** Work that is done the first time that it is asked for. */
function once<T>(work: () => T): () => T {
  let done: { readonly made: T } | undefined;
  return () => {
    done ??= { made: work() };
    return done.made;
  };
}

/** Of the alloys only the one that this part is cast in bears on its plan. */
function changesOf({ rulebook, alloy }: Case): Pick<Plan, 'changes'> {
  const changes = (rulebook.changes ?? []).filter((change) => change.what !== 'alloy' || change.id === alloy.id);
  return changes.length === 0 ? {} : { changes };
}

/** A pin that nothing used is a slip of the engineer's, and must not pass in silence. */
function reportUnusedPins(ledger: Ledger): void {
  for (const pin of ledger.part.pinned.values()) {
    if (ledger.usedPins.has(pin.id)) continue;
    const table = ledger.rulebook.choices[pin.id.replace(/\[.*\]$/s, '')];
    if (table?.verdict === true) {
      ledger.findings.push({
        code: 'pin/verdict',
        severity: 'error',
        message: `pinned ${pin.id} is a verdict on figures, "${table.title}", and cannot be set`,
        at: pin.at,
        fix: `remove the pin, or pin a figure that it hangs on; see "diewright explain ${table.id}"`,
      });
      continue;
    }
    const known = wordOf(pin.id) !== undefined || pin.id in ledger.rulebook.choices;
    ledger.findings.push(
      known
        ? {
            code: 'pin/not-used',
            severity: 'warning',
            message: `pinned ${pin.id} was not used: this plan does not work it out`,
            at: pin.at,
            fix: 'remove the pin, or check why that section is absent',
          }
        : {
            code: 'spec/unknown-pin',
            severity: 'error',
            message: `no plan value or decision is called "${pin.id}"${didYouMean(pin.id, [...Object.keys(VOCABULARY), ...Object.keys(ledger.rulebook.choices)])}`,
            at: pin.at,
            fix: 'see "diewright list values" and "diewright list choices"',
          },
    );
  }
}

function citedSources(from: Pick<Plan, 'values' | 'decisions'> & Pick<Ledger, 'rulebook'>, extra: readonly string[]): Map<string, string> {
  const refs = [...[...from.values.values()].flatMap((v) => v.source), ...[...from.decisions.values()].flatMap((d) => d.source), ...extra];
  const keys = [...new Set(refs.map(sourceKey))].sort();
  const cited = new Map<string, string>();
  for (const key of keys) {
    const source = from.rulebook.sources[key];
    if (source === undefined) continue;
    const parts = [source.author ?? source.publisher, source.title, source.edition, source.year].filter((part) => part !== undefined);
    cited.set(key, `${parts.join(', ')}${source.vendor === true ? ' (vendor page)' : ''}. ${source.read}`);
  }
  return cited;
}
