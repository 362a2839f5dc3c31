import { formatNumber } from '../kernel/format.ts';
import type { Plan } from './plan.ts';

/** A plan, or what is kept of one, in the alloy that the mass on the drawing is in. */
interface InAlloy {
  readonly alloy: { readonly id: string };
  readonly values: { readonly get: (id: string) => { readonly value: number } | undefined };
}

/**
 * A mass on the drawing is that of the alloy before. The shape stays when the alloy changes, so its mass must follow the
 * density; otherwise a light alloy would come out as a larger part. Undefined where no mass is given, or it was set on purpose.
 */
export function otherMass(before: InAlloy, after: Plan, set: readonly string[]): { readonly text: string; readonly remark: string } | undefined {
  const mass = after.values.get('part.mass');
  const [was, is] = [before.values.get('alloy.density')?.value, after.values.get('alloy.density')?.value];
  const asked = set.some((setting) => /^\s*geometry(\.mass)?\s*=/.test(setting));
  if (mass?.kind !== 'input' || mass.written === undefined || was === undefined || is === undefined || before.alloy.id === after.alloy.id || asked)
    return undefined;
  const [, number, unit] = /^\s*([\d.]+(?:[eE][+-]?\d+)?)(.*)$/s.exec(mass.written) ?? [];
  if (number === undefined || unit === undefined) return undefined;
  const weight = (Number(number) * is) / was;
  const rounded = `${formatNumber(weight)}${unit}`;
  const text = `${Number(weight.toPrecision(6))}${unit}`;
  return {
    text,
    remark: `The mass in the file, ${mass.written}, is that of ${before.alloy.id}; the same shape weighs ${rounded} in ${after.alloy.id}, and that was planned with.`,
  };
}
