import * as z from 'zod';
import { printable } from '../kernel/printable.ts';
import { readQuantity } from '../kernel/quantity.ts';
import { didYouMean } from '../kernel/spelling.ts';

/** A direction without its place. */
export interface DirectionReading {
  readonly text: string;
  readonly vector: readonly [number, number, number];
}

const AXES: Readonly<Record<string, readonly [number, number, number]>> = {
  x: [1, 0, 0],
  y: [0, 1, 0],
  z: [0, 0, 1],
  '+x': [1, 0, 0],
  '+y': [0, 1, 0],
  '+z': [0, 0, 1],
  '-x': [-1, 0, 0],
  '-y': [0, -1, 0],
  '-z': [0, 0, -1],
};
const AXIS_WORDS = Object.keys(AXES);
const VECTOR_SCHEMA = { type: 'array', items: { type: 'number' }, minItems: 3, maxItems: 3 };

type Context = z.core.$RefinementCtx;

/** An axis of the envelope with its sign, or a vector of three bare numbers. */
export function direction(about: string) {
  return z
    .union([z.string(), z.array(z.unknown())])
    .transform((given, ctx) => readDirection(given, [], ctx) as DirectionReading)
    .meta({ description: about, examples: ['z'], anyOf: [{ enum: AXIS_WORDS }, VECTOR_SCHEMA] });
}

/** The same, or the word `auto`. */
export function directionOrAuto(about: string) {
  return z
    .union([z.string(), z.array(z.unknown())])
    .transform((given, ctx) => (given === 'auto' ? ('auto' as const) : (readDirection(given, ['auto'], ctx) as DirectionReading)))
    .meta({ description: about, examples: ['auto'], anyOf: [{ enum: ['auto', ...AXIS_WORDS] }, VECTOR_SCHEMA] });
}

function readDirection(given: string | readonly unknown[], words: readonly string[], ctx: Context): DirectionReading | undefined {
  const fail = (message: string): undefined => {
    const fix = `write ${words.map((word) => `"${word}", `).join('')}an axis with or without sign ("x", "-z"), or a vector such as "[0, 0, 1]"`;
    ctx.issues.push({ code: 'custom', input: given, message, params: { code: 'direction', fix } });
    return z.NEVER;
  };
  if (typeof given === 'string') {
    const vector = Object.hasOwn(AXES, given) ? AXES[given] : undefined;
    if (vector !== undefined) return { text: given, vector };
    return fail(`"${printable(given)}" is not a direction${given.length > 20 ? '' : didYouMean(given, [...words, ...AXIS_WORDS])}`);
  }
  if (given.length !== 3) return fail(`a vector has three numbers, but ${given.length} ${given.length === 1 ? 'stands' : 'stand'} here`);
  const numbers: number[] = [];
  for (const item of given) {
    const parsed = typeof item === 'string' && item.length <= 40 ? readQuantity(item, 'number', '1') : undefined;
    if (parsed?.ok !== true || parsed.quantity.unit !== '1') {
      return fail(`a vector has three numbers without units${typeof item === 'string' ? `, but "${printable(item)}" is none` : ''}`);
    }
    numbers.push(parsed.quantity.value);
  }
  // Divided by the greatest part first, so that neither squares overflow nor tiny vectors vanish.
  const greatest = Math.max(...numbers.map(Math.abs));
  if (greatest === 0) return fail('the vector has no length');
  const scaled = numbers.map((n) => n / greatest);
  const length = Math.hypot(...scaled);
  const [x = 0, y = 0, z_ = 0] = scaled.map((n) => n / length + 0);
  return { text: `[${given.map(String).join(', ')}]`, vector: [x, y, z_] };
}
