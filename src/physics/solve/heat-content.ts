/** What the casting is made of. Temperatures in degC, heats in J/kg, specific heats in J/(kg.K), conductivity in W/(m.K), density in kg/m3. */
export interface Metal {
  readonly density: number;
  readonly conductivity: number;
  readonly liquidHeat: number;
  readonly solidHeat: number;
  readonly latent: number;
  readonly liquidus: number;
  readonly solidus: number;
}

/** What the die is made of, in the same units. */
export interface Steel {
  readonly density: number;
  readonly conductivity: number;
  readonly specificHeat: number;
}

/** Least freezing range in K: a pure metal freezes over this, so that its enthalpy has a slope. */
const LEAST_RANGE = 0.05;

/** Heat content of the metal over temperature, zero at the solidus, and back. The latent heat comes evenly over the freezing range. */
export class HeatContent {
  readonly #solid: number;
  readonly #mushy: number;
  readonly #liquid: number;
  readonly #solidus: number;
  readonly #liquidus: number;
  /** J/kg at the liquidus. */
  readonly #full: number;

  constructor(metal: Metal) {
    this.#liquidus = metal.liquidus;
    this.#solidus = Math.min(metal.solidus, metal.liquidus - LEAST_RANGE);
    const range = this.#liquidus - this.#solidus;
    this.#solid = metal.solidHeat;
    this.#mushy = metal.solidHeat + metal.latent / range;
    this.#liquid = metal.liquidHeat;
    this.#full = this.#mushy * range;
  }

  /** J/kg at a temperature in degC. */
  at(temperature: number): number {
    if (temperature <= this.#solidus) return this.#solid * (temperature - this.#solidus);
    if (temperature < this.#liquidus) return this.#mushy * (temperature - this.#solidus);
    return this.#full + this.#liquid * (temperature - this.#liquidus);
  }

  /** degC at a heat content in J/kg. */
  temperature(content: number): number {
    if (content <= 0) return this.#solidus + content / this.#solid;
    if (content < this.#full) return this.#solidus + content / this.#mushy;
    return this.#liquidus + (content - this.#full) / this.#liquid;
  }

  /** Kelvin for a joule per kilogram, at a heat content. */
  slope(content: number): number {
    if (content <= 0) return 1 / this.#solid;
    return content < this.#full ? 1 / this.#mushy : 1 / this.#liquid;
  }

  /** Share that is solid, 0 to 1. */
  solidShare(content: number): number {
    return Math.min(1, Math.max(0, 1 - content / this.#full));
  }
}
