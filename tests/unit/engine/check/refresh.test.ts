import { expect, test } from 'vitest';
import { type Refresh, refreshCommand } from '../../../../src/engine/check/refresh.ts';

const BASE: Refresh = { parts: ['a.part.yaml'], workings: false, figures: true, wave: false, set: [] };

// What a shell takes literally is common knowledge of POSIX shells: IEEE Std 1003.1, Shell Command Language, 2.2 Quoting.
test.each([
  ['a plan in JSON', { json: 'plan.json' }, 'diewright plan a.part.yaml --format json=plan.json --fail-on never'],
  ['a plan in Markdown', { markdown: 'plan.md' }, 'diewright plan a.part.yaml --format markdown=plan.md --fail-on never'],
  ['Markdown without figures', { markdown: 'plan.md', figures: false }, 'diewright plan a.part.yaml --format markdown=plan.md --figures none --fail-on never'],
  ['JSON alone has no figures to leave out', { json: 'plan.json', figures: false }, 'diewright plan a.part.yaml --format json=plan.json --fail-on never'],
  ['workings', { workings: true }, 'diewright plan a.part.yaml --workings --fail-on never'],
  ['the wave', { wave: true }, 'diewright plan a.part.yaml --wave --fail-on never'],
  ['a plant', { plant: '../plant.yaml' }, 'diewright plan a.part.yaml --plant ../plant.yaml --fail-on never'],
  ['fields', { set: ['alloy=A360', 'x=1 mm'] }, "diewright plan a.part.yaml --set alloy=A360 --set 'x=1 mm' --fail-on never"],
  ['several parts', { parts: ['a', 'b'] }, 'diewright plan a b --fail-on never'],
  ['everything', { json: 'j', markdown: 'm', plant: 'p', set: ['s=1'], workings: true, wave: true, figures: false }, undefined],
  ['a quote', { parts: ["it's"] }, "diewright plan 'it'\\''s' --fail-on never"],
  ['what a shell would run', { parts: ['$(x)', 'a;b', '*'] }, "diewright plan '$(x)' 'a;b' '*' --fail-on never"],
  ['an empty word', { parts: [''] }, "diewright plan '' --fail-on never"],
])('%s', (_, changes, command) => {
  const all = 'diewright plan a.part.yaml --plant p --set s=1 --format json=j --format markdown=m --figures none --workings --wave --fail-on never';
  expect(refreshCommand({ ...BASE, ...changes })).toBe(command ?? all);
});
