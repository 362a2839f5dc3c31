import { closest, distance } from 'fastest-levenshtein';

/** The known word nearest to `word`, or undefined when none is near enough to be a likely slip. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (known.length === 0) return undefined;
  const lower = word.toLowerCase();
  const exact = known.find((candidate) => candidate.toLowerCase() === lower);
  if (exact !== undefined) return exact;
  const near = closest(word, known as string[]);
  const steps = distance(lower, near.toLowerCase());
  // Of words as near as each other the one that only goes on: AM60 is a short AM60B rather than an A360 with a slip.
  const candidate = known.find((one) => one.toLowerCase().startsWith(lower) && one.length - word.length <= steps) ?? near;
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

/** The known words that are likeliest meant, nearest first, at most `most`: those that contain the word, and near spellings. */
export function nearestWords(word: string, known: readonly string[], most = 3): string[] {
  const lower = word.toLowerCase();
  const allowed = Math.max(2, Math.floor(word.length / 3));
  return known
    .map((candidate) => ({ candidate, steps: candidate.toLowerCase().includes(lower) ? 0 : distance(lower, candidate.toLowerCase()) }))
    .filter(({ steps }) => steps <= allowed)
    .sort((a, b) => a.steps - b.steps || a.candidate.length - b.candidate.length || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, most)
    .map(({ candidate }) => candidate);
}
