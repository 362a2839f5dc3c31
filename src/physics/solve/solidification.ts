import { gradedDepths } from './graded.ts';
import type { Metal, Steel } from './heat-content.ts';
import { type Contact, HeatFlow } from './heat-flow.ts';

/** A section of the casting in the die, from a full cavity on. SI units, temperatures in degC. */
export interface Section {
  readonly metal: Metal;
  readonly steel: Steel;
  /** m, from the middle of a section cooled on both faces to its face, or the whole of one cooled on one face. */
  readonly half: number;
  readonly gateTemperature: number;
  readonly dieTemperature: number;
  /** W/(m2.K), while metal presses on the die: until the middle is solid. */
  readonly interface: number;
  /** W/(m2.K), once the casting is solid and shrinks away. */
  readonly gap: number;
}

/** When to stop: the middle solid, the mean at a temperature in degC (and solid), or a time in s gone by. */
export type Until = 'solid' | { readonly mean: number } | { readonly time: number };

/** How a section freezes and cools. Times in s from the full cavity, temperatures in degC. */
export interface Freezing {
  /** Until the middle is solid; not a number when the run stopped before. */
  readonly solid: number;
  /** When the run stopped. */
  readonly end: number;
  /** Mean temperature of the section then. */
  readonly mean: number;
  /** Highest temperature of the die surface until then. */
  readonly surfacePeak: number;
  /** Heat that the casting has given off until then, J/m2 of die face, and what the die has taken, which must be the same. */
  readonly heat: number;
  readonly taken: number;
  readonly samples: readonly FreezingSample[];
}

export interface FreezingSample {
  readonly time: number;
  readonly middle: number;
  readonly face: number;
  readonly mean: number;
  readonly solidShare: number;
  readonly surface: number;
}

/** How fine the grid and the steps are: `cells` in the casting and `steps` in the time that the interface alone would take. */
export interface Fineness {
  readonly cells: number;
  readonly steelCells: number;
  readonly steps: number;
}

export const FINENESS: Fineness = { cells: 8, steelCells: 24, steps: 60 };
/** The first step is this share of the later ones, for the flux begins steep; each is longer than the last until then. */
const FIRST_STEP = 0.02;
const GROWTH = 1.25;
/** Later on, when all is slow, a step may be this share of the time gone by, over the number of steps. */
const LATER = 0.6;
/** First cell of the steel over the half section, and how the cells grow: deep enough that the heat does not get to the far face before the section is solid. */
const FIRST_DEPTH = 0.055;
const DEPTH_RATIO = 1.22;
/** W/(m2.K). The far face of the steel stays at the temperature of the die: as good as held. */
const HELD = 1e6;
/** s. No section of a die casting takes as long; a run that does is no use. */
const LONGEST = 1e6;

/**
 * A section on its way from the full cavity, step by step, against die steel that is at one temperature and deep: latent heat over the
 * freezing range, heat conducted in casting and steel, an interface that opens when the middle is solid.
 */
export class Course {
  readonly flow: HeatFlow;
  readonly castingHeat: number;
  readonly #scale: number;
  readonly #steps: number;
  readonly #pressed: Contact;
  readonly #opened: Contact;
  readonly #steelHeat: number;
  #dt: number;
  #passed = 0;
  /** s gone by, and until the middle was solid; not a number before. */
  time = 0;
  solid = Number.NaN;
  /** Temperature of the die surface in degC, now and the highest until now. */
  surface: number;
  surfacePeak: number;

  constructor(section: Section, fineness: Fineness = FINENESS) {
    const { metal, steel, half } = section;
    const refined = fineness.steelCells / FINENESS.steelCells;
    const depths = gradedDepths((FIRST_DEPTH * half) / refined, DEPTH_RATIO ** (1 / refined), fineness.steelCells);
    this.flow = new HeatFlow(metal, steel, half, fineness.cells, depths);
    this.flow.pour(section.gateTemperature);
    this.flow.steel.fill(section.dieTemperature);
    [this.castingHeat, this.#steelHeat] = [this.flow.castingHeat, this.flow.steelHeat];
    this.#scale = timeScale(section, this.flow);
    this.#steps = fineness.steps;
    this.#pressed = { interface: section.interface, surfaceLoss: 0, far: HELD, coolant: section.dieTemperature };
    this.#opened = { ...this.#pressed, interface: section.gap };
    this.#dt = (FIRST_STEP * this.#scale) / fineness.steps;
    this.surface = section.dieTemperature;
    this.surfacePeak = section.dieTemperature;
  }

  /** Heat in J/m2 of die face that the casting has given off, and what the die has taken, which must be the same. */
  get heat(): number {
    return this.castingHeat - this.flow.castingHeat;
  }
  get taken(): number {
    return this.flow.steelHeat - this.#steelHeat + this.#passed;
  }

  /**
   * Makes one step, at most to `last`; gives its length in s.
   * @throws RangeError when the section is not there within days.
   */
  step(last: number): number {
    const { flow } = this;
    const contact = Number.isNaN(this.solid) ? this.#pressed : this.#opened;
    const before = flow.content[0] as number;
    const dt = Math.min(this.#dt, last - this.time);
    flow.step(dt, contact);
    this.time += dt;
    this.#passed += dt * flow.farLoss(contact);
    if (!(this.time < LONGEST)) throw new RangeError('the section does not cool as far');
    this.surface = flow.surface(contact);
    this.surfacePeak = Math.max(this.surfacePeak, this.surface);
    const middle = flow.content[0] as number;
    if (Number.isNaN(this.solid) && middle <= 0) this.solid = this.time - dt * (middle / (middle - before));
    this.#dt = Math.min(dt * GROWTH, Math.max(this.#scale, LATER * this.time) / this.#steps);
    return dt;
  }
}

/**
 * Freezes a section until it is as far as wanted.
 * @throws RangeError when the section is not there within days.
 */
export function freeze(section: Section, until: Until, fineness: Fineness = FINENESS): Freezing {
  const course = new Course(section, fineness);
  const { flow } = course;
  const target = until === 'solid' ? 0 : 'mean' in until ? flow.heat.at(until.mean) : Number.NEGATIVE_INFINITY;
  const last = until !== 'solid' && 'time' in until ? until.time : Number.POSITIVE_INFINITY;
  const samples = [sampleOf(flow, 0, section.dieTemperature)];
  for (;;) {
    const meanBefore = flow.meanContent;
    const dt = course.step(last);
    const { time, solid, surface, surfacePeak } = course;
    samples.push(sampleOf(flow, time, surface));
    const mean = flow.meanContent;
    const there = time >= last || (!Number.isNaN(solid) && (until === 'solid' || mean <= target));
    if (there) {
      const over = until !== 'solid' && 'mean' in until && meanBefore > target ? (dt * (target - mean)) / (meanBefore - mean) : 0;
      const end = until === 'solid' ? solid : Math.max(Number.isNaN(solid) ? 0 : solid, time - over);
      return { solid, end, mean: flow.castingMean, surfacePeak, heat: course.heat, taken: course.taken, samples };
    }
  }
}

function sampleOf(flow: HeatFlow, time: number, surface: number): FreezingSample {
  const solids = flow.content.reduce((sum, content) => sum + flow.heat.solidShare(content), 0);
  return { time, middle: flow.middle, face: flow.face, mean: flow.castingMean, solidShare: solids / flow.content.length, surface };
}

/** Time in s that the heat would take through the interface alone, or through the section alone when that is longer. */
function timeScale({ metal, half, interface: coefficient, gateTemperature, dieTemperature }: Section, flow: HeatFlow): number {
  const heat = flow.heat.at(gateTemperature);
  const rise = metal.solidus - dieTemperature;
  const byInterface = (metal.density * half * heat) / (coefficient * rise);
  const byConduction = (metal.density * half ** 2 * heat) / (2 * metal.conductivity * rise);
  return Math.max(byInterface, byConduction, 1e-6);
}
