import type { Traced } from '../../kernel/traced.ts';
import { castingSurface } from '../../physics/heat-face.ts';
import type { DieEntry, PartSpec, Pin } from '../../spec/index.ts';
import type { Case, Member } from '../case.ts';
import { Ledger } from '../ledger.ts';
import type { Recorded } from '../recorded.ts';
import { workFeatures } from '../steps/cost/lines.ts';
import { designStep } from '../steps/design/index.ts';
import { type PlacedSlide, placedSlides } from '../steps/die/slides.ts';
import { fillStep } from '../steps/fill.ts';
import { fileGiven } from '../steps/given.ts';
import { workPartLayout } from '../steps/machine/layout.ts';
import { machineKindStep } from '../steps/machine-kind.ts';
import { overflowStep } from '../steps/overflow.ts';
import { partingStep } from '../steps/parting/index.ts';

/** What a part is worked out to before the castings of the die are put together. */
export const MEMBER_STEPS = [machineKindStep, partingStep, designStep, fillStep, overflowStep] as const;

/** A part of the die before anything is known of the others. */
export interface Alone {
  readonly entry: DieEntry;
  readonly given: Case;
  readonly ledger: Ledger;
  /** As it lies unturned. */
  readonly slides: readonly PlacedSlide[];
}

/** Works a part out as if it were cast alone. */
export function workAlone(entry: DieEntry, given: Case): Alone {
  const ledger = workMember(given);
  // On a ledger of its own: the block of a die with this part alone is no matter here.
  const block = ledger.fork();
  block.attempt('die.steel-around', 'Steel around the casting', () => workPartLayout(block));
  const axes = { family: block.alloy.family, use: given.part.quality.use };
  block.attempt('clamp.pressure', 'Class of the metal pressure', () => block.look('clamp/pressure', 'used', axes, 'clamp.pressure'));
  block.attempt('heat.face-by-wall', 'Surface by the wall', () =>
    block.apply(castingSurface, { volume: block.value('part.volume'), wall: block.value('part.wall-nominal') }, { id: 'heat.face-by-wall' }),
  );
  block.attempt('cost.machining-features', 'Features machined', () => workFeatures(block));
  return { entry, given, ledger: block, slides: block.attempt('die.slide-room', 'Slides', () => placedSlides(block)) ?? [] };
}

/** Works a part out for the shot that it shares: its fill time is that of all. */
export function workShared({ entry, given }: Alone, fillTime: Traced<'ms'>): Member {
  const shared = { ...given, settled: new Map([[fillTime.id, fillTime as unknown as Traced]]) };
  return { id: entry.id, count: entry.count, given: shared, recorded: workMember(shared) };
}

function workMember(given: Case): Ledger {
  const ledger = new Ledger(given);
  ledger.attempt('part', 'Part data', () => fileGiven(ledger));
  for (const step of MEMBER_STEPS) ledger.attempt(step.id, step.title, () => step.work(ledger));
  return ledger;
}

/** A ledger over what a part has come to, to go on from there; findings of its own come with it. */
export function ledgerOf(member: Member, settled: ReadonlyMap<string, Traced> = new Map()): Ledger {
  const given: Case = { ...member.given, settled: new Map([...(member.given.settled ?? []), ...settled]) };
  const { recorded } = member;
  return recorded instanceof Ledger ? recorded.continuedWith(given) : new Ledger(given, recorded as Recorded);
}

/** Pins of a part that a die of several parts has its own say in are set aside; they come back in the list. */
export function withoutPins(part: PartSpec, isSetAside: (id: string) => boolean): { readonly part: PartSpec; readonly aside: readonly Pin[] } {
  const aside = [...part.pinned.values()].filter(({ id }) => isSetAside(id));
  if (aside.length === 0) return { part, aside };
  return { part: { ...part, pinned: new Map([...part.pinned].filter(([id]) => !isSetAside(id))) }, aside };
}
