import { realpathSync } from 'node:fs';
import { basename, dirname, isAbsolute, join, relative, resolve } from 'node:path';
import { visibleLine } from '../../index.ts';
import { badInput } from '../fault.ts';

/** Longest list of changed names that is taken, in bytes. */
const MOST_BYTES = 200_000_000;

/** What differs between a revision and the working folder: absolute paths, of files that are gone too. */
export interface Changed {
  readonly files: ReadonlySet<string>;
  /** Whether a file lies in the repository; of one that does not, nothing is known. */
  readonly covers: (path: string) => boolean;
}

/**
 * The files that have changed since a revision, committed or not, new ones included. A file that was moved counts under
 * both names.
 * @throws BadInput without git, outside a repository and for a revision that it does not know.
 */
export async function changedSince(revision: string): Promise<Changed> {
  const top = realpathSync((await git(['rev-parse', '--show-toplevel'], '.', revision)).replace(/\r?\n$/, ''));
  if (revision === '' || revision.startsWith('-')) throw unknown(revision);
  const commit = (
    await git(['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`], top, revision).catch(() => {
      throw unknown(revision);
    })
  ).trim();
  const changed = await git(
    ['diff', '--name-only', '--no-renames', '--no-ext-diff', '--no-textconv', '--ignore-submodules=dirty', '-z', commit, '--'],
    top,
    revision,
  );
  const added = await git(['ls-files', '--others', '--exclude-standard', '-z'], top, revision);
  const files = new Set([...changed.split('\0'), ...added.split('\0')].filter((name) => name !== '').map((name) => join(top, name)));
  return {
    files,
    covers: (path) => {
      const from = relative(top, path);
      return from !== '' && !from.startsWith('..') && !isAbsolute(from);
    },
  };
}

/** The absolute path of a file as the changed files have it: without links in its folders. */
export function realName(path: string): string {
  try {
    return join(realpathSync(dirname(path)), basename(path));
  } catch {
    return resolve(path);
  }
}

function unknown(revision: string): Error {
  return badInput('check/revision', `git knows no revision "${visibleLine(revision)}" here`, 'check its name; in a shallow clone, fetch it first');
}

/** What git prints. Nothing of the repository's own configuration is let run a program where that can be kept away. */
async function git(args: readonly string[], folder: string, revision: string): Promise<string> {
  const { execFile } = await import('node:child_process');
  return new Promise((settle, reject) => {
    const options = {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: MOST_BYTES,
      windowsHide: true,
      env: { ...process.env, LC_ALL: 'C', GIT_OPTIONAL_LOCKS: '0' },
    } as const;
    execFile('git', ['-c', 'core.fsmonitor=false', ...args], options, (error, stdout, stderr) => {
      if (error === null) settle(stdout);
      else reject(failed(error, stderr, revision));
    });
  });
}

function failed(error: Error & { readonly code?: unknown }, stderr: string, revision: string): Error {
  if (error.code === 'ENOENT')
    return badInput(
      'check/revision',
      `what has changed since "${visibleLine(revision)}" cannot be told: git is not installed`,
      'install git, or leave --since out',
    );
  const said = stderr
    .split('\n')
    .find((line) => line.trim() !== '')
    ?.replace(/^fatal: /, '');
  return badInput(
    'check/revision',
    `what has changed since "${visibleLine(revision)}" cannot be told${said === undefined ? '' : `: ${visibleLine(said.trim()).slice(0, 200)}`}`,
    'run it inside a git repository, or leave --since out',
  );
}
