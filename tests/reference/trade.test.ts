/*
 * Facts that everybody in the trade knows, held against what the program does with whole parts. Each says where it was read,
 * or that it is common practice without a source.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadRulebook, type Plan, planPart, type Rulebook } from '../../src/index.ts';
import { convert } from '../../src/kernel/units.ts';
import { STARTER_PART } from '../../src/spec/starters.ts';
import { EXAMPLES } from '../golden/examples.ts';

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

/** The plan of a text with fields set. @throws Error when it cannot be planned */
function planOf(text: string, ...set: string[]): Plan {
  const { plan, diagnostics } = planPart({ part: { name: 'trade.part.yaml', text }, set, rulebook, version: '0' });
  if (plan === undefined) throw new Error(diagnostics.map((d) => d.message).join('\n'));
  return plan;
}
const starter = (...set: string[]): Plan => planOf(STARTER_PART, ...set);
const numberOf = (plan: Plan, id: string): number => plan.values.get(id)?.value ?? Number.NaN;
const errors = (plan: Plan): string[] => plan.findings.filter((finding) => finding.severity === 'error').map((finding) => finding.code);
const examples = (): { name: string; plan: Plan }[] =>
  EXAMPLES.map(({ name, file, folder }) => ({ name, plan: planOf(readFileSync(join(folder, file), 'utf8')) }));

describe('metal pressure of the two chambers', () => {
  // Common practice, no source: hot chamber 1,500 to 4,500 psi, cold chamber up to 10,000 psi, some machines above.
  test.each([
    [1500, 10.342],
    [4500, 31.026],
    [10_000, 68.948],
  ])('%d psi is %d MPa', (psi, mpa) => {
    // One pound-force on a square inch: 0.45359237 kg x 9.80665 m/s2 over (0.0254 m)^2, exact by the agreement of 1959.
    expect(convert(psi, 'psi', 'MPa')).toBeCloseTo((psi * 0.45359237 * 9.80665) / 0.0254 ** 2 / 1e6, 9);
    expect(convert(psi, 'psi', 'MPa')).toBeCloseTo(mpa, 3);
    expect(convert(mpa, 'MPa', 'psi') / psi).toBeCloseTo(1, 4);
  });

  test('the check values of the rulebook are those, in whole MPa', () => {
    const rows = rulebook.tables['machine/metal-pressure']?.rows ?? [];
    const cell = (chamber: string, column: string): number | undefined => rows.find((row) => row.at['chamber'] === chamber)?.cells[column]?.value;
    expect([cell('hot', 'least'), cell('hot', 'greatest'), cell('cold', 'greatest')]).toEqual([10, 31, 69]);
  });

  test('the hot chamber has no intensifier and stays within a tenth of its range, the cold chamber reaches past it', () => {
    const reached = { hot: [] as number[], cold: [] as number[] };
    for (const { plan } of examples()) {
      const chamber = plan.texts.get('machine.chamber') as 'hot' | 'cold';
      reached[chamber].push(numberOf(plan, 'machine.metal-pressure'));
      expect(plan.values.has('machine.pressure-intensified')).toBe(chamber === 'cold');
    }
    expect(reached.hot.length).toBeGreaterThan(2);
    for (const pressure of reached.hot) expect(pressure > 10 && pressure < 1.1 * 31, String(pressure)).toBe(true);
    for (const pressure of reached.cold) expect(pressure).toBeGreaterThan(31);
    expect(Math.max(...reached.cold)).toBeGreaterThan(69);
  });

  // The two class columns of the unsigned worksheet "Die Casting Calculation" and the remembered class of plated zinc.
  test.each(['general', 'loaded', 'pressure-tight', 'plated', 'structural'])('zinc needs no more than aluminium: %s', (use) => {
    const [zinc, aluminium] = ['Zamak 3', 'A380'].map((alloy) => starter(`alloy=${alloy}`, `quality.use=${use}`)) as [Plan, Plan];
    for (const id of ['clamp.pressure', 'clamp.pressure-least', 'clamp.pressure-greatest']) {
      expect(numberOf(zinc, id), id).toBeLessThanOrEqual(numberOf(aluminium, id));
    }
  });
});

describe('the lower an alloy melts, the less draft it needs', () => {
  // Melting points of the pure metals, degC: physical constants. The order of draft: NADCA S-4A-7, its constants other than
  // the one of aluminium from memory; Wikipedia, Die casting, has the same order in its table of least tapers.
  const FAMILIES = [
    ['Zamak 3', 419.5],
    ['AZ91D', 650],
    ['A380', 660.3],
    ['C85800', 1084.6],
  ] as const;

  test.each(['draft.least-inside', 'draft.least-outside'])('%s rises from zinc over magnesium and aluminium to copper', (id) => {
    const drafts = FAMILIES.map(([alloy]) => numberOf(starter(`alloy=${alloy}`), id));
    for (let i = 1; i < FAMILIES.length; i += 1) {
      expect(FAMILIES[i]?.[1]).toBeGreaterThan(FAMILIES[i - 1]?.[1] ?? Number.NaN);
      expect(drafts[i]).toBeGreaterThan(drafts[i - 1] ?? Number.NaN);
    }
  });

  test('and so does the least taper, magnesium beside aluminium', () => {
    const least = FAMILIES.map(([alloy]) => numberOf(starter(`alloy=${alloy}`), 'draft.absolute-least'));
    // 1:200, 1:100, 1:100, 1:80 (Wikipedia, Die casting); a taper of 1:100 is 0.573 degrees.
    expect(least.map((angle) => 1 / Math.tan((angle * Math.PI) / 180)).map(Math.round)).toEqual([200, 100, 100, 80]);
  });
});

describe('hot or cold chamber', () => {
  // SourceBySpec, hot-chamber and cold-chamber machines (vendor): zinc, AZ91D, lead and tin are cast hot, aluminium attacks the
  // iron. NADCA table by alloy family: copper alloys cold. EAZALL: ZA-12 and ZA-27 cold. The mass for magnesium: practice.
  test.each([
    ['Zamak 3', 'hot-chamber', '1 kg'],
    ['Zamak 5', 'hot-chamber', '1 kg'],
    ['ZA-8', 'hot-chamber', '1 kg'],
    ['ZA-12', 'cold-chamber', '1 kg'],
    ['ZA-27', 'cold-chamber', '1 kg'],
    ['AZ91D', 'hot-chamber', '0.4 kg'],
    ['AZ91D', 'cold-chamber', '2.5 kg'],
    ['A380', 'cold-chamber', '1 kg'],
    ['413', 'cold-chamber', '1 kg'],
    ['C85800', 'cold-chamber', '1 kg'],
    ['Y10A', 'hot-chamber', '1 kg'],
    ['CY44A', 'hot-chamber', '1 kg'],
  ])('%s: %s at %s', (alloy, kind, mass) => {
    const text = STARTER_PART.replace('volume: 150 cm3', `mass: ${mass}`);
    expect(planOf(text, `alloy=${alloy}`, 'geometry.envelope=[300 mm, 200 mm, 60 mm]').texts.get('machine.kind')).toBe(kind);
  });

  test.each(['A380', 'EN AC-46000', 'C85800', 'C87800'])('%s pinned to the hot chamber is an error', (alloy) => {
    const pinned = starter(`alloy=${alloy}`, 'pinned.machine.kind=hot-chamber');
    expect(pinned.texts.get('machine.kind')).toBe('hot-chamber');
    expect(errors(pinned)).toContain('machine/hot-chamber-attack');
    expect(errors(starter(`alloy=${alloy}`))).not.toContain('machine/hot-chamber-attack');
  });

  test('ZA-12 pinned to it too, and zinc pinned to the cold chamber is none', () => {
    expect(errors(starter('alloy=ZA-12', 'pinned.machine.kind=hot-chamber'))).toContain('machine/alloy-chamber');
    expect(errors(starter('alloy=Zamak 3', 'pinned.machine.kind=cold-chamber')).filter((code) => /chamber/.test(code))).toEqual([]);
  });
});

describe('core pulls are the directions off the die opening', () => {
  // Common practice, no source: one slide for each direction and side; Dynacast, Die simplification (vendor): whatever does not
  // run along the draw needs a slide. A through hole takes a side that has a slide anyway.
  const hole = (id: number, direction: string, kind: string): string =>
    `  - { id: H${id}, diameter: 8 mm, depth: 12 mm, kind: ${kind}, direction: ${direction} }`;
  const part = (holes: readonly string[], undercuts: readonly string[]): string => {
    const list = (name: string, rows: readonly string[]): string => (rows.length === 0 ? '' : `${name}:\n${rows.join('\n')}\n`);
    const base = STARTER_PART.replace(/^holes:[\s\S]*?\n(?=# undercuts)/m, list('holes', holes));
    return `${base}${list(
      'undercuts',
      undercuts.map((direction, i) => `  - { id: U${i}, direction: ${direction}, depth: 5 mm, face_area: 2 cm2 }`),
    )}`;
  };

  test.each([
    { pulls: 0, blind: [], through: [], undercuts: [] },
    { pulls: 0, blind: ['z', '-z'], through: ['z'], undercuts: [] },
    { pulls: 1, blind: ['x'], through: [], undercuts: [] },
    { pulls: 1, blind: ['x', 'x', 'z'], through: [], undercuts: [] },
    { pulls: 2, blind: ['x', '-x'], through: [], undercuts: [] },
    { pulls: 2, blind: ['x', 'y'], through: [], undercuts: [] },
    { pulls: 4, blind: ['x', '-x', 'y', '-y'], through: [], undercuts: [] },
    { pulls: 1, blind: [], through: ['x'], undercuts: [] },
    { pulls: 1, blind: ['-x'], through: ['x'], undercuts: [] },
    { pulls: 2, blind: ['y'], through: ['x'], undercuts: [] },
    { pulls: 1, blind: [], through: [], undercuts: ['-x'] },
    { pulls: 1, blind: ['-x'], through: [], undercuts: ['-x'] },
    { pulls: 2, blind: ['x'], through: [], undercuts: ['-x'] },
    { pulls: 2, blind: ['[1, 0, 0]', '[1, 1, 0]'], through: [], undercuts: [] },
    { pulls: 1, blind: ['[1, 0, 0]', '[2, 0, 0]'], through: [], undercuts: [] },
  ])('$pulls for blind $blind, through $through, undercuts $undercuts', ({ pulls, blind, through, undercuts }) => {
    const holes = [...blind.map((direction, i) => hole(i, direction, 'blind')), ...through.map((direction, i) => hole(i + 10, direction, 'through'))];
    expect(numberOf(planOf(part(holes, undercuts)), 'parting.core-pulls')).toBe(pulls);
  });
});

describe('sizes of a shot, over all examples', () => {
  // Fill: tens of milliseconds; 20 to 100 ms and 10 to 50 ms are printed (HPDC Parameters, knowledge-base article; a caster's page),
  // "of the order of 5 to 100 ms" by Bar-Meir (Fundamentals of Die Casting Design). Gate: tens of metres a second; 20 to 90 m/s
  // spans the families (HPDC Parameters).
  test('fill times are tens of milliseconds, gate velocities tens of metres a second', () => {
    const plans = examples();
    expect(plans.length).toBeGreaterThanOrEqual(10);
    for (const { name, plan } of plans) {
      expect(numberOf(plan, 'fill.time'), name).toBeGreaterThanOrEqual(5);
      expect(numberOf(plan, 'fill.time'), name).toBeLessThanOrEqual(100);
      expect(numberOf(plan, 'gate.velocity'), name).toBeGreaterThanOrEqual(20);
      expect(numberOf(plan, 'gate.velocity'), name).toBeLessThanOrEqual(90);
    }
  });
});
