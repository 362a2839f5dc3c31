import { printable } from '../kernel/printable.ts';
import { nearestWord } from '../kernel/spelling.ts';
import type { Findings } from './findings.ts';
import { type FileKind, VERSIONS } from './schema-parts.ts';

/** Keys at the top of other kinds of file, by which a file without its first line is recognised. */
const MARKS: Readonly<Record<FileKind, readonly string[]>> = {
  part: ['part', 'geometry', 'alloy'],
  die: ['die', 'parts'],
  plant: ['plant', 'machines'],
  baseline: ['findings'],
  project: ['rules', 'adjusted', 'fail_on'],
};

/**
 * Checks the line `diewright: part/1`. False when the file is of another kind or version, so that holding it against
 * the schema would only repeat that.
 */
export function checkFormatLine(findings: Findings, kind: FileKind): boolean {
  const data = findings.yaml.data as Readonly<Record<string, unknown>>;
  const wanted = `${kind}/${VERSIONS[kind]}`;
  const fix = `write "diewright: ${wanted}" as the first line`;
  if (!Object.hasOwn(data, 'diewright')) return checkMissing(findings, kind, data, fix);
  const given = data['diewright'];
  if (given === wanted) return true;
  const report = (message: string, advice = fix): void => findings.add('wrong-format', ['diewright'], message, { fix: advice });
  const [, otherKind, version] = /^(part|die|plant|project|plan|rule|baseline)\/(\d{1,6})$/.exec(typeof given === 'string' ? given : '') ?? [];
  if (otherKind === undefined) {
    report(typeof given === 'string' ? `"${printable(given)}" names no kind of file and version` : 'a kind of file and version is wanted here');
    return true;
  }
  if (otherKind !== kind) {
    report(`this is a ${otherKind} file, but a ${kind} file is wanted here`, `give a file that begins with "diewright: ${wanted}"`);
    return false;
  }
  if (Number(version) > VERSIONS[kind]) {
    report(`this file has version ${version} of its form, and this program reads version ${VERSIONS[kind]}`, 'use a newer version of diewright');
    return false;
  }
  report(`there is no version ${version} of ${kind} files`);
  return true;
}

function checkMissing(findings: Findings, kind: FileKind, data: Readonly<Record<string, unknown>>, fix: string): boolean {
  const keys = Object.keys(data);
  // A slip in the key itself is reported as an unknown key.
  if (keys.some((key) => key.length <= 40 && nearestWord(key, ['diewright']) !== undefined)) return true;
  const has = (of: FileKind): number => MARKS[of].filter((key) => Object.hasOwn(data, key)).length;
  const others = (Object.keys(MARKS) as FileKind[]).filter((other) => other !== kind);
  const other = others.find((candidate) => has(candidate) > has(kind));
  if (other !== undefined) {
    findings.add('wrong-format', ['diewright'], `the file looks like a ${other} file, but a ${kind} file is wanted here`, {
      about: [],
      fix: `give a file that begins with "diewright: ${kind}/${VERSIONS[kind]}"`,
    });
    return false;
  }
  findings.add('wrong-format', ['diewright'], `the line "diewright: ${kind}/${VERSIONS[kind]}" is missing`, { about: [], fix });
  return has(kind) > 0;
}
