import { resolve } from 'node:path';
import { nearestWord, orList } from '../../index.ts';
import { badInput } from '../fault.ts';

export const REPLAN_FORMATS = ['markdown', 'json', 'csv'] as const;

export interface ReplanOutput {
  readonly format: (typeof REPLAN_FORMATS)[number];
  /** `-` is standard output. */
  readonly path: string;
}

/**
 * Reads the `NAME` or `NAME=PATH` arguments of `--format`; Markdown to standard output when there is none.
 * @throws BadInput for an unknown name, and when two outputs, or an output and an input, are the same file.
 */
export function readReplanOutputs(formats: readonly string[], inputs: readonly string[]): ReplanOutput[] {
  const outputs = formats.length === 0 ? [{ format: 'markdown' as const, path: '-' }] : formats.map(readFormat);
  const taken = new Map(inputs.map((input) => [resolve(input), `the input ${input}`]));
  for (const { format, path } of outputs) {
    const place = path === '-' ? '-' : resolve(path);
    const other = taken.get(place);
    if (other !== undefined) throw badInput('cli/output-twice', `--format ${format} would write over ${other}`, 'give each output a file of its own');
    taken.set(place, `the output ${format}`);
  }
  return outputs;
}

function readFormat(text: string): ReplanOutput {
  const equals = text.indexOf('=');
  const word = equals < 0 ? text : text.slice(0, equals);
  const path = equals < 0 ? '-' : text.slice(equals + 1);
  const format = REPLAN_FORMATS.find((known) => known === word);
  if (format === undefined) {
    const near = nearestWord(word, REPLAN_FORMATS);
    throw badInput(
      'cli/unknown-format',
      `there is no format "${word}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
      `write ${orList(REPLAN_FORMATS)}`,
    );
  }
  if (path === '') throw badInput('cli/usage', `--format ${text} names no file`, `write ${format} or ${format}=PATH`);
  return { format, path };
}
