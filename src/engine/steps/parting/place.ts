import { Traced } from '../../../kernel/traced.ts';
import { coreFace, coreSurface, undercutSurface } from '../../../physics/slide-force.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { degreesOff, dot, type Feature } from './directions.ts';
import type { Opening } from './openings.ts';

/** Decides for each hole and undercut how it is made free, and files the faces and surfaces of its cores. */
export function placeFeatures(ledger: Ledger, features: readonly Feature[], opening: Opening): void {
  const along = ledger.value('parting.along');
  for (const feature of features) {
    const note = `between ${feature.text} and the die opening ${opening.text}`;
    ledger.put(
      Traced.choice(`parting.${feature.kind}-off-opening[${feature.id}]`, degreesOff(feature.direction, opening.vector), 'deg', { note, status: 'derived' }),
    );
    choose(ledger, `parting.${feature.kind}-place`, feature.id);
    if (feature.kind === 'hole') {
      const diameter = ledger.value('hole.diameter', feature.id);
      const count = ledger.value('hole.count', feature.id);
      ledger.apply(coreFace, { diameter, count }, { id: 'parting.hole-face', item: feature.id });
      ledger.apply(coreSurface, { diameter, depth: ledger.value('hole.depth', feature.id), count }, { id: 'parting.hole-surface', item: feature.id });
    } else {
      const face_area = ledger.value('undercut.face-area', feature.id);
      ledger.apply(undercutSurface, { face_area, depth: ledger.value('undercut.depth', feature.id) }, { id: 'parting.undercut-surface', item: feature.id });
    }
  }
  chooseHalves(ledger, opening, along);
}

/** The half that more core surface grips keeps the casting and must eject it; fixed cores of through holes go there too. */
function chooseHalves(ledger: Ledger, opening: Opening, along: Traced<'deg'>): void {
  const plusSide = (feature: Feature): boolean => dot(feature.direction, opening.vector) > 0;
  const decisive = opening.cores.fixed.filter((feature) => !feature.through);
  const grip = (id: 'parting.grip-plus' | 'parting.grip-minus', features: readonly Feature[]): void => {
    const terms = features.map((feature) => coreSurfaceOf(ledger, feature));
    if (terms.length === 0) ledger.put(Traced.choice(id, 0, 'cm2', { note: 'no fixed core stands there', status: 'derived', parents: [along] }));
    else ledger.put(sumOf(id, 'Core surface on one side', 'cm2', terms));
  };
  grip('parting.grip-plus', decisive.filter(plusSide));
  grip(
    'parting.grip-minus',
    decisive.filter((feature) => !plusSide(feature)),
  );
  const ejectorSide = choose(ledger, 'parting.ejector-side').value;
  for (const feature of opening.cores.fixed) {
    const inEjector = feature.through || plusSide(feature) === (ejectorSide === 'plus side');
    ledger.setText(`parting.${feature.kind}-core`, inEjector ? 'ejector half' : 'cover half', { item: feature.id });
  }
  for (const feature of opening.cores.unreachable) ledger.setText(`parting.${feature.kind}-core`, 'none', { item: feature.id });
}

export function coreSurfaceOf(ledger: Ledger, feature: Feature): Traced<'cm2'> {
  return feature.kind === 'hole' ? ledger.value('parting.hole-surface', feature.id) : ledger.value('parting.undercut-surface', feature.id);
}
