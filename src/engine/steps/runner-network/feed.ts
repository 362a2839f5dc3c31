import { areaForVolume, gateEachArea, gateEachWidth } from '../../../physics/gate-share.ts';
import { runnerDepth, runnerWidth } from '../../../physics/runner.ts';
import { fanLength, fanSpread, flowAngle, runnerEachArea } from '../../../physics/runner-network.ts';
import { fanRoom } from '../../../physics/runner-way.ts';
import { choose } from '../../choose.ts';
import { halfOf } from '../../half.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';
import { GATE_RUN, type Runs } from './names.ts';

/** Area and width of each gate, and the gate area that a volume asks for so that all segments fill in one time. */
export function workGates(ledger: Ledger): void {
  const gates = ledger.value('gate.count');
  ledger.apply(gateEachArea, { area: ledger.value('gate.area'), gates });
  ledger.apply(gateEachWidth, { width: ledger.value('gate.width'), gates });
  ledger.apply(areaForVolume, { velocity: ledger.value('gate.velocity'), time: ledger.value('fill.time') });
}

/** Section of the runner that meets one gate. */
export function fileGateRun(ledger: Ledger): void {
  const area = ledger.apply(
    runnerEachArea,
    { area: ledger.value('runner.area'), gates: ledger.value('gate.count') },
    { id: 'runner.segment-area', item: GATE_RUN },
  );
  const shape = {
    width_least: ledger.value('runner.width-ratio-least'),
    width_greatest: ledger.value('runner.width-ratio-greatest'),
    wall_draft: ledger.value('runner.wall-draft'),
  };
  const depth = ledger.apply(runnerDepth, { area, ...shape }, { id: 'runner.segment-depth', item: GATE_RUN });
  ledger.apply(runnerWidth, { depth, ...shape }, { id: 'runner.segment-width', item: GATE_RUN });
}

/** Whether a fan or a runner along the gate feeds it. */
export function workFeed(ledger: Ledger, runs: Runs): void {
  fileRoom(ledger, runs);
  const gate_width = ledger.value('gate.each-width');
  const runner_width = ledger.value('runner.segment-width', GATE_RUN);
  ledger.apply(fanLength, { gate_width, runner_width, spread: ledger.value('runner.fan-spread') }, { id: 'runner.fan-length-least' });
  const usual = ledger.look('runner/section', 'fan_spread_usual', {}, 'runner.fan-spread-usual');
  ledger.apply(fanLength, { gate_width, runner_width, spread: usual }, { id: 'runner.fan-length-usual' });
  if (choose(ledger, 'runner.gate-feed').value === 'fan') fan(ledger);
  else tangential(ledger);
}

/**
 * A single cavity has a width of steel beside it. Of several cavities the run that the fan leaves stands in the middle of the gap
 * between two of them, or below the row, and takes half its width of the room; at the foot of a sprue there is no such run.
 */
function fileRoom(ledger: Ledger, { parting }: Runs): void {
  const steel = ledger.value('die.steel-around');
  const last = parting.at(-1);
  if (last === undefined) {
    ledger.put(steel.as('runner.fan-room', 'the width of steel beside the cavity'));
    return;
  }
  const way = ledger.text('die.runner-way');
  const room =
    way === 'below' ? steel.as('runner.fan-gap', 'the row is fed from below') : halfOf('runner.fan-gap', 'half the steel between two cavities', steel);
  if (way === 'from the sprue' && parting.length === 1) {
    ledger.put(halfOf('runner.fan-room', 'several cavities: half the steel between two of them', steel));
    return;
  }
  ledger.apply(fanRoom, { steel: ledger.put(room), width: ledger.value('runner.segment-width', last) });
}

/** As long as the usual spread asks for, if there is room; a gate no wider than the runner is led to straight. */
function fan(ledger: Ledger): void {
  const usual = ledger.value('runner.fan-length-usual');
  const room = ledger.value('runner.fan-room');
  const runner_width = ledger.value('runner.segment-width', GATE_RUN);
  const length =
    usual.value === 0
      ? runner_width.as('runner.fan-length', 'the gate is no wider than the runner: a straight lead, as long as the runner is wide')
      : usual.value <= room.value
        ? usual.as('runner.fan-length', 'at the usual spread')
        : room.as('runner.fan-length', 'all the room there is; the spread is wider than usual');
  ledger.apply(fanSpread, { gate_width: ledger.value('gate.each-width'), runner_width, length: ledger.put(length) });
}

function tangential(ledger: Ledger): void {
  const least = ledger.look('runner/layout', 'end_least', {}, 'runner.end-least');
  assumeMiddle(ledger, 'runner.end-share', least, ledger.look('runner/layout', 'end_greatest', {}, 'runner.end-greatest'));
  ledger.look('runner/layout', 'angle_least', {}, 'runner.flow-angle-least');
  ledger.look('runner/layout', 'angle_greatest', {}, 'runner.flow-angle-greatest');
  ledger.apply(flowAngle, { runner_area: ledger.value('runner.area'), gate_area: ledger.value('gate.area') });
}
