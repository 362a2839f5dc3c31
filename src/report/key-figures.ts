/** What the summary shows of a plan, where the plan has it: a figure, and the bounds that it is to be held against. */
export const KEY_FIGURES: readonly { readonly title: string; readonly id: string; readonly bounds: readonly (readonly [label: string, id: string])[] }[] = [
  {
    title: 'Locking force needed',
    id: 'clamp.locking-force',
    bounds: [
      ['rated', 'machine.locking-force'],
      ['use', 'clamp.use'],
    ],
  },
  {
    title: 'Fill time',
    id: 'fill.time',
    bounds: [
      ['recommended', 'fill.recommended-time'],
      ['longest', 'fill.longest-time'],
    ],
  },
  {
    title: 'Gate velocity',
    id: 'gate.velocity',
    bounds: [
      ['least', 'gate.velocity-least'],
      ['greatest', 'gate.velocity-greatest'],
    ],
  },
  {
    title: 'Sleeve fill',
    id: 'sleeve.fill',
    bounds: [
      ['least', 'sleeve.fill-least'],
      ['greatest', 'sleeve.fill-greatest'],
    ],
  },
];
