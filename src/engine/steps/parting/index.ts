import { Traced } from '../../../kernel/traced.ts';
import { openingStroke } from '../../../physics/die.ts';
import { boxPerimeter } from '../../../physics/parting.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { hydraulicSlides } from '../cycle/path.ts';
import { askedOpening, chooseOpening, fileShape } from './choice.ts';
import { featuresOf } from './directions.ts';
import { names, type Opening, tryOpenings } from './openings.ts';
import { placeFeatures } from './place.ts';
import { show } from './show.ts';
import { fileSlides } from './slides.ts';

function work(ledger: Ledger): void {
  ledger.look('parting/direction', 'along', {}, 'parting.along');
  ledger.look('parting/direction', 'reach', {}, 'parting.slide-reach');
  ledger.look('parting/direction', 'sides', {}, 'parting.sides');
  const features = featuresOf(ledger.part);
  const asked = askedOpening(ledger);
  const tried = tryOpenings(ledger, features, asked);
  const opening = chooseOpening(ledger, tried, asked);
  fileShape(ledger, opening);
  filePartingLine(ledger);
  ledger.apply(openingStroke, { depth: ledger.value('part.depth') }, { id: 'parting.opening-need' });
  placeFeatures(ledger, features, opening);
  fileCount(ledger, opening);
  fileSlides(ledger, opening);
  const hydraulic = hydraulicSlides(ledger);
  ledger.put(Traced.choice('parting.hydraulic-cores', hydraulic.length, '1', { note: hydraulic.join(', ') || 'none', status: 'derived' }));
  ledger.put(Traced.choice('parting.inserts', ledger.part.inserts.length, '1', { note: 'entries of the part file', status: 'source' }));
}

/** The length given, or the outline of the envelope in its place. */
function filePartingLine(ledger: Ledger): void {
  const perimeter = ledger.apply(boxPerimeter, { side_a: ledger.value('part.side-a'), side_b: ledger.value('part.side-b') });
  if (ledger.maybe('part.parting-line') !== undefined) return;
  ledger.assume('part.parting-line', perimeter.value, 'mm', {
    note: 'the part gives no parting line; the outline of the envelope is taken, one plane and no steps',
    status: 'practice',
    parents: [perimeter],
  });
}

/** Core pulls are slides; a pinned count is kept and judged against the slides worked out. */
function fileCount(ledger: Ledger, opening: Opening): void {
  const { slides, unreachable } = opening.cores;
  const parents = [ledger.value('parting.core-pulls-tried', opening.text)];
  const note = slides.map((slide, index) => `S${index + 1}: ${names(slide.features)}`).join('; ') || 'no slide';
  ledger.put(Traced.choice('parting.slides', slides.length, '1', { note, status: 'derived', parents }));
  const count = ledger.put(Traced.choice('parting.core-pulls', slides.length, '1', { note, status: 'derived', parents }));
  ledger.put(Traced.choice('parting.unreachable', unreachable.length, '1', { note: names(unreachable) || 'none', status: 'derived' }));
  const pinned = count.kind === 'pinned';
  ledger.record({
    id: 'parting.core-pulls',
    title: 'Core pulls',
    value: String(count.value),
    because: pinned
      ? `pinned by the engineer; the holes and undercuts ask for ${slides.length} (${note})`
      : slides.length === 0
        ? 'no hole or undercut listed runs off the die opening, or none that a slide could free'
        : 'one slide for each direction off the die opening and each side that it leaves on; a through hole takes a side that has a slide anyway',
    kind: pinned ? 'pinned' : 'choice',
    status: count.status,
    source: pinned ? ['PART'] : ['DYNACAST-SIMPLIFY'],
    parents: ['parting.core-pulls-tried', 'parting.unreachable-tried'].map((id) => `${id}[${opening.text}]`),
    alternatives: [],
    ...(count.at === undefined ? {} : { at: count.at }),
  });
}

/** Die opening, cores and slides. */
export const partingStep: Step = { id: 'parting', title: 'Parting, cores and slides', work, show };
