import { equationOf } from '../kernel/formula.ts';
import { printTraced, type Traced } from '../kernel/traced.ts';
import { howOf, sourceAndStatus } from './how.ts';
import { visibleLine } from './visible.ts';
import { placeText } from './words.ts';

/**
 * The tree of one value: itself with its formula and the numbers put in, then, indented, each value it rests on, down to
 * what was given, read from a table or assumed. A value that was shown above is not spelt out again.
 */
export function derivationText(root: Traced, titles: ReadonlyMap<string, string>): string {
  const lines: string[] = [];
  const shown = new Set<string>();

  const show = (value: Traced, head: string, body: string): void => {
    const again = shown.has(value.id);
    lines.push(`${head}${value.id} = ${visibleLine(printTraced(value))}${again ? ' (see above)' : titled(value)}`);
    if (again) return;
    shown.add(value.id);
    const parents = distinct(value.parents);
    const bar = parents.length > 0 ? '│ ' : '  ';
    for (const line of ownLines(value)) lines.push(`${body}${bar}${visibleLine(line)}`);
    parents.forEach((parent, i) => {
      const last = i === parents.length - 1;
      show(parent, `${body}${last ? '└─ ' : '├─ '}`, `${body}${last ? '   ' : '│  '}`);
    });
  };
  const titled = (value: Traced): string => {
    const title = titles.get(value.id);
    return title === undefined ? '' : `  ${visibleLine(title)}`;
  };

  show(root, '', '');
  return `${lines.join('\n')}\n`;
}

/** What is said of one value between its number and the values it rests on. */
function ownLines(value: Traced): string[] {
  const { equations, table, remarks } = howOf(value);
  const { formula } = value;
  const byFormula = value.kind === 'formula' && formula !== undefined;
  return [
    ...(byFormula ? [`formula ${formula.id}: ${equationOf(formula)}`] : []),
    ...(byFormula && value.numbers !== undefined ? equations : []),
    ...(table === undefined ? [] : [`table ${table}`]),
    ...(remarks.length === 0 ? [] : [remarks.join('; ')]),
    ...(value.at === undefined ? [] : [`at ${placeText(value.at)}`]),
    ...(value.kind === 'input' ? [] : [`source: ${sourceAndStatus(value)}`]),
  ];
}

/** A value may stand for two inputs of one formula; it is listed once. */
function distinct(values: readonly Traced[]): Traced[] {
  const ids = new Set<string>();
  return values.filter((value) => !ids.has(value.id) && ids.add(value.id));
}
