import { defineFormula } from '../../kernel/formula.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const YIELD = { symbol: 's_y', unit: 'MPa', meaning: 'yield strength of the casting at ejection', range: [3, 300] } as const;
const WALL = { symbol: 't', unit: 'mm', meaning: 'nominal wall', range: [0.5, 25] } as const;

/** How far a casting is closed over the core inside it: its projected area over that of its envelope. */
export const closedShare = defineFormula({
  id: 'ejection.closed-share',
  title: 'Share of the core that the floor of the casting closes',
  symbol: 'c',
  inputs: {
    area: { symbol: 'A_p', unit: 'cm2', meaning: 'projected area of the casting', range: [0.5, 20000] },
    box: { symbol: 'A_b', unit: 'cm2', meaning: 'area of the envelope across the die opening', range: [0.5, 20000] },
  },
  unit: '%',
  equation: 'min(100, 100 * A_p / A_b)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'planning rule of ours: a frame is open in the middle, a cover closed; a round part is taken for open at its corners',
  compute: ({ area, box }) => Math.min(100, (100 * area) / box),
});

/** Force from the floor of a box-like casting: it shrinks across the core and draws the walls onto its end. */
export const floorForce = defineFormula({
  id: 'ejection.floor-force',
  title: 'Ejection force from the floor of the casting',
  symbol: 'F_f',
  inputs: {
    modulus: { symbol: 'E_c', unit: 'GPa', meaning: "Young's modulus of the casting at ejection", range: [5, 110] },
    expansion: { symbol: 'a_c', unit: 'um/(m.K)', meaning: 'linear expansion of the casting', range: [15, 32] },
    temperature_drop: {
      symbol: 'dT',
      unit: 'K',
      meaning: 'cooling between the time the casting holds together and ejection',
      range: [0, 600],
      domain: 'not-negative',
    },
    poisson: { symbol: 'nu', unit: '1', meaning: "Poisson's ratio of the casting", range: [0.2, 0.45] },
    hot_yield: YIELD,
    wall: WALL,
    height: { symbol: 'h', unit: 'mm', meaning: 'height of the walls beside the core', range: [0, 500], domain: 'not-negative' },
    outline: { symbol: 'U', unit: 'mm', meaning: 'outline of the core', range: [3, 6000] },
    closed: { symbol: 'c', unit: '%', meaning: 'share of the core that the floor closes', range: [0, 100], domain: 'not-negative' },
    share: { symbol: 'k', unit: '1', meaning: 'share of the pull of the floor that bears on the sides of the core', range: [0, 1], domain: 'not-negative' },
    friction: { symbol: 'mu', unit: '1', meaning: 'friction of the casting on the core', range: [0.05, 0.6] },
    draft: { symbol: 'b', unit: 'deg', meaning: 'draft of the core, per side', range: [0, 15], domain: 'not-negative' },
  },
  unit: 'kN',
  where: [
    { symbol: 's_f', equation: 'min(E_c * a_c * dT / 1000 / (1 - nu), s_y)' },
    { symbol: 'f', equation: '(mu * cos(b * pi / 180) - sin(b * pi / 180)) / (1 + mu * sin(b * pi / 180) * cos(b * pi / 180))' },
  ],
  equation: 's_f * min(t, h) * U / 1000 * c / 100 * k * max(0, f)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy:
    'reckoning of ours: the balance of a plate in tension over the end of a core; how much of it bears on the sides hangs on the fillet between floor and wall and is a planning figure',
  compute: (x) => {
    const stress = Math.min((x.modulus * x.expansion * x.temperature_drop) / 1000 / (1 - x.poisson), x.hot_yield);
    const [sine, cosine] = [Math.sin(radians(x.draft)), Math.cos(radians(x.draft))];
    const drag = Math.max(0, (x.friction * cosine - sine) / (1 + x.friction * sine * cosine));
    return ((stress * Math.min(x.wall, x.height) * x.outline) / 1000) * (x.closed / 100) * x.share * drag;
  },
});

/** Core diameter at which the pressure worked out is that of a table that knows neither diameter nor wall. */
export const gripDiameter = defineFormula({
  id: 'ejection.grip-diameter',
  title: 'Core diameter that a gripping pressure fits',
  symbol: 'd_g',
  inputs: {
    hot_yield: YIELD,
    wall: WALL,
    grip_pressure: { symbol: 'p_g', unit: 'MPa', meaning: 'gripping pressure of the table', range: [1, 30] },
  },
  unit: 'mm',
  equation: '2 * t / (exp(p_g / s_y) - 1)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the yielding thick ring turned round; holds where the yield strength governs',
  compute: ({ hot_yield, wall, grip_pressure }) => (2 * wall) / Math.expm1(grip_pressure / hot_yield),
});

/** The force at another yield strength, where that governs. */
export const forceAtYield = defineFormula({
  id: 'ejection.force-at-yield',
  title: 'Ejection force at another yield strength',
  symbol: 'F_2',
  inputs: {
    force: { symbol: 'F', unit: 'kN', meaning: 'ejection force', range: [0, 3000], domain: 'not-negative' },
    hot_yield: YIELD,
    other_yield: { symbol: 's_2', unit: 'MPa', meaning: 'the other yield strength', range: [3, 300] },
  },
  unit: 'kN',
  equation: 'F * s_2 / s_y',
  outside: 'extrapolate',
  source: ['EJECTOR-FORCE-STUDY'],
  status: 'derived',
  accuracy: 'exact where the yield strength governs at both temperatures; that the force grows with the time in the die is published',
  compute: ({ force, hot_yield, other_yield }) => (force * other_yield) / hot_yield,
});

/** Share of a machine's ejector force. */
export const forceUse = defineFormula({
  id: 'ejection.force-use',
  title: 'Use of the ejector force of the machine',
  symbol: 'u_e',
  inputs: {
    force: { symbol: 'F', unit: 'kN', meaning: 'ejection force of the whole shot', range: [0, 5000], domain: 'not-negative' },
    machine: { symbol: 'F_m', unit: 'kN', meaning: 'ejector force of the machine', range: [5, 5000] },
  },
  unit: '%',
  equation: '100 * F / F_m',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; friction and return springs of the ejector plates take some of the force',
  compute: ({ force, machine }) => (100 * force) / machine,
});
