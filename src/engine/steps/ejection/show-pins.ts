import type { Ledger } from '../../ledger.ts';
import type { Block } from '../../plan.ts';
import { cell, tableBlock, textBlock, valuesBlock } from '../../step.ts';
import { feederOf } from '../feeder-of.ts';

/** Pins, stroke and return, and what the die maker is told of them. */
export function showPins(ledger: Ledger): Block[] {
  const known = ledger.maybe('ejection.pin-diameter') !== undefined;
  return [
    ...valuesBlock(ledger, [
      'ejection.cavity-pins',
      'ejection.pin-diameter',
      'ejection.pins',
      'ejection.pin-pressure',
      'ejection.push-pressure',
      'ejection.pin-pressure-high',
      'ejection.pin-force',
      'ejection.pin-buckling-force',
      'ejection.pin-length',
      'ejection.pin-slenderness',
    ]),
    ...(known
      ? [
          ...tableBlock(
            'Number of pins under one casting',
            ['Distance from pin to pin', 'Along the outline', 'Over the area', 'For the force', 'Least', 'Taken'],
            [
              [
                cell(ledger, 'ejection.pin-spacing'),
                cell(ledger, 'ejection.pins-by-outline'),
                cell(ledger, 'ejection.pins-by-area'),
                cell(ledger, 'ejection.pins-by-force'),
                cell(ledger, 'ejection.pins-least'),
                cell(ledger, 'ejection.cavity-pins'),
              ],
            ],
          ),
          ...tableBlock(
            'Diameter of the pins',
            ['By wall and pressure', 'For its length', 'For the pressure', 'Just buckles', 'Against buckling', 'Standard size taken'],
            [
              [
                cell(ledger, 'ejection.pin-aim-diameter'),
                cell(ledger, 'ejection.pin-stout-diameter'),
                cell(ledger, 'ejection.pin-pressure-diameter'),
                cell(ledger, 'ejection.pin-buckling-diameter'),
                cell(ledger, 'ejection.pin-safe-diameter'),
                cell(ledger, 'ejection.pin-diameter'),
              ],
            ],
          ),
          ...atTheHighEnd(ledger),
          ...forTheDieMaker(ledger),
        ]
      : []),
    ...valuesBlock(ledger, ['ejection.height', 'ejection.stroke', 'machine.ejector-stroke']),
    ...showReturn(ledger),
  ];
}

/** Friction and hot strength are known within a factor of two, so what the pins see at worst stands beside the plan. */
function atTheHighEnd(ledger: Ledger): Block[] {
  const [high, allowed] = [ledger.maybe('ejection.pin-pressure-high'), ledger.maybe('ejection.push-pressure')];
  if (high === undefined || allowed === undefined || high.value <= 1.005 * allowed.value) return [];
  return [
    textBlock(
      'The pins are planned for the middle of the ejection force. At its high end, where lubricant fails or metal solders, they press with ',
      { value: 'ejection.pin-pressure-high' },
      ' where ',
      { value: 'ejection.push-pressure' },
      ' are allowed, and mark the casting; ',
      { value: 'ejection.pins-high' },
      ' pins of that size or pins of ',
      { value: 'ejection.pin-high-diameter' },
      ' keep the allowed pressure there too. Leave room for them in the die.',
    ),
  ];
}

function forTheDieMaker(ledger: Ledger): Block[] {
  return [
    textBlock(
      'The free length runs from the ejector plate to the guide in the cavity steel: stroke, a gap of ',
      { value: 'ejection.gap' },
      ', a holder floor of ',
      { value: 'ejection.holder-floor' },
      ' and ',
      { value: 'ejection.steel' },
      ' of cavity steel, less ',
      { value: 'ejection.guide' },
      ' of guide. It is an estimate until the die is drawn. For buckling a pin counts as held so: ',
      { decision: 'ejection.pin-ends' },
      '.',
    ),
    textBlock(
      'Places: beside the deepest cores and core pins first, on bosses, rims and rib crossings, in pairs about the middle so that the casting does not tilt; on no visible or sealing face. One pin under each overflow, which serves as a pad where the casting has no room, ',
      { value: 'ejection.runner-pins' },
      ' under the runner of each cavity and ',
      { value: 'ejection.feeder-pins' },
      ` under the ${feederOf(ledger)}; they lift with the casting and carry none of the force reckoned. Keep cooling lines clear of the bores.`,
    ),
    textBlock(
      'Pins of nitrided H13, ',
      { value: 'ejection.pin-hardness-least' },
      ' to ',
      { value: 'ejection.pin-hardness-greatest' },
      ' HRC. Pin marks stand up or sink in by ',
      { value: 'ejection.pin-mark' },
      ' at most; agree with the customer where they may be, and on which side of the surface.',
    ),
  ];
}

function showReturn(ledger: Ledger): Block[] {
  const back = ledger.texts.get('ejection.return');
  if (back === undefined) return [];
  const slides = (ledger.maybe('parting.core-pulls')?.value ?? 0) > 0;
  return [
    textBlock('Return of the ejectors: ', { decision: 'ejection.return' }, '.'),
    ...(slides
      ? [
          textBlock(
            back === 'early return'
              ? 'Sequence: die opens, slides out and proved, ejectors forward, casting taken, ejectors back and proved by a switch, slides in, die closes.'
              : 'Sequence: die opens, slides out and proved, ejectors forward, casting taken, die closes, return pins bring the ejectors back. No ejector pin may stand under a slide.',
          ),
        ]
      : []),
  ];
}
