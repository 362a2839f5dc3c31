import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { checkCaution, checkChoice, checkLimit } from './check-examples.ts';
import { checkAlloy, checkSources, checkTable } from './check-figures.ts';
import type { ReadRules } from './read.ts';
import { type CheckContext, Spot } from './spot.ts';

/** Everything about rules that the shape of their files does not settle; each fault points at its place. Faults of reading come first. */
export function checkRules(read: ReadRules, context: CheckContext): Diagnostic[] {
  checkSources(read, context.sources);
  for (const table of Object.values(read.tables)) checkTable(read, table);
  for (const alloy of Object.values(read.alloys)) checkAlloy(read, alloy, context);
  for (const choice of Object.values(read.choices)) {
    const spot = new Spot(read, context, 'choice', choice.id, choice.uses);
    if (!spot.usesAreSound()) continue;
    const sound = choice.rows.map((row, i) => {
      spot.origin(['rows', i], row);
      return spot.expression(['rows', i, 'when'], row.when, 'bool');
    });
    if (!sound.includes(false)) checkChoice(spot, choice);
  }
  for (const limit of Object.values(read.limits)) {
    const spot = new Spot(read, context, 'limit', limit.id, limit.uses);
    spot.origin([], limit);
    spot.pointsAt(limit.at);
    if (!spot.usesAreSound()) continue;
    spot.template(['message'], limit.message);
    spot.template(['fix'], limit.fix);
    const sound = [spot.expression(['when'], limit.when, 'bool'), spot.expression(['require'], limit.require, 'bool')];
    if (!sound.includes(false)) checkLimit(spot, limit);
  }
  for (const caution of Object.values(read.cautions)) {
    const spot = new Spot(read, context, 'caution', caution.id, caution.uses);
    spot.origin([], caution);
    if (spot.usesAreSound() && spot.expression(['when'], caution.when, 'bool')) checkCaution(spot, caution);
  }
  return sortDiagnostics([...read.diagnostics, ...read.faults.list]);
}
