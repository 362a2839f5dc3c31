import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ALL_TERMS, findTerm, TERMS } from '../../../src/engine/terms.ts';
import { VOCABULARY } from '../../../src/engine/vocabulary/index.ts';

/** Words of headings and of topics of value ids that say what they say anywhere. */
const PLAIN = new Set(
  `after alloy alternatives and assumptions cautions certificate checked cost data decisions design dimension figures fill
  findings finish flow furnace furnaces gas heat hole hours house in it layout machine machining metal money must not of part
  positions pressure production quality replan review rules set slow solidification sources summary surface temperature the
  thread time tolerance trade unverified who words workings`.split(/\s+/),
);

const words = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}][\p{L}\p{N}-]*/gu) ?? [];
const isKnown = (word: string): boolean => PLAIN.has(word) || findTerm(word) !== undefined;

describe('words of the trade', () => {
  test.each([
    ['of every plan', TERMS],
    ['all', ALL_TERMS],
  ])('%s stand in alphabetical order, each once, in a sentence', (_, list) => {
    const names = list.map(({ term }) => term.toLowerCase());
    const others = list.flatMap(({ also = [] }) => also);
    expect(names).toEqual([...names].sort());
    expect(new Set([...names, ...others]).size).toBe(names.length + others.length);
    for (const { term, meaning } of list) {
      expect(meaning, term).toMatch(/^[A-Z].*\.$/);
      expect(meaning.length, term).toBeGreaterThan(25);
      // Figures belong to the rules, where each has its mark.
      expect(meaning.replace('ISO 8062-3', ''), term).not.toMatch(/\d/);
    }
  });

  test.each(ALL_TERMS.flatMap(({ term, also = [] }) => [term, ...also].map((word) => [word, term])))('%s is found under %s', (word, term) => {
    expect(findTerm(word)?.term).toBe(term);
  });

  test.each([
    ['Biscuits', 'biscuit'],
    ['cavities', 'cavity'],
    ['tie bar', 'tie bars'],
    ['chill-vents', 'chill vent'],
    ['heat checks', 'heat checking'],
  ])('%s is found under %s', (word, term) => {
    expect(findTerm(word)?.term).toBe(term);
  });

  test.each(['squeeze pin', 'spreader', 'ejector plate', 'support plate', 'return pins', 'early return'])(
    'plans use the word %s, and it is explained',
    (word) => {
      expect(findTerm(word)).toBeDefined();
    },
  );

  test('a word that is none is not found', () => {
    expect(findTerm('flywheel')).toBeUndefined();
    expect(findTerm('')).toBeUndefined();
  });

  test('every word in a heading of a plan is one of them, or plain', () => {
    const folder = join(import.meta.dirname, '../../../examples');
    const plans = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => /(^|[/\\])plan\.md$/.test(name));
    const headings = plans.flatMap((name) => readFileSync(join(folder, name), 'utf8').match(/^## .+$/gm) ?? []);
    expect(headings.length).toBeGreaterThan(100);
    expect([...new Set(headings.filter((heading) => findTerm(heading.slice(3)) === undefined).flatMap(words))].filter((word) => !isKnown(word))).toEqual([]);
  });

  test('no word of the plain list is one of them', () => {
    expect([...PLAIN].filter((word) => findTerm(word) !== undefined)).toEqual([]);
  });

  test('every topic of plan values is one of them, or plain', () => {
    const topics = new Set(Object.keys(VOCABULARY).map((id) => id.split('.')[0] as string));
    expect([...topics].filter((topic) => !isKnown(topic))).toEqual([]);
  });
});
