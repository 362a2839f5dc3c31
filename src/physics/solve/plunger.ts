import { bracketedRoot } from './root.ts';

/** A sleeve and its metal, for plungers whose biscuit follows their diameter while all other metal of the shot stays. */
export interface SleeveNumbers {
  /** cm3 of liquid metal without the biscuit. */
  readonly metal: number;
  /** mm. */
  readonly length: number;
  /** Liquid volume over solid volume of the same metal. */
  readonly swell: number;
  /** Least biscuit in mm whatever the plunger, and biscuit over plunger diameter. */
  readonly least: number;
  readonly share: number;
}

/** mm of sleeve that the metal takes: what is not biscuit, and the biscuit as a liquid. */
function column(x: SleeveNumbers, diameter: number): number {
  return (4000 * x.metal) / (Math.PI * diameter ** 2) + x.swell * Math.max(x.least, x.share * diameter);
}

/** Fill in % with a plunger. */
export function fillWith(x: SleeveNumbers, diameter: number): number {
  return (100 * column(x, diameter)) / x.length;
}

/** The plunger that fills the sleeve least: a larger one adds more biscuit than it makes room. Endless where no biscuit grows with it. */
function emptiest(x: SleeveNumbers): number {
  if (x.share === 0) return Number.POSITIVE_INFINITY;
  return Math.max(x.least / x.share, Math.cbrt((8000 * x.metal) / (Math.PI * x.swell * x.share)));
}

/** Whether some plunger fills the sleeve as little as that. */
export function canFill(x: SleeveNumbers, fill: number): boolean {
  const end = emptiest(x);
  return x.metal > 0 && (end === Number.POSITIVE_INFINITY ? (100 * x.swell * x.least) / x.length : fillWith(x, end)) < fill;
}

/** The plunger that fills a sleeve so; of two the smaller, since the larger one owes its fill to its biscuit. `canFill` must hold. */
export function plungerOf(x: SleeveNumbers, fill: number): number {
  const alone = Math.sqrt((400000 * x.metal) / (Math.PI * x.length * fill));
  const end = emptiest(x);
  // Where the biscuit does not grow, what it leaves of the fill is that of the other metal.
  const high = end === Number.POSITIVE_INFINITY ? 2 * Math.sqrt((4000 * x.metal) / (Math.PI * ((fill * x.length) / 100 - x.swell * x.least))) : end;
  return bracketedRoot((diameter) => fillWith(x, diameter) - fill, alone / 2, high);
}
