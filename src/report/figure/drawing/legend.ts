import type { Drawing, Shape, ShapeRole } from '../../../engine/plan.ts';
import { PAD, WIDTH } from '../frame.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { shorten, textWidth } from '../text-size.ts';

/** A role in the legend: what its sample looks like, its name, and where it stands in its row, in pixels. */
export interface LegendRole {
  readonly role: ShapeRole;
  readonly sample: Shape['shape'];
  readonly text: string;
  readonly x: number;
}

export const SAMPLE = 34;
/** From the left edge of an entry to its text. */
export const TEXT_OFFSET = SAMPLE + 8;
const ENTRY_GAP = 24;
/** Most width of a name: two stand side by side. */
const LONGEST = (WIDTH - 2 * PAD - ENTRY_GAP) / 2 - TEXT_OFFSET;

/** The roles that have a name and are drawn, in the order of the drawing, in as many rows as they need; the first keeps some width free. */
export function legendFor({ roles }: Drawing, shapes: readonly Shape[], kept: number): LegendRole[][] {
  const rows: LegendRole[][] = [];
  let x = 0;
  for (const [i, { role, title }] of roles.entries()) {
    const drawn = shapes.find((shape) => shape.role === role);
    if (drawn === undefined || roles.findIndex((other) => other.role === role) !== i) continue;
    const room = WIDTH - 2 * PAD - (rows.length < 2 ? kept : 0);
    const text = shorten(title, LONGEST, SIZE);
    const wide = TEXT_OFFSET + textWidth(text, SIZE);
    if (rows.length === 0 || x + wide > room) {
      rows.push([]);
      x = 0;
    }
    rows.at(-1)?.push({ role, sample: drawn.shape, text, x });
    x += wide + ENTRY_GAP;
  }
  return rows;
}
