import { randomBytes } from 'node:crypto';
import { constants } from 'node:fs';
import { open, readdir, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { Diagnostic, SourceText } from '../index.ts';
import { nearestWord, Place } from '../index.ts';
import { BadInput } from './fault.ts';
import type { Io } from './io.ts';

/** A part or plant description has a few kilobytes; this many bytes are read at most. */
const MOST_BYTES = 2_000_000;

/** Name of standard input in messages and plans. */
const STDIN_NAME = 'stdin';

/**
 * Reads a text file, or standard input for `-`. The text is known by the name that the user gave.
 * @throws BadInput with one coded finding.
 */
export async function readText(name: string, io: Io): Promise<SourceText> {
  const shown = name === '-' ? STDIN_NAME : name;
  const bytes = name === '-' ? await readStdin(io, shown) : await readFile(name);
  return { name: shown, text: decode(bytes, shown) };
}

async function readStdin(io: Io, name: string): Promise<Buffer> {
  try {
    return await readLimited(io.stdin, name);
  } catch (error) {
    if (error instanceof BadInput) throw error;
    throw fault(name, 'not-readable', `standard input cannot be read: ${reason(error)}`, 'check what is behind it');
  }
}

function fault(name: string, code: string, message: string, fix: string): BadInput {
  const finding: Diagnostic = { code: `file/${code}`, severity: 'error', message, fix, at: new Place({ name, text: '' }, '', () => [0, 0]) };
  return new BadInput([finding]);
}

async function readFile(path: string): Promise<Buffer> {
  let file: Awaited<ReturnType<typeof open>>;
  try {
    file = await open(path, constants.O_RDONLY);
  } catch (error) {
    throw await openFault(path, error as NodeJS.ErrnoException);
  }
  try {
    if ((await file.stat()).isDirectory()) throw fault(path, 'is-a-directory', 'this is a folder, and a file is wanted', 'name the files in it');
    return await readLimited(file.createReadStream({ autoClose: false }), path);
  } catch (error) {
    if (error instanceof BadInput) throw error;
    throw fault(path, 'not-readable', `the file cannot be read: ${reason(error)}`, 'check the file and the disk');
  } finally {
    await file.close();
  }
}

async function openFault(path: string, error: NodeJS.ErrnoException): Promise<BadInput> {
  if (error.code === 'EISDIR') return fault(path, 'is-a-directory', 'this is a folder, and a file is wanted', 'name the files in it');
  if (error.code !== 'ENOENT' && error.code !== 'ENOTDIR')
    return fault(path, 'not-readable', `the file cannot be read: ${reason(error)}`, 'check the permissions of the file');
  const folder = dirname(path);
  const names = await readdir(folder).catch(() => undefined);
  if (names === undefined) return fault(path, 'not-found', `there is no folder "${folder}"`, 'check the path');
  const near = nearestWord(basename(path), names);
  const meant = near === undefined ? '' : `; did you mean "${folder === '.' ? near : join(folder, near)}"?`;
  return fault(path, 'not-found', `there is no such file${meant}`, 'check the path');
}

async function readLimited(stream: AsyncIterable<Buffer>, name: string): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    size += chunk.length;
    if (size > MOST_BYTES)
      throw fault(name, 'too-large', `the file is larger than ${MOST_BYTES / 1_000_000} MB`, 'name a part or plant description, not a model or an archive');
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

function decode(bytes: Buffer, name: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    const wide = bytes[0] === 0xff || bytes[0] === 0xfe || bytes.includes(0);
    const sound = Buffer.from(bytes.toString('utf8'));
    let bad = 0;
    while (bad < bytes.length && bytes[bad] === sound[bad]) bad += 1;
    const line = bytes.subarray(0, bad).filter((byte) => byte === 0x0a).length + 1;
    throw fault(
      name,
      'not-utf8',
      wide
        ? 'the file is not a text in UTF-8; it looks like UTF-16 or no text at all'
        : `the file is not a text in UTF-8: line ${line} holds a byte that cannot stand there`,
      'save it in the encoding UTF-8',
    );
  }
}

/**
 * Writes a whole file or nothing: a temporary file beside the target takes its place when it is complete.
 * @throws BadInput when that cannot be done; a file that was there before is unchanged.
 */
export async function writeWhole(path: string, text: string): Promise<void> {
  let temporary: string | undefined;
  try {
    // A link stays a link: what it points at is replaced. A device or pipe cannot be replaced and is written to.
    const target = await realpath(path).catch(() => path);
    const there = await stat(target).catch(() => undefined);
    if (there !== undefined && !there.isFile() && !there.isDirectory()) {
      const file = await open(target, 'w');
      await file.writeFile(text).finally(() => file.close());
      return;
    }
    const name = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString('hex')}.tmp`);
    const file = await open(name, 'wx', 0o666);
    temporary = name;
    try {
      if (there !== undefined) await file.chmod(there.mode & 0o777);
      await file.writeFile(text);
    } finally {
      await file.close();
    }
    await rename(name, target);
  } catch (error) {
    // A pipe whose reader has gone away is no fault, as on standard output.
    if ((error as NodeJS.ErrnoException).code === 'EPIPE') return;
    if (temporary !== undefined) await unlink(temporary).catch(() => undefined);
    throw fault(path, 'not-writable', `the file cannot be written: ${reason(error)}`, 'check the folder and its permissions; nothing was changed');
  }
}

/** The reason of the operating system in words, without a path of this machine. */
function reason(error: unknown): string {
  const { code } = error as NodeJS.ErrnoException;
  const words: Readonly<Record<string, string>> = {
    EACCES: 'permission denied',
    EPERM: 'permission denied',
    EISDIR: 'it is a folder',
    ENOENT: 'there is no such folder',
    ENOTDIR: 'a part of the path is not a folder',
    ELOOP: 'its links lead in a circle',
    ENAMETOOLONG: 'the name is too long',
    ENOSPC: 'the disk is full',
    EROFS: 'the disk can only be read',
    EMFILE: 'too many files are open',
  };
  return words[code ?? ''] ?? code ?? 'for an unknown reason';
}
