import { ofTheSet } from '../../engine/die-set/words.ts';
import type { Candidate } from '../../engine/options/options.ts';
import { formatNumber, formatQuantity } from '../../kernel/format.ts';
import type { Unit } from '../../kernel/units.ts';
import { counted } from '../words.ts';

/** What is said of a part, and what of a die: its castings are one set, and the count of cavities is no choice. */
export interface Words {
  readonly say: (text: string) => string;
  /** Cells of a table that only parts have. */
  readonly ofParts: <T>(...cells: T[]) => T[];
  readonly nameOf: (candidate: Pick<Candidate, 'cavities' | 'machine' | 'plunger'>) => string;
  /** How a candidate is pinned. */
  readonly pins: string;
}

export function wordsFor(isDie: boolean): Words {
  if (isDie)
    return {
      say: (text) =>
        ofTheSet(text)
          .replace('of cavities, machine and plunger', 'of machine and plunger')
          .replace('this part', 'this die')
          .replace(' for the count of the plan', ''),
      ofParts: () => [],
      nameOf: ({ machine, plunger }) => `${machine} with the ${quantity(plunger, 'mm')} plunger`,
      pins: 'pinned: { machine.model: ID, machine.plunger: D mm }',
    };
  return {
    say: (text) => text,
    ofParts: (...cells) => cells,
    nameOf: ({ cavities, machine, plunger }) => `${counted(cavities, 'cavity', 'cavities')} on ${machine} with the ${quantity(plunger, 'mm')} plunger`,
    pins: 'diewright plan FILE --set pinned.machine.cavities=N --set pinned.machine.model=ID --set "pinned.machine.plunger=D mm"',
  };
}

export const quantity = (value: number | undefined, unit: Unit): string => (value === undefined ? '–' : formatQuantity(value, unit));
export const percent = (value: number): string => formatQuantity(value, '%');

export function share(value: number | undefined): string {
  if (value === undefined) return '–';
  const text = formatNumber(100 * Math.abs(value), 1);
  return `${value < 0 ? '-' : '+'}${text} %`;
}
