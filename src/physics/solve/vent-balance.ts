import { HEAT_RATIO } from './fanno.ts';
import { bracketedRoot } from './root.ts';
import { CHOKED_EXPONENT, ventFlow } from './vent-flow.ts';

/** A cavity with a vent, in the terms that its gas balance depends on. */
export interface VentedCavity {
  /** Vent area over the critical area, at which a vent choked throughout would pass the whole volume in the time of the stroke. */
  readonly areaRatio: number;
  /** Friction length 4 f L / D_h of the vent. */
  readonly frictionLength: number;
  /** Pressure behind the vent, times the pressure in the cavity at the start: 1 into the air, 0 into an empty tank. */
  readonly backPressure: number;
}

/** Gas in the cavity at a share of the stroke, density and pressure times those at the start. */
export interface GasState {
  readonly stroke: number;
  readonly density: number;
  readonly pressure: number;
}

/** Steps over the stroke; the result is then good to four digits. Very large vents need more, by the square of their size. */
const STEPS = 20;
const STEPS_OF_SIZE = 4;

/**
 * Runs the gas in the cavity through the stroke in time steps: air as an ideal gas, compressed without loss of heat by
 * metal that advances at constant speed, leaving through a vent that is choked or not as the pressure has it. The vent
 * passes no gas back.
 *
 * The room left, 1 - stroke, shrinks by equal factors for equal steps of s = -ln(1 - stroke), in which the density d
 * follows dd/ds = d - r d^1.2 share(P / P_back) with P = d^1.4. Steps are equal in the root of s, because the flow
 * begins with the root of the pressure. Fourth-order Runge-Kutta.
 * @throws RangeError unless 0 < stroke < 1 and no input is negative.
 */
export function gasThroughStroke({ areaRatio, frictionLength, backPressure }: VentedCavity, stroke: number, leastSteps = STEPS): GasState[] {
  if (!(stroke > 0 && stroke < 1)) throw new RangeError(`a stroke lies between 0 and 1, not at ${stroke}`);
  if (!(areaRatio >= 0 && backPressure >= 0)) throw new RangeError('area ratio and back pressure are 0 or more');
  const flow = ventFlow(frictionLength);
  const span = -Math.log1p(-stroke);
  const steps = Math.ceil(leastSteps + STEPS_OF_SIZE * areaRatio ** 2);
  const share = (pressure: number): number => (backPressure === 0 ? 1 : flow.share(pressure / backPressure));
  const slope = (z: number, density: number): number => {
    if (density <= 0) return 0;
    const log = Math.log(density);
    return 2 * z * span * (density - areaRatio * Math.exp(CHOKED_EXPONENT * log) * share(Math.exp(HEAT_RATIO * log)));
  };
  const states: GasState[] = [{ stroke: 0, density: 1, pressure: 1 }];
  let density = 1;
  for (let step = 0; step < steps; step += 1) {
    const [z, h] = [step / steps, 1 / steps];
    const k1 = slope(z, density);
    const k2 = slope(z + h / 2, density + (h / 2) * k1);
    const k3 = slope(z + h / 2, density + (h / 2) * k2);
    const k4 = slope(z + h, density + h * k3);
    density = Math.max(0, density + (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4));
    const done = step + 1 === steps ? stroke : -Math.expm1(-span * ((step + 1) / steps) ** 2);
    states.push({ stroke: done, density, pressure: density ** HEAT_RATIO });
  }
  return states;
}

/** The gas at a share of the stroke; see `gasThroughStroke`. */
export function gasAtStroke(cavity: VentedCavity, stroke: number): GasState {
  return gasThroughStroke(cavity, stroke).at(-1) as GasState;
}

/** Agreement that the inverse is worked to: what the time steps are good for. */
const AGREEMENT = 1e-5;

/**
 * The area ratio that leaves `pressure`, times that at the start, at a share of the stroke.
 * @throws RangeError for a pressure that a closed cavity does not reach, or one at or below that behind the vent.
 */
export function ratioThatLeaves(pressure: number, vent: Omit<VentedCavity, 'areaRatio'>, stroke: number): number {
  const excess = (areaRatio: number): number => Math.log(gasAtStroke({ ...vent, areaRatio }, stroke).pressure / pressure);
  // Large vents cost many steps, so the bracket grows from the small end.
  let [low, high] = [0, 1];
  while (high < 64 && excess(high) > 0) [low, high] = [high, 2 * high];
  return bracketedRoot(excess, low, high, AGREEMENT);
}
