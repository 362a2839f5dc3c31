import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell } from '../../step.ts';

/** When something is measured, by the verdict on its tolerance. Words of the trade; the plant's control plan replaces them. */
const WHEN: Readonly<Record<string, string>> = {
  holds: 'first castings, then once a shift',
  precision: 'first castings, then every hour',
  'machine it': 'after machining, as the machining needs it',
  ream: 'after reaming, as the reamer needs it',
  machined: 'after machining, as the tool needs it',
  'not asked': 'first castings',
};
const FIRST = 'first castings, after a stop and after a change of setting';

/** Files when each dimension and each hole is measured. */
export function inspection(ledger: Ledger): void {
  for (const { id, at } of ledger.part.dimensions) {
    const verdict = ledger.texts.get(`tolerance.verdict[${id}]`) ?? 'not asked';
    ledger.setText('finish.dimension-check', WHEN[verdict] ?? FIRST, { item: id, at });
  }
  for (const { id, thread, at } of ledger.part.holes) {
    const drilled = ledger.texts.get(`hole.making[${id}]`) === 'drilled';
    const verdict = ledger.texts.get(`tolerance.hole-verdict[${id}]`) ?? 'not asked';
    const when = drilled || thread !== undefined ? 'after machining, as the tool needs it' : (WHEN[verdict] ?? FIRST);
    ledger.setText('finish.hole-check', when, { item: id, at });
  }
}

/** What is looked at, how, against what, and how often. */
export function showInspection(ledger: Ledger): Block[] {
  const rows = [...casting(ledger), ...dimensions(ledger), ...holes(ledger), ...soundness(ledger)];
  return [
    ...tableBlock('Inspection', ['What', 'How', 'Against', 'Plus-minus', 'How often'], rows),
    textBlock('The intervals are usual ones; the control plan of the plant and the agreement with the buyer replace them.'),
  ];
}

function casting(ledger: Ledger): Cell[][] {
  const plated = ledger.texts.get('quality.use') === 'plated';
  const pressed = (ledger.texts.get('finish.press-drive') ?? 'no press') !== 'no press';
  return [
    ['Melt', 'sample in the spectrometer', textCell(ledger, 'alloy.id'), '–', 'every charge, and once a shift'],
    ['First casting', 'every dimension of the drawing', 'drawing', 'drawing', 'new die, and after work on the die'],
    ['Mass of the casting', 'weighed', cell(ledger, 'part.mass'), '–', FIRST],
    ['Surface', plated ? 'by eye, under a lamp, before plating' : 'by eye', textCell(ledger, 'quality.finish'), '–', plated ? 'every casting' : 'once an hour'],
    [
      'Gate and flash left',
      'by eye, caliper',
      pressed ? cell(ledger, 'finish.die-trim') : 'sample agreed with the buyer',
      '–',
      'start of shift, and after work on the trim die',
    ],
    ['Marks and flash of ejector pins', 'by eye, depth gauge', 'drawing', '–', 'start of shift'],
    ...ledger.part.inserts.map(({ id }): Cell[] => [`Insert ${id}`, 'seat and grip by hand', 'drawing', '–', 'every casting']),
  ];
}

function dimensions(ledger: Ledger): Cell[][] {
  return ledger.part.dimensions.map(({ id }): Cell[] => [
    `Dimension ${id}`,
    'height gauge or measuring machine',
    cell(ledger, 'dimension.nominal', id),
    cell(ledger, 'dimension.tolerance', id),
    textCell(ledger, 'finish.dimension-check', id),
  ]);
}

function holes(ledger: Ledger): Cell[][] {
  return ledger.part.holes
    .filter((hole) => hole.thread !== undefined || hole.tolerance !== undefined)
    .map(({ id, thread }): Cell[] => [
      `Hole ${id}`,
      thread === undefined ? 'plug gauge, go and not go' : 'thread gauge, go and not go',
      thread === undefined ? cell(ledger, 'hole.diameter', id) : textCell(ledger, 'hole.thread', id),
      cell(ledger, 'hole.tolerance', id),
      textCell(ledger, 'finish.hole-check', id),
    ]);
}

/** Pores and leaks: where the use asks for it at every casting, else by sample. */
function soundness(ledger: Ledger): Cell[][] {
  const use = ledger.texts.get('quality.use');
  const strict = use === 'pressure-tight' || use === 'structural' || ledger.texts.get('porosity.need') === 'little-gas';
  const spot = ledger.values.has('part.wall-greatest') ? cell(ledger, 'part.wall-greatest') : cell(ledger, 'part.wall-nominal');
  const section = strict ? 'X-ray, and a cut section' : 'a cut section';
  return [
    ['Pores at the thickest wall', section, spot, '–', strict ? `${FIRST}, then once a shift` : FIRST],
    ...(use === 'pressure-tight'
      ? [['Leaks', 'air under pressure, in the test fixture', textCell(ledger, 'finish.leak-rate'), '–', 'every casting, after machining'] as Cell[]]
      : []),
    ...(ledger.values.has('finish.blister-least') ? [['Blisters', 'sample heated for the blister test', 'none on the skin', '–', FIRST] as Cell[]] : []),
  ];
}
