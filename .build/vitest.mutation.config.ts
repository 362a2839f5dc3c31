import { defineConfig, mergeConfig } from 'vitest/config';
import base from './vitest.config.ts';

/**
 * The tests that judge a mutant: those of formulas, laws and readers that start within a second or so. MUTATION_TESTS names
 * others, separated by commas, for a folder with tests of its own.
 */
const FAST = [
  'tests/architecture/equations.test.ts',
  'tests/reference/**/*.test.ts',
  'tests/properties/{flow,physics,units}.test.ts',
  'tests/unit/{kernel,physics}/**/*.test.ts',
  'tests/unit/spec/{bad-input,read-part,set-field}.test.ts',
];
/** Slow to start, not of one formula or one reader, or about time, which faults and switches take. */
const SLOW = ['tests/reference/trade.test.ts', 'tests/reference/wave-time.test.ts', 'tests/unit/kernel/located-yaml-time.test.ts'];

const named = process.env['MUTATION_TESTS'];
const config = mergeConfig(base, defineConfig({ test: { exclude: SLOW, reporters: ['default'] } }));
if (config.test !== undefined) config.test.include = named === undefined ? FAST : named.split(',');
export default config;
