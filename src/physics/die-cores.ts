import { defineFormula } from '../kernel/formula.ts';

/** Pressure of a stream of metal on what stands in its way. */
export const streamPressure = defineFormula({
  id: 'die.stream-pressure',
  title: 'Pressure of the metal stream',
  symbol: 'P_s',
  inputs: {
    density: { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the liquid metal', range: [1000, 12000] },
    velocity: { symbol: 'v_g', unit: 'm/s', meaning: 'gate velocity', range: [5, 110] },
  },
  unit: 'MPa',
  equation: 'rho * v_g^2 / 2e6',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'stagnation pressure of the full gate velocity: what a core right before the gate sees on its front while nothing is behind it. The first touch hits harder for microseconds; away from the gate the stream is slower',
  compute: ({ density, velocity }) => (density * velocity ** 2) / 2e6,
});

/** How far the tip of a core bends when metal presses on one side of it. */
export const coreBending = defineFormula({
  id: 'die.core-bending',
  title: 'Bend of a slender core at its tip',
  symbol: 'delta_c',
  inputs: {
    pressure: { symbol: 'P', unit: 'MPa', meaning: 'pressure on one side more than on the other', range: [0.1, 100] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the core', range: [1, 300] },
    bore: { symbol: 'd', unit: 'mm', meaning: 'bore of a hollow core', range: [0, 250], domain: 'not-negative', default: 0 },
    height: { symbol: 'H', unit: 'mm', meaning: 'free length of the core', range: [1, 500] },
    modulus: { symbol: 'E_s', unit: 'GPa', meaning: "Young's modulus", range: [100, 330] },
  },
  unit: 'mm',
  equation: 'P * D * H^4 / (8 * 1000 * E_s * I)',
  where: [{ symbol: 'I', equation: 'pi * (D^4 - d^4) / 64' }],
  outside: 'extrapolate',
  source: ['KAZMER-MOLD'],
  status: 'source',
  accuracy: 'beam held at one end, even pressure over its side; a core as short as twice its diameter bends less than its fit gives way',
  requires: [{ text: 'a bore smaller than the core', holds: ({ diameter, bore }) => bore < diameter }],
  compute: (x) => (x.pressure * x.diameter * x.height ** 4) / ((8 * 1000 * x.modulus * Math.PI * (x.diameter ** 4 - x.bore ** 4)) / 64),
});

/** Greatest bending stress of such a core, at its root. */
export const coreStress = defineFormula({
  id: 'die.core-stress',
  title: 'Bending stress at the root of a core',
  symbol: 's_c',
  inputs: {
    pressure: { symbol: 'P', unit: 'MPa', meaning: 'pressure on one side more than on the other', range: [0.1, 100] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the core', range: [1, 300] },
    height: { symbol: 'H', unit: 'mm', meaning: 'free length of the core', range: [1, 500] },
  },
  unit: 'MPa',
  equation: '16 * P * H^2 / (pi * D^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'solid core without a notch: P D H^2 / 2 over pi D^3 / 32; a sharp root doubles it',
  compute: (x) => (16 * x.pressure * x.height ** 2) / (Math.PI * x.diameter ** 2),
});

/** Length of a core over its diameter. */
export const coreSlenderness = defineFormula({
  id: 'die.core-slenderness',
  title: 'Length of a core over its diameter',
  symbol: 'k_c',
  inputs: {
    height: { symbol: 'H', unit: 'mm', meaning: 'free length of the core', range: [1, 500] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the core', range: [1, 300] },
  },
  unit: '1',
  equation: 'H / D',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ height, diameter }) => height / diameter,
});

/** Bending stress that a core may see at every shot. */
export const coreStressGreatest = defineFormula({
  id: 'die.core-stress-greatest',
  title: 'Bending stress allowed in a core',
  symbol: 's_a',
  inputs: {
    hot_yield: { symbol: 's_y', unit: 'MPa', meaning: 'yield strength of the hot steel', range: [50, 2000] },
    share: { symbol: 'k', unit: '1', meaning: 'share of it that a core may see at every shot', range: [0.1, 1] },
  },
  unit: 'MPa',
  equation: 'k * s_y',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule of ours in the place of a fatigue strength when hot, which was not found',
  compute: ({ hot_yield, share }) => share * hot_yield,
});

/** Length over diameter at which a solid core is bent as hard as allowed, whatever its size. */
export const coreSlendernessGreatest = defineFormula({
  id: 'die.core-slenderness-greatest',
  title: 'Core length over diameter for the stress allowed',
  symbol: 'k_n',
  inputs: {
    stress: { symbol: 's_a', unit: 'MPa', meaning: 'bending stress allowed', range: [20, 1500] },
    pressure: { symbol: 'P', unit: 'MPa', meaning: 'pressure on one side more than on the other', range: [0.1, 100] },
  },
  unit: '1',
  equation: 'sqrt(pi * s_a / (16 * P))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the stress of a solid core turned round',
  compute: ({ stress, pressure }) => Math.sqrt((Math.PI * stress) / (16 * pressure)),
});

/** Diameter at which a solid core of that length bends no more than allowed. */
export const coreLeastDiameter = defineFormula({
  id: 'die.core-least-diameter',
  title: 'Core diameter for a bend allowed',
  symbol: 'D_n',
  inputs: {
    pressure: { symbol: 'P', unit: 'MPa', meaning: 'pressure on one side more than on the other', range: [0.1, 100] },
    height: { symbol: 'H', unit: 'mm', meaning: 'free length of the core', range: [1, 500] },
    bend: { symbol: 'delta_a', unit: 'mm', meaning: 'bend allowed', range: [0.005, 0.5] },
    modulus: { symbol: 'E_s', unit: 'GPa', meaning: "Young's modulus", range: [100, 330] },
  },
  unit: 'mm',
  equation: '(8 * P * H^4 / (pi * 1000 * E_s * delta_a))^(1/3)',
  outside: 'extrapolate',
  source: ['KAZMER-MOLD'],
  status: 'derived',
  accuracy: 'the bend of a solid core turned round',
  compute: (x) => Math.cbrt((8 * x.pressure * x.height ** 4) / (Math.PI * 1000 * x.modulus * x.bend)),
});

/** Length at which a solid core of that diameter bends no more than allowed. */
export const coreGreatestHeight = defineFormula({
  id: 'die.core-greatest-height',
  title: 'Core length for a bend allowed',
  symbol: 'H_n',
  inputs: {
    pressure: { symbol: 'P', unit: 'MPa', meaning: 'pressure on one side more than on the other', range: [0.1, 100] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the core', range: [1, 300] },
    bend: { symbol: 'delta_a', unit: 'mm', meaning: 'bend allowed', range: [0.005, 0.5] },
    modulus: { symbol: 'E_s', unit: 'GPa', meaning: "Young's modulus", range: [100, 330] },
  },
  unit: 'mm',
  equation: '(pi * 1000 * E_s * delta_a * D^3 / (8 * P))^0.25',
  outside: 'extrapolate',
  source: ['KAZMER-MOLD'],
  status: 'derived',
  accuracy: 'the bend of a solid core turned round',
  compute: (x) => ((Math.PI * 1000 * x.modulus * x.bend * x.diameter ** 3) / (8 * x.pressure)) ** 0.25,
});

/** Room for a hole of the insert, for a core or a pin, between two cooling lines. */
export const lineRoom = defineFormula({
  id: 'die.line-room',
  title: 'Greatest hole between two cooling lines',
  symbol: 'd_h',
  inputs: {
    pitch: { symbol: 'w', unit: 'mm', meaning: 'pitch of the lines', range: [10, 300] },
    diameter: { symbol: 'd', unit: 'mm', meaning: 'diameter of a line', range: [3, 40] },
    steel: { symbol: 'g', unit: 'mm', meaning: 'steel between a line and any other hole', range: [2, 40] },
  },
  unit: 'mm',
  equation: 'max(0, w - d - 2 * g)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a hole half way between two straight lines; nothing is left where the lines are too close',
  compute: (x) => Math.max(0, x.pitch - x.diameter - 2 * x.steel),
});
