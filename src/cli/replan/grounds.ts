import type { Diagnostic, Rulebook, SourceText } from '../../index.ts';
import { BadInput } from '../fault.ts';
import type { Io } from '../io.ts';
import { Surroundings } from '../settings.ts';

/** What the command line names in place of what the project of a part sets. */
export interface InPlaceOf {
  readonly rules?: readonly string[];
  readonly plantBefore?: SourceText;
  readonly plantAfter?: SourceText;
}

/** The rulebooks of a run, of the plans before and of the plans after, each once. */
export interface Rulebooks {
  readonly before: readonly [Rulebook, ...Rulebook[]];
  readonly after: readonly [Rulebook, ...Rulebook[]];
}

interface PlanGround {
  readonly rulebook: Rulebook;
  readonly plant?: SourceText;
}

/**
 * What each part is planned with, before and after: rules and plant of its own project. For the plan after `--rules` stands in
 * the place of the rules, and a plant that is given in the place of the plant.
 */
export class Grounds {
  readonly #before: Surroundings;
  readonly #after: Surroundings;

  constructor(
    private readonly given: InPlaceOf,
    io: Io,
  ) {
    this.#before = new Surroundings({}, io);
    this.#after = given.rules === undefined ? this.#before : new Surroundings({ rules: given.rules }, io);
  }

  /** @throws BadInput when project file, house rules or plant of the part cannot be read. */
  async of(file: string): Promise<{ readonly before: PlanGround; readonly after: PlanGround }> {
    const { plantBefore, plantAfter } = this.given;
    return { before: await groundOf(this.#before, file, plantBefore), after: await groundOf(this.#after, file, plantAfter) };
  }

  /**
   * Every rulebook that these files ask for; the built-in one when there are no files.
   * @throws BadInput with the faults of all projects, each once.
   */
  async rulebooks(files: readonly string[]): Promise<Rulebooks> {
    const faults = new Map<string, Diagnostic>();
    const before = await rulebooksOf(this.#before, files, faults);
    const after = await rulebooksOf(this.#after, files, faults);
    if (before === undefined || after === undefined) throw new BadInput([...faults.values()]);
    return { before, after };
  }
}

async function groundOf(surroundings: Surroundings, file: string, plant: SourceText | undefined): Promise<PlanGround> {
  if (plant === undefined) {
    const { failOn: _, ...ground } = await surroundings.ground(file);
    return ground;
  }
  return { rulebook: await surroundings.rulebook(await surroundings.settings(file)), plant };
}

async function rulebooksOf(surroundings: Surroundings, files: readonly string[], faults: Map<string, Diagnostic>): Promise<Rulebooks['before'] | undefined> {
  const found = new Set<Rulebook>();
  for (const file of files.length === 0 ? [undefined] : files) {
    try {
      found.add(await surroundings.rulebook(await surroundings.settings(file)));
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      // Parts of one project are given the same faults.
      for (const fault of error.diagnostics) faults.set([fault.code, fault.at?.source.name, fault.at?.position().line, fault.message].join('\u0000'), fault);
    }
  }
  const [first, ...others] = found;
  return faults.size > 0 || first === undefined ? undefined : [first, ...others];
}
