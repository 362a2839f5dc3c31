import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { CASTING, THICK } from './metal.ts';

export function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('heat.per-mass')) return [];
  return [
    textBlock(
      'What the metal brings into the die between gate and opening, and where it goes. Metal of a shot gives off its superheat, its latent heat and the heat of cooling; what it still holds when it leaves the die is not counted.',
    ),
    ...tableBlock(
      'Heat per kilogram, down to the ejection temperature',
      ['', 'Heat'],
      [
        ...row(ledger, 'Liquid, gate temperature to liquidus', 'heat.liquid'),
        ...row(ledger, 'Latent heat', 'alloy.latent-heat'),
        ...row(ledger, 'Beside it, liquidus to solidus', 'heat.mushy'),
        ...row(ledger, 'Solid, solidus to ejection temperature', 'heat.solid'),
        ...row(ledger, 'Together', 'heat.per-mass'),
      ],
    ),
    ...metal(ledger),
    ...valuesBlock(ledger, ['heat.per-shot', 'heat.tip', 'heat.die', 'heat.face-area', 'heat.per-area', 'cycle.elements-time', 'heat.rate', 'heat.die-rate']),
    ...faces(ledger),
    ...goes(ledger),
  ];
}

function row(ledger: Ledger, label: string, id: ValueId): Cell[][] {
  return ledger.values.has(id) ? [[label, { value: id }]] : [];
}

function metal(ledger: Ledger): Block[] {
  if (!ledger.values.has('heat.per-shot')) return [];
  const alike = ledger.given.set === undefined;
  const of = (label: string, mass: ValueId, item: string, heat: ValueId): Cell[][] =>
    ledger.values.has(heat) ? [[label, cell(ledger, mass), cell(ledger, 'heat.leaves', item), cell(ledger, 'heat.each', item), cell(ledger, heat)]] : [];
  return [
    ...tableBlock(
      'Metal of a shot',
      ['', 'Mass', 'Leaves at', 'Heat per mass', 'Heat of a shot'],
      [
        ...of(`Castings (mass of ${alike ? 'one' : 'all'})`, 'part.mass', CASTING, 'heat.casting'),
        ...of(`Overflows (mass of ${alike ? 'one cavity' : 'all'})`, 'overflow.mass', CASTING, 'heat.overflow'),
        ...of('Runner', 'heat.runner-mass', THICK, 'heat.runner'),
        ...of('Biscuit', 'heat.biscuit-mass', THICK, 'heat.biscuit'),
      ],
    ),
    textBlock(
      'A casting whose wall is ready before the slowest section lets the die open leaves colder than it must. The runner, and a biscuit, have only just frozen then: they are taken to leave half way between ejection temperature and solidus.',
      ...(ledger.values.has('heat.tip')
        ? [' Of the biscuit, plunger tip and sleeve take ', { value: 'heat.tip-share' }, '; both have cooling of their own, which is not part of the die.']
        : []),
    ),
  ];
}

function faces(ledger: Ledger): Block[] {
  const alike = ledger.given.set === undefined;
  const table = tableBlock(
    'Die face that takes the heat',
    ['', 'Face'],
    [
      ...row(ledger, alike ? 'One casting' : 'Castings', 'heat.casting-face'),
      ...row(ledger, alike ? 'Overflows of one cavity' : 'Overflows', 'heat.overflow-face'),
      ...row(ledger, 'All castings with overflows', 'heat.cavity-face'),
      ...row(ledger, 'Runner', 'heat.runner-face'),
      ...row(ledger, 'End of the biscuit', 'heat.biscuit-face'),
    ],
  );
  if (table.length === 0 || ledger.values.has('part.surface-area')) return table;
  return [
    ...table,
    textBlock(
      'The part gives no surface area, so twice the volume over the nominal wall stands for it. That is too much for parts with bosses and thick spots, and then the heat on the face comes out too low; it leaves out the rims of small parts.',
    ),
  ];
}

function goes(ledger: Ledger): Block[] {
  if (!ledger.values.has('heat.lines-rate')) return [];
  const of = (label: string, to: 'lines' | 'spray' | 'surroundings', rate: ValueId, estimate: Cell): Cell[] => [
    label,
    cell(ledger, `heat.share-${to}`),
    cell(ledger, `heat.${to}-least`),
    cell(ledger, `heat.${to}-greatest`),
    cell(ledger, rate),
    estimate,
  ];
  return [
    ...tableBlock(
      'Where the heat of the die goes',
      ['', 'Share planned', 'Range, least', 'Range, greatest', 'Heat rate', 'Could take, estimated'],
      [
        of('Cooling lines', 'lines', 'heat.lines-rate', '–'),
        of('Spray', 'spray', 'heat.spray-planned', cell(ledger, 'heat.spray-rate')),
        of('Air, radiation, platens', 'surroundings', 'heat.surroundings-planned', cell(ledger, 'heat.surroundings-rate')),
      ],
    ),
    textBlock(
      ledger.texts.get('heat.duty') === 'heat'
        ? 'Spray and surroundings could take more than the shots bring, so nothing is left for the lines: they must heat the die.'
        : 'The shares are assumptions of the trade without a measurement behind them, and the lines get what the other two leave. The last column estimates what spray and surroundings could take at the planned die temperature, from the spray time and from the outside of the die; it is a check and not what the lines are laid out by.',
    ),
    ...valuesBlock(ledger, ['heat.face-flux', 'heat.outside', 'heat.outside-coefficient', 'heat.spray-coefficient', 'heat.losses']),
  ];
}
