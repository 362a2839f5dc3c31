import type { Refusal } from '../kernel/apply.ts';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import { placeOf } from './place-of.ts';

/** What a plan says of a formula or table that refused what it was given. */
export function refusalFinding({ code, message, fix, values }: Refusal): Diagnostic {
  const at = values.map(placeOf).find((place) => place !== undefined);
  return { code, severity: 'error', message, fix, values: values.map((value) => value.id), ...(at === undefined ? {} : { at }) };
}
