import { Traced } from '../../../kernel/traced.ts';
import { bottomDiameter, coreDepth, coreMouth, depthByRatio, edgeDistance, stockAtFoot } from '../../../physics/hole.ts';
import { linearTolerance } from '../../../physics/tolerance.ts';
import type { HoleSpec } from '../../../spec/index.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';
import { reviewThread } from './threads.ts';

/** Depths that a core of a hole's diameter reaches, before its draft is worked out. */
export function reviewHoleDepths(ledger: Ledger): void {
  const { holes } = ledger.part;
  if (holes.length === 0) return;
  lookQuietly(ledger, 'hole/least-diameter', 'diameter', { family: ledger.alloy.family }, 'hole.least-diameter', { title: 'Least cored hole' });
  ledger.look('hole/depth-ratio', 'above', {}, 'hole.ratio-above');
  ledger.look('hole/depth-ratio', 'caution', {}, 'hole.ratio-caution');
  ledger.look('hole/depth-ratio', 'greatest', {}, 'hole.ratio-greatest');
  ledger.look('hole/edge-distance', 'least', {}, 'hole.edge-share-least');
  ledger.look('hole/edge-distance', 'advised', {}, 'hole.edge-share-advised');
  for (const hole of holes) {
    ledger.attempt(`hole.greatest-depth[${hole.id}]`, `Depth of hole ${hole.id}`, () => fileDepths(ledger, hole));
  }
}

function fileDepths(ledger: Ledger, hole: HoleSpec): void {
  const item = hole.id;
  const { family } = ledger.alloy;
  const diameter = ledger.value('hole.diameter', item);
  const depth = ledger.value('hole.depth', item);
  if (diameter.value > ledger.value('hole.ratio-above').value) {
    ledger.apply(depthByRatio, { ratio: ledger.value('hole.ratio-caution'), diameter }, { id: 'hole.caution-depth', item });
    ledger.apply(depthByRatio, { ratio: ledger.value('hole.ratio-greatest'), diameter }, { id: 'hole.greatest-depth', item });
  } else {
    fileCaution(ledger, item, diameter);
    lookQuietly(ledger, 'hole/greatest-depth', 'depth', { family, diameter }, 'hole.greatest-depth', { title: `Greatest depth of hole ${item}`, item });
  }
  const greatest = ledger.maybe('hole.greatest-depth', item);
  // Two cores can meet only where both ends of the hole open along the die opening.
  const both = hole.kind === 'through' && ledger.texts.get(`parting.hole-place[${item}]`) === 'fixed core';
  const two = both && greatest !== undefined && depth.value > greatest.value && depth.value <= 2 * greatest.value;
  const note = two ? 'one core would be too long, so two fixed cores meet half way' : 'one core makes the hole';
  const cores = ledger.put(Traced.choice(`hole.cores[${item}]`, two ? 2 : 1, '1', { note, status: 'practice', parents: two ? [greatest] : [] }));
  const core = two ? ledger.apply(coreDepth, { depth, cores }, { item }) : ledger.put(depth.as(`hole.core-depth[${item}]`, note));
  ledger.setText('hole.reach', reachOf(core, ledger.maybe('hole.caution-depth', item), greatest), { item, at: hole.at });
}

/** Below the diameters of the depth table zinc has one depth for all, and aluminium and magnesium have none. */
function fileCaution(ledger: Ledger, item: string, diameter: Traced<'mm'>): void {
  const { family } = ledger.alloy;
  const below = ledger.maybe('hole.small-below') ?? ledger.lookIfAny('hole/small-diameter', 'below', { family }, 'hole.small-below');
  if (below !== undefined && diameter.value < below.value) ledger.lookIfAny('hole/small-diameter', 'depth', { family }, 'hole.caution-depth', item);
  else lookQuietly(ledger, 'hole/caution-depth', 'depth', { family, diameter }, 'hole.caution-depth', { title: `Usual depth of hole ${item}`, item });
}

function reachOf(core: Traced<'mm'>, caution: Traced<'mm'> | undefined, greatest: Traced<'mm'> | undefined): string {
  if (greatest !== undefined && core.value > greatest.value) return 'too deep';
  if (caution !== undefined) return core.value > caution.value ? 'with care' : 'usual';
  return greatest === undefined ? 'no published figure' : 'within the greatest depth';
}

/** What is left of each hole after its draft, its edge, its tolerance and thread, and how it is made. */
export function reviewHoles(ledger: Ledger): void {
  for (const hole of ledger.part.holes) {
    const item = hole.id;
    ledger.attempt(`hole.edge-least[${item}]`, `Metal beside hole ${item}`, () => {
      const depth = ledger.value('hole.depth', item);
      ledger.apply(edgeDistance, { share: ledger.value('hole.edge-share-least'), depth }, { id: 'hole.edge-least', item });
      ledger.apply(edgeDistance, { share: ledger.value('hole.edge-share-advised'), depth }, { id: 'hole.edge-advised', item });
    });
    const taper = ledger.maybe('draft.hole-taper', item);
    if (taper !== undefined) fileCore(ledger, item, taper);
    reviewThread(ledger, hole);
    reviewFit(ledger, hole);
    ledger.attempt(`hole.making[${item}]`, `Making of hole ${item}`, () => choose(ledger, 'hole.making', item));
  }
}

/** The hole that the core leaves; one that is machined has its stock at the mouth, and the draft on top of it at the bottom. */
function fileCore(ledger: Ledger, item: string, taper: Traced<'mm'>): void {
  const drawn = ledger.value('hole.diameter', item);
  const stock = stockOf(ledger, item);
  const diameter = stock === undefined ? drawn : ledger.apply(coreMouth, { diameter: drawn, stock }, { item });
  ledger.apply(bottomDiameter, { diameter, taper }, { item });
  if (stock !== undefined) ledger.apply(stockAtFoot, { stock, taper }, { item });
}

/** Stock of the machining that is listed under the name of a hole: the hole is then cut to its size and tolerance. */
const stockOf = (ledger: Ledger, item: string): Traced<'mm'> | undefined => ledger.maybe('machining.stock', item);

/** The tolerance asked on a hole against what a core holds at the mouth of the hole; draft comes on top. */
function reviewFit(ledger: Ledger, hole: HoleSpec): void {
  const item = hole.id;
  ledger.setText('tolerance.hole-verdict', stockOf(ledger, item) === undefined ? 'not asked' : 'machined', { item, at: hole.at });
  if (hole.tolerance === undefined) return;
  ledger.attempt(`tolerance.hole-verdict[${item}]`, `Tolerance of hole ${item}`, () => {
    const dimension = ledger.value('hole.diameter', item);
    const standard = { dimension, base: ledger.value('tolerance.base-standard'), step: ledger.value('tolerance.step-standard') };
    const precision = { dimension, base: ledger.value('tolerance.base-precision'), step: ledger.value('tolerance.step-precision') };
    ledger.apply(linearTolerance, standard, { id: 'tolerance.hole-standard', item });
    ledger.apply(linearTolerance, precision, { id: 'tolerance.hole-precision', item });
    if (stockOf(ledger, item) === undefined) choose(ledger, 'tolerance.hole-verdict', item);
  });
}
