import { expect, it } from 'vitest';
import { POROSITY_CELLS } from './cells/porosity.ts';
import { figureAt } from './tables.ts';

it.each(POROSITY_CELLS)('%s %o %s is %d, %s', (id, at, column, expected, status) => {
  const found = figureAt(id, at, column);
  expect([found?.value, found?.status]).toEqual([expected, status]);
});
