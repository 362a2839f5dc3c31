import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PartChange } from '../../../../src/engine/replan/change.ts';
import { isUnchanged, summarise } from '../../../../src/engine/replan/set.ts';
import { loadRulebook, planPart, type Rulebook } from '../../../../src/index.ts';
import { partCsv } from '../../../../src/replan.ts';
import { type ReplannedDie, replanDie } from '../../../../src/replan-die.ts';

const EXAMPLES = join(import.meta.dirname, '../../../../examples');

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

interface Given {
  readonly set: readonly string[];
  /** What to make of the text of a file. */
  readonly edit?: (name: string, text: string) => string;
  readonly version?: string;
}

function replan(example: string, { set, edit = (_, text) => text }: Given): ReplannedDie {
  const read = (name: string) => ({ name, text: edit(name, readFileSync(join(EXAMPLES, example, name), 'utf8')) });
  return replanDie({
    die: read(`${example}.die.yaml`),
    partText: ({ file }) => read(file.value),
    before: { rulebook },
    after: { rulebook, set },
    compare: { leastChange: 2, everyValue: false },
    version: 'test',
  });
}

function changeOf(done: ReplannedDie): PartChange {
  if (done.change === undefined) throw new Error(JSON.stringify(done.diagnostics.map(({ message }) => message)));
  return done.change;
}
const figure = (change: PartChange, side: 'before' | 'after', id: string): number => change[side].figures[id] ?? Number.NaN;
/** kg/dm3, as in the table of alloys. */
const DENSITY = { 'EN AC-46000': 2.79, AZ91D: 1.81 };
const changed = (change: PartChange): string[] => change.groups.flatMap(({ changes }) => changes.map(({ id }) => id));

describe('the lamp body with its lid, from aluminium to magnesium', () => {
  let change: PartChange;
  beforeAll(() => {
    change = changeOf(replan('lamp-housing', { set: ['alloy=AZ91D'] }));
  });

  test('it is one die: its figures are those of a set of castings, once', () => {
    expect([change.part.name, change.castings, change.perYear]).toEqual(['Platform lamp body with lid', 2, 60_000]);
    // Body 186 cm3 and lid 74 cm3.
    for (const [side, alloy] of [
      ['before', 'EN AC-46000'],
      ['after', 'AZ91D'],
    ] as const) {
      expect(figure(change, side, 'part.mass')).toBeCloseTo((260 * DENSITY[alloy]) / 1000, 9);
      // Sets with the rejects, on shots of the cycle, at the availability of the plant.
      expect(figure(change, side, 'cycle.hours')).toBeCloseTo((60_000 / 0.95 / 0.8) * (figure(change, side, 'cycle.time') / 3600), 6);
      expect(figure(change, side, 'cost.per-part') * 60_000).toBeCloseTo(figure(change, side, 'cost.per-year'), 6);
    }
    const { compared, totals, machines, sharedDies } = summarise([change], []);
    expect([compared.parts, compared.castings, sharedDies]).toEqual([1, 120_000, 1]);
    expect(totals.find(({ id }) => id === 'cycle.hours')?.before).toBe(figure(change, 'before', 'cycle.hours'));
    expect(machines.reduce((sum, { after }) => sum + after.parts, 0)).toBe(1);
  });

  test('a part tells what is its own and does not repeat the die', () => {
    expect(change.parts?.map(({ part }) => part.name)).toEqual(['Platform lamp body', 'Platform lamp lid']);
    for (const part of change.parts ?? []) {
      expect(changed(part)).toContain('draft.least-inside');
      for (const id of ['machine.kind', 'machine.plunger', 'cycle.time', 'shot.mass']) {
        expect(changed(change)).toContain(id);
        expect(changed(part)).not.toContain(id);
      }
      expect(part.cautions.appeared).toEqual([]);
      expect([part.die, part.dieMissing, part.perYear, part.castings]).toEqual([undefined, undefined, undefined, undefined]);
      expect(Object.keys(part.after.figures)).toEqual(['part.mass']);
    }
    expect(change.cautions.appeared).toContain('No water near magnesium in the die');
  });

  test('another way of feeding asks for another die, whatever the cavities', () => {
    expect(change.die?.verdict).toBe('new die');
    expect(change.die?.because).not.toMatch(/^Platform/);
    const vents = change.die?.elements.filter(({ id }) => id === 'replan.vent').map(({ title, verdict }) => `${title}: ${verdict}`);
    expect(vents).toEqual(['Vents, Platform lamp body: as it is', 'Vents, Platform lamp lid: recut']);
    expect(change.die?.elements.filter(({ id }) => id === 'replan.ejection')).toHaveLength(1);
  });

  test('a row of the table for a spreadsheet has the castings for cavities, and names the parts', () => {
    const [head = '', row = ''] = [...partCsv({ head: {} as never, set: {} as never, parts: [change], failures: [] })].map((line) => line.trim());
    const cells = row.split(',');
    const at = (column: string): string | undefined => cells[head.split(',').indexOf(column)];
    expect([at('castings a year'), at('cavities before'), at('cavities after')]).toEqual(['120000', '2', '2']);
    expect(row.endsWith(',lamp-body.part.yaml lamp-lid.part.yaml,2,')).toBe(true);
  });
});

describe('verdicts on the existing die', () => {
  test('the alloy that the parts have changes nothing', () => {
    const change = changeOf(replan('lamp-housing', { set: ['alloy="EN AC-46000"'] }));
    expect(isUnchanged(change)).toBe(true);
    expect(change.die?.verdict).toBe('as it is');
    expect(change.before).toEqual(change.after);
  });

  test('it serves as far as it serves every part: the badge keeps its gate, the body does not', () => {
    const change = changeOf(replan('pump-parts', { set: ['alloy=AZ91D'] }));
    const gates = change.die?.elements.filter(({ id }) => id === 'replan.gate').map(({ title, stays }) => [title, stays]);
    expect(gates).toEqual([
      ['Gates, Wash water pump body', false],
      ['Gates, Pump badge', true],
    ]);
    expect(change.die?.verdict).toBe('recut');
    expect(change.die?.because).toMatch(/(^|: )The cavities can stay or be cut larger/);
  });

  test('a rule that one part breaks stops the die, and is told with that part', () => {
    const change = changeOf(replan('latch-lever-pair', { set: ['alloy=AZ91D'] }));
    expect([change.standing, change.after.castable, change.castings]).toEqual(['no longer castable', false, 8]);
    expect(change.after.errors).toBe(change.parts?.reduce((sum, { after }) => sum + after.errors, 0));
    expect(change.parts?.every(({ appeared }) => appeared.some(({ code, severity }) => code === 'draft/least-taper' && severity === 'error'))).toBe(true);
    expect(summarise([change], []).stoppers).toEqual([expect.objectContaining({ code: 'draft/least-taper', parts: 1 })]);
    expect(change.dieMissing).toContain('breaks rules');
  });
});

describe('what the part files say', () => {
  test('a mass on the drawing follows the density of the alloy, in each part that has one', () => {
    const edit = (name: string, text: string): string => (name.startsWith('lamp-body') ? text.replace(/^ {2}volume: .*$/m, '  mass: 0.519 kg') : text);
    const done = replan('lamp-housing', { set: ['alloy=AZ91D'], edit });
    const change = changeOf(done);
    const [body, lid] = change.parts ?? [];
    expect(body?.remarks.join()).toContain('0.519 kg');
    expect(lid?.remarks).toEqual([]);
    const mass = (0.519 * DENSITY.AZ91D) / DENSITY['EN AC-46000'];
    expect(figure(body as PartChange, 'after', 'part.mass')).toBeCloseTo(mass, 6);
    expect(done.after?.parts.get('lamp-body.part.yaml')?.text).toMatch(new RegExp(`mass: ${mass.toPrecision(6)} kg`));
    expect(done.after?.parts.get('lamp-lid.part.yaml')?.text).toContain('alloy: AZ91D');
  });

  test('a part that cannot be read stops the die, and says where', () => {
    const edit = (name: string, text: string): string => (name.startsWith('lamp-lid') ? text.replace(/^alloy: .*$/m, 'alloy: Unobtainium') : text);
    const { change, failure, diagnostics } = replan('lamp-housing', { set: ['part.name=X'], edit });
    expect(change).toBeUndefined();
    expect([failure?.file, failure?.code]).toEqual(['lamp-housing.die.yaml', diagnostics[0]?.code]);
    expect(diagnostics[0]?.at?.source.name).toBe('lamp-lid.part.yaml');
  });

  test('a field that cannot be set is told', () => {
    const { change, diagnostics } = replan('lamp-housing', { set: ['no such field'] });
    expect(change).toBeUndefined();
    expect(diagnostics.length).toBeGreaterThan(0);
  });

  test('the plan after is that of the parts as they then stand', () => {
    const { after } = replan('lamp-housing', { set: ['production.per_year=120000'] });
    expect(after?.plan.values.get('production.per-year')?.value).toBe(120_000);
    const lid = after?.parts.get('lamp-lid.part.yaml');
    if (lid === undefined) throw new Error('no text');
    expect(planPart({ part: lid, rulebook, version: 'test' }).plan?.values.get('production.per-year')?.value).toBe(120_000);
  });
});
