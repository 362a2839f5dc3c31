// Scaffold for contributors: npm run new KIND ID. Writes the file with the form it must have, never over an existing
// one, and says which command proves the result. What it writes fails its tests until the blanks are filled.
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const root = join(import.meta.dirname, '..');
const [kind, id] = process.argv.slice(2);

const camel = (text) => text.replace(/[-.](\w)/g, (_, letter) => letter.toUpperCase());
const split = (text, sign) => {
  const at = text.indexOf(sign);
  return at < 0 ? undefined : [text.slice(0, at), text.slice(at + 1)];
};

const KINDS = {
  formula: {
    form: 'topic.name',
    prove: 'npx vitest run --config .build/vitest.config.ts tests/reference tests/architecture/equations.test.ts',
    next: ([topic]) => `add it to src/physics/index.ts if ${topic} is a new topic, and a case from a published source to tests/reference/cases/${topic}.ts`,
    parts: (text) => split(text, '.'),
    files: ([topic, name]) => ({
      [`src/physics/${topic}-${name}.ts`]: `import { defineFormula } from '../kernel/formula.ts';

/** What it gives, in which unit, for which range; the source. */
export const ${camel(name)} = defineFormula({
  id: '${topic}.${name}',
  title: '',
  symbol: 'y',
  inputs: {
    input: { symbol: 'x', unit: 'mm', meaning: '', range: [1, 100] },
  },
  unit: 'mm',
  equation: 'x',
  outside: 'refuse',
  source: [],
  status: 'memory',
  accuracy: '',
  compute: ({ input }) => input,
});
`,
    }),
  },
  table: {
    form: 'topic/name',
    prove: 'npx vitest run --config .build/vitest.config.ts tests/rules',
    next: () => 'type at least three cells a second time, from the source, into tests/rules/',
    parts: (text) => split(text, '/'),
    files: ([topic, name]) => ({
      [`rules/tables/${topic}/${name}.yaml`]: `title: 
about: What it is and how it is used, in one or two sentences.
axes:
  family: { values: [zinc, zinc-aluminium, aluminium, magnesium, copper] }
gives:
  least: { unit: mm, meaning:  }
status: source
source: []
rows:
  - { family: zinc, least:  }
`,
    }),
  },
  rule: {
    form: 'topic/name',
    prove: 'npm run build && npx vitest run --config .build/vitest.config.ts tests/rules',
    next: () => 'see what it does to the examples: npm run build && npm run examples && git diff examples',
    parts: (text) => split(text, '/'),
    files: ([topic, name]) => ({
      [`rules/limits/${topic}/${name}.yaml`]: `title: 
uses: { wall: part.wall-nominal in mm }
when: 'true'
require: wall >= 0.0
severity: warning
message: 'A wall of {wall} ...'
why: 
fix: 
source: []
examples:
  - { given: { wall: 2.0 }, holds: true }
  - { given: { wall: -1.0 }, holds: false }
`,
    }),
  },
  alloy: {
    form: 'family',
    prove: 'npx vitest run --config .build/vitest.config.ts tests/reference/alloys',
    next: () => 'copy a neighbouring record in that file; then type its figures a second time into tests/reference/alloys-cells.test.ts',
    parts: (text) => [text],
    files: () => ({}),
  },
  machine: {
    form: 'id',
    prove: 'npx vitest run --config .build/vitest.config.ts tests/rules/plant.test.ts',
    next: () => 'copy a neighbouring machine in rules/plants/typical.yaml; keep it invented and coherent',
    parts: (text) => [text],
    files: () => ({}),
  },
  section: {
    form: 'topic',
    prove: 'npm run build && npm run examples && npx vitest run --config .build/vitest.config.ts',
    next: ([topic]) => `add ${topic} to WORK_ORDER and PRINT_ORDER in src/engine/steps/index.ts and its words to src/engine/vocabulary/index.ts`,
    parts: (text) => [text],
    files: ([topic]) => ({
      [`src/engine/vocabulary/${topic}.ts`]: `import { number } from './define.ts';

/** Values of the section ${topic}. */
export const ${topic.toUpperCase()}_WORDS = {
  '${topic}.value': number('mm', ''),
} as const;
`,
      [`src/engine/steps/${topic}.ts`]: `import type { Ledger } from '../ledger.ts';
import { type Step, valuesBlock } from '../step.ts';

function work(_ledger: Ledger): void {}

export const ${camel(topic)}Step: Step = {
  id: '${topic}',
  title: '',
  work,
  show: (ledger) => valuesBlock(ledger, []),
};
`,
    }),
  },
  format: {
    form: 'name',
    prove: 'npx vitest run --config .build/vitest.config.ts tests/unit/report',
    next: () => 'add it to the renderers of src/index.ts; a format computes nothing, sorts nothing and drops nothing',
    parts: (text) => [text],
    files: ([name]) => ({
      [`src/report/${name}.ts`]: `import type { Plan } from '../engine/plan.ts';

/** The plan as ${name}. */
export function ${camel(name)}Report(plan: Plan): string {
  return plan.part.name;
}
`,
    }),
  },
};

const chosen = KINDS[kind];
const parts = chosen?.parts(id ?? '');
if (chosen === undefined || id === undefined || parts === undefined || !/^[a-z][a-z0-9./-]*$/.test(id)) {
  console.error(
    `npm run new KIND ID\n${Object.entries(KINDS)
      .map(([name, entry]) => `  ${name} ${entry.form}`)
      .join('\n')}`,
  );
  process.exit(2);
}
for (const [path, text] of Object.entries(chosen.files(parts))) {
  const target = join(root, path);
  if (existsSync(target)) {
    console.error(`${path} exists already; nothing was written over it`);
    process.exit(2);
  }
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, text);
  console.log(`wrote ${path}`);
}
console.log(`next: ${chosen.next(parts)}\nproof: ${chosen.prove}`);
