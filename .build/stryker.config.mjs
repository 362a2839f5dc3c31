/**
 * Mutation testing: `npm run mutation`, or with one folder, `npm run mutation -- --mutate 'src/physics/**'`.
 * Faults are put into the source one at a time, and the fast tests must notice. How to read it: .build/mutation.md.
 *
 * What is left out, and why; arithmetic, comparisons, conditions and branches never are:
 * - StringLiteral: texts for people are held word for word by the committed plans, ids and units by types and by the build.
 * - Static mutants: what runs once when a module is loaded is a declaration (ranges, symbols, lists of inputs). A changed
 *   one needs every test to be run. tests/architecture/equations.test.ts holds the form of the declarations.
 */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  // The tests are named in the configuration of vitest; "related" would follow imports and find nothing more.
  vitest: { configFile: '.build/vitest.mutation.config.ts', related: false },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  mutate: ['src/kernel/**/*.ts', 'src/physics/**/*.ts', 'src/engine/**/*.ts', '!src/engine/vocabulary/**'],
  mutator: { excludedMutations: ['StringLiteral'] },
  disableTypeChecks: false,
  // A copy without what no fast test reads; node_modules is linked.
  ignorePatterns: ['/dist', '/examples/**/*.svg', '/.stryker', '/.github', '/.ci', '/tests/bench'],
  symlinkNodeModules: true,
  tempDirName: '.stryker/sandbox',
  incremental: true,
  incrementalFile: '.stryker/incremental.json',
  reporters: ['clear-text', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: '.stryker/mutation.json' },
  concurrency: 2,
  timeoutMS: 20_000,
  dryRunTimeoutMinutes: 10,
  allowEmpty: true,
};
