import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadRulebook, type Plan, planPart, type Rulebook } from '../../../src/index.ts';

/** The gearbox housing on one machine, over plungers and gate areas. Nothing of the shot but these two is changed; the runner, whose layout follows the biscuit, is pinned. */
const NAME = 'gearbox-housing.part.yaml';
const TEXT = readFileSync(join(import.meta.dirname, '../../../examples/gearbox-housing', NAME), 'utf8');
const PLUNGERS = [55, 65, 75, 85, 95, 105, 115, 130, 150, 180];
const AREAS = [150, 250, 325, 400, 500, 650, 800];

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

function plan(plunger: number, area?: number): Plan {
  const pins = [
    'machine.model: cold-5000',
    'runner.volume: 105 cm3',
    `machine.plunger: ${plunger} mm`,
    ...(area === undefined ? [] : [`gate.area: ${area} mm2`]),
  ];
  const { plan: made, diagnostics } = planPart({ part: { name: NAME, text: `${TEXT}pinned: { ${pins.join(', ')} }\n` }, rulebook, version: '0' });
  if (made === undefined) throw new Error(diagnostics.map((one) => one.message).join('\n'));
  return made;
}
function value(of: Plan, id: string): number {
  const found = of.values.get(id);
  if (found === undefined) throw new Error(`${id} is not filed`);
  return found.value;
}
const signs = (list: readonly number[]): number[] => list.slice(1).map((one, i) => Math.sign(one - (list[i] as number)));

describe('plunger diameters', () => {
  test('the gate velocity at the crossing has one peak, at the plunger that every plan names as the best', () => {
    const plans = PLUNGERS.map((plunger) => plan(plunger));
    const best = value(plans[0] as Plan, 'pq2.best-plunger-diameter');
    for (const one of plans) expect(value(one, 'pq2.best-plunger-diameter')).toBeCloseTo(best, 9);
    const velocities = plans.map((one) => value(one, 'pq2.operating-velocity'));
    const peak = velocities.indexOf(Math.max(...velocities));
    expect(signs(velocities)).toEqual(velocities.slice(1).map((_, i) => (i < peak ? 1 : -1)));
    // The best of the list stands beside the best of all.
    expect(best).toBeGreaterThan(PLUNGERS[peak - 1] as number);
    expect(best).toBeLessThan(PLUNGERS[peak + 1] as number);
    expect(peak).toBeGreaterThan(0);
    expect(peak).toBeLessThan(PLUNGERS.length - 1);
  });

  test('the table of plungers in one plan says what a plan with each of them says', () => {
    const compared = plan(85);
    for (const plunger of [65, 75, 90]) {
      const own = plan(plunger);
      for (const [column, id] of [
        ['flow', 'pq2.operating-flow'],
        ['velocity', 'pq2.operating-velocity'],
        ['speed', 'pq2.operating-speed'],
        ['static-pressure', 'pq2.static-pressure'],
        ['dry-flow', 'pq2.dry-flow'],
        ['planned-speed', 'sleeve.fast-speed'],
        ['metal-pressure', 'machine.metal-pressure'],
        ['sleeve-fill', 'sleeve.fill'],
      ] as const) {
        expect(value(compared, `pq2.plunger-${column}[${plunger} mm]`), `${column} of ${plunger} mm`).toBeCloseTo(value(own, id), 9);
      }
    }
  });
});

/** The window by the textbook forms in SI units, for a planned flow; the bounds come from the plan, the lines do not. */
function placeBySi(of: Plan, plunger: number, area: number): string {
  const circle = (mm: number): number => (Math.PI / 4) * (mm / 1000) ** 2;
  const p0 = (14e6 * circle(150)) / circle(plunger);
  const dryFlow = 5.4 * circle(plunger);
  const flow = value(of, 'gate.flow-volume') / 1e6 / (value(of, 'fill.time') / 1000);
  const velocity = flow / (area / 1e6);
  const asked = (2500 / 2) * (velocity / 0.5) ** 2;
  if (asked > p0 * (1 - (flow / dryFlow) ** 2)) return 'beyond the machine';
  if (value(of, 'fill.time') > value(of, 'fill.longest-time')) return 'fills too slowly';
  if (velocity < 30) return 'gate velocity too low';
  return velocity > 60 ? 'gate velocity too high' : 'inside';
}

describe('plunger diameters and gate areas', () => {
  test('the planned point is placed as the textbook forms place it, and every place but a slow fill occurs', () => {
    const places = new Map<string, string>();
    for (const plunger of PLUNGERS) {
      for (const area of AREAS) {
        const one = plan(plunger, area);
        const place = one.texts.get('pq2.place') as string;
        expect(place, `${plunger} mm, ${area} mm2`).toBe(placeBySi(one, plunger, area));
        places.set(`${plunger} ${area}`, place);
      }
    }
    expect(new Set(places.values())).toEqual(new Set(['inside', 'beyond the machine', 'gate velocity too low', 'gate velocity too high']));
  });

  test('a larger gate passes more flow at a lower velocity and pressure, towards the dry flow', () => {
    const plans = AREAS.map((area) => plan(85, area));
    expect(signs(plans.map((one) => value(one, 'pq2.operating-flow')))).toEqual(AREAS.slice(1).map(() => 1));
    for (const id of ['pq2.operating-velocity', 'pq2.operating-pressure', 'pq2.operating-time'])
      expect(signs(plans.map((one) => value(one, id)))).toEqual(AREAS.slice(1).map(() => -1));
    expect(value(plans.at(-1) as Plan, 'pq2.operating-flow')).toBeLessThan(value(plans[0] as Plan, 'pq2.dry-flow'));
  });

  test('followed from beyond the machine, the advice leads inside', () => {
    // A plunger without the flow: the plan names one of the machine's that serves.
    const before = plan(65);
    expect(before.texts.get('pq2.place')).toBe('beyond the machine');
    const fix = before.findings.find((finding) => finding.code === 'pq2/plunger')?.fix;
    const advised = /Fit the ([\d.]+) mm plunger/.exec(fix ?? '')?.[1];
    expect(advised).toBeDefined();
    const after = plan(Number(advised));
    expect(after.texts.get('pq2.place')).toBe('inside');
    expect(after.findings.filter((finding) => finding.severity === 'error' && /^(pq2|sleeve|shot)\//.test(finding.code))).toEqual([]);
  });
});
