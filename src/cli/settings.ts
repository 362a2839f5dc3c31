import { existsSync } from 'node:fs';
import { delimiter, dirname, join, relative, resolve, sep } from 'node:path';
import {
  type Adjustment,
  FAIL_ON,
  type FailOn,
  type HouseRules,
  houseRulebook,
  loadRulebook,
  type ProjectSpec,
  type Rulebook,
  readProject,
  type SourceText,
  testRules,
  visibleLine,
} from '../index.ts';
import { leadsOut } from './boundary.ts';
import { BadInput, badInput } from './fault.ts';
import { readText } from './files.ts';
import type { Io } from './io.ts';

/** The options of the command line that stand over environment and project file. */
export interface SettingOptions {
  readonly plant?: string;
  readonly rules?: readonly string[];
  readonly failOn?: FailOn;
}

/** What holds, and where it was set: `--plant`, `DIEWRIGHT_PLANT`, `diewright.yaml:3`, `built in`. */
export interface Setting<T> {
  readonly value: T;
  readonly from: string;
}

/** A file or folder: as the user names it, which is how plans name it, and the way to it from the current folder. */
export interface Named {
  readonly name: string;
  readonly at: string;
}

/** The settings for one input, each from the nearest that sets it: option, environment, project file, built in. */
export interface Settings {
  /** The project file that was found, seen from the current folder. */
  readonly project?: string;
  readonly plant: Setting<Named | undefined>;
  readonly rules: Setting<readonly Named[]>;
  readonly failOn: Setting<FailOn>;
  readonly adjusted: Setting<readonly Adjustment[]>;
}

/** What a part is planned with. */
export interface Ground {
  readonly rulebook: Rulebook;
  /** The built-in plant when absent. */
  readonly plant?: SourceText;
  readonly failOn: FailOn;
}

/** Name of a project file. */
export const PROJECT_FILE = 'diewright.yaml';
const BUILT_IN = 'built in';

/**
 * Finds and keeps the settings of a run. Inputs of one project share its rulebook and its plant; nothing is read twice,
 * and where no house rules are set nothing of their reader is loaded.
 */
export class Surroundings {
  /** The project file for each folder of inputs. */
  readonly #found = new Map<string, string | undefined>();
  readonly #projects = new Map<string, Promise<ProjectSpec>>();
  readonly #plants = new Map<string, Promise<SourceText>>();
  readonly #rulebooks = new Map<string, Promise<Rulebook>>();

  constructor(
    private readonly options: SettingOptions,
    private readonly io: Io,
  ) {}

  /**
   * The settings for an input; those of the current folder for `-` and for no input.
   * @throws BadInput for a project file or a variable of the environment that is wrong.
   */
  async settings(input?: string): Promise<Settings> {
    const path = this.#projectFile(input);
    const project = path === undefined ? undefined : await this.#project(path);
    const { plant, rules, failOn } = this.options;
    const { DIEWRIGHT_PLANT: plantOfEnv = '', DIEWRIGHT_RULES: rulesOfEnv = '' } = this.io.env;
    return {
      ...(path === undefined ? {} : { project: path }),
      plant: nearest<Named | undefined>(
        plant === undefined ? undefined : { value: asGiven(plant), from: '--plant' },
        plantOfEnv === '' ? undefined : { value: asGiven(plantOfEnv), from: 'DIEWRIGHT_PLANT' },
        project?.plant && { value: besideProject(project, project.plant), from: placed(project.plant) },
        { value: undefined, from: BUILT_IN },
      ),
      rules: nearest<readonly Named[]>(
        rules === undefined ? undefined : { value: rules.map(asGiven), from: '--rules' },
        rulesOfEnv === ''
          ? undefined
          : {
              value: rulesOfEnv
                .split(delimiter)
                .filter((name) => name !== '')
                .map(asGiven),
              from: 'DIEWRIGHT_RULES',
            },
        project?.rules && {
          value: project.rules.map((entry) => besideProject(project, entry)),
          from: project.rules[0] === undefined ? project.source.name : placed(project.rules[0]),
        },
        { value: [], from: BUILT_IN },
      ),
      failOn: nearest<FailOn>(
        failOn === undefined ? undefined : { value: failOn, from: '--fail-on' },
        failOnOf(this.io.env['DIEWRIGHT_FAIL_ON'] ?? ''),
        project?.failOn && { value: project.failOn.value, from: placed(project.failOn) },
        { value: 'error', from: BUILT_IN },
      ),
      adjusted: {
        value: (project?.adjusted ?? []).map((entry) => ({ ...entry, file: PROJECT_FILE })),
        from: project?.adjusted[0] === undefined ? BUILT_IN : placed(project.adjusted[0]),
      },
    };
  }

  /**
   * What an input is planned with.
   * @throws BadInput for anything wrong in project file, house rules or plant file.
   */
  async ground(input?: string): Promise<Ground> {
    const settings = await this.settings(input);
    const { plant, failOn } = settings;
    const rulebook = await this.rulebook(settings);
    return { rulebook, failOn: failOn.value, ...(plant.value === undefined ? {} : { plant: await this.#plant(plant.value.at) }) };
  }

  /** The rulebook that settings ask for, with house rules checked and laid over the built-in ones. */
  rulebook({ rules, adjusted, project }: Settings): Promise<Rulebook> {
    if (rules.value.length === 0 && adjusted.value.length === 0) return loadRulebook();
    const key = JSON.stringify([rules.value, adjusted.value.length === 0 ? '' : project]);
    return kept(this.#rulebooks, key, async () => houseRulesOf(rules.value, adjusted.value));
  }

  /**
   * Checks the house rules and adjustments that settings ask for, without a part, and runs the examples in them.
   * @throws BadInput when a folder or file of them cannot be read.
   */
  async testRules({ rules, adjusted }: Settings): ReturnType<typeof testRules> {
    return testRules(await loadRulebook(), await houseOf(rules.value, adjusted.value));
  }

  /** The file that `--plant` names, standard input for `-`. */
  #plant(path: string): Promise<SourceText> {
    return kept(this.#plants, path, () => readText(path, this.io));
  }

  #projectFile(input: string | undefined): string | undefined {
    const folder = folderOf(input);
    if (!this.#found.has(folder)) this.#found.set(folder, projectFileFor(input));
    return this.#found.get(folder);
  }

  #project(path: string): Promise<ProjectSpec> {
    return kept(this.#projects, path, async () => {
      const { project, diagnostics } = await readProject(await readText(path, this.io));
      if (project === undefined) throw new BadInput(diagnostics);
      return project;
    });
  }
}

async function houseOf(rules: readonly Named[], adjusted: readonly Adjustment[]): Promise<HouseRules> {
  const { readRuleFolder } = await import('./rule-folder.ts');
  return { folders: rules.map(({ name, at }) => ({ name, at, files: readRuleFolder(at) })), adjusted };
}

async function houseRulesOf(rules: readonly Named[], adjusted: readonly Adjustment[]): Promise<Rulebook> {
  const { rulebook, diagnostics } = await houseRulebook(await loadRulebook(), await houseOf(rules, adjusted));
  if (rulebook === undefined) throw new BadInput(diagnostics);
  return rulebook;
}

function kept<T>(by: Map<string, Promise<T>>, key: string, make: () => Promise<T>): Promise<T> {
  let found = by.get(key);
  if (found === undefined) {
    found = make();
    by.set(key, found);
  }
  return found;
}

/**
 * The project file for an input: in its folder or the nearest one above that has one, up to the folder that holds `.git`,
 * the top of a repository. Seen from the current folder, with forward slashes.
 */
export function projectFileFor(input?: string): string | undefined {
  let folder = folderOf(input);
  for (;;) {
    const path = join(folder, PROJECT_FILE);
    if (existsSync(path)) return slashes(relative('.', path));
    const above = dirname(folder);
    if (above === folder || existsSync(join(folder, '.git'))) return undefined;
    folder = above;
  }
}

function folderOf(input: string | undefined): string {
  return input === undefined || input === '-' ? resolve('.') : dirname(resolve(input));
}

function asGiven(name: string): Named {
  return { name: slashes(name), at: name };
}

/** A path of a project file is seen from that file. @throws BadInput where it leads out of the repository. */
function besideProject({ source }: ProjectSpec, { value: name, at: place }: NonNullable<ProjectSpec['plant']>): Named {
  const at = slashes(join(dirname(source.name), name));
  if (leadsOut(at, source.name)) {
    const message = `"${visibleLine(name)}" lies outside the repository of this file`;
    throw new BadInput([{ code: 'file/outside', severity: 'error', message, fix: 'copy it into the repository, or name it on the command line', at: place }]);
  }
  return { name: slashes(name), at };
}

function slashes(path: string): string {
  return path.split(sep).join('/');
}

function nearest<T>(...settings: readonly [...(Setting<T> | undefined)[], Setting<T>]): Setting<T> {
  return settings.find((setting) => setting !== undefined) as Setting<T>;
}

function placed({ at }: Pick<ProjectSpec['adjusted'][number], 'at'>): string {
  return `${at.source.name}:${at.position().line}`;
}

function failOnOf(text: string): Setting<FailOn> | undefined {
  if (text === '') return undefined;
  const value = FAIL_ON.find((word) => word === text);
  if (value === undefined) throw badInput('cli/environment', `DIEWRIGHT_FAIL_ON is "${text}"`, `set it to ${FAIL_ON.join(', ')}`);
  return { value, from: 'DIEWRIGHT_FAIL_ON' };
}
