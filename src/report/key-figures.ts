import type { BoundSide } from '../engine/missed.ts';

/** A figure that stands beside a key figure; where it is a bound, which side of it is kept to, or that it is shown only where it is more. */
export type HeldAgainst = readonly [label: string, id: string, side?: BoundSide | 'where more'];

/** What the summary shows of a plan, where the plan has it: a figure, and the bounds that it is to be held against. */
export const KEY_FIGURES: readonly { readonly title: string; readonly id: string; readonly bounds: readonly HeldAgainst[]; readonly unlessNone?: true }[] = [
  {
    title: 'Locking force needed',
    id: 'clamp.locking-force',
    bounds: [
      ['rated', 'machine.locking-force', 'most'],
      ['use', 'clamp.use'],
      ['the static pressure of the fill phase asks for', 'intensification.static-force', 'where more'],
    ],
  },
  {
    title: 'Metal pressure',
    id: 'clamp.pressure-reached',
    bounds: [
      ['least of the class', 'clamp.pressure-least', 'least'],
      ['greatest of the class', 'clamp.pressure-greatest', 'most'],
      ['within reach', 'machine.metal-pressure', 'most'],
    ],
  },
  { title: 'Metal of one shot', id: 'shot.mass', bounds: [['one part', 'part.mass']] },
  { title: 'Fill time', id: 'fill.time', bounds: [['longest', 'fill.longest-time', 'most']] },
  {
    title: 'Gate velocity',
    id: 'gate.velocity',
    bounds: [
      ['least', 'gate.velocity-least', 'least'],
      ['greatest', 'gate.velocity-greatest', 'most'],
    ],
  },
  { title: 'Plunger speed of the fast shot', id: 'sleeve.fast-speed', bounds: [['to be planned at most', 'shot.speed-available', 'most']] },
  { title: 'Plunger speed', id: 'pot.plunger-speed', bounds: [['to be planned at most', 'shot.speed-available', 'most']] },
  {
    title: 'Sleeve fill',
    id: 'sleeve.fill',
    bounds: [
      ['least', 'sleeve.fill-least', 'least'],
      ['greatest', 'sleeve.fill-greatest', 'most'],
    ],
  },
  {
    title: 'Time in the die',
    id: 'cooling.dwell',
    bounds: [
      ['wall ready after', 'cooling.ejection-time', 'least'],
      ['handbooks', 'cooling.retention-least'],
      ['to', 'cooling.retention-greatest'],
    ],
  },
  {
    title: 'Cycle',
    id: 'cycle.time',
    bounds: [
      ['shots', 'cycle.shots'],
      ['held by the lines from', 'cooling.cycle-least', 'least'],
    ],
  },
  {
    title: 'Die surface before the shot',
    id: 'heat.surface-before',
    bounds: [
      ['planned', 'fill.die-temperature'],
      ['least', 'fill.die-temperature-least', 'least'],
      ['greatest', 'fill.die-temperature-greatest', 'most'],
    ],
  },
  {
    title: 'Ejection force',
    id: 'ejection.force',
    bounds: [
      ['low', 'ejection.force-low'],
      ['high', 'ejection.force-high'],
      ['machine', 'machine.ejector-force', 'most'],
    ],
  },
  {
    title: 'Die height',
    id: 'die.height',
    bounds: [
      ['least', 'machine.die-height-least', 'least'],
      ['greatest', 'machine.die-height-greatest', 'most'],
      ['mass', 'die.mass'],
    ],
  },
  { title: 'Slides beyond the sides of the die', id: 'die.overhang-width', bounds: [], unlessNone: true },
  { title: 'Slides beyond top and bottom of the die', id: 'die.overhang-height', bounds: [], unlessNone: true },
  { title: 'Slides on the side of the feeder', id: 'die.feeder-slides', bounds: [], unlessNone: true },
  {
    title: 'Die life',
    id: 'die.life',
    bounds: [
      ['shots of the part', 'die.shots-needed'],
      ['sets', 'die.sets'],
    ],
  },
  {
    title: 'Cost of a good part, money of the plant',
    id: 'cost.per-part',
    bounds: [
      ['metal', 'cost.metal'],
      ['without dies', 'cost.without-die'],
    ],
  },
];
