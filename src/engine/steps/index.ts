import type { Step } from '../step.ts';
import { clampStep } from './clamp.ts';
import { coolingStep } from './cooling/index.ts';
import { costStep } from './cost/index.ts';
import { cycleStep } from './cycle/index.ts';
import { cycleRateStep } from './cycle-rate/index.ts';
import { designStep } from './design/index.ts';
import { dieStep } from './die/index.ts';
import { dieSurfaceStep } from './die-surface/index.ts';
import { ejectionStep } from './ejection/index.ts';
import { fillStep } from './fill.ts';
import { finishStep } from './finish/index.ts';
import { furnaceStep } from './furnace/index.ts';
import { gateStep } from './gate.ts';
import { gooseneckStep } from './gooseneck.ts';
import { heatStep } from './heat/index.ts';
import { intensificationStep } from './intensification/index.ts';
import { lubricantStep } from './lubricant/index.ts';
import { machineStep } from './machine/index.ts';
import { machineMarginStep } from './machine/margin.ts';
import { machineKindStep } from './machine-kind.ts';
import { overflowStep } from './overflow.ts';
import { partingStep } from './parting/index.ts';
import { porosityStep } from './porosity.ts';
import { pq2Step } from './pq2/index.ts';
import { runnerNetworkStep } from './runner-network/index.ts';
import { shotStep } from './shot.ts';
import { slowShotStep } from './slow-shot/index.ts';
import { solidificationStep } from './solidification/index.ts';
import { squeezeStep } from './squeeze.ts';
import { ventStep } from './vent.ts';
import { ventBalanceStep } from './vent-balance/index.ts';

/** The order in which the steps need each other's values. */
export const WORK_ORDER: readonly Step[] = [
  machineKindStep,
  partingStep,
  designStep,
  fillStep,
  overflowStep,
  gateStep,
  machineStep,
  clampStep,
  shotStep,
  runnerNetworkStep,
  squeezeStep,
  pq2Step,
  machineMarginStep,
  ventStep,
  ventBalanceStep,
  intensificationStep,
  porosityStep,
  slowShotStep,
  gooseneckStep,
  solidificationStep,
  cycleStep,
  heatStep,
  coolingStep,
  cycleRateStep,
  dieSurfaceStep,
  ejectionStep,
  lubricantStep,
  dieStep,
  finishStep,
  furnaceStep,
  costStep,
];

/** The order in which a plan is read. */
export const PRINT_ORDER: readonly Step[] = [
  designStep,
  partingStep,
  machineStep,
  clampStep,
  fillStep,
  gateStep,
  runnerNetworkStep,
  shotStep,
  slowShotStep,
  gooseneckStep,
  squeezeStep,
  pq2Step,
  intensificationStep,
  porosityStep,
  overflowStep,
  ventStep,
  ventBalanceStep,
  solidificationStep,
  heatStep,
  coolingStep,
  dieSurfaceStep,
  ejectionStep,
  dieStep,
  lubricantStep,
  cycleStep,
  cycleRateStep,
  finishStep,
  furnaceStep,
  costStep,
];
