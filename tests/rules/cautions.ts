import { readRules } from '../../.build/rulepack.ts';
import { collectCautions } from '../../src/engine/cautions.ts';
import { type Case, Ledger } from '../../src/engine/ledger.ts';
import { wordOf } from '../../src/engine/vocabulary/index.ts';
import { Traced } from '../../src/kernel/traced.ts';
import { compileRulebook } from '../../src/rulebook/compile.ts';
import type { Caution } from '../../src/rulebook/types.ts';

/** Cautions and substance limits, with the alloys that they speak of, compiled as the build does it. */
const OURS = /^(cautions\/|limits\/substances\/|alloys\/|sources\.yaml$)/;
const files = readRules(new URL('../../rules', import.meta.url).pathname).filter((file) => OURS.test(file.name));
export const { rulebook, diagnostics } = compileRulebook(files, wordOf);

export function caution(id: string): Caution {
  const found = rulebook.cautions[id];
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}

export const FAMILIES = ['zinc', 'zinc-aluminium', 'aluminium', 'magnesium', 'copper', 'lead', 'tin'] as const;

export interface Situation {
  readonly family: string;
  readonly kind?: string;
  readonly medium?: string;
  readonly vent?: string;
  readonly markets?: string;
  readonly use?: string;
  readonly clampUse?: number;
  readonly pressure?: number;
  readonly pulls?: number;
  readonly inserts?: number;
  readonly lead?: number;
}

/** What a plan in this situation prints, through the same code that a plan goes through; plain low-stress values where none is said. */
export function shown(situation: Situation): Set<string> {
  const ledger = new Ledger({ part: { pinned: new Map() }, rulebook } as unknown as Case);
  const text = (id: string, value: string): unknown => ledger.texts.set(id, value);
  text('alloy.family', situation.family);
  text('machine.kind', situation.kind ?? (['zinc', 'lead', 'tin'].includes(situation.family) ? 'hot-chamber' : 'cold-chamber'));
  text('vent.kind', situation.vent ?? 'plain');
  text('cooling.medium', situation.medium ?? (['magnesium', 'copper'].includes(situation.family) ? 'oil' : 'water'));
  text('quality.markets', situation.markets ?? '');
  text('quality.use', situation.use ?? 'general');
  const from = { note: 'given by the test', status: 'practice' } as const;
  ledger.put(Traced.assumption('clamp.use', situation.clampUse ?? 75, '%', from));
  ledger.put(Traced.assumption('intensification.standing-pressure', situation.pressure ?? 20, 'MPa', from));
  ledger.put(Traced.assumption('parting.core-pulls', situation.pulls ?? 0, '1', from));
  ledger.put(Traced.assumption('parting.inserts', situation.inserts ?? 0, '1', from));
  if (situation.lead !== undefined) ledger.put(Traced.assumption('alloy.lead-greatest', situation.lead, '%', from));
  return new Set(collectCautions(ledger).map((entry) => entry.id));
}
