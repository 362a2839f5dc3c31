import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planPart } from '../../src/index.ts';
import type { Rulebook, Table } from '../../src/rulebook/types.ts';
import { rulebook } from '../unit/engine/parts.ts';

// House rules may hold fewer rows than the built-in tables, and choose other words. Whatever they hold, a plan is made of
// what can be worked out, and says what cannot; it never ends in a fault of the program.

const PARTS = ['brake-valve-body', 'door-latch-lever', 'instrument-cover'].map((name) => ({
  name: `${name}.part.yaml`,
  text: readFileSync(join(import.meta.dirname, '../../examples', name, `${name}.part.yaml`), 'utf8'),
}));
const TABLES = Object.keys(rulebook().tables);
const CHOICES = Object.keys(rulebook().choices);

function plans(book: Rulebook, part: (typeof PARTS)[number]): void {
  const { plan, diagnostics } = planPart({ part, rulebook: book, version: '0' });
  expect(plan === undefined ? diagnostics.length : plan.values.size).toBeGreaterThan(0);
}

const withTable = (id: string, change: (table: Table) => Table): Rulebook => ({
  ...rulebook(),
  tables: { ...rulebook().tables, [id]: { ...change(rulebook().tables[id] as Table), house: `house/tables/${id}.yaml` } },
});

describe('a plan by house rules', () => {
  test('with some rows of a table only, or with cells that have no figure', () => {
    fc.assert(
      fc.property(fc.constantFrom(...TABLES), fc.constantFrom(...PARTS), fc.infiniteStream(fc.nat({ max: 9 })), (id, part, picks) => {
        const keep = (): boolean => (picks.next().value as number) > 4;
        const fewer = withTable(id, (table) => {
          const rows = table.rows.filter((_, i) => keep() || i === 0);
          const cells = (row: Table['rows'][number]) => Object.fromEntries(Object.entries(row.cells).map(([name, figure]) => [name, keep() ? figure : null]));
          return { ...table, rows: rows.map((row) => ({ ...row, cells: cells(row) })) };
        });
        plans(fewer, part);
      }),
      { seed: 4711, numRuns: 120 },
    );
  });

  test('with any word of a decision', () => {
    fc.assert(
      fc.property(fc.constantFrom(...CHOICES), fc.constantFrom(...PARTS), fc.nat({ max: 20 }), (id, part, pick) => {
        const choice = rulebook().choices[id];
        if (choice === undefined) return;
        const row = choice.rows[pick % choice.rows.length] as (typeof choice.rows)[number];
        const always = { ...choice, uses: [], rows: [{ ...row, when: 'true' }], house: 'house/choices/x.yaml' };
        plans({ ...rulebook(), choices: { ...rulebook().choices, [id]: always } }, part);
      }),
      { seed: 4712, numRuns: 90 },
    );
  });

  test('with any limits switched off', () => {
    fc.assert(
      fc.property(fc.subarray(Object.keys(rulebook().limits)), fc.constantFrom(...PARTS), (off, part) => {
        const limits = Object.fromEntries(Object.entries(rulebook().limits).filter(([id]) => !off.includes(id)));
        plans({ ...rulebook(), limits }, part);
      }),
      { seed: 4713, numRuns: 25 },
    );
  });
});
