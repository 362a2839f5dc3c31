import { gasThroughStroke } from '../../../physics/solve/vent-balance.ts';
import { isBeyondRange } from '../../beyond-range.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block, Figure, FigurePoint } from '../../plan.ts';
import { cell, tableBlock, textBlock, valuesBlock } from '../../step.ts';
import { KINDS, type Kind } from './kinds.ts';

/** Where curves end: nearer to the end of the stroke the model means nothing, because the last gas is in pockets. */
const DRAWN_TO = 0.95;
/** Enough for an eye to see no corners. */
const POINTS = 40;
/** The drawing ends at this many times the highest pressure planned, or times the air; other kinds may leave it. */
const ROOM = 2;

const NAMES: Readonly<Record<Kind, string>> = { plain: 'plain vents', chill: 'chill vents', vacuum: 'vacuum' };

/** Figures of a kind that a formula with a range gives. */
const BALANCED = ['vent.kind-ratio', 'vent.kind-times', 'vent.kind-bar', 'vent.kind-left'] as const;

export function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('vent.residual-pressure')) return [];
  const kind = ledger.texts.get('vent.kind') as Kind;
  const vacuum = kind === 'vacuum';
  return [
    textBlock(
      'Per cavity. The metal is a piston that drives the gas through the vents at constant speed; the gas leaves choked or not as its pressure has it, with the friction of depth and land. Counted are cavity and overflows, within the fill time; the runner is full of metal by then. Release-agent vapour comes on top and can press far more.',
    ),
    ...valuesBlock(ledger, [
      'vent.start-pressure',
      'vent.passage-friction',
      'vent.critical-area',
      'vent.area-ratio',
      'vent.residual-pressure',
      'vent.residual-bar',
      'vent.gas-left',
      'vent.residual-greatest',
      'vent.area-for-pressure',
    ]),
    ...(ledger.values.has('vent.choke-ratio')
      ? [
          textBlock(
            'The vents planned are choked while the pressure in the cavity is more than ',
            { value: 'vent.choke-ratio' },
            ' times that behind them, and then pass ',
            { value: `vent.kind-velocity[${kind}]` },
            ' of gas as dense as that in the cavity.',
          ),
        ]
      : []),
    ...(ledger.values.has('vent.residual-pays-greatest')
      ? [
          textBlock(
            'Vents of ',
            { value: 'vent.area-pays-least' },
            ' would leave ',
            { value: 'vent.residual-pays-least' },
            ', vents of ',
            { value: 'vent.area-pays-greatest' },
            ' ',
            { value: 'vent.residual-pays-greatest' },
            ': ',
            { value: 'vent.pays-least' },
            ' to ',
            { value: 'vent.pays-greatest' },
            ' times the critical area is where more stops paying.',
          ),
        ]
      : []),
    ...tableBlock(
      'Kinds of venting for this cavity',
      ['Kind', 'Area', 'Over critical area', 'Friction length', 'Gas velocity', 'At the start', 'At nine tenths of the stroke', 'Gas left'],
      KINDS.filter((one) => ledger.values.has(`vent.kind-bar[${one}]`)).map((one) => [
        `${NAMES[one]}${one === kind ? ', planned' : ''}${BALANCED.some((id) => isBeyondRange(ledger.value(id, one))) ? ', beyond the range of the formula' : ''}`,
        cell(ledger, 'vent.kind-area', one),
        cell(ledger, 'vent.kind-ratio', one),
        cell(ledger, 'vent.kind-friction', one),
        cell(ledger, 'vent.kind-velocity', one),
        cell(ledger, 'vent.kind-start', one),
        cell(ledger, 'vent.kind-bar', one),
        cell(ledger, 'vent.kind-left', one),
      ]),
    ),
    textBlock(
      'Kinds that are not planned stand with the area they could have here: plain vents what the free parting line takes, the others their critical area; the vacuum is then that of the standard class. The gas left is a share of the gas at the start of the fill, which under vacuum is thinner.',
    ),
    ...(vacuum ? evacuationText(ledger) : []),
    ...figure(ledger, kind),
  ];
}

function evacuationText(ledger: Ledger): Block[] {
  const values = valuesBlock(ledger, ['vent.evacuated-volume', 'vent.evacuation-time', 'vent.window-least', 'vent.window-greatest', 'vent.tank-volume']);
  if (values.length === 0) return [];
  return [
    textBlock(
      'The tank is emptied before the shot; a tank of ',
      { value: 'vent.tank-ratio-least' },
      ' to ',
      { value: 'vent.tank-ratio-greatest' },
      ' times the evacuated room is usual, and reaches a good vacuum only if it is nearly empty. The time to evacuate runs from the plunger covering the pour hole to the fast shot; the room is what is left of the sleeve by then, with the die.',
    ),
    ...values,
  ];
}

function figure(ledger: Ledger, kind: Kind): Figure[] {
  const residual = ledger.maybe('vent.residual-bar');
  const time = ledger.maybe('fill.time');
  const stroke = ledger.maybe('vent.stroke');
  if (residual === undefined || time === undefined || stroke === undefined) return [];
  const own = curve(ledger, kind, time.value);
  const top = ROOM * Math.max(ledger.value('vent.air-pressure').in('bar').value, ...own.map(([, pressure]) => pressure));
  const drawn = [kind, ...KINDS.filter((one) => one !== kind)].filter((one) => ledger.values.has(`vent.kind-times[${one}]`));
  return [
    {
      kind: 'figure',
      form: 'chart',
      id: 'cavity-gas',
      title: 'Gas pressure in the cavity',
      text: 'Absolute gas pressure in the cavity over the fill, with the vents planned and, dashed, with the other kinds of venting; the mark is the pressure left at nine tenths of the stroke. A curve that ends early goes on rising above the drawing.',
      x: { title: 'Time from the start of the fill', unit: 'ms' },
      y: { title: 'Gas pressure, absolute', unit: 'bar' },
      areas: [],
      curves: drawn.map((one) => ({
        title: one === kind ? `${NAMES[one]}, planned` : NAMES[one],
        points: one === kind ? own : below(top, curve(ledger, one, time.value)),
        ...(one === kind ? {} : { dashed: true as const }),
      })),
      marks: [{ title: 'nine tenths of the stroke', x: stroke.value * time.value, y: residual.value, values: ['vent.residual-bar'] }],
    },
  ];
}

function curve(ledger: Ledger, kind: Kind, time: number): FigurePoint[] {
  const start = ledger.value('vent.kind-start', kind).in('bar').value;
  const cavity = {
    areaRatio: ledger.value('vent.kind-ratio', kind).value,
    frictionLength: ledger.value('vent.kind-friction', kind).value,
    backPressure: ledger.value('vent.kind-back', kind).value,
  };
  return gasThroughStroke(cavity, DRAWN_TO, POINTS).map(({ stroke, pressure }) => [stroke * time, pressure * start] as const);
}

/** The points up to a pressure, with the one on it where the curve goes higher. */
function below(top: number, points: readonly FigurePoint[]): FigurePoint[] {
  const over = points.findIndex(([, pressure]) => pressure > top);
  if (over < 0) return [...points];
  const kept = points.slice(0, over);
  const [from, to] = [points[over - 1], points[over]];
  if (from === undefined || to === undefined) return kept;
  const share = (top - from[1]) / (to[1] - from[1]);
  return [...kept, [from[0] + share * (to[0] - from[0]), top]];
}
