import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { exampleTo, LEVER, LID, workTo } from './zz-work.ts';

test('look', () => {
  const to = process.env['TO'] ?? 'solidification';
  const prefix = (process.env['PREFIX'] ?? 'cooling.').split(',');
  const names = (process.env['PARTS'] ?? 'LID,LEVER').split(',');
  for (const name of names) {
    const ledger =
      name === 'LID' ? workTo(to, LID) : name === 'LEVER' ? workTo(to, LEVER) : exampleTo(to, readFileSync(`examples/${name}/${name}.part.yaml`, 'utf8'));
    const lines = [...ledger.values]
      .filter(([id]) => prefix.some((p) => id.startsWith(p)))
      .map(([id, v]) => `${id} ${Number(v.value.toPrecision(4))} ${v.unit}`);
    const texts = [...ledger.texts].filter(([id]) => prefix.some((p) => id.startsWith(p))).map(([id, v]) => `${id} "${v}"`);
    console.log(`== ${name}\n${[...lines, ...texts].join('\n')}\nunchecked ${ledger.unchecked.map((u) => `${u.id}: ${u.missing}`).join('; ')}`);
  }
});
