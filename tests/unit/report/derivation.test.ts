import { describe, expect, test } from 'vitest';
import { applyFormula } from '../../../src/kernel/apply.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import { derivationText } from '../../../src/report/derivation.ts';
import { area, double, FORCE, pressure, stroke } from './hand-made.ts';

describe('the tree of one value', () => {
  test('runs down to what was given and what was read, each value once', () => {
    expect(derivationText(double, new Map([['test.force', 'The force']]))).toBe(
      [
        'test.double = 1440 kN',
        '│ formula test.double: S = F_1 + F_2',
        '│ S = 720 + 720 = 1440 kN',
        '│ source: derived; rests on a figure from memory',
        '└─ test.force = 720 kN  The force',
        '   │ formula test.force: F = p * A / 10',
        '   │ F = 60 * 120 / 10 = 720 kN',
        '   │ source: KEY-A table 3; rests on a figure from memory',
        '   ├─ test.pressure = 60 MPa',
        '   │    table test/pressure',
        '   │    middle of the class',
        '   │    source: from memory, unverified',
        '   └─ test.area = 120 cm2',
        '        part file',
        '        at cover.part.yaml:3:8',
        '',
      ].join('\n'),
    );
  });

  test('a value that is met again is not spelt out again', () => {
    const again = Traced.choice('test.top', 1, '1', { note: 'both', status: 'derived', parents: [double, pressure] });
    const text = derivationText(again, new Map());
    expect(text).toContain('└─ test.pressure = 60 MPa (see above)');
    expect(text.match(/table test\/pressure/g)).toHaveLength(1);
  });

  test('a decision shows its remark and what it was taken on', () => {
    expect(derivationText(stroke, new Map())).toContain('│ decision; by the depth\n│ source: derived\n└─ test.unfiled = 3 mm\n');
  });

  test('a value outside the range says so once, and what rests on it says that', () => {
    const high = Traced.input('test.area', 5000, 'cm2', { source: 'PART' });
    const outside = applyFormula(FORCE, { pressure, area: high }).result;
    const above = Traced.choice('test.above', 1, '1', { note: 'n', status: 'derived', parents: [outside] });
    expect(derivationText(outside, new Map())).toContain('outside the valid range: extrapolated');
    expect(derivationText(above, new Map()).match(/outside the valid range: extrapolated/g)).toHaveLength(1);
    expect(area.range).toBe('inside');
  });

  test('a text of the user cannot act on the terminal', () => {
    const value = Traced.input('test.x', 1, 'mm', { source: 'PART', written: '1 mm\u001b[2J', note: 'a\u0007b' });
    expect(derivationText(value, new Map())).toBe('test.x = 1 mm<U+001B>[2J\n  part file; a<U+0007>b\n');
  });
});
