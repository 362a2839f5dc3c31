/**
 * The walls of the house: who may import whom, downward only, type imports counted, no cycle.
 * bin -> cli -> index.ts -> report -> engine -> { spec, rulebook, physics } -> kernel
 */
const wall = (name, from, to, comment) => ({ name, severity: 'error', comment, from: { path: from }, to: { path: to } });

module.exports = {
  forbidden: [
    { name: 'no-cycle', severity: 'error', comment: 'cut the cycle: one of the files has two jobs', from: {}, to: { circular: true } },
    { name: 'no-orphan-type', severity: 'error', comment: 'an unresolvable import', from: {}, to: { couldNotResolve: true, pathNot: '^virtual:' } },
    wall('kernel-imports-nothing-of-ours', '^src/kernel/', '^src/(?!kernel/)', 'the kernel is words everybody uses'),
    wall('physics-sees-the-kernel-only', '^src/physics/', '^src/(?!kernel/|physics/)', 'formulas are numbers in, number out'),
    { name: 'physics-uses-no-package', severity: 'error', from: { path: '^src/physics/' }, to: { dependencyTypes: ['npm', 'npm-dev', 'core'] } },
    wall('spec-sees-the-kernel-only', '^src/spec/', '^src/(?!kernel/|spec/)', 'the reader knows no rule and no formula'),
    wall('rulebook-sees-the-kernel-only', '^src/rulebook/', '^src/(?!kernel/|rulebook/)', 'rule data knows no plan'),
    wall('engine-looks-down', '^src/engine/', '^src/(report|cli|index)', 'the engine formats nothing for people'),
    wall('report-sees-plan-and-kernel', '^src/report/', '^src/(?!kernel/|report/|engine/)', 'a report computes nothing, so it needs no rule, formula or reader'),
    wall('index-is-below-the-cli', '^src/(index|check|freshness|replan|options|schemas)\\.ts', '^src/cli/', 'the library never prints'),
    wall('nothing-imports-the-index-but-the-cli', '^src/(kernel|physics|spec|rulebook|engine|report)/', '^src/(index|check|freshness|replan|options|schemas)\\.ts', 'the library is put together above them'),
    wall('cli-goes-through-the-index', '^src/cli/', '^src/(physics|rulebook|spec|engine|check\\.ts|freshness\\.ts)/?', 'the command line holds no rule, formula or reader'),
    { name: 'only-the-cli-touches-the-machine', severity: 'error', comment: 'disk, process and terminal belong to src/cli', from: { path: '^src/(?!cli/)' }, to: { dependencyTypes: ['core'] } },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(node_modules|dist)' },
  },
};
