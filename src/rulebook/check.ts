import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { LocatedYaml } from '../kernel/located-yaml.ts';
import { didYouMean } from '../kernel/spelling.ts';
import { sourceKey } from '../kernel/status.ts';
import { dimensionOf, isUnit } from '../kernel/units.ts';
import { expressionFault, parseExpression, treeOf } from './expression.ts';
import { parseTemplate } from './template.ts';
import type { Binding, Given, Origin, Rulebook, Table, Vocabulary } from './types.ts';

/** Sources that need no entry in the bibliography: what the user wrote, and our own decisions. */
const OWN_SOURCES = new Set(['PART', 'PLANT']);

/** Everything about a rulebook that its shape does not settle; each fault points at the line of its file. */
export function checkRulebook(rulebook: Omit<Rulebook, 'conditions'>, documents: ReadonlyMap<string, LocatedYaml>, vocabulary: Vocabulary): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const report = (file: string, path: readonly (string | number)[], code: string, message: string, fix: string): void => {
    const at = documents.get(file)?.place(path);
    faults.push({ code: `rules/${code}`, severity: 'error', message, fix, ...(at === undefined ? {} : { at }) });
  };

  const checkOrigin = (file: string, path: readonly (string | number)[], origin: Origin): void => {
    if (origin.source.length === 0 && origin.status === 'source')
      report(file, path, 'no-source', `a figure of status "${origin.status}" names no source`, 'name the source, or mark it derived, practice or memory');
    for (const ref of origin.source) {
      const key = sourceKey(ref);
      if (!OWN_SOURCES.has(key) && !Object.hasOwn(rulebook.sources, key))
        report(
          file,
          path,
          'unknown-source',
          `source "${key}" is not in sources.yaml${didYouMean(key, Object.keys(rulebook.sources))}`,
          'add it to sources.yaml or correct the key',
        );
    }
  };

  const checkUses = (file: string, path: readonly (string | number)[], uses: readonly Binding[]): boolean => {
    let sound = true;
    for (const use of uses) {
      const at = [...path, 'uses', use.name];
      const word = vocabulary(use.id);
      if (word === undefined) report(file, at, 'unknown-value', `no plan value is called "${use.id}"`, 'see "diewright list values"');
      else if ('text' in word && use.unit !== undefined)
        report(file, at, 'unit-of-text', `"${use.id}" is a text and has no unit`, `write "${use.id}" without "in ${use.unit}"`);
      else if ('unit' in word && use.unit === undefined)
        report(file, at, 'unit-missing', `"${use.id}" is a number: name the unit it is bound in`, `write "${use.id} in ${word.unit}"`);
      else if ('unit' in word && use.unit !== undefined && (!isUnit(use.unit) || dimensionOf(use.unit) !== dimensionOf(word.unit)))
        report(file, at, 'wrong-unit', `"${use.id}" is in ${word.unit} and cannot be bound in ${use.unit}`, `write "${use.id} in ${word.unit}"`);
      else continue;
      sound = false;
    }
    return sound;
  };

  const checkExpression = (file: string, path: readonly (string | number)[], text: string, uses: readonly Binding[], wanted: 'bool' | 'number'): boolean => {
    const fault = expressionFault(text, uses, wanted) ?? faultOf(() => treeOf(text));
    if (fault !== undefined) report(file, path, 'expression', `"${text}": ${fault}`, 'numbers are doubles: write 2.0 * x, not 2 * x');
    return fault === undefined;
  };

  const checkTemplate = (file: string, path: readonly (string | number)[], text: string, uses: readonly Binding[]): void => {
    try {
      for (const part of parseTemplate(text)) {
        if (part.kind === 'number') checkExpression(file, path, part.expression, uses, 'number');
        if (part.kind === 'name' && !uses.some((use) => use.name === part.name))
          report(file, path, 'template', `"{${part.name}}" is not among the names of uses`, 'use a bound name, or {expression:digits}');
      }
    } catch (error) {
      report(file, path, 'template', (error as Error).message, 'close the brace');
    }
  };

  const run = (expression: string, uses: readonly Binding[], given: Given): unknown => {
    try {
      return parseExpression(expression, uses)(Object.fromEntries(Object.entries(given).map(([k, v]) => [k, v])));
    } catch (error) {
      return `fails: ${(error as Error).message.split('\n')[0]}`;
    }
  };

  for (const table of Object.values(rulebook.tables)) checkTable(table, report, checkOrigin);

  for (const choice of Object.values(rulebook.choices)) {
    const [topic, name] = choice.id.split('.') as [string, string];
    const file = `choices/${topic}.yaml`;
    const path = ['decisions', name];
    if (!checkUses(file, path, choice.uses)) continue;
    const sound = choice.rows.map((row, i) => {
      checkOrigin(file, [...path, 'rows', i], row);
      return checkExpression(file, [...path, 'rows', i, 'when'], row.when, choice.uses, 'bool');
    });
    if (sound.includes(false)) continue;
    choice.examples.forEach((example, i) => {
      const row = choice.rows.find((candidate) => run(candidate.when, choice.uses, example.given) === true);
      if (row?.choose !== example.chooses)
        report(
          file,
          [...path, 'examples', i],
          'example',
          `the example chooses ${row?.choose ?? 'nothing'}, not ${example.chooses}`,
          'correct the rows or the example',
        );
    });
  }

  for (const limit of Object.values(rulebook.limits)) {
    const file = `limits/${limit.id}.yaml`;
    checkOrigin(file, [], limit);
    if (!checkUses(file, [], limit.uses)) continue;
    checkTemplate(file, ['message'], limit.message, limit.uses);
    checkTemplate(file, ['fix'], limit.fix, limit.uses);
    const sound = [checkExpression(file, ['when'], limit.when, limit.uses, 'bool'), checkExpression(file, ['require'], limit.require, limit.uses, 'bool')];
    if (sound.includes(false)) continue;
    for (const wanted of [true, false]) {
      if (!limit.examples.some((example) => example.holds === wanted))
        report(file, ['examples'], 'example', `no example that ${wanted ? 'holds' : 'does not hold'}`, 'give at least one of each');
    }
    limit.examples.forEach((example, i) => {
      const holds = run(limit.when, limit.uses, example.given) !== true || run(limit.require, limit.uses, example.given) === true;
      if (holds !== example.holds)
        report(
          file,
          ['examples', i],
          'example',
          `the example ${holds ? 'holds' : `does not hold (${String(run(limit.require, limit.uses, example.given))})`}, but says otherwise`,
          'correct the rule or the example',
        );
    });
  }

  for (const caution of Object.values(rulebook.cautions)) {
    const [topic, name] = caution.id.split('/') as [string, string];
    const file = `cautions/${topic}.yaml`;
    const path = ['cautions', name];
    checkOrigin(file, path, caution);
    if (!checkUses(file, path, caution.uses) || !checkExpression(file, [...path, 'when'], caution.when, caution.uses, 'bool')) continue;
    caution.examples.forEach((example, i) => {
      if ((run(caution.when, caution.uses, example.given) === true) !== example.applies)
        report(file, [...path, 'examples', i], 'example', 'the example does not behave as it says', 'correct the trigger or the example');
    });
  }

  for (const alloy of Object.values(rulebook.alloys)) {
    const file = `alloys/${alloy.family}.yaml`;
    const path = ['alloys', alloy.id];
    checkOrigin(file, [...path, 'chamber'], alloy.chamber);
    checkOrigin(file, [...path, 'composition'], alloy.composition);
    for (const [name, property] of Object.entries(alloy.properties)) {
      checkOrigin(file, [...path, 'properties', name], property);
      const word = vocabulary(`alloy.${name.replaceAll('_', '-')}`);
      if (word === undefined || 'text' in word)
        report(file, [...path, 'properties', name], 'unknown-value', `no alloy property is called "${name}"`, 'see DEVELOPERS.md for the names');
      else if (dimensionOf(word.unit) !== dimensionOf(property.unit))
        report(file, [...path, 'properties', name], 'wrong-unit', `"${name}" is in ${word.unit}, not ${property.unit}`, `write it in ${word.unit}`);
    }
  }
  return faults;
}

/** The message of what a piece of work throws, if it does. */
function faultOf(work: () => unknown): string | undefined {
  try {
    work();
    return undefined;
  } catch (error) {
    return (error as Error).message.split('\n')[0];
  }
}

type Report = (file: string, path: readonly (string | number)[], code: string, message: string, fix: string) => void;

function checkTable(table: Table, report: Report, checkOrigin: (file: string, path: readonly (string | number)[], origin: Origin) => void): void {
  const file = `tables/${table.id}.yaml`;
  const seen = new Set<string>();
  table.rows.forEach((row) => {
    const key = JSON.stringify(table.axes.map((axis) => row.at[axis.name]));
    if (seen.has(key)) report(file, ['rows'], 'row-twice', `two rows stand at ${key}`, 'keep one');
    seen.add(key);
    for (const axis of table.axes) {
      const at = row.at[axis.name];
      if (axis.kind === 'word' && !axis.values.includes(at as string))
        report(
          file,
          ['rows'],
          'unknown-word',
          `"${String(at)}" is not a value of axis ${axis.name}${didYouMean(String(at), axis.values)}`,
          `use ${axis.values.join(', ')}`,
        );
      if (axis.kind === 'number' && typeof at !== 'number')
        report(file, ['rows'], 'axis-number', `axis ${axis.name} needs a number in each row`, 'give the number');
    }
    for (const figure of Object.values(row.cells)) if (figure !== null) checkOrigin(file, ['rows'], figure);
  });
  if (table.axes.filter((axis) => axis.kind === 'number' && axis.reading === 'linear').length > 1)
    report(file, ['axes'], 'two-linear-axes', 'only one axis can be interpolated', 'make the other one up-to');
}
