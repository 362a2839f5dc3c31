import { closest, distance } from 'fastest-levenshtein';

/** The known word nearest to `word`, or undefined when none is near enough to be a likely slip. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (known.length === 0) return undefined;
  const lower = word.toLowerCase();
  const exact = known.find((candidate) => candidate.toLowerCase() === lower);
  if (exact !== undefined) return exact;
  const candidate = closest(word, known as string[]);
  const allowed = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
  return distance(lower, candidate.toLowerCase()) <= allowed ? candidate : undefined;
}

/** ` (did you mean "x"?)` when a near word exists, else the empty text. */
export function didYouMean(word: string, known: readonly string[]): string {
  const near = nearestWord(word, known);
  return near === undefined ? '' : `; did you mean "${near}"?`;
}

/** `a, b or c`. */
export function orList(words: readonly string[]): string {
  if (words.length <= 1) return words.join('');
  return `${words.slice(0, -1).join(', ')} or ${words[words.length - 1]}`;
}
