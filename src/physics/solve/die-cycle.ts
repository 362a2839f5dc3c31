import { gradedDepths } from './graded.ts';
import { type Contact, HeatFlow } from './heat-flow.ts';
import type { Section } from './solidification.ts';

/** A die that makes shot after shot. SI units, temperatures in degC; what leaves the casting is shared out as planned. */
export interface DieCycle extends Omit<Section, 'dieTemperature'> {
  /** s, from one full cavity to the next. */
  readonly cycle: number;
  /** s, from the full cavity to the opening of the die. */
  readonly dwell: number;
  /** s, spray, in the middle of the time in which the die is without casting. */
  readonly spray: number;
  /** Shares of the heat of a shot that the spray and the surroundings take, 0 to 1. */
  readonly sprayShare: number;
  readonly surroundingsShare: number;
  /** m, from the die surface to the cooling lines. */
  readonly depth: number;
  /** W/(m2.K), from the die surface to the coolant, of the lines and for a square metre of die face. */
  readonly conductance: number;
  /** degC */
  readonly coolant: number;
}

/** One cycle of the die surface once every cycle is as the last. Temperatures in degC, heats in J/m2. */
export interface DieSurface {
  readonly before: number;
  readonly peak: number;
  readonly mean: number;
  /** Heat of one shot, and what the lines take of it. */
  readonly heat: number;
  readonly toLines: number;
  /** Cycles that were run until nothing changed any more. */
  readonly cycles: number;
  readonly samples: readonly { readonly time: number; readonly surface: number }[];
}

export interface CycleFineness {
  readonly cells: number;
  readonly steelCells: number;
  /** Steps of the dwell and of the rest of the cycle. */
  readonly steps: number;
}

export const CYCLE_FINENESS: CycleFineness = { cells: 8, steelCells: 14, steps: 40 };
/** First cell of the steel over the depth of the lines, at the fineness above; the cells grow so that they fill the depth. */
const FIRST_SHARE = 0.012;
/** The lines take what the shot leaves them within this share: the cycle is then periodic. */
const PERIODIC = 2e-4;
const MOST_CYCLES = 60;

/**
 * Runs cycles until the die surface comes back to the temperature that it began with. The slab of steel between surface
 * and lines stands for the die; its far face has the conductance that is left of the one of the lines when the slab is
 * taken out. Between cycles the imbalance shifts the whole profile, so that a few cycles do for hundreds.
 * @throws RangeError when no periodic state is found.
 */
export function dieCycle(given: DieCycle, fineness: CycleFineness = CYCLE_FINENESS): DieSurface {
  const { steel, conductance, coolant, cycle } = given;
  // Lines that take more than a slab of that depth could conduct lie nearer than their depth says.
  const depth = Math.min(given.depth, (0.98 * steel.conductivity) / conductance);
  const far = 1 / (1 / conductance - depth / steel.conductivity);
  const flow = new HeatFlow(given.metal, steel, given.half, fineness.cells, filling(depth, fineness.steelCells));
  const linesShare = 1 - given.sprayShare - given.surroundingsShare;

  // A first guess by the heat of the metal down to the coolant's side of its range; the cycles then put it right.
  flow.pour(given.gateTemperature);
  const guess = (linesShare * flow.castingHeat) / cycle / conductance;
  flow.steel.fill(Math.min(coolant + guess, 0.7 * given.metal.solidus));
  // A hotter die takes less from the casting and gives more to the lines; how much less shows from cycle to cycle.
  let stiffness = conductance * cycle;
  let before: { readonly rise: number; readonly excess: number } | undefined;
  for (let cycles = 1; cycles <= MOST_CYCLES; cycles += 1) {
    const run = oneCycle(given, flow, far, fineness.steps);
    // What stays in the steel after a cycle must be nothing: the profile moves until the lines take it.
    const excess = run.stored;
    if (Math.abs(excess) < PERIODIC * run.heat) return { ...run, cycles };
    if (before !== undefined) {
      const seen = (before.excess - excess) / before.rise;
      if (seen > 0) stiffness = Math.max(conductance * cycle, (stiffness + seen) / 2);
    }
    const rise = excess / stiffness;
    shift(flow, rise, conductance, far, steel.conductivity, depth);
    before = { rise, excess };
  }
  throw new RangeError('the die surface does not come to a steady cycle');
}

let last: { readonly key: string; readonly result: DieSurface } | undefined;

/** As `dieCycle` at the usual fineness; several figures of one cycle are asked for in a row, so the last one is kept. */
export function steadyCycle(given: DieCycle): DieSurface {
  const key = JSON.stringify(given);
  if (last?.key !== key) last = { key, result: dieCycle(given) };
  return last.result;
}

/** Cells of the steel that grow from the surface and together are as deep as the lines. */
function filling(depth: number, count: number): Float64Array {
  const first = (FIRST_SHARE * CYCLE_FINENESS.steelCells) / count;
  let [low, high] = [1, 3];
  for (let i = 0; i < 60; i += 1) {
    const ratio = (low + high) / 2;
    const sum = ratio === 1 ? count : (ratio ** count - 1) / (ratio - 1);
    if (first * sum < 1) low = ratio;
    else high = ratio;
  }
  const shares = gradedDepths(first, low, count);
  const sum = shares.reduce((total, share) => total + share, 0);
  return shares.map((share) => (share / sum) * depth);
}

/** Raises the surface by `rise` and every depth by the share of it that a steady flow to the lines would have there. */
function shift(flow: HeatFlow, rise: number, conductance: number, far: number, conductivity: number, depth: number): void {
  // Half of the cells' spacing does not matter here: the next cycle smooths it.
  const cells = flow.steel.length;
  let reached = 0;
  for (let i = 0; i < cells; i += 1) {
    const thickness = flow.depthOf(i);
    const middle = reached + thickness / 2;
    reached += thickness;
    const resistance = 1 / far + (depth - middle) / conductivity;
    flow.steel[i] = (flow.steel[i] as number) + rise * resistance * conductance;
  }
}

interface OneCycle {
  readonly before: number;
  readonly peak: number;
  readonly mean: number;
  readonly heat: number;
  readonly toLines: number;
  readonly stored: number;
  readonly samples: { readonly time: number; readonly surface: number }[];
}

/** One cycle from the full cavity: dwell with the casting, then the open and empty die with its spray. */
function oneCycle(given: DieCycle, flow: HeatFlow, far: number, steps: number): OneCycle {
  const { coolant, cycle, dwell, spray } = given;
  const lines = { far, coolant };
  flow.pour(given.gateTemperature);
  const start = flow.steelHeat;
  const full = flow.castingHeat;
  const before = flow.surface({ interface: 0, surfaceLoss: 0, ...lines });
  let [time, peak, area, toLines] = [0, before, 0, 0];
  const samples = [{ time: 0, surface: before }];
  const advance = (dt: number, contact: Contact): void => {
    flow.step(dt, contact);
    const surface = flow.surface(contact);
    area += dt * surface;
    toLines += dt * flow.farLoss(contact);
    time += dt;
    peak = Math.max(peak, surface);
    samples.push({ time, surface });
  };

  // Steps of the dwell grow from its beginning, where the flux is steep.
  let solid = false;
  const growing = gradedDepths(1, 1 + 8 / steps, steps);
  const sum = growing.reduce((total, step) => total + step, 0);
  for (const step of growing) {
    advance((dwell * step) / sum, { interface: solid ? given.gap : given.interface, surfaceLoss: 0, ...lines });
    solid ||= (flow.content[0] as number) <= 0;
  }
  const heat = full - flow.castingHeat;

  // The casting is gone: air and platens take their share evenly, the spray takes its own while it runs.
  const open = Math.max(cycle - dwell, 1e-3);
  const sprayed = Math.min(spray, 0.9 * open);
  const still = (open - sprayed) / 2;
  const toAir = (given.surroundingsShare * heat) / open;
  const toSpray = sprayed > 0 ? (given.sprayShare * heat) / sprayed : 0;
  const each = Math.ceil(steps / 3);
  for (const [length, loss] of [
    [still, toAir],
    [sprayed, toAir + toSpray],
    [still, toAir],
  ] as const) {
    for (let i = 0; i < each && length > 0; i += 1) advance(length / each, { interface: 0, surfaceLoss: loss, ...lines });
  }
  return { before, peak, mean: area / time, heat, toLines, stored: flow.steelHeat - start, samples };
}
