import { describe, expect, it } from 'vitest';
import { describe as printFault } from '../../.build/rulepack.ts';
import { parseExpression } from '../../src/rulebook/expression.ts';
import { caution, diagnostics, FAMILIES, rulebook, type Situation, shown } from './cautions.ts';

const cautions = Object.values(rulebook.cautions);

describe('caution files', () => {
  it('compile without a fault', () => {
    // Source keys are held against the bibliography when the whole rulebook is built.
    expect(diagnostics.filter((fault) => fault.code !== 'rules/unknown-source').map(printFault)).toEqual([]);
    expect(new Set(cautions.map((entry) => entry.id.split('/')[0]))).toEqual(
      new Set(['melt', 'magnesium', 'machine', 'die', 'substances', 'fume', 'handling', 'trimming', 'document']),
    );
  });

  it.each(cautions)('$id: its examples behave, on both sides of the trigger unless it always applies', ({ when, uses, examples }) => {
    const trigger = parseExpression(when, uses);
    for (const example of examples) {
      expect(Object.keys(example.given).sort()).toEqual(uses.map((use) => use.name).sort());
      expect(trigger(example.given), JSON.stringify(example.given)).toBe(example.applies);
    }
    const outcomes = new Set(examples.map((example) => example.applies));
    expect(outcomes).toEqual(when === 'true' ? new Set([true]) : new Set([true, false]));
  });

  it.each(cautions)('$id: says what to do in two to four short sentences', ({ text, title }) => {
    const sentences = text.split(/(?<=[.?!])\s+(?=[A-Z0-9])/);
    expect(sentences.length, text).toBeGreaterThanOrEqual(2);
    expect(sentences.length, text).toBeLessThanOrEqual(4);
    expect(Math.max(...sentences.map((sentence) => sentence.length)), text).toBeLessThanOrEqual(260);
    expect(text.trimEnd()).toMatch(/\.$/);
    expect(title).not.toMatch(/\.$/);
  });

  it.each(cautions)('$id: names a document to defer to, and lets local codes prevail', ({ defer }) => {
    expect(defer).toMatch(/\b(ISO|EN|NFPA|NADCA|ANSI|DGUV Information|CFR|Directive|Regulation|Decision|Guidelines|Act|EDQM)\b/);
    expect(defer.trimEnd()).toMatch(/; local codes and licensed practice prevail\.$/);
  });

  it.each(cautions)('$id: claims no compliance', ({ text, title }) => {
    expect(`${title} ${text}`).not.toMatch(/\b(compl(y|ies|iant)|conform(s|ity)?|is safe|are safe|guarantee[sd]?)\b/i);
  });

  it.each(cautions)('$id: has a source or says that it has none', ({ status, source }) => {
    if (source.length === 0) expect(['memory', 'practice']).toContain(status);
    else expect(source.every((ref) => /^[A-Z]/.test(ref))).toBe(true);
  });
});

/** The trigger table, typed from the register of hazards: condition, and the cautions that it must bring. */
const TRIGGERS: readonly (readonly [condition: string, situation: Situation, ids: readonly string[]])[] = [
  [
    'magnesium: moisture, water lines, melt fire, fines, cover gas, ban on SF6',
    { family: 'magnesium' },
    ['melt/wet-charge', 'magnesium/water-lines', 'magnesium/melt-fire', 'magnesium/fines', 'magnesium/cover-gas', 'magnesium/sf6', 'handling/clothing-no-code'],
  ],
  [
    'aluminium: moisture, dross, clothing code D, dust',
    { family: 'aluminium' },
    ['melt/wet-charge', 'melt/cooling-water', 'melt/dross', 'handling/clothing-aluminium', 'trimming/fines'],
  ],
  ['aluminium above 0.1 % lead', { family: 'aluminium', lead: 0.11 }, ['substances/lead-above-tenth', 'substances/lot-certificate']],
  [
    'zinc: fume, nozzle, lead and cadmium',
    { family: 'zinc' },
    ['fume/zinc', 'machine/nozzle-drip', 'substances/lot-certificate', 'fume/cadmium', 'trimming/fines'],
  ],
  ['zinc-aluminium in a hot chamber', { family: 'zinc-aluminium', kind: 'hot-chamber' }, ['fume/zinc', 'machine/nozzle-drip', 'substances/lot-certificate']],
  [
    'brass: fume, lead, clothing code E, hot melt',
    { family: 'copper' },
    ['fume/brass-zinc', 'fume/lead', 'substances/lot-certificate', 'handling/clothing-copper', 'melt/copper-heat'],
  ],
  ['lead: fume', { family: 'lead' }, ['fume/lead']],
  ['cold chamber: biscuit', { family: 'aluminium', kind: 'cold-chamber' }, ['machine/biscuit-burst']],
  ['vertical shot: biscuit', { family: 'aluminium', kind: 'cold-chamber-vertical-shot' }, ['machine/biscuit-burst']],
  ['clamp use above 85 %', { family: 'aluminium', clampUse: 85.1 }, ['machine/thin-clamp-margin', 'machine/parting-line-spit']],
  ['high pressure, cold chamber', { family: 'aluminium', pressure: 69.1 }, ['machine/high-pressure']],
  ['high pressure, hot chamber', { family: 'zinc', pressure: 31.1 }, ['machine/high-pressure']],
  ['water in the lines', { family: 'zinc', medium: 'water' }, ['melt/cooling-water']],
  ['hot oil in the lines', { family: 'aluminium', medium: 'oil' }, ['die/hot-oil']],
  ['magnesium with oil in the lines', { family: 'magnesium', medium: 'oil' }, ['die/hot-oil', 'magnesium/water-lines']],
  ['vacuum', { family: 'aluminium', vent: 'vacuum' }, ['machine/vacuum', 'machine/parting-line-spit']],
  ['inserts placed before the shot', { family: 'aluminium', inserts: 1 }, ['handling/inserts']],
  ['slides', { family: 'zinc', pulls: 1 }, ['die/core-pulls', 'machine/crushing', 'machine/stored-energy']],
  ['EU electrical, aluminium', { family: 'aluminium', markets: 'eu-electrical' }, ['substances/rohs', 'substances/rohs-aluminium']],
  [
    'EU electrical, brass',
    { family: 'copper', markets: 'food-contact eu-electrical' },
    ['substances/rohs', 'substances/rohs-copper', 'substances/food-contact'],
  ],
  ['EU vehicle', { family: 'zinc', markets: 'eu-vehicle' }, ['substances/elv']],
  ['jewellery', { family: 'zinc', markets: 'jewellery' }, ['substances/jewellery']],
  ['food', { family: 'aluminium', markets: 'food-contact' }, ['substances/food-contact', 'substances/food-contact-aluminium']],
  ['drinking water', { family: 'copper', markets: 'drinking-water' }, ['substances/drinking-water']],
];

/** What a first-pass plan cannot know yet stands as "if" in every plan. */
const ALWAYS = [
  'die/beryllium-copper',
  'document/hold-point',
  'fume/die-lubricant',
  'fume/silica',
  'handling/burns',
  'handling/die',
  'machine/accumulator',
  'machine/crushing',
  'machine/noise',
  'machine/parting-line-spit',
  'machine/robots',
  'machine/stored-energy',
  'melt/furnace',
  'melt/wet-charge',
  'trimming/press',
];

describe('triggers', () => {
  it.each(TRIGGERS)('%s', (_, situation, ids) => {
    expect([...shown(situation)]).toEqual(expect.arrayContaining([...ids]));
  });

  it.each(FAMILIES)('%s: what no plan can settle yet is said in every plan', (family) => {
    expect([...shown({ family })]).toEqual(expect.arrayContaining(ALWAYS));
  });

  it('keeps still where the hazard is absent', () => {
    const calm = shown({ family: 'aluminium', clampUse: 85, pressure: 69, pulls: 0, lead: 0.1 });
    for (const id of [
      'machine/thin-clamp-margin',
      'machine/high-pressure',
      'machine/vacuum',
      'machine/nozzle-drip',
      'die/core-pulls',
      'handling/inserts',
      'substances/lead-above-tenth',
      'fume/zinc',
    ]) {
      expect(calm, id).not.toContain(id);
    }
    expect(shown({ family: 'zinc', pressure: 31 })).not.toContain('machine/high-pressure');
    expect(shown({ family: 'zinc' })).not.toContain('machine/biscuit-burst');
    expect(calm).not.toContain('die/hot-oil');
    expect(shown({ family: 'aluminium', medium: 'oil' })).not.toContain('melt/cooling-water');
    expect(shown({ family: 'magnesium', medium: 'water' })).not.toContain('melt/cooling-water');
    expect([...calm].filter((id) => /^substances\/(rohs|elv|jewellery|food|drinking)/.test(id))).toEqual([]);
  });

  it.each(FAMILIES.filter((family) => family !== 'magnesium'))('%s gets no magnesium caution', (family) => {
    expect([...shown({ family })].filter((id) => id.startsWith('magnesium/'))).toEqual([]);
  });
});

describe('a magnesium plan', () => {
  const ids = [
    ...shown({
      family: 'magnesium',
      vent: 'vacuum',
      clampUse: 99,
      pressure: 100,
      pulls: 2,
      markets: 'eu-electrical eu-vehicle jewellery food-contact drinking-water',
    }),
  ];
  const all = ids.map(caution).map((entry) => `${entry.title} ${entry.text} ${entry.defer}`);

  it('names no sand, in any caution', () => {
    expect(all.filter((text) => /\bsand/i.test(text))).toEqual([]);
    expect(cautions.filter((entry) => entry.id.startsWith('magnesium/')).every((entry) => ids.includes(entry.id))).toBe(true);
  });

  it('forbids water and the agents that feed the fire, and names no agent but the class', () => {
    const { text } = caution('magnesium/melt-fire');
    const forbidden = text.split(/(?<=\.)\s+/).find((sentence) => sentence.startsWith('Never'));
    for (const agent of ['water', 'any other liquid', 'carbon dioxide', 'foam', 'halon', 'ABC powder']) expect(forbidden).toContain(agent);
    expect(text).toContain('Class D agent chosen with the fire engineer');
    expect(all.join(' ')).not.toMatch(/\b(argon|cement|cast-iron|graphite)\b/i);
  });

  it('keeps water out of the die and does not say how to run it with water', () => {
    expect(caution('magnesium/water-lines').text).toMatch(/without water lines near the cavity: oil or another non-water medium/);
    expect(ids).not.toContain('melt/cooling-water');
    expect(ids).not.toContain('machine/hydraulic-fire');
    expect(ids).toContain('magnesium/hydraulic-fluid');
  });

  it('names the bans on SF6 with their numbers', () => {
    const { text, defer } = caution('magnesium/sf6');
    for (const law of ['(EU) 2024/573, Article 13(1)', '(EC) 842/2006, Article 8(1)', '850 kg', '(EU) 517/2014', '1 January 2013']) expect(text).toContain(law);
    expect(defer).toContain('(EU) 2024/573 of 7 February 2024');
  });
});
