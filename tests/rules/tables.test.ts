import { describe, expect, it } from 'vitest';
import { type At, PUBLISHED } from './cells/published.ts';
import { figureAt } from './tables.ts';

describe.each(Object.entries(PUBLISHED))('%s', (_source, cells) => {
  it.each(cells.map((cell) => [...cell]))('%s %o %s is %s', (id, at, column, expected, status) => {
    const found = figureAt(id as string, at as At, column as string);
    if (expected === null) return expect(found).toBeUndefined();
    // Printed to three significant digits at least, so a cell may round by less than half of the third.
    expect(Math.abs((found?.value ?? Number.NaN) / (expected as number) - 1)).toBeLessThan(0.002);
    expect(found?.status).toBe(status);
  });
});

it('checks at least 80 cells', () => {
  expect(Object.values(PUBLISHED).flat().length).toBeGreaterThanOrEqual(80);
});
