import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import { coredHoles } from './cored.ts';
import { layoutFigure } from './figure.ts';
import { BOX, COVER, EJECTOR, FOOT, MOVING } from './heights.ts';
import { showLife } from './show-life.ts';
import { slideItems } from './slides.ts';
import { COMPONENTS, ELEMENTS } from './steels.ts';

export function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('die.width') && !ledger.decisions.has('die.cavity-steel')) return [];
  return [...showSteels(ledger), ...showFace(ledger), ...showHeight(ledger), ...showPlates(ledger), ...ownCores(ledger), ...showLife(ledger)];
}

function decided(ledger: Ledger, id: string): Cell {
  return ledger.decisions.has(id) ? { decision: id } : '–';
}

function showSteels(ledger: Ledger): Block[] {
  const components = COMPONENTS.filter((component) => ledger.decisions.has(`die.component-steel[${component}]`));
  const elements = ELEMENTS.filter((element) => ledger.values.has(`die.grade-greatest[${element}]`));
  return [
    ...tableBlock(
      'Steels by component',
      ['Component', 'Steel', 'Hardness (HRC), least', 'Hardness (HRC), greatest'],
      [
        ['cavity', decided(ledger, 'die.cavity-steel'), cell(ledger, 'die.hardness-least'), cell(ledger, 'die.hardness-greatest')],
        ...components.map((component) => [
          component,
          decided(ledger, `die.component-steel[${component}]`),
          cell(ledger, 'die.component-least', component),
          cell(ledger, 'die.component-greatest', component),
        ]),
      ],
    ),
    ...valuesBlock(ledger, ['die.shots-planned', 'die.hardness', 'die.brinell-least', 'die.brinell-greatest']),
    ...(elements.length === 0
      ? []
      : [
          textBlock(
            'Order the cavity steel by the acceptance criteria of the trade association, ',
            { decision: 'die.steel-grade' },
            ', and ask for the certificate of its composition:',
          ),
          ...tableBlock(
            'Composition of the grade, mass per cent',
            ['Element', 'Least', 'Greatest'],
            elements.map((element) => [element, cell(ledger, 'die.grade-least', element), cell(ledger, 'die.grade-greatest', element)]),
          ),
        ]),
  ];
}

function showFace(ledger: Ledger): Block[] {
  if (!ledger.values.has('die.width')) return [];
  const slides = slideItems(ledger);
  return [
    textBlock(
      'The least die has the least steel and no room for slides at its edges. The die maker takes the usual steel for inserts and holder, and the room that slides ask for, as far as the tie bars leave it. The body of a slide takes the place of the steel on its side; its stroke and the lock or stop behind it come on top.',
    ),
    ...valuesBlock(ledger, [
      'die.field-width',
      'die.field-height',
      'die.block-width',
      'die.block-height',
      'die.usual-width',
      'die.usual-height',
      ...(slides.length > 0 ? (['die.gap-width', 'die.gap-height', 'die.slides-between', 'die.room-width', 'die.room-height'] as const) : []),
      'die.bars-width',
      'die.bars-height',
      'die.width',
      'die.breadth',
      ...(slides.length > 0 ? (['die.overhang-width', 'die.overhang-height'] as const) : []),
      'die.feeder-strip',
      'die.insert-edge',
      'die.edge-usual',
      'die.insert-width',
      'die.insert-height',
      'die.insert-count',
      'die.insert-each-width',
      'die.insert-each-height',
    ]),
    ...tableBlock(
      'Insert of one casting of each part',
      ['Part', 'Across', 'Upright'],
      ledger.items('set.insert-width').map((part) => [part, cell(ledger, 'set.insert-width', part), cell(ledger, 'set.insert-height', part)]),
    ),
    ...tableBlock(
      'Slides in the die',
      ['Slide', 'Leaves to the', 'Stroke', 'Room beyond the steel'],
      slides.map((slide) => [slide, textCell(ledger, 'die.slide-side', slide), cell(ledger, 'slide.stroke', slide), cell(ledger, 'die.slide-room', slide)]),
    ),
    ...layoutFigure(ledger),
  ];
}

function showHeight(ledger: Ledger): Block[] {
  const parts = [COVER, EJECTOR, BOX, FOOT, MOVING].filter((part) => ledger.values.has(`die.half-height[${part}]`));
  return [
    ...valuesBlock(ledger, ['die.steel-below', 'die.below-least', 'die.plate', 'die.plate-least', 'die.plate-greatest', 'ejection.stroke']),
    ...tableBlock(
      'Height of the closed die: the whole depth of the casting counted in the cover half, the cores of the ejector half standing up into it',
      ['Part', 'Height', 'Mass'],
      parts.map((part) => [part === MOVING ? 'moving half, all three' : part, cell(ledger, 'die.half-height', part), cell(ledger, 'die.half-mass', part)]),
    ),
    ...valuesBlock(ledger, ['die.height', 'machine.die-height-least', 'machine.die-height-greatest', 'die.mass']),
  ];
}

function showPlates(ledger: Ledger): Block[] {
  if (!ledger.values.has('die.plate-bow')) return [];
  return [
    textBlock(
      'The inserts press on the plate that closes the ejector box. Load case: the force of the metal on castings and overflows, spread by the thick inserts over their backs, on a strip of the plate alone, freely supported by rails or pillars and loaded over its whole span. Holder, inserts and the run of the plate over its pillars help and are not counted. Rows of pillars stand evenly between the rails: one row halves the span and leaves a sixteenth of the bow.',
    ),
    ...valuesBlock(ledger, [
      'die.back-force',
      'die.back-pressure',
      'die.span',
      'die.plate-bow-free',
      'die.plate-thickness',
      'die.bow-greatest',
      'die.flash-gap',
      'die.pillar-rows',
      'die.plate-bow',
      'die.bay',
      'die.pillars-each',
      'die.pillar-load',
      'die.pillar-diameter',
      'die.pillar-stress',
      'die.pillar-allowed',
    ]),
  ];
}

/** Those of castings of several parts stand in the plans of the parts. */
function ownCores(ledger: Ledger): Block[] {
  return ledger.given.set === undefined ? showCores(ledger) : [];
}

export function showCores(ledger: Ledger): Block[] {
  const holes = coredHoles(ledger).filter((hole) => ledger.values.has(`die.core-bending[${hole}]`));
  if (holes.length === 0) return [];
  return [
    textBlock(
      'Cores are bent while the cavity fills: the stream at gate velocity meets one side of a core, with ',
      { value: 'die.stream-pressure' },
      ' over its whole length, and nothing stands behind it yet. Once it is surrounded, the metal pressure acts from all sides. This is the case of a core right before the gate; others see less. A bend of ',
      { value: 'die.core-bend-greatest' },
      ' is allowed.',
    ),
    ...tableBlock(
      'Cores of holes',
      ['Hole', 'Diameter', 'Length', 'Length over diameter', 'Bend', 'Stress at the root', 'Diameter for the bend allowed', 'Length for it'],
      holes.map((hole) => [
        hole,
        cell(ledger, 'hole.diameter', hole),
        cell(ledger, 'hole.depth', hole),
        cell(ledger, 'die.core-slenderness', hole),
        cell(ledger, 'die.core-bending', hole),
        cell(ledger, 'die.core-stress', hole),
        cell(ledger, 'die.core-least-diameter', hole),
        cell(ledger, 'die.core-greatest-height', hole),
      ]),
    ),
    ...valuesBlock(ledger, ['die.core-stress-greatest', 'die.core-slenderness-greatest', 'die.line-room']),
  ];
}
