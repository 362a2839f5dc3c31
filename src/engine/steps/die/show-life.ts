import type { Ledger } from '../../ledger.ts';
import type { Block } from '../../plan.ts';
import { cell, tableBlock, textBlock, valuesBlock } from '../../step.ts';

/** Life, heat checking and preheat. */
export function showLife(ledger: Ledger): Block[] {
  return [...showShots(ledger), ...showHeatCheck(ledger), ...showPreheat(ledger)];
}

function showShots(ledger: Ledger): Block[] {
  if (!ledger.values.has('die.life')) return [];
  return [
    textBlock(
      'Shots that a set lasts are published as an average, as a maximum and as a range, and they disagree; the plan takes the average. Cavities end by heat checking, cores wear out sooner and are changed as loose pieces.',
    ),
    ...tableBlock(
      'Die life',
      ['', 'Shots', 'Sets over the life of the part'],
      [
        ['Cavities, average', cell(ledger, 'die.life'), cell(ledger, 'die.sets')],
        ['Cavities, maximum of the table of component materials', cell(ledger, 'die.life-table'), cell(ledger, 'die.sets-table')],
        ['Cavities by a steelmaker, low end', cell(ledger, 'die.life-least'), cell(ledger, 'die.sets-greatest')],
        ['Cavities by a steelmaker, high end', cell(ledger, 'die.life-greatest'), cell(ledger, 'die.sets-least')],
        ['Cores by a steelmaker, low end', cell(ledger, 'die.core-life-least'), cell(ledger, 'die.core-sets-greatest')],
        ['Cores by a steelmaker, high end', cell(ledger, 'die.core-life-greatest'), cell(ledger, 'die.core-sets')],
      ],
    ),
    ...valuesBlock(ledger, ['die.life', 'die.shots-needed', 'die.sets', 'die.sets-least', 'die.sets-greatest']),
  ];
}

function showHeatCheck(ledger: Ledger): Block[] {
  if (!ledger.values.has('die.heat-check-index')) return [];
  return [
    textBlock(
      'At every shot the surface is heated and held in its place by the cold steel below. The stress of that swing over the yield strength of the hot steel is an index: above ',
      { value: 'die.heat-check-early' },
      ' early checking is reckoned with. It compares dies and settings; no law from it to shots was found. A warmer die before the shot, cooling by lines instead of cold spray, less superheat, slower gates that do not strike a core, and steel that is stronger when hot lower it.',
    ),
    ...valuesBlock(ledger, [
      'heat.surface-swing',
      'heat.surface-peak',
      'die.surface-modulus',
      'die.surface-expansion',
      'die.thermal-stress',
      'die.hot-yield',
      'die.heat-check-index',
      'die.swing-for-index',
    ]),
  ];
}

function showPreheat(ledger: Ledger): Block[] {
  if (!ledger.values.has('die.preheat')) return [];
  return [
    textBlock(
      'Bring the die to ',
      { value: 'die.preheat' },
      ' (',
      { value: 'die.preheat-least' },
      ' to ',
      { value: 'die.preheat-greatest' },
      ') before the first shot, with: ',
      ...(ledger.texts.has('die.preheat-by') ? [{ decision: 'die.preheat-by' } as const] : ['heaters, or a unit whose coolant gets so hot']),
      '. Both halves, slides and cores evenly and slowly, with the die closed; water stays shut off where heaters do it. A flame heats edges and softens them; heating by shots starts the heat checks. Warm it again after a long stop, and let no water stand in it when the first metal comes.',
    ),
  ];
}
