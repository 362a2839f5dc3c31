/** Characters that JSON allows bare but a terminal could act on. */
const ACTIVE = /[\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g;

/** Two spaces of indentation, keys in the order given, a line break at the end, nothing that a terminal acts on. */
export function jsonText(value: unknown): string {
  const text = JSON.stringify(value, undefined, 2).replace(ACTIVE, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
  return `${text}\n`;
}
