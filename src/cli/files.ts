import { closeSync, fstatSync, openSync, readdirSync, readSync } from 'node:fs';
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
  const bytes = name === '-' ? await readStdin(io, shown) : readFile(name);
  return { name: shown, text: decode(bytes, shown) };
}

/** A text file by its path. @throws BadInput with one coded finding. */
export function readFileText(path: string): SourceText {
  return { name: path, text: decode(readFile(path), path) };
}

async function readStdin(io: Io, name: string): Promise<Buffer> {
  try {
    return await readLimited(io.stdin, name);
  } catch (error) {
    if (error instanceof BadInput) throw error;
    throw fault(name, 'not-readable', `standard input cannot be read: ${reason(error)}`, 'check what is behind it');
  }
}

export function fault(name: string, code: string, message: string, fix: string): BadInput {
  const finding: Diagnostic = { code: `file/${code}`, severity: 'error', message, fix, at: new Place({ name, text: '' }, '', () => [0, 0]) };
  return new BadInput([finding]);
}

/** Synchronously: a description is small, and a stream costs more time than the reading. */
function readFile(path: string): Buffer {
  let file: number;
  try {
    file = openSync(path, 'r');
  } catch (error) {
    throw openFault(path, error as NodeJS.ErrnoException);
  }
  try {
    if (fstatSync(file).isDirectory()) throw fault(path, 'is-a-directory', 'this is a folder, and a file is wanted', 'name the files in it');
    const bytes = Buffer.allocUnsafe(MOST_BYTES + 1);
    let size = 0;
    for (let read = -1; read !== 0 && size < bytes.length; size += read) read = readSync(file, bytes, size, bytes.length - size, null);
    if (size > MOST_BYTES) throw tooLarge(path);
    return bytes.subarray(0, size);
  } catch (error) {
    if (error instanceof BadInput) throw error;
    throw fault(path, 'not-readable', `the file cannot be read: ${reason(error)}`, 'check the file and the disk');
  } finally {
    closeSync(file);
  }
}

function openFault(path: string, error: NodeJS.ErrnoException): BadInput {
  if (error.code === 'EISDIR') return fault(path, 'is-a-directory', 'this is a folder, and a file is wanted', 'name the files in it');
  if (error.code !== 'ENOENT' && error.code !== 'ENOTDIR')
    return fault(path, 'not-readable', `the file cannot be read: ${reason(error)}`, 'check the permissions of the file');
  const folder = dirname(path);
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch {
    return fault(path, 'not-found', `there is no folder "${folder}"`, 'check the path');
  }
  const near = nearestWord(basename(path), names);
  const meant = near === undefined ? '' : `; did you mean "${folder === '.' ? near : join(folder, near)}"?`;
  return fault(path, 'not-found', `there is no such file${meant}`, 'check the path');
}

async function readLimited(stream: AsyncIterable<Buffer>, name: string): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    size += chunk.length;
    if (size > MOST_BYTES) throw tooLarge(name);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

function tooLarge(name: string): BadInput {
  return fault(name, 'too-large', `the file is larger than ${MOST_BYTES / 1_000_000} MB`, 'name a part or plant description, not a model or an archive');
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

/** The reason of the operating system in words, without a path of this machine. */
export function reason(error: unknown): string {
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
