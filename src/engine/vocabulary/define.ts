import type { Unit } from '../../kernel/units.ts';

/** A plan value: its unit, the words a plan prints beside it, and whether there is one per item of a list. */
export interface NumberWord<U extends Unit = Unit> {
  readonly unit: U;
  readonly title: string;
  readonly each?: true;
  /** Decimals to print where three significant digits would lose what the value is for, such as a cavity size. */
  readonly decimals?: number;
}

/** A fact in words, such as the alloy family or the kind of machine; rules bind it without a unit. */
export interface TextWord {
  readonly text: true;
  readonly title: string;
  readonly each?: true;
}

export type Word = NumberWord | TextWord;

export const number = <const U extends Unit>(unit: U, title: string): NumberWord<U> => ({ unit, title });
export const numberEach = <const U extends Unit>(unit: U, title: string): NumberWord<U> => ({ unit, title, each: true });
export const text = (title: string): TextWord => ({ text: true, title });
export const textEach = (title: string): TextWord => ({ text: true, title, each: true });
/** A tolerance: printed to the micrometre, as the tables compare them. */
export const toleranceEach = <const U extends Unit>(unit: U, title: string): NumberWord<U> => ({ unit, title, each: true, decimals: 3 });
/** A dimension that the die maker cuts to: printed with hundredths. */
export const sizeEach = <const U extends Unit>(unit: U, title: string): NumberWord<U> => ({ unit, title, each: true, decimals: 2 });
/** An estimate that three significant digits would make look better than it is. */
export const rough = <const U extends Unit>(unit: U, title: string, decimals: number): NumberWord<U> => ({ unit, title, decimals });
export const roughEach = <const U extends Unit>(unit: U, title: string, decimals: number): NumberWord<U> => ({ unit, title, each: true, decimals });
