/** A message with holes: `Needs {f}, which is {100.0 * f / rated:0} % of {rated}`. */
export type TemplatePart =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'number'; readonly expression: string; readonly digits: number };

/**
 * Splits a message. `{name}` stands for the value with its unit, `{expression:digits}` for a computed number.
 * @throws Error when a brace is not closed.
 */
export function parseTemplate(text: string): TemplatePart[] {
  const parts: TemplatePart[] = [];
  let rest = text;
  while (rest.length > 0) {
    const open = rest.indexOf('{');
    if (open < 0) {
      parts.push({ kind: 'text', text: rest });
      break;
    }
    if (open > 0) parts.push({ kind: 'text', text: rest.slice(0, open) });
    const close = rest.indexOf('}', open);
    if (close < 0) throw new Error(`"{" without "}" in "${text}"`);
    const inner = rest.slice(open + 1, close).trim();
    const digits = /^(.*):(\d)$/s.exec(inner);
    if (digits !== null) parts.push({ kind: 'number', expression: (digits[1] as string).trim(), digits: Number(digits[2]) });
    else parts.push({ kind: 'name', name: inner });
    rest = rest.slice(close + 1);
  }
  return parts;
}
