import type * as z from 'zod';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import { type LocatedYaml, readLocatedYaml, type YamlPath } from '../kernel/located-yaml.ts';
import type { Place, SourceText } from '../kernel/place.ts';
import { buildAlloys, buildCautions, buildChoices, buildLimit, buildSources, buildTable } from './build.ts';
import { Faults } from './faults.ts';
import { completeAlloys } from './house-alloys.ts';
import { alloyFile, cautionFile, choiceFile, houseAlloyFile, limitFile, sourcesFile, tableFile } from './schema.ts';
import { shaped } from './shape.ts';
import type { Alloy, Caution, Choice, Limit, RuleKind, Source, Table } from './types.ts';

/** A file of rules: its path in the folder, which says what it holds, and its text under the name that a finding prints. */
export interface RuleFile {
  readonly path: string;
  readonly source: SourceText;
}

/** Where a record of the rules is written. */
export interface Written {
  readonly file: string;
  readonly path: YamlPath;
  /** Why it takes the place of something built in, if the file says so. */
  readonly reason?: string;
  /** Of a house's alloy: what the file gives of the record, properties by their names. */
  readonly gives?: readonly string[];
  /** Of a table: for each of its rows the row of the file. */
  readonly rows?: readonly number[];
}

/** What the files of a folder hold, and where each record of it stands. */
export class ReadRules {
  readonly tables: Record<string, Table> = {};
  readonly choices: Record<string, Choice> = {};
  readonly limits: Record<string, Limit> = {};
  readonly cautions: Record<string, Caution> = {};
  readonly alloys: Record<string, Alloy> = {};
  readonly sources: Record<string, Source> = {};
  readonly faults = new Faults();
  /** Faults of YAML, and what else comes in whole. */
  readonly diagnostics: Diagnostic[] = [];
  /** Ids of limits whose file is there, sound or not. */
  readonly limitFiles = new Set<string>();
  readonly documents = new Map<string, LocatedYaml>();
  readonly #written = new Map<string, Written>();

  written(what: RuleKind, id: string): Written {
    return this.#written.get(`${what} ${id}`) as Written;
  }

  /** The place of a record, or of something in it. */
  place(what: RuleKind, id: string, path: YamlPath = [], part: 'value' | 'key' = 'value'): Place | undefined {
    const { file, path: own } = this.written(what, id);
    return this.documents.get(file)?.place([...own, ...path], part);
  }

  /** Keeps a record under its id, and where it stands; false when the folder has one of that id already. */
  keep<T>(what: RuleKind, into: Record<string, T>, id: string, record: T, written: Written): boolean {
    if (Object.hasOwn(into, id)) {
      const other = this.written(what, id).file;
      this.faults.add(
        'id-twice',
        this.documents.get(written.file)?.place(written.path, 'key'),
        `${what} "${id}" stands in ${other} already`,
        'keep one of the two',
      );
      return false;
    }
    into[id] = record;
    this.#written.set(`${what} ${id}`, written);
    return true;
  }
}

/** Folders of rule data, and the form of the paths in each. */
const FOLDERS: Readonly<Record<string, { readonly path: RegExp; readonly form: string }>> = {
  tables: { path: /^tables\/[a-z0-9-]+\/[a-z0-9-]+\.yaml$/, form: 'tables/<topic>/<name>.yaml' },
  limits: { path: /^limits\/[a-z0-9-]+\/[a-z0-9-]+\.yaml$/, form: 'limits/<topic>/<rule>.yaml' },
  choices: { path: /^choices\/[a-z0-9-]+\.yaml$/, form: 'choices/<topic>.yaml' },
  cautions: { path: /^cautions\/[a-z0-9-]+\.yaml$/, form: 'cautions/<topic>.yaml' },
  alloys: { path: /^alloys\/[a-z0-9-]+\.yaml$/, form: 'alloys/<family>.yaml' },
};

/**
 * Reads rule files into records, by the shapes of their files. With the alloys that are built in, the files are house
 * rules: an alloy's record may then hold what differs from the built-in one.
 */
export function readRules(files: readonly RuleFile[], builtIn?: Readonly<Record<string, Alloy>>): ReadRules {
  const read = new ReadRules();
  for (const file of [...files].sort((a, b) => (a.path < b.path ? -1 : 1))) readFile(file, read, builtIn);
  return read;
}

function readFile({ path, source }: RuleFile, read: ReadRules, builtIn: Readonly<Record<string, Alloy>> | undefined): void {
  const [folder] = path.split('/') as [string];
  const form = Object.hasOwn(FOLDERS, folder) ? FOLDERS[folder] : undefined;
  const document = readLocatedYaml(source, { prefix: 'rules' });
  read.documents.set(path, document);
  const id = path.slice(folder.length + 1).replace(/\.yaml$/, '');
  if (folder === 'limits') read.limitFiles.add(id);
  if (form === undefined && path !== 'sources.yaml') {
    const fix = 'put it into limits/, choices/, tables/, cautions/ or alloys/; the bibliography is sources.yaml';
    read.faults.add('unknown-folder', document.whole, `no rule data is read from "${path}"`, fix);
  } else if (form !== undefined && !form.path.test(path)) {
    read.faults.add('file-name', document.whole, `"${path}" cannot be the path of a rule file`, `name it ${form.form}, in small letters, digits and hyphens`);
  } else if (document.diagnostics.length > 0) read.diagnostics.push(...document.diagnostics);
  else readRecords(folder, path, id, document, read, builtIn);
}

function readRecords(
  folder: string,
  file: string,
  id: string,
  document: LocatedYaml,
  read: ReadRules,
  builtIn: Readonly<Record<string, Alloy>> | undefined,
): void {
  const shape = <T>(schema: z.ZodType<T>): T | undefined => shaped(schema, document, read.faults);
  const because = (reason: string | undefined) => (reason === undefined ? {} : { reason });
  if (folder === 'tables') {
    const written = shape(tableFile);
    if (written === undefined) return;
    const { table, rows } = buildTable(id, written, document, read.faults);
    read.keep('table', read.tables, id, table, { file, path: [], rows, ...because(written.reason) });
  } else if (folder === 'limits') {
    const written = shape(limitFile);
    const limit = buildLimit(id, written);
    if (limit !== undefined) read.keep('limit', read.limits, id, limit, { file, path: [], ...because(written?.reason) });
  } else if (folder === 'choices') {
    const written = shape(choiceFile);
    for (const choice of Object.values(buildChoices(id, written))) {
      const name = choice.id.slice(id.length + 1);
      read.keep('choice', read.choices, choice.id, choice, { file, path: ['decisions', name], ...because(written?.decisions[name]?.reason) });
    }
  } else if (folder === 'cautions') {
    for (const caution of Object.values(buildCautions(id, shape(cautionFile))))
      read.keep('caution', read.cautions, caution.id, caution, { file, path: ['cautions', caution.id.slice(id.length + 1)] });
  } else if (folder === 'alloys') readAlloys(file, id, document, read, builtIn);
  else
    for (const source of Object.values(buildSources(shape(sourcesFile)))) read.keep('source', read.sources, source.key, source, { file, path: [source.key] });
}

function readAlloys(file: string, family: string, document: LocatedYaml, read: ReadRules, builtIn: Readonly<Record<string, Alloy>> | undefined): void {
  const partial = builtIn === undefined ? undefined : shaped(houseAlloyFile, document, read.faults);
  const written = builtIn === undefined ? shaped(alloyFile, document, read.faults) : partial && completeAlloys(partial, builtIn, document, read.faults);
  if (written === undefined) return;
  if (written.family !== family)
    read.faults.add(
      'file-name',
      document.place(['family']),
      `alloys of the family "${written.family}" do not belong in ${file}`,
      `put them into alloys/${written.family}.yaml`,
    );
  for (const alloy of Object.values(buildAlloys(written))) {
    const { reason } = written.alloys[alloy.id] ?? {};
    const { reason: _reason, properties = {}, ...rest } = partial?.alloys[alloy.id] ?? {};
    const gives = [...Object.keys(rest), ...Object.keys(properties)];
    read.keep('alloy', read.alloys, alloy.id, alloy, { file, path: ['alloys', alloy.id], gives, ...(reason === undefined ? {} : { reason }) });
  }
}
