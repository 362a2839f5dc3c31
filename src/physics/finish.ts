import { defineFormula } from '../kernel/formula.ts';

const mm2 = (symbol: string, meaning: string) => ({ symbol, unit: 'mm2', meaning, range: [0, 50000], domain: 'not-negative', default: 0 }) as const;

/** Parting line along which flash is sheared: what gates and overflow gates leave of it. */
export const flashLength = defineFormula({
  id: 'finish.flash-length',
  title: 'Parting line that is trimmed of flash',
  symbol: 'L_f',
  inputs: {
    parting_line: { symbol: 'L_p', unit: 'mm', meaning: 'parting line of one cavity', range: [20, 20000] },
    gate_width: { symbol: 'w_g', unit: 'mm', meaning: 'width of all gates of the cavity', range: [0, 3000], domain: 'not-negative' },
    overflows: { symbol: 'n_o', unit: '1', meaning: 'overflows of the cavity', range: [0, 60], domain: 'not-negative', default: 0 },
    overflow_width: { symbol: 'w_o', unit: 'mm', meaning: 'gate width of one overflow', range: [0, 300], domain: 'not-negative', default: 0 },
  },
  unit: 'mm',
  equation: 'max(L_p - w_g - n_o * w_o, 0)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the parting line; one taken from the envelope is short where the outline is not a box',
  compute: (x) => Math.max(x.parting_line - x.gate_width - x.overflows * x.overflow_width, 0),
});

/** Section that is sheared along a line of metal of one thickness: flash, or the metal in vents. */
export const stripSection = defineFormula({
  id: 'finish.strip-section',
  title: 'Sheared section of a strip',
  symbol: 'A_s',
  inputs: {
    length: { symbol: 'l', unit: 'mm', meaning: 'length along the edge of the casting', range: [0, 20000], domain: 'not-negative' },
    thickness: { symbol: 't', unit: 'mm', meaning: 'thickness of the strip', range: [0, 10], domain: 'not-negative' },
  },
  unit: 'mm2',
  equation: 'l * t',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; flash of a real die is uneven, thin over most of the line and thick at a worn spot',
  compute: ({ length, thickness }) => length * thickness,
});

/** Section of the flash that closes cored through holes and that the trim die pierces. */
export const holeFlash = defineFormula({
  id: 'finish.hole-flash',
  title: 'Sheared section of the flash in through holes',
  symbol: 'A_h',
  inputs: {
    diameter: { symbol: 'd', unit: 'mm', meaning: 'hole diameter', range: [1, 500] },
    count: { symbol: 'n', unit: '1', meaning: 'number of such holes', range: [1, 200] },
    thickness: { symbol: 't_f', unit: 'mm', meaning: 'flash thickness', range: [0, 1], domain: 'not-negative' },
  },
  unit: 'mm2',
  equation: 'pi * d * n * t_f',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry; cores that meet without a gap leave no flash',
  compute: (x) => Math.PI * x.diameter * x.count * x.thickness,
});

/** All that is sheared at one casting. */
export const cavitySection = defineFormula({
  id: 'finish.cavity-section',
  title: 'Sheared section of one casting',
  symbol: 'A_c',
  inputs: {
    gates: { symbol: 'A_g', unit: 'mm2', meaning: 'gates', range: [0, 50000], domain: 'not-negative' },
    overflows: mm2('A_o', 'overflow gates'),
    flash: mm2('A_f', 'flash at the parting line'),
    vents: mm2('A_v', 'metal in plain vents'),
    holes: mm2('A_h', 'flash in through holes'),
  },
  unit: 'mm2',
  equation: 'A_g + A_o + A_f + A_v + A_h',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum; flash at slides is not in it, for it does not lie in the direction of the press',
  compute: (x) => x.gates + x.overflows + x.flash + x.vents + x.holes,
});

/** Shear strength where none is published: a share of the tensile strength, and not below the weakest usual alloy of the family. */
export const shearEstimate = defineFormula({
  id: 'finish.shear-estimate',
  title: 'Shear strength from the tensile strength',
  symbol: 'tau_e',
  inputs: {
    tensile: { symbol: 'R_m', unit: 'MPa', meaning: 'tensile strength', range: [10, 700] },
    ratio: { symbol: 'r_s', unit: '1', meaning: 'shear strength over tensile strength, of the family', range: [0.4, 1] },
    least: { symbol: 'tau_0', unit: 'MPa', meaning: 'shear strength to reckon with at least', range: [0, 400], domain: 'not-negative', default: 0 },
  },
  unit: 'MPa',
  equation: 'max(r_s * R_m, tau_0)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'within about 10 % for alloys whose tensile strength is a typical one; a tensile strength that is a minimum gives too little, hence the floor',
  compute: (x) => Math.max(x.ratio * x.tensile, x.least),
});

/** Force of a press that shears everything at once. */
export const trimForce = defineFormula({
  id: 'finish.trim-force',
  title: 'Trim force',
  symbol: 'F_t',
  inputs: {
    shear_strength: { symbol: 'tau_B', unit: 'MPa', meaning: 'shear strength of the alloy as it is trimmed', range: [10, 400] },
    sheared_area: { symbol: 'A_t', unit: 'mm2', meaning: 'section that is sheared', range: [0, 100000], domain: 'not-negative' },
    factor: { symbol: 'k_t', unit: '1', meaning: 'for worn trim edges and uneven flash', range: [1, 1.5] },
  },
  unit: 'kN',
  equation: 'k_t * tau_B * A_t / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy:
    'shears everything at the same moment, cold; a casting trimmed hot, or a trim edge ground at a slope, needs less. Springs of pads and strippers come on top',
  compute: (x) => (x.factor * x.shear_strength * x.sheared_area) / 1000,
});

/** Heat that the castings of a shot still hold when they leave the die. */
export const quenchHeat = defineFormula({
  id: 'finish.quench-heat',
  title: 'Heat given off after ejection',
  symbol: 'Q_q',
  inputs: {
    mass: { symbol: 'm', unit: 'kg', meaning: 'all metal of the shot', range: [0.005, 200] },
    specific_heat: { symbol: 'c_s', unit: 'J/(kg.K)', meaning: 'specific heat of the solid', range: [100, 1200] },
    eject_temperature: { symbol: 'T_e', unit: 'degC', meaning: 'metal at ejection, mean of castings, runner and biscuit', range: [80, 900], domain: 'any' },
    handling_temperature: { symbol: 'T_h', unit: 'degC', meaning: 'casting as it is handled', range: [20, 79], domain: 'any' },
  },
  unit: 'kJ',
  equation: 'm * c_s * (T_e - T_h) / 1000',
  requires: [{ text: 'T_e > T_h', holds: (x) => x.eject_temperature > x.handling_temperature }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the mean temperature of what leaves the die',
  compute: (x) => (x.mass * x.specific_heat * (x.eject_temperature - x.handling_temperature)) / 1000,
});

/** Mean temperature of all metal of a shot as it leaves the die: thin castings colder, runner and biscuit hotter. */
export const leavingMean = defineFormula({
  id: 'finish.leaving-mean',
  title: 'Mean temperature of the shot on leaving the die',
  symbol: 'T_e',
  inputs: {
    mass: { symbol: 'm', unit: 'kg', meaning: 'all metal of the shot', range: [0.005, 200] },
    thick_mass: { symbol: 'm_t', unit: 'kg', meaning: 'runner and biscuit', range: [0, 150], domain: 'not-negative' },
    thin: { symbol: 'T_c', unit: 'degC', meaning: 'castings and overflows on leaving', range: [60, 900], domain: 'any' },
    thick: { symbol: 'T_t', unit: 'degC', meaning: 'runner and biscuit on leaving', range: [60, 1000], domain: 'any' },
  },
  unit: 'degC',
  equation: 'T_c + (T_t - T_c) * m_t / m',
  requires: [{ text: 'thick metal that is part of the shot', holds: (x) => x.thick_mass <= x.mass }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for one specific heat of the solid',
  compute: (x) => x.thin + ((x.thick - x.thin) * x.thick_mass) / x.mass,
});

/** The same at the pace of the machine: what a quench tank or a fan has to carry off. */
export const quenchRate = defineFormula({
  id: 'finish.quench-rate',
  title: 'Heat to carry off after ejection',
  symbol: 'P_q',
  inputs: {
    heat: { symbol: 'Q_q', unit: 'kJ', meaning: 'heat of one shot', range: [0.1, 50000] },
    shots: { symbol: 'n_h', unit: '1/h', meaning: 'shots an hour', range: [1, 2000] },
  },
  unit: 'kW',
  equation: 'Q_q * n_h / 3600',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'mean over the cycle',
  compute: ({ heat, shots }) => (heat * shots) / 3600,
});

/** Side of the platen that the trim die of a shot takes. */
export const pressRoom = defineFormula({
  id: 'finish.press-room',
  title: 'Side of the trim die',
  symbol: 's_t',
  inputs: {
    extent: { symbol: 'b', unit: 'mm', meaning: 'extent of the shot in that direction', range: [5, 5000] },
    rim: { symbol: 'r', unit: 'mm', meaning: 'die and clamps around the shot, each side', range: [0, 500], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'b + 2 * r',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the rim, a planning figure; the trim die maker gives the real size',
  compute: ({ extent, rim }) => extent + 2 * rim,
});

/** Stroke with which the punch clears a shot that is lifted out of the trim die. */
export const strokeNeeded = defineFormula({
  id: 'finish.stroke-needed',
  title: 'Stroke that clears the shot',
  symbol: 'H_t',
  inputs: {
    depth: { symbol: 'd', unit: 'mm', meaning: 'depth of the casting along the die opening', range: [0.5, 3000] },
    clearance: { symbol: 'c', unit: 'mm', meaning: 'room to take the shot out over its depth', range: [0, 1000], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: '2 * d + c',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule: the punch follows the casting down by its depth at most and clears it by its depth again',
  compute: ({ depth, clearance }) => 2 * depth + clearance,
});
