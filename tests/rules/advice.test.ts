import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compileFolder } from '../../.build/rulepack.ts';

const { limits } = compileFolder(join(import.meta.dirname, '..', '..', 'rules')).rulebook;

describe('advice that can be followed', () => {
  const fixOf = (id: string): string => limits[id]?.fix ?? '';

  test('heat that the spray leaves to the lines asks for more of them: colder coolant alone would have to be ice', () => {
    expect(fixOf('heat/spray-time')).toContain('length of lines');
    expect(fixOf('heat/spray-time')).not.toMatch(/coolant/);
  });

  test('a part is turned only where the bars across leave room, and their distance is said', () => {
    expect(fixOf('die/overhang-upright')).toMatch(/turn the part .* if the bars, \{across\} apart/);
  });

  test('a longer fill time is not for a gate of a shot that other castings share', () => {
    for (const id of ['gate/line-full', 'gate/width']) expect(fixOf(id)).toContain('unless another casting of the shot asks for the short one');
  });
});
