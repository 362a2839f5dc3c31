/* The table in COVERAGE.md: what checks each formula and each table, and where the figures of the checks come from. */
import { FORMULAS } from '../../src/physics/index.ts';
import { changedFigures, type Meets } from '../mutation/meets.ts';
import { BOUNDS } from '../rules/cells/bounds.ts';
import { type HeldCell, heldCells } from '../rules/cells/held.ts';
import { figure, tables } from '../rules/tables.ts';
import { ALLOY_FIGURES } from './alloys-copy/index.ts';
import type { Case } from './case.ts';
import { ERRATA } from './errata.ts';
import { type Origin, OUTSIDE, originOf } from './origin.ts';

const ORIGINS: Readonly<Record<Origin, string>> = {
  printed: 'printed in a publication, standard, data sheet or handbook',
  library: 'given by an independent library',
  apart: 'worked out apart: another program or method of solving, or an exact solution',
  limit: 'limiting cases',
  hand: 'worked by hand, also where form or inputs are published',
  memory: 'remembered forms or figures, unverified',
};
const STATUSES = ['source', 'derived', 'practice', 'memory'] as const;

/** Every figure of the tables, with what holds it. */
const CELLS = heldCells();
/** Published cells of tables that are typed a second time. */
export const TYPED_PUBLISHED = CELLS.filter(({ status, typed }) => status === 'source' && typed.length > 0).length;

const keysOf = (refs: readonly string[]): string => [...new Set(refs.map((ref) => ref.split(' ')[0]))].sort().join(', ') || '-';
const count = (n: number): string => (n === 0 ? '-' : String(n));
const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
const headed = (heads: readonly string[], rows: readonly (readonly string[])[]): string[] => [row(heads), row(heads.map(() => '-')), ...rows.map(row)];

/** Why a formula has no outside case, from what it is; the word of its status says the rest. */
export function reasonOf(cases: readonly Case[], formula: (typeof FORMULAS)[number]): string {
  const has = (origin: Origin): boolean => cases.some((one) => originOf(one) === origin);
  if (has('apart')) return 'no printed figure found; solved apart';
  if (formula.status === 'practice') return 'a planning rule of ours, so nobody else prints it';
  if (has('memory') || formula.status === 'memory') return 'the work is remembered; its text was not at hand';
  if (formula.status === 'source') return 'the form was read, without a worked figure beside it';
  return 'follows by arithmetic; worked by hand';
}

/** How many cases of each origin there are. */
export function countByOrigin(cases: readonly Case[]): Record<Origin, number> {
  const counts: Record<Origin, number> = { printed: 0, library: 0, apart: 0, limit: 0, hand: 0, memory: 0 };
  for (const one of cases) counts[originOf(one)] += 1;
  return counts;
}

function formulaRows(all: readonly Case[]): string[][] {
  return [...FORMULAS]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((formula) => {
      const cases = all.filter((one) => one.formula === formula.id);
      const counts = countByOrigin(cases);
      const outside = OUTSIDE.reduce((sum, origin) => sum + counts[origin], 0);
      const rest = outside > 0 ? '' : reasonOf(cases, formula);
      return [
        `\`${formula.id}\``,
        keysOf(formula.source),
        formula.status,
        String(cases.length),
        count(outside),
        count(counts.apart),
        count(counts.hand + counts.limit),
        count(counts.memory),
        rest,
      ];
    });
}

/** `least 4, greatest 3`: the columns whose figures carry that mark, with how many. */
function columnsOf(cells: readonly HeldCell[], status: string): string[] {
  const counts = new Map<string, number>();
  for (const cell of cells) if (cell.status === status) counts.set(cell.column, (counts.get(cell.column) ?? 0) + 1);
  if (counts.size === 0) return [];
  return [`${status}: ${[...counts].map(([column, n]) => (n === 1 ? column : `${column} ${n}`)).join(', ')}`];
}

function tableRows(): string[][] {
  return tables.map((table) => {
    const cells = CELLS.filter((cell) => cell.table === table.id);
    const sources = table.rows.flatMap((one) => Object.keys(table.gives).flatMap((column) => figure(table, one, column)?.source ?? []));
    const published = cells.filter(({ status }) => status === 'source');
    return [
      `\`${table.id}\``,
      keysOf(sources),
      count(published.length),
      count(published.filter(({ typed }) => typed.length > 0).length),
      ['derived', 'practice', 'memory'].flatMap((status) => columnsOf(cells, status)).join('; '),
    ];
  });
}

/** How often a change of 5 % of a figure meets what. */
function changeText(): string[] {
  const all = changedFigures();
  const rows = (['tables', 'alloys'] as const).flatMap((of) =>
    STATUSES.map((status) => {
      const some = all.filter((one) => one.of === of && one.status === status);
      const meets = (what: Meets): number => some.filter((one) => one.meets === what).length;
      const slips = some.filter((one) => one.meets === 'unverifiable' && one.typedTwice).length;
      return [of, status, some.length, meets('caught'), meets('missed'), meets('unverifiable'), slips] as const;
    }),
  );
  const sums = [2, 3, 4, 5, 6].map((i) => rows.reduce((sum, one) => sum + (one[i] as number), 0));
  const [, caught = 0, missed = 0, open = 0, slips = 0] = sums;
  return [
    `A published figure: a test that fails. ${caught} such figures are typed a second time from the work; ${missed} are missed.`,
    `Any other figure: nothing from outside. ${open} figures are derived, practice or memory; no work read prints them. A changed one shows in the`,
    `committed plans that use it, but nothing says which of the two is right. ${slips} of them are typed twice all the same, against slips of the hand.`,
    'They are listed below: those of the tables by table and column, those of the alloys by property.',
    `Beside them ${BOUNDS.reduce((sum, { printed }) => sum + printed.length, 0)} figures that a work prints stand in conditions of limits; \`tests/rules/cells/bounds.ts\` types them, so that a change fails too.`,
    '`node tests/mutation/figures.mjs` changes the figures one after the other.',
    '',
    ...headed(
      ['Figures of', 'Mark', 'Figures', 'Caught', 'Missed', 'Unverifiable', 'of these typed twice'],
      [...rows.map(([of, status, ...numbers]) => [of, status, ...numbers.map(count)]), ['all', '', ...sums.map(count)]],
    ),
  ];
}

/** The figures of the alloys that no work read prints: what they are, and how many by mark. */
function alloyRows(): string[][] {
  const groups = new Map<string, string[]>();
  for (const { kind, of, status, alloy } of ALLOY_FIGURES) {
    if (status === 'source') continue;
    const what = kind === 'property' || kind === 'other figure' ? `${kind} \`${of}\`` : `${kind}`;
    groups.set(what, [...(groups.get(what) ?? []), `${status} ${alloy}`]);
  }
  const named = (entries: readonly string[], status: string): string => {
    const alloys = [...new Set(entries.filter((one) => one.startsWith(`${status} `)).map((one) => one.slice(status.length + 1)))];
    return alloys.length > 8 ? `${alloys.length} alloys` : alloys.join(', ');
  };
  return [...groups].sort().map(([what, entries]) => [what, ...['derived', 'practice', 'memory'].map((status) => named(entries, status))]);
}

/** The text of COVERAGE.md. */
export function coverageText(all: readonly Case[]): string {
  const counts = countByOrigin(all);
  const outside = OUTSIDE.reduce((sum, origin) => sum + counts[origin], 0);
  const without = FORMULAS.filter((formula) => !all.some((one) => one.formula === formula.id && OUTSIDE.includes(originOf(one)))).length;
  return `${[
    '# What checks the figures',
    '',
    'Generated by `npm run docs` from `tests/reference/cases/`, `tests/rules/cells/` and the rules; a test holds it fresh.',
    '',
    `**Check values from outside: ${outside + TYPED_PUBLISHED}** - ${outside} cases of formulas whose figure is printed or given by an independent library,`,
    `and ${TYPED_PUBLISHED} cells of tables typed a second time from the work that they name. Not counted: ${counts.apart} cases worked out apart, the`,
    `${ALLOY_FIGURES.length} figures of the alloys, and conversions of units against an independent library (\`units.test.ts\`).`,
    '',
    '## What a change of 5 % of a figure meets',
    '',
    ...changeText(),
    '',
    '## Cases of formulas',
    '',
    ...headed(
      ['Where the figure of a case comes from', 'Cases'],
      [...(Object.keys(ORIGINS) as Origin[]).map((origin) => [ORIGINS[origin], String(counts[origin])]), ['all', String(all.length)]],
    ),
    '',
    'A case counts as printed only where the figure itself stands in the work; `origin.ts` names those, and all others count as worked by hand.',
    '',
    '## Printed figures that the program does not come to',
    '',
    ...headed(
      ['Work', 'It prints', 'Formula', 'Gives', 'Who is right'],
      ERRATA.map((one) => [one.work, one.prints, `\`${one.formula}\``, String(one.ours), one.verdict]),
    ),
    '',
    'Further misprints and contradictions stand with their works as `errata` in `rules/sources.yaml`.',
    '',
    `## Formulas (${FORMULAS.length}; ${without} without a case from outside, each with the reason)`,
    '',
    ...headed(['Formula', 'Source', 'Status', 'Cases', 'Outside', 'Apart', 'By hand', 'Memory', 'Why none from outside'], formulaRows(all)),
    '',
    `## Tables (${tables.length}): published cells, how many are typed twice, and what nothing outside can verify`,
    '',
    'The last column names every column with a figure that no work read prints: derived by us, practice without a source, or remembered; with',
    'how many where there are several. Such a figure may be wrong without any test knowing.',
    '',
    ...headed(['Table', 'Source', 'Published', 'Typed twice', 'Unverifiable from outside'], tableRows()),
    '',
    '## Alloys: what nothing outside can verify',
    '',
    ...headed(['What', 'Derived', 'Practice', 'Memory'], alloyRows()),
  ].join('\n')}\n`;
}
