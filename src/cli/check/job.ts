import type { SourceText } from '../../index.ts';
import { BadInput } from '../fault.ts';
import type { Io } from '../io.ts';
import { type SettingOptions, Surroundings } from '../settings.ts';
import type { Found } from './discover.ts';
import { type CheckedOne, type CheckSetting, checkerOf } from './run.ts';

/** What the files of a run are checked with, as plain data that can be handed to another thread. */
export interface CheckOrders {
  readonly options: SettingOptions;
  /** The plant that `--plant` names, read once. */
  readonly plant?: SourceText | undefined;
  readonly set: readonly string[];
  readonly shown: boolean;
}

/** What came of a file; undefined where something is wrong that no file could make good. */
export type Outcome = CheckedOne | undefined;

/** What a thread does with each file. */
export async function checkJob(orders: CheckOrders, io: Io): Promise<(file: Found) => Promise<Outcome>> {
  return unlessRefused(checkerOf(settingOf(orders, new Surroundings(orders.options, io))));
}

/** The same, where rules and plants are found. */
export function settingOf({ plant, set, shown }: CheckOrders, surroundings: Surroundings): CheckSetting {
  return {
    // The plant of the run is read once and known by its shown name; a plant of a project is that of the project.
    ground: async (path) =>
      plant === undefined ? surroundings.ground(path) : { rulebook: await surroundings.rulebook(await surroundings.settings(path)), plant },
    plant,
    set,
    shown,
  };
}

/** Checks files, and gives undefined where something is wrong that no file could make good. */
export function unlessRefused(check: (file: Found) => Promise<CheckedOne>): (file: Found) => Promise<Outcome> {
  return async (file) => {
    try {
      return await check(file);
    } catch (error) {
      if (error instanceof BadInput) return undefined;
      throw error;
    }
  };
}
