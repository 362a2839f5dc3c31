import type { YamlPath } from '../kernel/located-yaml.ts';
import { didYouMean } from '../kernel/spelling.ts';
import { sourceKey } from '../kernel/status.ts';
import { dimensionOf } from '../kernel/units.ts';
import type { ReadRules } from './read.ts';
import type { CheckContext } from './spot.ts';
import type { Alloy, Origin, Source, Table } from './types.ts';

/** Sources that need no entry in the bibliography: what the user wrote, and our own decisions. */
const OWN_SOURCES = new Set(['PART', 'PLANT']);

/** Every reference of every file leads to the bibliography. */
export function checkSources(read: ReadRules, sources: Readonly<Record<string, Source>>): void {
  for (const document of read.documents.values()) {
    for (const { path, ref } of references(document.data)) {
      const key = sourceKey(ref);
      if (OWN_SOURCES.has(key) || Object.hasOwn(sources, key)) continue;
      const near = didYouMean(key, Object.keys(sources));
      read.faults.add(
        'unknown-source',
        document.place(path),
        `source "${key}" is not in the bibliography${near}`,
        'add it to sources.yaml beside the rules, or correct the key',
      );
    }
  }
}

/** Every entry of a list called `source`, with its path. */
function references(data: unknown, path: YamlPath = []): { readonly path: YamlPath; readonly ref: string }[] {
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([name, inner]) => {
    const key = Array.isArray(data) ? Number(name) : name;
    if (key === 'source' && Array.isArray(inner)) {
      return inner.flatMap((ref, i) => (typeof ref === 'string' ? [{ path: [...path, key, i], ref }] : []));
    }
    return references(inner, [...path, key]);
  });
}

export function checkTable(read: ReadRules, table: Table): void {
  const { rows = [] } = read.written('table', table.id);
  const report = (code: Parameters<typeof read.faults.add>[0], path: YamlPath, message: string, fix: string): void =>
    read.faults.add(code, read.place('table', table.id, path), message, fix);
  const seen = new Set<string>();
  // A list of words in one row stands for several; what is wrong with each word is said once.
  const said = new Set<string>();
  table.rows.forEach((row, i) => {
    const at: YamlPath = ['rows', rows[i] ?? 0];
    const key = JSON.stringify(table.axes.map((axis) => row.at[axis.name]));
    if (seen.has(key)) report('row-twice', at, `two rows stand at ${key}`, 'keep one');
    seen.add(key);
    for (const axis of table.axes) {
      const value = row.at[axis.name];
      const once = JSON.stringify([at, axis.name, value]);
      if (said.has(once)) continue;
      if (axis.kind === 'word' && value === '') {
        said.add(once);
        report('missing-field', at, `the row has no ${axis.name}`, `write "${axis.name}: ${axis.values[0]}", or another of its words`);
      } else if (axis.kind === 'word' && !axis.values.includes(value as string)) {
        said.add(once);
        const near = didYouMean(String(value), axis.values);
        report('unknown-word', [...at, axis.name], `"${String(value)}" is not a value of axis ${axis.name}${near}`, `use ${axis.values.join(', ')}`);
      }
      if (axis.kind === 'number' && typeof value !== 'number') {
        said.add(once);
        report('axis-number', [...at, axis.name], `axis ${axis.name} needs a number in each row`, 'give the number');
      }
    }
    for (const [name, figure] of Object.entries(row.cells)) {
      const once = JSON.stringify([at, name]);
      if (figure === null || said.has(once) || isOriginSound(figure)) continue;
      said.add(once);
      report('no-source', [...at, name], 'a figure of status "source" names no source', 'name the source, or mark it derived, practice or memory');
    }
  });
  if (table.axes.filter((axis) => axis.kind === 'number' && axis.reading === 'linear').length > 1)
    report('two-linear-axes', ['axes'], 'only one axis can be interpolated', 'make the other one up-to');
}

export function checkAlloy(read: ReadRules, alloy: Alloy, { vocabulary, ids }: CheckContext): void {
  const report = (code: Parameters<typeof read.faults.add>[0], path: YamlPath, message: string, fix: string, part?: 'key'): void =>
    read.faults.add(code, read.place('alloy', alloy.id, path, part), message, fix);
  const origins: (readonly [YamlPath, Origin])[] = [
    [['chamber'], alloy.chamber],
    [['composition'], alloy.composition],
    ...Object.entries(alloy.properties).map(([name, property]) => [['properties', name], property] as const),
  ];
  for (const [path, origin] of origins)
    if (!isOriginSound(origin))
      report('no-source', path, 'a figure of status "source" names no source', 'name the source, or mark it derived, practice or memory');
  const known = ids.filter((id) => id.startsWith('alloy.')).map((id) => id.slice('alloy.'.length).replaceAll('-', '_'));
  for (const [name, property] of Object.entries(alloy.properties)) {
    const path = ['properties', name];
    const word = vocabulary(`alloy.${name.replaceAll('_', '-')}`);
    const { value, least, greatest } = property;
    if (word === undefined || 'text' in word)
      report('unknown-value', path, `no alloy property is called "${name}"${didYouMean(name, known)}`, 'see "diewright list values alloy."', 'key');
    else if (dimensionOf(word.unit) !== dimensionOf(property.unit))
      report('wrong-unit', [...path, 'unit'], `"${name}" is in ${word.unit}, not ${property.unit}`, `write it in ${word.unit}`);
    else if (value === undefined && least === undefined && greatest === undefined)
      report('missing-field', path, `"${name}" has no figure`, 'give a value, or least and greatest');
    else if (least !== undefined && greatest !== undefined && least > greatest)
      report('wrong-shape', path, `the least of "${name}" is above its greatest`, 'exchange the two');
  }
}

function isOriginSound({ source, status }: Origin): boolean {
  return source.length > 0 || status !== 'source';
}
