import type { Ledger } from '../ledger.ts';
import type { Block, Cell } from '../plan.ts';
import { cell, type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';
import { costStep } from '../steps/cost/index.ts';
import { layoutFigure } from '../steps/die/figure.ts';
import { showReturn } from '../steps/ejection/show-pins.ts';
import type { ValueId } from '../vocabulary/index.ts';

type Shown = Pick<Step, 'id' | 'title' | 'show'>;

/** The castings of the shot side by side: what each is, what it alone would have, and what it has in this die. */
export const castingsSection: Shown = { id: 'set', title: 'Castings of the shot', show: showCastings };

function members(ledger: Ledger): readonly string[] {
  return ledger.items('set.count');
}

function table(ledger: Ledger, title: string, columns: readonly (readonly [string, ValueId])[]): Block[] {
  const known = columns.filter(([, id]) => ledger.items(id).length > 0);
  const rows = members(ledger).map((part): Cell[] => [part, ...known.map(([, id]) => cell(ledger, id, part))]);
  return tableBlock(title, ['Part', ...known.map(([name]) => name)], rows);
}

function showCastings(ledger: Ledger): Block[] {
  return [
    textBlock(
      'A shot fills ',
      { value: 'set.castings' },
      ' castings of ',
      { value: 'set.parts' },
      ' parts. They are planned together as one set: where a section of this plan says part, casting or cavity, it is the set of all of them; what holds for one casting stands in the plan of its part.',
    ),
    ...table(ledger, 'The castings', [
      ['In a shot', 'set.count'],
      ['Volume', 'set.volume'],
      ['Mass', 'set.mass'],
      ['Projected area', 'set.area'],
      ['Depth of draw', 'set.depth'],
      ['Least wall', 'set.wall-least'],
      ['Nominal wall', 'set.wall'],
      ['Greatest wall', 'set.wall-greatest'],
      ['Class of pressure', 'set.pressure'],
    ]),
    textBlock(
      'All castings share one fill time, and one pressure drives the metal through all gates at one velocity. So each gate has an area in proportion to the metal that goes through it, and the run of the runner that leads to it likewise: then all castings are full at the same moment, and none is packed while another still fills.',
    ),
    ...valuesBlock(ledger, ['fill.time', 'gate.velocity', 'gate.area']),
    ...table(ledger, 'Fill', [
      ['Longest time', 'set.longest-time'],
      ['Recommended time', 'set.recommended-time'],
      ['Planned for the part alone', 'set.own-time'],
      ['Flow volume of one', 'set.flow-volume'],
      ['Share of all in the flow', 'set.flow-share'],
    ]),
    ...table(ledger, 'Gate and runner of one casting', [
      ['Gate area', 'set.gate-area'],
      ['Gate thickness', 'set.gate-thickness'],
      ['Gate width', 'set.gate-width'],
      ['Runner area', 'set.runner-area'],
      ['Way from the middle', 'set.run-length'],
      ['Overflows', 'set.overflow'],
    ]),
    textBlock(
      'The ways are those of the layout and differ; a longer run takes a little longer to fill before its gate is reached. The die maker evens the lengths out where the block allows, and the first shots show what is left to correct at the gates.',
    ),
    ...valuesBlock(ledger, ['set.fill-ratio', 'set.wall-ratio', 'set.volume-ratio', 'set.slides-between']),
    textBlock(
      'Castings stand in rows, turned so that as few slides as can be lie between them, in the smallest die that this gives; of layouts alike in that, the one with its pressure centre nearest to the middle. Places are measured from the middle of the castings.',
    ),
    ...valuesBlock(ledger, [
      'set.field-width',
      'set.field-height',
      'set.centre-x',
      'set.centre-y',
      'set.offset-x',
      'set.offset-y',
      'clamp.off-centre-capacity',
    ]),
    ...table(ledger, 'Middle of the castings of each part', [
      ['Across', 'set.place-x'],
      ['Upright', 'set.place-y'],
    ]),
    ...layoutFigure(ledger),
    ...showDemand(ledger),
    textBlock(
      'One cavity that makes scrap must not stop the others: its runner is blocked, and the shot, the locking force and the balance of the runner change with it. Plan that case with the die file, with a count less, before it happens.',
    ),
  ];
}

function showDemand(ledger: Ledger): Block[] {
  const rows = table(ledger, 'Demand', [
    ['Needed a year', 'set.needed'],
    ['Shots that this needs', 'set.sets-needed'],
    ['Made and not needed', 'set.surplus'],
    ['Of those made', 'set.surplus-share'],
  ]);
  if (rows.length === 0 || !ledger.values.has('production.per-year')) return [];
  return [
    textBlock(
      'The part that needs the most shots decides: ',
      { value: 'production.per-year' },
      ' good sets a year. Castings of the others that nobody needs go back into the pot, or their runner is blocked.',
    ),
    ...rows,
  ];
}

/** The force that trims the whole shot; what is sheared of each casting stands in the plan of its part. */
export const trimmingSection: Shown = {
  id: 'finish',
  title: 'Trimming of the shot',
  show: (ledger) => {
    const values = valuesBlock(ledger, [
      'finish.shot-section',
      'finish.shear-strength',
      'finish.factor',
      'finish.trim-force',
      'finish.room-width',
      'finish.room-height',
      'finish.stroke-needed',
      'finish.press',
      'finish.press-width',
      'finish.press-height',
      'finish.press-stroke',
    ]);
    const press = ledger.decisions.has('finish.press-model') ? (['. Press: ', { decision: 'finish.press-model' }] as const) : [];
    if (values.length === 0) return [];
    return [textBlock('Gates, overflows and flash of all castings come off together: ', { decision: 'finish.trimming' }, ...press, '.'), ...values];
  },
};

/** The sums of what the plans of the parts have of ejection. */
export const ejectionSection: Shown = {
  id: 'ejection',
  title: 'Ejection',
  show: (ledger) => {
    const values = valuesBlock(ledger, [
      'ejection.contact-area',
      'ejection.force-low',
      'ejection.force',
      'ejection.force-high',
      'machine.ejector-force',
      'ejection.force-use',
      'ejection.force-use-high',
      'ejection.cover-force',
      'ejection.stroke',
      'machine.ejector-stroke',
      'ejection.pins',
    ]);
    if (values.length === 0) return [];
    return [
      textBlock(
        'Forces and pins of each part stand in its plan, at the temperature at which this die opens; here they are added up. One ejector plate serves all castings, so the longest stroke is that of all.',
      ),
      ...values,
      ...table(ledger, 'Of one casting', [
        ['Ejection force', 'set.ejection-force'],
        ['Ejector pins', 'set.pins'],
      ]),
      ...showReturn(ledger),
    ];
  },
};

/** Where the metal goes and what a set costs, as in any plan, and what of it each casting bears. */
export const costSection: Shown = {
  id: 'cost',
  title: 'Metal and money',
  show: (ledger) => {
    const rows = table(ledger, 'Cost of a good casting of each part, in the money of the plant', [
      ['Metal', 'set.cost-metal'],
      ['Casting and trimming', 'set.cost-casting'],
      ['Impregnation', 'set.cost-sealing'],
      ['Machining', 'set.cost-machining'],
      ['Dies', 'set.cost-die'],
      ['All', 'set.cost'],
    ]);
    const share: Block[] =
      rows.length === 0
        ? []
        : [
            textBlock(
              'What one casting bears of it: metal by mass, casting and trimming by the metal that flows to it, impregnation likewise among the castings that are leak-tested, machining by the features machined, dies by the hours that its cavity takes of the toolmaker. That is a rule of ours; a plant may share out otherwise, and the sum stays ',
              { value: 'cost.per-part' },
              ' for a set.',
            ),
            ...rows,
          ];
    return [...costStep.show(ledger).map((block) => ofSets(block)), ...share];
  },
};

/** The words of a plan of one part, said of a set. */
function ofSets(block: Block): Block {
  if (block.kind !== 'table') return block;
  const said = (text: string): string =>
    text
      .replaceAll('good part', 'good set')
      .replaceAll('Metal in the part', 'Metal in the castings')
      .replaceAll('what a part costs', 'what a set costs')
      .replaceAll('over the parts that', 'over the sets that')
      .replaceAll('mass of the part', 'mass of the castings')
      .replaceAll('over the same parts', 'over the same sets')
      .replace(/^casting$/, 'set');
  return {
    ...block,
    ...(block.title === undefined ? {} : { title: said(block.title) }),
    rows: block.rows.map((row) => row.map((one) => (typeof one === 'string' ? said(one) : one))),
  };
}
