import fc from 'fast-check';
import { parse, stringify } from 'yaml';

/** Texts that a terminal, a page, a spreadsheet, a workflow or an object could act on. */
export const HOSTILE: readonly string[] = [
  '\u001b[31mred\u001b]0;title\u0007',
  '\u202eright\u2066\u200f\u061c',
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '"><svg/onload=alert(1)>',
  '[a](javascript:alert(1))',
  '![a](https://example.invalid/x.png)',
  '| a | b |',
  '# heading',
  '- item',
  '1. item',
  '> quote',
  '```',
  '`tick`',
  '$x$ ~~y~~ **z** _w_ \\',
  '=HYPERLINK("x")',
  '+1+1',
  '-1+1',
  '@SUM(A1)',
  'a;=1+1',
  '\uff1d1+1',
  '\t=1',
  '::error::x%0A::set-output name=a::b',
  '%0A::error::',
  ']]>',
  '&amp;&#x1b;<!--',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '../../../../etc/passwd',
  '/etc/passwd',
  'C:\\x',
  '~/x',
  '\u0000',
  '\ud800',
  '\ufeff',
  '\u2028',
  '\u0085',
  'a\nb',
  'a\r\nb',
  ' ',
  '',
  'x'.repeat(5000),
  '名\u0301👩‍👩‍👧',
  '{name}',
  '[*a]',
  '[&a [1], *a]',
  '{0}',
  '$'.concat('{x}'),
  '%s%n',
  '{{x}}',
];

const EDGES: readonly unknown[] = [
  0,
  -0,
  1,
  -1,
  0.1,
  1e-308,
  5e-324,
  1e308,
  1.7976931348623157e308,
  Number.POSITIVE_INFINITY,
  Number.NaN,
  2 ** 53,
  2 ** 31,
  1e21,
  1e-7,
  true,
  false,
  null,
  '',
  [],
  {},
  [[]],
  [null],
  '0 mm',
  '-1 mm',
  '1e308 mm',
  '1e-300 mm',
  '1e999 mm',
  'NaN mm',
  '5',
  '5 mm',
  '5 cm3',
  '5 kg',
  '5 kN',
  '5 degC',
  '5 %',
  '5 psi',
  '5 in',
  '1,5 mm',
  '1/2 in',
  '5mm',
  '0x10 mm',
  '5 mm mm',
  '5 K',
];

/** Keys that mean something to an object, or to one of our files. */
const KEYS = [
  '__proto__',
  'constructor',
  'toString',
  'prototype',
  'valueOf',
  'length',
  'id',
  'name',
  'source',
  'status',
  'when',
  'x',
  '0',
  '',
  '<<',
  'a.b',
  'a[0]',
  'note',
  'unit',
];
const UNITS = [
  'mm',
  'cm',
  'm',
  'in',
  'um',
  'mm2',
  'cm2',
  'in2',
  'cm3',
  'mm3',
  'in3',
  'g',
  'kg',
  't',
  'lb',
  'kN',
  'MPa',
  'psi',
  'bar',
  's',
  'ms',
  'min',
  'h',
  'degC',
  'degF',
  'K',
  '%',
  'm/s',
  '1',
  'xx',
];

type Edit =
  | { readonly kind: 'drop' | 'swap' | 'list' | 'empty' | 'twice' }
  | { readonly kind: 'put'; readonly value: unknown }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'add' | 'rename'; readonly key: string; readonly value: unknown }
  | { readonly kind: 'scale'; readonly by: number }
  | { readonly kind: 'unit'; readonly unit: string }
  | { readonly kind: 'nest'; readonly depth: number };

export interface Mutation {
  readonly base: number;
  /** Each at a place of the tree, counted as a share of its nodes. */
  readonly edits: readonly { readonly at: number; readonly edit: Edit }[];
  /** What is done to the text that the tree is written as. */
  readonly cuts: readonly { readonly at: number; readonly length: number; readonly insert: string }[];
  readonly form: 'plain' | 'crlf' | 'bom' | 'json' | 'as-is';
}

const share = fc.nat(9999).map((n) => n / 10_000);
const hostile = fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...HOSTILE) }, { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) });
const value: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...EDGES) },
  { weight: 1, arbitrary: hostile },
  { weight: 1, arbitrary: fc.double() },
);
const key = fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...KEYS) }, { weight: 1, arbitrary: hostile });

const edit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ kind: fc.constantFrom('drop' as const, 'swap' as const, 'list' as const, 'empty' as const, 'twice' as const) }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('put' as const), value }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constant('text' as const), text: hostile }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constantFrom('add' as const, 'rename' as const), key, value }) },
  {
    weight: 6,
    arbitrary: fc.record({ kind: fc.constant('scale' as const), by: fc.constantFrom(0, -1, 1e-12, 1e-6, 1e-3, 0.1, 0.5, 0.9, 1.1, 2, 5, 10, 1e3, 1e6, 1e12) }),
  },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('unit' as const), unit: fc.constantFrom(...UNITS) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('nest' as const), depth: fc.constantFrom(1, 5, 39, 41, 300) }) },
);

const PIECES = [
  ': ',
  '- ',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  '#',
  '&a ',
  '*a',
  '!!js/function ',
  '!!binary ',
  '!<tag:x> ',
  '|\n',
  '>\n',
  '\n',
  '\n  ',
  '\t',
  ',',
  '%YAML 1.1\n',
  '---\n',
  '...\n',
  '? ',
  '<<: *a',
  '~',
  '.inf',
  '.nan',
  '0o7',
  '1_000',
  '\u0000',
  '\u001b',
  '\ud800',
  '\ufeff',
  '\r',
];
const cut = fc.record({
  at: share,
  length: fc.oneof(fc.constant(0), fc.nat(30)),
  insert: fc.oneof(fc.constant(''), fc.constantFrom(...PIECES), hostile),
});

/** A change of a sound file. Most have a few changes of the tree and none of the text: those get farthest. */
export const mutations = (bases: number): fc.Arbitrary<Mutation> =>
  fc.record({
    base: fc.nat(bases - 1),
    edits: fc.array(fc.record({ at: share, edit }), { maxLength: 5 }),
    cuts: fc.oneof({ weight: 4, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.array(cut, { minLength: 1, maxLength: 4 }) }),
    form: fc.oneof(
      { weight: 6, arbitrary: fc.constant('plain' as const) },
      { weight: 1, arbitrary: fc.constantFrom('crlf' as const, 'bom' as const, 'json' as const, 'as-is' as const) },
    ),
  });

/** A place in a tree: what holds it and under which key. */
interface Slot {
  readonly holder: Record<string, unknown> | unknown[];
  readonly key: string | number;
}

function slotsOf(root: unknown): Slot[] {
  const slots: Slot[] = [];
  const walk = (holder: Slot['holder']): void => {
    for (const at of Array.isArray(holder) ? holder.keys() : Object.keys(holder)) {
      slots.push({ holder, key: at });
      const child = get({ holder, key: at });
      if (typeof child === 'object' && child !== null) walk(child as Slot['holder']);
    }
  };
  if (typeof root === 'object' && root !== null) walk(root as Slot['holder']);
  return slots;
}

const get = ({ holder, key: at }: Slot): unknown => (holder as Record<string | number, unknown>)[at];

function set(holder: Slot['holder'], at: string | number, to: unknown): void {
  Object.defineProperty(holder, at, { value: to, enumerable: true, configurable: true, writable: true });
}

const NUMBER = /^(-?[\d.]+(?:e[+-]?\d+)?)( .*)?$/i;

function apply(slot: Slot, change: Edit, other: Slot): void {
  const { holder, key: at } = slot;
  const old = get(slot);
  const isText = typeof old === 'string' && !NUMBER.test(old);
  const [, number = '', unit = ''] = NUMBER.exec(typeof old === 'number' || typeof old === 'string' ? String(old) : '') ?? [];
  switch (change.kind) {
    case 'drop':
      if (Array.isArray(holder)) holder.splice(at as number, 1);
      else delete holder[at];
      break;
    case 'swap': {
      const theirs = get(other);
      // One inside the other would be a tree without an end.
      if (typeof old === 'object' || typeof theirs === 'object') break;
      set(holder, at, theirs);
      set(other.holder, other.key, old);
      break;
    }
    case 'list':
      set(holder, at, [old]);
      break;
    case 'empty':
      set(holder, at, Array.isArray(old) ? [] : typeof old === 'object' ? {} : '');
      break;
    case 'twice':
      if (Array.isArray(holder)) holder.push(structuredClone(old));
      break;
    case 'put':
      set(holder, at, change.value);
      break;
    case 'text':
      if (isText) set(holder, at, change.text);
      break;
    case 'add':
      if (typeof old === 'object' && old !== null) set(old as Slot['holder'], Array.isArray(old) ? old.length : change.key, change.value);
      break;
    case 'rename':
      if (!Array.isArray(holder)) {
        delete holder[at];
        set(holder, change.key, old);
      }
      break;
    case 'scale':
      if (number !== '') set(holder, at, unit === '' ? Number(number) * change.by : `${Number(number) * change.by}${unit}`);
      break;
    case 'unit':
      if (number !== '') set(holder, at, `${number} ${change.unit}`);
      break;
    case 'nest': {
      let nested: unknown = old;
      for (let i = 0; i < change.depth; i += 1) nested = i % 2 === 0 ? [nested] : { a: nested };
      set(holder, at, nested);
    }
  }
}

const trees = new Map<string, unknown>();

function treeOf(text: string): unknown {
  if (!trees.has(text)) trees.set(text, text.startsWith('{') ? JSON.parse(text) : parse(text));
  return trees.get(text);
}

/** The text of a changed file. */
export function mutated(bases: readonly { readonly text: string }[], { base, edits, cuts, form }: Mutation): string {
  const original = (bases[base] as { text: string }).text;
  let text = original;
  if (edits.length > 0 || form === 'json') {
    const tree: unknown = structuredClone(treeOf(original));
    for (const { at, edit: change } of edits) {
      const slots = slotsOf(tree);
      const slot = slots[Math.floor(at * slots.length)];
      if (slot !== undefined) apply(slot, change, slots[Math.floor(((at * 7919) % 1) * slots.length)] as Slot);
    }
    text = form === 'json' || original.startsWith('{') ? JSON.stringify(tree) : stringify(tree, { aliasDuplicateObjects: false, lineWidth: 0 });
  }
  for (const { at, length, insert } of cuts) {
    const start = Math.floor(at * text.length);
    text = text.slice(0, start) + insert + text.slice(start + length);
  }
  if (form === 'crlf') return text.replaceAll('\n', '\r\n');
  return form === 'bom' ? `\ufeff${text}` : text;
}
