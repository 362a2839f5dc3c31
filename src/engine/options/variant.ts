import type { Diagnostic } from '../../kernel/diagnostic.ts';
import { allFindings, type Plan } from '../plan.ts';
import type { Variant } from './options.ts';

/** The plan of a part, or of a die with its parts, as a line among others. */
export function variantOf(plan: Plan): Variant {
  const { alloy, plant, decisions, values, texts } = plan;
  const findings = allFindings(plan);
  const number = (id: string): number | undefined => values.get(id)?.value;
  const given = {
    kind: decisions.get('machine.kind')?.value,
    machine: decisions.get('machine.model')?.value,
    cavities: number('machine.cavities'),
    plunger: number('machine.plunger'),
    mass: number('part.mass'),
    cycle: number('cycle.time'),
    goodParts: number('cycle.good-parts'),
    lockingForce: number('clamp.locking-force'),
    cost: number('cost.per-part'),
    currency: texts.get('cost.currency'),
  };
  const errors = findings.filter(({ severity }) => severity === 'error');
  return {
    alloy: alloy.id,
    plant: plant.name,
    ...(Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as Partial<Variant>),
    errors: [...new Set(errors.map(({ code }) => code))],
    warnings: findings.filter(({ severity }) => severity === 'warning').length,
    lost: errors[0]?.message ?? '',
  };
}

/** What there is to say of a variant that cannot be planned. */
export function lostVariant(alloy: string, plant: string, diagnostics: readonly Diagnostic[]): Variant {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  return { alloy, plant, errors: [...new Set(errors.map(({ code }) => code))], warnings: 0, lost: errors[0]?.message ?? 'no plan' };
}
