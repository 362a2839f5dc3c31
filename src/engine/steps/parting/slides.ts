import { printTraced, Traced } from '../../../kernel/traced.ts';
import { pinEngagement, pinLength, slideStroke } from '../../../physics/slide.ts';
import { lockAngle, pinAngleNeeded } from '../../../physics/slide-force.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import type { SlideGroup } from './cores.ts';
import { degreesOff, type Feature } from './directions.ts';
import { names, type Opening } from './openings.ts';
import { coreSurfaceOf } from './place.ts';
import { fileGrip, filePullingForce } from './pulling.ts';

/** Works out every slide of the opening chosen: stroke, drive, pin, lock, face under metal and pulling force. */
export function fileSlides(ledger: Ledger, opening: Opening): void {
  const { slides } = opening.cores;
  if (slides.length === 0) return;
  const figures = {
    clearance_used: 'slide.clearance',
    used: 'slide.pin-angle-usual',
    greatest: 'slide.pin-angle-greatest',
    lock_extra_used: 'slide.lock-extra',
    guide_ratio: 'slide.guide-ratio',
    guided_share: 'slide.guided-share',
    play_least: 'slide.play-least',
    play_greatest: 'slide.play-greatest',
    shut_off_least: 'slide.shut-off-least',
    shut_off_greatest: 'slide.shut-off-greatest',
  } as const;
  for (const [column, id] of Object.entries(figures)) ledger.look('slide/angle-pin', column, {}, id);
  fileGrip(ledger);
  slides.forEach((slide, index) => {
    const item = `S${index + 1}`;
    ledger.attempt(`slide.stroke[${item}]`, `Slide ${item}`, () => fileSlide(ledger, opening, slide, item));
  });
}

function fileSlide(ledger: Ledger, opening: Opening, slide: SlideGroup, item: string): void {
  const at = placeOfFeature(ledger, slide.features[0] as Feature);
  ledger.setText('slide.direction', slide.text, { item, at });
  ledger.setText('slide.forms', names(slide.features), { item, at });
  for (const feature of slide.features) ledger.setText(`parting.${feature.kind}-core`, `slide ${item}`, { item: feature.id });
  const rise = 90 - degreesOff(slide.direction, opening.vector);
  ledger.put(Traced.choice(`slide.rise[${item}]`, rise, 'deg', { note: 'between the travel of the slide and the parting plane', status: 'derived' }));

  const faces = slide.features.map((feature) =>
    feature.kind === 'hole' ? ledger.value('parting.hole-face', feature.id) : ledger.value('undercut.face-area', feature.id),
  );
  ledger.put(sumOf(`slide.face-area[${item}]`, 'Face area of the slide under metal', 'cm2', faces));
  ledger.put(
    sumOf(
      `slide.core-surface[${item}]`,
      'Side surface of the cores of the slide',
      'cm2',
      slide.features.map((feature) => coreSurfaceOf(ledger, feature)),
    ),
  );

  const deepest = greatest(slide.features.map((feature) => ledger.value(feature.kind === 'hole' ? 'hole.depth' : 'undercut.depth', feature.id)));
  const depth = ledger.put(deepest.as(`slide.depth[${item}]`, `deepest of ${names(slide.features)}`));
  const bosses = slide.features
    .filter((f) => f.kind === 'undercut')
    .map((f) => ledger.maybe('undercut.boss', f.id))
    .filter((b) => b !== undefined);
  const boss =
    bosses.length > 0
      ? ledger.put(greatest(bosses).as(`slide.boss[${item}]`))
      : ledger.assume('slide.boss', 0, 'mm', { note: 'the part names no boss that the slide must clear', status: 'derived' }, item);
  const stroke = ledger.apply(slideStroke, { depth, boss, clearance: ledger.value('slide.clearance') }, { item });
  ledger.apply(pinAngleNeeded, { stroke, opening: ledger.value('parting.opening-need') }, { item });
  fileDrive(ledger, stroke, item);
  filePullingForce(ledger, slide, item);
}

/** The pin, if one drives the slide, and the wedge that locks it in either case. */
function fileDrive(ledger: Ledger, stroke: Traced<'mm'>, item: string): void {
  const drive = choose(ledger, 'parting.slide-drive', item).value;
  const usual = ledger.value('slide.pin-angle-usual');
  const extra = ledger.value('slide.lock-extra');
  if (drive === 'hydraulic cylinder') {
    const note = `no pin sets it; the lock is taken as for a pin of ${printTraced(usual)}, which overstates the opening force of a flatter wedge`;
    ledger.apply(lockAngle, { pin_angle: usual, extra }, { item, note });
    return;
  }
  const needed = ledger.value('slide.pin-angle-needed', item);
  const steep = drive === 'steep angle pin' && needed.value > usual.value;
  const angle = ledger.put(
    steep ? needed.as(`slide.pin-angle[${item}]`, 'so that the opening that the part needs is enough') : usual.as(`slide.pin-angle[${item}]`),
  );
  ledger.apply(pinEngagement, { stroke, angle }, { item });
  ledger.apply(pinLength, { stroke, angle }, { item });
  ledger.apply(lockAngle, { pin_angle: angle, extra }, { item });
}

function greatest(values: readonly Traced<'mm'>[]): Traced<'mm'> {
  return values.reduce((a, b) => (b.value > a.value ? b : a));
}

function placeOfFeature(ledger: Ledger, feature: Feature) {
  const list = feature.kind === 'hole' ? ledger.part.holes : ledger.part.undercuts;
  return list.find((entry) => entry.id === feature.id)?.at;
}
