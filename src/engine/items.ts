import { copyOwn, Overlay } from './overlay.ts';

/** The bracket behind an item. */
const CLOSING = ']'.charCodeAt(0);

/** Items by the word that they are filed under, in the order of filing, for the steps that go through them. */
export class Items {
  readonly #byWord: Map<string, readonly string[]>;

  /** Empty, or over the record of another one, which rests meanwhile. */
  constructor(from?: Items) {
    this.#byWord = from === undefined ? new Map() : new Overlay(from.#byWord);
  }

  /** Notes `word[item]`; an id without an item is no matter. */
  note(id: string): void {
    if (id.charCodeAt(id.length - 1) !== CLOSING) return;
    const bracket = id.indexOf('[');
    const [word, item] = [id.slice(0, bracket), id.slice(bracket + 1, -1)];
    const known = this.#byWord.get(word);
    if (known?.includes(item) !== true) this.#byWord.set(word, known === undefined ? [item] : [...known, item]);
  }

  /** Takes over what was noted over this record. */
  adopt(over: Items): void {
    copyOwn(over.#byWord, this.#byWord);
  }

  of(word: string): readonly string[] {
    return this.#byWord.get(word) ?? [];
  }
}
