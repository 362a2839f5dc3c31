import type { Traced } from '../../../kernel/traced.ts';
import { draftAngle, draftTaper, holeDraftAngle } from '../../../physics/draft.ts';
import type { WallSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import { absoluteTaper, draftConstant, draftFactor, precisionConstant } from './draft-constants.ts';

/** Draft of every wall and hole, at both levels, and the least draft of the deepest face of the part. */
export function reviewDraft(ledger: Ledger): void {
  ledger.attempt('draft.absolute-least', 'Least taper', () => absoluteTaper(ledger));
  ledger.attempt('draft.least-inside', 'Least draft', () => {
    const length = fileDepth(ledger);
    const factor = draftFactor(ledger);
    ledger.apply(draftAngle, { length, constant: draftConstant(ledger, 'inside'), factor }, { id: 'draft.least-inside' });
    ledger.apply(draftAngle, { length, constant: draftConstant(ledger, 'outside'), factor }, { id: 'draft.least-outside' });
  });
  for (const wall of ledger.part.walls) reviewWall(ledger, wall);
  for (const hole of ledger.part.holes) reviewHole(ledger, hole.id);
}

/** The deepest wall listed, else the depth of the part: the deeper a face, the less draft it needs. */
function fileDepth(ledger: Ledger): Traced<'mm'> {
  const heights = ledger.part.walls.map((wall) => ledger.value('wall.height', wall.id));
  if (heights.length === 0) return ledger.put(ledger.value('part.depth').as('draft.depth', 'no wall is listed, so the depth of the part'));
  return ledger.put(heights.reduce((a, b) => (b.value > a.value ? b : a)).as('draft.depth', 'deepest wall listed'));
}

function reviewWall(ledger: Ledger, wall: WallSpec): void {
  const item = wall.id;
  ledger.attempt(`draft.wall-angle[${item}]`, `Draft of wall ${item}`, () => {
    const length = ledger.value('wall.height', item);
    const standard = { length, constant: draftConstant(ledger, wall.side), factor: draftFactor(ledger) };
    ledger.apply(draftAngle, standard, { id: 'draft.wall-angle', item });
    ledger.apply(draftTaper, standard, { id: 'draft.wall-taper', item });
    const precision = { length, constant: precisionConstant(ledger, wall.side), factor: draftFactor(ledger, 'precision') };
    ledger.apply(draftAngle, precision, { id: 'draft.wall-precision', item });
  });
}

/** Draft of a cored hole: on the diameter and per side. Nothing for a hole that is drilled. */
function reviewHole(ledger: Ledger, item: string): void {
  if (ledger.texts.get(`parting.hole-place[${item}]`) === 'drilled') return;
  ledger.attempt(`draft.hole-angle[${item}]`, `Draft of hole ${item}`, () => {
    const length = ledger.value('hole.core-depth', item);
    const standard = { length, constant: draftConstant(ledger, 'hole'), factor: draftFactor(ledger) };
    ledger.apply(holeDraftAngle, standard, { id: 'draft.hole-angle', item });
    ledger.apply(draftTaper, standard, { id: 'draft.hole-taper', item });
  });
  if (precisionKnown(ledger)) {
    const constant = precisionConstant(ledger, 'hole');
    const factor = draftFactor(ledger, 'precision');
    ledger.attempt(`draft.hole-precision[${item}]`, `Draft of hole ${item}, precision level`, () =>
      ledger.apply(holeDraftAngle, { length: ledger.value('hole.core-depth', item), constant, factor }, { id: 'draft.hole-precision', item }),
    );
  }
}

/** No constant is known for holes in copper alloys at the precision level. */
function precisionKnown(ledger: Ledger): boolean {
  const table = ledger.rulebook.tables['draft/constant'];
  const row = table?.rows.find(({ at }) => at['family'] === ledger.alloy.family && at['surface'] === 'hole' && at['level'] === 'precision');
  return row === undefined || row.cells['constant'] != null;
}
