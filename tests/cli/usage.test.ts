import { describe, expect, test } from 'vitest';
import { wantsColour } from '../../src/cli/colour.ts';
import { runHere } from './run-here.ts';

describe('a wrong command line', () => {
  test('says what a missing argument may be', async () => {
    const { code, out, err } = await runHere(['list']);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('error: <what> is missing; write one of alloys, machines,');
  });

  test('says what a wrong argument may be', async () => {
    const { code, err } = await runHere(['new', 'prat']);
    expect(code).toBe(2);
    expect(err).toContain('error: "prat" is not known as <kind>; write one of part, die,');
  });

  test('names an argument that is missing and free', async () => {
    expect((await runHere(['plan'])).err).toContain('error: <file> is missing\n');
  });

  test.each(['plan', 'check', 'replan', 'options', 'calc', 'explain', 'list', 'schema', 'new'])('%s --help fits 80 columns', async (name) => {
    const { code, out } = await runHere([name, '--help']);
    expect(code).toBe(0);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test('so does the help of the program', async () => {
    const { out } = await runHere(['--help']);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});

test('an empty NO_COLOR turns nothing off', () => {
  const terminal = { isTTY: true, write: () => undefined };
  expect(wantsColour(undefined, { NO_COLOR: '' }, terminal)).toBe(true);
  expect(wantsColour(undefined, { NO_COLOR: '1' }, terminal)).toBe(false);
});
