import { weakest } from '../kernel/status.ts';
import { bind } from './bind.ts';
import { evaluated } from './evaluated.ts';
import type { Ledger } from './ledger.ts';
import type { PlannedCaution } from './plan.ts';
import { titleOf } from './step.ts';

/** The cautions whose trigger holds for this plan, in the order of the rule files. */
export function collectCautions(ledger: Ledger): PlannedCaution[] {
  const list: PlannedCaution[] = [];
  for (const caution of Object.values(ledger.rulebook.cautions)) {
    const bound = bind(ledger, caution.uses);
    // With the values that are known the trigger may be decided although others are missing.
    const triggered = evaluated(ledger.rulebook, caution.when, bound.values);
    if (triggered === undefined && bound.missing.length > 0)
      ledger.leaveUnchecked({ id: caution.id, title: `Caution: ${caution.title}`, missing: `not known: ${bound.missing.map(titleOf).join(', ')}` });
    if (triggered !== true) continue;
    list.push({
      id: caution.id,
      title: caution.title,
      text: caution.text,
      defer: caution.defer,
      // What stands in every plan hangs on no decision.
      because: caution.when === 'true' ? [] : caution.uses.map((use) => use.id),
      status: weakest(caution.status),
      source: caution.source,
      ...(caution.house === undefined ? {} : { house: caution.house }),
    });
  }
  return list;
}
