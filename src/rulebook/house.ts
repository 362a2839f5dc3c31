import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { Place, type SourceText } from '../kernel/place.ts';
import { type Adjustment, adjust } from './adjust.ts';
import { checkRules } from './check.ts';
import { conditionsOf } from './compile.ts';
import { conditionOf } from './expression.ts';
import { Faults } from './faults.ts';
import { checkFits, type Words } from './house-fits.ts';
import { type ReadRules, type RuleFile, readRules } from './read.ts';
import type { Alloy, Change, Limit, Rulebook, RuleKind, SearchStop } from './types.ts';

/** A folder of house rules as texts; whoever reads the disk hands it in. */
export interface RuleFolder {
  /** As the user names it; plans and findings of rules name files by it. */
  readonly name: string;
  /** The way to it from where faults are read, if that is not its name. */
  readonly at?: string;
  /** Files by their path in the folder, such as `limits/clamp/house-use.yaml`. */
  readonly files: readonly SourceText[];
}

export interface HouseRules {
  /** Laid over the built-in rules in this order. */
  readonly folders?: readonly RuleFolder[];
  readonly adjusted?: readonly Adjustment[];
}

export interface Laid {
  /** Absent when anything is wrong; then `diagnostics` says what. */
  readonly rulebook?: Rulebook;
  readonly diagnostics: readonly Diagnostic[];
  /** What was read and run. */
  readonly read: { readonly files: number; readonly rules: number; readonly examples: number };
}

/** The rulebook with house rules laid over it, every fault of them reported. The examples in them are run. */
export function layHouseRules(base: Rulebook, house: HouseRules, words: Words): Laid {
  let rulebook = base;
  const diagnostics: Diagnostic[] = [];
  const limitFiles = new Set<string>();
  const count = { files: 0, rules: 0, examples: 0 };
  for (const folder of house.folders ?? []) {
    const read = readRules(ruleFiles(folder), rulebook.alloys);
    for (const id of read.limitFiles) limitFiles.add(id);
    checkNotEmpty(folder, read);
    checkFits(read, rulebook, words);
    const found = checkRules(read, { ...words, sources: { ...rulebook.sources, ...read.sources }, evaluation: conditionOf });
    diagnostics.push(...found);
    count.files += folder.files.length;
    addCounts(count, read);
    rulebook = laid(rulebook, base, read, folder, found.length > 0);
  }
  const faults = new Faults();
  rulebook = adjust(rulebook, house.adjusted ?? [], limitFiles, faults);
  diagnostics.push(...faults.list);
  return { ...(diagnostics.length === 0 ? { rulebook } : {}), diagnostics: sortDiagnostics(diagnostics), read: count };
}

function ruleFiles(folder: RuleFolder): RuleFile[] {
  return folder.files.map(({ name, text }) => ({ path: name, source: { name: inFolder(folder.at ?? folder.name, name), text } }));
}

function inFolder(folder: string, path: string): string {
  return folder === '' || folder === '.' ? path : `${folder.replace(/\/+$/, '')}/${path}`;
}

function checkNotEmpty(folder: RuleFolder, read: ReadRules): void {
  if (folder.files.length > 0) return;
  const at = new Place({ name: folder.at ?? folder.name, text: '' }, '', () => [0, 0]);
  read.faults.add(
    'folder-empty',
    at,
    'the folder holds no file of rules',
    'put rules into limits/, choices/, tables/, cautions/ or alloys/ in it, in files that end in .yaml',
  );
}

function addCounts(count: { rules: number; examples: number }, { limits, choices, cautions }: ReadRules): void {
  const withExamples = [...Object.values(limits), ...Object.values(choices), ...Object.values(cautions)];
  count.rules += withExamples.length;
  for (const { examples } of withExamples) count.examples += examples.length;
}

const SECTIONS = { limit: 'limits', choice: 'choices', table: 'tables', caution: 'cautions', alloy: 'alloys' } as const;

/** The records of a folder over those of a rulebook, each marked with its file, and what that changes. */
function laid(rulebook: Rulebook, base: Rulebook, read: ReadRules, folder: RuleFolder, faulty: boolean): Rulebook {
  const changes: Change[] = [...(rulebook.changes ?? [])];
  const fileOf = (what: RuleKind, id: string): string => inFolder(folder.name, read.written(what, id).file);
  const over = <T extends object>(what: keyof typeof SECTIONS): Readonly<Record<string, T>> => {
    const own = read[SECTIONS[what]] as unknown as Readonly<Record<string, T & { readonly title?: string; readonly name?: string; readonly why?: string }>>;
    const before = rulebook[SECTIONS[what]] as unknown as Readonly<Record<string, T>>;
    if (Object.keys(own).length === 0) return before;
    const marked = Object.entries(own).map(([id, record]): [string, T] => {
      const replaces = Object.hasOwn(base[SECTIONS[what]], id);
      const { reason = record.why, gives = [] } = read.written(what, id);
      drop(changes, what, id);
      changes.push({
        what,
        id,
        // Of a built-in alloy only what the record gives is another.
        title: record.title ?? (replaces ? `${record.name}: ${gives.join(', ').replaceAll('_', ' ')}` : (record.name ?? id)),
        change: replaces ? 'replaced' : 'added',
        file: fileOf(what, id),
        line: lineOf(read.place(what, id, [], 'key')),
        ...(reason === undefined ? {} : { reason }),
      });
      const house = fileOf(what, id);
      const properties = what === 'alloy' ? { properties: markedProperties(read, id, house) } : {};
      return [id, { ...record, house, ...properties, ...(what === 'limit' ? stopOf(rulebook.limits[id], record as unknown as Limit) : {}) }];
    });
    return { ...before, ...Object.fromEntries(marked) };
  };
  const sections = { limits: over('limit'), choices: over('choice'), tables: over('table'), cautions: over('caution'), alloys: over('alloy') };
  return {
    ...rulebook,
    ...(sections as Pick<Rulebook, keyof typeof sections>),
    sources: Object.keys(read.sources).length === 0 ? rulebook.sources : { ...rulebook.sources, ...read.sources },
    // Where there is a fault the rulebook is not given out, and an expression may be one that cannot be evaluated.
    conditions: faulty ? rulebook.conditions : { ...rulebook.conditions, ...conditionsOf(read, conditionOf) },
    changes,
  };
}

/**
 * How the machine search uses a limit that takes another's place: as the other one, for it knows limits by their ids, unless the file says
 * how. Whether a candidate that breaks it is out hangs on how grave it is now.
 */
function stopOf(before: Limit | undefined, { search, severity }: Limit): { readonly search?: SearchStop } {
  if (search !== undefined || before?.search === undefined) return {};
  const { waived: _waived, ...rest } = before.search;
  return { search: { ...rest, ...(severity === 'error' ? {} : { waived: true }) } };
}

/** The properties of an alloy, those that the file gives marked with it: the others are as they were. */
function markedProperties(read: ReadRules, id: string, house: string): Alloy['properties'] {
  const { gives = [] } = read.written('alloy', id);
  const entries = Object.entries((read.alloys[id] as Alloy).properties);
  return Object.fromEntries(entries.map(([name, property]) => [name, gives.includes(name) ? { ...property, house } : property]));
}

/** What a later folder replaces is no longer what the earlier one made of it. */
function drop(changes: Change[], what: RuleKind, id: string): void {
  const at = changes.findIndex((change) => change.what === what && change.id === id);
  if (at >= 0) changes.splice(at, 1);
}

function lineOf(place: Place | undefined): number {
  return place?.position().line ?? 1;
}
