import type { Traced } from '../../../kernel/traced.ts';
import { draftAngle, holeDraftAngle } from '../../../physics/draft.ts';
import { pullingForce } from '../../../physics/slide-force.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';
import { draftConstant, draftFactor } from '../design/draft-constants.ts';
import type { SlideGroup } from './cores.ts';

/** Grip of the casting on cores, high end: what a core pull must overcome. */
export function fileGrip(ledger: Ledger): void {
  const { family } = ledger.alloy;
  const pressure = lookQuietly(ledger, 'slide/gripping-pressure', 'greatest', { family }, 'slide.grip-pressure', { title: 'Core pulling force' });
  if (pressure !== undefined) ledger.look('slide/gripping-pressure', 'friction_greatest', { family }, 'slide.grip-friction');
}

/** Pulling force of a slide, with the standard draft of its deepest core: the deepest has the least draft. */
export function filePullingForce(ledger: Ledger, slide: SlideGroup, item: string): void {
  const draft = ledger.attempt(`slide.draft[${item}]`, `Core draft, ${item}`, () => fileDraft(ledger, slide, item));
  const pressure = ledger.maybe('slide.grip-pressure');
  const friction = ledger.maybe('slide.grip-friction');
  if (draft === undefined || pressure === undefined || friction === undefined) return;
  ledger.attempt(`slide.pulling-force[${item}]`, `Core pulling force, ${item}`, () =>
    ledger.apply(pullingForce, { surface: ledger.value('slide.core-surface', item), pressure, friction, draft }, { item }),
  );
}

/** The die maker wants it whether or not a gripping pressure of the alloy is published. */
function fileDraft(ledger: Ledger, slide: SlideGroup, item: string): Traced<'deg'> {
  const round = slide.features.some((feature) => feature.kind === 'hole');
  const length = ledger.value('slide.depth', item);
  const draftArguments = { length, constant: draftConstant(ledger, round ? 'hole' : 'inside'), factor: draftFactor(ledger) };
  const as = { id: 'slide.draft', item } as const;
  return round ? ledger.apply(holeDraftAngle, draftArguments, as) : ledger.apply(draftAngle, draftArguments, as);
}
