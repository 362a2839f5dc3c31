import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { tableBlock, textBlock, valuesBlock } from '../../step.ts';
import { freezingFigure } from './figure.ts';

export function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('cooling.ejection-time')) return [];
  const cold = ledger.texts.get('machine.chamber') === 'cold';
  return [
    textBlock(
      'Each section is frozen and cooled by a heat solution across half its thickness: heat content over temperature, latent heat over the freezing range, conduction in metal and steel, and a coefficient at the face that falls when the section is solid and shrinks away. The die begins at its planned temperature. ',
      'The coefficient is known least of all, so the nominal wall is given for both ends of its range too.',
    ),
    ...tableBlock('Sections', ['Section', 'Counts as a wall of', 'Must be', 'After'], sections(ledger, cold)),
    textBlock(
      !cold
        ? 'The gate does not count for the time in the die.'
        : 'The gate does not count for the time in the die. Its time is longer than the published freezing times that the rise of the pressure is planned with: those are on the safe side for the rise, and a coefficient that peaks in the first milliseconds, as measured, shortens this one.',
    ),
    textBlock('The time in the die is set by: ', { decision: 'solidification.governs' }, '.'),
    ...valuesBlock(ledger, [
      'cooling.dwell',
      'cooling.opening-temperature',
      'cooling.thick-opening-temperature',
      'cooling.eject-temperature',
      'cooling.ejection-time-fast',
      'cooling.ejection-time-slow',
      'cooling.interface',
      'cooling.interface-gap',
      'cooling.steel-conductivity',
    ]),
    ...(cold && ledger.values.has('cooling.tip-temperature')
      ? [
          textBlock(
            'The biscuit counts as a wall of equal volume over surface, frozen from a cooled copper tip on one face and from steel on the other. With a steel tip, or one that is not cooled, it takes the time between two faces of steel. A die that opens before the biscuit is solid throws hot metal.',
          ),
          ...valuesBlock(ledger, ['cooling.biscuit-steel-time', 'cooling.biscuit-tip-time', 'cooling.tip-temperature']),
        ]
      : []),
    textBlock(
      'Beside the heat solution: the handbook form with the wall squared, the time in the die that handbooks give for the wall, and two exact bounds of the freezing time. What holds the heat back is: ',
      { decision: 'solidification.limit' },
      '.',
    ),
    ...valuesBlock(ledger, [
      'cooling.handbook-time',
      'cooling.handbook-thick',
      'cooling.retention-least',
      'cooling.retention-greatest',
      'cooling.solidification-time',
      'cooling.interface-time',
      'cooling.contact-time',
    ]),
    ...freezingFigure(ledger),
  ];
}

function sections(ledger: Ledger, cold: boolean): Cell[][] {
  const rows: (readonly [string, string, string, string])[] = [
    ['Nominal wall', 'part.wall-nominal', 'at its ejection temperature', 'cooling.ejection-time'],
    ['Thickest wall', 'part.wall-greatest', 'solid to the middle', 'cooling.thick-time'],
    ['Gate', 'gate.thickness', 'solid to the middle', 'cooling.gate-time'],
    ['Overflow', 'overflow.wall', 'solid to the middle', 'cooling.overflow-time'],
    [`Runner: ${ledger.texts.get('cooling.runner-run') ?? ''}`, 'cooling.runner-wall', 'solid to the middle', 'cooling.runner-time'],
    ...(cold ? [['Biscuit', 'cooling.biscuit-wall', 'solid to the middle', 'cooling.biscuit-time'] as const] : []),
  ];
  return rows
    .filter(([, wall, , time]) => ledger.values.has(wall) && ledger.values.has(time))
    .map(([name, wall, must, time]) => [name, { value: wall }, must, { value: time }]);
}
