import { waveCelerity, waveThrust } from './wave-section.ts';

/**
 * Shallow water in a round horizontal sleeve between a plunger that moves and a wall that stands: mass and momentum on a
 * mesh that shrinks with the room (Godunov's method of second order: limited slopes, half a step ahead, two-wave Riemann
 * solver of Harten, Lax and van Leer). No friction, no heat; the units are those of wave-section.ts.
 */
export interface WaveState {
  readonly time: number;
  /** Of the plunger. */
  readonly travel: number;
  /** Of one cell; all are alike. */
  readonly width: number;
  /** Share of the section that the metal fills, cell by cell from the plunger. */
  readonly share: Float64Array;
  readonly speed: Float64Array;
}

export interface WaveProblem {
  /** Room between plunger and wall at the start. */
  readonly length: number;
  readonly cells: number;
  /** Share of the section at the start, at 0 (plunger) to 1 (wall) of the length; metal at rest. */
  readonly start: (position: number) => number;
  readonly travel: (time: number) => number;
  /** Of the plunger, for the length of the time step. */
  readonly plungerSpeed: (time: number) => number;
  /** Sees every step; true ends the run. */
  readonly watch: (state: WaveState) => boolean;
}

/** Courant number of the time step. */
const COURANT = 0.8;
/** Share of the section from which on the waves grow so fast that a cell does not speak for its faces. */
const NEAR_FULL = 0.9;
/** No run that makes sense needs more. */
const MOST_STEPS = 500_000;

/** Runs the wave until `watch` ends it; a run that breaks down ends with no numbers. @throws RangeError when it does not end. */
export function runWave(problem: WaveProblem): WaveState {
  const { length, cells, start, watch } = problem;
  const state = {
    time: 0,
    travel: 0,
    width: length / cells,
    share: Float64Array.from({ length: cells }, (_, i) => start((i + 0.5) / cells)),
    speed: new Float64Array(cells),
  };
  const faces = {
    shareLeft: new Float64Array(cells),
    shareRight: new Float64Array(cells),
    speedLeft: new Float64Array(cells),
    speedRight: new Float64Array(cells),
  };
  for (let step = 0; step < MOST_STEPS; step += 1) {
    let dt = timeStep(state, problem.plungerSpeed(state.time));
    let travel = problem.travel(state.time + dt);
    let fastest = reconstruct(state, faces, (travel - state.travel) / dt, dt);
    // A face may reach into the slot, where waves run faster than in any cell.
    while (dt * fastest > state.width) {
      dt = (COURANT * state.width) / fastest;
      travel = problem.travel(state.time + dt);
      fastest = reconstruct(state, faces, (travel - state.travel) / dt, dt);
    }
    if (Number.isNaN(dt)) return state;
    const plunger = (travel - state.travel) / dt;
    const width = (length - travel) / cells;
    advance(state, faces, plunger, dt, width);
    state.time += dt;
    state.travel = travel;
    state.width = width;
    if (watch(state)) return state;
  }
  throw new RangeError('the wave did not come to an end');
}

type Faces = Readonly<Record<'shareLeft' | 'shareRight' | 'speedLeft' | 'speedRight', Float64Array>>;

function timeStep({ share, speed, width }: WaveState, plunger: number): number {
  const cells = share.length;
  let fastest = 0;
  for (let i = 0; i < cells; i += 1) {
    const mesh = plunger * (1 - (i + 0.5) / cells);
    fastest = Math.max(fastest, Math.abs((speed[i] as number) - mesh) + waveCelerity(share[i] as number));
  }
  return (COURANT * width) / fastest;
}

/** Monotonised central slope: no new highs or lows. */
function limited(before: number, after: number): number {
  if (before * after <= 0) return 0;
  const least = Math.min(2 * Math.abs(before), 2 * Math.abs(after), Math.abs(before + after) / 2);
  return before > 0 ? least : -least;
}

/**
 * States at both faces of each cell, half a time step ahead, in the frame of the moving mesh; gives the speed of the
 * fastest wave among those that are nearly full.
 */
function reconstruct({ share, speed, width }: WaveState, faces: Faces, plunger: number, dt: number): number {
  const last = share.length - 1;
  let fastest = 0;
  const half = dt / width / 2;
  for (let i = 0; i <= last; i += 1) {
    const a = share[i] as number;
    const u = speed[i] as number;
    // Beyond a wall the metal is its own mirror image: as deep, and as fast the other way.
    const da = i === 0 || i === last ? 0 : limited(a - (share[i - 1] as number), (share[i + 1] as number) - a);
    const du = limited(i === 0 ? 2 * (u - plunger) : u - (speed[i - 1] as number), i === last ? -2 * u : (speed[i + 1] as number) - u);
    const drift = u - plunger * (1 - (i + 0.5) / (last + 1));
    const c = waveCelerity(a);
    const aHalf = a - half * (drift * da + a * du);
    const uHalf = u - half * (drift * du + ((c * c) / a) * da);
    faces.shareLeft[i] = aHalf - da / 2;
    faces.shareRight[i] = aHalf + da / 2;
    faces.speedLeft[i] = uHalf - du / 2;
    faces.speedRight[i] = uHalf + du / 2;
    const highest = Math.max(faces.shareLeft[i] as number, faces.shareRight[i] as number);
    if (highest > NEAR_FULL) fastest = Math.max(fastest, Math.abs(drift) + Math.abs(uHalf - u) + Math.abs(du) / 2 + waveCelerity(highest));
  }
  return fastest;
}

/** Exchanges mass and momentum through the moving faces. Nothing passes the plunger or the wall but thrust. */
function advance({ share, speed, width }: WaveState, faces: Faces, plunger: number, dt: number, nextWidth: number): void {
  const last = share.length - 1;
  let massIn = 0;
  let thrustIn = wallThrust(faces.shareLeft[0] as number, plunger - (faces.speedLeft[0] as number));
  for (let i = 0; i <= last; i += 1) {
    let massOut = 0;
    let thrustOut: number;
    if (i === last) thrustOut = wallThrust(faces.shareRight[i] as number, faces.speedRight[i] as number);
    else {
      const mesh = plunger * (1 - (i + 1) / (last + 1));
      const [al, ar] = [faces.shareRight[i] as number, faces.shareLeft[i + 1] as number];
      const [ul, ur] = [faces.speedRight[i] as number, faces.speedLeft[i + 1] as number];
      const [cl, cr] = [waveCelerity(al), waveCelerity(ar)];
      const sl = Math.min(ul - cl, ur - cr) - mesh;
      const sr = Math.max(ul + cl, ur + cr) - mesh;
      const [massLeft, massRight] = [al * (ul - mesh), ar * (ur - mesh)];
      const [thrustLeft, thrustRight] = [massLeft * ul + waveThrust(al), massRight * ur + waveThrust(ar)];
      if (sl >= 0) [massOut, thrustOut] = [massLeft, thrustLeft];
      else if (sr <= 0) [massOut, thrustOut] = [massRight, thrustRight];
      else {
        massOut = (sr * massLeft - sl * massRight + sl * sr * (ar - al)) / (sr - sl);
        thrustOut = (sr * thrustLeft - sl * thrustRight + sl * sr * (ar * ur - al * ul)) / (sr - sl);
      }
    }
    const a = share[i] as number;
    const mass = a * width + dt * (massIn - massOut);
    const momentum = a * (speed[i] as number) * width + dt * (thrustIn - thrustOut);
    share[i] = mass / nextWidth;
    speed[i] = momentum / mass;
    massIn = massOut;
    thrustIn = thrustOut;
  }
}

/** Thrust on a wall that meets metal at a relative speed (positive: towards it), by the mirror image in the same solver. */
function wallThrust(share: number, closing: number): number {
  return share * closing * closing + waveThrust(share) + (Math.abs(closing) + waveCelerity(share)) * share * closing;
}
