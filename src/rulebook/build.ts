import type * as z from 'zod';
import type { LocatedYaml } from '../kernel/located-yaml.ts';
import { didYouMean } from '../kernel/spelling.ts';
import type { Unit } from '../kernel/units.ts';
import type { Faults } from './faults.ts';
import type { alloyFile, cautionFile, choiceFile, limitFile, sourcesFile, tableFile } from './schema.ts';
import type { Alloy, AlloyProperty, Axis, Binding, Caution, Choice, Figure, Limit, Origin, SearchStop, Source, Table, TableRow } from './types.ts';

type Written<S extends z.ZodType> = z.infer<S> | undefined;
type WrittenOrigin = { status?: Origin['status'] | undefined; source?: string[] | undefined };

/** The origin of a figure: its own, else its row's, else the file's. A source that is given makes the status `source`. */
function origin(...from: readonly WrittenOrigin[]): Origin {
  const status = from.find((o) => o.status !== undefined)?.status;
  const source = from.find((o) => o.source !== undefined)?.source ?? [];
  return { status: status ?? (source.length > 0 ? 'source' : 'memory'), source };
}

/** `clamp.locking-force in kN` -> id and unit; without `in` a text fact. */
function bindings(uses: Readonly<Record<string, string>>): Binding[] {
  return Object.entries(uses).map(([name, text]) => {
    const match = /^(\S+)\s+in\s+(\S+)$/.exec(text.trim());
    return match === null ? { name, id: text.trim() } : { name, id: match[1] as string, unit: match[2] as Unit };
  });
}

/** A table, and for each of its rows the row of the file that it stands for. */
export function buildTable(
  id: string,
  file: z.infer<typeof tableFile>,
  document: LocatedYaml,
  faults: Faults,
): { readonly table: Table; readonly rows: readonly number[] } {
  const axes: Axis[] = Object.entries(file.axes).map(([name, axis]) => {
    if ('values' in axis) return { name, kind: 'word', values: axis.values.map(String) };
    if ('steps' in axis) return { name, kind: 'number', unit: axis.unit as Unit, reading: 'up-to', outside: axis.outside ?? 'refuse' };
    return { name, kind: 'number', unit: axis.unit as Unit, reading: 'linear', outside: axis.outside };
  });
  const gives = Object.entries(file.gives).map(([name, column]) => ({ name, unit: column.unit as Unit, meaning: column.meaning }));
  const known = new Set([...axes.map((a) => a.name), ...gives.map((c) => c.name), 'status', 'source', 'note']);
  const rows: TableRow[] = [];
  const from: number[] = [];
  file.rows.forEach((written, index) => {
    for (const key of Object.keys(written)) {
      if (known.has(key)) continue;
      const message = `"${key}" is neither an axis nor a column of this table${didYouMean(key, [...known])}`;
      faults.add('unknown-key', document.place(['rows', index, key], 'key'), message, `use ${[...known].join(', ')}`);
    }
    const own = written as unknown as WrittenOrigin & { note?: string };
    const cells: Record<string, Figure | null> = {};
    for (const column of gives) {
      const cell = written[column.name] as unknown;
      if (cell === undefined || cell === null) cells[column.name] = null;
      else {
        const parts = typeof cell === 'number' ? { value: cell } : (cell as { value: number; note?: string } & WrittenOrigin);
        const note = parts.note ?? own.note;
        cells[column.name] = { value: parts.value, ...origin(parts as WrittenOrigin, own, file as WrittenOrigin), ...(note === undefined ? {} : { note }) };
      }
    }
    for (const at of expand(axes, written)) {
      rows.push({ at, cells });
      from.push(index);
    }
  });
  return { table: { id, title: file.title, about: file.about, axes, gives, rows, notes: file.notes ?? [] }, rows: from };
}

/** A list of words on an axis stands for one row each; where there is no word, the empty one stands for it and is reported. */
function expand(axes: readonly Axis[], written: Readonly<Record<string, unknown>>): Record<string, string | number>[] {
  let list: Record<string, string | number>[] = [{}];
  for (const axis of axes) {
    const value = written[axis.name];
    const values = (Array.isArray(value) ? value : [value]) as (string | number)[];
    list = list.flatMap((at) => values.map((v) => ({ ...at, [axis.name]: axis.kind === 'word' ? wordOf(v) : (v as number) })));
  }
  return list;
}

function wordOf(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}

export function buildChoices(topic: string, file: Written<typeof choiceFile>): Record<string, Choice> {
  const list = Object.entries(file?.decisions ?? {}).map(([name, decision]): [string, Choice] => {
    const id = `${topic}.${name}`;
    return [
      id,
      {
        id,
        title: decision.title,
        ...(decision.verdict === true ? { verdict: true } : {}),
        uses: bindings(decision.uses),
        rows: decision.rows.map((row) => ({ when: String(row.when), choose: row.choose, because: row.because, ...origin(row as WrittenOrigin) })),
        examples: decision.examples,
      },
    ];
  });
  return Object.fromEntries(list);
}

export function buildLimit(id: string, file: Written<typeof limitFile>): Limit | undefined {
  if (file === undefined) return undefined;
  const { uses, when, status: _status, source: _source, reason: _reason, each, at, search, ...rest } = file;
  return {
    id,
    ...rest,
    ...(each === undefined ? {} : { each }),
    ...(at === undefined ? {} : { at }),
    ...(search === undefined ? {} : { search: stop(search) }),
    uses: bindings(uses),
    when: String(when),
    ...origin(file as WrittenOrigin),
  };
}

function stop({ after, order, eases, waived, only }: NonNullable<z.infer<typeof limitFile>['search']>): SearchStop {
  return { after, order, ...(eases === undefined ? {} : { eases }), ...(waived === undefined ? {} : { waived }), ...(only === undefined ? {} : { only }) };
}

export function buildCautions(topic: string, file: Written<typeof cautionFile>): Record<string, Caution> {
  const list = Object.entries(file?.cautions ?? {}).map(([name, caution]): [string, Caution] => {
    const id = `${topic}/${name}`;
    return [
      id,
      {
        id,
        title: caution.title,
        uses: bindings(caution.uses),
        when: String(caution.when),
        text: caution.text,
        defer: caution.defer,
        examples: caution.examples,
        ...origin(caution as WrittenOrigin),
      },
    ];
  });
  return Object.fromEntries(list);
}

export function buildAlloys(file: Written<typeof alloyFile>): Record<string, Alloy> {
  if (file === undefined) return {};
  const list = Object.entries(file.alloys).map(([id, alloy]): [string, Alloy] => {
    const properties = Object.entries(alloy.properties).map(([name, p]) => [name, { ...p, ...origin(p as WrittenOrigin) } as AlloyProperty]);
    return [
      id,
      {
        id,
        family: file.family,
        name: alloy.name,
        designations: alloy.designations as Alloy['designations'],
        chamber: { ...alloy.chamber, ...origin(alloy.chamber as WrittenOrigin) } as Alloy['chamber'],
        composition: { ...alloy.composition, ...origin(alloy.composition as WrittenOrigin) } as Alloy['composition'],
        properties: Object.fromEntries(properties),
        ...(alloy.ratings === undefined ? {} : { ratings: alloy.ratings }),
        notes: alloy.notes ?? [],
      },
    ];
  });
  return Object.fromEntries(list);
}

export function buildSources(file: Written<typeof sourcesFile>): Record<string, Source> {
  return Object.fromEntries(Object.entries(file ?? {}).map(([key, source]) => [key, { key, ...source } as Source]));
}
