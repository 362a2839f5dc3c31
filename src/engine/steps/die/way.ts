import { type Arrangement, type SlideSides, sideOf } from './arrange.ts';

/** How the main runner of a cold chamber comes from the biscuit below the castings to where it is shared out. */
export type RunnerWay = 'to one casting' | 'between' | 'below' | 'round' | 'closed' | 'from the sprue';

export interface Way {
  readonly way: RunnerWay;
  /** Spacings of the columns that it is off the middle; and how often it goes across so far. */
  readonly off: number;
  readonly turns: 1 | 2;
}

const still = (way: RunnerWay): Way => ({ way, off: 0, turns: 1 });

/**
 * One row can always be fed from below; the runner goes up into its middle where a gap free of slides is there. To the middle
 * of several rows it has to pass the lower ones, by the nearest gap or side that no slide of theirs closes.
 */
export function wayOf(placed: Arrangement, columns: number, rows: number, slides: SlideSides): Way {
  if (columns * rows === 1) return still('to one casting');
  const open = openNear(placed, columns, rows, slides);
  if (rows === 1) return still(open === columns / 2 ? 'between' : 'below');
  if (open === undefined) return still('closed');
  const off = Math.abs(open - columns / 2);
  if (off === 0) return still('between');
  if (rows % 2 === 1) return { way: 'round', off, turns: 1 };
  return placed.gapRows[rows / 2 - 1] === 0 ? { way: 'round', off, turns: 2 } : still('closed');
}

/** The channel nearest to the middle that the lower castings leave open: 0 is beside the first column, 1 behind it, and so on. */
function openNear({ turned }: Arrangement, columns: number, rows: number, slides: SlideSides): number | undefined {
  const closes = (column: number, row: number, side: 'left' | 'right'): boolean =>
    column >= 0 && column < columns && slides[sideOf(side, turned[row * columns + column] === true)].slides > 0;
  const lower = Array.from({ length: Math.ceil(rows / 2) }, (_, row) => row);
  const isOpen = (channel: number): boolean => lower.every((row) => !closes(channel - 1, row, 'right') && !closes(channel, row, 'left'));
  const off = (channel: number): number => Math.abs(channel - columns / 2);
  return Array.from({ length: columns + 1 }, (_, channel) => channel)
    .filter(isOpen)
    .sort((a, b) => off(a) - off(b) || a - b)[0];
}
