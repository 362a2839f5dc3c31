import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import type { QuantityFault } from '../kernel/quantity.ts';

/** What a plan says of a pinned value that could not be read. */
export function pinFault(id: string, at: Place, { code, message, fix }: QuantityFault): Diagnostic {
  return { code: `spec/${code}`, severity: 'error', message: `pinned ${id}: ${message}`, at, ...(fix === undefined ? {} : { fix }) };
}
