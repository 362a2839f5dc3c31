/** A number worked out on paper, under the id and in the unit that the plan gives it. */
export interface Hand {
  readonly id: string;
  readonly unit: string;
  readonly value: number;
}

/** A line of the paper. */
export const line = (id: string, value: number, unit: string): Hand => ({ id, unit, value });

/** Words that follow from the paper: a verdict, a kind of machine. */
export type HandWords = Readonly<Record<string, string>>;
