import type { YamlPath } from '../kernel/located-yaml.ts';
import { didYouMean, orList } from '../kernel/spelling.ts';
import { dimensionOf } from '../kernel/units.ts';
import type { ReadRules } from './read.ts';
import type { Alloy, Axis, Choice, Rulebook, RuleKind, Table, Vocabulary } from './types.ts';

/** The words that rules may use. */
export interface Words {
  readonly vocabulary: Vocabulary;
  readonly ids: readonly string[];
  /** Ids of values and texts that every plan knows before its first decision. */
  readonly given: readonly string[];
}

/** Whether house rules fit what they are laid over: what they may replace, with what, and that they say why. */
export function checkFits(read: ReadRules, before: Rulebook, words: Words): void {
  for (const table of Object.values(read.tables)) {
    const builtIn = own(before.tables, table.id);
    if (builtIn === undefined) nothingReads(read, 'table', table.id, Object.keys(before.tables), 'no step of a plan reads it');
    else if (says(read, 'table', table.id, builtIn)) fitTable(read, table, builtIn);
  }
  for (const choice of Object.values(read.choices)) {
    const builtIn = own(before.choices, choice.id);
    if (builtIn === undefined) nothingReads(read, 'choice', choice.id, Object.keys(before.choices), 'no step of a plan takes such a decision');
    else if (says(read, 'choice', choice.id, builtIn)) fitChoice(read, choice, builtIn, words);
  }
  for (const id of Object.keys(read.limits)) fitOwn(read, 'limit', id, before.limits);
  for (const alloy of Object.values(read.alloys)) {
    fitOwn(read, 'alloy', alloy.id, before.alloys);
    fitDesignations(read, alloy, before.alloys);
  }
  for (const id of Object.keys(read.cautions)) {
    if (!Object.hasOwn(before.cautions, id)) continue;
    const message = `the caution "${id}" is built in, and built-in safety cautions stay as they are`;
    read.faults.add('caution-kept', read.place('caution', id, [], 'key'), message, 'add yours under a name of its own; both are then printed');
  }
  for (const key of Object.keys(read.sources)) {
    if (!Object.hasOwn(before.sources, key)) continue;
    const message = `the source "${key}" is in the bibliography already, and built-in figures cite it`;
    read.faults.add(
      'source-taken',
      read.place('source', key, [], 'key'),
      message,
      'give yours a key of its own, such as one that begins with the name of the house',
    );
  }
}

/** No name of a house alloy is that of another alloy: a part that asks for that one would get this. */
function fitDesignations(read: ReadRules, alloy: Alloy, before: Readonly<Record<string, Alloy>>): void {
  const names = [
    { code: alloy.id, path: [] },
    ...alloy.designations.flatMap((designation, i) => (designation.near === true ? [] : [{ code: designation.code, path: ['designations', i] }])),
  ];
  for (const { code, path } of names) {
    const other = Object.values(before).find(
      (known) => known.id !== alloy.id && (same(known.id, code) || known.designations.some((d) => d.near !== true && same(d.code, code))),
    );
    if (other === undefined) continue;
    const fix = `give yours a name of its own${path.length === 0 ? '' : ', or mark the designation "near: true"'}`;
    const place = read.place('alloy', alloy.id, path, path.length === 0 ? 'key' : 'value');
    read.faults.add('designation-taken', place, `"${code}" is the alloy ${other.id} already`, fix);
  }
}

function own<T>(record: Readonly<Record<string, T>>, id: string): T | undefined {
  return Object.hasOwn(record, id) ? record[id] : undefined;
}

function same(a: string, b: string): boolean {
  const bare = (text: string): string => text.toUpperCase().replace(/[\s-]+/g, '');
  return bare(a) === bare(b);
}

/** A record that may be added or may replace: it says why exactly when it replaces. */
function fitOwn(read: ReadRules, what: RuleKind, id: string, before: Readonly<Record<string, { readonly house?: string }>>): void {
  const replaced = own(before, id);
  if (replaced !== undefined) says(read, what, id, replaced);
  else if (read.written(what, id).reason !== undefined) {
    const message = `a reason for replacing is given, but no ${what} "${id}" is built in${didYouMean(id, Object.keys(before))}`;
    read.faults.add('replaces-nothing', read.place(what, id, ['reason']), message, 'correct the id, or take "reason" out of what is new');
  }
}

/** Whether a record that replaces another one, built in or of a folder laid over before, says why. */
function says(read: ReadRules, what: RuleKind, id: string, { house }: { readonly house?: string }): boolean {
  if (read.written(what, id).reason !== undefined) return true;
  const message = `the ${what} "${id}" ${house === undefined ? 'is built in' : `stands in ${house} already`}, and nothing says why this takes its place`;
  read.faults.add('no-reason', read.place(what, id, [], 'key'), message, 'add "reason: ...", or give yours an id of its own');
  return false;
}

function nothingReads(read: ReadRules, what: 'table' | 'choice', id: string, known: readonly string[], why: string): void {
  const fix =
    what === 'table' ? 'name it like a built-in table: see "diewright list tables"' : 'name it like a built-in decision: see "diewright list choices"';
  read.faults.add('nothing-reads-it', read.place(what, id, [], 'key'), `no ${what} "${id}" is built in, so ${why}${didYouMean(id, known)}`, fix);
}

/** The steps of a plan read a table by its axes and columns, so these must be those of the built-in one. */
function fitTable(read: ReadRules, table: Table, builtIn: Table): void {
  const differs = (path: YamlPath, message: string, fix: string, part?: 'key'): void =>
    read.faults.add('axes-differ', read.place('table', table.id, path, part), message, fix);
  const named = (list: readonly { readonly name: string }[]): string[] => list.map(({ name }) => name);
  for (const axis of builtIn.axes) {
    const mine = table.axes.find(({ name }) => name === axis.name);
    if (mine === undefined) differs(['axes'], `the axis "${axis.name}" of the built-in table is missing`, `add "${axis.name}: ${form(axis)}"`, 'key');
    else if (!alike(mine, axis))
      differs(['axes', axis.name], `the axis "${axis.name}" is another kind than that of the built-in table`, `write "${axis.name}: ${form(axis)}"`);
    else if (mine.kind === 'word' && axis.kind === 'word') unknownWords(read, table, mine.name, mine.values, axis.values);
  }
  for (const { name } of table.axes)
    if (!named(builtIn.axes).includes(name))
      differs(['axes', name], `the built-in table has no axis "${name}"`, `its axes are ${orList(named(builtIn.axes))}`, 'key');
  for (const column of builtIn.gives) {
    const mine = table.gives.find(({ name }) => name === column.name);
    if (mine === undefined) differs(['gives'], `the column "${column.name}" of the built-in table is missing`, `add "${column.name}" in ${column.unit}`, 'key');
    else if (dimensionOf(mine.unit) !== dimensionOf(column.unit))
      differs(['gives', column.name, 'unit'], `"${column.name}" is in ${column.unit}, not ${mine.unit}`, `write it in ${column.unit}`);
  }
  for (const { name } of table.gives)
    if (!named(builtIn.gives).includes(name))
      differs(
        ['gives', name],
        `the built-in table has no column "${name}"${didYouMean(name, named(builtIn.gives))}`,
        `its columns are ${orList(named(builtIn.gives))}`,
        'key',
      );
}

function alike(a: Axis, b: Axis): boolean {
  return a.kind === 'word' || b.kind === 'word' ? a.kind === b.kind : dimensionOf(a.unit) === dimensionOf(b.unit);
}

function form(axis: Axis): string {
  return axis.kind === 'word'
    ? `{ values: [${axis.values.join(', ')}] }`
    : `{ unit: ${axis.unit}, ${axis.reading === 'up-to' ? 'steps: up-to' : `between: linear, outside: ${axis.outside}`} }`;
}

function unknownWords(read: ReadRules, table: Table, axis: string, values: readonly string[], known: readonly string[]): void {
  values.forEach((value, i) => {
    if (known.includes(value)) return;
    const place = read.place('table', table.id, ['axes', axis, 'values', i]);
    read.faults.add('unknown-word', place, `nothing asks a plan's tables for the ${axis} "${value}"${didYouMean(value, known)}`, `use ${orList(known)}`);
  });
}

/** A decision is taken at a fixed step on the values known there, and what it chooses must be a word that later steps know. */
function fitChoice(read: ReadRules, choice: Choice, builtIn: Choice, words: Words): void {
  const known = [...new Set(builtIn.rows.map((row) => row.choose))];
  choice.rows.forEach((row, i) => {
    if (known.includes(row.choose)) return;
    const place = read.place('choice', choice.id, ['rows', i, 'choose']);
    read.faults.add('unknown-word', place, `"${row.choose}" is not a word for ${choice.id}${didYouMean(row.choose, known)}`, `write ${orList(known)}`);
  });
  for (const use of choice.uses) {
    const theirs = builtIn.uses.find((candidate) => candidate.id === use.id);
    const asBuiltIn = theirs !== undefined && theirs.name === use.name && theirs.unit === use.unit;
    if (asBuiltIn || (theirs === undefined && words.given.includes(use.id) && !builtIn.uses.some(({ name }) => name === use.name))) continue;
    if (words.vocabulary(use.id) === undefined) continue;
    const names = builtIn.uses.map(({ name, id, unit }) => `${name}: ${id}${unit === undefined ? '' : ` in ${unit}`}`);
    const message =
      theirs === undefined
        ? `"${use.id}" need not be known yet when ${choice.id} is decided, or its name is taken`
        : `the built-in table binds "${use.id}" in another way`;
    read.faults.add(
      'not-known-yet',
      read.place('choice', choice.id, ['uses', use.name]),
      message,
      `use ${orList(names)}, or what the part description gives, such as quality.use`,
    );
  }
}
