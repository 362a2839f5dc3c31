import { expect, it } from 'vitest';
import { figureAt } from './tables.ts';

it('hotter steel is softer and less stiff, and a steel of higher grade is no softer', () => {
  const at = (steel: string, temperature: number): number => figureAt('die/hot-yield', { steel, temperature }, 'yield')?.value ?? Number.NaN;
  for (const steel of ['P20', 'H11', 'H13 premium', '1.2367']) expect(at(steel, 600)).toBeLessThan(at(steel, 500));
  expect([at('H11', 500) < at('H13 premium', 500), at('H13 premium', 500) < at('1.2367', 500), at('P20', 500) < at('H11', 500)]).toEqual([true, true, true]);
});
