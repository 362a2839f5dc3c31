import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { type LocatedYaml, readLocatedYaml } from '../kernel/located-yaml.ts';
import type { SourceText } from '../kernel/place.ts';
import { printable } from '../kernel/printable.ts';
import { Traced } from '../kernel/traced.ts';
import { buildDecisions } from './build-part.ts';
import { checkAccepted, checkPins } from './checks.ts';
import type { DieEntry, DieSpec } from './die.ts';
import { type DieData, type DieDraft, dieSchema, MOST_CASTINGS } from './die-schema.ts';
import { dataAt, Findings } from './findings.ts';
import { checkFormatLine } from './format-line.ts';
import { present } from './present.ts';
import { readShape } from './shape.ts';

/** Reference that inputs of a die file carry as their source. */
const DIE_SOURCE = 'DIE';

/**
 * Reads a die description; the part files that it names are not looked at. Never throws. The die is given exactly when no
 * finding is an error; findings are sorted by place, and all of one file are reported together.
 */
export function readDie(source: SourceText): { readonly die?: DieSpec; readonly diagnostics: Diagnostic[] } {
  const yaml = readLocatedYaml(source, { prefix: 'spec', numbersAsText: true });
  const findings = new Findings(yaml);
  if (yaml.data === undefined || !checkFormatLine(findings, 'die')) return { diagnostics: sortDiagnostics(findings.all) };
  const { data, draft } = readShape(dieSchema, findings);
  checkDie(draft, findings);
  const diagnostics = sortDiagnostics(findings.all);
  return data === undefined || findings.failed ? { diagnostics } : { die: buildDie(data, yaml), diagnostics };
}

function checkDie(draft: DieDraft, findings: Findings): void {
  const files = new Map<string, number>();
  const ids = new Set<string>();
  let castings = 0;
  for (const [i, entry] of (draft.parts ?? []).entries()) {
    castings += entry?.count?.value ?? 1;
    const file = entry?.file;
    if (file === undefined) continue;
    const path = ['parts', i, 'file'];
    if (/^([/\\]|[A-Za-z]:[/\\])/.test(file))
      findings.add('absolute-path', path, `"${printable(file)}" holds on one machine only`, { fix: 'write the path as it is seen from the die file' });
    const key = normal(file);
    if (files.has(key))
      findings.add('part-twice', path, `"${printable(file)}" stands in this list already`, { fix: 'name it once, with the count of its castings' });
    else if (ids.has(idOf(entry?.id, file)))
      findings.add('duplicate-id', path, `another part of the die is called "${printable(idOf(entry?.id, file))}" already`, {
        fix: 'give it an id of its own: add "id"',
      });
    files.set(key, i);
    ids.add(idOf(entry?.id, file));
  }
  if (castings > MOST_CASTINGS)
    findings.add('too-many-castings', ['parts'], `${castings} castings in one shot are more than ${MOST_CASTINGS}`, { fix: 'check the counts', part: 'key' });
  if (dataAt(findings.yaml.data, ['pinned', 'machine.cavities']) !== undefined)
    findings.add('cavities-pinned', ['pinned', 'machine.cavities'], 'the counts of the parts say how many castings a shot has', {
      fix: 'remove the pin, and write the counts under "parts"',
      part: 'key',
    });
  checkPins(findings);
  checkAccepted(draft, findings);
}

/** `./a//b/../c` as `a/c`, so that two ways of writing a file are seen to be one. */
function normal(file: string): string {
  const steps: string[] = [];
  for (const step of file.replaceAll('\\', '/').split('/')) {
    if (step === '..' && steps.length > 0 && steps[steps.length - 1] !== '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}

/** The id given, else the name of the file without its endings; what no id may hold becomes a hyphen. */
function idOf(id: string | undefined, file: string): string {
  if (id !== undefined) return id;
  const name = (normal(file).split('/').pop() ?? '').replace(/(\.part)?\.ya?ml$/i, '');
  return name.replace(/[^\p{L}\p{N} ._+#()/-]/gu, '-').replace(/^[^\p{L}\p{N}]+/u, '') || 'part';
}

function buildDie(data: DieData, yaml: LocatedYaml): DieSpec {
  const { name, number, revision, note } = data.die;
  return {
    source: yaml.source,
    at: yaml.whole,
    name,
    ...present({ number, revision, note }),
    parts: data.parts.map(({ id, file, count }, i): DieEntry => {
      const called = idOf(id, file);
      const at = yaml.place(['parts', i]);
      const valueId = `set.count[${called}]`;
      return {
        id: called,
        file: { value: file, at: yaml.place(['parts', i, 'file']) },
        count:
          count === undefined
            ? Traced.default(valueId, 1, '1', { note: 'no count is given', source: DIE_SOURCE, at })
            : Traced.input(valueId, count.value, '1', { at: yaml.place(['parts', i, 'count']), written: count.written, source: DIE_SOURCE }),
        at,
      };
    }),
    ...buildDecisions(data, yaml),
  };
}
