import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { SourceText } from '../index.ts';
import { MOST_PLAN_BYTES } from './check/beside.ts';
import { kindByName } from './check/kinds.ts';
import { readFileText } from './files.ts';

/** The plans that were written of a part earlier and lie beside it. */
export interface Committed {
  readonly json?: SourceText;
  readonly markdown?: SourceText;
}

/**
 * Plans beside a file `NAME.part.yaml` or `NAME.die.yaml`: `NAME.plan.json` and `NAME.plan.md`, or `plan.json` and `plan.md` where
 * they say that they are of that file.
 */
export function committedPlans(file: string): Committed {
  const folder = dirname(file);
  const stem = basename(file).replace(/(\.(part|die))?\.ya?ml$/, '');
  const read = (name: string): SourceText | undefined => {
    const path = join(folder, name);
    return existsSync(path) ? readFileText(path, MOST_PLAN_BYTES) : undefined;
  };
  const json = unlessOfOther(read(`${stem}.plan.json`), file, plannedFile) ?? ifOf(read('plan.json'), file, plannedFile);
  const markdown = unlessOfOther(read(`${stem}.plan.md`), file, readFrom) ?? ifOf(read('plan.md'), file, readFrom);
  return { ...(json === undefined ? {} : { json }), ...(markdown === undefined ? {} : { markdown }) };
}

/** The name that a plan in JSON gives the file of its part or die; undefined when it gives none. */
export function plannedFile({ text }: SourceText): string | undefined {
  const [, name] = /"(?:part|die)": \{[^{}]*"file": ("(?:[^"\\]|\\.)*")/.exec(text.slice(0, 100_000)) ?? [];
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

/** A part and a die may be named alike; a plan named after both is of the one that it says. */
function unlessOfOther(plan: SourceText | undefined, file: string, nameIn: (plan: SourceText) => string | undefined): SourceText | undefined {
  const kind = plan === undefined ? undefined : kindByName(nameIn(plan) ?? '');
  return kind === undefined || kind === (kindByName(file) ?? kind) ? plan : undefined;
}

function ifOf(plan: SourceText | undefined, file: string, nameIn: (plan: SourceText) => string | undefined): SourceText | undefined {
  if (plan === undefined) return undefined;
  const name = nameIn(plan);
  return name !== undefined && basename(name) === basename(file) ? plan : undefined;
}
