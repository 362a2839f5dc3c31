import { columnsOf, padTo, wrap } from './columns.ts';
import { visible } from './visible.ts';

const WIDTH = 80;

/** A label and what stands beside it: prose is wrapped, a list of lines stands as it is, undefined or nothing is left out. */
export type Field = readonly [label: string, text: string | readonly string[] | undefined];

/** A headed block of labelled lines, the form of everything that `explain` and `calc` print. */
export function fieldsText(heading: string, fields: readonly Field[]): string {
  const given = fields.filter(([, text]) => text !== undefined && text.length > 0);
  const width = Math.max(0, ...given.map(([label]) => columnsOf(label)));
  const lines = [visible(heading)];
  for (const [label, text] of given) {
    const indent = ' '.repeat(width + 4);
    const body =
      typeof text === 'string'
        ? visible(text)
            .split('\n')
            .flatMap((line) => wrap(line, WIDTH, indent))
        : (text as readonly string[]).map((line) => indent + visible(line));
    lines.push(`  ${padTo(label, width)}  ${(body[0] as string).slice(indent.length)}`, ...body.slice(1));
  }
  return `${lines.join('\n')}\n`;
}
