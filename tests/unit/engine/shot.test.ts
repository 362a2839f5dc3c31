import { describe, expect, test } from 'vitest';
import { shotStep, workShot } from '../../../src/engine/steps/shot.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

/** A plant of one machine, so that nothing is left to the search. */
function plantOf(machine: {
  readonly chamber: 'hot' | 'cold';
  readonly vertical?: true;
  readonly plunger: number;
  readonly sleeve?: number;
  readonly stroke?: number;
  readonly dry?: number;
}): string {
  const { chamber, vertical, plunger, sleeve, stroke = 480, dry = 5 } = machine;
  return [
    'diewright: plant/1',
    'plant: { name: One machine, invented: true }',
    'machines:',
    `  - id: only`,
    `    chamber: ${chamber}`,
    `    shot: ${vertical ? 'vertical' : 'horizontal'}`,
    '    locking_force: 8000 kN',
    '    tie_bar_clearance: [900 mm, 900 mm]',
    '    die_height: [300 mm, 950 mm]',
    '    opening_stroke: 700 mm',
    '    ejector: { force: 300 kN, stroke: 180 mm }',
    '    shot_end:',
    `      plungers: [${plunger} mm]`,
    ...(sleeve === undefined ? [] : [`      sleeve_length: ${sleeve} mm`]),
    `      stroke: ${stroke} mm`,
    '      cylinder_diameter: 140 mm',
    '      pressure_fill: 14 MPa',
    ...(chamber === 'cold' ? ['      pressure_intensified: 32 MPa'] : []),
    `      dry_speed: ${dry} m/s`,
    '    dry_cycle: 6 s',
    '',
  ].join('\n');
}

/** 500 cm3 of casting with 60 cm3 of overflows and 150 cm3 of runner, filled in 50 ms; all volumes at 2.5 g/cm3. */
const EXAMPLE: SmallPart = {
  ...LID,
  volume: 500,
  pinned: { 'alloy.density': '2.5 g/cm3', 'overflow.volume': '60 cm3', 'runner.volume': '150 cm3', 'fill.time': '50 ms' },
};

describe('sleeve of 70 x 400 mm, worked by hand', () => {
  // Sleeve 1539.4 cm3; biscuit 25 x 70 mm = 96.2 cm3; metal 500 + 60 + 150 + 96.2 = 806.2 cm3 = 2.016 kg; fill 52.37 %.
  // 560 cm3 in 50 ms through 38.48 cm2: 2.910 m/s. Length for 50 %: 419.0 mm.
  const ledger = workTo('shot', EXAMPLE, plantOf({ chamber: 'cold', plunger: 70, sleeve: 400 }));
  test.each([
    ['sleeve.biscuit-thickness', 25],
    ['sleeve.biscuit-volume', 96.2],
    ['shot.volume', 806.2],
    ['shot.mass', 2.0155],
    ['shot.liquid-volume', 806.2],
    ['sleeve.fill', 52.37],
    ['sleeve.air-volume', 733.2],
    ['sleeve.length-for-fill', 419.0],
    ['shot.flow', 11.2],
    ['sleeve.fast-speed', 2.91],
    // Dry 5 m/s, loaded 17.5 % less, 80 % of that.
    ['shot.speed-available', 3.3],
  ])('%s is %d', (id, expected) => {
    expect(Math.abs(figure(ledger, id) - expected)).toBeLessThan(0.0003 * expected);
  });

  test('no rule objects, and the section shows the sleeve', () => {
    expect([...findingsOf(ledger).keys()].filter((code) => /^(sleeve|pot|shot)\//.test(code))).toEqual([]);
    const text = JSON.stringify(shotStep.show(ledger));
    for (const id of ['sleeve.fill', 'sleeve.fast-speed', 'shot.mass', 'machine.metal-pressure']) expect(text).toContain(id);
    expect(text).not.toContain('pot.');
  });

  // The same part with other plungers; biscuit of 25 mm pinned, as in the hand calculation.
  test.each([
    [60, 69.0, 3.961],
    [80, 41.6, 2.228],
    [90, 34.2, 1.761],
  ])('plunger %d mm: fill %d %, speed %d m/s', (plunger, fill, speed) => {
    const part = { ...EXAMPLE, pinned: { ...EXAMPLE.pinned, 'sleeve.biscuit-thickness': '25 mm' } };
    const other = workTo('shot', part, plantOf({ chamber: 'cold', plunger, sleeve: 400 }));
    expect(Math.abs(figure(other, 'sleeve.fill') - fill)).toBeLessThan(0.055);
    expect(Math.abs(figure(other, 'sleeve.fast-speed') - speed)).toBeLessThan(0.0006);
  });
});

describe('liquid against solid', () => {
  test('mass counts the solid density, the sleeve holds the liquid, which takes more room', () => {
    const ledger = workTo('shot', LID, plantOf({ chamber: 'cold', plunger: 70, sleeve: 400 }));
    expect(figure(ledger, 'shot.mass')).toBeCloseTo((figure(ledger, 'shot.volume') * 2.71) / 1000, 9);
    expect(figure(ledger, 'shot.liquid-volume')).toBeCloseTo((figure(ledger, 'shot.volume') * 2.71) / 2.5, 6);
  });

  test('four cavities pour four castings and runners, one biscuit', () => {
    const plant = plantOf({ chamber: 'cold', plunger: 70, sleeve: 400 });
    const count = (cavities: number) =>
      workTo(
        'shot',
        { ...EXAMPLE, volume: 60, pinned: { ...EXAMPLE.pinned, 'overflow.volume': '8 cm3', 'runner.volume': '15 cm3', 'machine.cavities': String(cavities) } },
        plant,
      );
    expect(figure(count(1), 'shot.volume')).toBeCloseTo(60 + 8 + 15 + 96.211, 2);
    expect(figure(count(4), 'shot.volume')).toBeCloseTo(4 * 83 + 96.211, 2);
    expect(figure(count(4), 'sleeve.fast-speed')).toBeCloseTo(4 * figure(count(1), 'sleeve.fast-speed'), 9);
  });
});

describe('rules of the cold chamber', () => {
  const shot = (part: SmallPart, plunger: number, sleeve: number, dry = 5) => workTo('shot', part, plantOf({ chamber: 'cold', plunger, sleeve, dry }));

  test('a sleeve filled above 75 % is an error that names plunger and length', () => {
    const ledger = shot(EXAMPLE, 60, 340);
    const finding = findingsOf(ledger).get('sleeve/fill-greatest');
    expect(finding?.severity).toBe('error');
    // 710 cm3 and a biscuit of 26.4 mm are half of 340 mm with 79.2 mm of plunger; 780.7 cm3 are half of 552 mm with one of 60 mm.
    expect(finding?.fix).toContain('about 79 mm');
    expect(finding?.fix).toContain('552 mm');
  });

  test('a sleeve filled below 30 % is a warning', () => {
    expect(findingsOf(shot(EXAMPLE, 100, 420)).get('sleeve/fill-least')?.severity).toBe('warning');
  });

  test('a plunger too slow is an error that names area, dry speed and fill time', () => {
    const finding = findingsOf(shot(EXAMPLE, 70, 400, 4)).get('sleeve/plunger-speed');
    // 2.910 m/s against 4 x 0.825 x 0.8 = 2.64 m/s: 1.10 times the area, 4.4 m/s dry, 55 ms.
    expect(finding?.severity).toBe('error');
    expect(finding?.fix).toContain('1.10 times');
    expect(finding?.fix).toContain('4.4 m/s');
    expect(finding?.fix).toContain('55 ms');
  });

  test('a plunger too large for the pressure is an error that names the largest', () => {
    const ledger = shot({ ...EXAMPLE, quality: 'use: pressure-tight' }, 90, 400);
    // 32 MPa x (140 / 90)^2 = 77.4 MPa, below the 88.3 MPa of the class: 90 x sqrt(77.4 / 88.3) = 84.3 mm.
    const finding = findingsOf(ledger).get('shot/metal-pressure');
    expect(finding?.severity).toBe('error');
    expect(finding?.fix).toContain('84 mm');
  });

  test('a biscuit below 15 mm is an error', () => {
    const ledger = shot({ ...EXAMPLE, pinned: { ...EXAMPLE.pinned, 'sleeve.biscuit-thickness': '10 mm' } }, 70, 400);
    expect(findingsOf(ledger).get('sleeve/biscuit')?.severity).toBe('error');
  });

  test('a deep runner thickens the biscuit', () => {
    const ledger = shot({ ...EXAMPLE, pinned: { ...EXAMPLE.pinned, 'runner.depth': '32 mm' } }, 70, 400);
    expect(figure(ledger, 'sleeve.biscuit-thickness')).toBe(32);
  });

  test('the main runner counts, which is deeper than the runner at the gate', () => {
    // A small plunger under a wide gate: a third of the plunger and the least are both less than the main runner is deep.
    const ledger = shot({ ...EXAMPLE, pinned: { ...EXAMPLE.pinned, 'gate.area': '1200 mm2' } }, 70, 400);
    const main = figure(ledger, 'runner.segment-depth[main runner]');
    expect(main).toBeGreaterThan(25);
    expect(figure(ledger, 'runner.depth')).toBeLessThan(main);
    expect(figure(ledger, 'sleeve.biscuit-thickness')).toBe(main);
  });
});

describe('vertical shot', () => {
  test('may be filled nearly full, and not more', () => {
    const part = { ...EXAMPLE, alloy: 'A360', wall: 5, least: 5, quality: 'use: structural, heat_treatment: T6' };
    const full = workTo('shot', part, plantOf({ chamber: 'cold', vertical: true, plunger: 70, sleeve: 240 }));
    expect(figure(full, 'sleeve.fill')).toBeGreaterThan(75);
    const findings = findingsOf(full);
    expect(findings.has('sleeve/fill-greatest')).toBe(false);
    expect(findings.has('sleeve/fill-vertical')).toBe(false);
    const over = workTo('shot', part, plantOf({ chamber: 'cold', vertical: true, plunger: 70, sleeve: 200 }));
    expect(findingsOf(over).get('sleeve/fill-vertical')?.severity).toBe('error');
  });
});

describe('hot chamber, worked by hand', () => {
  // 22 + 11 cm3 and a runner of 24 x 22.5 % x 0.5334 x 0.9295 = 2.68 cm3: 35.68 cm3, 0.2355 kg, 38.6 cm3 liquid.
  // 45 mm plunger (15.90 cm2): 24.3 mm of travel; 35.7 cm3 in 15.38 ms = 2.321 l/s, 1.459 m/s. Two runs to two gates, each a stage above
  // its gate run: 66.12 / 0.8 / 0.925 = 89.35 mm2 at the foot of the sprue, nozzle sqrt(4 x 1.1 x 89.35 / pi) = 11.186 mm.
  const plant = (stroke: number) => plantOf({ chamber: 'hot', plunger: 45, stroke, dry: 3.6 });
  // The runner is pinned to what its usual share of the area would make it.
  const ledger = workTo('shot', { ...LEVER, pinned: { 'runner.volume': '2.677 cm3' } }, plant(110));
  test.each([
    ['runner.share-volume', 2.677],
    ['shot.volume', 35.68],
    ['shot.mass', 0.2355],
    ['shot.liquid-volume', 38.6],
    ['pot.stroke-needed', 24.27],
    ['shot.flow', 2.321],
    ['pot.plunger-speed', 1.4594],
    ['pot.nozzle-diameter', 11.186],
    ['pot.temperature', 425],
  ])('%s is %d', (id, expected) => {
    expect(Math.abs(figure(ledger, id) - expected)).toBeLessThan(0.0005 * expected);
  });

  test('has neither sleeve nor biscuit nor intensifier, and the rules of the sleeve do not ask for them', () => {
    expect(ledger.values.has('sleeve.fill')).toBe(false);
    expect(figure(ledger, 'sleeve.biscuit-volume')).toBe(0);
    const findings = findingsOf(ledger);
    expect([...findings.keys()].filter((code) => code.startsWith('sleeve/'))).toEqual([]);
    expect(ledger.unchecked.filter((entry) => entry.id.startsWith('sleeve/'))).toEqual([]);
    expect(JSON.stringify(shotStep.show(ledger))).toContain('no intensifier');
  });

  test('a stroke too short is an error', () => {
    expect(findingsOf(workTo('shot', LEVER, plant(20))).get('pot/stroke')?.severity).toBe('error');
  });

  test('the order of size is that of the trade: fill 5 to 25 ms, plunger 1 to 3 m/s', () => {
    // From memory, medium confidence.
    expect(figure(ledger, 'fill.time')).toBeGreaterThanOrEqual(5);
    expect(figure(ledger, 'fill.time')).toBeLessThanOrEqual(25);
    expect(figure(ledger, 'pot.plunger-speed')).toBeGreaterThanOrEqual(1);
    expect(figure(ledger, 'pot.plunger-speed')).toBeLessThanOrEqual(3);
  });
});

describe('the function that the machine search runs', () => {
  test('gives on a trial ledger what the step gives in the plan', () => {
    const plant = plantOf({ chamber: 'cold', plunger: 70, sleeve: 400 });
    const plan = workTo('shot', EXAMPLE, plant);
    const trial = workTo('clamp', EXAMPLE, plant).fork();
    workShot(trial);
    for (const [id, value] of trial.values) expect(plan.values.get(id)?.value, id).toBe(value.value);
    expect(trial.values.has('sleeve.fill')).toBe(true);
  });
});
