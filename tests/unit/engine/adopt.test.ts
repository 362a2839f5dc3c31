import { expect, test } from 'vitest';
import { adopt } from '../../../src/engine/adopt.ts';
import type { Ledger } from '../../../src/engine/ledger.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import { LID, workTo } from './work-to.ts';

const begun = (): Ledger => workTo('gate', { ...LID, pinned: { 'die.rows': '3' } });

function work(ledger: Ledger): void {
  ledger.put(Traced.choice('die.columns', 2, '1', { note: 'for the test', status: 'practice' }));
  ledger.put(Traced.choice('die.rows', 1, '1', { note: 'for the test', status: 'practice' }));
  ledger.put(Traced.choice('machine.count-cost[2]', 1, '1', { note: 'for the test', status: 'practice' }));
  ledger.setText('die.feeder', 'below', { at: ledger.part.at });
  ledger.record({
    id: 'cooling.medium',
    title: 'Coolant',
    kind: 'choice',
    value: 'water',
    because: '',
    status: 'practice',
    source: [],
    parents: [],
    alternatives: [],
  });
  ledger.attempt('die.size', 'Size', () => ledger.value('die.width'));
  ledger.findings.push({ code: 'test/finding', severity: 'note', message: 'found' });
}

const recordOf = ({ values, texts, textPlaces, decisions, findings, unchecked, usedPins, filedItems }: Ledger): unknown => [
  [...values].map(([id, { value, kind }]) => [id, value, kind]),
  [...texts],
  [...textPlaces.keys()],
  [...decisions].map(([id, { value }]) => [id, value]),
  findings.map(({ code, message }) => [code, message]),
  unchecked,
  [...usedPins],
  filedItems.of('machine.count-cost'),
];

test('a fork that is adopted is as if it had been worked out on the ledger itself', () => {
  const [here, tried] = [begun(), begun()];
  work(here);
  const fork = tried.fork();
  const before = recordOf(tried);
  work(fork);
  expect(recordOf(tried)).toEqual(before);
  expect(recordOf(here)).not.toEqual(before);
  adopt(tried, fork);
  expect(recordOf(tried)).toEqual(recordOf(here));
});
