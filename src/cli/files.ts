import { closeSync, fstatSync, openSync, readdirSync, readSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Diagnostic, SourceText } from '../index.ts';
import { nearestWord, Place } from '../index.ts';
import { leadsOut } from './boundary.ts';
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
  if (name !== '-') return readFileText(name);
  return { name: STDIN_NAME, text: decode(await readStdin(io, STDIN_NAME), STDIN_NAME) };
}

/** Reads a text file of at most so many bytes. @throws BadInput with one coded finding. */
export function readFileText(name: string, most = MOST_BYTES): SourceText {
  return { name, text: decode(readFile(name, most), name) };
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

/** @throws BadInput for a path that a link leads out of the repository that it lies in. */
export function refuseLinkOut(path: string): void {
  if (leadsOut(path)) throw fault(path, 'outside', 'a link leads out of the repository here', 'name the file that it leads to, or copy it into the repository');
}

/** Synchronously: a description is small, and a stream costs more time than the reading. */
function readFile(path: string, most: number): Buffer {
  refuseLinkOut(path);
  let file: number;
  try {
    file = openSync(path, 'r');
  } catch (error) {
    throw openFault(path, error as NodeJS.ErrnoException);
  }
  try {
    const known = fstatSync(file);
    if (known.isDirectory()) throw fault(path, 'is-a-directory', 'this is a folder, and a file is wanted', 'name the files in it');
    // Some files, such as those of the kernel and pipes, do not say how large they are.
    let bytes = Buffer.allocUnsafe((known.size === 0 ? most : Math.min(known.size, most)) + 1);
    let size = 0;
    for (let read = -1; read !== 0 && size <= most; size += read) {
      if (size === bytes.length) bytes = Buffer.concat([bytes], most + 1);
      read = readSync(file, bytes, size, bytes.length - size, null);
    }
    if (size > most) throw tooLarge(path, most);
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
    if (size > MOST_BYTES) throw tooLarge(name, MOST_BYTES);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

function tooLarge(name: string, most: number): BadInput {
  return fault(name, 'too-large', `the file is larger than ${most / 1_000_000} MB`, 'name a part or plant description, not a model or an archive');
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
