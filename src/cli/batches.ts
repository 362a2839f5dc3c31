/** Pieces of so many characters are written at once. */
const BATCH = 65_536;

/** Small pieces of a text joined to larger ones, so that a long text is neither one string nor a thousand writes. */
export function* inBatches(pieces: Iterable<string>): Iterable<string> {
  let held: string[] = [];
  let size = 0;
  for (const piece of pieces) {
    held.push(piece);
    size += piece.length;
    if (size < BATCH) continue;
    yield held.join('');
    held = [];
    size = 0;
  }
  if (size > 0) yield held.join('');
}
