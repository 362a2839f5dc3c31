import * as z from 'zod';
import type { YamlPath } from '../kernel/located-yaml.ts';
import { printable } from '../kernel/printable.ts';
import { nearestWord, orList } from '../kernel/spelling.ts';
import { dataAt, type Findings } from './findings.ts';
import { otherWordFor } from './other-words.ts';
import { schemaAt, unwrapped } from './salvage.ts';

/** A mapping of more keys is no slip of spelling, and comparing them all would take long. */
const MOST_KEYS = 200;

/**
 * Reports keys that a mapping does not know. The known key that each was probably meant to be is then not reported as
 * missing.
 */
export class UnknownKeys {
  #owners: Map<string, YamlPath[]> | undefined;

  constructor(
    private readonly schema: z.ZodObject,
    private readonly findings: Findings,
  ) {}

  report(owner: YamlPath, keys: readonly string[]): void {
    const mapping = schemaAt(this.schema, owner);
    const known = mapping instanceof z.ZodObject ? Object.keys(mapping.shape) : [];
    const size = Object.keys(dataAt(this.findings.yaml.data, owner) as object).length;
    for (const key of keys) {
      if (this.findings.full || size > MOST_KEYS) {
        this.findings.add('unknown-key', [...owner, key], `the key "${printable(key)}" is unknown`, { part: 'key', about: owner });
        continue;
      }
      if (this.#splitNumber(owner, key) || this.#noSpace(owner, key, known)) continue;
      this.#unknown(owner, key, known);
    }
  }

  #unknown(owner: YamlPath, key: string, known: readonly string[]): void {
    const path = [...owner, key];
    const close = key.length > 40 ? undefined : this.#nearest(owner, key, known);
    const elsewhere = this.#ownersOf(key) ?? [];
    // What is known elsewhere under this very word is likelier meant than a word like it that stands here already.
    const near = close !== undefined && elsewhere.length > 0 && Object.hasOwn(dataAt(this.findings.yaml.data, owner) as object, close) ? undefined : close;
    const owners = near === undefined ? elsewhere : [];
    const add = (message: string, fix: string): void =>
      this.findings.add('unknown-key', path, `the key "${printable(key)}" ${message}`, { fix, part: 'key', about: owner });
    if (near !== undefined) {
      this.#claim([...owner, near]);
      add(`is unknown; did you mean "${near}"?`, `write "${near}"`);
    } else if (owners.length > 0) {
      for (const other of owners) this.#claim([...other, key]);
      add(
        'is unknown here',
        `move it to ${orList(owners.map((other) => (typeof other[1] === 'number' ? `an entry of "${other[0]}"` : other.length === 0 ? 'the top of the file' : `"${other.join('.')}"`)))}`,
      );
    } else {
      add('is unknown', known.length <= 12 ? `write one of ${orList(known)}, or remove it` : 'remove it, or check its spelling');
    }
  }

  /** A key that is not there yet is likelier meant than one that is. */
  #nearest(owner: YamlPath, key: string, known: readonly string[]): string | undefined {
    const mapping = dataAt(this.findings.yaml.data, owner) as object;
    const absent = known.filter((word) => !Object.hasOwn(mapping, word));
    const letters = (word: string): string => [...word.toLowerCase()].sort().join('');
    return otherWordFor(key, absent) ?? nearestWord(key, absent) ?? absent.find((word) => letters(word) === letters(key)) ?? nearestWord(key, known);
  }

  #claim(path: YamlPath): void {
    if (dataAt(this.findings.yaml.data, path) === undefined) this.findings.settle(path);
  }

  /** `{ diameter: 8,5 mm }` reads as `diameter: 8` and a key `5 mm`: one slip, reported at the number. */
  #splitNumber(owner: YamlPath, key: string): boolean {
    const mapping = dataAt(this.findings.yaml.data, owner) as Record<string, unknown>;
    if (mapping[key] !== null || key.length > 40 || !/^\d+(\.\d+)?(\s*[^\d\s].*)?$/.test(key)) return false;
    const before = this.#keyBefore(owner, key);
    if (before === undefined) return false;
    const start = mapping[before];
    if (typeof start !== 'string' || !/^[+-]?\d+$/.test(start)) return false;
    const grouped = /^\d{3}(?!\d)/.test(key);
    const message = grouped ? `"${start},${printable(key)}" groups digits with a comma` : `"${start},${printable(key)}" uses a decimal comma`;
    const fix = grouped ? `write "${start}${printable(key)}", or "${start}.${printable(key)}" for a decimal` : `write "${start}.${printable(key)}"`;
    const path = [...owner, before];
    this.findings.add(grouped ? 'digit-grouping' : 'decimal-comma', path, message, { fix });
    return true;
  }

  /** `{ depth:24 mm }` reads as a key `depth:24 mm` without value. */
  #noSpace(owner: YamlPath, key: string, known: readonly string[]): boolean {
    const colon = key.indexOf(':');
    const meant = key.slice(0, colon);
    if (colon < 1 || !known.includes(meant)) return false;
    this.#claim([...owner, meant]);
    const fix = `write "${meant}: ${printable(key.slice(colon + 1).trim())}"`;
    this.findings.add('unknown-key', [...owner, key], `a space is missing after the colon of "${meant}"`, { fix, part: 'key', about: owner });
    return true;
  }

  /** Mappings elsewhere in the file that know a key. */
  #ownersOf(key: string): readonly YamlPath[] | undefined {
    if (this.#owners === undefined) {
      this.#owners = new Map();
      this.#collect(this.schema, []);
    }
    return this.#owners.get(key);
  }

  #collect(schema: z.ZodType, path: YamlPath): void {
    if (schema instanceof z.ZodArray) this.#collect(unwrapped(schema.element), [...path, 0]);
    if (!(schema instanceof z.ZodObject)) return;
    for (const [key, field] of Object.entries(schema.shape)) {
      // The elements of a certificate are too short to be mistaken for anything else.
      if (path[0] === 'certificate') continue;
      const list = this.#owners?.get(key);
      if (list === undefined) this.#owners?.set(key, [path]);
      else list.push(path);
      this.#collect(unwrapped(field as z.core.$ZodType), [...path, key]);
    }
  }

  /** The key written before this one; an object does not keep the order of keys that look like numbers. */
  #keyBefore(owner: YamlPath, key: string): string | undefined {
    const { yaml } = this.findings;
    const offsetOf = (name: string): number => {
      const { line, column } = yaml.place([...owner, name], 'key').position();
      return line * 1e6 + column;
    };
    const limit = offsetOf(key);
    let before: { readonly name: string; readonly offset: number } | undefined;
    for (const name of Object.keys(dataAt(yaml.data, owner) as object)) {
      const offset = offsetOf(name);
      if (offset < limit && offset > (before?.offset ?? 0)) before = { name, offset };
    }
    return before?.name;
  }
}
