import { spawn, spawnSync } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wantsColour } from '../../src/cli/colour.ts';
import { main } from '../../src/cli/main.ts';
import { STARTER_PART } from '../../src/spec/starters.ts';
import { BIN, makeFolder } from './folder.ts';

const ESCAPE = '\u001b';
let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder();
  folder.write('broken.part.yaml', STARTER_PART.replace('A380', 'A3\\e[31m80'));
});
afterAll(() => folder.remove());

describe('colour', () => {
  const terminal = { isTTY: true, write: () => undefined };
  const pipe = { isTTY: false, write: () => undefined };

  // NO_COLOR: present and not empty means off, whatever it says (no-color.org); the flag wins over it.
  test.each([
    [undefined, {}, terminal, true],
    [undefined, {}, pipe, false],
    [undefined, { NO_COLOR: '' }, terminal, true],
    [undefined, { NO_COLOR: '0' }, terminal, false],
    [undefined, { NO_COLOR: '1' }, terminal, false],
    [true, { NO_COLOR: '1' }, pipe, true],
    [false, { FORCE_COLOR: '1' }, terminal, false],
    [undefined, { FORCE_COLOR: '1' }, pipe, true],
    [undefined, { FORCE_COLOR: '1', NO_COLOR: '1' }, pipe, true],
    [undefined, { FORCE_COLOR: '0' }, terminal, false],
    [undefined, { TERM: 'dumb' }, terminal, false],
    [undefined, { TERM: 'dumb', FORCE_COLOR: '1' }, terminal, true],
  ] as const)('flag %j, environment %j', (flag, env, sink, wanted) => {
    expect(wantsColour(flag, env, sink)).toBe(wanted);
  });

  test('none in a pipe, forced by flag and environment, and the flag works before and after the command', () => {
    expect(folder.run(['plan', 'missing.yaml']).err).not.toContain(ESCAPE);
    expect(folder.run(['plan', 'missing.yaml', '--color']).err).toContain(`${ESCAPE}[31merror:`);
    expect(folder.run(['--color', 'plan', 'missing.yaml']).err).toContain(ESCAPE);
    expect(folder.run(['plan', 'missing.yaml'], { env: { FORCE_COLOR: '1' } }).err).toContain(ESCAPE);
    expect(folder.run(['--no-color', 'plan', 'missing.yaml'], { env: { FORCE_COLOR: '1' } }).err).not.toContain(ESCAPE);
  });

  test('the plan itself has none, whatever is forced', () => {
    expect(folder.run(['plan', '-q', 'cover.part.yaml', '--color']).out).not.toContain(ESCAPE);
  });
});

describe('a fault of the program', () => {
  const broken = (env: Readonly<Record<string, string>>) => {
    let err = '';
    const io = {
      env,
      out: {
        isTTY: false,
        write: () => {
          throw new Error('boom\u001b[2J\nsecond line');
        },
      },
      err: {
        isTTY: false,
        write: (text: string) => {
          err += text;
        },
      },
      stdin: (async function* (): AsyncGenerator<Buffer> {})(),
      settled: async () => true,
    };
    return main(['list', 'alloys'], io).then((code) => ({ code, err }));
  };

  test('one line, and the stack only when asked for', async () => {
    const { code, err } = await broken({});
    expect(code).toBe(3);
    expect(err).toBe('diewright: internal fault: boom<U+001B>[2J (DIEWRIGHT_DEBUG=1 shows where)\n');
    expect((await broken({ DIEWRIGHT_DEBUG: '1' })).err).toMatch(/\n +at /);
  });
});

describe('streams', () => {
  test('the version goes to standard output and is that of the package', () => {
    const { code, out, err } = folder.run(['--version']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^\d+\.\d+\.\d+\n$/);
    expect(folder.run(['plan', '--version'])).toMatchObject({ out, code: 0 });
  });

  test('help goes to standard output; no command at all is bad input', () => {
    expect(folder.run(['--help'])).toMatchObject({ code: 0, err: '' });
    expect(folder.run(['help', 'plan']).out).toContain('--fail-on');
    expect(folder.run(['plan', '--help']).out).toContain('--no-color');
    expect(folder.run([])).toMatchObject({ code: 2, out: '' });
    expect(folder.run(['plam']).err).toContain('Did you mean plan');
  });

  test('a reader that goes away is no fault', async () => {
    const child = spawn(process.execPath, [BIN, 'plan', 'cover.part.yaml', '-f', 'json'], { cwd: folder.path, stdio: ['ignore', 'pipe', 'pipe'] });
    let err = '';
    child.stderr.on('data', (chunk) => {
      err += String(chunk);
    });
    child.stdout.once('readable', () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect(err).not.toContain('EPIPE');
    expect(code).toBe(0);
  });

  test.runIf(process.platform === 'linux')('a full disk behind standard output is a fault', () => {
    const { status } = spawnSync('sh', ['-c', `"${process.execPath}" "${BIN}" list alloys > /dev/full`], { cwd: folder.path, encoding: 'utf8' });
    expect(status).toBe(3);
  });

  test('control characters of the command line and of file names do not reach the terminal', () => {
    for (const args of [
      ['plan', `no${ESCAPE}[2J.yaml`],
      ['explain', `x${ESCAPE}[2J`],
      ['calc', `x${ESCAPE}[2J`],
      [`${ESCAPE}[2J`],
      ['plan', `--${ESCAPE}[2J`],
      ['plan', 'cover.part.yaml', '--set', `a${ESCAPE}[2J=1`],
      ['calc', 'gate.area', `${ESCAPE}[2J=1`],
    ]) {
      const { code, out, err } = folder.run(args);
      expect(code, args.join(' ')).toBe(2);
      expect(out + err, args.join(' ')).not.toContain(ESCAPE);
    }
  });
});
