import { HeatContent, type Metal, type Steel } from './heat-content.ts';

/** What the outside does to the two bodies during a step. */
export interface Contact {
  /** Coefficient between casting and die in W/(m2.K); 0 when the die is open, and only the die is then stepped. */
  readonly interface: number;
  /** Heat that leaves the die surface otherwise, such as by spray, in W/m2. */
  readonly surfaceLoss: number;
  /** Coefficient from the far face of the steel to the coolant in W/(m2.K); 0 for a die that is deep enough. */
  readonly far: number;
  readonly coolant: number;
}

/** Newton's method ends after a round in which no cell changed by more than this share of its heat range: what is left then is its square. */
const AGREEMENT = 1e-5;
const MOST_ROUNDS = 25;

/**
 * One dimension from the middle of the casting, which no heat crosses, through the face of the die to the depth of the
 * cooling lines: finite volumes, enthalpy in the casting, temperature in the steel, stepped implicitly. A casting cooled
 * on one face only is the same with its whole thickness for the half.
 */
export class HeatFlow {
  /** Heat content of the cells of the casting from the middle outwards, J/kg. */
  readonly content: Float64Array;
  /** Temperature of the cells of the steel from the face inwards, degC. */
  readonly steel: Float64Array;
  readonly heat: HeatContent;
  readonly #cellsCasting: number;
  readonly #dx: number;
  readonly #depths: Float64Array;
  /** Between neighbours, W/(m2.K): casting cells, then (at the place of the face) the two half cells in series without the interface, then steel. */
  readonly #between: Float64Array;
  readonly #halfCasting: number;
  readonly #halfSteel: number;
  readonly #halfFar: number;
  readonly #massCasting: number;
  readonly #massSteel: Float64Array;
  readonly #diagonal: Float64Array;
  readonly #right: Float64Array;
  readonly #old: Float64Array;
  readonly #temperature: Float64Array;
  readonly #slope: Float64Array;

  /**
   * @param half m, from the middle of the casting to its face
   * @param depths m, thickness of each cell of the steel
   */
  constructor(metal: Metal, steel: Steel, half: number, cells: number, depths: Float64Array) {
    const n = cells + depths.length;
    this.heat = new HeatContent(metal);
    this.content = new Float64Array(cells);
    this.steel = new Float64Array(depths.length);
    this.#cellsCasting = cells;
    this.#dx = half / cells;
    this.#depths = depths;
    this.#halfCasting = this.#dx / 2 / metal.conductivity;
    this.#halfSteel = (depths[0] as number) / 2 / steel.conductivity;
    this.#halfFar = (depths[depths.length - 1] as number) / 2 / steel.conductivity;
    this.#massCasting = metal.density * this.#dx;
    this.#massSteel = depths.map((depth) => steel.density * steel.specificHeat * depth);
    this.#between = new Float64Array(n - 1);
    for (let i = 0; i < n - 1; i += 1) {
      if (i < cells - 1) this.#between[i] = metal.conductivity / this.#dx;
      else if (i >= cells) this.#between[i] = (2 * steel.conductivity) / ((depths[i - cells] as number) + (depths[i - cells + 1] as number));
    }
    this.#diagonal = new Float64Array(n);
    this.#right = new Float64Array(n);
    this.#old = new Float64Array(n);
    this.#temperature = new Float64Array(n);
    this.#slope = new Float64Array(n);
  }

  /** Fills the cavity with metal of one temperature. */
  pour(temperature: number): void {
    this.content.fill(this.heat.at(temperature));
  }

  /** Mean temperature of the casting by its heat content, degC. */
  get castingMean(): number {
    return this.heat.temperature(this.meanContent);
  }

  get meanContent(): number {
    let sum = 0;
    for (const content of this.content) sum += content;
    return sum / this.content.length;
  }

  /** Temperature in the middle of the casting and at its face, degC, led on from the outer cells. */
  get middle(): number {
    return this.heat.temperature(this.content[0] as number);
  }
  get face(): number {
    return this.heat.temperature(this.content[this.#cellsCasting - 1] as number);
  }

  /** Thickness of a cell of the steel, m. */
  depthOf(cell: number): number {
    return this.#depths[cell] as number;
  }

  /** Heat of the casting above its solidus and of the steel above 0 degC, J/m2. */
  get castingHeat(): number {
    return this.#massCasting * this.meanContent * this.content.length;
  }
  get steelHeat(): number {
    let sum = 0;
    for (let i = 0; i < this.steel.length; i += 1) sum += (this.#massSteel[i] as number) * (this.steel[i] as number);
    return sum;
  }

  /** Heat flux into the coolant at the far face now, W/m2. */
  farLoss({ far, coolant }: Contact): number {
    return far === 0 ? 0 : ((this.steel[this.steel.length - 1] as number) - coolant) / (1 / far + this.#halfFar);
  }

  /** Heat flux from casting to die now, W/m2. */
  faceFlux(contact: Contact): number {
    return contact.interface === 0 ? 0 : (this.face - (this.steel[0] as number)) / this.#resistance(contact);
  }

  /** Temperature of the die surface, degC: of the first cell, led to the face by the flux that crosses it. */
  surface(contact: Contact): number {
    return (this.steel[0] as number) + (this.faceFlux(contact) - contact.surfaceLoss) * this.#halfSteel;
  }

  #resistance(contact: Contact): number {
    return this.#halfCasting + 1 / contact.interface + this.#halfSteel;
  }

  /** Steps by `dt` seconds, implicitly. */
  step(dt: number, contact: Contact): void {
    const closed = contact.interface > 0;
    const cells = this.#cellsCasting;
    const n = cells + this.steel.length;
    const first = closed ? 0 : cells;
    const between = this.#between;
    between[cells - 1] = closed ? 1 / this.#resistance(contact) : 0;
    const far = contact.far === 0 ? 0 : 1 / (1 / contact.far + this.#halfFar);
    this.#old.set(this.content);
    this.#old.set(this.steel, cells);
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      this.#linearise(first, n);
      this.#assemble(first, n, dt, contact.surfaceLoss, far, contact.coolant);
      if (this.#solve(first, n) < AGREEMENT || !closed) break;
    }
  }

  /** Temperatures and their slopes over the unknowns at the present guess. */
  #linearise(first: number, n: number): void {
    const cells = this.#cellsCasting;
    for (let i = first; i < n; i += 1) {
      if (i < cells) {
        const content = this.content[i] as number;
        this.#temperature[i] = this.heat.temperature(content);
        this.#slope[i] = this.heat.slope(content);
      } else {
        this.#temperature[i] = this.steel[i - cells] as number;
        this.#slope[i] = 1;
      }
    }
  }

  /** Balance of every cell that the guess misses, and its derivative by the cell's own unknown. */
  #assemble(first: number, n: number, dt: number, loss: number, far: number, coolant: number): void {
    const cells = this.#cellsCasting;
    const [between, temperature, slope] = [this.#between, this.#temperature, this.#slope];
    for (let i = first; i < n; i += 1) {
      const mass = (i < cells ? this.#massCasting : (this.#massSteel[i - cells] as number)) / dt;
      const now = i < cells ? (this.content[i] as number) : (this.steel[i - cells] as number);
      const here = temperature[i] as number;
      let balance = mass * (now - (this.#old[i] as number));
      let conductance = 0;
      if (i > first) {
        balance += (between[i - 1] as number) * (here - (temperature[i - 1] as number));
        conductance += between[i - 1] as number;
      }
      if (i < n - 1) {
        balance += (between[i] as number) * (here - (temperature[i + 1] as number));
        conductance += between[i] as number;
      } else if (far > 0) {
        balance += far * (here - coolant);
        conductance += far;
      }
      if (i === cells) balance += loss;
      this.#right[i] = -balance;
      this.#diagonal[i] = mass + conductance * (slope[i] as number);
    }
  }

  /** Solves the three-banded system in place (Thomas) and adds the correction; returns the largest one, as a share. */
  #solve(first: number, n: number): number {
    const [between, slope, diagonal, right] = [this.#between, this.#slope, this.#diagonal, this.#right];
    for (let i = first + 1; i < n; i += 1) {
      const lower = -(between[i - 1] as number) * (slope[i - 1] as number);
      const upper = -(between[i - 1] as number) * (slope[i] as number);
      const factor = lower / (diagonal[i - 1] as number);
      diagonal[i] = (diagonal[i] as number) - factor * upper;
      right[i] = (right[i] as number) - factor * (right[i - 1] as number);
    }
    let largest = 0;
    let next = 0;
    for (let i = n - 1; i >= first; i -= 1) {
      const upper = i < n - 1 ? -(between[i] as number) * (slope[i + 1] as number) : 0;
      const change = ((right[i] as number) - upper * next) / (diagonal[i] as number);
      next = change;
      if (i < this.#cellsCasting) {
        this.content[i] = (this.content[i] as number) + change;
        largest = Math.max(largest, Math.abs(change) / 4e5);
      } else {
        this.steel[i - this.#cellsCasting] = (this.steel[i - this.#cellsCasting] as number) + change;
        largest = Math.max(largest, Math.abs(change) / 400);
      }
    }
    return largest;
  }
}
