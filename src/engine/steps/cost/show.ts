import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { costFigure } from './figure.ts';
import { LINES, TOTAL } from './total.ts';

/** Each line of the cost as a plan calls it, with what it holds. */
const NAMES: Readonly<Record<string, readonly [string, string]>> = {
  metal: ['Metal in the part', 'mass of the part at the price of ingot'],
  'metal lost': ['Metal lost in melting', 'casting, returns and rejects, each time they are melted'],
  returns: ['Returns that are sold', 'what they fetch less than ingot'],
  energy: ['Energy for melting and holding', 'all metal that goes through the furnace'],
  machine: ['Die casting machine', 'machine hours with stops and rejects'],
  trimming: ['Trimming', 'shots and castings, rejects included'],
  machining: ['Machining', 'loading, and one time for every feature'],
  impregnation: ['Impregnation', 'what leaks, or every casting where that is planned'],
  'leaking castings': ['Castings lost for leaks', 'lost with all that was spent on them'],
  die: ['Die', 'first die and further sets of inserts, over the parts that pay for them'],
  'trim die': ['Trim die', 'over the same parts'],
};

/** Prices as the table shows them: what, the value, for what. */
const PRICES: readonly (readonly [string, ValueId, string])[] = [
  ['Ingot', 'cost.metal-price', 'kilogram'],
  ['Dross sold', 'cost.dross-price', 'kilogram lost'],
  ['Returns sold', 'cost.returns-sold', 'of the price of ingot'],
  ['Energy', 'cost.energy-price', 'kWh'],
  ['Die casting machine', 'machine.hourly-rate', 'hour'],
  ['Trimming', 'cost.trim-rate', 'hour'],
  ['Machining', 'cost.machining-rate', 'hour'],
  ['Impregnation', 'cost.impregnation-price', 'casting'],
  ['Design and toolmaking', 'cost.toolmaker-rate', 'hour'],
  ['Cavity steel', 'cost.cavity-steel-price', 'kilogram'],
  ['Hardening', 'cost.hardening-price', 'kilogram'],
  ['Holder steel', 'cost.holder-steel-price', 'kilogram'],
];

export function show(ledger: Ledger): readonly Block[] {
  if (!ledger.texts.has('cost.currency')) return [];
  return [...showBalance(ledger), ...showPrices(ledger), ...showCost(ledger), ...showDie(ledger), ...showCavities(ledger)];
}

function showBalance(ledger: Ledger): Block[] {
  if (!ledger.values.has('metal.new-per-part')) return [];
  const sold = ledger.texts.get('metal.returns') === 'sold';
  return [
    textBlock(
      sold
        ? 'The plant sells its runners, overflows, biscuits and rejects, so that every shot is cast from new metal; what they fetch less than ingot is a cost.'
        : 'Runners, overflows, biscuits and rejects are melted again. They cost no metal but what is lost each time, and the energy; so a heavy runner is paid for in dross and furnace time.',
    ),
    ...(!sold && ledger.alloy.family === 'magnesium'
      ? [
          textBlock(
            'Of magnesium, many plants melt again no more than clean, dry runners and rejects, and sell the rest to a refiner, as oxide and oil of the returns spoil the melt: give what they bring as returns_sold under the prices of the plant file, and the cost reckons with it.',
          ),
        ]
      : []),
    ...valuesBlock(ledger, [
      'shot.mass',
      'metal.shot-per-part',
      'metal.yield',
      'cavities.reject-share',
      'metal.melt-loss-least',
      'metal.melt-loss',
      'metal.melt-loss-greatest',
      'metal.new-per-part',
      'metal.loss-share',
      'metal.melted-per-part',
      'metal.returns-per-part',
      'metal.melting-heat',
      'metal.efficiency',
      'metal.melting-energy',
      'metal.energy-per-kg',
    ]),
  ];
}

function showPrices(ledger: Ledger): Block[] {
  const rows = PRICES.filter(([, id]) => ledger.values.has(id)).map(([name, id, per]): Cell[] => [name, cell(ledger, id), per]);
  return [
    ...(ledger.plant.invented
      ? [
          textBlock(
            'The prices and rates are invented, as the plant is; only their proportions follow the trade. They show where the money goes and are no market prices: put those of your plant into its file before you quote any figure of this section.',
          ),
        ]
      : []),
    ...tableBlock(
      'Prices of the plant',
      ['', 'Amount', 'For each'],
      [
        ['Currency', textCell(ledger, 'cost.currency'), '–'],
        ['Day of the prices', textCell(ledger, 'cost.date'), '–'],
        ...(ledger.plant.invented ? [['Standing', 'invented', '–'] as Cell[]] : []),
        ...rows,
      ],
    ),
  ];
}

function showCost(ledger: Ledger): Block[] {
  const known = LINES.filter(([, id]) => ledger.values.has(id));
  if (known.length === 0) return [];
  const rows = known.map(([item, id]): Cell[] => [NAMES[item]?.[0] ?? item, NAMES[item]?.[1] ?? '–', cell(ledger, id), cell(ledger, 'cost.share', item)]);
  return [
    ...tableBlock(
      'Cost of a good part, in the money of the plant',
      ['', 'What it holds', 'Amount', 'Share'],
      [
        ...rows,
        ['Without the dies', 'what a part costs where the buyer pays for the dies', cell(ledger, 'cost.without-die'), '–'],
        ['Cost of a good part', 'all lines', cell(ledger, 'cost.per-part'), cell(ledger, 'cost.share', TOTAL)],
      ],
    ),
    ...(ledger.values.has('cost.efficiency')
      ? [
          textBlock(
            'Machine time is paid for the pieces that are reached while the machine runs, ',
            { value: 'cost.efficiency' },
            ' of those that its cycle would make. That is another share than the one of the hours booked, in the section on shots and hours, which leaves room for changing dies and long stops as well; those are not in this cost.',
          ),
        ]
      : []),
    ...valuesBlock(ledger, [
      'cycle.time',
      'cost.efficiency',
      'cost.machine-time',
      'cost.machine',
      'cost.trim-cycle',
      'cost.trim-each',
      'cost.trimming',
      'cost.machining-features',
      'cost.machining-handling',
      'cost.machining-feature',
      'cost.machining',
      'cost.without-die',
      'cost.rejects',
      'cost.per-part',
      'cost.per-year',
      'cost.life',
    ]),
    ...showLeftOut(ledger),
  ];
}

/** What an estimator adds: nothing that is missing may look as if it were in the sum. */
function showLeftOut(ledger: Ledger): Block[] {
  const absent = (line: string, id: ValueId, why: string, when = true): Cell[][] => (when && !ledger.values.has(id) ? [[line, why]] : []);
  const none = 'the plant file gives no price';
  const { machining, inserts } = ledger.part;
  const treated = (ledger.texts.get('finish.heat-treatment') ?? 'none') !== 'none';
  const features = ledger.values.get('cost.machining-features')?.value ?? machining.length;
  return tableBlock(
    'Not in this cost',
    ['What', 'Why'],
    [
      ...absent('Energy for melting and holding', 'cost.melting', ledger.values.has('cost.energy-price') ? 'a figure of the alloy is not known' : none),
      ...absent('Trimming', 'cost.trimming', none),
      ...absent('Machining', 'cost.machining', none, features > 0),
      ...absent('Impregnation', 'cost.impregnation', none, ledger.values.has('finish.impregnated')),
      ...(inserts.length > 0 ? [['Inserts that are cast in', 'bought parts; their price is not known here'] as Cell[]] : []),
      ...(treated ? [['Heat treatment of the castings', 'no price of it is asked for'] as Cell[]] : []),
      ['Plating, painting, blasting, deburring by hand', 'no price of it is asked for'],
      ['Inspection, leak test and gauges', 'as far as they are not in the hourly rates'],
      [
        'Changing and starting up the die for every run',
        'runs a year and hours of a change are not asked for; with many short runs they weigh as much as the step from one count of cavities to the next',
      ],
      ['Die lubricant, plunger tips, sleeves', 'as far as they are not in the hourly rate of the machine'],
      ['Repairs of the die, cores that wear before the cavities', 'no figure that can be cited was found'],
      ['Fixtures and tools for machining', 'no price of it is asked for'],
      ['Packing and transport', 'agreed with the buyer'],
      ['Sales, administration, interest, profit', 'overheads are set by the plant'],
    ],
  );
}

function showDie(ledger: Ledger): Block[] {
  if (!ledger.values.has('cost.die')) return [];
  const estimated = ledger.values.get('cost.die')?.kind !== 'pinned';
  return [
    textBlock(
      estimated
        ? 'The die is an estimate for a first figure: hours by area, surface, core pulls, finish and tolerance, and steel by mass. Half of its figures are remembered from injection moulds, the rest are rules of ours, and toolmakers quote a factor of two apart. Pin cost.die as soon as one has quoted; cost.trim-die and cost.set can be pinned too.'
        : 'The price of the die is pinned by the engineer; what an estimate would have given stands beside it where it could be worked out.',
    ),
    ...valuesBlock(ledger, [
      'cost.hours-ejection',
      'cost.hours-size',
      'cost.hours-surface',
      'parting.core-pulls',
      'cost.feed-added',
      'cost.finish-added',
      'cost.tolerance-added',
      'cost.die-hours',
      'die.mass',
      'cost.insert-mass',
      'cost.die-steel',
      'cost.die-single',
      'cost.exponent',
      'cost.die',
      'cost.die-low',
      'cost.die-high',
      'cost.set',
      'cost.sets',
      'cost.die-parts',
      'cost.die-per-part',
      'cost.trim-die',
      'cost.trim-die-per-part',
    ]),
  ];
}

function showCavities(ledger: Ledger): Block[] {
  if (!ledger.values.has('cost.best-cavities')) return [];
  const counts = [...ledger.values.keys()].filter((id) => id.startsWith('cost.with-cavities['));
  return [
    textBlock(
      'By a closed form of a textbook, from memory, the cheapest number of cavities is ',
      { value: 'cost.best-cavities' },
      ' and the plan has ',
      { value: 'machine.cavities' },
      '. It takes the machine as large as the cavities need, its rate on a line over locking force, one cycle for every count, and one die; inserts that wear out are held at their cost of today, though more cavities spread them wider. It knows no slides, which need room beside every cavity, and no tie bars. The minimum is flat. The machine search knows all of that; what it found stands in the section on machine and cavities.',
    ),
    ...tableBlock(
      'Cost of a good part by the closed form',
      ['Cavities', 'Amount'],
      counts.map((id): Cell[] => [id.slice(id.indexOf('[') + 1, -1), { value: id }]),
    ),
    ...valuesBlock(ledger, ['cost.castings', 'cost.rate-slope', 'cost.rate-base', 'cost.force-rate', 'cost.rest', 'cost.best-cavities', 'cost.at-best']),
    ...costFigure(ledger),
  ];
}
