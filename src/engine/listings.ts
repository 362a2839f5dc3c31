import { formatQuantity } from '../kernel/format.ts';
import { otherwiseOf } from '../kernel/formula.ts';
import { FORMULAS } from '../physics/index.ts';
import type { Axis, Limit, Rulebook } from '../rulebook/types.ts';
import type { PlantSpec } from '../spec/index.ts';
import { hereInShort } from './changes.ts';
import { ALL_TERMS } from './terms.ts';
import type { Word } from './vocabulary/define.ts';
import { VOCABULARY } from './vocabulary/index.ts';

export const LISTINGS = ['alloys', 'machines', 'formulas', 'tables', 'rules', 'choices', 'values', 'terms', 'sources'] as const;
export type ListingName = (typeof LISTINGS)[number];

/** Named columns and one record a row. */
export interface Listing {
  readonly columns: readonly string[];
  readonly rows: readonly Readonly<Record<string, string | readonly string[]>>[];
}

/** What is built in, or what the plant holds, one row each; only rows that hold `filter` somewhere, whatever the case. */
export function listing(name: ListingName, given: { readonly rulebook: Rulebook; readonly plant: PlantSpec }, filter = ''): Listing {
  const { columns, rows } = BUILD[name](given);
  const wanted = filter.toLowerCase();
  return {
    columns,
    rows: rows.filter((row) =>
      Object.values(row)
        .flat()
        .some((text) => text.toLowerCase().includes(wanted)),
    ),
  };
}

type Build = (given: { readonly rulebook: Rulebook; readonly plant: PlantSpec }) => Listing;

const BUILD: Readonly<Record<ListingName, Build>> = {
  alloys: ({ rulebook }) => ({
    columns: ['id', 'family', 'chamber', 'here', 'designations'],
    rows: Object.values(rulebook.alloys).map((alloy) => ({
      id: alloy.id,
      family: alloy.family,
      chamber: alloy.chamber.allows,
      here: hereInShort(rulebook, 'alloy', alloy.id),
      designations: alloy.designations.filter((d) => d.near !== true).map((d) => `${d.system} ${d.code}`),
    })),
  }),
  machines: ({ plant }) => ({
    columns: ['id', 'chamber', 'shot', 'locking force', 'between tie bars', 'plungers'],
    rows: plant.machines.map((machine) => ({
      id: machine.id,
      chamber: machine.chamber,
      shot: machine.shot,
      'locking force': formatQuantity(machine.lockingForce.value, machine.lockingForce.unit),
      'between tie bars': `${formatQuantity(machine.tieBarX.value, 'mm')} x ${formatQuantity(machine.tieBarY.value, 'mm')}`,
      plungers: machine.plungers.map((plunger) => formatQuantity(plunger.value, plunger.unit)),
    })),
  }),
  formulas: () => ({
    columns: ['id', 'unit', 'title', 'inputs'],
    rows: FORMULAS.map((formula) => ({
      id: formula.id,
      unit: formula.unit,
      title: formula.title,
      inputs: Object.entries(formula.inputs).map(([name, input]) => {
        const otherwise = input.default === undefined || input.logical === true ? otherwiseOf(input) : String(input.default);
        return `${name}${input.unit === '1' ? '' : ` ${input.unit}`}${otherwise === undefined ? '' : ` (${otherwise})`}`;
      }),
    })),
  }),
  tables: ({ rulebook }) => ({
    columns: ['id', 'here', 'title', 'axes', 'gives'],
    rows: Object.values(rulebook.tables).map((table) => ({
      id: table.id,
      here: hereInShort(rulebook, 'table', table.id),
      title: table.title,
      axes: table.axes.map(axisText),
      gives: table.gives.map((column) => column.name),
    })),
  }),
  rules: ({ rulebook }) => ({
    columns: ['id', 'kind', 'when broken', 'here', 'title'],
    rows: [
      ...Object.values(rulebook.limits).map((limit) => limitRow(rulebook, limit, limit.severity)),
      ...Object.values(rulebook.switchedOff ?? {}).map((limit) => limitRow(rulebook, limit, 'off')),
      ...Object.values(rulebook.cautions).map(({ id, title }) => ({
        id,
        kind: 'caution',
        'when broken': '',
        here: hereInShort(rulebook, 'caution', id),
        title,
      })),
    ],
  }),
  choices: ({ rulebook }) => ({
    columns: ['id', 'here', 'title', 'words'],
    rows: Object.values(rulebook.choices).map((choice) => ({
      id: choice.id,
      here: hereInShort(rulebook, 'choice', choice.id),
      title: choice.title,
      words: [...new Set(choice.rows.map((row) => row.choose))],
    })),
  }),
  values: () => ({
    columns: ['id', 'unit', 'title'],
    rows: Object.entries(VOCABULARY as Readonly<Record<string, Word>>).map(([id, word]) => ({
      id: word.each === true ? `${id}[…]` : id,
      unit: 'text' in word ? 'text' : word.unit,
      title: word.title,
    })),
  }),
  terms: () => ({
    columns: ['term', 'meaning'],
    rows: ALL_TERMS.map(({ term, also = [], meaning }) => ({ term, ...(also.length === 0 ? {} : { also }), meaning })),
  }),
  sources: ({ rulebook }) => ({
    columns: ['key', 'year', 'title'],
    rows: Object.values(rulebook.sources).map((source) => ({
      key: source.key,
      year: source.year ?? '',
      title: `${source.author === undefined ? '' : `${source.author}: `}${source.title}`,
    })),
  }),
};

function limitRow(rulebook: Rulebook, { id, title }: Limit, severity: string): Listing['rows'][number] {
  return { id, kind: 'limit', 'when broken': severity, here: hereInShort(rulebook, 'limit', id), title };
}

function axisText(axis: Axis): string {
  return axis.kind === 'word' ? axis.name : `${axis.name} ${axis.unit}`;
}
