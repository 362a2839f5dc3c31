import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { pq2Figure } from './figure.ts';
import { SPREAD } from './lines.ts';
import { plungerItems } from './plungers.ts';
import { isSqueezeFill } from './squeeze-fill.ts';

export function show(ledger: Ledger): Block[] {
  if (isSqueezeFill(ledger)) {
    return [
      textBlock(
        'Not judged: at a gate velocity of ',
        { value: 'gate.velocity' },
        ' the gates ask for next to no pressure, so the line of the die says nothing; the machine is judged by its metal pressure and plunger speed.',
      ),
    ];
  }
  if (!ledger.values.has('pq2.static-pressure')) return [];
  return [
    textBlock(
      'The machine gives the metal less pressure the faster the plunger runs; the gates ask for more the faster the metal passes. Where the two lines cross, this machine fills this die if nothing holds it back. The pressure is that of the fill phase',
      ledger.texts.get('machine.chamber') === 'hot' ? '; a hot chamber has no other.' : '; an intensifier acts only after the cavity is full.',
    ),
    ...valuesBlock(ledger, MACHINE_LINE),
    ...valuesBlock(ledger, DIE_LINE),
    ...crossings(ledger),
    ...planned(ledger),
    ...waysIn(ledger),
    ...plungers(ledger),
    ...pq2Figure(ledger),
  ];
}

const MACHINE_LINE: readonly ValueId[] = [
  'machine.pressure-fill',
  'machine.cylinder-diameter',
  'machine.tail-rod-diameter',
  'machine.plunger',
  'machine.dry-shot-speed',
  'pq2.throttle',
  'pq2.dry-speed',
  'pq2.static-pressure',
  'pq2.dry-flow',
  'pq2.greatest-power-flow',
  'pq2.greatest-power-pressure',
  'pq2.greatest-power',
];
const DIE_LINE: readonly ValueId[] = ['machine.cavities', 'gate.area', 'pq2.gate-area', 'gate.liquid-density', 'gate.discharge'];

function crossings(ledger: Ledger): Block[] {
  if (!ledger.values.has('pq2.operating-flow')) return [];
  return [
    ...tableBlock(
      'Crossing of machine and die',
      ['', 'Discharge coefficient', 'Flow', 'Metal pressure', 'Gate velocity', 'Plunger speed', 'Fill time'],
      [
        ['As planned', cell(ledger, 'gate.discharge'), ...CROSSING.map((name) => cell(ledger, `pq2.operating-${name}`))],
        ...SPREAD.map((item): Cell[] => [
          item === 'low' ? 'Coefficient lower' : 'Coefficient higher',
          cell(ledger, 'pq2.spread-discharge', item),
          ...CROSSING.map((name) => cell(ledger, `pq2.spread-${name}`, item)),
        ]),
      ],
    ),
    textBlock(
      'The discharge coefficient is an assumption: it hangs on the runner and the gate more than on the alloy, and one author holds that the gate area alone can change it by 100 %.',
    ),
    ...valuesBlock(ledger, ['pq2.best-plunger-area', 'pq2.best-plunger-diameter']),
    textBlock(
      'With the plunger of the greatest gate velocity the crossing lies at the greatest power. It is a flat optimum; metal pressure, fill time and the fill of a sleeve come first when the plunger is chosen.',
    ),
  ];
}

const CROSSING = ['flow', 'pressure', 'velocity', 'speed', 'time'] as const;

function planned(ledger: Ledger): Block[] {
  const rows = BOUNDS.map(([label, bound, value, margin]): Cell[] => [label, cell(ledger, bound), cell(ledger, value), cell(ledger, margin)]);
  return [
    ...(ledger.decisions.has('pq2.place') ? [textBlock('Planned point in the window: ', { decision: 'pq2.place' }, '.')] : []),
    ...tableBlock(
      'Planned point and the bounds of the window',
      ['Bound', 'At', 'Planned', 'Room, in % of the bound'],
      rows.filter((row) => row[3] !== '–'),
    ),
    ...speedBounds(ledger),
    ...valuesBlock(ledger, ['pq2.pressure', 'pq2.pressure-left', 'pq2.machine-use', 'pq2.power', 'pq2.power-use', 'pq2.least-plunger', 'pq2.greatest-plunger']),
    ...(ledger.values.has('pq2.needed-throttle') && !ledger.decisions.has('pq2.remedy')
      ? [
          ...valuesBlock(ledger, ['pq2.needed-throttle']),
          textBlock(
            'To run as planned and not at the crossing, set the shot valve to ',
            { value: 'pq2.needed-throttle' },
            ' of the dry-shot speed or a little more, or set the plunger speed where the machine controls it.',
          ),
        ]
      : []),
  ];
}

/** Which of the two bounds of the plunger speed rules. */
function speedBounds(ledger: Ledger): Block[] {
  const [share, crossing] = [ledger.values.get('shot.speed-available'), ledger.values.get('pq2.operating-speed')];
  if (share === undefined || crossing === undefined) return [];
  return [
    textBlock(
      'The plunger speed has two bounds. At the crossing, ',
      { value: 'pq2.operating-speed' },
      ', the machine has no more to give; and of the loaded speed a share is planned at most, ',
      { value: 'shot.speed-available' },
      `, so that control, wear and a falling accumulator have room. The lower one rules, here ${share.value <= crossing.value ? 'the share' : 'the crossing'}.`,
    ),
  ];
}

const BOUNDS: readonly (readonly [label: string, bound: ValueId, planned: ValueId, margin: ValueId])[] = [
  ['Flow of the longest fill time', 'pq2.least-flow', 'shot.flow', 'pq2.flow-margin'],
  ['Least gate velocity', 'gate.velocity-least', 'pq2.velocity', 'pq2.velocity-margin-least'],
  ['Greatest gate velocity', 'gate.velocity-greatest', 'pq2.velocity', 'pq2.velocity-margin-greatest'],
  ['Machine: flow at the crossing', 'pq2.operating-flow', 'shot.flow', 'pq2.machine-margin'],
];

/** Each change alone brings the planned point onto the line of the machine; the decision says which to take. */
function waysIn(ledger: Ledger): Block[] {
  const remedy = ledger.decisions.get('pq2.remedy');
  if (remedy === undefined) return [];
  const has = (id: ValueId): boolean => ledger.values.has(id);
  return [
    textBlock(
      'Change first: ',
      { decision: 'pq2.remedy' },
      '. Each change below brings the plan within reach by itself, where it stays within its bound and the machine has it.',
    ),
    ...tableBlock(
      'Ways into the window',
      ['Change', 'Now', 'To', 'Bound'],
      [
        ...(remedy.value === 'throttle' ? [way(ledger, 'Shot valve, at least', 'pq2.throttle', 'pq2.needed-throttle')] : []),
        ...(has('pq2.advised-plunger') ? [way(ledger, 'Plunger of the machine', 'machine.plunger', 'pq2.advised-plunger')] : []),
        ...(has('pq2.least-plunger')
          ? [way(ledger, 'Plunger, from', 'machine.plunger', 'pq2.least-plunger'), way(ledger, 'Plunger, to', 'machine.plunger', 'pq2.greatest-plunger')]
          : []),
        ...(has('pq2.needed-gate-area')
          ? [
              way(ledger, `Gate area of ${ledger.given.set === undefined ? 'one cavity' : 'the shot'}, at least`, 'gate.area', 'pq2.needed-gate-area'),
              way(ledger, 'Gate velocity with it', 'pq2.velocity', 'pq2.needed-velocity', 'gate.velocity-least'),
            ]
          : []),
        ...(has('pq2.needed-time')
          ? [way(ledger, 'Fill time at the planned gate velocity, at least', 'fill.time', 'pq2.needed-time', 'fill.longest-time')]
          : []),
        way(ledger, 'Hydraulic pressure of the fill phase, at least', 'machine.pressure-fill', 'pq2.needed-pressure'),
        way(ledger, 'Greatest power of the machine on the metal, at least', 'pq2.greatest-power', 'pq2.power'),
      ],
    ),
  ];
}

function way(ledger: Ledger, label: string, now: ValueId, to: ValueId, bound?: ValueId): Cell[] {
  return [label, cell(ledger, now), cell(ledger, to), bound === undefined ? '–' : cell(ledger, bound)];
}

function plungers(ledger: Ledger): Block[] {
  const cold = ledger.texts.get('machine.chamber') === 'cold';
  return tableBlock(
    'Plungers of the machine on this die, shot valve as planned',
    [
      'Plunger',
      'Static pressure',
      'Dry-shot flow',
      'Flow at the crossing',
      'Gate velocity there',
      'Plunger speed there',
      'Plunger speed of the plan',
      'To be planned at most',
      cold ? 'Metal pressure, intensified' : 'Metal pressure, as it fills',
      ...(cold ? ['Sleeve fill'] : []),
      'Verdict',
    ],
    plungerItems(ledger).map((item) => [
      ...PLUNGER_COLUMNS.map((id) => cell(ledger, id, item)),
      ...(cold ? [cell(ledger, 'pq2.plunger-sleeve-fill', item)] : []),
      textCell(ledger, 'pq2.plunger-verdict', item),
    ]),
  );
}

const PLUNGER_COLUMNS: readonly ValueId[] = [
  'pq2.plunger-diameter',
  'pq2.plunger-static-pressure',
  'pq2.plunger-dry-flow',
  'pq2.plunger-flow',
  'pq2.plunger-velocity',
  'pq2.plunger-speed',
  'pq2.plunger-planned-speed',
  'pq2.plunger-available',
  'pq2.plunger-metal-pressure',
];
