import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { Plan } from '../../../src/index.ts';
import { fileOf, METRIC, made, pinsOf } from './made.ts';
import { at, planOf, ready } from './plans.ts';
import { decided, onlyInOne, type Root, rootsOf } from './steps.ts';

beforeAll(ready);

/** Values that jump though their equation does not say so, and why that is right. */
const STEPS: readonly (readonly [RegExp, string])[] = [
  [
    /^gate\.wall-velocity-(least|greatest)$/,
    'the worksheet that is read gives velocities by classes of wall; they are held beside the velocity and do not make it',
  ],
  [/^ejection\.(pins-by-\w+|cavity-pins)$/, 'a count of pins'],
  [/^ejection\.pin-(aim-size|stout-size|size|diameter)$/, 'pins are bought in standard sizes'],
  [/^die\.plate(-least|-greatest)?$/, 'plates go by a table of thicknesses for classes of size'],
  [/^cooling\.(pressure|wall-greatest)$/, 'water above 100 degC needs a pressurised unit, which boils at another temperature'],
];
/**
 * Values that are a small difference of two large ones, so that a thousandth of an input moves them far. They are steep and must not
 * jump: the change has to vanish with the step.
 */
const DIFFERENCES: readonly (readonly [RegExp, string])[] = [
  [/^ejection\.(upright-area|core-area\[open box\])$/, 'whole surface less the faces seen along the opening'],
  [/^slow-shot\.(time-change|time-fast|acceleration-needed)$/, 'what is left of the stroke after the other phases'],
  [/^runner\.(fan-length.*|segment-length\[.*|segment-volume\[.*)$/, 'what the gate is wider than the run, and what is left of a run'],
  [/^pq2\.(flow|velocity|machine)-margin/, 'what is left between the working point and the edge of the window'],
  [/^porosity\.unfed-(low|high)$/, 'what is left of the shrinkage after the share that is fed'],
  [/^cooling\.share\[/, 'heat that the lines have to take: what is left of it after spray and surroundings'],
  [/^heat\.missing$/, 'heat that is given off less heat that is taken away'],
  [/^(clamp\.(castings-in-die|pressure-in-die|feeder-offset)|set\.offset-y)$/, 'castings above the middle less the pull of runner and biscuit below it'],
  [/^die\.overhang-/, 'size of the die less what the machine or the steel around the cavity takes'],
  [/^machine\.(reserve-\w+|margin)$/, 'what a machine has in reserve: what there is less what is needed'],
];

type Node = Readonly<Record<string, unknown>> | readonly unknown[] | string;
const child = (node: unknown, key: string): unknown => (node as Record<string, unknown> | undefined)?.[key];
/** The file with the quantity at a path multiplied. */
function times(node: Node, [key, ...rest]: readonly string[], factor: number): Node {
  if (key === undefined) return (node as string).replace(/^[\d.]+/, (number) => String(Number(number) * factor));
  if (Array.isArray(node)) return node.map((one, i) => (String(i) === key ? times(one as Node, rest, factor) : one));
  return { ...(node as object), [key]: times(child(node, key) as Node, rest, factor) };
}

const PATHS = [
  'geometry.volume',
  'geometry.envelope.0',
  'geometry.envelope.1',
  'geometry.envelope.2',
  'geometry.projected_area.z',
  'geometry.surface_area',
  'geometry.wall.least',
  'geometry.wall.nominal',
  'geometry.wall.greatest',
  'holes.0.depth',
  'holes.0.diameter',
  'walls.0.height',
  'walls.0.draft',
  'undercuts.0.depth',
  'undercuts.0.face_area',
  'dimensions.0.nominal',
  'dimensions.0.tolerance',
  'ribs.0.height',
  'inserts.0.length',
].map((path) => path.split('.'));
const PINNED = ['fill.time=31 ms', 'gate.velocity=37 m/s', 'fill.die-temperature=187 degC', 'clamp.pressure=37 MPa', 'gate.thickness=1.1 mm'];

/** One input of a part at a multiple of itself; nothing where the part cannot be that. */
type Vary = (factor: number) => Plan | undefined;

function inputsOf(file: Node, pins: readonly string[]): (readonly [name: string, vary: Vary])[] {
  const tried = (make: () => Plan): Plan | undefined => {
    try {
      return make();
    } catch {
      return undefined; // A greater hole than the part, for instance: the reader refuses it.
    }
  };
  const given = PATHS.filter((path) => path.reduce<unknown>(child, file) !== undefined);
  return [
    ...given.map((path) => [path.join('.'), (factor: number) => tried(() => planOf(times(file, path, factor), pins))] as const),
    ...PINNED.map((pin) => {
      const [id = '', quantity = ''] = pin.split('=');
      return [id, (factor: number) => tried(() => planOf(file, [...pins, `pinned.${id}=${times(quantity, [], factor)}`]))] as const;
    }),
  ];
}

/** Whether the change of a value is still there when the step is a thousandth of what it was: a jump, and no steep slope. */
function jumps(vary: Vary, id: string, ends: readonly [Plan, Plan]): boolean {
  let [low, high] = [1, 1.001];
  let [a, b] = ends;
  const whole = Math.abs(at(a, id) - at(b, id));
  for (let i = 0; i < 10; i += 1) {
    const middle = (low + high) / 2;
    const plan = vary(middle);
    if (plan === undefined) return false;
    if (Math.abs(at(plan, id) - at(a, id)) > Math.abs(at(b, id) - at(plan, id))) [high, b] = [middle, plan];
    else [low, a] = [middle, plan];
  }
  return Math.abs(at(a, id) - at(b, id)) > whole / 4;
}

/** The equation of the value counts whole things or goes by standard steps, and says so. */
const isCounted = (plan: Plan, id: string): boolean => /\b(ceil|floor|round)\(/.test(plan.values.get(id)?.formula?.equation ?? '');
const listed = (list: readonly (readonly [RegExp, string])[], { id }: Root): boolean => list.some(([pattern]) => pattern.test(id));

test('a thousandth more of an input moves no value by more than 2 %, but where a decision, a step or a small difference is named', () => {
  let changes = 0;
  const faults: string[] = [];
  for (const part of fc.sample(made, { seed: 22, numRuns: 14 })) {
    const file = fileOf(part, METRIC) as Node;
    const pins = pinsOf(planOf(file));
    for (const [name, vary] of inputsOf(file, pins)) {
      const [a, b] = [vary(1), vary(1.001)];
      if (a === undefined || b === undefined) continue;
      changes += 1;
      const words = onlyInOne(decided(a), decided(b));
      for (const root of rootsOf(a, b)) {
        const what = `${root.id} goes from ${root.from} to ${root.to} when ${name} grows by a thousandth (${part.sizes.alloy})`;
        if (listed(STEPS, root) || isCounted(a, root.id)) continue;
        if (!listed(DIFFERENCES, root)) {
          if (words.length === 0) faults.push(`${what}, and nothing was decided otherwise`);
        } else if (jumps(vary, root.id, [a, b])) faults.push(`${what}: it jumps`);
      }
    }
  }
  expect(faults).toEqual([]);
  expect(changes).toBeGreaterThan(150);
}, 240_000);
