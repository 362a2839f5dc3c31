import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { fileOf, type Made, METRIC, made, pinsOf } from './made.ts';
import { at, planOf, ready } from './plans.ts';

/** A made-up part with the decisions of its plan pinned, so that a law speaks of physics and not of another machine. */
interface Settled {
  readonly part: Made;
  readonly pins: readonly string[];
}
let parts: readonly Settled[];
beforeAll(async () => {
  await ready();
  parts = fc.sample(made, { seed: 4711, numRuns: 30 }).map((part) => {
    const plan = planOf(fileOf(part, METRIC));
    const pins = [...pinsOf(plan), 'pinned.fill.die-temperature=180 degC'];
    return { part, pins: plan.values.has('sleeve.biscuit-thickness') ? [...pins, 'pinned.sleeve.biscuit-thickness=20 mm'] : pins };
  });
}, 120_000);

interface Law {
  readonly what: string;
  /** The part with less and with more of it, and what is pinned besides; nothing where the law does not speak of the part. */
  readonly pair: (settled: Settled) => readonly [Change, Change] | undefined;
  /** What has to rise with it, and what must not fall with it. */
  readonly rises?: readonly string[];
  readonly neverFalls?: readonly string[];
  readonly falls?: readonly string[];
  readonly neverRises?: readonly string[];
}
interface Change {
  readonly part?: Made;
  readonly file?: (file: Record<string, unknown>) => Record<string, unknown>;
  readonly set?: readonly string[];
}

const pin = (id: string, less: string, more: string): readonly [Change, Change] => [{ set: [`pinned.${id}=${less}`] }, { set: [`pinned.${id}=${more}`] }];
const FILL = ['pinned.fill.time=30 ms', 'pinned.gate.thickness=1 mm'];
const times = (factor: number) => (file: Record<string, unknown>) => {
  const geometry = file['geometry'] as { volume: string };
  return { ...file, geometry: { ...geometry, volume: `${Number.parseFloat(geometry.volume) * factor} cm3` } };
};
const sized = (part: Made, change: Partial<Made['sizes']>): Change => ({ part: { ...part, sizes: { ...part.sizes, ...change } } });
const firstHole = (part: Made, change: { depth?: number; diameter?: number }): Change => {
  const [hole, ...others] = part.sizes.holes;
  return sized(part, { holes: hole === undefined ? [] : [{ ...hole, ...change }, ...others] });
};

const LAWS: readonly Law[] = [
  {
    what: 'more volume of the same face',
    pair: () => [{}, { file: times(1.1) }],
    rises: ['part.mass', 'shot.mass', 'heat.per-shot', 'gate.flow-volume', 'metal.melted-per-part', 'cost.metal', 'cost.melting'],
    // Not the cycle: a fuller sleeve has less slow travel before the metal is at the gate.
    neverFalls: ['gate.area', 'cooling.dwell'],
  },
  {
    // Fill time and gate stand: a longer fill would have a smaller runner, which freezes sooner.
    what: 'a thicker nominal wall',
    pair: ({ part: { sizes }, part }) => {
      const { least, nominal, greatest } = sizes.wall;
      const thicker = sized(part, { wall: { least, nominal: nominal + 100, greatest: greatest + 100 } });
      return [{ set: FILL }, { ...thicker, file: times(nominal / (nominal + 100)), set: FILL }];
    },
    rises: ['cooling.ejection-time', 'cooling.solidification-time'],
    neverFalls: ['cooling.dwell', 'cooling.thick-time'],
  },
  {
    what: 'more draft on the walls',
    pair: ({ part }) => (part.sizes.walls.length === 0 ? undefined : [{}, { part: { ...part, drafts: part.drafts.map((draft) => draft + 50) } }]),
    neverRises: ['ejection.force', 'ejection.force-low', 'ejection.force-high', 'ejection.cavity-force'],
  },
  {
    what: 'a deeper hole',
    pair: ({ part }) => {
      const hole = part.sizes.holes[0];
      return hole === undefined || hole.kind === 'through' || hole.depth < 1250 + 625 ? undefined : [firstHole(part, { depth: hole.depth - 625 }), {}];
    },
    rises: ['die.core-bending[H1]', 'die.core-stress[H1]', 'die.core-slenderness[H1]'],
    neverFalls: ['ejection.core-force[hole H1]', 'parting.hole-surface[H1]'],
  },
  {
    what: 'a wider hole of the same depth',
    pair: ({ part }) => {
      const hole = part.sizes.holes[0];
      return hole === undefined ? undefined : [{}, firstHole(part, { diameter: hole.diameter + 625 })];
    },
    falls: ['die.core-bending[H1]', 'die.core-stress[H1]'],
  },
  {
    what: 'a hotter die',
    pair: () => pin('fill.die-temperature', '150 degC', '165 degC'),
    rises: ['fill.longest-time', 'cooling.ejection-time', 'cooling.solidification-time'],
    neverFalls: ['cooling.dwell', 'fill.time'],
  },
  { what: 'hotter metal at the gate', pair: () => pin('fill.temperature-loss', '30 K', '20 K'), rises: ['fill.longest-time'], neverFalls: ['fill.time'] },
  {
    what: 'hotter metal at the gate in the same fill',
    pair: () => pin('fill.temperature-loss', '30 K', '20 K').map((change) => ({ set: [...(change.set ?? []), ...FILL] })) as unknown as [Change, Change],
    rises: ['heat.per-shot', 'heat.casting', 'heat.rate'],
    neverFalls: ['cooling.dwell', 'cooling.ejection-time'],
  },
  {
    what: 'a faster gate',
    pair: () => pin('gate.velocity', '35 m/s', '40 m/s'),
    falls: ['gate.area', 'gate.width'],
    rises: ['gate.die-pressure', 'gate.atomisation-index'],
  },
  {
    what: 'a longer fill',
    pair: () => pin('fill.time', '30 ms', '36 ms'),
    falls: ['gate.area', 'gate.flow', 'shot.flow', 'vent.area'],
    neverRises: ['sleeve.fast-speed', 'runner.area'],
  },
  {
    what: 'a thicker gate',
    pair: () => pin('gate.thickness', '0.8 mm', '1 mm'),
    falls: ['gate.width'],
    rises: ['cooling.gate-time', 'gate.atomisation-index'],
  },
  {
    what: 'more pressure on the metal',
    pair: () => pin('clamp.pressure', '30 MPa', '36 MPa'),
    neverFalls: ['clamp.locking-force', 'clamp.opening-force', 'clamp.use', 'clamp.tie-bar-load', 'die.stream-pressure'],
  },
  {
    what: 'more cavities on the same machine',
    pair: () => pin('machine.cavities', '1', '2'),
    rises: ['clamp.projected-area', 'clamp.locking-force', 'shot.mass', 'shot.flow', 'heat.per-shot', 'cost.die', 'die.mass'],
    // Not the shot for a part: the runs to two cavities are longer.
    neverRises: ['cost.machine'],
    neverFalls: ['cycle.gross-parts', 'ejection.force'],
  },
  {
    what: 'more parts a year on the same machine',
    pair: () => [{ set: ['production.per_year=50000'] }, { set: ['production.per_year=60000'] }],
    rises: ['cycle.hours', 'cycle.shots-year', 'cost.per-year'],
    neverFalls: ['clamp.locking-force', 'cycle.time'],
    neverRises: ['clamp.locking-force', 'cycle.time'],
  },
  {
    what: 'more water in the lubricant',
    pair: () => pin('lubricant.dilution', '50', '80'),
    rises: ['lubricant.film-spray'],
    neverRises: ['lubricant.concentrate', 'lubricant.concentrate-used'],
  },
];

/** Equal to the last bits counts as equal. */
const HAIR = 1e-9;

test.each(LAWS)('$what', ({ pair, rises = [], neverFalls = [], falls = [], neverRises = [] }) => {
  const met = new Map<string, number>();
  for (const settled of parts) {
    const changes = pair(settled);
    if (changes === undefined) continue;
    const [less, more] = changes.map(({ part, file, set = [] }) => {
      const written = fileOf(part ?? settled.part, METRIC);
      const pins = settled.pins.filter((one) => !set.some((other) => other.split('=')[0] === one.split('=')[0]));
      return planOf(file === undefined ? written : file(written), [...pins, ...set]);
    }) as [ReturnType<typeof planOf>, ReturnType<typeof planOf>];
    const judge = (ids: readonly string[], holds: (a: number, b: number) => boolean): void => {
      for (const id of ids) {
        if (!less.values.has(id) || !more.values.has(id)) continue;
        met.set(id, (met.get(id) ?? 0) + 1);
        const [a, b] = [at(less, id), at(more, id)];
        if (!holds(a, b)) expect.fail(`${id} goes from ${a} to ${b}: ${JSON.stringify(settled)}`);
      }
    };
    judge(rises, (a, b) => b > a);
    judge(falls, (a, b) => b < a);
    judge(neverFalls, (a, b) => b >= a * (1 - HAIR));
    judge(neverRises, (a, b) => b <= a * (1 + HAIR));
  }
  for (const id of [...rises, ...falls, ...neverFalls, ...neverRises]) expect(met.get(id) ?? 0, `plans that have ${id}`).toBeGreaterThan(3);
});
