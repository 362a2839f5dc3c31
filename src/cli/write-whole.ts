import { randomBytes } from 'node:crypto';
import { open, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { fault, reason } from './files.ts';

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
