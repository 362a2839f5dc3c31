import type { PartChange, Shown, Side } from '../../engine/replan/change.ts';
import type { Counted, Total } from '../../engine/replan/set.ts';
import { formatNumber, formatQuantity } from '../../kernel/format.ts';
import type { Unit } from '../../kernel/units.ts';
import { counted } from '../words.ts';

/** A word as it is, a number with its unit; a dash for what a plan does not say. */
export function shownText(shown: Shown | undefined): string {
  if (shown === undefined) return '–';
  return 'word' in shown ? shown.word || 'none' : formatQuantity(shown.value, shown.unit as Unit, shown.decimals);
}

/** `cold-chamber → hot-chamber`, or the one word where both are the same. */
export function fromTo(before: string | undefined, after: string | undefined): string {
  return before === after ? (after ?? '–') : `${before ?? '–'} → ${after ?? '–'}`;
}

/** A figure of both plans. */
export function numbersFromTo(before: number | undefined, after: number | undefined): string {
  const text = (value: number | undefined): string | undefined => (value === undefined ? undefined : formatNumber(value));
  return fromTo(text(before), text(after));
}

/** `-12 %`, `+3.4 %`. */
export function percentText(percent: number | undefined): string {
  return percent === undefined ? '–' : `${percent > 0 ? '+' : ''}${formatNumber(percent, Math.abs(percent) < 10 ? 1 : 0)} %`;
}

/** Castings a year of the parts counted, and how many of them say none. */
export function volumeText({ parts, castings, withoutVolume }: Counted): string {
  if (parts === 0) return '–';
  if (withoutVolume === parts) return 'no volume given';
  return `${formatNumber(castings)}${withoutVolume === 0 ? '' : `, ${counted(withoutVolume, 'part')} without a volume`}`;
}

/** `180 parts, 20 left out`. */
export function overText({ parts, leftOut }: Pick<Total, 'parts' | 'leftOut'>): string {
  return `${counted(parts, 'part')}${leftOut === 0 ? '' : `, ${leftOut} left out`}`;
}

/** `2 parts, 8 castings a shot`, of a die with several parts. */
export function castingsText({ parts = [], castings }: Pick<PartChange, 'parts' | 'castings'>): string {
  return `${counted(parts.length, 'part')}${castings === undefined ? '' : `, ${counted(castings, 'casting')} a shot`}`;
}

/** A plan that breaks rules shows the machine that comes nearest; it is no machine for the part. */
export function machineOf({ castable, machine }: Side): string | undefined {
  return castable ? machine : 'none';
}

/** A figure of a plan that holds; what a plan that breaks rules comes to is no figure to reckon with. */
export function figureOf({ castable, figures }: Side, id: string): number | undefined {
  return castable ? figures[id] : undefined;
}
