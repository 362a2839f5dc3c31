import type { Ledger } from '../../ledger.ts';
import type { Block } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import { featuresOf } from './directions.ts';

/** Items of an id, in the order in which they were filed. */
function itemsOf(ledger: Ledger, id: string): string[] {
  const keys = [...ledger.values.keys(), ...ledger.texts.keys()];
  return [...new Set(keys.filter((key) => key.startsWith(`${id}[`)).map((key) => key.slice(id.length + 1, -1)))];
}

export function show(ledger: Ledger): readonly Block[] {
  const opening = ledger.texts.get('parting.die-opening');
  if (opening === undefined) return [];
  return [
    textBlock('The die opens along ', { decision: 'parting.die-opening' }, '. Judged by the holes and undercuts listed in the part file, not by its shape.'),
    ...tableBlock(
      'Die openings tried',
      ['Opening', 'Core pulls', 'No core reaches', 'Depth of draw', 'Projected area', 'Taken'],
      itemsOf(ledger, 'parting.core-pulls-tried').map((axis) => [
        axis,
        cell(ledger, 'parting.core-pulls-tried', axis),
        cell(ledger, 'parting.unreachable-tried', axis),
        cell(ledger, 'parting.depth-tried', axis),
        ledger.maybe('parting.area-tried', axis) === undefined ? 'not given' : cell(ledger, 'parting.area-tried', axis),
        axis === opening ? 'yes' : '–',
      ]),
    ),
    ...valuesBlock(ledger, ['part.depth', 'part.projected-area', 'part.side-a', 'part.side-b', 'part.parting-line', 'parting.core-pulls']),
    textBlock('The ejector half is on the ', { decision: 'parting.ejector-side' }, '; plus is the way the axis of the opening points.'),
    ...tableBlock(
      'Cores',
      ['Feature', 'Direction', 'Angle to the opening', 'Made free by', 'Core in', 'Face', 'Gripped surface'],
      featuresOf(ledger.part).map((feature) =>
        feature.kind === 'hole'
          ? [
              feature.id,
              feature.text,
              cell(ledger, 'parting.hole-off-opening', feature.id),
              textCell(ledger, 'parting.hole-place', feature.id),
              textCell(ledger, 'parting.hole-core', feature.id),
              cell(ledger, 'parting.hole-face', feature.id),
              cell(ledger, 'parting.hole-surface', feature.id),
            ]
          : [
              feature.id,
              feature.text,
              cell(ledger, 'parting.undercut-off-opening', feature.id),
              textCell(ledger, 'parting.undercut-place', feature.id),
              textCell(ledger, 'parting.undercut-core', feature.id),
              cell(ledger, 'undercut.face-area', feature.id),
              cell(ledger, 'parting.undercut-surface', feature.id),
            ],
      ),
    ),
    ...showSlides(ledger),
    ...showInserts(ledger),
  ];
}

function showSlides(ledger: Ledger): Block[] {
  const slides = itemsOf(ledger, 'slide.direction');
  if (slides.length === 0) return [];
  return [
    ...tableBlock(
      'Slides',
      ['Slide', 'Leaves to', 'Forms', 'Out of the parting plane', 'Stroke', 'Face under metal', 'Drive', 'Pulling force'],
      slides.map((slide) => [
        slide,
        textCell(ledger, 'slide.direction', slide),
        textCell(ledger, 'slide.forms', slide),
        cell(ledger, 'slide.rise', slide),
        cell(ledger, 'slide.stroke', slide),
        cell(ledger, 'slide.face-area', slide),
        textCell(ledger, 'parting.slide-drive', slide),
        cell(ledger, 'slide.pulling-force', slide),
      ]),
    ),
    ...tableBlock(
      'Pins and locks',
      ['Slide', 'Pin angle', 'Opening while the pin pulls', 'Working length of the pin', 'Wedge lock', 'Core draft'],
      slides.map((slide) => [
        slide,
        cell(ledger, 'slide.pin-angle', slide),
        cell(ledger, 'slide.pin-engagement', slide),
        cell(ledger, 'slide.pin-length', slide),
        cell(ledger, 'slide.lock-angle', slide),
        cell(ledger, 'slide.draft', slide),
      ]),
    ),
    ...forTheDieMaker(ledger, slides),
  ];
}

/** What the die maker is told about slides; each line stands only where it applies. */
function forTheDieMaker(ledger: Ledger, slides: readonly string[]): Block[] {
  const driven = (word: string): boolean => slides.some((slide) => ledger.texts.get(`parting.slide-drive[${slide}]`)?.includes(word) === true);
  return [
    textBlock(
      'Lock every slide by a wedge with a wear plate: metal pressure drives cores back. The lock is ',
      { value: 'slide.lock-extra' },
      ' steeper than the pin, so that it is clear before the pin pulls.',
    ),
    textBlock(
      'Guide each slide over at least ',
      { value: 'slide.guide-ratio' },
      ' times its height, and keep at least ',
      { value: 'slide.guided-share' },
      ' of its length in the guide when it is open. Fit all moving parts so that metal cannot enter the guides.',
    ),
    textBlock('Shut-off faces into the cover half are tapered by ', { value: 'slide.shut-off-least' }, ' to ', { value: 'slide.shut-off-greatest' }, '.'),
    ...(driven('angle pin')
      ? [
          textBlock(
            'Angle pins have a play of ',
            { value: 'slide.play-least' },
            ' to ',
            { value: 'slide.play-greatest' },
            ' per side in the slide; a spring or stop holds the open slide in place until the pin returns.',
          ),
        ]
      : []),
    ...(driven('hydraulic')
      ? [
          textBlock(
            'Hydraulic cores: limit switches prove both end positions. Cores in before the die closes, out after it opens and before the ejectors move.',
          ),
        ]
      : []),
    textBlock('No ejector pin stands under a slide, unless an early return brings the ejectors back and a switch proves it before the slide goes in.'),
  ];
}

function showInserts(ledger: Ledger): Block[] {
  const { inserts } = ledger.part;
  if (inserts.length === 0) return [];
  return [
    ...tableBlock(
      'Inserts placed before each shot',
      ['Insert', 'Material', 'Diameter', 'Length'],
      inserts.map((insert) => [
        insert.id,
        textCell(ledger, 'insert.material', insert.id),
        cell(ledger, 'insert.diameter', insert.id),
        cell(ledger, 'insert.length', insert.id),
      ]),
    ),
    textBlock(
      'Each insert is located positively in the die, off the metal stream, with grooves or a knurl and no sharp corners. Placing them lengthens every cycle; the time is to be measured, no figure is published.',
    ),
  ];
}
