import { bracketedRoot } from './root.ts';

/** Share of a circle's area that a segment of central angle `angle` (rad) covers. */
export function segmentShare(angle: number): number {
  return (angle - Math.sin(angle)) / (2 * Math.PI);
}

/** Central angle (rad, 0 to 2 pi) of the segment that covers `share` (0 to 1) of a circle. @throws RangeError outside. */
export function segmentAngle(share: number): number {
  return bracketedRoot((angle) => segmentShare(angle) - share, 0, 2 * Math.PI);
}

/**
 * The same angle as printed lines that a reader can follow: steps of Newton's method in mathjs syntax, from the share
 * `u` to `last`. Four steps are exact to ten digits for shares of 0.2 to 0.8.
 */
export const SEGMENT_ANGLE_LINES = {
  last: 't_4',
  lines: [
    { symbol: 'u', equation: 'f / 100' },
    { symbol: 't_1', equation: 'pi * (0.5 + u)' },
    ...[2, 3, 4].map((n) => ({
      symbol: `t_${n}`,
      equation: `t_${n - 1} - (t_${n - 1} - sin(t_${n - 1}) - 2 * pi * u) / (1 - cos(t_${n - 1}))`,
    })),
  ],
} as const;
