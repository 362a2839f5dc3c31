// Mutation testing: npm run mutation -- --mutate 'src/physics/**/*.ts'. DEVELOPERS.md says how to read it.
/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: '.build/vitest.mutation.config.ts' },
  coverageAnalysis: 'perTest',
  // What runs when a module is loaded: titles, symbols, ranges, sources of formulas. Words are held by the plans of the examples,
  // ranges and sources by tests/architecture and tests/reference; a mutant there would need every test to run again.
  ignoreStatic: true,
  // Texts for people: the example plans and the tests of messages hold them.
  mutator: { excludedMutations: ['StringLiteral'] },
  mutate: ['src/{kernel,physics}/**/*.ts'],
  ignorePatterns: ['dist', 'examples/**/*.svg', 'examples/**/plan.*', '.stryker', 'coverage'],
  symlinkNodeModules: true,
  tempDirName: '.stryker/sandbox',
  incremental: true,
  incrementalFile: '.stryker/incremental.json',
  reporters: ['clear-text', 'progress-append-only', 'json'],
  clearTextReporter: { allowColor: false, reportTests: false, reportMutants: true, reportScoreTable: true },
  jsonReporter: { fileName: '.stryker/report.json' },
  concurrency: 2,
  timeoutMS: 20000,
  checkers: [],
  allowEmpty: false,
};
