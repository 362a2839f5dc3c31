import { Refusal } from '../../../kernel/apply.ts';
import type { Traced } from '../../../kernel/traced.ts';
import { readTable } from '../../../rulebook/lookup.ts';
import type { Ledger } from '../../ledger.ts';

export type Surface = 'inside' | 'outside' | 'hole';
const STANDARD = { inside: 'draft.constant-inside', outside: 'draft.constant-outside', hole: 'draft.constant-hole' } as const;
const PRECISION = { inside: 'draft.precision-inside', outside: 'draft.precision-outside', hole: 'draft.precision-hole' } as const;
const STAND_IN = 'zinc';

/** The draft constant of the standard level, filed on first use. Lead and tin take the constant of zinc. */
export function draftConstant(ledger: Ledger, surface: Surface): Traced<'1'> {
  return ledger.maybe(STANDARD[surface]) ?? file(ledger, 'constant', surface, 'standard', STANDARD[surface]);
}

/**
 * The draft constant of the precision level.
 * @throws Refusal where none is known (holes in copper alloys).
 */
export function precisionConstant(ledger: Ledger, surface: Surface): Traced<'1'> {
  return ledger.maybe(PRECISION[surface]) ?? file(ledger, 'constant', surface, 'precision', PRECISION[surface]);
}

export function draftFactor(ledger: Ledger, level: 'standard' | 'precision' = 'standard'): Traced<'1'> {
  const id = level === 'standard' ? 'draft.factor' : 'draft.factor-precision';
  return ledger.maybe(id) ?? file(ledger, 'factor', 'inside', level, id);
}

type Id = (typeof STANDARD)[Surface] | (typeof PRECISION)[Surface] | 'draft.factor' | 'draft.factor-precision';

function file(ledger: Ledger, column: 'constant' | 'factor', surface: Surface, level: 'standard' | 'precision', id: Id): Traced<'1'> {
  const { family } = ledger.alloy;
  const table = ledger.rulebook.tables['draft/constant'];
  if (table === undefined || hasFamily(ledger, family)) return ledger.look('draft/constant', column, { family, surface, level }, id);
  const zinc = readTable(table, column, { family: STAND_IN, surface, level }, id, '1').result;
  return ledger.assume(id, zinc.value, '1', {
    note: `no figure is published for ${family}; that of ${STAND_IN} is taken, the safe side, since the lower an alloy melts the less draft it needs`,
    status: 'practice',
    source: zinc.source,
  });
}

function hasFamily(ledger: Ledger, family: string): boolean {
  return ledger.rulebook.tables['draft/constant']?.axes.some((axis) => axis.kind === 'word' && axis.values.includes(family)) ?? false;
}

/** Least taper of the family; that of zinc for lead and tin. */
export function absoluteTaper(ledger: Ledger): Traced<'deg'> {
  const id = 'draft.absolute-least';
  const { family } = ledger.alloy;
  try {
    return ledger.maybe(id) ?? ledger.look('draft/least-taper', 'angle', { family }, id);
  } catch (error) {
    const table = ledger.rulebook.tables['draft/least-taper'];
    if (!(error instanceof Refusal) || table === undefined) throw error;
    const zinc = readTable(table, 'angle', { family: STAND_IN }, id, 'deg').result;
    return ledger.assume(id, zinc.value, 'deg', {
      note: `no figure is published for ${family}; that of ${STAND_IN} is taken`,
      status: 'practice',
      source: zinc.source,
    });
  }
}
