import { runWave, type WaveState } from './wave-flow.ts';
import { waveDepth } from './wave-section.ts';

/** Standard gravity, m/s2. */
const GRAVITY = 9.80665;
/** Cells of a run: doubling them moves the air trapped by less than a fiftieth. */
const CELLS = 200;
/** A section is closed for the air when the metal fills this share of it; the roof is too near to be told from it. */
const CLOSED = 0.99;
/** Until this share of the air is out, the head at the plunger is that of the running wave. */
const RUNNING = 0.9;
/** Shares of the travel to a full sleeve at which the surface is kept for the figure. */
const KEPT = [0.25, 0.5, 0.75, 0.95] as const;

/** A slow shot of two ramps and a constant speed; lengths in mm, speeds in m/s, fill in %. */
export interface SlowShot {
  readonly diameter: number;
  readonly fill: number;
  readonly length: number;
  /** Travel and speed at the end of the first ramp, where the pour hole is closed. */
  readonly hole_travel: number;
  readonly hole_speed: number;
  /** Travel at which the slow speed is reached, and that speed. */
  readonly ramp_end: number;
  readonly speed: number;
}

export interface WaveShot {
  /** Greatest volume of air that a closed section keeps from the way out, cm3. */
  readonly trapped: number;
  /** Plunger travel at which the metal closes the way out at the die end, mm; that of the full sleeve when it never does. */
  readonly closing: number;
  /** Mean head at the plunger while the wave runs, over the diameter in %. */
  readonly head: number;
  /** Largest error of the mass over the run, as a share of the metal. */
  readonly massError: number;
  /** Surfaces for the eye: position from the plunger's start and depth in mm, each with the travel of the plunger. */
  readonly surfaces: readonly { readonly travel: number; readonly points: readonly (readonly [position: number, depth: number])[] }[];
}

let kept: { readonly key: string; readonly shot: WaveShot } | undefined;

/** The wave of a slow shot; the last one is kept, because several figures are read from one run. */
export function waveShot(shot: SlowShot): WaveShot {
  const key = [shot.diameter, shot.fill, shot.length, shot.hole_travel, shot.hole_speed, shot.ramp_end, shot.speed].join(' ');
  if (kept?.key !== key) kept = { key, shot: simulate(shot) };
  return kept.shot;
}

/** Runs the wave until the metal closes the die end, or the sleeve is full. The air leaves at the top of the die end. */
export function simulate(shot: SlowShot, cells = CELLS): WaveShot {
  const { diameter, fill, length } = shot;
  const full = length * (1 - fill / 100);
  const path = profile(shot);
  const metal = (length / diameter) * (fill / 100);
  const surfaces: { travel: number; points: (readonly [number, number])[] }[] = [];
  let trapped = 0;
  let massError = 0;
  let headTime = 0;
  let runTime = 0;
  let before = 0;
  const watch = (state: WaveState): boolean => {
    const travel = state.travel * diameter;
    trapped = Math.max(trapped, cutOff(state));
    massError = Math.max(massError, Math.abs((sum(state.share) * state.width) / metal - 1));
    const closed = (state.share[cells - 1] as number) >= CLOSED;
    if (travel >= shot.ramp_end && travel <= RUNNING * full && !closed) {
      headTime += headAtPlunger(state) * (state.time - before);
      runTime += state.time - before;
    }
    before = state.time;
    if (surfaces.length < KEPT.length && travel >= (KEPT[surfaces.length] as number) * full) surfaces.push({ travel, points: surface(state, diameter) });
    return closed || travel >= full * (1 - 1e-6);
  };
  const end = runWave({ length: length / diameter, cells, start: () => fill / 100, ...path, watch });
  return {
    trapped: (trapped * Math.PI * diameter ** 3) / 4000,
    closing: Math.min(end.travel * diameter, full),
    head: 100 * (runTime > 0 ? headTime / runTime : headAtPlunger(end)),
    massError,
    surfaces,
  };
}

/** Travel and speed of the plunger over time, in diameters and sqrt(g D). */
function profile({ diameter, hole_travel, hole_speed, ramp_end, speed }: SlowShot) {
  const unit = Math.sqrt((GRAVITY * diameter) / 1000);
  const [x1, x2] = [hole_travel / diameter, ramp_end / diameter];
  const [v1, v2] = [hole_speed / unit, speed / unit];
  const first = (2 * x1) / v1;
  const second = (2 * (x2 - x1)) / (v1 + v2);
  const [a1, a2] = [v1 / first, second > 0 ? (v2 - v1) / second : 0];
  return {
    travel: (t: number): number => {
      if (t < first) return (a1 * t * t) / 2;
      const late = t - first;
      return late < second ? x1 + v1 * late + (a2 * late * late) / 2 : x2 + v2 * (late - second);
    },
    plungerSpeed: (t: number): number => (t < first ? a1 * t : t < first + second ? v1 + a2 * (t - first) : v2),
  };
}

/** Air between the plunger and the closed section nearest to the die end, in sections times diameters. */
function cutOff({ share, width }: WaveState): number {
  let last = share.length - 1;
  while (last >= 0 && (share[last] as number) < CLOSED) last -= 1;
  let air = 0;
  for (let i = 0; i < last; i += 1) air += Math.max(0, 1 - (share[i] as number));
  return air * width;
}

/** Mean over the first cells, because the one at the plunger remembers the start longest. */
function headAtPlunger({ share }: WaveState): number {
  const cells = Math.max(1, Math.round(share.length / 40));
  let head = 0;
  for (let i = 0; i < cells; i += 1) head += waveDepth(share[i] as number);
  return head / cells;
}

function surface({ travel, width, share }: WaveState, diameter: number): (readonly [number, number])[] {
  return Array.from(share, (a, i) => [(travel + (i + 0.5) * width) * diameter, Math.min(1, waveDepth(a)) * diameter] as const);
}

function sum(list: Float64Array): number {
  let total = 0;
  for (const value of list) total += value;
  return total;
}
