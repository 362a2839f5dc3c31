import {
  boreArea,
  channelDiameter,
  flowSpeed,
  greatestUse,
  potSuperheat,
  shotArea,
  useOfClassPressure,
  useOfSpeed,
  useOfStroke,
  useOfTime,
} from '../../physics/gooseneck.ts';
import type { Ledger } from '../ledger.ts';
import type { Cell } from '../plan.ts';
import { cell, type Step, tableBlock, textBlock, textCell, valuesBlock } from '../step.ts';
import type { ValueId } from '../vocabulary/index.ts';

/** Each bound of the shot: in words, its use, what is planned and the most there is. */
const BOUNDS: readonly (readonly [string, ValueId, ValueId, ValueId])[] = [
  ['plunger speed', 'gooseneck.use-speed', 'pot.plunger-speed', 'shot.speed-available'],
  ['pressure while filling', 'pq2.machine-use', 'pq2.pressure', 'pq2.pressure-left'],
  ['pressure on the full die', 'gooseneck.use-class-pressure', 'clamp.pressure-least', 'machine.metal-pressure'],
  ['shot stroke', 'gooseneck.use-stroke', 'pot.stroke-needed', 'machine.shot-stroke'],
  ['fill time', 'gooseneck.use-time', 'fill.time', 'fill.longest-time'],
];

/** The way of the metal from the plunger in the pot to the gates of a hot chamber, its temperatures, and what limits the shot. */
export const gooseneckStep: Step = {
  id: 'gooseneck',
  title: 'Gooseneck and nozzle',
  work: (ledger) => {
    if (ledger.texts.get('machine.chamber') !== 'hot') return;
    const attempt = ledger.attempt.bind(ledger);
    attempt('gooseneck.channel-area', 'Areas from plunger to gate', () => areas(ledger));
    attempt('gooseneck.superheat', 'Temperatures of pot and nozzle', () => temperatures(ledger));
    attempt('gooseneck.greatest-use', 'Nearest bound of the shot', () => bounds(ledger));
  },
  show: (ledger) => {
    if (!ledger.values.has('gooseneck.plunger-area')) return [];
    return [
      textBlock(
        'The area falls from the gooseneck through the nozzle and the runners to the gates, so that the stream stays closed; the pressure of the fill phase stands on the metal to the end, as there is no intensifier.',
      ),
      ...tableBlock(
        'Areas and speeds',
        ['Section', 'Area', 'Bore', 'Speed of the metal'],
        [
          row(ledger, 'Plunger', 'gooseneck.plunger-area', 'machine.plunger', 'pot.plunger-speed'),
          row(ledger, 'Gooseneck channel, least', 'gooseneck.channel-area', 'gooseneck.channel-diameter', 'gooseneck.channel-speed'),
          row(ledger, 'Nozzle, least', 'gooseneck.nozzle-area', 'pot.nozzle-diameter', 'gooseneck.nozzle-speed'),
          row(ledger, 'Main runner, foot of the sprue', 'gooseneck.main-area', undefined, 'gooseneck.main-speed'),
          row(ledger, 'Runners at the gates', 'gooseneck.runner-area', undefined, 'gooseneck.runner-speed'),
          row(ledger, 'Gates', 'pq2.gate-area', undefined, 'gate.velocity'),
        ],
      ),
      textBlock(
        'Gooseneck and nozzle come with the machine: hold their bores against these before the die is drawn. Where they are narrower, they and not the gates are the throat of the shot; they take the pressure that is planned for the gates, and the fill is slower than the lines of pressure and flow say.',
      ),
      ...(ledger.values.has('gooseneck.nozzle-least')
        ? [
            textBlock(
              'The nozzle is kept between ',
              { value: 'gooseneck.nozzle-least' },
              ' (colder, metal freezes in it between shots) and ',
              { value: 'gooseneck.nozzle-greatest' },
              ' (hotter, it drips); a setting of its own is published nowhere that was read.',
            ),
          ]
        : []),
      ...valuesBlock(ledger, ['pot.temperature', 'gooseneck.superheat', 'fill.temperature-loss', 'fill.gate-temperature']),
      ...tableBlock(
        'Bounds of the shot',
        ['Bound', 'Planned', 'At most', 'Use'],
        BOUNDS.filter(([, use]) => ledger.values.has(use)).map(([name, use, planned, bound]): Cell[] => [
          name,
          cell(ledger, planned),
          cell(ledger, bound),
          cell(ledger, use),
        ]),
      ),
      ...(ledger.texts.has('gooseneck.nearest-bound')
        ? [
            textBlock(
              'What limits the shot: ',
              textCell(ledger, 'gooseneck.nearest-bound'),
              ', with ',
              { value: 'gooseneck.greatest-use' },
              ' of what is there.',
            ),
          ]
        : []),
    ];
  },
};

function row(ledger: Ledger, name: string, area: ValueId, bore: ValueId | undefined, speed: ValueId): Cell[] {
  return [name, cell(ledger, area), bore === undefined ? '–' : cell(ledger, bore), cell(ledger, speed)];
}

function areas(ledger: Ledger): void {
  const cavities = ledger.value('machine.cavities');
  const flow = ledger.value('shot.flow');
  ledger.apply(boreArea, { diameter: ledger.value('machine.plunger') }, { id: 'gooseneck.plunger-area' });
  const nozzle = ledger.value('pot.nozzle-diameter');
  const channel = ledger.apply(channelDiameter, { nozzle, ratio: ledger.value('pot.nozzle-ratio') });
  const sections = [
    [ledger.apply(boreArea, { diameter: channel }, { id: 'gooseneck.channel-area' }), 'gooseneck.channel-speed'],
    [ledger.apply(boreArea, { diameter: nozzle }, { id: 'gooseneck.nozzle-area' }), 'gooseneck.nozzle-speed'],
    [ledger.put(ledger.value('runner.main-area').as('gooseneck.main-area')), 'gooseneck.main-speed'],
    [ledger.apply(shotArea, { cavities, area: ledger.value('runner.area') }, { id: 'gooseneck.runner-area' }), 'gooseneck.runner-speed'],
  ] as const;
  for (const [area, id] of sections) ledger.apply(flowSpeed, { flow, area }, { id });
}

function temperatures(ledger: Ledger): void {
  const family = ledger.alloy.family;
  ledger.lookIfAny('pot/pressure', 'least', { family }, 'gooseneck.pressure-least');
  ledger.lookIfAny('pot/pressure', 'greatest', { family }, 'gooseneck.pressure-greatest');
  const pot_temperature = ledger.value('pot.temperature');
  const liquidus = ledger.value('alloy.liquidus');
  ledger.apply(potSuperheat, { pot_temperature, liquidus });
  ledger.put(liquidus.as('gooseneck.nozzle-least', 'the liquidus: below it metal freezes in the nozzle between shots'));
  ledger.put(pot_temperature.as('gooseneck.nozzle-greatest', 'the pot temperature: a hotter nozzle only drips'));
}

/** The use of every bound; the nearest is known when all are. Pressure while filling was worked out on the line of the machine. */
function bounds(ledger: Ledger): void {
  const speed = ledger.apply(useOfSpeed, { planned: ledger.value('pot.plunger-speed'), bound: ledger.value('shot.speed-available') });
  const class_pressure = ledger.apply(useOfClassPressure, { planned: ledger.value('clamp.pressure-least'), bound: ledger.value('machine.metal-pressure') });
  const stroke = ledger.apply(useOfStroke, { planned: ledger.value('pot.stroke-needed'), bound: ledger.value('machine.shot-stroke') });
  const time = ledger.apply(useOfTime, { planned: ledger.value('fill.time'), bound: ledger.value('fill.longest-time') });
  const greatest = ledger.apply(greatestUse, { speed, machine: ledger.value('pq2.machine-use'), class_pressure, stroke, time });
  const nearest = BOUNDS.find(([, use]) => ledger.values.get(use)?.value === greatest.value);
  if (nearest !== undefined) ledger.setText('gooseneck.nearest-bound', nearest[0]);
}
