import type { Rulebook } from './types.ts';

// The compiled rulebook as a text. Rules are read all at once, since a plan judges every one; of tables, alloys and sources
// it needs some, so each of these is a piece of JSON of its own that is read when it is asked for.

const PIECEMEAL = ['tables', 'alloys', 'sources'] as const satisfies readonly (keyof Rulebook)[];

/** Where a record stands in the text after the first line: start and length. */
type Span = readonly [start: number, length: number];
type Spans = Readonly<Record<string, Span>>;
type Head = Omit<Rulebook, (typeof PIECEMEAL)[number]> & Readonly<Record<(typeof PIECEMEAL)[number], Spans>>;

/** A rulebook as ASCII text, which takes half the memory of other text and is read fastest. */
export function packRulebook(rulebook: Rulebook): string {
  const records: string[] = [];
  let length = 0;
  const spansOf = (section: Readonly<Record<string, unknown>>): Spans =>
    Object.fromEntries(
      Object.entries(section).map(([id, record]): [string, Span] => {
        const json = asciiJson(record);
        records.push(json);
        length += json.length;
        return [id, [length - json.length, json.length]];
      }),
    );
  const head: Head = { ...rulebook, tables: spansOf(rulebook.tables), alloys: spansOf(rulebook.alloys), sources: spansOf(rulebook.sources) };
  return `${asciiJson(head)}\n${records.join('')}`;
}

function asciiJson(value: unknown): string {
  return JSON.stringify(value).replace(/[^\x00-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

export function unpackRulebook(text: string): Rulebook {
  const headEnd = text.indexOf('\n');
  const head = JSON.parse(text.slice(0, headEnd)) as Head;
  const records = text.slice(headEnd + 1);
  return { ...head, tables: recordsOf(records, head.tables), alloys: recordsOf(records, head.alloys), sources: recordsOf(records, head.sources) };
}

/** The records of a section by id, as in an object; each is read on its first use. */
function recordsOf<T extends object>(text: string, spans: Spans): Readonly<Record<string, T>> {
  const read = new Map<string, T>();
  const record = (id: string): T | undefined => {
    let found = read.get(id);
    const span = found === undefined && Object.hasOwn(spans, id) ? spans[id] : undefined;
    if (span !== undefined) {
      const [start, length] = span;
      found = JSON.parse(text.slice(start, start + length)) as T;
      read.set(id, found);
    }
    return found;
  };
  return new Proxy<Record<string, T>>(
    {},
    {
      get: (_, id) => record(String(id)),
      has: (_, id) => Object.hasOwn(spans, id),
      ownKeys: () => Object.keys(spans),
      getOwnPropertyDescriptor: (_, id) => (Object.hasOwn(spans, id) ? { configurable: true, enumerable: true, get: () => record(String(id)) } : undefined),
    },
  );
}
