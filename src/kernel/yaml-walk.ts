import { isAlias, isMap, isScalar, isSeq, type Node, type YAMLMap } from 'yaml';
import { activeCharacter, printable } from './printable.ts';
import type { YamlFault } from './yaml-faults.ts';
import { keyText, type YamlPath } from './yaml-path.ts';

export interface Walked {
  readonly data: unknown;
  readonly faults: readonly YamlFault[];
  readonly faulty: readonly YamlPath[];
  readonly tooDeep: YamlFault | undefined;
}

/** Turns nodes into plain data and reports what YAML allows but these files do not: aliases, tags, doubled keys. */
export function walkYaml(root: Node | null, text: string, options: { readonly numbersAsText: boolean; readonly depth: number }): Walked {
  const walk = new Walk(text, options.numbersAsText, options.depth);
  const data = walk.value(root, []);
  walk.reportUnusedAnchors();
  return { data, faults: walk.faults, faulty: walk.faulty, tooDeep: walk.tooDeep };
}

class Walk {
  readonly faults: YamlFault[] = [];
  readonly faulty: YamlPath[] = [];
  tooDeep: YamlFault | undefined;
  readonly #anchors = new Map<string, { start: number; used: boolean }>();

  constructor(
    private readonly text: string,
    private readonly numbersAsText: boolean,
    private readonly depth: number,
  ) {}

  value(node: Node | null, path: YamlPath, nesting = 0): unknown {
    if (node === null || this.tooDeep !== undefined) return null;
    if (isAlias(node)) return this.#alias(node.source, node, path);
    const refused = this.#properties(node, path);
    if (isMap(node) || isSeq(node)) {
      if (nesting >= this.depth) {
        const start = node.range?.[0] ?? 0;
        this.tooDeep = {
          code: 'too-deep',
          message: `lists and mappings are nested more than ${this.depth} deep`,
          fix: 'check brackets and indentation; no file of this kind nests so deep',
          start,
          end: start + 1,
          path,
        };
        return null;
      }
      const data = isMap(node) ? this.#map(node, path, nesting) : node.items.map((item, i) => this.value(item as Node | null, [...path, i], nesting + 1));
      return refused ? undefined : data;
    }
    if (!isScalar(node) || refused) return undefined;
    const { value } = node;
    if (typeof value === 'number' && this.numbersAsText) return node.source ?? String(value);
    if (typeof value === 'string' && this.#active(value, node, path)) return undefined;
    return value;
  }

  #map(map: YAMLMap, path: YamlPath, nesting: number): Record<string, unknown> {
    const data: Record<string, unknown> = {};
    const first = new Map<string, Node | null>();
    for (const pair of map.items) {
      const keyNode = pair.key as Node | null;
      const key = this.#key(keyNode, path);
      if (key === undefined) continue;
      const at: YamlPath = [...path, key];
      if (key === '<<') {
        this.#fault('anchor-or-alias', 'the merge key "<<" is not read', keyNode, at, 'write the keys out in full here');
        if (isAlias(pair.value)) this.#use((pair.value as { source: string }).source);
        this.faulty.push(path);
        continue;
      }
      if (first.has(key)) {
        const before = first.get(key)?.range?.[0] ?? 0;
        this.#fault(
          'duplicate-key',
          `"${printable(key)}" is written twice in one mapping`,
          keyNode,
          at,
          'keep one of the two',
          () => `It stands on line ${lineOf(this.text, before)} already.`,
        );
        continue;
      }
      first.set(key, keyNode);
      const value = this.value(pair.value as Node | null, at, nesting + 1);
      // Assigning `__proto__` would change the object's prototype; it has to be an unknown key like any other.
      if (key === '__proto__') Object.defineProperty(data, key, { value, enumerable: true, configurable: true, writable: true });
      else data[key] = value;
    }
    return data;
  }

  #key(node: Node | null, path: YamlPath): string | undefined {
    if (isAlias(node)) return this.#alias(node.source, node, path);
    const key = keyText(node, this.text);
    if (key === undefined) {
      this.#fault('complex-key', 'a list or mapping stands where a key should be', node, path, 'write the key as one plain word');
      return undefined;
    }
    if (node !== null && this.#properties(node, path)) return undefined;
    return this.#active(key, node, path) ? undefined : key;
  }

  #alias(name: string, node: Node, path: YamlPath): undefined {
    const anchor = this.#use(name);
    const note = anchor === undefined ? undefined : () => `The anchor "&${printable(name)}" on line ${lineOf(this.text, anchor.start)} has to go too.`;
    this.#fault('anchor-or-alias', `the alias "*${printable(name)}" is not read`, node, path, 'write the value out in full here', note);
    this.faulty.push(path);
    return undefined;
  }

  #use(name: string): { start: number } | undefined {
    const anchor = this.#anchors.get(name);
    if (anchor !== undefined) anchor.used = true;
    return anchor;
  }

  /** Notes an anchor, reports a tag; true when the node's value is not to be trusted. */
  #properties(node: Node, path: YamlPath): boolean {
    const start = node.range?.[0] ?? 0;
    const { anchor } = node as { anchor?: string };
    if (anchor !== undefined) this.#anchors.set(anchor, { start: Math.max(0, this.text.lastIndexOf(`&${anchor}`, start)), used: false });
    if (node.tag === undefined) return false;
    let at = this.text.lastIndexOf('!', start);
    while (at > 0 && this.text[at - 1] === '!') at -= 1;
    const tag = /^[^\s,[\]{}]*/.exec(this.text.slice(Math.max(0, at), start + 1))?.[0] ?? '';
    this.faults.push({
      code: 'tag',
      message: `the tag "${printable(tag)}" is not read`,
      fix: 'write the plain value without a tag',
      start: Math.max(0, at),
      end: Math.max(0, at) + tag.length,
      path,
    });
    this.faulty.push(path);
    return true;
  }

  #active(value: string, node: Node | null, path: YamlPath): boolean {
    const found = activeCharacter(value);
    if (found === undefined) return false;
    this.#fault('control-character', `the text holds the control character ${found}`, node, path, 'remove it');
    this.faulty.push(path);
    return true;
  }

  /** An anchor that nothing refers to; one that is referred to is named with its alias. */
  reportUnusedAnchors(): void {
    for (const [name, { start, used }] of this.#anchors) {
      if (used) continue;
      this.faults.push({
        code: 'anchor-or-alias',
        message: `the anchor "&${printable(name)}" is not read`,
        fix: 'remove it',
        start,
        end: start + name.length + 1,
      });
    }
  }

  #fault(code: YamlFault['code'], message: string, node: Node | null, path: YamlPath, fix: string, note?: () => string): void {
    const [start, end] = node?.range ?? [0, 0];
    // Finding a line takes as long as the text is; far more faults than are ever shown do without.
    const notes = note === undefined || this.faults.length > 200 ? {} : { notes: [note()] };
    this.faults.push({ code, message, fix, start, end: Math.max(start, end), path, ...notes });
  }
}

function lineOf(text: string, offset: number): number {
  let line = 1;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) line += 1;
  return line;
}
