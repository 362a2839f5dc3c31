import { readdirSync } from 'node:fs';
import { all, create, type FactoryFunctionMap, type MathNode } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { equationOf, type Formula, substitute } from '../../src/kernel/formula.ts';
import { STATUSES } from '../../src/kernel/status.ts';
import { isUnit } from '../../src/kernel/units.ts';
import { FORMULAS, formulaById } from '../../src/physics/index.ts';

const math = create(all as FactoryFunctionMap);
const POINTS = 200;
/** A run in time steps is too slow for hundreds of them. */
const STEPPED_POINTS = 4;
const AGREEMENT = 1e-9;

type Numbers = Record<string, number>;

/** A small generator with a seed from the formula's id, so that every run draws the same points (mulberry32). */
function generator(seedText: string): () => number {
  let state = [...seedText].reduce((sum, letter) => (Math.imul(sum, 31) + letter.charCodeAt(0)) | 0, 7);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Points inside the ranges that satisfy the conditions: random ones, random ones with one input at an end of its range, and, where the
 * least or greatest of several comes into its own, random ones with some three in four at an end.
 */
function points(formula: Formula, count = POINTS): Numbers[] {
  const random = generator(formula.id);
  const draw = (): Numbers =>
    Object.fromEntries(
      Object.entries(formula.inputs).map(([name, { range, logical }]) => {
        const number = range[0] + random() * (range[1] - range[0]);
        return [name, logical === true ? Math.round(number) : number];
      }),
    );
  const holds = (numbers: Numbers): boolean => (formula.requires ?? []).every((condition) => condition.holds(numbers));
  const found: Numbers[] = [];
  for (let tries = 0; found.length < count && tries < 400 * count; tries += 1) {
    const numbers = draw();
    if (holds(numbers)) found.push(numbers);
  }
  expect(found.length, `${formula.id}: points that satisfy its conditions`).toBe(count);
  for (const [name, { range }] of Object.entries(formula.inputs)) {
    for (const end of range) {
      const numbers = { ...draw(), [name]: end };
      if (holds(numbers)) found.push(numbers);
    }
  }
  for (let tries = 0; tries < count; tries += 1) {
    const corner = Object.entries(formula.inputs).map(([name, { range }]) => [name, range[Math.floor(random() * 2)] as number, random() < 0.75] as const);
    const numbers = { ...draw(), ...Object.fromEntries(corner.filter(([, , isAtEnd]) => isAtEnd)) };
    if (holds(numbers)) found.push(numbers);
  }
  return found;
}

function scopeOf(formula: Formula, numbers: Numbers): Numbers {
  const scope: Numbers = {};
  for (const [name, input] of Object.entries(formula.inputs)) scope[input.symbol] = numbers[name] as number;
  return scope;
}

/** What the printed lines give: the equation's value, or the residual at `result`. */
function printed(formula: Formula): (numbers: Numbers, result: number) => number {
  const lines = (formula.where ?? []).map(({ symbol, equation }) => ({ symbol, code: math.compile(equation) }));
  const equation = math.compile(formula.equation);
  return (numbers, result) => {
    const scope = scopeOf(formula, numbers);
    for (const { symbol, code } of lines) scope[symbol] = code.evaluate(scope) as number;
    if (formula.implicit) scope[formula.symbol] = result;
    return equation.evaluate(scope) as number;
  };
}

/** The names in an equation that are no function calls. */
function namesIn(equation: string): string[] {
  const names: string[] = [];
  math.parse(equation).traverse((node: MathNode, path: string) => {
    if (node.type === 'SymbolNode' && path !== 'fn') names.push((node as MathNode & { name: string }).name);
  });
  return names;
}

describe('the catalogue', () => {
  it('holds every formula that a file of src/physics exports', async () => {
    const folder = new URL('../../src/physics/', import.meta.url);
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
      // Inputs that several formulas share are no formulas.
      (name) => name.endsWith('.ts') && name !== 'index.ts' && !name.startsWith('solve') && !name.endsWith('-inputs.ts'),
    );
    const missing: string[] = [];
    for (const name of files) {
      const module = (await import(new URL(name, folder).href)) as Record<string, unknown>;
      for (const [key, value] of Object.entries(module)) if (!FORMULAS.includes(value as Formula)) missing.push(`${name}: ${key}`);
    }
    expect(missing).toEqual([]);
    expect(files.length).toBeGreaterThan(15);
  });
  it('is sorted by id, each id once', () => {
    const ids = FORMULAS.map((formula) => formula.id);
    expect(ids).toEqual([...new Set(ids)].sort());
  });
  it('gives the same object by id as by import, and nothing for another word', () => {
    expect(FORMULAS.filter((formula) => formulaById(formula.id) !== formula)).toEqual([]);
    expect(formulaById('gate.no-such-formula')).toBeUndefined();
    expect(formulaById('constructor')).toBeUndefined();
  });
});

describe.each(FORMULAS.map((formula) => [formula.id, formula] as const))('%s', (id, formula) => {
  const symbols = Object.values(formula.inputs).map((input) => input.symbol);
  const lineSymbols = (formula.where ?? []).map((line) => line.symbol);

  it('has an id of topic and name, inputs in snake_case, known units and something to say of its accuracy', () => {
    expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*\.[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
    for (const name of Object.keys(formula.inputs)) expect(name).toMatch(/^[a-z][a-z0-9]*(_[a-z0-9]+)*$/);
    expect([formula.unit, ...Object.values(formula.inputs).map((input) => input.unit)].filter((unit) => !isUnit(unit))).toEqual([]);
    expect(STATUSES).toContain(formula.status);
    expect(formula.accuracy.length).toBeGreaterThan(4);
    if (formula.status === 'source') expect(formula.source).not.toEqual([]);
  });

  it('has ranges with two ends that its domains allow, and defaults inside them', () => {
    for (const [name, { range, domain, default: standard }] of Object.entries(formula.inputs)) {
      expect(range[0], name).toBeLessThan(range[1]);
      if (domain === undefined || domain === 'positive') expect(range[0], name).toBeGreaterThan(0);
      if (domain === 'not-negative') expect(range[0], name).toBeGreaterThanOrEqual(0);
      if (standard !== undefined) expect(standard >= range[0] && standard <= range[1], name).toBe(true);
    }
  });

  it('has symbols that differ and that mean nothing else in an equation', () => {
    const names = [...symbols, ...lineSymbols, formula.symbol];
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[A-Za-z][A-Za-z0-9_]*$/);
    for (const name of formula.implicit ? names : names.slice(0, -1)) expect(name in math, `${name} is a name of mathjs`).toBe(false);
  });

  if (formula.solution === 'time-stepped') {
    // No text can be evaluated here; tests/reference/formulas.test.ts asks for cases instead.
    it('gives a finite number that does not depend on what was worked out before', () => {
      const drawn = points(formula, STEPPED_POINTS);
      const first = drawn.map((numbers) => formula.compute(numbers));
      expect(first.filter((result) => !Number.isFinite(result))).toEqual([]);
      expect([...drawn].reverse().map((numbers) => formula.compute(numbers))).toEqual([...first].reverse());
      expect(new Set(first).size, 'the result moves with the inputs').toBeGreaterThan(1);
    });

    it('prints every number it was given, and the result', () => {
      const numbers = points(formula, 1)[0] as Numbers;
      const lines = substitute(formula, numbers, 12.5);
      for (const symbol of symbols) expect(lines[0]).toMatch(new RegExp(`(^with |, )${symbol} = -?[0-9]`));
      expect(lines[1]).toMatch(new RegExp(`^${formula.symbol} = 12.5`));
      expect([formula.where, formula.implicit]).toEqual([undefined, undefined]);
      expect(equationOf(formula)).toBe(`${formula.symbol} by time steps of ${formula.equation}`);
    });
    return;
  }

  it('uses every symbol, and no other name than pi', () => {
    const known = new Set([...symbols, 'pi']);
    const used = new Set<string>();
    for (const line of formula.where ?? []) {
      for (const name of namesIn(line.equation)) {
        expect(known.has(name), `${name} in the line of ${line.symbol}`).toBe(true);
        used.add(name);
      }
      known.add(line.symbol);
    }
    if (formula.implicit) known.add(formula.symbol);
    for (const name of namesIn(formula.equation)) {
      expect(known.has(name), `${name} in the equation`).toBe(true);
      used.add(name);
    }
    expect([...symbols, ...lineSymbols].filter((name) => !used.has(name))).toEqual([]);
  });

  it('computes what its printed equation says', () => {
    const evaluate = printed(formula);
    for (const numbers of points(formula)) {
      const result = formula.compute(numbers);
      const where = JSON.stringify(numbers);
      expect(Number.isFinite(result), where).toBe(true);
      if (formula.implicit) {
        // Zero at the result, or of opposite signs a hair to both sides of it.
        const below = evaluate(numbers, result * (1 - AGREEMENT));
        const above = evaluate(numbers, result * (1 + AGREEMENT));
        expect(evaluate(numbers, result) === 0 || below * above < 0, where).toBe(true);
      } else {
        expect(Math.abs(evaluate(numbers, result) - result), where).toBeLessThanOrEqual(AGREEMENT * Math.abs(result));
      }
    }
  });

  it('prints a substitution that can be worked by hand', () => {
    for (const numbers of points(formula).slice(0, 20)) {
      const result = formula.compute(numbers);
      const lines = substitute(formula, numbers, result);
      const scope: Numbers = formula.implicit ? { [formula.symbol]: result } : {};
      for (const line of lines.slice(0, -1)) {
        const [symbol, expression] = line.split(' = ') as [string, string];
        scope[symbol] = math.evaluate(expression, scope) as number;
      }
      const expression = (lines.at(-1) as string).split(' = ')[1] as string;
      const value = math.evaluate(formula.implicit ? expression.replace(/ at .*$/, '') : expression, scope) as number;
      // Inputs are printed with six digits, which may carry a number that is rounded over to its neighbour.
      const step = /\b(ceil|floor|round)\(/.test(formula.equation) ? 1 : 0;
      if (formula.implicit) expect(Math.abs(value)).toBeLessThan(1e-4);
      else expect(Math.abs(value - result)).toBeLessThanOrEqual(step + 1e-3 * Math.abs(result));
    }
  });
});
