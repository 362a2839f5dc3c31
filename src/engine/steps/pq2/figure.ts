import { velocityFromFlow } from '../../../physics/gate.ts';
import { diePressure } from '../../../physics/pq2.ts';
import { machineFlow, machinePressure } from '../../../physics/pq2-window.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block, Chart, FigurePoint } from '../../plan.ts';
import { SPREAD } from './lines.ts';

/** Points of each curve; the lines are parabolas, which so many show smooth. */
const SAMPLES = 40;

/** The numbers of the two lines, in MPa, l/s, kg/m3 and mm2. */
interface Lines {
  readonly static_pressure: number;
  readonly dry_flow: number;
  readonly density: number;
  readonly gate_area: number;
}

/** Pressure over flow: both lines, the window, and the points. Nothing when one of the lines is not known. */
export function pq2Figure(ledger: Ledger): Block[] {
  const number = (id: string): number | undefined => ledger.values.get(id)?.value;
  const density = ledger.maybe('gate.liquid-density')?.in('kg/m3').value;
  const [static_pressure, dry_flow, gate_area, discharge] = ['pq2.static-pressure', 'pq2.dry-flow', 'pq2.gate-area', 'gate.discharge'].map(number);
  if (static_pressure === undefined || dry_flow === undefined || gate_area === undefined || discharge === undefined || density === undefined) return [];
  const lines: Lines = { static_pressure, dry_flow, density, gate_area };
  const spread = SPREAD.flatMap((item) => {
    const other = number(`pq2.spread-discharge[${item}]`);
    return other === undefined
      ? []
      : [{ title: item === 'low' ? 'Die, poorer discharge' : 'Die, better discharge', points: dieLine(lines, other), dashed: true as const }];
  });
  const mark = (title: string, x: string, y: string): Chart['marks'] => {
    const [flow, pressure] = [number(x), number(y)];
    return flow === undefined || pressure === undefined ? [] : [{ title, x: flow, y: pressure, values: [x, y] }];
  };
  const window = windowArea(lines, number('pq2.least-flow'), number('pq2.least-pressure'), number('pq2.greatest-pressure'));
  return [
    {
      kind: 'figure',
      form: 'chart',
      id: 'pq2',
      title: 'Metal pressure over flow (PQ²)',
      text: 'The line of the machine falls from the static pressure to the dry-shot flow, the line of the die rises from nothing; they cross where this machine fills this die. The window is bounded by the longest fill time, the least and the greatest gate velocity and the line of the machine; the planned point should lie in it.',
      x: { title: 'Metal flow through all gates', unit: 'l/s' },
      y: { title: 'Metal pressure', unit: 'MPa' },
      areas: window.length === 0 ? [] : [{ title: 'Window', points: window }],
      curves: [{ title: 'Machine', points: machineLine(lines, 0, dry_flow) }, { title: 'Die', points: dieLine(lines, discharge) }, ...spread],
      marks: [
        ...mark('Planned', 'shot.flow', 'pq2.pressure'),
        ...mark('Crossing', 'pq2.operating-flow', 'pq2.operating-pressure'),
        ...mark('Greatest power', 'pq2.greatest-power-flow', 'pq2.greatest-power-pressure'),
      ],
    },
  ];
}

/** Samples from one flow to another, both included. */
function along(from: number, to: number, at: (flow: number) => number): FigurePoint[] {
  return Array.from({ length: SAMPLES + 1 }, (_, i): FigurePoint => {
    const flow = from + ((to - from) * i) / SAMPLES;
    return [flow, at(flow)];
  });
}

function machineLine({ static_pressure, dry_flow }: Lines, from: number, to: number): FigurePoint[] {
  return along(from, to, (flow) => machinePressure.compute({ static_pressure, dry_flow, flow }));
}

/** Drawn to the dry-shot flow or to the static pressure, whichever comes first. */
function dieLine({ static_pressure, dry_flow, density, gate_area }: Lines, discharge: number): FigurePoint[] {
  const at = (flow: number): number => diePressure.compute({ density, discharge, velocity: velocityFromFlow.compute({ flow, area: gate_area }) });
  const steepness = at(dry_flow) / static_pressure;
  return along(0, steepness > 1 ? dry_flow / Math.sqrt(steepness) : dry_flow, at);
}

/** The corners of the window and, between them, the line of the machine where it is the bound; nothing when it is closed. */
function windowArea(lines: Lines, least_flow?: number, least?: number, greatest?: number): FigurePoint[] {
  if (least_flow === undefined || least === undefined || greatest === undefined) return [];
  const { static_pressure, dry_flow } = lines;
  const reach = (pressure: number): number => machineFlow.compute({ static_pressure, dry_flow, pressure });
  const [right, top] = [reach(least), reach(greatest)];
  if (right <= least_flow) return [];
  const edge = machineLine(lines, Math.max(top, least_flow), right);
  return [[least_flow, least], ...(top > least_flow ? [[least_flow, greatest] as FigurePoint] : []), ...edge];
}
