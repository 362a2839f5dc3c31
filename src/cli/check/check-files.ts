import { type CheckedFile, type CheckedFinding, checkedFindings } from '../../index.ts';
import { share } from '../pool/pool.ts';
import type { Surroundings } from '../settings.ts';
import type { Found } from './discover.ts';
import { type CheckOrders, type Outcome, settingOf, unlessRefused } from './job.ts';
import { type CheckedOne, checkerOf } from './run.ts';

export interface CheckedFiles {
  readonly files: CheckedFile[];
  readonly findings: CheckedFinding[];
  /** A fault of the program has left files unchecked. */
  readonly broken: boolean;
}

/**
 * Checks files, in threads where some are asked for, and keeps nothing of each but its findings, in the order of the files. A
 * file that a fault of the program leaves unchecked is told, and stops no other. `done` hears how many are through.
 * @throws BadInput for what no file could make good; of several such things for that of the first file.
 */
export async function checkFiles(
  found: readonly Found[],
  orders: CheckOrders,
  surroundings: Surroundings,
  { threads, done }: { readonly threads: number; readonly done: (count: number) => void },
): Promise<CheckedFiles> {
  const check = checkerOf(settingOf(orders, surroundings));
  const results: CheckedOne[] = [];
  const lean = sharedWords();
  let [count, broken, refused] = [0, false, Number.POSITIVE_INFINITY];
  const note = (index: number, result: CheckedOne): void => {
    results[index] = lean(result);
    count += 1;
    done(count);
  };
  await share<Found, Outcome>({
    items: found,
    threads,
    here: async () => unlessRefused(check),
    job: 'check',
    setting: orders,
    stopped: () => refused < Number.POSITIVE_INFINITY,
    take: (outcome, index) => {
      if (outcome === undefined) refused = Math.min(refused, index);
      else note(index, outcome);
    },
    lost: ({ path }, index, why) => {
      broken = true;
      note(index, { judged: false, findings: checkedFindings(path, [leftUndone(why)], { shown: orders.shown, faults: true }) });
    },
  });
  // Said by checking it once more, here.
  const first = found[refused];
  if (first !== undefined) await check(first);
  return { files: found.map(({ path }, i) => ({ name: path, judged: results[i]?.judged === true })), findings: inOrder(results), broken };
}

/** The findings of all files, those of a plant with the first part that is planned with it. */
function inOrder(results: readonly CheckedOne[]): CheckedFinding[] {
  const told = new Set<string>();
  return results.flatMap(({ findings, ofPlant }) => {
    if (ofPlant === undefined || told.has(ofPlant.plant)) return findings;
    told.add(ofPlant.plant);
    return [...findings, ...ofPlant.findings];
  });
}

function leftUndone(why: string): { readonly code: string; readonly severity: 'error'; readonly message: string; readonly fix: string } {
  const message = `a fault of the program has left this file unchecked: ${why.split('\n')[0]}`;
  return {
    code: 'check/left-undone',
    severity: 'error',
    message,
    fix: 'the findings of the other files hold; run this one with "diewright plan", which says more',
  };
}

/**
 * Findings say the same words over and over - why a rule is there, names of files - and another thread sends them anew with each.
 * They are kept once.
 */
function sharedWords(): (result: CheckedOne) => CheckedOne {
  const words = new Map<string, string>();
  const word = <T extends string | undefined>(text: T): T => {
    if (text === undefined) return text;
    const known = words.get(text);
    if (known === undefined) words.set(text, text);
    return (known ?? text) as T;
  };
  const lists = new Map<string, readonly string[]>();
  const list = (texts: readonly string[] | undefined): readonly string[] | undefined => {
    if (texts === undefined) return undefined;
    const key = texts.join('\u0000');
    const known = lists.get(key) ?? texts;
    lists.set(key, known);
    return known;
  };
  const lean = (finding: CheckedFinding): CheckedFinding => ({
    ...finding,
    of: word(finding.of),
    file: word(finding.file),
    path: word(finding.path),
    code: word(finding.code),
    fix: word(finding.fix),
    item: word(finding.item),
    notes: list(finding.notes),
  });
  return (result) => ({ ...result, findings: result.findings.map(lean) });
}
