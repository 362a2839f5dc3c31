import { entryMach, fannoLength, HEAT_RATIO } from './fanno.ts';
import { bracketedRoot } from './root.ts';

/** Flow of gas through a vent of a given friction length, as a share of its choked flow at the same cavity state. */
export interface VentFlow {
  /** Cavity pressure over outside pressure from which the vent is choked. */
  readonly choke: number;
  /** Share of the choked flow for a cavity pressure `ratio` times the outside pressure; 0 at 1 and below. */
  readonly share: (ratio: number) => number;
}

/** Least Mach number at the entry that is looked at: far below any flow that moves gas. */
const LEAST_MACH = 1e-5;
/** Terms of the interpolation: exact to 2e-5 of the choked flow up to a friction length of 20, to 2e-6 up to 6. */
const TERMS = 12;
/** Friction lengths whose flow is kept; a plan meets two or three. */
const KEPT = 32;
const kept = new Map<number, VentFlow>();

/** Mass flow per area, referred to the state in the cavity and the speed of sound there, at Mach number `mach` at the entry. */
export function massFlow(mach: number): number {
  return mach / (1 + 0.2 * mach * mach) ** 3;
}

/** Pressure in the cavity over that outside for an unchoked vent entered at `mach`: isentropic entry, then Fanno flow. */
function pressureRatio(mach: number, frictionLength: number): number {
  const exit = entryMach(Math.max(0, fannoLength(mach) - frictionLength));
  return (1 + 0.2 * mach * mach) ** 3.5 * (exit / mach) * Math.sqrt((1 + 0.2 * exit * exit) / (1 + 0.2 * mach * mach));
}

/**
 * The flow of a vent of friction length 4 f L / D_h. Between rest and choking the share is interpolated in the root of
 * the excess pressure, in which it is smooth at both ends (Chebyshev points).
 */
export function ventFlow(frictionLength: number): VentFlow {
  const known = kept.get(frictionLength);
  if (known !== undefined) return known;
  const chokedMach = entryMach(frictionLength);
  const choke = pressureRatio(chokedMach, frictionLength);
  const widest = Math.sqrt(choke - 1);
  const samples = Array.from({ length: TERMS }, (_, i) => {
    const ratio = 1 + (((Math.cos((Math.PI * (i + 0.5)) / TERMS) + 1) / 2) * widest) ** 2;
    const mach = bracketedRoot((m) => pressureRatio(m, frictionLength) - ratio, LEAST_MACH, chokedMach);
    return massFlow(mach) / massFlow(chokedMach);
  });
  const terms = samples.map((_, j) => (2 / TERMS) * samples.reduce((sum, value, i) => sum + value * Math.cos((Math.PI * j * (i + 0.5)) / TERMS), 0));
  const flow: VentFlow = {
    choke,
    share: (ratio) => {
      if (ratio >= choke) return 1;
      if (ratio <= 1) return 0;
      const x = (2 * Math.sqrt(ratio - 1)) / widest - 1;
      let next = 0;
      let after = 0;
      for (let j = TERMS - 1; j > 0; j -= 1) {
        const current = 2 * x * next - after + (terms[j] as number);
        after = next;
        next = current;
      }
      return Math.max(0, x * next - after + (terms[0] as number) / 2);
    },
  };
  if (kept.size >= KEPT) kept.clear();
  kept.set(frictionLength, flow);
  return flow;
}

/** Exponent of the choked mass flow in the gas density, (k + 1) / 2: density times the speed of sound. */
export const CHOKED_EXPONENT = (HEAT_RATIO + 1) / 2;
