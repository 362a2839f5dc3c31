import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { tableBlock, textBlock, valuesBlock } from '../../step.ts';

export function show(ledger: Ledger): readonly Block[] {
  if (ledger.texts.get('furnace.given') !== 'yes' || !ledger.values.has('furnace.poured')) return [];
  const rows = (['furnace.holding', 'furnace.melting'] as const).flatMap((id): Cell[][] => {
    const decision = ledger.decisions.get(id);
    return decision === undefined ? [] : [[decision.title, { decision: id }, decision.because]];
  });
  return [
    textBlock(
      'What the machine takes from its furnace while it runs without a stop, and the furnaces of the plant file for it. Other machines on the same furnace are not counted. In a steady shop new metal makes up for castings and dross; the rest of the charge is returns.',
    ),
    ...valuesBlock(ledger, ['furnace.poured', 'furnace.melted', 'furnace.returned', 'furnace.new-metal']),
    ...tableBlock('Furnaces planned', ['For', 'Furnace', 'Because'], rows),
    ...(ledger.texts.get('furnace.holding') === 'pot of the machine' ? [textBlock('The pot of the hot chamber machine is its holding furnace.')] : []),
    ...valuesBlock(ledger, [
      'fill.holding-temperature',
      'furnace.coldest',
      'furnace.hottest',
      'furnace.capacity',
      'furnace.usable',
      'furnace.hold',
      'furnace.hold-least',
      'furnace.melt-rate',
      'furnace.melt-use',
    ]),
  ];
}
