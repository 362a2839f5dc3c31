import type { CheckedFinding } from '../../../src/engine/check/checked.ts';
import type { CheckReport } from '../../../src/report/check/report.ts';
import { NASTY } from './hand-made.ts';

const AT = { line: 3, column: 5, endLine: 3, endColumn: 9, path: 'holes[0].depth' };

/** A file name with every sign that some format gives a meaning. */
export const NASTY_FILE = 'pa rts/100%25 "ü\' <b>&amp;|`x`,a:b\n::error::x#?[l](u){0}.part.yaml';
export const NASTY_TEXT = `${NASTY} ]]> "q" 'a' %0A 100% {0} [a](b)\n::warning::x\r\n\u0000\ud800\uffff end`;

export const FINDINGS: readonly CheckedFinding[] = [
  {
    of: '',
    file: '',
    line: 1,
    column: 1,
    endLine: 1,
    endColumn: 1,
    path: '',
    code: 'check/nothing-matched',
    severity: 'error',
    message: 'nothing',
    fault: true,
  },
  {
    of: 'a.part.yaml',
    file: 'a.part.yaml',
    ...AT,
    code: 'wall/ratio',
    severity: 'warning',
    message: 'uneven',
    notes: ['It tears.'],
    fix: 'even it',
    item: 'H1',
  },
  { of: 'a.part.yaml', file: 'a.part.yaml', ...AT, code: 'wall/ratio', severity: 'warning', message: 'uneven too', item: 'H1' },
  { of: 'a.part.yaml', file: 'a.part.yaml', ...AT, line: 7, endLine: 9, code: 'wall/note', severity: 'note', message: 'known' },
  {
    of: 'a.part.yaml',
    file: 'plant.yaml',
    ...AT,
    code: 'clamp/machine-use',
    severity: 'error',
    message: 'too weak',
    accepted: { reason: 'a second machine comes', where: 'part' },
  },
  {
    of: 'b.part.yaml',
    file: 'plant.yaml',
    ...AT,
    code: 'clamp/machine-use',
    severity: 'error',
    message: 'too weak',
    accepted: { reason: 'known', where: 'baseline' },
  },
  { of: 'c.part.yaml', file: 'c.part.yaml', ...AT, path: '', code: 'spec/yaml-syntax', severity: 'error', message: 'broken', fault: true },
  { of: NASTY_FILE, file: NASTY_FILE, ...AT, code: 'wall/least', severity: 'error', message: NASTY_TEXT, notes: [NASTY_TEXT], fix: NASTY_TEXT, item: NASTY },
];

/** A check of five files: one clean, one broken, one with a name that nothing must misread. */
export function handMadeCheck(changes: Partial<CheckReport> = {}): CheckReport {
  const names = ['a.part.yaml', 'b.part.yaml', 'c.part.yaml', 'clean.part.yaml', NASTY_FILE];
  return {
    tool: { name: 'diewright', version: '9.9.9' },
    threshold: 'error',
    exit: 2,
    files: names.map((name) => ({ name, judged: name !== 'c.part.yaml' })),
    findings: FINDINGS,
    rule: (code, severity) => ({ code, title: `Title of ${code}`, about: `About ${code}: ${NASTY_TEXT}`, severity }),
    ...changes,
  };
}

/** A check that found nothing. */
export function cleanCheck(): CheckReport {
  return handMadeCheck({ files: [{ name: 'clean.part.yaml', judged: true }], findings: [], exit: 0 });
}

export async function textOfCheck(
  format: Parameters<typeof import('../../../src/report/check/index.ts')['renderCheck']>[0],
  report = handMadeCheck(),
): Promise<string> {
  const { renderCheck } = await import('../../../src/report/check/index.ts');
  return [...(await renderCheck(format, report))].join('');
}
