/** Numbers nearer to each other than this share are the same: another processor may round the last digits otherwise. */
const SAME = 1e-9;

/** Whether two numbers are the same but for rounding. */
export function sameNumber(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
}

/**
 * Whether two pieces of plain data are the same, whatever the order of keys. A file may be named from another folder: of a
 * `file` only the last part of its path counts. Keys called `except` are passed over.
 */
export function sameData(a: unknown, b: unknown, except?: string, key = ''): boolean {
  if (typeof a === 'number' && typeof b === 'number') return sameNumber(a, b);
  if (typeof a === 'string' && typeof b === 'string') return a === b || (key === 'file' && baseName(a) === baseName(b));
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  if (Array.isArray(a) || Array.isArray(b))
    return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((one, i) => sameData(one, b[i], except));
  const keysOf = (data: object): string[] => Object.keys(data).filter((name) => name !== except);
  const keys = keysOf(a);
  if (keys.length !== keysOf(b).length) return false;
  const [one, other] = [a as Readonly<Record<string, unknown>>, b as Readonly<Record<string, unknown>>];
  return keys.every((name) => Object.hasOwn(other, name) && sameData(one[name], other[name], except, name));
}

/** The last part of a path, whichever stroke it is written with. */
export function baseName(path: string): string {
  return path.slice(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
}
