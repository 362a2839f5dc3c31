import type { MachineSpec } from '../../../spec/index.ts';
import type { Probed } from './evaluate.ts';

// A machine that is no better than another one in any measure of its clamp is stopped by what stopped that one. Most machines of a plant are
// far too small for a die, so this saves most of the trials.

/** The measures of a machine that limits of the clamp ask for more of. */
const MEASURES = ['lockingForce', 'tieBarX', 'tieBarY', 'openingStroke', 'dieHeightGreatest'] as const satisfies readonly (keyof MachineSpec)[];

/** A machine that a limit of the clamp stopped with its smallest plunger, for one count of cavities. */
export interface TooSmall {
  readonly entry: Probed;
  /** By how much the limit was missed, as a share. */
  readonly miss: number;
}

/**
 * The largest machine that is too small for a count of cavities, found by halving the list; undefined when none is, or where what
 * stopped it cannot be measured. `bySize` is sorted by locking force; `probed` gives a machine with its smallest plunger.
 */
export function largestTooSmall(bySize: readonly MachineSpec[], probed: (machine: MachineSpec) => Probed): TooSmall | undefined {
  let found: TooSmall | undefined;
  let [low, high] = [0, bySize.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const entry = probed(bySize[middle] as MachineSpec);
    const miss = entry.stop?.eases === 'machine' ? entry.stop.miss : undefined;
    if (miss !== undefined) {
      found = { entry, miss };
      low = middle + 1;
    } else high = middle;
  }
  return found;
}

/** Whether a machine is stopped by what stopped another one, because it has no more of anything and needs hardly less. */
export function isStoppedToo(machine: MachineSpec, { entry, miss }: TooSmall): boolean {
  const other = entry.candidate.machine;
  const share = Math.max(...MEASURES.map((measure) => machine[measure].value / other[measure].value));
  if (machine === other || share > 1) return false;
  // A smaller plunger makes a smaller biscuit and takes a narrower strip of the die; less pressure opens the die less.
  const number = (id: 'clamp.projected-area' | 'die.block-height' | 'clamp.feeder-diameter'): number => entry.trial.maybe(id)?.value ?? 0;
  const [one, less] = [number('clamp.feeder-diameter'), smallestOf(machine).value];
  const area = number('clamp.projected-area');
  const biscuit = area > 0 ? (Math.PI * Math.max(0, one ** 2 - less ** 2)) / 400 / area : 1;
  const strip = Math.max(0, one - less) / Math.max(1, number('die.block-height'));
  const pressure = Math.min(1, greatestPressure(machine) / greatestPressure(other));
  return (1 + miss) * (1 - Math.max(one > 0 ? biscuit : 0, strip)) * pressure > share;
}

export function smallestOf({ plungers }: MachineSpec): MachineSpec['plungers'][number] {
  return plungers.reduce((a, b) => (b.value < a.value ? b : a));
}

/** MPa on the metal with the smallest plunger. */
function greatestPressure(machine: MachineSpec): number {
  return (machine.pressureIntensified ?? machine.pressureFill).value * (machine.cylinderDiameter.value / smallestOf(machine).value) ** 2;
}
