/* What a change of 5 % of a figure of the tables and of the alloys meets. Needs no plan, so it takes no time. */
import { ALLOY_FIGURES } from '../reference/alloys-copy/index.ts';
import { heldCells, noticed } from '../rules/cells/held.ts';

const CHANGES = [0.95, 1.05];

/**
 * `caught`: the figure is published, and a test fails because it is typed a second time from the work. `missed`: it is published,
 * and no test notices. `unverifiable`: no work read prints it (derived, practice, memory), so nothing outside can say what is right.
 */
export type Meets = 'caught' | 'missed' | 'unverifiable';

/** A figure that can be changed by 5 %, which a zero cannot. */
export interface Changed {
  readonly of: 'tables' | 'alloys';
  /** The id of the table, or the alloy. */
  readonly group: string;
  readonly name: string;
  readonly status: string;
  readonly meets: Meets;
  /** Typed a second time; for a figure that no work prints that guards against slips only. */
  readonly typedTwice: boolean;
}

const verdict = (status: string, seen: boolean): Pick<Changed, 'status' | 'meets' | 'typedTwice'> => ({
  status,
  meets: status !== 'source' ? 'unverifiable' : seen ? 'caught' : 'missed',
  typedTwice: seen,
});

/** Every figure but the zeros, each changed by 5 % up and down. */
export function changedFigures(): readonly Changed[] {
  const seen = (value: number, notices: (value: number) => boolean): boolean => CHANGES.every((factor) => notices(value * factor));
  const cells = heldCells()
    .filter(({ value }) => value !== 0)
    .map((cell): Changed => {
      const name = `${cell.table} row ${cell.row + 1} ${cell.column} = ${cell.value}`;
      return {
        of: 'tables',
        group: cell.table,
        name,
        ...verdict(
          cell.status,
          seen(cell.value, (value) => noticed(cell, value)),
        ),
      };
    });
  const alloys = ALLOY_FIGURES.filter(({ value }) => value !== 0).map(
    (one): Changed => ({ of: 'alloys', group: one.alloy, name: `${one.name} = ${one.value}`, ...verdict(one.status, seen(one.value, one.noticed)) }),
  );
  return [...cells, ...alloys];
}
