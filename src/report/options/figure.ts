import type { Options } from '../../engine/options/options.ts';
import type { Chart } from '../../engine/plan.ts';

/** Cost of the best candidate of each count of cavities; undefined where fewer than two have a cost. */
export function countsFigure({ counts }: Options): Chart | undefined {
  const points = counts.flatMap(({ best }) =>
    best?.cost === undefined ? [] : [{ cavities: best.cavities, cost: best.cost, planned: best.planned, machine: best.machine }],
  );
  if (points.length < 2) return undefined;
  return {
    kind: 'figure',
    form: 'chart',
    id: 'cavities',
    title: 'Cost of a good part over the number of cavities',
    text: 'The best candidate of each count that passes every limit of an error, worked out as a plan of its own; the mark is what is planned. Between the counts there is nothing: the line is for the eye.',
    x: { title: 'Cavities', unit: '1' },
    y: { title: 'Cost of a good part, money of the plant', unit: '1' },
    areas: [],
    curves: [{ title: 'Best of each count', points: points.map(({ cavities, cost }) => [cavities, cost] as const) }],
    marks: points.filter(({ planned }) => planned).map(({ cavities, cost }) => ({ title: 'Planned', x: cavities, y: cost, values: [] })),
  };
}
