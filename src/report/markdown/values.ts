import type { Table } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { printTraced, type Traced } from '../../kernel/traced.ts';
import { howOf, sourceAndStatus } from '../how.ts';
import { code, type Inline, onLines, table } from './nodes.ts';

/** Quantity, value, how it was reached, source and status: one row for each id. */
export function valuesTable(plan: Plan, ids: readonly string[]): Table {
  const rows = ids.flatMap((id) => {
    const value = plan.values.get(id);
    return value === undefined
      ? [[[titleOf(plan, id)], ['–'], [], []]]
      : [[[titleOf(plan, id)], [printTraced(value)], howCell(value), [sourceAndStatus(value)]]];
  });
  return table(['Quantity', 'Value', 'How', 'Source and status'], rows);
}

export function titleOf(plan: Plan, id: string): string {
  return plan.titles.get(id) ?? id;
}

function howCell(value: Traced): Inline[] {
  const { equations, table: tableId, remarks } = howOf(value);
  return onLines([...equations.map(code), ...(tableId === undefined ? [] : [code(tableId)]), ...(remarks.length === 0 ? [] : [remarks.join('; ')])]);
}
