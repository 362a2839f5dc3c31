import type { Ledger } from '../../ledger.ts';
import type { Block, Phrase } from '../../plan.ts';
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
    ...valuesBlock(ledger, ['ejection.height', 'ejection.stroke', 'ejection.plate-stroke', 'machine.ejector-stroke']),
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
      ', the support plate of ',
      { value: 'die.plate' },
      ' and ',
      { value: 'die.steel-below' },
      ' of steel below the cavity, less ',
      { value: 'ejection.guide' },
      ' of guide. It is an estimate until the die is drawn. For buckling a pin counts as held so: ',
      { decision: 'ejection.pin-ends' },
      '.',
    ),
    textBlock(
      'Places: beside the deepest cores and core pins first, on bosses, rims and rib crossings, in pairs about the middle so that the casting does not tilt; on no visible or sealing face. Beside them ',
      ...underOverflows(ledger),
      { value: 'ejection.runner-pins' },
      ' under the runner of each cavity and ',
      { value: 'ejection.feeder-pins' },
      ` under the ${feederOf(ledger)}; these lift with the casting and carry none of the force reckoned. Keep cooling lines clear of the bores.`,
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

/** Pins under the overflows, where the casting has any. */
function underOverflows(ledger: Ledger): Phrase {
  if ((ledger.maybe('overflow.number')?.value ?? 0) === 0) return [];
  return [{ value: 'ejection.overflow-pins' }, ' under each overflow, which serves as a pad where the casting has no room, '];
}

/** How the plate comes back; in the plan of a part that shares its die, where that is decided. */
export function showReturn(ledger: Ledger): Block[] {
  const back = ledger.texts.get('ejection.return');
  if (back === undefined) return [];
  if (!ledger.decisions.has('ejection.return'))
    return [
      textBlock(
        'One ejector plate serves all castings of the die. It pushes ',
        { value: 'ejection.plate-stroke' },
        `, for the casting that needs the most, and comes back by ${back}; the plan of the die says why.`,
      ),
    ];
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
