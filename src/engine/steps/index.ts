import type { Step } from '../step.ts';
import { clampStep } from './clamp.ts';
import { designStep } from './design/index.ts';
import { fillStep } from './fill.ts';
import { gateStep } from './gate.ts';
import { machineStep } from './machine/index.ts';
import { machineKindStep } from './machine-kind.ts';
import { overflowStep } from './overflow.ts';
import { partingStep } from './parting/index.ts';
import { shotStep } from './shot.ts';
import { ventStep } from './vent.ts';

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
  ventStep,
];

/** The order in which a plan is read. */
export const PRINT_ORDER: readonly Step[] = [designStep, partingStep, machineStep, clampStep, fillStep, gateStep, shotStep, overflowStep, ventStep];
