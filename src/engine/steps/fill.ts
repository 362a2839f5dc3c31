import { Refusal } from '../../kernel/apply.ts';
import { Traced } from '../../kernel/traced.ts';
import { longestFillTime, recommendedFillTime } from '../../physics/fill.ts';
import { gateTemperature, plannedFillTime, solidsAllowed } from '../../physics/fill-plan.ts';
import { choose } from '../choose.ts';
import { type Ledger, Missing } from '../ledger.ts';
import type { Cell } from '../plan.ts';
import { assumeUsual, orPinned } from '../planned.ts';
import { type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';

/**
 * Temperatures of metal and die, the longest and the recommended fill time, and the time planned between them. The kind
 * of machine is decided before, because a hot chamber loses less on the way to the gate.
 */
export const fillStep: Step = {
  id: 'fill',
  title: 'Fill time',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    attempt('fill.demand', 'Demand on the surface', () => choose(ledger, 'fill.demand'));
    attempt('fill.wall', 'Wall that sets the longest fill time', () => fileWall(ledger));
    attempt('fill.group', 'Group of fill constants', () => group(ledger));
    attempt('fill.gate-temperature', 'Metal temperature at the gate', () => metalTemperature(ledger));
    attempt('fill.die-temperature', 'Die surface temperature', () => dieTemperature(ledger));
    attempt('fill.longest-time', 'Longest fill time', () => longestTime(ledger));
    attempt('fill.recommended-time', 'Recommended fill time', () =>
      ledger.apply(recommendedFillTime, {
        wall: ledger.value('part.wall-nominal'),
        gate_temperature: ledger.value('fill.gate-temperature'),
        liquidus: ledger.value('alloy.liquidus'),
        die_temperature: ledger.value('fill.die-temperature'),
      }),
    );
    attempt('fill.time', 'Planned fill time', () => orPinned(ledger, 'fill.time', () => plannedTime(ledger)));
    bands(ledger);
  },
  show,
};

function fileWall(ledger: Ledger): void {
  const least = ledger.maybe('part.wall-least');
  if (least !== undefined) ledger.put(least.as('fill.wall', 'the least wall: the metal freezes there first'));
  else ledger.put(ledger.value('part.wall-nominal').as('fill.wall', 'the nominal wall, because no least wall is given'));
}

function group(ledger: Ledger): void {
  fileSilicon(ledger);
  try {
    choose(ledger, 'fill.group');
  } catch (error) {
    if (!(error instanceof Missing) || error.id !== 'fill.group') throw error;
    const { family } = ledger.alloy;
    throw new Refusal('table/no-figure', `no fill constants are published for ${family} alloys`, 'agree on a fill time with the die caster and pin fill.time');
  }
}

/** Silicon by the middle of its limits; an alloy whose composition does not name it has none worth counting. */
function fileSilicon(ledger: Ledger): void {
  const { composition, id } = ledger.alloy;
  const [least, greatest] = composition.limits['Si'] ?? [null, null];
  if (least === null && greatest === null) {
    ledger.assume('fill.silicon', 0, '%', { note: 'the composition names no silicon', status: composition.status, source: composition.source });
    return;
  }
  const middle = ((least ?? 0) + (greatest ?? least ?? 0)) / 2;
  ledger.put(
    Traced.table('fill.silicon', middle, '%', { table: `alloy ${id}`, source: composition.source, status: composition.status, note: 'middle of the limits' }),
  );
}

function metalTemperature(ledger: Ledger): void {
  const family = ledger.alloy.family;
  const hot = ledger.text('machine.kind') === 'hot-chamber';
  ledger.put(hot ? potTemperature(ledger) : ledger.value('alloy.casting-temperature').as('fill.holding-temperature', MIDDLE));
  const inPot = hot ? ledger.lookIfAny('pot/loss', 'used', { family }, 'fill.temperature-loss') : undefined;
  // A hot chamber pinned for a family that is not cast in one still gets a plan to look at, with the least loss of a ladle.
  if (inPot === undefined) ledger.look('furnace/loss', hot ? 'least' : 'used', {}, 'fill.temperature-loss');
  ledger.apply(gateTemperature, { holding_temperature: ledger.value('fill.holding-temperature'), loss: ledger.value('fill.temperature-loss') });
  const group = ledger.text('fill.group');
  ledger.look('fill/flow', 'gate_least', { group }, 'fill.gate-temperature-least');
  ledger.look('fill/flow', 'gate_greatest', { group }, 'fill.gate-temperature-greatest');
}

const MIDDLE = 'middle of the casting temperatures of the alloy';

/** The pot holds the middle of the alloy's range too, but no hotter and no colder than pots of the family are run. */
function potTemperature(ledger: Ledger): Traced<'degC'> {
  const id = 'fill.holding-temperature';
  const { family } = ledger.alloy;
  const middle = ledger.value('alloy.casting-temperature');
  const least = ledger.lookIfAny('pot/shot', 'melt_least', { family }, 'pot.temperature-least');
  const greatest = ledger.lookIfAny('pot/shot', 'melt_greatest', { family }, 'pot.temperature-greatest');
  const bound = least !== undefined && middle.value < least.value ? least : greatest !== undefined && middle.value > greatest.value ? greatest : undefined;
  if (bound === undefined) return middle.as(id, MIDDLE);
  const end = bound === least ? 'least' : 'greatest';
  return Traced.choice(id, bound.value, 'degC', { note: `${MIDDLE}, brought to the ${end} usual in pots`, status: 'practice', parents: [middle, bound] });
}

function dieTemperature(ledger: Ledger): void {
  const family = ledger.alloy.family;
  ledger.look('die/temperature', 'typical', { family }, 'fill.die-temperature');
  ledger.look('die/temperature', 'least', { family }, 'fill.die-temperature-least');
  ledger.look('die/temperature', 'greatest', { family }, 'fill.die-temperature-greatest');
}

function longestTime(ledger: Ledger): void {
  const family = ledger.alloy.family;
  const group = ledger.text('fill.group');
  const wall = ledger.value('fill.wall');
  const least = ledger.look('fill/solids', 'least', { family, wall }, 'fill.solids-least');
  const greatest = ledger.look('fill/solids', 'greatest', { family, wall }, 'fill.solids-greatest');
  const position = ledger.look('fill/demand', 'position', { demand: ledger.text('fill.demand') }, 'fill.solids-position');
  const given = {
    k: ledger.look('fill/steel-constant', 'k', { pair: family }, 'fill.steel-constant'),
    gate_temperature: ledger.value('fill.gate-temperature'),
    flow_temperature: ledger.look('fill/flow', 'flow_temperature', { group }, 'fill.flow-temperature'),
    die_temperature: ledger.value('fill.die-temperature'),
    solids: ledger.apply(solidsAllowed, { least, greatest, position }),
    conversion: ledger.look('fill/flow', 'conversion', { group }, 'fill.conversion'),
  };
  ledger.apply(longestFillTime, { wall, ...given });
  // What the time would be without the thin spot, for the note on it.
  const nominal = ledger.value('part.wall-nominal');
  if (nominal.value > wall.value) ledger.apply(longestFillTime, { wall: nominal, ...given }, { id: 'fill.longest-by-nominal', aside: true });
}

function plannedTime(ledger: Ledger): Traced<'ms'> {
  const axes = { demand: ledger.text('fill.demand'), wall: ledger.value('fill.wall') };
  const usual = ledger.look('fill/time-share', 'share', axes, 'fill.time-share-usual');
  const ceiling = ledger.look('fill/time-share', 'ceiling', axes, 'fill.time-ceiling');
  const share = assumeUsual(
    ledger,
    'fill.time-share',
    usual,
    'planning rule: near the recommended time for thin walls and good surfaces, nearer the longest for thick and plain ones',
  );
  const recommended = ledger.value('fill.recommended-time');
  const longest = ledger.value('fill.longest-time');
  ledger.setText('fill.time-rule', recommended.value <= longest.value ? 'between' : 'longest');
  return ledger.apply(plannedFillTime, { recommended, longest, share, ceiling });
}

/** Fill times of older tables, to hold the planned one against; none beyond the walls that they print. The widest end is what is judged. */
function bands(ledger: Ledger): void {
  const wall = ledger.value('part.wall-nominal');
  const ends: Traced<'ms'>[] = [];
  for (const name of ['frommer', 'handbook'] as const) {
    const table = ledger.rulebook.tables[`fill/${name}`];
    const printed = table?.rows.map((row) => row.at['wall'] as number) ?? [];
    if (wall.value < Math.min(...printed) || wall.value > Math.max(...printed)) continue;
    ledger.look(`fill/${name}`, 'least', { wall }, `fill.${name}-least`);
    ends.push(ledger.look(`fill/${name}`, 'greatest', { wall }, `fill.${name}-greatest`));
  }
  if (ends.length > 0) ledger.put(ends.reduce((a, b) => (b.value > a.value ? b : a)).as('fill.older-greatest', 'the longer of the older tables'));
}

function show(ledger: Ledger): ReturnType<Step['show']> {
  const blocks = [
    ...valuesBlock(ledger, [
      'fill.holding-temperature',
      'fill.temperature-loss',
      'fill.gate-temperature',
      'fill.die-temperature',
      'fill.flow-temperature',
      'fill.wall',
      'fill.solids',
      'fill.longest-time',
      'fill.recommended-time',
      ...(ledger.texts.get('fill.time-rule') === 'longest' ? (['fill.time-ceiling'] as const) : (['fill.time-share'] as const)),
      'fill.time',
    ]),
    ...tableBlock(
      'Fill times by wall from older tables, for comparison',
      ['Table', 'Least', 'Greatest'],
      [...row(ledger, 'Older table, all alloys', 'frommer'), ...row(ledger, 'Chinese handbooks, by mean wall', 'handbook')],
    ),
  ];
  if (blocks.length === 0) return [];
  const decided = ledger.decisions.has('fill.demand') && ledger.decisions.has('fill.group');
  return [
    textBlock(
      'The longest time is the limit: after it the metal that arrives last holds too many solids. The recommended time is what a good casting likes. They come from two different rules and are not averaged: the planned time lies a stated share of the way from the recommended to the longest.',
    ),
    ...(ledger.texts.get('fill.time-rule') === 'longest'
      ? [
          textBlock(
            'Here the recommended time, by the mean wall and temperatures of its own, comes out above the longest, by the thinnest wall: the longest rules, and a share of it is planned. More time takes a thicker thin spot, a hotter die or hotter metal.',
          ),
        ]
      : []),
    ...(decided ? [textBlock('Demand on the surface: ', { decision: 'fill.demand' }, '. Fill constants: ', { decision: 'fill.group' }, '.')] : []),
    ...blocks,
  ];
}

function row(ledger: Ledger, label: string, name: 'frommer' | 'handbook'): Cell[][] {
  const [least, greatest] = [`fill.${name}-least`, `fill.${name}-greatest`];
  return ledger.values.has(least) ? [[label, { value: least }, { value: greatest }]] : [];
}
