import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { SourceText } from '../index.ts';
import { readText } from './files.ts';
import type { Io } from './io.ts';

/** The plans that were written of a part earlier and lie beside it. */
export interface Committed {
  readonly json?: SourceText;
  readonly markdown?: SourceText;
}

/**
 * Plans beside a part file `NAME.part.yaml`: `NAME.plan.json` and `NAME.plan.md`, or `plan.json` and `plan.md` where they say that
 * they are of that file.
 */
export async function committedPlans(file: string, io: Io): Promise<Committed> {
  const folder = dirname(file);
  const stem = basename(file).replace(/(\.part)?\.ya?ml$/, '');
  const read = async (name: string): Promise<SourceText | undefined> => {
    const path = join(folder, name);
    return existsSync(path) ? readText(path, io) : undefined;
  };
  const json = (await read(`${stem}.plan.json`)) ?? ifOf(await read('plan.json'), file, plannedFile);
  const markdown = (await read(`${stem}.plan.md`)) ?? ifOf(await read('plan.md'), file, readFrom);
  return { ...(json === undefined ? {} : { json }), ...(markdown === undefined ? {} : { markdown }) };
}

/** The name that a plan in JSON gives its part file; undefined when it gives none. */
export function plannedFile({ text }: SourceText): string | undefined {
  const [, name] = /"part": \{[^{}]*"file": ("(?:[^"\\]|\\.)*")/.exec(text.slice(0, 100_000)) ?? [];
  try {
    return name === undefined ? undefined : (JSON.parse(name) as string);
  } catch {
    return undefined;
  }
}

/** The same of a plan in Markdown. */
function readFrom({ text }: SourceText): string | undefined {
  return /^[*-] Read from `([^`]+)`/m.exec(text.slice(0, 100_000))?.[1];
}

function ifOf(plan: SourceText | undefined, file: string, nameIn: (plan: SourceText) => string | undefined): SourceText | undefined {
  if (plan === undefined) return undefined;
  const name = nameIn(plan);
  return name !== undefined && basename(name) === basename(file) ? plan : undefined;
}
