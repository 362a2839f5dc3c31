import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { CHECK_FORMATS } from '../../src/index.ts';
import { FORMULAS } from '../../src/physics/index.ts';
import { runHere } from '../cli/run-here.ts';
import { cpuTime } from '../cpu-time.ts';
import { BASES } from './bases.ts';
import { must, soundCheckText, soundCsv, soundJson, soundMarkdown, soundText } from './invariants.ts';
import { HOSTILE, mutated, mutations } from './mutate.ts';
import { leastTime } from './slow.ts';

/** The runs that took longest, for the report and the bound. */
export const slowRuns: { readonly ms: number; readonly what: string }[] = [];

/** Runs the command line and holds what every run must keep. */
async function held(args: readonly string[], stdin?: string): Promise<{ readonly code: number; readonly out: string }> {
  const run = () => runHere(args, stdin === undefined ? {} : { stdin });
  const start = cpuTime();
  const { code, out, err } = await run();
  const first = cpuTime() - start;
  const again = async (): Promise<number> => {
    const from = cpuTime();
    await run();
    return cpuTime() - from;
  };
  const ms = args[0] === 'options' ? first : await leastTime(first, again);
  // The options work out every machine with every plunger and count of cavities: some two seconds by themselves.
  if (ms > 100 && args[0] !== 'options') slowRuns.push({ ms, what: JSON.stringify(args).slice(0, 300) });
  must([0, 1, 2].includes(code), () => `${JSON.stringify(args)} ends with ${code}: ${err.slice(0, 500)}`);
  must(!/\n\s+at .+:\d+:\d+/.test(err), () => `${JSON.stringify(args)} prints a stack`);
  soundText(err, 'standard error');
  soundText(out.replaceAll('\r\n', '\n'), 'standard output');
  must(code !== 2 || err.trim() !== '' || out.trim() !== '', () => `${JSON.stringify(args)} ends with 2 and says nothing`);
  return { code, out };
}

const word = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...HOSTILE.map((text) => text.replaceAll('\u0000', ''))) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }).map((text) => text.replaceAll('\u0000', '')) },
);
const NUMBERS = ['0', '-0', '1', '-1', '0.5', '42', '1e308', '-1e308', '1e-320', '1e999', 'NaN', 'Infinity', '0x10', '1_000', '', '1,5', '１', '9'.repeat(400)];
const UNITS = ['', ' mm', ' cm2', ' kg', ' m/s', ' MPa', ' degC', ' K', ' %', ' in', ' parsec', ' mm mm'];
const number = fc.tuple(fc.constantFrom(...NUMBERS), fc.constantFrom(...UNITS)).map(([n, unit]) => `${n}${unit}`);

const calc = fc.constantFrom(...FORMULAS).chain((formula) =>
  fc.tuple(
    fc.constant(formula.id),
    fc.tuple(
      ...Object.entries(formula.inputs).map(([name, input]) =>
        fc.tuple(
          fc.oneof({ weight: 12, arbitrary: fc.constant(name) }, { weight: 1, arbitrary: word }),
          fc.oneof(
            number,
            fc.double({ min: input.range[0], max: input.range[1], noNaN: true }).map((n) => `${n} ${input.unit}`),
            word,
          ),
        ),
      ),
    ),
  ),
);

const SET_PATHS = [
  'alloy',
  'part.name',
  'geometry.volume',
  'geometry.mass',
  'geometry.wall.nominal',
  'geometry.envelope[0]',
  'holes[0].diameter',
  'holes[H1].depth',
  'pinned.gate.velocity',
  'pinned.machine.cavities',
  'production.per_year',
  'quality.use',
  'accepted[0].code',
  'walls[9999999].height',
  '__proto__.x',
  'pinned.__proto__',
  'constructor',
  'geometry',
  '',
];
const setting = fc
  .tuple(fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...SET_PATHS) }, { weight: 1, arbitrary: word }), fc.oneof(word, number))
  .map(([path, value]) => `${path}=${value}`);

const GLOBS = [
  '*',
  '**',
  '**/*',
  '*.part.yaml',
  '../**',
  '{a,b}',
  '{1..100000}',
  '[',
  '[!',
  '[z-a]',
  '!(x)',
  '+(a|b)*',
  '@(x',
  '(((',
  '***********',
  '**/**/**/**/*x',
  '{{{{{',
  'a'.repeat(300),
  '\\',
  '.',
  '..',
  '/',
  '//',
  '~',
  '-',
  '--',
  'loop',
  'loop/**',
  'folder',
  'no',
  '*\u0007*',
  '{a,{b,{c,{d,e}}}}*',
  '?(*)?(*)?(*)x',
  '*(*(a))b',
];
const glob = fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...GLOBS) }, { weight: 1, arbitrary: word });

const PART = (BASES.part[0] as { text: string }).text;

/** A folder with a part, a die, a circle of links and a broken one, in which the command runs; gone afterwards. */
async function inFolder<T>(files: Readonly<Record<string, string | Uint8Array>>, work: (path: (name: string) => string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'fuzz-'));
  try {
    mkdirSync(join(folder, 'folder/.git'), { recursive: true });
    symlinkSync('.', join(folder, 'folder/loop'));
    symlinkSync('nowhere', join(folder, 'folder/gone.part.yaml'));
    symlinkSync('self.part.yaml', join(folder, 'folder/self.part.yaml'));
    for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, 'folder', name), content);
    const result = await work((name) => join(folder, 'folder', name));
    must(readdirSync(folder).join() === 'folder', () => `something was written outside: ${readdirSync(folder).join()}`);
    return result;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const any = <T>(bases: readonly { readonly text: string }[]): fc.Arbitrary<string> =>
  mutations(bases.length).map((mutation) => mutated(bases, mutation)) as fc.Arbitrary<string> & T;
const maybe = (bases: readonly { readonly text: string }[]): fc.Arbitrary<string> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant((bases[0] as { text: string }).text) }, { weight: 2, arbitrary: any(bases) });

interface Command<T> {
  readonly arbitrary: fc.Arbitrary<T>;
  readonly run: (given: T) => Promise<void>;
}

const command = <T>(arbitrary: fc.Arbitrary<T>, run: (given: T) => Promise<void>): Command<unknown> => ({
  arbitrary,
  run: run as (given: unknown) => Promise<void>,
});

/** What is tried of the command line; each throws when an invariant does not hold. */
export const COMMANDS: Readonly<Record<string, Command<unknown>>> = {
  calc: command(calc, async ([id, inputs]) => {
    const { code, out } = await held(['calc', id, ...inputs.map(([name, value]) => `${name}=${value}`)]);
    must(code !== 0 || !/\b(NaN|Infinity|undefined)\b/.test(out), () => `calc ${id} gives ${out}`);
  }),
  words: command(
    fc.tuple(
      fc.constantFrom('plan', 'check', 'replan', 'options', 'calc', 'explain', 'list', 'schema', 'new', 'help', '--version'),
      fc.array(word, { maxLength: 4 }),
    ),
    async ([name, words]) => {
      await inFolder({}, async (path) => {
        // Nothing may be written where the tests run: outputs are named by no word of these.
        const args = words.map((one) => (/^(-|\.|\/|~)/.test(one) ? path(one.replaceAll('/', '')) : one));
        // Without a name a check searches the current folder, which here is this repository.
        await held([name, ...args.filter((one) => !/^--(out|write)/.test(one)), ...(name === 'check' ? [path('')] : [])]);
      });
    },
  ),
  set: command(fc.tuple(fc.array(setting, { minLength: 1, maxLength: 3 }), fc.boolean()), async ([settings, check]) => {
    await inFolder({ 'a.part.yaml': PART }, async (path) => {
      await held([check ? 'check' : 'plan', path('a.part.yaml'), ...settings.flatMap((one) => ['--set', one])]);
    });
  }),
  globs: command(fc.tuple(fc.array(glob, { minLength: 1, maxLength: 3 }), fc.constantFrom('check', 'replan')), async ([globs, name]) => {
    await inFolder({ 'a.part.yaml': PART }, async (path) => {
      const more = name === 'replan' ? ['--set', 'alloy=A360'] : ['--threads', '0'];
      // Below the folder only: the disk of whoever runs this is not to be searched.
      const args = globs.filter((one) => !/^(\.\.|\/|~)/.test(one)).map((one) => path(one.replace(/^[-/]+/, '')));
      await held([name, ...(args.length === 0 ? [path('')] : args), ...more]);
    });
  }),
  bytes: command(
    fc.tuple(
      fc.constantFrom('a.part.yaml', 'a.die.yaml', 'plant.yaml', 'diewright.yaml', 'plan.json', 'plan.md', 'known.yaml', 'rule.yaml'),
      fc.uint8Array({ maxLength: 400 }),
    ),
    async ([name, bytes]) => {
      await inFolder({ 'a.part.yaml': PART, [name]: bytes }, async (path) => {
        await held([
          'check',
          path(''),
          '--threads',
          '0',
          ...(name === 'known.yaml' ? ['--baseline', path(name)] : []),
          ...(name === 'rule.yaml' ? ['--rules', path('')] : []),
        ]);
        if (/^a\./.test(name)) await held(['plan', path(name)]);
      });
    },
  ),
  folder: command(
    fc.tuple(maybe(BASES.part), maybe(BASES.die), maybe(BASES.plant), fc.constantFrom(...CHECK_FORMATS), fc.nat(9)),
    async ([part, die, plant, format, more]) => {
      await inFolder({ 'a.part.yaml': part, 'b.die.yaml': die, 'plant.yaml': plant }, async (path) => {
        const { out, code } = await held(['check', path(''), '--threads', '0', '--plant', path('plant.yaml'), '--format', format]);
        if (out !== '' && format !== 'text' && format !== 'github') soundCheckText(format, out, 0);
        if (more === 0) soundMarkdown((await held(['options', path('a.part.yaml')])).out, 'the options');
        if (more === 1 && code !== 2) {
          const csv = path('table.csv');
          await held(['replan', path('a.part.yaml'), '--set', 'alloy=A360', '--format', `csv=${csv}`]);
        }
        if (more === 2) {
          const { out: json } = await held(['replan', path('a.part.yaml'), '--set', 'alloy=A360', '--format', 'json']);
          if (json !== '') soundJson(json, 'the replanning');
        }
        if (more === 3) {
          const { out: csv } = await held(['replan', path('a.part.yaml'), '--set', 'alloy=A360', '--format', 'csv']);
          soundCsv(csv, 'the table of parts');
        }
      });
    },
  ),
};
