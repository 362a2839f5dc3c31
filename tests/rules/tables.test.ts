import { describe, expect, it } from 'vitest';
import { figureAt } from './tables.ts';

type At = Record<string, string | number>;
type Cells = readonly (readonly [id: string, at: At, column: string, expected: number | null, status?: string])[];

const zinc = { family: 'zinc' };
const al = { family: 'aluminium' };
const mg = { family: 'magnesium' };
const cu = { family: 'copper' };

/** Figures typed from the publications, table by table, with the mark that the figure must carry. */
const published: Record<string, Cells> = {
  'NADCA S-4A-7 draft constants: aluminium inside read, the rest from memory': [
    ['draft/constant', { ...al, surface: 'inside', level: 'standard' }, 'constant', 30, 'source'],
    ['draft/constant', { ...al, surface: 'outside', level: 'standard' }, 'constant', 60, 'derived'],
    ['draft/constant', { ...al, surface: 'hole', level: 'standard' }, 'constant', 20, 'memory'],
    ['draft/constant', { ...zinc, surface: 'inside', level: 'standard' }, 'constant', 50, 'memory'],
    ['draft/constant', { ...mg, surface: 'hole', level: 'standard' }, 'constant', 24, 'memory'],
    ['draft/constant', { ...cu, surface: 'outside', level: 'standard' }, 'constant', 50, 'memory'],
    ['draft/constant', { ...al, surface: 'inside', level: 'precision' }, 'constant', 40, 'memory'],
    ['draft/constant', { ...al, surface: 'inside', level: 'precision' }, 'factor', 0.8, 'memory'],
    ['draft/constant', { ...cu, surface: 'hole', level: 'precision' }, 'constant', null],
  ],
  'encyclopaedia table of least tapers, 1:200, 1:100, 1:80': [
    ['draft/least-taper', zinc, 'ratio', 200, 'source'],
    ['draft/least-taper', al, 'angle', 0.573, 'derived'],
    ['draft/least-taper', cu, 'angle', 0.716, 'derived'],
  ],
  'NADCA S-4A-1, S-4A-2 quoted by a die caster (aluminium); S-4A-3 and zinc from memory': [
    ['tolerance/linear', { ...al, level: 'standard' }, 'base', 0.25, 'source'],
    ['tolerance/linear', { ...al, level: 'precision' }, 'step', 0.025, 'source'],
    ['tolerance/linear', { ...cu, level: 'standard' }, 'step', 0.076, 'memory'],
    ['tolerance/parting-line', { ...al, level: 'standard', area: 645.16 }, 'amount', 0.305, 'source'],
    ['tolerance/parting-line', { ...al, level: 'precision', area: 1935.48 }, 'amount', 0.406, 'source'],
    ['tolerance/parting-line', { ...zinc, level: 'standard', area: 64.516 }, 'amount', 0.114, 'memory'],
    ['tolerance/moving-component', { ...al, level: 'standard', area: 645.16 }, 'amount', 0.61, 'memory'],
    ['tolerance/moving-component', { ...mg, level: 'precision', area: 129.032 }, 'amount', 0.178, 'memory'],
    ['tolerance/flatness', { level: 'standard' }, 'step', 0.08, 'memory'],
  ],
  'United Kingdom caster, moving part': [
    ['tolerance/moving-component-uk', { ...al, area: 120 }, 'amount', 0.2, 'source'],
    ['tolerance/moving-component-uk', { ...zinc, area: 600 }, 'amount', 0.3, 'source'],
  ],
  'ISO 8062-3:2007 table 2': [
    ['tolerance/iso-8062-3', { grade: '6', nominal: 100 }, 'width', 0.78, 'source'],
    ['tolerance/iso-8062-3', { grade: '5', nominal: 160 }, 'width', 0.62, 'source'],
    ['tolerance/iso-8062-3', { grade: '1', nominal: 10 }, 'width', 0.09, 'source'],
    ['tolerance/iso-8062-3', { grade: '12', nominal: 630 }, 'width', 10, 'source'],
    ['tolerance/iso-8062-3', { grade: '9', nominal: 1600 }, 'width', 4.6, 'source'],
    ['tolerance/iso-8062-3', { grade: '8', nominal: 1600 }, 'width', 3.2, 'memory'],
  ],
  'Chinese die casting design manual, table 2-20': [
    ['wall/by-area', { ...zinc, area: 25 }, 'least', 0.5, 'source'],
    ['wall/by-area', { ...al, area: 500 }, 'least', 1.8, 'source'],
    ['wall/by-area', { ...mg, area: 500 }, 'normal', 3.0, 'source'],
    ['wall/by-area', { ...cu, area: 100 }, 'least', 1.5, 'source'],
    ['wall/by-area', { ...cu, area: 1000000 }, 'normal', 3.0, 'source'],
    ['wall/greatest', al, 'usual', 6, 'source'],
  ],
  'NADCA FAQ, alloy properties': [
    ['wall/faq-minimum', { ...zinc, size: 'small' }, 'least', 0.38, 'source'],
    ['wall/faq-minimum', { ...mg, size: 'large' }, 'least', 2.54, 'source'],
    ['hole/least-diameter', zinc, 'diameter', 1.27, 'source'],
    ['hole/least-diameter', cu, 'diameter', 6.35, 'source'],
    ['machine/greatest-mass', al, 'mass', 31.8, 'source'],
    ['machine/shots-per-hour', zinc, 'greatest', 550, 'source'],
    ['thread/cast-external', cu, 'pitch', 2.54, 'source'],
  ],
  'NADCA cored holes (memory; four aluminium points on a caster sheet) and a United Kingdom caster': [
    ['hole/greatest-depth', { ...al, diameter: 6.35 }, 'depth', 25.4, 'source'],
    ['hole/greatest-depth', { ...mg, diameter: 6.35 }, 'depth', 25.4, 'memory'],
    ['hole/greatest-depth', { ...zinc, diameter: 3.175 }, 'depth', 9.5, 'memory'],
    ['hole/greatest-depth', { ...cu, diameter: 25.4 }, 'depth', 127, 'memory'],
    ['hole/caution-depth', { ...al, diameter: 10 }, 'depth', 20, 'source'],
    ['hole/caution-depth', { ...zinc, diameter: 16 }, 'depth', 80, 'source'],
    ['hole/depth-ratio', {}, 'greatest', 6, 'memory'],
  ],
  'two makers of thread-forming screws; course text; toolmaker': [
    ['thread/forming-hole', { screw: 'M6' }, 'top_greatest', 5.74, 'source'],
    ['thread/forming-hole', { screw: 'M10' }, 'bottom_least', 9.14, 'source'],
    ['thread/tapping', {}, 'extra_pitches', 3, 'source'],
    ['machining/stock', {}, 'opens_porosity', 0.76, 'source'],
    ['machining/stock', {}, 'least', 0.25, 'memory'],
    ['insert/cover', al, 'least', 1.5, 'source'],
    ['slide/angle-pin', {}, 'greatest', 22, 'source'],
    ['slide/angle-pin', {}, 'used', 18, 'practice'],
  ],
  'fill-time constants from memory; worksheet table read': [
    ['fill/steel-constant', { pair: 'aluminium' }, 'k', 0.0346, 'memory'],
    ['fill/steel-constant', { pair: 'tungsten-die' }, 'k', 0.0124, 'memory'],
    ['fill/flow', { group: 'aluminium' }, 'conversion', 4.8, 'memory'],
    ['fill/flow', { group: 'magnesium' }, 'flow_temperature', 510, 'memory'],
    ['fill/flow', { group: 'zinc' }, 'gate_greatest', 415, 'memory'],
    ['fill/solids', { ...al, wall: 2.0 }, 'greatest', 35, 'memory'],
    ['fill/solids', { ...zinc, wall: 1.25 }, 'least', 10, 'memory'],
    ['fill/recommended', mg, 'liquidus', 610, 'memory'],
    ['fill/frommer', { wall: 2.0 }, 'greatest', 60, 'source'],
    ['fill/handbook', { wall: 5 }, 'velocity_greatest', 40, 'memory'],
  ],
  'die casting knowledge-base articles and foundry lexicon': [
    ['gate/velocity', { ...al, use: 'pressure-tight' }, 'usual_least', 40, 'source'],
    ['gate/velocity', { ...al, use: 'structural' }, 'greatest', 35, 'source'],
    ['gate/velocity', { ...zinc, use: 'general' }, 'least', 25, 'source'],
    ['gate/velocity', { ...cu, use: 'general' }, 'greatest', 50, 'memory'],
    ['gate/thickness', al, 'greatest', 2.5, 'source'],
    ['gate/thickness', mg, 'least', 0.6, 'memory'],
    ['gate/liquid-density', al, 'density', 2.5, 'source'],
    ['gate/discharge', al, 'used', 0.5, 'memory'],
    ['gate/wall-velocity', { wall: 2.286 }, 'greatest', 49, 'source'],
    ['gate/atomisation', { level: 'usual' }, 'index_us', 475, 'memory'],
    ['clamp/factor', { slides: 'none' }, 'factor', 1.1, 'source'],
    ['clamp/factor', { slides: 'lumped' }, 'factor', 1.25, 'source'],
    ['clamp/use', {}, 'greatest', 85, 'source'],
    ['clamp/spike', {}, 'greatest', 3, 'source'],
    ['sleeve/fill', {}, 'usual_greatest', 60, 'source'],
    ['sleeve/fill', {}, 'greatest', 75, 'source'],
    ['sleeve/biscuit', {}, 'least', 15, 'source'],
    ['sleeve/slow-speed', {}, 'greatest', 0.5, 'source'],
    ['vent/vacuum', { class: 'good' }, 'greatest', 150, 'source'],
    ['die/temperature', zinc, 'upper', 218, 'source'],
  ],
  'pressure classes in kgf/cm2 (worksheet), area shares, hot chamber, overflows, vents, furnace': [
    ['clamp/pressure', { ...al, use: 'general' }, 'greatest', 400 * 0.0980665, 'source'],
    ['clamp/pressure', { ...al, use: 'pressure-tight' }, 'least', 800 * 0.0980665, 'source'],
    ['clamp/pressure', { ...zinc, use: 'loaded' }, 'least', 200 * 0.0980665, 'source'],
    ['clamp/pressure', { ...cu, use: 'pressure-tight' }, 'greatest', 100, 'memory'],
    ['clamp/area-share', {}, 'runner_greatest', 30, 'source'],
    ['clamp/area-share', {}, 'overflow_used', 15, 'derived'],
    ['pot/pressure', zinc, 'greatest', 34, 'source'],
    ['machine/metal-pressure', { chamber: 'hot' }, 'greatest', 31, 'practice'],
    ['overflow/share', { finish: 'good', wall: 1.3 }, 'share', 100, 'memory'],
    ['overflow/share', { finish: 'some-cold-shut', wall: 0.9 }, 'share', 75, 'memory'],
    ['overflow/gate', al, 'area_share', 50, 'source'],
    ['vent/depth', cu, 'greatest', 0.2, 'memory'],
    ['vent/velocity', { kind: 'frictionless' }, 'velocity', 200.9, 'derived'],
    ['die/opening', {}, 'extra', 120, 'memory'],
    ['furnace/loss', {}, 'greatest', 50, 'practice'],
    ['cavities/demand', {}, 'exponent', 0.7, 'memory'],
    ['die/life', cu, 'average', 20000, 'source'],
  ],
};

describe.each(Object.entries(published))('%s', (_source, cells) => {
  it.each(cells.map((cell) => [...cell]))('%s %o %s is %s', (id, at, column, expected, status) => {
    const found = figureAt(id as string, at as At, column as string);
    if (expected === null) return expect(found).toBeUndefined();
    // Printed to three significant digits at least, so a cell may round by less than half of the third.
    expect(Math.abs((found?.value ?? Number.NaN) / (expected as number) - 1)).toBeLessThan(0.002);
    expect(found?.status).toBe(status);
  });
});

it('checks at least 80 cells', () => {
  expect(Object.values(published).flat().length).toBeGreaterThanOrEqual(80);
});
