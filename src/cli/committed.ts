import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { SourceText } from '../index.ts';
import { MOST_PLAN_BYTES, planNames } from './check/beside.ts';
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
  const found = (form: 'json' | 'markdown', nameIn: (plan: SourceText) => string | undefined): SourceText | undefined => {
    for (const { name, shared } of planNames(file).filter((one) => one.form === form)) {
      const path = join(dirname(file), name);
      const plan = existsSync(path) ? readFileText(path, MOST_PLAN_BYTES) : undefined;
      if (plan !== undefined && isOf(nameIn(plan), file, shared)) return plan;
    }
    return undefined;
  };
  const [json, markdown] = [found('json', plannedFile), found('markdown', readFrom)];
  return { ...(json === undefined ? {} : { json }), ...(markdown === undefined ? {} : { markdown }) };
}

/**
 * Whether a plan is of a file, by the name that it gives: one for the folder must say that file. One that is named after the file
 * is of it whatever it says, but for a part and a die that are named alike.
 */
function isOf(named: string | undefined, file: string, shared: boolean): boolean {
  if (shared) return named !== undefined && basename(named) === basename(file);
  const [said, kind] = [kindByName(named ?? ''), kindByName(file)];
  return said === undefined || kind === undefined || said === kind;
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
