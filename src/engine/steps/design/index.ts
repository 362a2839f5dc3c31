import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { reviewCertificate } from './certificate.ts';
import { reviewDetails } from './details.ts';
import { reviewDraft } from './draft.ts';
import { reviewHoleDepths, reviewHoles } from './holes.ts';
import { show } from './show.ts';
import { reviewShrink } from './shrink.ts';
import { fileTolerances, reviewTolerances } from './tolerances.ts';
import { reviewWalls } from './walls.ts';

/** Each part stands by itself, so that one missing figure does not lose the rest of the review. */
function work(ledger: Ledger): void {
  const parts: readonly (readonly [id: string, title: string, review: (ledger: Ledger) => void])[] = [
    ['tolerance.linear', 'Linear tolerances', fileTolerances],
    ['hole.depth', 'Depth of holes', reviewHoleDepths],
    ['draft.angle', 'Draft', reviewDraft],
    ['wall.least', 'Walls', reviewWalls],
    ['hole.making', 'Holes', reviewHoles],
    ['rib.height', 'Ribs, fillets, inserts and machined faces', reviewDetails],
    ['tolerance.verdict', 'Tolerances', reviewTolerances],
    ['shrink.allowance', 'Shrink', reviewShrink],
    ['certificate', 'Composition of the melt', reviewCertificate],
  ];
  for (const [id, title, review] of parts) ledger.attempt(id, title, () => review(ledger));
}

/** The design review: what the drawing asks against what die casting gives. */
export const designStep: Step = { id: 'design', title: 'Design review', work, show };
