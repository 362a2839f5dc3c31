import type { Case } from '../case.ts';

export const cases: readonly Case[] = [
  {
    formula: 'squeeze.largest-gate',
    inputs: { width: 300, thickness: 10, wall: 5 },
    expected: 1500,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: a gate as thick as the wall, 300 x 5',
  },
  {
    formula: 'squeeze.largest-gate',
    inputs: { width: 300, thickness: 10, wall: 14 },
    expected: 3000,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: no thicker than 10 mm, 300 x 10',
  },
  {
    formula: 'squeeze.fill-time',
    inputs: { volume: 500, area: 222, velocity: 45 },
    expected: 50,
    tolerance: { relative: 0.002 },
    from: 'knowledge-base article on gating (KB-GATING): 500 cm3 through 222 mm2 at 45 m/s in 50 ms',
  },
  {
    formula: 'squeeze.fill-time',
    inputs: { volume: 1000, area: 2000, velocity: 0.5 },
    expected: 1000,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 1 l at 1 l/s',
  },
  {
    formula: 'squeeze.superheat',
    inputs: { gate_temperature: 640, liquidus: 595 },
    expected: 45,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: a difference of temperatures',
  },
];
