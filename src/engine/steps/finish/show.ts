import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { tableBlock, textBlock, valuesBlock } from '../../step.ts';
import { showInspection } from './inspection.ts';
import { showMachining } from './machining.ts';

const DECIDED = ['finish.trimming', 'finish.press-model', 'finish.press-drive', 'finish.cooling', 'finish.heat-treatment', 'finish.impregnation'] as const;

const SHEARED = [
  'finish.gate-section',
  'finish.overflow-section',
  'finish.flash-thickness',
  'finish.flash-length',
  'finish.flash-section',
  'finish.vent-section',
  'finish.hole-section',
  'finish.cavity-section',
  'finish.shear-strength',
  'finish.factor',
  'finish.cavity-force',
  'finish.shot-section',
  'finish.trim-force',
  'finish.press',
  'finish.press-least',
  'finish.press-greatest',
  'finish.room-width',
  'finish.room-height',
  'finish.press-width',
  'finish.press-height',
  'finish.stroke-needed',
  'finish.press-stroke',
] as const;

export function show(ledger: Ledger): readonly Block[] {
  const rows = DECIDED.flatMap((id): Cell[][] => {
    const decision = ledger.decisions.get(id);
    return decision === undefined ? [] : [[decision.title, { decision: id }, decision.because]];
  });
  if (rows.length === 0) return [];
  return [
    ...tableBlock('What follows the shot', ['Step', 'Planned', 'Because'], rows),
    ...showTrimming(ledger),
    ...showCooling(ledger),
    ...showTreatment(ledger),
    ...showMachining(ledger),
    ...showSealing(ledger),
    ...showSurface(ledger),
    ...showInspection(ledger),
  ];
}

function showTrimming(ledger: Ledger): Block[] {
  const press = (ledger.texts.get('finish.press-drive') ?? 'no press') !== 'no press';
  return [
    ...(ledger.values.has('finish.trim-force')
      ? [
          textBlock(
            press
              ? 'Everything that holds the casting to the shot is sheared in one stroke. The force below is for cold metal; trimmed hot it needs less. The die and the spread of the shot often ask for a larger press than the force does.'
              : 'No press is planned; the force below is what a trim die would need, for comparison.',
          ),
        ]
      : []),
    ...valuesBlock(ledger, ledger.values.has('finish.cavity-section') ? SHEARED : []),
    ...showDrive(ledger),
    ...(press ? showLeft(ledger) : []),
  ];
}
/** Both rules stand in the plan until somebody has said how the press is driven. */
function showDrive(ledger: Ledger): Block[] {
  const decision = ledger.decisions.get('finish.press-drive');
  if (decision?.value !== 'to be asked') return [];
  return [
    ...tableBlock(
      'Ask before the press is planned: how is it driven?',
      ['Drive', 'Rules in US law'],
      decision.alternatives.map(({ value, because }) => [value, because]),
    ),
    textBlock('Pin finish.press-drive when the answer is known. See the caution on the point of operation of a trim press.'),
  ];
}

function showLeft(ledger: Ledger): Block[] {
  if (!ledger.values.has('finish.die-trim')) return [];
  return [
    textBlock(
      'A trim die cuts ',
      { value: 'finish.line-least' },
      ' to ',
      { value: 'finish.line-greatest' },
      ' outside the edge of the casting, and what is left is within ',
      { value: 'finish.die-trim' },
      '. Commercial trimming is remembered to leave ',
      { value: 'finish.thin-gate' },
      ' of a thin and ',
      { value: 'finish.thick-gate' },
      ' of a thick gate. No clearance between punch and die is published. Flash in the seams of slides does not lie in the direction of the press and is taken off by hand or in a drum.',
    ),
  ];
}

function showCooling(ledger: Ledger): Block[] {
  return valuesBlock(ledger, ['finish.leaving-mean', 'finish.handling-temperature', 'finish.quench-heat', 'finish.quench-rate']);
}

function showTreatment(ledger: Ledger): Block[] {
  if (!ledger.values.has('finish.blister-least')) return [];
  return [
    textBlock(
      'Before the series, heat sample castings to ',
      { value: 'finish.blister-least' },
      ' to ',
      { value: 'finish.blister-greatest' },
      ' for ',
      { value: 'finish.blister-time' },
      ': blisters show that the casting holds too much gas to be welded or solution treated.',
    ),
  ];
}

function showSealing(ledger: Ledger): Block[] {
  if (!ledger.values.has('finish.leakers')) return [];
  const done = ledger.values.get('finish.impregnated');
  const way = done === undefined ? 'what fails is scrapped' : done.value === 100 ? 'every casting is impregnated before it' : 'only what fails is impregnated';
  return [
    textBlock(`Machining opens pores, so the leak test comes after it and ${way}. The share below is that of one published example; the part shows its own.`),
    ...valuesBlock(ledger, ['finish.leaking', 'finish.impregnated', 'finish.leakers', 'finish.still-leaking', 'finish.lost', 'finish.leakers-left']),
  ];
}

/** What plating and paint do to a casting's skin. */
function showSurface(ledger: Ledger): Block[] {
  if (ledger.texts.get('quality.use') !== 'plated') return [];
  return [
    textBlock(
      'Plating and paint magnify faults of the surface: cold shuts, flow marks, and the mark of the gate show through. Polish within the dense skin, and put gate, overflows and ejector pins where nobody looks.',
    ),
  ];
}
