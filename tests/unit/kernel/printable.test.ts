import { describe, expect, it } from 'vitest';
import { activeCharacter, codePoint, printable } from '../../../src/kernel/printable.ts';

describe('text of the user in a message', () => {
  it('shows what would act as its code point', () => {
    expect(printable('a\u001b[31mb')).toBe('a<U+001B>[31mb');
    expect(printable('a\tb\nc\r')).toBe('a<U+0009>b<U+000A>c<U+000D>');
    expect(printable('x\u202ey')).toBe('x<U+202E>y');
    expect(printable('Gehäuse Ø 3 mm, 壁, 🙂')).toBe('Gehäuse Ø 3 mm, 壁, 🙂');
  });
  it('is cut to the length, the dots counted, and a character beyond the first plane counts once', () => {
    expect(printable('abcdef', 6)).toBe('abcdef');
    expect(printable('abcdefg', 6)).toBe('abcde…');
    expect(printable('🙂🙂🙂', 3)).toBe('🙂🙂🙂');
    expect(printable('🙂🙂🙂🙂', 3)).toBe('🙂🙂…');
    expect(printable('x'.repeat(60))).toHaveLength(60);
    expect(printable('x'.repeat(61))).toBe(`${'x'.repeat(59)}…`);
  });
  it('tells the first character that acts; tab and line break do not', () => {
    expect(activeCharacter('a\tb\n\r')).toBeUndefined();
    expect(activeCharacter('a\u0000b\u001b')).toBe('U+0000');
    expect(activeCharacter('a\u2066')).toBe('U+2066');
    expect(activeCharacter('\ud800')).toBe('U+D800');
    expect(codePoint('🙂')).toBe('U+1F642');
    expect(codePoint('')).toBe('U+0000');
  });
});
