import { describe, expect, test } from 'vitest';
import { calculate } from '../../../src/engine/calculate.ts';

const of = (formula: string, given: Readonly<Record<string, string>>, unit?: string) =>
  calculate({ formula, given: Object.entries(given).map(([name, text]) => ({ name, text })), ...(unit === undefined ? {} : { unit }) });
const codes = (formula: string, given: Readonly<Record<string, string>>, unit?: string) => of(formula, given, unit).diagnostics.map(({ code }) => code);
const GATE = { volume: '45 cm3', velocity: '45 m/s', time: '20 ms' };

describe('a formula worked out by hand', () => {
  // 45 cm3 through a gate at 45 m/s in 20 ms: 45000 mm3 / (45000 mm/s * 0.02 s) = 50 mm2.
  test('gives its value in its own unit, or in the one asked for', () => {
    const { calculation, diagnostics } = of('gate.area', GATE);
    expect(diagnostics).toEqual([]);
    expect(calculation).toMatchObject({ unit: 'mm2', numbers: { volume: 45, velocity: 45, time: 20 }, formula: { id: 'gate.area' } });
    expect(calculation?.value).toBeCloseTo(50, 9);
    const other = of('gate.area', GATE, 'cm2').calculation;
    expect([other?.unit, other?.value]).toEqual(['cm2', expect.closeTo(0.5, 12)]);
  });

  test('takes inputs in any unit of their kind', () => {
    expect(of('gate.area', { volume: '0.045 l', velocity: '4500 cm/s', time: '0.02 s' }).calculation?.value).toBeCloseTo(50, 9);
  });

  test('fills in what has a default, and what follows from other inputs, also where they are left out', () => {
    expect(of('clamp.castings-across', {}).calculation?.numbers).toEqual({ low: 0, room: 0, overhang: 0 });
    const film = { reynolds: '10000', prandtl: '7' };
    const left = of('cooling.nusselt-gnielinski', film).calculation;
    const friction = (0.79 * Math.log(10000) - 1.64) ** -2;
    expect(left?.numbers['friction']).toBeCloseTo(friction, 12);
    expect(of('cooling.nusselt-gnielinski', { ...film, friction: String(friction) }).calculation?.value).toBeCloseTo(left?.value ?? Number.NaN, 12);
  });
});

describe('a request that is wrong', () => {
  test('names a formula that is near, or says where they are listed', () => {
    expect(of('gate.arae', GATE)).toEqual({
      diagnostics: [
        {
          code: 'calc/unknown-formula',
          severity: 'error',
          message: expect.stringMatching(/^no formula is called "gate\.arae"; did you mean (.+ or )?gate\.area/),
          fix: 'see "diewright list formulas"',
        },
      ],
    });
    expect(of('zzzzzzzzzz', GATE).diagnostics[0]?.message).toBe('no formula is called "zzzzzzzzzz"');
  });

  test.each([
    [
      'an unknown input',
      { ...GATE, velocty: '1 m/s' },
      'calc/unknown-input',
      'gate.area has no input "velocty"; did you mean "velocity"?',
      'its inputs are volume, velocity, time',
    ],
    ['one that is near to none', { ...GATE, zzzzzz: '1' }, 'calc/unknown-input', 'gate.area has no input "zzzzzz"', 'its inputs are volume, velocity, time'],
    [
      'a name of every object',
      { ...GATE, constructor: '1' },
      'calc/unknown-input',
      'gate.area has no input "constructor"',
      'its inputs are volume, velocity, time',
    ],
    ['a missing input', { volume: '45 cm3', velocity: '45 m/s' }, 'calc/missing-input', 'time is missing: fill time', 'add time="NUMBER ms"'],
  ])('%s', (_, given, code, message, fix) => expect(of('gate.area', given)).toEqual({ diagnostics: [{ code, severity: 'error', message, fix }] }));

  test('a bare number says which unit is meant, and the others of its kind', () => {
    const [found] = of('gate.area', { ...GATE, time: ' 20 ' }).diagnostics;
    expect(found).toMatchObject({ code: 'calc/bare-number', message: expect.stringMatching(/^time \(fill time\): /) });
    expect(found?.fix).toMatch(/^write time="20 ms", or with another unit: .*\bs\b/);
    expect(found?.fix).not.toMatch(/unit: .*\bms\b/);
  });

  test('a missing pure number is asked for without a unit', () => {
    expect(of('clamp.locking-force', { opening_force: '1000 kN', slide_force: '0 kN' }).diagnostics[0]?.fix).toBe('add factor=NUMBER');
  });

  test('a unit of another kind, and text that is no quantity', () => {
    expect(codes('gate.area', { ...GATE, time: '20 mm' })).toEqual(['calc/wrong-dimension']);
    expect(codes('gate.area', { ...GATE, time: 'soon' })[0]).toMatch(/^calc\//);
  });

  test('an input that is given twice', () => {
    const given = [...Object.entries(GATE).map(([name, text]) => ({ name, text })), { name: 'time', text: '30 ms' }];
    expect(calculate({ formula: 'gate.area', given }).diagnostics).toEqual([
      { code: 'calc/input-twice', severity: 'error', message: 'time is given twice', fix: 'give each input once' },
    ]);
  });

  test('all that is wrong is said at once, and nothing is worked out', () => {
    const { calculation, diagnostics } = of('gate.area', { volume: '45', speed: '1 m/s' }, 'kg');
    expect(calculation).toBeUndefined();
    expect(diagnostics.map(({ code }) => code)).toEqual([
      'calc/bare-number',
      'calc/unknown-input',
      'calc/missing-input',
      'calc/missing-input',
      'calc/wrong-result-unit',
    ]);
  });

  test('a result unit that is none, or of another kind', () => {
    const said = (unit: string) => of('gate.area', GATE, unit).diagnostics[0];
    expect(said('furlong')).toMatchObject({ message: '"furlong" is not a unit', fix: expect.stringMatching(/^write one of .*mm2/) });
    expect(said('kg')?.message).toBe('"kg" is a unit of mass, but the result is of the kind area');
  });
});

describe('a yes or a no', () => {
  // Dittus and Boelter: 0.023 Re^0.8 Pr^n, n 0.4 for heating and 0.3 for cooling.
  const film = { reynolds: '20000', prandtl: '5' };
  const nusselt = (heating?: string) => of('cooling.nusselt-dittus-boelter', { ...film, ...(heating === undefined ? {} : { heating }) });
  const [heated, cooled] = [0.023 * 20000 ** 0.8 * 5 ** 0.4, 0.023 * 20000 ** 0.8 * 5 ** 0.3];
  test.each([
    ['true', heated],
    ['yes', heated],
    ['1', heated],
    [' Yes ', heated],
    ['TRUE', heated],
    ['false', cooled],
    ['no', cooled],
    ['0', cooled],
    [undefined, heated],
  ])('is written as %s', (heating, value) => expect(nusselt(heating).calculation?.value).toBeCloseTo(value, 9));

  test('and as nothing else', () => {
    expect(nusselt('perhaps')).toEqual({
      diagnostics: [
        {
          code: 'calc/not-true-or-false',
          severity: 'error',
          message: 'heating (whether the coolant is being heated, as in a die line): "perhaps" is not a yes or a no',
          fix: 'write heating=true or heating=false',
        },
      ],
    });
  });
});

describe('outside its range', () => {
  test('a formula that goes on gives result and finding, each input of its own', () => {
    const { calculation, diagnostics } = of('gate.area', { volume: '200000 cm3', velocity: '150 m/s', time: '20 ms' });
    expect(calculation?.value).toBeCloseTo((1000 * 200_000) / (150 * 20), 6);
    expect(diagnostics.map(({ severity, message }) => [severity, message.includes('outside')])).toEqual([
      ['error', true],
      ['error', true],
    ]);
    expect(diagnostics[1]?.fix).toBe('give velocity a value inside the range; outside it the result is a guess');
  });

  test('a formula that refuses gives no result', () => {
    const { calculation, diagnostics } = of('cooling.nusselt-gnielinski', { reynolds: '1000', prandtl: '5' });
    expect(calculation).toBeUndefined();
    expect(diagnostics.map(({ severity }) => severity)).toEqual(['error']);
  });

  test('what cannot be is refused', () => {
    const { calculation, diagnostics } = of('gate.area', { ...GATE, time: '-20 ms' });
    expect(calculation).toBeUndefined();
    expect(diagnostics).toHaveLength(1);
    expect(diagnostics[0]?.fix).not.toContain('the result is a guess');
  });

  test('what a formula requires besides is said with its reason', () => {
    const { calculation, diagnostics } = of('clamp.locking-force', { opening_force: '1000 kN', slide_force: '0 kN', factor: '0.5' });
    expect(calculation).toBeUndefined();
    expect(diagnostics.some(({ message }) => message.includes('a clamp factor of 1 or more'))).toBe(true);
  });
});
