import type { YamlPath } from '../kernel/located-yaml.ts';
import { didYouMean } from '../kernel/spelling.ts';
import { dimensionOf, isUnit } from '../kernel/units.ts';
import { expressionFault } from './expression.ts';
import type { ReadRules } from './read.ts';
import { parseTemplate } from './template.ts';
import type { Binding, Condition, Origin, RuleKind, Source, Vocabulary } from './types.ts';

/** What rules are held against. */
export interface CheckContext {
  readonly vocabulary: Vocabulary;
  /** Every id that the vocabulary knows, to name the nearest. */
  readonly ids: readonly string[];
  /** The bibliography: of the folder itself, and of what it is laid over. */
  readonly sources: Readonly<Record<string, Source>>;
  /** How an expression will be evaluated; throws where it cannot be. */
  readonly evaluation: (text: string, uses: readonly Binding[]) => Condition;
}

/** One rule under check: reports at places inside it. */
export class Spot {
  constructor(
    private readonly read: ReadRules,
    private readonly context: CheckContext,
    private readonly what: RuleKind,
    private readonly id: string,
    readonly uses: readonly Binding[],
  ) {}

  report(code: Parameters<ReadRules['faults']['add']>[0], path: YamlPath, message: string, fix: string, notes?: readonly string[], part?: 'key'): void {
    this.read.faults.add(code, this.read.place(this.what, this.id, path, part), message, fix, notes);
  }

  origin(path: YamlPath, origin: Origin): void {
    if (origin.source.length > 0 || origin.status !== 'source') return;
    this.report('no-source', [...path, 'status'], 'a statement of status "source" names no source', 'name the source, or mark it derived, practice or memory');
  }

  /** The value that a finding is to point at. */
  pointsAt(id: string | undefined): void {
    if (id === undefined || this.context.vocabulary(id) !== undefined) return;
    this.report('unknown-value', ['at'], `no plan value is called "${id}"${didYouMean(id, this.context.ids)}`, 'see "diewright list values"');
  }

  usesAreSound(): boolean {
    return this.uses.map((use) => this.#useIsSound(use)).every((sound) => sound);
  }

  #useIsSound(use: Binding): boolean {
    const word = this.context.vocabulary(use.id);
    const report = (code: 'unknown-value' | 'unit-of-text' | 'unit-missing' | 'unknown-unit' | 'wrong-unit', message: string, fix: string): false => {
      this.report(code, ['uses', use.name], message, fix);
      return false;
    };
    if (word === undefined)
      return report('unknown-value', `no plan value is called "${use.id}"${didYouMean(use.id, this.context.ids)}`, 'see "diewright list values"');
    if ('text' in word) {
      return use.unit === undefined || report('unit-of-text', `"${use.id}" is a text and has no unit`, `write "${use.id}" without "in ${use.unit}"`);
    }
    const fix = `write "${use.id} in ${word.unit}"`;
    if (use.unit === undefined) return report('unit-missing', `"${use.id}" is a number: name the unit it is bound in`, fix);
    if (!isUnit(use.unit)) return report('unknown-unit', `"${use.unit as string}" is not a unit that is known`, fix);
    return dimensionOf(use.unit) === dimensionOf(word.unit) || report('wrong-unit', `"${use.id}" is in ${word.unit} and cannot be bound in ${use.unit}`, fix);
  }

  expression(path: YamlPath, text: string, wanted: 'bool' | 'number'): boolean {
    const fault = expressionFault(text, this.uses, wanted) ?? this.#notEvaluated(text);
    if (fault === undefined) return true;
    const names = this.uses.map((use) => use.name);
    const near = fault.unknown === undefined ? '' : didYouMean(fault.unknown, names);
    const place = this.read.place(this.what, this.id, path);
    const [from, to] = fault.range ?? [0, text.length];
    const fix =
      fault.unknown !== undefined
        ? `use a name of "uses": ${names.join(', ')}`
        : /overload/.test(fault.message)
          ? 'numbers are doubles: write 2.0 * x, not 2 * x; texts stand in quotes'
          : 'see the operations of CEL (Common Expression Language)';
    this.read.faults.add('expression', place?.within(text, from, Math.max(to, from + 1)), `"${text}": ${fault.message}${near}`, fix);
    return false;
  }

  #notEvaluated(text: string): { readonly message: string; readonly range?: undefined; readonly unknown?: undefined } | undefined {
    try {
      this.context.evaluation(text, this.uses);
      return undefined;
    } catch (error) {
      return { message: (error as Error).message.split('\n')[0] as string };
    }
  }

  template(path: YamlPath, text: string): void {
    try {
      for (const part of parseTemplate(text)) {
        if (part.kind === 'number') this.expression(path, part.expression, 'number');
        if (part.kind !== 'name' || this.uses.some((use) => use.name === part.name)) continue;
        const near = didYouMean(
          part.name,
          this.uses.map((use) => use.name),
        );
        const place = this.read.place(this.what, this.id, path)?.within(`{${part.name}}`, 0, part.name.length + 2);
        this.read.faults.add('template', place, `"{${part.name}}" is not among the names of uses${near}`, 'use a bound name, or {expression:digits}');
      }
    } catch (error) {
      this.report('template', path, (error as Error).message, 'close the brace');
    }
  }
}
