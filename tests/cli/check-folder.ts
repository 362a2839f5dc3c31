import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { STARTER_PART } from '../../src/spec/starters.ts';
import { makeFolder } from './folder.ts';

/** A part whose plan has no error. */
export const GOOD = STARTER_PART;
/** A part whose plan has the error `wall/least`, and no fault of the file. */
export const THIN = STARTER_PART.replace('least: 2.5 mm', 'least: 0.6 mm');
/** A part that cannot be read. */
export const BROKEN = STARTER_PART.replace('geometry:', 'geometri:');

/** Names that some format could misread. */
export const NASTY_NAMES = [
  'with space.part.yaml',
  'ümläut-名.part.yaml',
  `quo"te's.part.yaml`,
  '100%,a:b.part.yaml',
  'new\nline.part.yaml',
  '<&>]]>.part.yaml',
  '`tick`|*x*.part.yaml',
];

/** A folder with files at any depth, empty but for these. */
export function folderWith(files: Readonly<Record<string, string>>) {
  const folder = makeFolder({});
  const put = (name: string, text: string): void => {
    mkdirSync(dirname(folder.file(name)), { recursive: true });
    writeFileSync(folder.file(name), text);
  };
  for (const [name, text] of Object.entries(files)) put(name, text);
  const git = (...args: string[]): string => {
    const { status, stdout, stderr } = spawnSync('git', ['-c', 'user.name=t', '-c', 'user.email=t@example.invalid', '-c', 'init.defaultBranch=main', ...args], {
      cwd: folder.path,
      encoding: 'utf8',
      env: { PATH: process.env['PATH'] ?? '', HOME: folder.path },
    });
    if (status !== 0) throw new Error(stderr);
    return stdout.trim();
  };
  return { ...folder, put, git };
}

export interface CheckJson {
  readonly exit: number;
  readonly files: readonly { readonly file: string; readonly judged: boolean }[];
  readonly findings: readonly {
    readonly code: string;
    readonly severity: string;
    readonly message: string;
    readonly item?: string;
    readonly checked?: string;
    readonly at?: { readonly file: string; readonly line: number; readonly column: number };
    readonly fix?: string;
    readonly accepted?: { readonly reason: string; readonly where: string };
    readonly fault?: true;
    readonly fingerprint: string;
  }[];
}

/** Runs a check that writes JSON to standard output. */
export function checkJson(folder: ReturnType<typeof folderWith>, ...args: string[]): CheckJson & { readonly code: number | null; readonly err: string } {
  const { code, out, err } = folder.run(['check', '--format', 'json', ...args]);
  return { ...(JSON.parse(out === '' ? '{"files":[],"findings":[]}' : out) as CheckJson), code, err };
}
