import { describe, expect, it } from 'vitest';
import { STANDING } from '../../src/engine/standing.ts';
import { caution, rulebook } from './cautions.ts';

const cautions = Object.values(rulebook.cautions);

describe('figures in the texts, typed again from the facts', () => {
  it.each([
    ['magnesium/cover-gas', ['5 ppm over 8 h', '2 ppm over 8 h and 5 ppm for short times', '100 ppm']],
    ['fume/zinc', ['5 mg/m3 over 8 h in US law', '5 mg/m3 over 8 h and 10 mg/m3 for short times', '2 mg/m3 (respirable) and 10 mg/m3']],
    ['fume/brass-zinc', ['5 mg/m3 over 8 h in US law', '2 mg/m3 (respirable)']],
    ['fume/lead', ['50 microgram', 'action at 30']],
    ['fume/cadmium', ['5 microgram', 'action at 2.5']],
    ['fume/die-lubricant', ['5 mg/m3', '0.4 mg/m3 (thoracic)', '0.5 mg/m3 (total)']],
    ['fume/silica', ['50 microgram', 'action at 25']],
    ['die/beryllium-copper', ['0.1 % beryllium', '0.1 microgram']],
    ['machine/noise', ['90 dBA over 8 h', 'action at 85 dBA', '80 and 85 dB(A)', '87 dB(A)']],
    ['handling/clothing-aluminium', ['D1 from 100 g', 'D2 from 200 g', 'D3 from 350 g']],
    ['handling/clothing-copper', ['E1 from 60 g', 'E2 from 120 g', 'E3 from 200 g']],
    ['document/melting-permit', ['20 t', '4 t of lead or cadmium']],
    ['substances/food-contact', ['aluminium 5, zinc 5, copper 4, iron 40, manganese 0.55, nickel 0.14, tin 100', '0.010 for lead']],
    ['substances/rohs', ['0.1 % lead, 0.01 % cadmium and 0.1 % hexavalent chromium']],
    ['substances/rohs-aluminium', ['0.4 % lead', '21 November 2025', 'secondary texts only', '0.3 %', '6(b)-I or 6(b)-III']],
    ['substances/rohs-copper', ['6(c), up to 4 %', '30 June 2027']],
    ['substances/jewellery', ['0.05 % lead', '0.01 % cadmium']],
    ['substances/drinking-water', ['Remembered, not read', '0.25 % lead']],
    ['substances/elv', ['Remembered, not read', '0.1 % lead, 0.01 % cadmium', '0.4 %', '4 %']],
  ] as const)('%s', (id, figures) => {
    for (const figure of figures) expect(caution(id).text).toContain(figure);
  });

  it('incidents and injuries of 2018 add up (Aluminum Association summary of 2018)', () => {
    const numbers = /counted (\d+) .* \((\d+) small, (\d+) middling, (\d+) large\), with (\d+) people hurt: (\d+) killed, (\d+) seriously, (\d+) slightly/.exec(
      caution('melt/dross').text,
    );
    const [all, small, middling, large, hurt, killed, seriously, slightly] = (numbers ?? []).slice(1).map(Number) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    expect([all, hurt]).toEqual([170, 26]);
    expect(small + middling + large).toBe(all);
    expect(killed + seriously + slightly).toBe(hurt);
  });

  it('steam takes the stated multiple of the water (specific volumes at 1 atm, water at 20 and 100 degC, in m3/kg)', () => {
    const hundreds = (ratio: number): number => Math.round(ratio / 100) * 100;
    expect(caution('melt/wet-charge').text).toContain(`about ${hundreds(1.673 / 0.001043)} to ${hundreds(1.673 / 0.001002)} times`);
  });

  it('a figure from memory makes the caution a memory', () => {
    for (const { id, text, status } of cautions) if (/remembered/i.test(text)) expect(status, id).toBe('memory');
    for (const { id, defer, status } of cautions) if (/from memory/i.test(defer)) expect(status, id).toBe('memory');
  });
});

describe('documents to defer to, typed again from the facts', () => {
  it.each([
    ['machine/parting-line-spit', ['ISO 23063:2024', 'EN 869:2006+A1:2009, clause 5.4.1', 'B152.1-2006']],
    ['machine/biscuit-burst', ['clause 4.11.1', '4.4.4 (injection interlock)', '4.1.8 (timed opening)']],
    ['machine/nozzle-drip', ['EN 869:2006+A1:2009, clause 4.13']],
    ['machine/stored-energy', ['29 CFR 1910.147']],
    ['machine/accumulator', ['Directive 2014/68/EU, Article 1(2)(f)']],
    ['machine/hydraulic-fire', ['ISO 12922', 'clause 5.5.2']],
    ['machine/crushing', ['Regulation (EU) 2023/1230 from 20 January 2027']],
    ['machine/robots', ['ISO 10218-1:2025', 'ISO 10218-2:2025', 'R15.06-2025']],
    ['machine/noise', ['29 CFR 1910.95', 'Directive 2003/10/EC']],
    ['die/beryllium-copper', ['29 CFR 1910.1024']],
    ['die/core-pulls', ['29 CFR 1910.147', 'clauses 5.2 and 5.3']],
    ['die/hot-oil', ['clause 5.5.4']],
    ['fume/lead', ['29 CFR 1910.1025']],
    ['fume/cadmium', ['29 CFR 1910.1027']],
    ['fume/silica', ['29 CFR 1910.1053']],
    ['magnesium/melt-fire', ['DGUV Information 209-090', 'NFPA 660, 2025 edition, chapter 22 (formerly NFPA 484)']],
    ['melt/furnace', ['ISO 13577-1:2016', 'EN 746-1:1997+A1:2009', 'EN 1247:2004+A1:2010']],
    ['trimming/fines', ['NFPA 660, 2025 edition']],
    ['document/melting-permit', ['2010/75/EU, Annex I 2.5(b)', '(EU) 2024/2974']],
    ['document/clean-charge', ['40 CFR 63, Subpart RRR', '67 FR 79808']],
    ['substances/food-contact-aluminium', ['EN 601:2004']],
    ['substances/elv', ['(EU) 2023/544']],
  ] as const)('%s', (id, documents) => {
    for (const document of documents) expect(caution(id).defer).toContain(document);
  });

  it('a trim press is under different rules by its drive', () => {
    const { text, defer } = caution('trimming/press');
    expect(text).toContain('how the press is driven');
    const [mechanical, hydraulic] = defer.split('. ') as [string, string];
    expect(mechanical).toBe('Mechanical: 29 CFR 1910.217');
    expect(hydraulic).toMatch(/^Hydraulic or pneumatic: not covered by 1910\.217, so 29 CFR 1910\.212 with ANSI B11\.2-2013, B11\.0 and B11\.19/);
  });
});

describe('what every plan says of itself', () => {
  it('is an estimate that others review, a trial replaces and codes outrank', () => {
    for (const part of [
      'First-pass estimate from published rules',
      'qualified die casting engineer must review it',
      'die trial replaces it',
      'local codes and licensed practice prevail',
    ])
      expect(STANDING.status).toContain(part);
    expect(STANDING.reviewers).toHaveLength(4);
  });

  it('holds the first shot on the same four checks as the caution', () => {
    for (const check of ['clamp margin', 'guard interlocks', 'dryness of the die', 'leak test of the cooling lines']) {
      expect(STANDING.hold).toContain(check);
      expect(caution('document/hold-point').text).toContain(check);
    }
  });

  it('lists what no plan of this version looks at', () => {
    const list = STANDING.notChecked.join('\n');
    const wanted = [
      'heat place by place',
      'where the cooling lines run',
      'sticking',
      'strength of the die beyond bow',
      'distortion',
      'cost',
      'shot profile',
      'porosity',
      'structural strength of slides',
      'hydraulics',
      'guarding',
      'electrics',
      'noise',
    ];
    for (const topic of wanted) expect(list).toContain(topic);
    expect(new Set(STANDING.notChecked).size).toBe(STANDING.notChecked.length);
  });
});
