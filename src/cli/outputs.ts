import { resolve } from 'node:path';
import { nearestWord, orList, PLAN_FORMATS, type PlanFormat, SHEETS, type SheetName } from '../index.ts';
import { badInput } from './fault.ts';

export type FormatName = PlanFormat | 'findings';

/** One thing to write: a form of the plan, or a sheet for one reader, and where it goes; `-` is standard output. */
export type Output = { readonly format: FormatName; readonly path: string } | { readonly format: 'sheet'; readonly sheet: SheetName; readonly path: string };

export const FORMAT_NAMES: readonly FormatName[] = [...PLAN_FORMATS, 'findings'];

/**
 * Reads the `NAME` or `NAME=PATH` arguments of `--format` and `--sheet`, formats first; Markdown to standard output when
 * there is neither.
 * @throws BadInput for an unknown name, and when two outputs, or an output and an input, are the same file.
 */
export function readOutputs(formats: readonly string[], sheets: readonly string[], inputs: readonly string[]): Output[] {
  if (formats.length === 0 && sheets.length === 0) return [{ format: 'markdown', path: '-' }];
  const outputs: Output[] = [
    ...formats.map((text): Output => {
      const { name, path } = readArgument('format', text, FORMAT_NAMES);
      return { format: name, path };
    }),
    ...sheets.map((text): Output => {
      const { name, path } = readArgument('sheet', text, SHEETS);
      return { format: 'sheet', sheet: name, path };
    }),
  ];
  refuseSamePlace(
    outputs.map((output) => ({ path: output.path, option: optionText(output) })),
    inputs,
  );
  return outputs;
}

/** @throws BadInput when two outputs, or an output and an input, are the same file. */
export function refuseSamePlace(outputs: readonly { readonly path: string; readonly option: string }[], inputs: readonly string[]): void {
  const taken = new Map(inputs.filter((input) => input !== '-').map((input) => [resolve(input), `the input ${input}`]));
  for (const { path, option } of outputs) {
    const place = path === '-' ? '-' : resolve(path);
    const other = taken.get(place);
    if (other !== undefined) throw badInput('cli/output-twice', `${option} would write over ${other}`, 'give each output a file of its own');
    taken.set(place, place === '-' ? 'another output to standard output' : `the output ${option}`);
  }
}

/** An output as it was asked for: `--format json=plan.json`. */
export function optionText(output: Output): string {
  const name = output.format === 'sheet' ? `--sheet ${output.sheet}` : `--format ${output.format}`;
  return output.path === '-' ? name : `${name}=${output.path}`;
}

/** Reads `NAME` or `NAME=PATH`; `-` stands for standard output. @throws BadInput for a name that is not known, with the nearest. */
export function readArgument<Name extends string>(
  kind: 'format' | 'sheet',
  text: string,
  names: readonly Name[],
): { readonly name: Name; readonly path: string } {
  const equals = text.indexOf('=');
  const word = equals < 0 ? text : text.slice(0, equals);
  const path = equals < 0 ? '-' : text.slice(equals + 1);
  const name = names.find((known) => known === word);
  if (name === undefined) {
    const near = nearestWord(word, names);
    const meant = near === undefined ? '' : `; did you mean "${near}"?`;
    throw badInput(`cli/unknown-${kind}`, `there is no ${kind} "${word}"${meant}`, `write ${orList(names)}`);
  }
  if (path === '') throw badInput('cli/usage', `--${kind} ${text} names no file`, `write ${name} or ${name}=PATH`);
  return { name, path };
}

/** @throws BadInput for what is no number from 0 to `most`. */
export function readNumber(option: string, text: string, most: number, whole = false): number {
  const number = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (!(number <= most) || (whole && !Number.isInteger(number)))
    throw badInput('cli/usage', `--${option} ${text} is no ${whole ? 'whole ' : ''}number from 0 to ${most}`, `write a number, such as --${option} 2`);
  return number;
}
