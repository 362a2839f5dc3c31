import { expect, it } from 'vitest';
import { figureAt } from './tables.ts';

/** Figures of intensification, porosity, gas balance and runner layout, typed from where they come from, with the mark they must carry. */
const CELLS: readonly (readonly [id: string, at: Record<string, string | number>, column: string, expected: number, status: string])[] = [
  ['sleeve/intensification', {}, 'gate_reference', 1.2, 'source'],
  ['sleeve/intensification', {}, 'gate_freeze_greatest', 80, 'source'],
  ['sleeve/intensification', {}, 'rise_least', 10, 'source'],
  ['cooling/handbook-constant', { family: 'aluminium' }, 'constant', 0.47, 'memory'],
  ['cooling/handbook-constant', { family: 'magnesium' }, 'constant', 0.31, 'memory'],
  ['intensification/hold', { family: 'zinc', wall: 2.5 }, 'greatest', 2, 'memory'],
  ['intensification/hold', { family: 'aluminium', wall: 6 }, 'least', 3, 'memory'],
  ['intensification/hold', { family: 'copper', wall: 6 }, 'greatest', 10, 'memory'],
  ['porosity/shrinkage', { family: 'aluminium' }, 'greatest', 6.6, 'source'],
  ['porosity/shrinkage', { family: 'aluminium' }, 'least', 4.4, 'source'],
  ['porosity/shrinkage', { family: 'zinc-aluminium' }, 'used', 3.5, 'memory'],
  ['porosity/gas', { class: 'ordinary' }, 'greatest', 30, 'source'],
  ['porosity/gas', { class: 'weldable' }, 'greatest', 5, 'source'],
  ['porosity/trapped', {}, 'least', 25, 'derived'],
  ['vent/balance', {}, 'stroke', 0.9, 'source'],
  ['vent/balance', {}, 'pays_greatest', 2, 'derived'],
  ['vent/balance', {}, 'air', 1013, 'practice'],
  ['vent/residual', { use: 'pressure-tight' }, 'greatest', 1.3, 'practice'],
  ['vent/vacuum-plant', {}, 'tank_ratio_greatest', 20, 'source'],
  ['runner/section', {}, 'area_step_greatest', 30, 'source'],
  ['runner/section', {}, 'branch_loss_least', 5, 'practice'],
  ['runner/layout', {}, 'end_greatest', 0.2, 'practice'],
  ['runner/layout', {}, 'angle_least', 30, 'memory'],
];

it.each(CELLS)('%s %o %s is %d, %s', (id, at, column, expected, status) => {
  const found = figureAt(id, at, column);
  expect([found?.value, found?.status]).toEqual([expected, status]);
});
