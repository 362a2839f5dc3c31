import { describe, expect, it } from 'vitest';
import { mergeSources, sourceKey, weakest } from '../../../src/kernel/status.ts';

describe('the weakest status', () => {
  it('is the last of source, derived, practice, memory', () => {
    expect(weakest()).toBe('source');
    expect(weakest('source', 'source')).toBe('source');
    expect(weakest('derived', 'source')).toBe('derived');
    expect(weakest('source', 'memory', 'practice')).toBe('memory');
    expect(weakest('practice', 'derived')).toBe('practice');
  });
});

describe('references', () => {
  it('have a key before the first space', () => {
    expect(sourceKey('NADCA-FAQ "Alloy properties"')).toBe('NADCA-FAQ');
    expect(sourceKey('BAR-MEIR')).toBe('BAR-MEIR');
  });
  it('are merged each once, in order', () => {
    expect(mergeSources(['B', 'A'], [], ['A', 'C'])).toEqual(['B', 'A', 'C']);
    expect(mergeSources()).toEqual([]);
  });
});
