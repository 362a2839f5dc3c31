import { Traced } from '../../../kernel/traced.ts';
import { boxExtent } from '../../../physics/parting.ts';
import type { Ledger } from '../../ledger.ts';
import { type Cores, coresFor } from './cores.ts';
import { degreesOff, type Feature, type Vector } from './directions.ts';

export type AxisName = 'x' | 'y' | 'z';
export const AXES: readonly { readonly text: AxisName; readonly vector: Vector }[] = [
  { text: 'x', vector: [1, 0, 0] },
  { text: 'y', vector: [0, 1, 0] },
  { text: 'z', vector: [0, 0, 1] },
];

/** A die opening that was tried: its axis, the cores it asks for, its depth of draw and, where given, its area. */
export interface Opening {
  readonly text: string;
  readonly vector: Vector;
  /** Set when the opening is an axis of the envelope. */
  readonly axis: AxisName | undefined;
  readonly cores: Cores;
  readonly depth: Traced<'mm'>;
  readonly area: Traced<'cm2'> | undefined;
}

/** Tries the axes of the envelope and, if the part file names one that is none of them, its vector; files what each asks for. */
export function tryOpenings(ledger: Ledger, features: readonly Feature[], asked: { readonly text: string; readonly vector: Vector } | undefined): Opening[] {
  const along = ledger.value('parting.along');
  const oblique = asked !== undefined && AXES.every(({ vector }) => degreesOff(asked.vector, vector) > along.value);
  const list = oblique ? [...AXES, { text: asked.text, vector: asked.vector }] : AXES;
  return list.map(({ text, vector }) => {
    const axis = AXES.find((candidate) => candidate.text === text)?.text;
    const cores = coresFor(ledger, features, vector);
    const parents = [along, ledger.value('parting.slide-reach')];
    const count = (id: 'parting.core-pulls-tried' | 'parting.unreachable-tried', number: number, note: string): void => {
      ledger.put(Traced.choice(`${id}[${text}]`, number, '1', { note, status: 'derived', parents }));
    };
    count('parting.core-pulls-tried', cores.slides.length, cores.slides.map((slide) => `${slide.text}: ${names(slide.features)}`).join('; ') || 'no slide');
    count('parting.unreachable-tried', cores.unreachable.length, names(cores.unreachable) || 'none');
    const depth = depthAlong(ledger, text, vector, axis);
    const given = axis === undefined ? undefined : ledger.maybe(`part.projected-area-${axis}`);
    const area = given === undefined ? undefined : ledger.put(given.as(`parting.area-tried[${text}]`));
    return { text, vector, axis, cores, depth, area };
  });
}

/** The direction of the die opening that was decided. */
export function openingVector(ledger: Ledger): Vector {
  const opening = ledger.text('parting.die-opening');
  const { dieOpening } = ledger.part.geometry;
  return AXES.find(({ text }) => text === opening)?.vector ?? (dieOpening === 'auto' ? [0, 0, 1] : dieOpening.vector);
}

export function names(features: readonly Feature[]): string {
  return features.map((feature) => feature.id).join(', ');
}

function depthAlong(ledger: Ledger, text: string, vector: Vector, axis: AxisName | undefined): Traced<'mm'> {
  if (axis !== undefined) return ledger.put(ledger.value(`part.envelope-${axis}`).as(`parting.depth-tried[${text}]`));
  return ledger.put(extentAlong(ledger, text, vector).as(`parting.depth-tried[${text}]`));
}

/** Size of the envelope along a direction that is none of its axes, filed under `item`. */
export function extentAlong(ledger: Ledger, item: string, vector: Vector): Traced<'mm'> {
  const cosine = (axis: AxisName, index: 0 | 1 | 2): Traced<'1'> =>
    ledger.put(Traced.choice(`parting.cosine-${axis}[${item}]`, vector[index], '1', { note: 'from the direction in the part file', status: 'derived' }));
  return ledger.apply(
    boxExtent,
    {
      envelope_x: ledger.value('part.envelope-x'),
      envelope_y: ledger.value('part.envelope-y'),
      envelope_z: ledger.value('part.envelope-z'),
      cosine_x: cosine('x', 0),
      cosine_y: cosine('y', 1),
      cosine_z: cosine('z', 2),
    },
    { item },
  );
}
