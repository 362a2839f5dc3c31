import type { Severity } from '../kernel/diagnostic.ts';

type Paint = (text: string) => string;

/** How a text for the terminal is coloured; colour never carries anything that the words do not say. */
export interface Palette {
  readonly severity: Readonly<Record<Severity, Paint>>;
  readonly strong: Paint;
  readonly faint: Paint;
}

const same: Paint = (text) => text;

export const PLAIN: Palette = { severity: { error: same, warning: same, note: same }, strong: same, faint: same };
