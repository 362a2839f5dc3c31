import type { Side } from '../steps/die/arrange.ts';

/** Quarter turns against the clock. */
export type Turns = 0 | 1 | 2 | 3;

/** The sides in the order in which a quarter turn against the clock leads from one to the next. */
const ROUND: readonly Side[] = ['right', 'top', 'left', 'bottom'];

/** The side of the die that a side of the casting comes to. */
export function turned(side: Side, turns: Turns): Side {
  return ROUND[(ROUND.indexOf(side) + turns) % 4] as Side;
}

/** A direction across the die opening, as parts along the longer and the shorter side of the casting, seen in the die: across and upright. */
export function turnedWay([a, b]: readonly [number, number], turns: Turns): readonly [number, number] {
  let way: readonly [number, number] = [a, b];
  for (let i = 0; i < turns; i += 1) way = [0 - way[1], way[0]];
  return way;
}
