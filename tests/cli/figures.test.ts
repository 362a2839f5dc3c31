import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { BadInput } from '../../src/cli/fault.ts';
import { checkFigureOption, figuresFor, refuseOverwriting } from '../../src/cli/figures.ts';
import { writeTogether } from '../../src/cli/write-whole.ts';
import { STARTER_PART } from '../../src/spec/starters.ts';
import { handMade } from '../unit/report/hand-made.ts';
import { FOUR_CAVITIES } from '../unit/report/hand-made-drawings.ts';
import { GAS_TIME, PRESSURE_FLOW } from '../unit/report/hand-made-figures.ts';
import { CYCLE_TIME } from '../unit/report/hand-made-timelines.ts';
import { makeFolder } from './folder.ts';

const plan = handMade({
  sections: [
    { id: 'shot', title: 'Shot', blocks: [PRESSURE_FLOW] },
    { id: 'vent', title: 'Vent', blocks: [GAS_TIME] },
  ],
});
const markdown = (path: string) => ({ format: 'markdown', path }) as const;

function codeOf(work: () => void): string {
  try {
    work();
  } catch (error) {
    if (error instanceof BadInput) return error.diagnostics[0]?.code ?? '';
    throw error;
  }
  return 'none';
}

describe('where figures go', () => {
  test.each([
    ['plan.md', undefined, ['plan-pressure-flow.svg', 'plan-gas-time.svg'], ['plan-pressure-flow.svg', 'plan-gas-time.svg']],
    [join('out', 'a.b.md'), undefined, [join('out', 'a.b-pressure-flow.svg'), join('out', 'a.b-gas-time.svg')], ['a.b-pressure-flow.svg', 'a.b-gas-time.svg']],
    [
      join('out', 'plan.md'),
      'pictures',
      [join('pictures', 'plan-pressure-flow.svg'), join('pictures', 'plan-gas-time.svg')],
      ['../pictures/plan-pressure-flow.svg', '../pictures/plan-gas-time.svg'],
    ],
    [
      join('none', 'plan.md'),
      undefined,
      [join('none', 'plan-pressure-flow.svg'), join('none', 'plan-gas-time.svg')],
      ['plan-pressure-flow.svg', 'plan-gas-time.svg'],
    ],
    [
      '-',
      join('pictures', 'of', ''),
      [join('pictures', 'of', 'plan-pressure-flow.svg'), join('pictures', 'of', 'plan-gas-time.svg')],
      ['pictures/of/plan-pressure-flow.svg', 'pictures/of/plan-gas-time.svg'],
    ],
    ['-', undefined, [], []],
    ['plan.md', 'none', [], []],
    ['-', 'none', [], []],
    ['/dev/null', undefined, [], []],
  ])('Markdown to %s with --figures %s', async (path, folder, files, links) => {
    const set = await figuresFor(markdown(path), [plan], false, folder);
    expect(set.files.map((file) => file.path)).toEqual(files);
    expect(set.links.flatMap((one) => [...one.values()])).toEqual(links);
    for (const { text } of set.files) expect(text).toContain('<svg');
  });

  test('several plans in one Markdown are numbered in its order', async () => {
    const { files, links } = await figuresFor(markdown('both.md'), [plan, plan], true, undefined);
    expect(files.map(({ path }) => path)).toEqual(['both-1-pressure-flow.svg', 'both-1-gas-time.svg', 'both-2-pressure-flow.svg', 'both-2-gas-time.svg']);
    expect(links.map((one) => one.get('gas-time'))).toEqual(['both-1-gas-time.svg', 'both-2-gas-time.svg']);
  });

  test('figures of every form are drawn', async () => {
    const forms = handMade({ sections: [{ id: 'cycle', title: 'Cycle', blocks: [GAS_TIME, CYCLE_TIME, FOUR_CAVITIES] }] });
    const { files, links } = await figuresFor(markdown('plan.md'), [forms], false, undefined);
    expect(files.map(({ path }) => path)).toEqual(['plan-gas-time.svg', 'plan-cycle-time.svg', 'plan-four-cavities.svg']);
    expect([...(links[0]?.values() ?? [])]).toEqual(files.map(({ path }) => path));
    for (const { text } of files) expect(text).toMatch(/^<\?xml version="1.0" encoding="UTF-8"\?>\n<svg [\s\S]*<\/svg>\n$/);
  });

  test('other formats have none', async () => {
    expect((await figuresFor({ format: 'json', path: 'plan.json' }, [plan], false, undefined)).files).toEqual([]);
  });

  test('a folder needs Markdown that links to it, and a name', () => {
    expect(codeOf(() => checkFigureOption('pictures', [{ format: 'json', path: '-' }]))).toBe('cli/usage');
    expect(codeOf(() => checkFigureOption('', [markdown('-')]))).toBe('cli/usage');
    expect(codeOf(() => checkFigureOption('pictures', [markdown('-')]))).toBe('none');
    expect(codeOf(() => checkFigureOption('none', [{ format: 'json', path: '-' }]))).toBe('none');
  });

  test('a figure never takes the place of an input or another output', async () => {
    const outputs = [markdown('plan.md'), { format: 'json', path: './plan-gas-time.svg' } as const];
    const set = await figuresFor(outputs[0] as (typeof outputs)[0], [plan], false, undefined);
    expect(codeOf(() => refuseOverwriting([set], outputs, ['a.part.yaml']))).toBe('cli/output-twice');
    expect(codeOf(() => refuseOverwriting([set], [markdown('plan.md')], ['plan-pressure-flow.svg']))).toBe('cli/output-twice');
    expect(codeOf(() => refuseOverwriting([set], [markdown('plan.md')], ['-', 'a.part.yaml']))).toBe('none');
  });
});

describe('files that belong together', () => {
  let path: string;
  const at = (name: string): string => join(path, name);
  beforeEach(() => {
    path = mkdtempSync(join(tmpdir(), 'diewright-together-'));
  });

  test('all are there, or none is new and nothing is left over', async () => {
    await writeTogether([
      { path: at('a'), text: '1' },
      { path: at('b'), text: '2' },
    ]);
    expect(['a', 'b'].map((name) => readFileSync(at(name), 'utf8'))).toEqual(['1', '2']);
    mkdirSync(at('folder'));
    for (const last of [join('no', 'such'), 'folder']) {
      const failed = writeTogether([
        { path: at('a'), text: 'new' },
        { path: at('c'), text: 'new' },
        { path: at(last), text: 'new' },
      ]);
      await expect(failed).rejects.toThrow(BadInput);
      expect(readdirSync(path).sort()).toEqual(['a', 'b', 'folder']);
      expect(readFileSync(at('a'), 'utf8')).toBe('1');
    }
    rmSync(path, { recursive: true });
  });

  test.runIf(process.platform === 'linux')('a pipe is written into, and its reader may be gone', async () => {
    execFileSync('mkfifo', [at('pipe')]);
    const reading = new Promise<string>((resolve) => {
      import('node:fs/promises').then(({ readFile }) => readFile(at('pipe'), 'utf8')).then(resolve);
    });
    await writeTogether([
      { path: at('a'), text: '1' },
      { path: at('pipe'), text: 'through' },
    ]);
    expect(await reading).toBe('through');
    rmSync(path, { recursive: true });
  });
});

describe('the built command', () => {
  let folder: ReturnType<typeof makeFolder>;
  beforeAll(() => {
    folder = makeFolder();
    folder.write('other.part.yaml', STARTER_PART.replace('name: Cover', 'name: Other'));
  });
  afterAll(() => folder.remove());
  const drawn = (prefix: string): string[] => readdirSync(folder.path).filter((name) => name.startsWith(prefix) && name.endsWith('.svg'));
  const linked = (text: string): string[] => [...text.matchAll(/^!\[.*\]\((.*)\)$/gm)].map(([, url]) => url ?? '').sort();

  test('Markdown in a file has its figures beside it, each linked and listed', () => {
    const { code, err } = folder.run(['plan', 'cover.part.yaml', '-f', 'markdown=plan.md']);
    expect(code).toBe(0);
    const files = drawn('plan-').sort();
    expect(files.length).toBeGreaterThan(0);
    expect(linked(folder.read('plan.md'))).toEqual(files);
    for (const name of [...files, 'plan.md']) expect(err).toContain(`wrote ${name}\n`);
  });

  test('--figures none writes and links none; neither does standard output unless a folder is named', () => {
    expect(folder.run(['plan', '-q', 'cover.part.yaml', '-f', 'markdown=bare.md', '--figures', 'none']).code).toBe(0);
    expect([drawn('bare-'), linked(folder.read('bare.md'))]).toEqual([[], []]);
    expect(folder.read('bare.md')).toMatch(/^Figure ".*", drawn with `--format markdown=FILE`: /m);
    expect(linked(folder.run(['plan', '-q', 'cover.part.yaml']).out)).toEqual([]);
    mkdirSync(folder.file('pictures'));
    const { out } = folder.run(['plan', '-q', 'cover.part.yaml', '--figures', 'pictures']);
    expect(linked(out)).toEqual(
      readdirSync(folder.file('pictures'))
        .map((name) => `pictures/${name}`)
        .sort(),
    );
    expect(linked(out).length).toBeGreaterThan(0);
  });

  test('a folder that is not there is bad input, and nothing is written', () => {
    const { code, out, err } = folder.run(['plan', '-q', 'cover.part.yaml', '-f', 'markdown=lost.md', '--figures', 'nowhere']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('[file/not-writable]');
    expect(existsSync(folder.file('lost.md'))).toBe(false);
  });

  test('two parts in one Markdown have numbered figures', () => {
    expect(folder.run(['plan', '-q', 'cover.part.yaml', 'other.part.yaml', '-f', 'markdown=two.md']).code).toBe(0);
    expect(drawn('two-1-').length).toBeGreaterThan(0);
    expect(linked(folder.read('two.md'))).toEqual([...drawn('two-1-'), ...drawn('two-2-')].sort());
  });
});
