import { type Dirent, readdirSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { SourceText } from '../index.ts';
import { badInput } from './fault.ts';
import { fault, readFileText, reason } from './files.ts';

/** A folder of house rules has some dozens of files; a folder with more is another one by mistake. */
const MOST_FILES = 2000;

/**
 * The rule files of a folder, named by their path in it with forward slashes, in stable order. Files and folders that
 * begin with a dot, and files that are no YAML, are not rules.
 * @throws BadInput when the folder or a file cannot be read.
 */
export function readRuleFolder(folder: string): SourceText[] {
  if (!isFolder(folder))
    throw fault(folder, 'not-a-folder', 'this is a file, and a folder of rules is wanted', 'name the folder that holds limits/, choices/, tables/ and so on');
  const paths: string[] = [];
  collect(folder, paths, folder);
  return paths.sort().map((path) => ({ name: relative(folder, path).split(sep).join('/'), text: readFileText(path).text }));
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch (error) {
    throw fault(path, 'not-found', `there is no folder "${path}": ${reason(error)}`, 'check --rules, DIEWRIGHT_RULES, or "rules" in the project file');
  }
}

function collect(folder: string, paths: string[], top: string): void {
  for (const entry of entriesOf(folder)) {
    if (entry.name.startsWith('.')) continue;
    const path = join(folder, entry.name);
    // A link to a file is read; a link to a folder is not followed, for it may lead in a circle.
    if (entry.isDirectory()) collect(path, paths, top);
    else if (/\.ya?ml$/i.test(entry.name)) paths.push(path);
    if (paths.length > MOST_FILES)
      throw badInput('rules/too-many-files', `${top} holds more than ${MOST_FILES} files`, 'name the folder that holds the rules, and no other one');
  }
}

function entriesOf(folder: string): Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    throw fault(folder, 'not-readable', `the folder cannot be read: ${reason(error)}`, 'check its permissions');
  }
}
