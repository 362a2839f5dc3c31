/** A group of what a plan decides or works out, and the ids that belong to it, with those of their items. */
export interface Consequence {
  readonly id: string;
  readonly title: string;
  readonly ids: readonly string[];
}

/**
 * What changes in a plan, in the order of what it means to a foundry: the machine first, then the die, then how it is run, then
 * what it costs. Whether the part can be cast at all stands before all of these, cautions after them.
 */
export const CONSEQUENCES: readonly Consequence[] = [
  { id: 'kind', title: 'Kind of machine', ids: ['machine.kind'] },
  { id: 'machine', title: 'Machine', ids: ['machine.model', 'machine.locking-force', 'clamp.locking-force', 'clamp.use', 'clamp.pressure-reached'] },
  { id: 'cavities', title: 'Cavities', ids: ['machine.cavities'] },
  {
    id: 'steel',
    title: 'Die steel and life',
    ids: ['die.steel-group', 'die.cavity-steel', 'die.steel-grade', 'die.component-steel', 'die.hardness', 'die.life', 'die.sets'],
  },
  {
    id: 'cores',
    title: 'Cores, holes and draft',
    ids: [
      'parting.die-opening',
      'parting.core-pulls',
      'parting.hole-place',
      'parting.undercut-place',
      'parting.slide-drive',
      'parting.ejector-side',
      'slide.pulling-force',
      'hole.making',
      'hole.reach',
      'draft.least-inside',
      'draft.least-outside',
      'draft.hole-angle',
    ],
  },
  {
    id: 'tolerance',
    title: 'Tolerances and shrinkage',
    ids: ['tolerance.verdict', 'tolerance.hole-verdict', 'shrink.allowance', 'shrink.cavity-dimension', 'tolerance.plus-standard', 'tolerance.hole-standard'],
  },
  {
    id: 'gate',
    title: 'Gates and runner',
    ids: ['gate.area', 'gate.velocity', 'gate.thickness', 'gate.width', 'gate.count', 'runner.area', 'runner.gate-feed', 'runner.total-volume'],
  },
  { id: 'vent', title: 'Vents', ids: ['vent.kind', 'vent.vacuum', 'vent.area', 'vent.depth', 'vent.width'] },
  { id: 'overflow', title: 'Overflows', ids: ['overflow.volume', 'overflow.gate-area', 'overflow.number'] },
  {
    id: 'shot',
    title: 'Plunger and shot',
    ids: [
      'machine.plunger',
      'shot.mass',
      'fill.time',
      'fill.longest-time',
      'sleeve.fill',
      'sleeve.fast-speed',
      'pot.plunger-speed',
      'slow-shot.speed',
      'pq2.place',
      'pq2.remedy',
      'fill.die-temperature',
      'alloy.casting-temperature',
    ],
  },
  {
    id: 'cycle',
    title: 'Cycle',
    ids: [
      'cycle.governs',
      'solidification.governs',
      'cooling.dwell',
      'cycle.spray',
      'cycle.time',
      'cycle.shots',
      'cooling.medium',
      'cooling.unit',
      'cooling.lines',
      'cooling.core',
    ],
  },
  { id: 'ejection', title: 'Ejection', ids: ['ejection.force', 'ejection.pins', 'ejection.pins-by', 'ejection.return'] },
  {
    id: 'finish',
    title: 'Finishing',
    ids: [
      'finish.trimming',
      'finish.press-model',
      'finish.press',
      'finish.cooling',
      'finish.heat-treatment',
      'finish.threading',
      'finish.impregnation',
      'porosity.need',
    ],
  },
  { id: 'furnace', title: 'Furnaces', ids: ['furnace.holding', 'furnace.melting', 'furnace.melted'] },
  { id: 'hours', title: 'Machine hours', ids: ['cycle.hours', 'cycle.shots-year'] },
  {
    id: 'cost',
    title: 'Mass and cost',
    ids: ['part.mass', 'metal.new-per-part', 'metal.yield', 'cost.metal', 'cost.machine', 'cost.die', 'cost.set', 'cost.per-part', 'cost.per-year'],
  },
];

/** The group of an id (`gate.area`, `hole.making[H1]`), and its place in it; undefined for what belongs to none. */
export function consequenceOf(id: string): { readonly group: number; readonly place: number } | undefined {
  return PLACES.get(id.endsWith(']') ? id.slice(0, id.indexOf('[')) : id);
}

const PLACES = new Map(CONSEQUENCES.flatMap(({ ids }, group) => ids.map((id, place) => [id, { group, place }] as const)));
