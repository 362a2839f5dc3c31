import { Traced } from '../../kernel/traced.ts';
import { overflowFace } from '../../physics/heat-face.ts';
import { metalMass } from '../../physics/metal.ts';
import { overflowVolume } from '../../physics/overflow.ts';
import { overflowArea, overflowDepth, overflowEach, overflowNumber, overflowShareFit, overflowWall, partingLineEstimate } from '../../physics/overflow-plan.ts';
import type { Ledger } from '../ledger.ts';
import { orPinned } from '../planned.ts';
import { type Step, textBlock, valuesBlock } from '../step.ts';

/**
 * Overflows of one cavity: volume by wall and finish, number and size. They come before the gate, whose flow they share.
 * Their own gates follow from the gate area and are worked out with it.
 */
export const overflowStep: Step = {
  id: 'overflow',
  title: 'Overflows',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    const wall = ledger.value('part.wall-nominal');
    attempt('overflow.volume', 'Overflow volume', () =>
      orPinned(ledger, 'overflow.volume', () => {
        const finish = ledger.text('quality.cold-shut') === 'some' ? 'some-cold-shut' : 'good';
        const share = ledger.look('overflow/share', 'share', { finish, wall }, 'overflow.share');
        return ledger.apply(overflowVolume, { cavity_volume: ledger.value('part.volume'), share });
      }),
    );
    attempt('overflow.share-fit', 'Overflow share by a textbook fit', () => ledger.apply(overflowShareFit, { wall }));
    attempt('overflow.mass', 'Overflow mass', () =>
      ledger.apply(metalMass, { volume: ledger.value('overflow.volume'), density: ledger.value('alloy.density') }, { id: 'overflow.mass' }),
    );
    attempt('overflow.parting-line', 'Parting line', () => filePartingLine(ledger));
    attempt('overflow.number', 'Number of overflows', () => number(ledger));
    attempt('overflow.area', 'Area and section of the overflows', () => section(ledger));
  },
  show,
};

function filePartingLine(ledger: Ledger): void {
  const given = ledger.maybe('part.parting-line');
  if (given?.kind === 'assumption') {
    // Named once among the assumptions, under the part's own id.
    const note = 'the length taken for the part';
    ledger.put(Traced.choice('overflow.parting-line', given.value, 'mm', { note, status: given.status, parents: [given] }));
  } else if (given !== undefined) ledger.put(given.as('overflow.parting-line'));
  else
    ledger.apply(
      partingLineEstimate,
      { side_a: ledger.value('part.side-a'), side_b: ledger.value('part.side-b') },
      { note: 'not given; outline of the envelope' },
    );
}

function number(ledger: Ledger): void {
  const volume = ledger.value('overflow.volume');
  const count = ledger.apply(overflowNumber, {
    volume,
    parting_line: ledger.value('overflow.parting-line'),
    spacing: ledger.look('overflow/layout', 'spacing', {}, 'overflow.spacing'),
    least: ledger.look('overflow/layout', 'least', {}, 'overflow.number-least'),
  });
  if (count.value > 0) ledger.apply(overflowEach, { volume, number: count });
}

/** How deep they are, and so how much area they add; a square one of that depth takes and gives heat as a wall does. */
function section(ledger: Ledger): void {
  const depth = ledger.apply(overflowDepth, {
    wall: ledger.value('part.wall-nominal'),
    multiple: ledger.look('overflow/depth', 'wall_multiple', {}, 'overflow.depth-multiple'),
    least: ledger.look('overflow/depth', 'least', {}, 'overflow.depth-least'),
    greatest: ledger.look('overflow/depth', 'greatest', {}, 'overflow.depth-greatest'),
  });
  const area = ledger.apply(overflowArea, { volume: ledger.value('overflow.volume'), depth });
  const number = ledger.value('overflow.number');
  if (number.value === 0) return;
  ledger.apply(overflowWall, { area, number, depth });
  ledger.apply(overflowFace, { area, number, depth }, { id: 'overflow.face' });
}

function show(ledger: Ledger): ReturnType<Step['show']> {
  const values = valuesBlock(ledger, [
    'overflow.share',
    'overflow.share-fit',
    'overflow.volume',
    'overflow.mass',
    ...(ledger.values.has('overflow.each') ? (['overflow.parting-line'] as const) : []),
    'overflow.number',
    'overflow.each',
    ...(ledger.values.has('overflow.each') ? (['overflow.depth', 'overflow.area'] as const) : []),
    'overflow.gate-share',
    'overflow.gate-area',
    'overflow.gate-thickness',
    'overflow.gate-width',
  ]);
  if (values.length === 0) return [];
  if (!ledger.values.has('overflow.each')) {
    return [
      textBlock(
        'At this wall the table asks for no overflow volume; vents are placed on the parting line where the metal arrives last, and a small overflow at a meeting front does no harm.',
      ),
      ...values,
    ];
  }
  return [
    textBlock(
      'Several modest overflows serve better than few large ones. They count in the shot, the projected area and the trim, and serve as pads for ejector pins.',
    ),
    ...values,
    textBlock(
      'The share is that of the flow segment which an overflow serves, for any alloy; it is planned as if every segment had one. Segments that fill hot and vented to their end need none: cut first those where the flow ends, and pin overflow.volume at what the first shots show, for runner, gates and machine follow it.',
    ),
    textBlock(
      'Place them at the end of each flow segment, where the metal arrives last, with the vent behind the overflow. An overflow that fills before its segment sends metal back into the cavity.',
    ),
    textBlock(
      'Further places: where streams meet, opposite the gate where the first metal hits, in swirls, in dead corners beside the gate, at cold zones of the die, at thick spots, and where the die cannot be vented otherwise.',
    ),
    textBlock(
      'At a meeting front give the overflow about the volume of the zone that would show a cold shut, at a hot spot two to three times the volume of the hot spot.',
    ),
  ];
}
