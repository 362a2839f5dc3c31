import type { Ledger } from '../../ledger.ts';
import type { Block, Cell, Phrase } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import { coredHoles } from './cores.ts';
import { cooledParts, slides } from './parts.ts';

export function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('cooling.line-depth')) return [];
  const heats = ledger.texts.get('heat.duty') === 'heat';
  return [
    textBlock(
      heats
        ? 'Spray and surroundings could take more than the shots bring, so the lines heat the die with a coolant that is hotter than it. Lines, flow and temperatures are worked out for that heat.'
        : ledger.texts.get('cooling.resistance') === 'steel'
          ? 'Lines are drilled in rows below the cavities. Heat reaches them through steel, by the shape factor of a row, and through the film in the line; the steel is most of the resistance, so more flow helps little once it is turbulent, while depth, pitch and length of the lines decide.'
          : 'Lines are drilled in rows below the cavities. Heat reaches them through steel, by the shape factor of a row, and through the film in the line; here the film holds back a good part of it, so flow counts as well as depth, pitch and length of the lines.',
    ),
    ...(ledger.texts.get('cooling.line-place') === 'close'
      ? [
          textBlock(
            'In the usual place the lines would make the machine wait for the die, so they lie as near the surface and to each other as the rules of the trade allow. Pins, cores and screws have to find their room between them.',
          ),
        ]
      : []),
    ...coolant(ledger),
    ...valuesBlock(ledger, [
      'cooling.surface-excess',
      'cooling.surface',
      'cooling.coolant-least',
      'cooling.coolant-temperature',
      'cooling.line-diameter',
      'cooling.line-depth',
      'cooling.pitch',
      'cooling.line-length',
      'cooling.lines-fit',
      'cooling.row-shape-factor',
    ]),
    ...flow(ledger),
    ...parts(ledger, heats),
    ...valuesBlock(ledger, [
      'cooling.length',
      'cooling.conductance',
      'cycle.elements-time',
      'cooling.cycle-least',
      'cooling.running-heat',
      'cooling.wall-flux',
      'cooling.wall-temperature',
      'cooling.pressure',
      'cooling.wall-greatest',
      'cooling.rise',
      'cooling.pressure-drop',
      'cooling.pump-flow',
      'cooling.unit-coldest',
      'cooling.unit-hottest',
      'cooling.unit-flow',
      'cooling.unit-pressure',
    ]),
    ...running(ledger, heats),
    ...cores(ledger),
  ];
}

function coolant(ledger: Ledger): Block[] {
  const decision = ledger.decisions.get('cooling.medium');
  return decision === undefined ? [] : [textBlock(`Coolant: ${decision.value}. ${decision.because}`)];
}

function flow(ledger: Ledger): Block[] {
  if (!ledger.values.has('cooling.flow')) return [];
  return [
    textBlock(
      'Every line is a circuit of its own here. Its flow is the greater of two, and ',
      ledger.texts.get('cooling.flow-governs') === 'turbulence'
        ? 'turbulence asks for the greater one.'
        : ledger.texts.get('cooling.flow-governs') === 'speed'
          ? 'the temperature rise of the coolant asks for the greater one; it is held to the greatest speed, and the coolant rises a little more.'
          : 'the temperature rise of the coolant asks for the greater one.',
      ledger.texts.get('cooling.regime') === 'laminar'
        ? ' The flow is below the range of the turbulent correlation; the film is that of laminar flow, a small share of what turbulent flow would give.'
        : ' The film follows from the Gnielinski correlation.',
      ...properties(ledger),
    ),
    ...valuesBlock(ledger, [
      'cooling.flow-for-reynolds',
      'cooling.flow-for-rise',
      ...(ledger.texts.get('cooling.flow-governs') === 'speed' ? (['cooling.flow-at-speed'] as const) : []),
      'cooling.flow',
      'cooling.speed',
      'cooling.reynolds',
      'cooling.prandtl',
      'cooling.friction',
      'cooling.nusselt',
      'cooling.film',
      'cooling.line-conductance',
      'cooling.heat-per-length',
    ]),
  ];
}

/** At which temperature the coolant is taken, and what it means that it runs warmer. */
function properties(ledger: Ledger): Phrase {
  const [least, runs] = [ledger.values.get('cooling.coolant-least'), ledger.values.get('cooling.coolant-temperature')];
  if (least === undefined) return [];
  return [
    ' Density, viscosity and conductivity of the coolant are those at ',
    { value: 'cooling.coolant-least' },
    runs !== undefined && runs.value > least.value
      ? ', for which the lines are laid out in a full row; as it runs, warmer and thinner, it takes the heat a little better and drops less pressure.'
      : ', at which it runs.',
  ];
}

function parts(ledger: Ledger, heats: boolean): Block[] {
  const items = cooledParts(ledger).filter((item) => ledger.values.has(`cooling.length-laid[${item}]`));
  if (items.length === 0) return [];
  const rows = items.map((item): Cell[] => [
    item,
    cell(ledger, 'cooling.share', item),
    cell(ledger, 'cooling.rate', item),
    cell(ledger, 'cooling.length-needed', item),
    cell(ledger, 'cooling.lines-worth', item),
    cell(ledger, 'cooling.lines', item),
    cell(ledger, 'cooling.half-pitch', item),
    cell(ledger, 'cooling.part-conductance', item),
    ...(heats ? [] : [cell(ledger, 'cooling.part-coolant', item), cell(ledger, 'cooling.cycle-by-part', item)]),
  ]);
  return [
    ...tableBlock(
      heats ? 'Lines that heat the die' : 'Lines by the parts of the die',
      [
        '',
        'Share',
        'Heat rate',
        'Length in a full row',
        'Lines of a row',
        'Lines laid',
        'Pitch',
        'Conductance',
        ...(heats ? [] : ['Coolant', 'Holds a cycle of']),
      ],
      rows,
    ),
    ...valuesBlock(
      ledger,
      items.flatMap((item) => (['cooling.laid-shape-factor', 'cooling.laid-conductance'] as const).map((id) => [id, item] as const)),
    ),
    textBlock(
      'Whole lines are spread over the field. Fewer than a full row, each takes more than one of a row, to the mean of a face that takes the same heat everywhere. ',
      'The ejector half with the cores takes more, because the casting shrinks on to them. ',
      ...(slides(ledger).length === 0
        ? []
        : [
            'A slide whose share of the face is ',
            { value: 'cooling.slide-share-least' },
            ' or more has lines of its own, by its share; a smaller one is cooled through its guides. ',
          ]),
      ledger.texts.get('machine.chamber') === 'cold'
        ? 'One line of each half belongs below runner and biscuit, as a bore in the spreader or a line close to it.'
        : 'One line of each half belongs close to the sprue and its spreader.',
    ),
  ];
}

function running(ledger: Ledger, heats: boolean): Block[] {
  if (!ledger.values.has('cooling.coolant-temperature') || heats) return [];
  const worth = ledger.values.get('cooling.fewest-worth');
  return [
    textBlock(
      'The coolant runs at ',
      { value: 'cooling.coolant-temperature' },
      ': at that temperature all lines together take just what the balance leaves them. Set the unit to it for the first shots and then to the die; the halves by themselves would take the temperatures in the table, so give each a channel of its own, or throttle the lines of the one that asks for the warmer coolant.',
      ...(worth !== undefined && worth.value < 1
        ? [
            ' The heat of one half is worth only ',
            { value: 'cooling.fewest-worth' },
            ' of a line: its line is there to bring the die to temperature and to hold it, and can lie deeper or be left shut.',
          ]
        : []),
    ),
  ];
}

function cores(ledger: Ledger): Block[] {
  const items = coredHoles(ledger).filter((item) => ledger.texts.has(`cooling.core[${item}]`));
  if (items.length === 0) return [];
  return [
    ...tableBlock(
      'Cores',
      ['Hole', 'Diameter', 'Core depth', 'Tip above the die, steel', 'Tip above the die, tungsten alloy', 'Cooling', 'Because'],
      items.map((item): Cell[] => [
        item,
        cell(ledger, 'hole.diameter', item),
        cell(ledger, 'hole.core-depth', item),
        cell(ledger, 'cooling.core-excess', item),
        cell(ledger, 'cooling.core-excess-tungsten', item),
        textCell(ledger, 'cooling.core', item),
        ledger.decisions.get(`cooling.core[${item}]`)?.because ?? '–',
      ]),
    ),
    textBlock(
      'A core is taken as a fin in the metal that leads its heat to its foot. From ',
      { value: 'cooling.core-excess-greatest' },
      ' above the die it is cooled, one wide enough for twice the bore of a bubbler already from half of that: by a bubbler from ',
      { value: 'cooling.bubbler-core' },
      ' of core on, else by tungsten heavy alloy, which conducts several times as well as steel and wears sooner.',
    ),
  ];
}
