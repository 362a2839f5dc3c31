import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { Ledger } from '../../../src/engine/ledger.ts';
import { ejectionStep } from '../../../src/engine/steps/ejection/index.ts';
import { fileGiven } from '../../../src/engine/steps/given.ts';
import { WORK_ORDER } from '../../../src/engine/steps/index.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import { readPart, readPlant } from '../../../src/spec/index.ts';
import { figure, findingsOf, LEVER, LID, partText, rulebook, type SmallPart, workTo } from './work-to.ts';

const PLANT = readFileSync(join(import.meta.dirname, '..', '..', '..', 'rules', 'plants', 'typical.yaml'), 'utf8');

/** As `workTo('ejection', part)`, with further lines of the part file: walls, holes, undercuts. */
function ejected(part: SmallPart, more = ''): Ledger {
  const { pinned: pins = {}, ...rest } = part;
  // Ids with an item do not stand in a flow mapping.
  const lines = Object.entries(pins).map(([id, text]) => `  '${id}': ${text}\n`);
  const read = readPart({ name: 'test.part.yaml', text: `${partText(rest)}${more}${lines.length === 0 ? '' : 'pinned:\n'}${lines.join('')}` });
  const { plant } = readPlant({ name: 'test.plant.yaml', text: PLANT });
  if (read.part === undefined || plant === undefined) throw new Error(read.diagnostics.map((d) => d.message).join('\n'));
  const alloy = findAlloy(rulebook, read.part.alloy.value);
  if (!('found' in alloy)) throw new Error(`no alloy ${part.alloy}`);
  const ledger = new Ledger({ part: read.part, plant, alloy: alloy.found, rulebook });
  fileGiven(ledger);
  for (const step of WORK_ORDER) {
    ledger.attempt(step.id, step.title, () => step.work(ledger));
    if (step.id === 'ejection') break;
  }
  return ledger;
}
const pinned = (part: SmallPart, pins: Readonly<Record<string, string>>): SmallPart => ({ ...part, pinned: { ...part.pinned, ...pins } });
/** Ejected at the temperature of the family, whatever holds the die closed, so that the figures can be worked by hand. */
const READY = { 'ejection.temperature[wall]': '385 degC' };
const near = (a: number, b: number, within = 1e-6): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(within * Math.abs(b));

const BOX = `walls:
  - { id: outer, side: outside, height: 44 mm, draft: 1 deg }
  - { id: inner, side: inside, height: 40 mm, draft: 1.5 deg }
holes:
  - { id: screws, diameter: 7 mm, depth: 20 mm, kind: blind, direction: z, count: 4 }
  - { id: bore, diameter: 20 mm, depth: 25 mm, kind: blind, direction: x }
`;

describe('a box with core pins and a slide, worked by hand', () => {
  const ledger = ejected(pinned(LID, READY), BOX);
  const drag = (mu: number, degrees: number): number => {
    const [sine, cosine] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
    return (mu * cosine - sine) / (1 + mu * sine * cosine);
  };

  test('the wall presses on the outline with what it bears in tension', () => {
    // 2 x (238 + 142) - 8 x 2.8 mm; 40 MPa at 385 degC; a stretched wall presses in sum with 2 pi times its tension.
    near(figure(ledger, 'ejection.inner-outline'), 737.6);
    near(figure(ledger, 'ejection.core-area[face inner]'), 295.04);
    near(figure(ledger, 'ejection.core-pressure[face inner]'), (40 * 2 * 2.8 * Math.PI) / 737.6);
    near(figure(ledger, 'ejection.core-force[face inner]'), ((2 * Math.PI * 40 * 2.8 * 40) / 1000) * drag(0.25, 1.5));
    expect(ledger.text('ejection.grip', 'wall')).toBe('hot yield strength');
  });
  test('four core pins press with a yielding boss', () => {
    const area = (4 * Math.PI * 7 * 20) / 100;
    near(figure(ledger, 'ejection.core-area[hole screws]'), area);
    const pressure = 40 * Math.log(1 + 5.6 / 7);
    near(figure(ledger, 'ejection.core-pressure[hole screws]'), pressure);
    near(figure(ledger, 'ejection.core-force[hole screws]'), ((pressure * area) / 10) * drag(0.25, figure(ledger, 'draft.hole-angle[screws]')));
  });
  test('the floor adds half of its pull where the casting is closed, nothing at the low end', () => {
    const closed = 268 / (23.8 * 14.2);
    near(figure(ledger, 'ejection.closed-share'), 100 * closed);
    near(figure(ledger, 'ejection.core-force[floor]'), ((40 * 2.8 * 737.6) / 1000) * closed * 0.5 * drag(0.25, 1.5));
    expect(figure(ledger, 'ejection.core-force-low[floor]')).toBe(0);
  });
  test('the sum is the force of one casting; the core on the slide is pulled before and is not in it', () => {
    const own = ['face inner', 'hole screws', 'floor'].map((item) => figure(ledger, `ejection.core-force[${item}]`));
    near(
      figure(ledger, 'ejection.cavity-force'),
      own.reduce((a, b) => a + b),
    );
    near(figure(ledger, 'ejection.force'), figure(ledger, 'ejection.cavity-force') * figure(ledger, 'machine.cavities'));
    expect(ledger.text('ejection.core-place', 'hole bore')).toBe('slide S1');
    near(figure(ledger, 'ejection.slide-force[S1]'), figure(ledger, 'ejection.core-force[hole bore]'));
    expect(figure(ledger, 'ejection.cover-force')).toBe(0);
    near(figure(ledger, 'ejection.contact-area'), 295.04 + (4 * Math.PI * 7 * 20) / 100);
  });
  test('the slide comes out within a factor of two and a half of the gripping pressure of a handbook', () => {
    const ratio = figure(ledger, 'ejection.slide-force[S1]') / figure(ledger, 'slide.pulling-force[S1]');
    expect(ratio).toBeGreaterThan(0.4);
    expect(ratio).toBeLessThan(2.5);
  });
  test('the low and high ends lie around the plan', () => {
    for (const id of ['ejection.cavity-force', 'ejection.force', 'ejection.core-force']) {
      const item = id === 'ejection.core-force' ? '[hole screws]' : '';
      expect(figure(ledger, `${id}-low${item}`)).toBeLessThan(figure(ledger, `${id}${item}`));
      expect(figure(ledger, `${id}-high${item}`)).toBeGreaterThan(figure(ledger, `${id}${item}`));
    }
  });
  test('hot strength and friction are memory, and so is the force', () => {
    expect(ledger.value('ejection.force').status).toBe('memory');
  });
  test('the slide asks for early return, and the pins share the force at no more than is allowed', () => {
    expect(ledger.text('ejection.return')).toBe('early return');
    const [pins, d] = [figure(ledger, 'ejection.cavity-pins'), figure(ledger, 'ejection.pin-diameter')];
    near(figure(ledger, 'ejection.pin-pressure'), (4000 * figure(ledger, 'ejection.cavity-force')) / (pins * Math.PI * d ** 2));
    expect(figure(ledger, 'ejection.pin-pressure')).toBeLessThanOrEqual(50);
    expect(pins).toBeGreaterThanOrEqual(Math.ceil(760 / 56));
    expect(d).toBeGreaterThanOrEqual(figure(ledger, 'ejection.pin-safe-diameter'));
    near(figure(ledger, 'ejection.stroke'), 48);
  });
  test('no finding of its own on a sane part, and pins that keep the high end of the force are named', () => {
    expect([...findingsOf(ledger).keys()].filter((code) => code.startsWith('ejection/'))).toEqual([]);
    const high = figure(ledger, 'ejection.pin-pressure-high') * figure(ledger, 'ejection.cavity-pins');
    expect(high / figure(ledger, 'ejection.pins-high')).toBeLessThanOrEqual(figure(ledger, 'ejection.push-pressure') * (1 + 1e-9));
    expect(high / (figure(ledger, 'ejection.pins-high') - 1)).toBeGreaterThan(figure(ledger, 'ejection.push-pressure'));
    expect(JSON.stringify(ejectionStep.show(ledger))).toContain('Leave room for them');
  });
  test('prints cores, slide, pins and sequence', () => {
    const text = JSON.stringify(ejectionStep.show(ledger));
    for (const part of ['Core pulls before ejection', 'Cores and the force', 'slides in, die closes', 'Number of pins']) expect(text).toContain(part);
  });
});

describe('what moves the force', () => {
  const force = (part: SmallPart, more = BOX): number => figure(ejected(part, more), 'ejection.cavity-force');
  test('twice the cavities, twice the force of the shot', () => {
    const inside = 'walls:\n  - { id: inner, side: inside, height: 11 mm, draft: 1.5 deg }\n';
    const [one, two] = ['1', '2'].map((n) => ejected(pinned(LEVER, { 'machine.cavities': n, 'ejection.temperature[wall]': '300 degC' }), inside));
    near(figure(two as Ledger, 'ejection.force'), 2 * figure(one as Ledger, 'ejection.force'));
  });
  test('more draft, less force; a thicker wall, more', () => {
    expect(force(pinned(LID, READY), BOX.replace('1.5 deg', '3 deg'))).toBeLessThan(force(pinned(LID, READY)));
    expect(force(pinned({ ...LID, wall: 3.5 }, READY))).toBeGreaterThan(force(pinned(LID, READY)));
  });
  test('a casting that waits in the die grips harder', () => {
    expect(force(pinned(LID, { 'ejection.temperature[wall]': '300 degC' }))).toBeGreaterThan(force(pinned(LID, READY)));
    const waits = ejected(pinned(LID, { 'ejection.temperature[wall]': '300 degC' }), BOX);
    near(figure(waits, 'ejection.force-early'), force(pinned(LID, READY)));
  });
  test('an alloy ejected just below its solidus is stretched elastically only', () => {
    const ledger = ejected(pinned(LID, { 'ejection.temperature[wall]': '500 degC', 'ejection.hot-yield[wall]': '100 MPa' }), BOX);
    expect(ledger.text('ejection.grip', 'wall')).toBe('elastic contraction');
    near(figure(ledger, 'ejection.core-pressure[face inner]'), (figure(ledger, 'ejection.hoop-stress[wall]') * 2 * 2.8 * Math.PI) / 737.6);
  });
  test('a flat plate has no inside: no force, and pins by its shape', () => {
    const ledger = ejected({ alloy: 'A380', volume: 24, wall: 3, area: 80, envelope: [100, 80, 3] });
    expect(ledger.text('ejection.area-origin')).toBe('an open box');
    expect(figure(ledger, 'ejection.contact-area')).toBe(0);
    expect(figure(ledger, 'ejection.force')).toBe(0);
    expect(figure(ledger, 'ejection.cavity-pins')).toBeGreaterThanOrEqual(3);
    expect(ledger.text('ejection.pins-by')).toBe('outline');
  });
  test('a hole that is drilled grips nothing', () => {
    const thin = 'holes:\n  - { id: pin, diameter: 1 mm, depth: 20 mm, kind: blind, direction: z }\n';
    expect(ejected(LID, thin).texts.has('ejection.core-place[hole pin]')).toBe(false);
  });
  test('cores of the cover half count for it; those of the half with more surface keep the casting', () => {
    const holes =
      'holes:\n  - { id: many, diameter: 7 mm, depth: 20 mm, kind: blind, direction: z, count: 8 }\n  - { id: few, diameter: 7 mm, depth: 20 mm, kind: blind, direction: -z }\n';
    const ledger = ejected(LID, holes);
    expect(ledger.text('ejection.area-origin')).toBe('cored holes');
    near(figure(ledger, 'ejection.cover-force'), figure(ledger, 'ejection.cavity-force') / 8);
    expect(findingsOf(ledger).has('ejection/cover-grip')).toBe(false);
  });
});

describe('limits, each with the number that helps', () => {
  const found = (pins: Readonly<Record<string, string>>, more = BOX) => findingsOf(ejected(pinned(LID, { ...READY, ...pins }), more));
  test('a force that the machine does not have, or may not have', () => {
    const model = { 'machine.model': 'cold-4000' };
    expect(found({ 'ejection.cavity-force': '400 kN', ...model }).get('ejection/machine-force')?.severity).toBe('error');
    const high = found({ 'ejection.cavity-force-high': '400 kN', ...model });
    expect(high.get('ejection/machine-force-high')?.fix).toContain('400 kN');
    expect(high.has('ejection/machine-force')).toBe(false);
  });
  test('a stroke that the machine does not have', () => {
    expect(found({ 'ejection.stroke': '250 mm' }).get('ejection/stroke')?.fix).toContain('250 mm');
  });
  test('few pins press in and let the casting bend, and the fix holds', () => {
    const findings = found({ 'ejection.cavity-pins': '3', 'ejection.pin-diameter': '6 mm' });
    const pins = Number(/cavity-pins at (\d+)/.exec(findings.get('ejection/pin-pressure')?.fix ?? '')?.[1]);
    expect(pins).toBeGreaterThan(3);
    expect(findings.get('ejection/pins-few')?.fix).toContain('14');
    expect(found({ 'ejection.cavity-pins': String(pins), 'ejection.pin-diameter': '6 mm' }).has('ejection/pin-pressure')).toBe(false);
    const diameter = /pin-diameter at ([\d.]+)/.exec(findings.get('ejection/pin-pressure')?.fix ?? '')?.[1];
    expect(found({ 'ejection.cavity-pins': '3', 'ejection.pin-diameter': `${diameter} mm` }).has('ejection/pin-pressure')).toBe(false);
  });
  test('thin pins buckle, are too slender and too thin to be usual', () => {
    const findings = found({ 'ejection.pin-diameter': '2 mm' });
    for (const code of ['pin-buckling', 'pin-slenderness', 'pin-least']) expect(findings.has(`ejection/${code}`), code).toBe(true);
    expect(found({ 'ejection.pin-diameter': '16 mm' }).has('ejection/pin-greatest')).toBe(true);
  });
  test('return pins under slides', () => {
    expect(found({ 'ejection.return': 'return pins' }).has('ejection/return')).toBe(true);
  });
  test('little draft on a wide shallow core grips over half its height; below the least taper another rule speaks', () => {
    const shallow = BOX.replace('height: 40 mm, draft: 1.5 deg', 'height: 8 mm, draft: 0.6 deg');
    const fix = found({}, shallow).get('ejection/sticking')?.fix;
    expect(fix).toContain(figure(ejected(LID, shallow), 'draft.wall-angle[inner]').toFixed(2));
    const none = found({}, BOX.replace('draft: 1.5 deg', 'draft: 0 deg'));
    expect([none.has('ejection/sticking'), none.get('draft/least-taper')?.severity]).toEqual([false, 'error']);
  });
  test('many small cores in the cover half hold harder than one wide core with more surface', () => {
    const holes =
      'holes:\n  - { id: wide, diameter: 70 mm, depth: 40 mm, kind: blind, direction: z }\n  - { id: many, diameter: 7 mm, depth: 20 mm, kind: blind, direction: -z, count: 10 }\n';
    const ledger = ejected(LID, holes);
    expect(ledger.text('ejection.core-place', 'hole wide')).toBe('ejector half');
    const finding = findingsOf(ledger).get('ejection/cover-grip');
    const moved = (figure(ledger, 'ejection.cover-force') - figure(ledger, 'ejection.cavity-force')) / 2;
    expect(moved).toBeGreaterThan(0);
    expect(finding?.fix).toContain(`${(moved + 0.05).toFixed(1)} kN`);
  });
});

test('pins stand free over stroke, gap, support plate and the steel below the cavity, but for their guide', () => {
  const ledger = ejected(LID, BOX);
  const free = figure(ledger, 'ejection.stroke') + 5 + figure(ledger, 'die.plate') + figure(ledger, 'die.steel-below') - 25;
  expect(figure(ledger, 'ejection.pin-length')).toBeCloseTo(free, 9);
  expect(figure(ejected(pinned(LID, { 'die.plate': '120 mm' }), BOX), 'ejection.pin-length') - free).toBeCloseTo(120 - figure(ledger, 'die.plate'), 9);
});

describe('pins under overflows', () => {
  const shown = (ledger: Ledger): string => JSON.stringify(ejectionStep.show(ledger));
  test('are told of where there are overflows only', () => {
    expect(shown(ejected(LID, BOX))).toContain('under each overflow');
    expect(shown(ejected(pinned(LID, { 'overflow.number': '0' }), BOX))).not.toContain('under each overflow');
  });
});

describe('small zinc', () => {
  const ledger = workTo('ejection', LEVER);
  test('takes a few thin pins and little force', () => {
    expect(figure(ledger, 'ejection.cavity-force')).toBeLessThan(4);
    expect(figure(ledger, 'ejection.pin-diameter')).toBeLessThanOrEqual(5);
    expect(figure(ledger, 'ejection.cavity-pins')).toBeLessThanOrEqual(10);
  });
  test('all pins of the die are those of castings, overflows, runner and feeder', () => {
    const each = figure(ledger, 'ejection.cavity-pins') + figure(ledger, 'overflow.number') + 2;
    expect(figure(ledger, 'ejection.pins')).toBe(figure(ledger, 'machine.cavities') * each + 1);
  });
});

test('a family without figures has no force, and takes one that is pinned', () => {
  const lead: SmallPart = { alloy: 'Pb-5Sb', volume: 60, wall: 3, area: 40 };
  const ledger = ejected(lead);
  expect(ledger.values.has('ejection.force')).toBe(false);
  expect(ledger.unchecked.some(({ id }) => id.startsWith('ejection.'))).toBe(true);
  expect(ledger.findings.filter(({ message }) => message.includes('ejection/'))).toEqual([]);
  expect(figure(ejected(pinned(lead, { 'ejection.cavity-force': '3 kN' })), 'ejection.cavity-force')).toBe(3);
});
