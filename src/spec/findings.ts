import type { Diagnostic } from '../kernel/diagnostic.ts';
import { type LocatedYaml, pathText, type YamlPath } from '../kernel/located-yaml.ts';
import { oneLine, printable } from '../kernel/printable.ts';
import type { CodeName } from './codes.ts';

/** What a message calls an entry of each list. */
const ENTRY_NAMES: Readonly<Record<string, string>> = {
  walls: 'wall',
  holes: 'hole',
  undercuts: 'undercut',
  inserts: 'insert',
  ribs: 'rib',
  fillets: 'fillet',
  dimensions: 'dimension',
  machining: 'machined face',
  machines: 'machine',
  parts: 'part',
  furnaces: 'furnace',
  cooling: 'cooling unit',
  trim_presses: 'trim press',
  accepted: 'acceptance',
  adjusted: 'adjustment',
};
const MOST_FINDINGS = 100;

export interface FindingDetails {
  readonly fix?: string | undefined;
  readonly notes?: readonly string[] | undefined;
  readonly severity?: Diagnostic['severity'];
  readonly part?: 'value' | 'key';
  /** What the message is about, where that is not what stands at the path. */
  readonly about?: YamlPath;
}

/**
 * Collects what is found in one file. A finding about something that the reader of YAML has reported already is left
 * out, and one path gets one finding of the shape of the file: one cause, one finding.
 */
export class Findings {
  readonly #list: Diagnostic[];
  readonly #settled = new Set<string>();
  readonly #faulty: ReadonlySet<string>;
  #left = 0;
  #failed: boolean;

  constructor(readonly yaml: LocatedYaml) {
    this.#list = [...yaml.diagnostics];
    this.#failed = yaml.diagnostics.some((finding) => finding.severity === 'error');
    this.#faulty = new Set(yaml.faulty.map((path) => JSON.stringify(path)));
  }

  /**
   * Adds a finding; the message is completed with the name of what stands at the path. A message that begins with a
   * verb follows that name directly (`alloy is missing`), any other one follows after a colon.
   */
  add(code: CodeName, path: YamlPath, message: string, details: FindingDetails = {}): void {
    if (isWithin(path, this.#faulty) || this.isSettled(path)) return;
    this.#failed ||= (details.severity ?? 'error') === 'error';
    if (this.full) {
      this.#left += 1;
      return;
    }
    this.settle(path);
    const entry = this.entry(path);
    const { fix, notes, severity = 'error', part = 'value', about = path } = details;
    const subject = this.subject(about);
    this.#list.push({
      code: `spec/${code}`,
      severity,
      message: oneLine(subject === '' ? message : `${subject}${/^(is|has|needs) /.test(message) ? ' ' : ': '}${message}`),
      at: this.yaml.place(path, part),
      ...(notes === undefined ? {} : { notes: notes.map(oneLine) }),
      ...(fix === undefined ? {} : { fix: oneLine(fix) }),
      ...(entry === undefined ? {} : { item: entry.id }),
    });
  }

  /** Keeps further findings away from a path, because its cause is reported elsewhere. */
  settle(path: YamlPath): void {
    this.#settled.add(JSON.stringify(path));
  }

  isSettled(path: YamlPath): boolean {
    return this.#settled.has(JSON.stringify(path));
  }

  /** As many findings as are shown; further ones are only counted. */
  get full(): boolean {
    return this.#list.length >= MOST_FINDINGS;
  }

  get all(): Diagnostic[] {
    if (this.#left === 0 || this.#list.some((finding) => finding.code === 'spec/too-many-findings')) return this.#list;
    const message = `${this.#left} further findings in this file are not shown`;
    return [...this.#list, { code: 'spec/too-many-findings', severity: 'note', message, at: this.yaml.place([]) }];
  }

  get failed(): boolean {
    return this.#failed;
  }

  /** `hole H1: depth` or `geometry.envelope`; the empty text for the file itself. */
  subject(path: YamlPath): string {
    const entry = this.entry(path);
    if (entry === undefined) return pathText(path);
    const rest = pathText(path.slice(2));
    return rest === '' ? entry.label : `${entry.label}: ${rest}`;
  }

  /** The list entry that a path leads into. */
  entry(path: YamlPath): { readonly id: string; readonly label: string } | undefined {
    const [name, index] = path;
    if (typeof name !== 'string' || typeof index !== 'number') return undefined;
    const kind = ENTRY_NAMES[name];
    if (kind === undefined) return undefined;
    const given = dataAt(this.yaml.data, [name, index, 'id']);
    const id = typeof given === 'string' && given.trim() !== '' ? printable(given.trim(), 40) : String(index + 1);
    return { id, label: `${kind} ${id}` };
  }
}

/** True when the path, or a path that leads to it, is among these (as JSON). */
export function isWithin(path: YamlPath, paths: ReadonlySet<string>): boolean {
  if (paths.size === 0) return false;
  for (let length = 0; length <= path.length; length += 1) {
    if (paths.has(JSON.stringify(path.slice(0, length)))) return true;
  }
  return false;
}

/** What stands at a path in plain data; undefined where nothing does. */
export function dataAt(data: unknown, path: YamlPath): unknown {
  let at: unknown = data;
  for (const segment of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, segment)) return undefined;
    at = (at as Record<string | number, unknown>)[segment];
  }
  return at;
}

/** A value as it is written in YAML on one line: `[238 mm, 142 mm, 46 mm]`. */
export function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`;
  if (typeof value === 'object' && value !== null)
    return `{ ${Object.entries(value)
      .map(([key, inner]) => `${key}: ${flow(inner)}`)
      .join(', ')} }`;
  return String(value);
}
