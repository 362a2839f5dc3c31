import { Traced } from '../../../kernel/traced.ts';
import { draftAngle } from '../../../physics/draft.ts';
import { coreDiameter, faceArea, innerOutline, meanHeight, outlineOf, uprightArea } from '../../../physics/ejection/area.ts';
import { closedShare } from '../../../physics/ejection/force-plan.ts';
import { halfOf } from '../../half.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { draftConstant, draftFactor } from '../design/draft-constants.ts';

export const EJECTOR_HALF = 'ejector half';
export const COVER_HALF = 'cover half';

/** A core that the casting shrinks onto; its sizes are filed under the item. */
export interface Core {
  readonly item: string;
  /** Ejector half, cover half, or a slide by name. */
  readonly place: string;
  /** A pin with a boss around it, the inside of the casting with its wall, or what its floor adds. */
  readonly kind: 'pin' | 'inside' | 'floor';
  /** The wall of the part file that it forms, if it is one. */
  readonly face?: string;
}

/**
 * Files the cores that the part file tells of: cored holes, undercuts, inside faces. Where it names neither an inside
 * face nor a core in the ejector half, an open box is taken for the casting.
 */
export function fileCores(ledger: Ledger): Core[] {
  const cores = [...holeCores(ledger), ...undercutCores(ledger)];
  const faces = ledger.part.walls.filter((wall) => wall.side === 'inside').map((wall) => wall.id);
  if (faces.length > 0) cores.push(...faceCores(ledger, faces));
  const own = cores.some((core) => core.place === EJECTOR_HALF);
  ledger.setText('ejection.area-origin', faces.length > 0 ? 'inside faces and cored holes' : own ? 'cored holes' : 'an open box');
  if (!own) cores.push(...boxCore(ledger));
  cores.push(...floorOver(ledger, cores));
  for (const core of cores) ledger.setText('ejection.core-place', core.place, { item: core.item });
  return cores;
}

/** A core that cannot be worked out does not lose the others. */
function attempted(ledger: Ledger, item: string, work: () => Core[]): Core[] {
  return ledger.attempt(`ejection.core-area[${item}]`, `Core of ${item}`, work) ?? [];
}

function holeCores(ledger: Ledger): Core[] {
  return ledger.part.holes.flatMap(({ id }) => attempted(ledger, `hole ${id}`, () => holeCore(ledger, id)));
}

function holeCore(ledger: Ledger, id: string): Core[] {
  const place = ledger.texts.get(`parting.hole-core[${id}]`);
  // A hole that is drilled has no core, whatever half would have held it.
  if (place === undefined || place === 'none' || ledger.texts.get(`hole.making[${id}]`) === 'drilled') return [];
  const two = ledger.maybe('hole.cores', id)?.value === 2;
  const places = two ? [EJECTOR_HALF, COVER_HALF] : [place];
  return places.map((one): Core => {
    const item = two ? `hole ${id}, ${one}` : `hole ${id}`;
    const surface = ledger.value('parting.hole-surface', id);
    ledger.put(ledger.value('hole.diameter', id).as(`ejection.core-diameter[${item}]`));
    ledger.put(ledger.value('hole.core-depth', id).as(`ejection.core-height[${item}]`));
    ledger.put(two ? halfOf(`ejection.core-area[${item}]`, 'two cores meet half way', surface) : surface.as(`ejection.core-area[${item}]`));
    ledger.put(ledger.value('draft.hole-angle', id).as(`ejection.core-draft[${item}]`));
    return { item, place: one, kind: 'pin' };
  });
}

/** The outline of an undercut is that of the square that its side surface was estimated with. */
function undercutCores(ledger: Ledger): Core[] {
  return ledger.part.undercuts.flatMap(({ id }) => attempted(ledger, `undercut ${id}`, () => undercutCore(ledger, id)));
}

function undercutCore(ledger: Ledger, id: string): Core[] {
  const place = ledger.texts.get(`parting.undercut-core[${id}]`);
  if (place === undefined || place === 'none') return [];
  const item = `undercut ${id}`;
  const height = ledger.put(ledger.value('undercut.depth', id).as(`ejection.core-height[${item}]`));
  const area = ledger.put(ledger.value('parting.undercut-surface', id).as(`ejection.core-area[${item}]`));
  const outline = ledger.apply(outlineOf, { area, height }, { id: 'ejection.core-outline', item });
  ledger.apply(coreDiameter, { outline }, { id: 'ejection.core-diameter', item });
  const draft = { length: height, constant: draftConstant(ledger, 'inside'), factor: draftFactor(ledger) };
  ledger.apply(draftAngle, draft, { id: 'ejection.core-draft', item });
  return [{ item, place, kind: 'pin' }];
}

/** Each inside face is the side of a core of its own; together they have the outline of the inside of the casting. */
function faceCores(ledger: Ledger, faces: readonly string[]): Core[] {
  const cores = ledger.put(
    Traced.choice('ejection.faces', faces.length, '1', { note: 'inside faces of the part file, each taken for a core of its own', status: 'practice' }),
  );
  const outline = fileOutline(ledger, cores);
  return faces.map((id): Core => {
    const item = `face ${id}`;
    const height = ledger.put(ledger.value('wall.height', id).as(`ejection.core-height[${item}]`));
    ledger.apply(coreDiameter, { outline }, { id: 'ejection.core-diameter', item });
    ledger.apply(faceArea, { outline, height }, { id: 'ejection.core-area', item });
    ledger.put((ledger.maybe('wall.draft', id) ?? ledger.value('draft.wall-angle', id)).as(`ejection.core-draft[${item}]`));
    return { item, place: EJECTOR_HALF, kind: 'inside', face: id };
  });
}

function fileOutline(ledger: Ledger, cores?: Traced<'1'>): Traced<'mm'> {
  return ledger.apply(innerOutline, {
    side_a: ledger.value('part.side-a'),
    side_b: ledger.value('part.side-b'),
    wall: ledger.value('part.wall-nominal'),
    cores,
  });
}

/** Nothing is said of the inside: an open box of the envelope, as far as the volume makes one; a flat plate has no inside. */
function boxCore(ledger: Ledger): Core[] {
  const outline = fileOutline(ledger);
  const box = ledger.apply(faceArea, { outline, height: ledger.value('draft.depth') }, { id: 'ejection.box-area' });
  const area = ledger.apply(uprightArea, {
    box,
    volume: ledger.value('part.volume'),
    wall: ledger.value('part.wall-nominal'),
    projected_area: ledger.value('part.projected-area'),
  });
  const item = 'open box';
  ledger.apply(coreDiameter, { outline }, { id: 'ejection.core-diameter', item });
  ledger.put(area.as(`ejection.core-area[${item}]`));
  ledger.apply(meanHeight, { area, outline }, { id: 'ejection.core-height', item });
  ledger.put(ledger.value('draft.least-inside').as(`ejection.core-draft[${item}]`));
  return [{ item, place: EJECTOR_HALF, kind: 'inside' }];
}

/** The floor over the insides: one for all, with the draft of the tallest. */
function floorOver(ledger: Ledger, cores: readonly Core[]): Core[] {
  const insides = cores.filter((core) => core.kind === 'inside');
  const height = (core: Core): number => ledger.value('ejection.core-height', core.item).value;
  const draft = (core: Core): number => ledger.value('ejection.core-draft', core.item).value;
  const tallest = [...insides].sort((a, b) => height(b) - height(a) || draft(a) - draft(b))[0];
  if (tallest === undefined || height(tallest) <= 0) return [];
  const item = 'floor';
  const outline = ledger.value('ejection.inner-outline');
  ledger.put(
    insides.length === 1
      ? outline.as(`ejection.core-outline[${item}]`)
      : sumOf(
          `ejection.core-outline[${item}]`,
          'Outline of all insides',
          'mm',
          insides.map(() => outline),
        ),
  );
  ledger.put(ledger.value('ejection.core-height', tallest.item).as(`ejection.core-height[${item}]`));
  ledger.put(ledger.value('ejection.core-draft', tallest.item).as(`ejection.core-draft[${item}]`));
  ledger.apply(closedShare, { area: ledger.value('part.projected-area'), box: ledger.value('parting.box-area') });
  return [{ item, place: EJECTOR_HALF, kind: 'floor' }];
}
