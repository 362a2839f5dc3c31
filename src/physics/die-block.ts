import { defineFormula } from '../kernel/formula.ts';

/** Extent of the cavities of a row, with the steel and the slides between them. */
export const field = defineFormula({
  id: 'die.field',
  title: 'Extent of the cavities with what lies between them',
  symbol: 'F',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities in the row', range: [1, 16] },
    side: { symbol: 'w', unit: 'mm', meaning: 'size of the casting along the row', range: [2, 2000] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel between two cavities', range: [0, 300], domain: 'not-negative' },
    room: { symbol: 'r', unit: 'mm', meaning: 'room for the slides of a cavity along the row', range: [0, 500], domain: 'not-negative', default: 0 },
  },
  unit: 'mm',
  equation: 'n * w + (n - 1) * (s + r)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum; the steel between is a rule of thumb',
  requires: [{ text: 'one cavity or more', holds: ({ cavities }) => cavities >= 1 }],
  compute: (x) => x.cavities * x.side + (x.cavities - 1) * (x.steel + x.room),
});

/** Strip of the die that biscuit and sleeve take. */
export const feederStrip = defineFormula({
  id: 'die.feeder-strip',
  title: 'Strip of the die for biscuit and sleeve',
  symbol: 'x_s',
  inputs: {
    allowance: { symbol: 'x_f', unit: 'mm', meaning: 'width kept for the biscuit by rule', range: [20, 400] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the biscuit', range: [20, 250] },
    margin: { symbol: 'm', unit: 'mm', meaning: 'wall of the sleeve and steel beside it, each side', range: [10, 100] },
  },
  unit: 'mm',
  equation: 'max(x_f, D + 2 * m)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the rule of a fixed width is too narrow for large plungers; the margin is a planning rule of ours',
  compute: (x) => Math.max(x.allowance, x.diameter + 2 * x.margin),
});

/** Size of the die across, from the steel on both sides of the cavities. */
export const sizeBySteel = defineFormula({
  id: 'die.size-by-steel',
  title: 'Size of the die across by its steel',
  symbol: 'W_s',
  inputs: {
    field: { symbol: 'F', unit: 'mm', meaning: 'extent of the cavities', range: [2, 3000] },
    one: { symbol: 't_1', unit: 'mm', meaning: 'steel on one side', range: [20, 500] },
    other: { symbol: 't_2', unit: 'mm', meaning: 'steel on the other side, with the feeder where it stands there', range: [20, 800] },
  },
  unit: 'mm',
  equation: 'F + t_1 + t_2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum; the steel widths are rules of thumb',
  compute: (x) => x.field + x.one + x.other,
});

/** Room that a slide takes beside the cavity. */
export const slideRoom = defineFormula({
  id: 'die.slide-room',
  title: 'Room for a slide beyond the steel of that side',
  symbol: 'r',
  inputs: {
    stroke: { symbol: 'S', unit: 'mm', meaning: 'stroke of the slide', range: [1, 500] },
    lock: { symbol: 't_l', unit: 'mm', meaning: 'thickness of the wedge lock behind it', range: [10, 150] },
  },
  unit: 'mm',
  equation: 'S + t_l',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy:
    'the body of the slide takes the place of the steel on that side; what it travels and the lock come on top. A hydraulic cylinder hangs on outside and is not in it',
  compute: ({ stroke, lock }) => stroke + lock,
});

/** Planned size of the die across: usual steel and the slides, as far as the tie bars allow, never below the least. */
export const size = defineFormula({
  id: 'die.size',
  title: 'Size of the die across',
  symbol: 'W',
  inputs: {
    least: { symbol: 'W_l', unit: 'mm', meaning: 'least size, without slides', range: [50, 3000] },
    usual: { symbol: 'W_u', unit: 'mm', meaning: 'size with usual steel, without slides', range: [50, 3000] },
    room: { symbol: 'r', unit: 'mm', meaning: 'room for the slides on these sides', range: [0, 1000], domain: 'not-negative', default: 0 },
    bars: { symbol: 'W_b', unit: 'mm', meaning: 'clear distance between the tie bars', range: [100, 4000] },
    clearance: { symbol: 'c', unit: 'mm', meaning: 'clearance to the bars, both sides together', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'max(W_l, min(W_u + r, W_b - c))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule of ours: a die maker takes the room that the machine gives, up to the usual steel',
  compute: (x) => Math.max(x.least, Math.min(x.usual + x.room, x.bars - x.clearance)),
});

/** What of the room for slides does not fit between the tie bars even with the least steel. */
export const overhang = defineFormula({
  id: 'die.overhang',
  title: 'Slides beyond the edge of the die',
  symbol: 'o',
  inputs: {
    least: { symbol: 'W_l', unit: 'mm', meaning: 'least size, without slides', range: [50, 3000] },
    room: { symbol: 'r', unit: 'mm', meaning: 'room for the slides on these sides', range: [0, 1000], domain: 'not-negative' },
    size: { symbol: 'W', unit: 'mm', meaning: 'planned size of the die', range: [50, 3000] },
  },
  unit: 'mm',
  equation: 'max(0, W_l + r - W)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; all slides of these sides together',
  compute: (x) => Math.max(0, x.least + x.room - x.size),
});

/** Steel on each of two sides of the cavities, slides taken off. */
export const steelSide = defineFormula({
  id: 'die.steel-side',
  title: 'Steel beside the cavities, each side',
  symbol: 't',
  inputs: {
    size: { symbol: 'W', unit: 'mm', meaning: 'planned size of the die', range: [50, 3000] },
    field: { symbol: 'F', unit: 'mm', meaning: 'extent of the cavities', range: [2, 3000] },
    room: { symbol: 'r', unit: 'mm', meaning: 'room for slides', range: [0, 1000], domain: 'not-negative' },
    overhang: { symbol: 'o', unit: 'mm', meaning: 'what of it is outside the die', range: [0, 1000], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: '(W - F - r + o) / 2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; cavities in the middle of what is left',
  compute: (x) => (x.size - x.field - x.room + x.overhang) / 2,
});

/** Steel above the cavities of a die that is fed from below, slides taken off. */
export const steelAbove = defineFormula({
  id: 'die.steel-above',
  title: 'Steel above the cavities',
  symbol: 't_a',
  inputs: {
    size: { symbol: 'W', unit: 'mm', meaning: 'planned height of the die face', range: [50, 3000] },
    field: { symbol: 'F', unit: 'mm', meaning: 'extent of the cavities', range: [2, 3000] },
    room: { symbol: 'r', unit: 'mm', meaning: 'room for slides', range: [0, 1000], domain: 'not-negative' },
    overhang: { symbol: 'o', unit: 'mm', meaning: 'what of it is outside the die', range: [0, 1000], domain: 'not-negative' },
    feeder: { symbol: 'x', unit: 'mm', meaning: 'side of the feeder, with its steel', range: [0, 800], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'W - F - r + o - x',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; what is left is all above',
  compute: (x) => x.size - x.field - x.room + x.overhang - x.feeder,
});

/** Mass of a die or of one half of it. */
export const mass = defineFormula({
  id: 'die.mass',
  title: 'Mass of the die',
  symbol: 'M',
  inputs: {
    width: { symbol: 'W', unit: 'mm', meaning: 'width', range: [50, 3000] },
    breadth: { symbol: 'B', unit: 'mm', meaning: 'height of the die face', range: [50, 3000] },
    height: { symbol: 'H', unit: 'mm', meaning: 'height, closed, of the die or of the half', range: [20, 2500] },
    density: { symbol: 'rho', unit: 'kg/dm3', meaning: 'density of the steel', range: [7, 8.5] },
    share: { symbol: 'k', unit: '1', meaning: 'share of the envelope that is steel', range: [0.5, 1] },
  },
  unit: 'kg',
  equation: 'W * B * H / 1e6 * rho * k',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a rule of thumb for the share of steel; an open ejector box makes it lighter, hydraulics heavier',
  compute: (x) => ((x.width * x.breadth * x.height) / 1e6) * x.density * x.share,
});
