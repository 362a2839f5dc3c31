/** The sides of the die, as one looks at the face with the feeder below. */
export const SIDES = ['left', 'right', 'bottom', 'top'] as const;
export type Side = (typeof SIDES)[number];

/** What the slides of a casting take on each of its sides, as it stands unturned: room in mm, and how many they are. */
export type SlideSides = Readonly<Record<Side, { readonly room: number; readonly slides: number }>>;

const OPPOSITE: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', bottom: 'top', top: 'bottom' };

/** How castings with slides stand in rows and columns. */
export interface Arrangement {
  /** Whether each casting is turned half round, row by row from the lower left. */
  readonly turned: readonly boolean[];
  /** Slides that stand between two castings, all together. */
  readonly between: number;
  /** Slides that leave to the lower edge of the die. */
  readonly below: number;
  /** Room in mm that slides take in each gap between columns, from the left, and between rows, from below; and in all of them. */
  readonly gapColumns: readonly number[];
  readonly gapRows: readonly number[];
  readonly gaps: { readonly columns: number; readonly rows: number };
  /** Room in mm that slides take at each edge of the die. */
  readonly edges: Readonly<Record<Side, number>>;
}

/** The side of the die that a slide of a casting leaves to. */
export function sideOf(side: Side, turned: boolean): Side {
  return turned ? OPPOSITE[side] : side;
}

/** The sides of a casting on which no other one follows. */
export function outerSides(index: number, columns: number, rows: number): Side[] {
  const [column, row] = [index % columns, Math.floor(index / columns)];
  const outer = { left: column === 0, right: column === columns - 1, bottom: row === 0, top: row === rows - 1 };
  return SIDES.filter((side) => outer[side]);
}

/**
 * Turns each casting so that as few slides as can be stand between castings and, after that, as few as can be leave below, and as
 * few as can be stand in the middle gap between columns, where the runner comes up.
 * A half turn is all that a grid of equal boxes allows. A gap between two columns or rows is as wide as its widest place.
 */
export function arrange(columns: number, rows: number, slides: SlideSides): Arrangement {
  const count = columns * rows;
  const cost = (index: number, turned: boolean): number => {
    const outer = outerSides(index, columns, rows);
    const inner: Side = index % columns < columns / 2 ? 'right' : 'left';
    const weight = (to: Side): number => (outer.includes(to) ? (to === 'bottom' ? 1e-3 : 0) : to === inner ? 1 + 1e-5 : 1);
    return SIDES.reduce((sum, side) => sum + slides[side].slides * weight(sideOf(side, turned)), 0);
  };
  const turned = Array.from({ length: count }, (_, i) => cost(i, true) < cost(i, false) - 1e-9);
  /** What the slides of a casting take on one side of where it stands. */
  const at = (column: number, row: number, side: Side) => slides[sideOf(side, turned[row * columns + column] === true)];
  const all = (length: number): number[] => Array.from({ length }, (_, i) => i);
  const widest = (rooms: readonly number[]): number => Math.max(0, ...rooms);
  const between = all(count).reduce((sum, i) => {
    const outer = outerSides(i, columns, rows);
    return SIDES.reduce((inner, side) => inner + (outer.includes(side) ? 0 : at(i % columns, Math.floor(i / columns), side).slides), sum);
  }, 0);
  const gapColumns = all(columns - 1).map((c) => widest(all(rows).map((r) => at(c, r, 'right').room + at(c + 1, r, 'left').room)));
  const gapRows = all(rows - 1).map((r) => widest(all(columns).map((c) => at(c, r, 'top').room + at(c, r + 1, 'bottom').room)));
  const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
  return {
    turned,
    between,
    below: sum(all(columns).map((c) => at(c, 0, 'bottom').slides)),
    gapColumns,
    gapRows,
    gaps: { columns: sum(gapColumns), rows: sum(gapRows) },
    edges: {
      left: widest(all(rows).map((r) => at(0, r, 'left').room)),
      right: widest(all(rows).map((r) => at(columns - 1, r, 'right').room)),
      bottom: widest(all(columns).map((c) => at(c, 0, 'bottom').room)),
      top: widest(all(columns).map((c) => at(c, rows - 1, 'top').room)),
    },
  };
}
