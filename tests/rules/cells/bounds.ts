/*
 * Figures that stand in the conditions of limits instead of in a table, typed a second time. A line is the limit, the figures
 * that the work prints, and those that are ours: margins of rounding, shares of a published range, counts. Every limit that
 * rests on a work and has a figure in its condition is here. Limits of status memory, practice and derived are not, but for
 * remembered limits of substances that name a law.
 */
const LINES = `
clamp/oversized | | 1 100
clamp/oversized-smallest | | 1 100
clamp/usual-use | | 0.9 100
cost/metal-loss | 12 |
die/life | | 1
draft/least-taper | | 0.005
draft/wall | | 0.005
ejection/pin-buckling | | 0.02
ejection/pin-slenderness | | 1.01
fill/plausible | 5 200 |
fill/solids | 30 |
fillet/least-radius | | 0.05
gate/extreme-velocity | 20 70 |
gate/flow-length | 200 |
gate/wall-share | 0.4 2.5 0.8 | 0.001
gate/wall-velocity | | 0.75 1.25
hole/bottom-diameter | | 0.05
hole/caution-depth | | 0.05
hole/draft-and-tolerance | | 2
hole/edge-advised | | 0.005
hole/edge-least | | 0.005
hole/tolerance-precision | | 0.0005
hole/tolerance-ream | | 0.0005
insert/embedment | | 0.05
intensification/biscuit-left | | 0.999
intensification/pressure | | 0.9
intensification/rise-machine | | 0.9
overflow/area-usual | | 1.5
overflow/gate-share | | 0 0.49 0.76
rib/height | | 0.05
rib/root-fillet | 3 | 0.05
rib/root-width | | 0.05
rib/tip-radius | | 0.005
runner/fan-angle | | 0.05
shot/metal-pressure-planned | | 2
sleeve/biscuit | 15 |
sleeve/fast-window | 6 | 1
sleeve/fill-usual | 40 60 30 75 |
slide/pin-angle | | 0.05
slow-shot/above-critical | | 1.01
slow-shot/balances | | 20
slow-shot/below-critical | | 0.95
substances/elv-lead-aluminium | 0.4 |
substances/elv-lead-copper | 4 |
substances/elv-lead-exemption | 0.1 |
substances/jewellery-cadmium | 0.01 |
substances/jewellery-lead | 0.05 |
substances/reach-lead | 0.1 |
substances/rohs-cadmium | 0.01 |
substances/rohs-lead | 0.1 |
substances/rohs-lead-aluminium | 0.1 |
substances/rohs-lead-aluminium-old | 0.4 |
substances/rohs-lead-aluminium-revised | 0.3 |
substances/rohs-lead-copper | 0.1 |
substances/rohs-lead-copper-exemption | 4 |
thread/cored-depth | | 0.05
tolerance/as-cast | | 0.0005
tolerance/standard | | 0.0005
wall/ratio-great | 3 |
pq2/fill-time | | 100.0001
pq2/gate-area | | 100.0001
pq2/gate-velocity | | 0.999 1.001 0.999999 1.000001
pq2/machine | | 100.0001
pq2/slower-fill | | 100.0001
`;

/** The figures in the condition of a limit. */
export interface Bound {
  readonly limit: string;
  readonly printed: readonly number[];
  readonly ours: readonly number[];
}

const figures = (text = ''): number[] => text.trim().split(' ').filter(Boolean).map(Number);
export const BOUNDS: readonly Bound[] = LINES.trim()
  .split('\n')
  .map((line) => {
    const [limit = '', printed, ours] = line.split('|').map((part) => part.trim());
    return { limit, printed: figures(printed), ours: figures(ours) };
  });
