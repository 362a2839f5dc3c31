import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { Surroundings } from '../../src/cli/settings.ts';
import { STATUSES, sourceKey } from '../../src/kernel/status.ts';
import { isUnit } from '../../src/kernel/units.ts';
import { noIo } from '../cli/run-here.ts';
import { DIES, EXAMPLES } from './examples.ts';

interface JsonValue {
  value: number;
  unit: string;
  kind: string;
  parents?: string[];
  source?: string[];
  status: string;
  range: string;
  formula?: string;
  table?: string;
  note?: string;
  at?: unknown;
}

const KINDS = ['input', 'default', 'pinned', 'table', 'formula', 'choice', 'assumption'];

type JsonPlan = Record<string, unknown> & { values: Record<string, JsonValue> };

/** The plan of each example; of a die its own, and that of each of its parts. */
const PLANS = [...EXAMPLES, ...DIES].flatMap(({ name, folder, file }) => {
  const { parts = [], ...plan } = JSON.parse(readFileSync(join(folder, 'plan.json'), 'utf8')) as JsonPlan & { parts?: { id: string; plan: JsonPlan }[] };
  return [{ name, folder, file, plan: plan as JsonPlan }, ...parts.map((part) => ({ name: `${name}, ${part.id}`, folder, file, plan: part.plan }))];
});

describe.each(PLANS)('$name, plan.json', ({ folder, file, plan }) => {
  const values = Object.entries(plan.values);

  test('every value has kind, status and range, and rests on something', () => {
    expect(values.length).toBeGreaterThan(80);
    for (const [id, value] of values) {
      expect.soft(KINDS, id).toContain(value.kind);
      expect.soft(STATUSES, id).toContain(value.status);
      expect.soft(['inside', 'clamped', 'extrapolated'], id).toContain(value.range);
      expect.soft(isUnit(value.unit), `${id} in ${value.unit}`).toBe(true);
      expect.soft(Number.isFinite(value.value), id).toBe(true);
      const grounds = (value.source?.length ?? 0) + (value.parents?.length ?? 0) + (value.note === undefined ? 0 : 1) + (value.table === undefined ? 0 : 1);
      expect.soft(grounds, id).toBeGreaterThan(0);
      if (value.kind === 'formula') expect.soft([value.formula, (value.parents?.length ?? 0) > 0], id).toEqual([expect.any(String), true]);
      if (value.kind === 'table') expect.soft(value.table, id).toEqual(expect.any(String));
      if (value.kind === 'input' || value.kind === 'pinned') expect.soft(value.at, id).toBeDefined();
      if (value.kind === 'assumption') expect.soft(value.note, id).toEqual(expect.any(String));
    }
  });

  test('every value that a section shows is there', () => {
    const sections = plan['sections'] as Record<string, { blocks: { kind: string; ids?: string[] }[] }>;
    const shown = Object.values(sections).flatMap(({ blocks }) => blocks.flatMap(({ kind, ids }) => (kind === 'values' ? (ids ?? []) : [])));
    expect(shown.length).toBeGreaterThan(50);
    expect(shown.filter((id) => !(id in plan.values))).toEqual([]);
  });

  test('every parent is there, and no value rests on itself', () => {
    const parents = new Map(values.map(([id, value]) => [id, value.parents ?? []]));
    for (const [id, list] of parents) for (const parent of list) expect.soft(parents.has(parent), `${id} rests on ${parent}`).toBe(true);
    const done = new Set<string>();
    const visit = (id: string, above: readonly string[]): void => {
      if (above.includes(id)) throw new Error(`${[...above, id].join(' -> ')}`);
      if (done.has(id)) return;
      for (const parent of parents.get(id) ?? []) visit(parent, [...above, id]);
      done.add(id);
    };
    for (const id of parents.keys()) visit(id, []);
  });

  test('a result is never surer than what it rests on', () => {
    for (const [id, value] of values) {
      for (const parent of value.parents ?? []) {
        const below = plan.values[parent] as JsonValue;
        if (value.kind !== 'pinned')
          expect.soft(STATUSES.indexOf(value.status as never), `${id} over ${parent}`).toBeGreaterThanOrEqual(STATUSES.indexOf(below.status as never));
      }
    }
  });

  test('every source is in the bibliography', async () => {
    const { sources } = (await new Surroundings({}, noIo()).ground(join(folder, file))).rulebook;
    const keys = new Set(values.flatMap(([, value]) => value.source ?? []).map(sourceKey));
    expect([...keys].filter((key) => !['PART', 'DIE', 'PLANT'].includes(key) && !(key in sources))).toEqual([]);
  });

  test('no number stands outside a traced value, a decision about one, or a place in a file', () => {
    const strays: string[] = [];
    const walk = (node: unknown, path: readonly string[]): void => {
      if (typeof node === 'number') {
        const where = path.join('.');
        const allowed =
          /^values\.[\s\S]+\.(value|numbers\.[\s\S]+)$/.test(where) ||
          /\.at\.(line|column|endLine|endColumn)$/.test(where) ||
          /^decisions\.[\s\S]+\.value$/.test(where);
        if (!allowed) strays.push(where);
      } else if (Array.isArray(node)) node.forEach((item, index) => void walk(item, [...path, String(index)]));
      else if (node !== null && typeof node === 'object') for (const [key, item] of Object.entries(node)) walk(item, [...path, key]);
    };
    walk(plan, []);
    expect(strays).toEqual([]);
  });
});
