import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import { feederOf } from '../feeder-of.ts';
import { showPins } from './show-pins.ts';

export function show(ledger: Ledger): readonly Block[] {
  const items = itemsOf(ledger, 'ejection.core-place');
  if (items.length === 0) return [];
  return [
    textBlock(
      'The casting shrinks onto the cores of the ejector half, on the ',
      { decision: 'parting.ejector-side' },
      `; its outside shrinks free of the die. Runner, ${feederOf(ledger)} and overflows have no core, shrink free and count for no force, but have pins of their own. Cores on slides are pulled before and do not count.`,
    ),
    ...valuesBlock(ledger, [
      'ejection.force',
      'ejection.force-low',
      'ejection.force-high',
      'machine.ejector-force',
      'ejection.force-use',
      'ejection.force-use-high',
    ]),
    ...showMetal(ledger),
    ...showCores(ledger, items),
    ...showTotals(ledger),
    ...showSlides(ledger),
    ...showPins(ledger),
  ];
}

/** Items of an id, in the order in which they were filed. */
function itemsOf(ledger: Ledger, id: string): string[] {
  return [...ledger.values.keys(), ...ledger.texts.keys()].filter((key) => key.startsWith(`${id}[`)).map((key) => key.slice(id.length + 1, -1));
}

function showMetal(ledger: Ledger): Block[] {
  if (ledger.maybe('ejection.hot-yield', 'wall') === undefined) return [];
  const row = (metal: string, title: string): Cell[] => [
    title,
    cell(ledger, 'ejection.temperature', metal),
    cell(ledger, 'ejection.temperature-drop', metal),
    cell(ledger, 'ejection.modulus', metal),
    cell(ledger, 'ejection.hoop-stress', metal),
    cell(ledger, 'ejection.hot-yield-least', metal),
    cell(ledger, 'ejection.hot-yield', metal),
    cell(ledger, 'ejection.hot-yield-greatest', metal),
    textCell(ledger, 'ejection.grip', metal),
  ];
  return [
    ...tableBlock(
      'The metal that grips',
      [
        '',
        'At ejection',
        'Cooled since it is solid',
        "Young's modulus",
        'Stress if nothing yielded',
        'Yield, low',
        'Yield, planned',
        'Yield, high',
        'Limited by',
      ],
      [row('wall', 'Wall around the inside'), row('boss', 'Boss around a core pin')],
    ),
    ...valuesBlock(ledger, ['ejection.friction-least', 'ejection.friction', 'ejection.friction-greatest', 'ejection.friction-dry']),
    textBlock(
      'Hot yield strength and friction are remembered and not published: low and high ends of the force put the low ends of both together, and the high ends. Measure the force in the first shots.',
    ),
  ];
}

function showCores(ledger: Ledger, items: readonly string[]): Block[] {
  const origin = ledger.texts.get('ejection.area-origin');
  return [
    ...tableBlock(
      'Cores and the force to draw the casting off them, one casting',
      ['Core', 'Stands in', 'Diameter or outline over pi', 'Height', 'Side surface', 'Draft', 'Pressure', 'Force, low', 'Force', 'Force, high'],
      items.map((item) => [
        item,
        textCell(ledger, 'ejection.core-place', item),
        cell(ledger, 'ejection.core-diameter', item),
        cell(ledger, 'ejection.core-height', item),
        cell(ledger, 'ejection.core-area', item),
        cell(ledger, 'ejection.core-draft', item),
        cell(ledger, 'ejection.core-pressure', item),
        cell(ledger, 'ejection.core-force-low', item),
        cell(ledger, 'ejection.core-force', item),
        cell(ledger, 'ejection.core-force-high', item),
      ]),
    ),
    origin === 'an open box'
      ? textBlock(
          'The part file names neither an inside face nor a cored hole in the ejector half: the surface is that of an open box as large as the envelope, or what the volume makes of one. List the inside faces under walls for a better figure.',
        )
      : origin === 'cored holes'
        ? textBlock('The part file names cored holes but no inside face; if the casting is hollow along the draw, list its inside faces under walls.')
        : textBlock(
            'An inside face has the outline of the envelope less a wall. That sets surface and pressure, hardly the force: a wall stretched around a longer outline presses less. Ribs and bosses inside add grip that the part file does not tell.',
          ),
    ...(ledger.maybe('ejection.floor-share') === undefined
      ? []
      : [
          textBlock(
            'The floor shrinks across the end of the core and draws the walls onto it. It closes about ',
            { value: 'ejection.closed-share' },
            ' of the core; of its pull a share of ',
            { value: 'ejection.floor-share' },
            ' is planned to bear on the sides, ',
            { value: 'ejection.floor-share-least' },
            ' at the low end, as published forms have it, and ',
            { value: 'ejection.floor-share-greatest' },
            ' at the high end.',
          ),
        ]),
  ];
}

function showTotals(ledger: Ledger): Block[] {
  return [
    ...valuesBlock(ledger, [
      'ejection.contact-area',
      'ejection.cavity-force',
      'ejection.cavity-force-low',
      'ejection.cavity-force-high',
      'ejection.cover-force',
      'ejection.handbook-least',
      'ejection.handbook-greatest',
    ]),
    ...(ledger.maybe('ejection.handbook-least') === undefined
      ? []
      : [
          textBlock(
            'The handbook figure is a cross-check: one gripping pressure of ',
            { value: 'ejection.grip-least' },
            ' to ',
            { value: 'ejection.grip-greatest' },
            ' for every core. In this wall yielding metal presses so on cores of about ',
            { value: 'ejection.grip-diameter-least' },
            ' to ',
            { value: 'ejection.grip-diameter-greatest' },
            '; on the wide inside of a casting the walls press less. Where the two are far apart, take a machine that has the handbook figure in reserve.',
          ),
        ]),
    ...(ledger.maybe('ejection.force-early') === undefined
      ? []
      : [
          textBlock(
            'The walls are ready at ',
            { value: 'ejection.temperature[boss]' },
            ' and have cooled to ',
            { value: 'ejection.temperature[wall]' },
            ' when the die opens. Ejected as soon as they are ready the shot would take ',
            { value: 'ejection.force-early' },
            ': time in the die that the casting does not need makes it grip harder.',
          ),
        ]),
  ];
}

/** The same cores by both routes; the handbook's stands with the slides too. */
function showSlides(ledger: Ledger): Block[] {
  return tableBlock(
    'Core pulls before ejection',
    ['Slide', 'By the yield strength, low', 'Planned', 'High', 'By a gripping pressure'],
    itemsOf(ledger, 'ejection.slide-force').map((slide) => [
      slide,
      cell(ledger, 'ejection.slide-force-low', slide),
      cell(ledger, 'ejection.slide-force', slide),
      cell(ledger, 'ejection.slide-force-high', slide),
      cell(ledger, 'slide.pulling-force', slide),
    ]),
  );
}
