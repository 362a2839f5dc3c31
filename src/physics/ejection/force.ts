import { defineFormula } from '../../kernel/formula.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** What holds the casting on a core: its own contraction, up to the stress at which hot metal gives way. */
const GRIP_INPUTS = {
  modulus: { symbol: 'E_c', unit: 'GPa', meaning: "Young's modulus of the casting at ejection", range: [5, 110] },
  expansion: { symbol: 'a_c', unit: 'um/(m.K)', meaning: 'linear expansion of the casting', range: [15, 32] },
  temperature_drop: {
    symbol: 'dT',
    unit: 'K',
    meaning: 'cooling between the time the casting holds together and ejection',
    range: [0, 600],
    domain: 'not-negative',
  },
  wall: { symbol: 't', unit: 'mm', meaning: 'wall around the core', range: [0.5, 25] },
  core_diameter: { symbol: 'd', unit: 'mm', meaning: 'core diameter, or the outline of the core over pi', range: [1, 1500] },
  poisson: { symbol: 'nu', unit: '1', meaning: "Poisson's ratio of the casting", range: [0.2, 0.45] },
  hot_yield: { symbol: 's_y', unit: 'MPa', meaning: 'yield strength of the casting at ejection', range: [3, 300] },
} as const;

type Grip = Readonly<Record<keyof typeof GRIP_INPUTS, number>>;
/** Contraction that the core prevents, as a strain. */
const strain = ({ expansion, temperature_drop }: Pick<Grip, 'expansion' | 'temperature_drop'>): number => expansion * 1e-6 * temperature_drop;

/** Cooling that makes the casting grip: that of the casting, less the contraction of the core in the same time. */
export const temperatureDrop = defineFormula({
  id: 'ejection.temperature-drop',
  title: 'Cooling that makes the casting grip',
  symbol: 'dT',
  inputs: {
    coherent_temperature: {
      symbol: 'T_c',
      unit: 'degC',
      meaning: 'temperature below which the casting holds together, near the solidus',
      range: [150, 1000],
      domain: 'any',
    },
    eject_temperature: { symbol: 'T_e', unit: 'degC', meaning: 'temperature of the casting at ejection', range: [100, 800], domain: 'any' },
    expansion: { symbol: 'a_c', unit: 'um/(m.K)', meaning: 'linear expansion of the casting', range: [15, 32] },
    die_expansion: { symbol: 'a_d', unit: 'um/(m.K)', meaning: 'linear expansion of the core', range: [4, 15], default: 12 },
    die_change: {
      symbol: 'dT_d',
      unit: 'K',
      meaning: 'cooling of the core in the same time; below 0 where the core warms',
      range: [-100, 100],
      domain: 'any',
      default: 0,
    },
  },
  unit: 'K',
  equation: 'max(0, T_c - T_e - dT_d * a_d / a_c)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for free contraction; a casting holds together a little above its solidus, but has no strength there',
  compute: (x) => Math.max(0, x.coherent_temperature - x.eject_temperature - (x.die_change * x.die_expansion) / x.expansion),
});

/** Stress around a core if the casting did not yield: what says whether the hot yield strength governs. */
export const hoopStress = defineFormula({
  id: 'ejection.hoop-stress',
  title: 'Stress in the wall around a core without yielding',
  symbol: 's_e',
  inputs: {
    modulus: GRIP_INPUTS.modulus,
    expansion: GRIP_INPUTS.expansion,
    temperature_drop: GRIP_INPUTS.temperature_drop,
    poisson: GRIP_INPUTS.poisson,
  },
  unit: 'MPa',
  equation: 'E_c * a_c * dT / 1000 / (1 - nu / 2)',
  outside: 'extrapolate',
  source: ['ROSATO-MOLDING ejection force'],
  status: 'derived',
  accuracy:
    'elastic form for moulded plastics, rearranged; for hot metal it comes out several times the yield strength, so it is a measure and no stress that occurs',
  compute: (x) => (x.modulus * 1000 * strain(x)) / (1 - x.poisson / 2),
});

/**
 * Pressure of a thin wall on its core: elastic contraction, capped where the hot wall yields. A wall stretched around any
 * outline without hollows presses in sum as around a circle of the same outline, so the outline over pi stands for the diameter.
 */
export const contactPressure = defineFormula({
  id: 'ejection.contact-pressure',
  title: 'Pressure of the casting on a core',
  symbol: 'p',
  inputs: GRIP_INPUTS,
  unit: 'MPa',
  where: [
    { symbol: 'p_e', equation: 'E_c * a_c * dT / 1000 * 2 * t / (d * (1 - nu / 2))' },
    { symbol: 'p_y', equation: 's_y * 2 * t / d' },
  ],
  equation: 'min(p_e, p_y)',
  outside: 'extrapolate',
  source: ['ROSATO-MOLDING ejection force'],
  status: 'derived',
  accuracy:
    'a thin ring (wall up to a tenth of the diameter); the elastic form is published for plastics, the cap follows from the balance of a ring. Creep lowers it, a floor or ribs across the core raise it. A measured and computed comparison by others came within 30 %; the hot yield strength alone spreads by a factor of two',
  compute: (x) => {
    const elastic = (x.modulus * 1000 * strain(x) * 2 * x.wall) / (x.core_diameter * (1 - x.poisson / 2));
    return Math.min(elastic, (x.hot_yield * 2 * x.wall) / x.core_diameter);
  },
});

/** Pressure of a thick ring, such as the boss around a core pin: elastic by Lamé, capped where the whole ring yields. */
export const bossPressure = defineFormula({
  id: 'ejection.boss-pressure',
  title: 'Pressure of a boss on a core pin',
  symbol: 'p',
  inputs: GRIP_INPUTS,
  unit: 'MPa',
  where: [
    { symbol: 'q', equation: '(1 + 2 * t / d)^2' },
    { symbol: 'p_e', equation: 'E_c * a_c * dT / 1000 / ((q + 1) / (q - 1) + nu)' },
    { symbol: 'p_y', equation: 's_y * log(1 + 2 * t / d)' },
  ],
  equation: 'min(p_e, p_y)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'thick ring on a stiff core: Lamé, and full yielding after Tresca; equal to the thin ring where the wall is thin. A core pin runs hotter than the walls, so the metal around it is softer than reckoned here',
  compute: (x) => {
    const widening = 1 + (2 * x.wall) / x.core_diameter;
    const square = widening ** 2;
    const elastic = (x.modulus * 1000 * strain(x)) / ((square + 1) / (square - 1) + x.poisson);
    return Math.min(elastic, x.hot_yield * Math.log(widening));
  },
});

/** Force that draws the casting off a core with draft. */
export const ejectionForce = defineFormula({
  id: 'ejection.force',
  title: 'Ejection force of a core',
  symbol: 'F_e',
  inputs: {
    contact_pressure: { symbol: 'p', unit: 'MPa', meaning: 'pressure of the casting on the core', range: [0, 150], domain: 'not-negative' },
    contact_area: { symbol: 'A_c', unit: 'cm2', meaning: 'side surface of the core in line of draw', range: [0, 20000], domain: 'not-negative' },
    friction: { symbol: 'mu', unit: '1', meaning: 'friction of the casting on the core', range: [0.05, 0.6] },
    draft: { symbol: 'b', unit: 'deg', meaning: 'draft of the core, per side', range: [0, 15], domain: 'not-negative' },
  },
  unit: 'kN',
  where: [{ symbol: 'f', equation: '(mu * cos(b * pi / 180) - sin(b * pi / 180)) / (1 + mu * sin(b * pi / 180) * cos(b * pi / 180))' }],
  // A core steeper than the friction angle comes free by itself.
  equation: 'p * A_c / 10 * max(0, f)',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy:
    'remembered with high confidence (after Menges, for plastics moulds); friction is remembered with low confidence and rises to 0.4 and more where the casting solders or the lubricant fails',
  compute: ({ contact_pressure, contact_area, friction, draft }) => {
    const [sine, cosine] = [Math.sin(radians(draft)), Math.cos(radians(draft))];
    return ((contact_pressure * contact_area) / 10) * Math.max(0, (friction * cosine - sine) / (1 + friction * sine * cosine));
  },
});

/** Way over which the casting still grips: once it has moved that far, the draft has given back its elastic tension. */
export const releaseTravel = defineFormula({
  id: 'ejection.release-travel',
  title: 'Travel until the casting is free of the core',
  symbol: 'x_r',
  inputs: {
    contact_pressure: { symbol: 'p', unit: 'MPa', meaning: 'pressure of the casting on the core', range: [0, 50], domain: 'not-negative' },
    core_diameter: GRIP_INPUTS.core_diameter,
    wall: GRIP_INPUTS.wall,
    modulus: GRIP_INPUTS.modulus,
    draft: { symbol: 'b', unit: 'deg', meaning: 'draft of the core, per side', range: [0, 15], domain: 'not-negative' },
    height: { symbol: 'h', unit: 'mm', meaning: 'height of the core in line of draw', range: [1, 500] },
  },
  unit: 'mm',
  where: [{ symbol: 'u', equation: 'p * d^2 / (4 * t * E_c * 1000)' }],
  equation: 'u == 0 ? 0 : min(h, u / tan(b * pi / 180))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'spring-back of a thin ring; friction of loose contact, burrs and soldering last longer',
  compute: (x) => {
    const springBack = (x.contact_pressure * x.core_diameter ** 2) / (4 * x.wall * x.modulus * 1000);
    return springBack === 0 ? 0 : Math.min(x.height, springBack / Math.tan(radians(x.draft)));
  },
});
