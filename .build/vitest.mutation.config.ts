import { defineConfig, mergeConfig } from 'vitest/config';
import base from './vitest.config.ts';

/** The tests that judge a mutant: fast ones, which hold numbers and laws. Those of the command line hold texts and start processes. */
const FAST = ['tests/unit/{kernel,physics}/**/*.test.ts', 'tests/reference/formulas.test.ts', 'tests/reference/wave.test.ts'];

const merged = mergeConfig(base, defineConfig({ test: { reporters: [] } }));
export default { ...merged, test: { ...merged.test, include: FAST } };
