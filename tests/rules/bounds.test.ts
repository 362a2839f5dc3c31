import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { BOUNDS } from './cells/bounds.ts';

const root = new URL('../../rules/limits/', import.meta.url);
interface Written {
  readonly when?: string;
  readonly require: string;
  readonly status?: string;
  readonly source?: readonly string[];
}

/** The numbers in the condition of a limit, without those in quotes and in names. */
const numbersIn = ({ when, require }: Written): number[] =>
  [...new Set((`${when ?? ''} ; ${require}`.replace(/"[^"]*"/g, '').match(/(?<![\w.])\d+(\.\d+)?/g) ?? []).map(Number))].sort((a, b) => a - b);

const limits = new Map<string, Written>(
  readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => [name.replace(/\.yaml$/, ''), parse(readFileSync(new URL(name, root), 'utf8')) as Written]),
);
describe('figures in the conditions of limits, typed a second time', () => {
  it.each(BOUNDS)('$limit has $printed of its work and $ours of ours', ({ limit, printed, ours }) => {
    expect(numbersIn(limits.get(limit) as Written)).toEqual([...printed, ...ours].sort((a, b) => a - b));
    if (printed.length > 0) expect(limits.get(limit)?.source?.length).toBeGreaterThan(0);
  });
  it('names every limit that rests on a work and has a figure in its condition', () => {
    const rests = [...limits].filter(([, limit]) => (limit.status ?? 'source') === 'source' && (limit.source ?? []).length > 0);
    const open = rests.filter(([, limit]) => numbersIn(limit).length > 0).map(([id]) => id);
    expect(open.filter((id) => !BOUNDS.some(({ limit }) => limit === id)).map((id) => `${id}: ${numbersIn(limits.get(id) as Written).join(' ')}`)).toEqual([]);
  });
});
