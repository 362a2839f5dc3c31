import { metalPressure } from '../../../physics/machine.ts';
import { ladleTime } from '../../../physics/slow-shot/speed.ts';
import type { Ledger } from '../../ledger.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { takes } from '../furnace/choice.ts';
import type { Candidate } from './candidate.ts';

// What a candidate must cost at least, from those that were worked out. It leaves out all that a machine or plunger could make
// cheaper, so that nothing is ruled out wrongly; the closer it is, the fewer candidates have to be worked out to the end.

/** A smaller plunger takes a narrower strip of the die, which shortens its sides and what hangs on them by some per cent. */
const SAME_LAYOUT = 0.85;
/** A layout with more cavities is larger, but may be more compact. */
const OTHER_LAYOUT = 0.7;
/** Of the steel of a die cut down to its least face: the height of the die and its inserts may be less too. */
const LEAST_STEEL = 0.8;

type Read = (id: ValueId) => number;

/** What a candidate comes to at least: money for a good part, and machine hours a year. */
export interface Least {
  readonly cost: number;
  readonly hours: number;
}

/** What is known of the cost from one candidate that was worked out. */
interface Known {
  readonly cavities: number;
  /** Lines that no machine, plunger or count changes. */
  readonly fixed: number;
  /** kg of casting and overflows of one cavity, and their volume in cm3 as a liquid. */
  readonly castMass: number;
  readonly castVolume: number;
  /** Money a part for each kg of the shot a part, and of trimming a shot. */
  readonly perShotMass: number;
  readonly trimming: number;
  readonly die: KnownDie;
  /** Money a part for an hourly rate of 1, a second of the cycle, and one cavity; and hours a year for that second. */
  readonly perSecond: number;
  readonly hoursPerSecond: number;
  /** s of the cycle that the engineer has pinned, for every candidate. */
  readonly pinned: number | undefined;
  /** s of the cycle for each second of the dry cycle, and s that no machine, plunger or count changes. */
  readonly dryShare: number;
  readonly constant: number;
  /** s of ladling for each second of the ladle's rule. */
  readonly ladleShare: number;
  /** MPa on the metal, with s that the casting then stays in the die, and the runner of this count. */
  readonly pressure: number;
  readonly casting: number;
  readonly runner: number;
  /** s of the elements that hang on the layout of the cavities and on neither machine nor plunger. */
  readonly layout: number;
}

/** Money a part of the dies of one count of cavities. */
interface KnownDie {
  /** Hours of the first dies, for one cavity; those for n cavities are n to this power as many. */
  readonly ofOne: number;
  readonly exponent: number;
  /** Further sets of inserts, over the first dies. */
  readonly sets: number;
  readonly setShare: number;
  /** Steel of the first dies, no larger than they must be. */
  readonly steel: number;
}

/** Lower bounds of the cost of a good part and of the machine hours, the closer the more is known. */
export class Floors {
  readonly #known: Known[] = [];

  /** How many candidates have taught it something. */
  get learnt(): number {
    return this.#known.length;
  }

  /** Learns from a candidate that was worked out to the end. */
  learn(trial: Ledger): void {
    const known = knownOf(trial);
    if (known === undefined) return;
    const again = this.#known.some(({ cavities, pressure }) => cavities === known.cavities && pressure === known.pressure);
    if (!again) this.#known.push(known);
  }

  /** Of a count of cavities on a machine, whatever the plunger; `wanted` is the pressure in MPa that the class of the part asks for. */
  ofMachine({ cavities, machine }: Pick<Candidate, 'cavities' | 'machine'>, wanted: number): Least {
    const smallest = Math.min(...machine.plungers.map(({ value }) => value));
    const reached = metalPressure.compute({
      hydraulic_pressure: (machine.pressureIntensified ?? machine.pressureFill).value,
      cylinder_diameter: machine.cylinderDiameter.value,
      plunger_diameter: smallest,
    });
    const [any] = this.#known;
    return this.#of({
      cavities,
      machine,
      pressure: machine.chamber === 'hot' ? reached : Math.min(reached, wanted),
      mass: any?.castMass ?? 0,
      ladled: cavities * (any?.castVolume ?? 0),
    });
  }

  /** Of a candidate whose shot is worked out. */
  ofTrial({ cavities, machine }: Pick<Candidate, 'cavities' | 'machine'>, trial: Ledger): Least {
    const number = reader(trial);
    return this.#of({
      cavities,
      machine,
      pressure: number('clamp.pressure-reached'),
      mass: number('shot.mass') / cavities,
      ladled: number('shot.liquid-volume'),
    });
  }

  #of(of: Pick<Candidate, 'cavities' | 'machine'> & { readonly pressure: number; readonly mass: number; readonly ladled: number }): Least {
    const { cavities, machine, pressure, mass, ladled } = of;
    const [any] = this.#known;
    const rate = machine.hourlyRate?.value;
    if (any === undefined || rate === undefined) return { cost: 0, hours: 0 };
    const same = this.#known.filter((one) => one.cavities === cavities);
    // What is pressed less freezes more slowly, so a time that is known for a higher pressure is the least.
    const longest = (list: readonly Known[], time: (one: Known) => number) =>
      list.reduce((most, one) => (one.pressure >= pressure - 1e-9 ? Math.max(most, time(one)) : most), 0);
    const dwell = Math.max(
      longest(this.#known, ({ casting }) => casting),
      longest(same, ({ runner }) => runner),
    );
    const smaller = this.#known.filter((one) => one.cavities < cavities);
    const layout = same[0] !== undefined ? SAME_LAYOUT * same[0].layout : OTHER_LAYOUT * Math.max(0, ...smaller.map((one) => one.layout));
    const ladle = ladled > 0 ? any.ladleShare * ladleTime.compute({ volume: ladled }) : 0;
    const time = any.pinned ?? any.dryShare * machine.dryCycle.value + any.constant + ladle + dwell + layout;
    return {
      cost: any.fixed + any.perShotMass * mass + any.trimming / cavities + dieFloor(same[0] ?? any, cavities) + (any.perSecond * rate * time) / cavities,
      hours: (any.hoursPerSecond * time) / cavities,
    };
  }
}

/** Sets are bought whole: of another count there is at least what the shots ask for when one set less had been enough here. */
function dieFloor({ cavities: known, die }: Known, cavities: number): number {
  const sets = known === cavities ? die.sets : Math.max(1, ((die.sets - 1) * known) / cavities);
  return die.ofOne * cavities ** die.exponent * (1 + (sets - 1) * die.setShare) + (known === cavities ? die.steel : 0);
}

function reader(trial: Ledger): Read {
  return (id) => trial.maybe(id)?.value ?? 0;
}

/** Undefined where the candidate has no cost. */
function knownOf(trial: Ledger): Known | undefined {
  const number = reader(trial);
  if (number('cost.per-part') <= 0 || number('machine.hourly-rate') <= 0 || number('cycle.time') <= 0) return undefined;
  const cavities = number('machine.cavities');
  const dry = number('machine.dry-cycle');
  const mass = number('shot.mass') / cavities;
  const ladle = ladleTime.compute({ volume: Math.max(number('shot.liquid-volume'), 1) });
  const sum = (...ids: readonly ValueId[]): number => ids.reduce((all, id) => all + number(id), 0);
  const times = trial.maybe('cost.trim-each') === undefined ? 0 : number('cost.trimming');
  const each = number('cost.trim-each');
  const whole = number('cost.trim-cycle') / cavities + each;
  const cheapest = cheapestPress(trial, number('cost.trim-rate'));
  return {
    cavities,
    fixed: sum('cost.metal', 'cost.machining', 'cost.impregnation') + (whole > 0 ? (cheapest * times * each) / whole : 0),
    perShotMass: mass > 0 ? (number('cost.melt-loss') + leastEnergy(trial, number('metal.melting-energy')) * number('cost.melting')) / mass : 0,
    trimming: whole > 0 ? (cheapest * times * number('cost.trim-cycle')) / whole : 0,
    die: dieOf(trial, number),
    castMass: number('gate.flow-mass'),
    castVolume: number('gate.flow-volume'),
    hoursPerSecond: trial.maybe('cycle.hours')?.kind === 'pinned' ? 0 : (number('cycle.hours') * cavities) / number('cycle.time'),
    pinned: trial.maybe('cycle.time')?.kind === 'pinned' ? number('cycle.time') : undefined,
    perSecond: (number('cost.machine') * cavities) / (number('machine.hourly-rate') * number('cycle.time')),
    dryShare: dry > 0 ? sum('cycle.close', 'cycle.lock', 'cycle.open', 'cycle.eject') / dry : 0,
    constant: sum('cycle.delay', 'cycle.signals', 'cycle.fill'),
    ladleShare: number('cycle.ladle') / ladle,
    pressure: number('clamp.pressure-reached'),
    casting: Math.max(number('cooling.ejection-time'), number('cooling.thick-time')),
    runner: number('cooling.runner-time'),
    layout: extraction(trial, number('cycle.extract')) + sum('cycle.spray', 'cycle.blow', 'cycle.inserts', 'cycle.cores-out', 'cycle.cores-in'),
  };
}

/** A die that the engineer has pinned costs the same for every count; of an estimate the hours grow as its rule says, and the steel comes on top. */
function dieOf(trial: Ledger, number: Read): KnownDie {
  const parts = number('cost.die-parts');
  if (parts <= 0) return { ofOne: 0, exponent: 0, sets: 1, setShare: 0, steel: 0 };
  const die = number('cost.die');
  const sets = { sets: Math.max(1, number('cost.sets')), setShare: die > 0 ? number('cost.set') / die : 0 };
  if (trial.maybe('cost.die')?.kind === 'pinned') return { ofOne: die / parts, exponent: 0, steel: 0, ...sets };
  const hours = number('cost.die-hours') * number('cost.toolmaker-rate');
  const trimDie = die > 0 ? number('cost.trim-die') / die : 0;
  const least = (number('die.block-width') * (number('die.block-height') - number('die.feeder-strip'))) / (number('die.width') * number('die.breadth'));
  return {
    ofOne: (hours * (1 + trimDie)) / parts,
    exponent: number('cost.exponent'),
    steel: (LEAST_STEEL * least * number('cost.die-steel')) / parts,
    ...sets,
  };
}

/** Another candidate may be trimmed on a cheaper press: its rate over that of the press here. */
function cheapestPress(trial: Ledger, rate: number): number {
  const others = (trial.plant.trimPresses ?? []).map(({ hourlyRate }) => hourlyRate?.value ?? trial.plant.prices?.trimming?.rate.value ?? rate);
  return rate > 0 ? Math.min(rate, ...others) / rate : 1;
}

/** A lighter shot may be melted in a furnace that takes less energy: its energy over that of the furnace here. */
function leastEnergy(trial: Ledger, energy: number): number {
  const others = (trial.plant.furnaces ?? []).flatMap((furnace) => (takes(trial, furnace) ? (furnace.energy?.value ?? []) : []));
  return energy > 0 ? Math.min(energy, ...others) / energy : 1;
}

/** Another machine may have its shots taken out faster, where the plant has both robots and hands. */
function extraction(trial: Ledger, time: number): number {
  return new Set(trial.plant.machines.map((machine) => machine.extraction ?? 'robot')).size > 1 ? 0 : time;
}
