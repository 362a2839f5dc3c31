import { resolve } from 'node:path';
import { nearestWord, orList, PLAN_FORMATS, type PlanFormat } from '../index.ts';
import { badInput } from './fault.ts';

export type FormatName = PlanFormat | 'findings';

/** One thing to write: a form of the plan, and where it goes; `-` is standard output. */
export interface Output {
  readonly format: FormatName;
  readonly path: string;
}

export const FORMAT_NAMES: readonly FormatName[] = [...PLAN_FORMATS, 'findings'];

/**
 * Reads `NAME` or `NAME=PATH` arguments; Markdown to standard output when there is none.
 * @throws BadInput for an unknown name, and when two outputs, or an output and an input, are the same file.
 */
export function readOutputs(texts: readonly string[], inputs: readonly string[]): Output[] {
  if (texts.length === 0) return [{ format: 'markdown', path: '-' }];
  const taken = new Map(inputs.filter((input) => input !== '-').map((input) => [resolve(input), `the input ${input}`]));
  return texts.map((text) => {
    const equals = text.indexOf('=');
    const name = equals < 0 ? text : text.slice(0, equals);
    const path = equals < 0 ? '-' : text.slice(equals + 1);
    const format = FORMAT_NAMES.find((known) => known === name);
    if (format === undefined) {
      const near = nearestWord(name, FORMAT_NAMES);
      throw badInput(
        'cli/unknown-format',
        `there is no format "${name}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
        `write ${orList(FORMAT_NAMES)}`,
      );
    }
    if (path === '') throw badInput('cli/usage', `--format ${text} names no file`, `write ${name} or ${name}=PATH`);
    const place = path === '-' ? '-' : resolve(path);
    const other = taken.get(place);
    if (other !== undefined) throw badInput('cli/output-twice', `--format ${text} would write over ${other}`, 'give each output a file of its own');
    taken.set(place, path === '-' ? 'another output to standard output' : `the output --format ${text}`);
    return { format, path };
  });
}
