import { Traced } from '../../kernel/traced.ts';
import type { CastingSet } from '../case.ts';
import type { Ledger } from '../ledger.ts';

/**
 * The insert of a casting of each part, where each casting has its own: to the usual edge on sides where no casting follows, and
 * to the middle of the steel where one does. Of castings of a part that stand differently the largest.
 */
export function fileSetInserts(ledger: Ledger, { layout, members }: CastingSet, edge: Traced<'mm'>): void {
  const steel = ledger.value('die.steel-around');
  for (const { id } of members) {
    const castings = layout.castings.filter(({ member }) => member === id);
    const beside = (edges: (typeof castings)[number]['edges'], sides: (typeof edges)[number][]): number =>
      sides.reduce((sum, side) => sum + (edges.includes(side) ? edge.value : steel.value / 2), 0);
    const width = Math.max(...castings.map((one) => one.width + beside(one.edges, ['left', 'right'])));
    const height = Math.max(...castings.map((one) => one.height + beside(one.edges, ['bottom', 'top'])));
    const from = { status: 'practice', note: 'casting, edge and half of the steel between two', parents: [steel, edge] } as const;
    ledger.put(Traced.choice(`set.insert-width[${id}]`, width, 'mm', from));
    ledger.put(Traced.choice(`set.insert-height[${id}]`, height, 'mm', from));
  }
}
