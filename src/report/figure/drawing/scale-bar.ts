import { formatQuantity } from '../../../kernel/format.ts';
import type { Unit } from '../../../kernel/units.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { textWidth } from '../text-size.ts';

/** A bar of a round length, to measure with. */
export interface ScaleBar {
  /** In pixels. */
  readonly length: number;
  readonly text: string;
}

/** Longest bar, in pixels. The shortest is four tenths of it. */
const LONGEST = 150;
export const TEXT_GAP = 8;
/** Between the legend and the bar. */
const LEGEND_GAP = 28;

/** The longest bar of 1, 2 or 5 times a power of ten, at so many pixels for a unit. */
export function scaleBarFor(scale: number, unit: Unit): ScaleBar {
  const greatest = LONGEST / scale;
  const power = 10 ** Math.floor(Math.log10(greatest));
  const size = [5, 2, 1].find((factor) => factor * power <= greatest) ?? 1;
  return { length: size * power * scale, text: formatQuantity(size * power, unit) };
}

/** Width that the bar keeps free beside the legend, whatever its length comes out as. */
export function widthKept(unit: Unit): number {
  return LONGEST + TEXT_GAP + textWidth(formatQuantity(5e-6, unit), SIZE) + LEGEND_GAP;
}
