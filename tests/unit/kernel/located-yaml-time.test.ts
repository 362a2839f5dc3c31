import { expect, it } from 'vitest';
import { readLocatedYaml } from '../../../src/kernel/located-yaml.ts';
import { cpuTime } from '../../cpu-time.ts';

it('a YAML text is read in time, whatever it is', () => {
  const start = cpuTime();
  for (const piece of ['- *a\n', 'a: 1\n', '&a ', '{a: ', '!x ', '\ta: b\n', ']', '"'])
    readLocatedYaml({ name: 'x', text: `a: &a 1\n${piece.repeat(30_000)}` });
  // Several times what it takes: a cost that grows with the square of the text takes minutes.
  expect(cpuTime() - start).toBeLessThan(30_000);
});
