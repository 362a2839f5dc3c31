import type { Standing } from './plan.ts';

/** The fixed statements of the document; common practice for a computed plan, no published wording. */
export const STANDING: Standing = {
  status:
    'First-pass estimate from published rules and rules of thumb: not a released process sheet, not a safety assessment and no proof that a standard or a law is met. ' +
    'A qualified die casting engineer must review it, a die trial replaces it, and local codes and licensed practice prevail.',
  reviewers: [
    'die casting or process engineer: machine, clamp, shot profile, gate and vent',
    'tooling engineer: die stress, cooling, slides, ejection',
    'safety and environment: every caution of this plan, guards, fume, permits',
    'metallurgy and quality: alloy certificate, substances that the market limits, first-piece inspection',
  ],
  hold: 'No shot until clamp margin, guard interlocks, dryness of the die and the leak test of the cooling lines are checked and signed for.',
  notChecked: [
    'strength and fatigue of the part under its load, and corrosion',
    'porosity place by place: pores are estimated for the casting as a whole and for its thickest wall, without a simulation of flow and freezing',
    'distortion after ejection, heat treatment and blistering',
    'heat balance of the die and its running temperature',
    'cooling and heating lines: place, size, medium and flow',
    'ejection: force, pins, ejector plate, sticking and galling',
    'die stress: plate bow, pillars, cores, bending and heat checking; die steel and die life',
    'structural strength of slides, locks and angle pins',
    'die mass, lifting points and crane',
    'dwell and cycle time',
    'shot profile as the machine follows it: valve, control and rise time of the intensified pressure',
    'die spray and plunger lubrication',
    'furnace, melting capacity, metal treatment and ladling',
    'trim press and trim die, machining and finishing lines',
    'cost of part, die and machine',
    'hydraulics and accumulators of the machine',
    'guarding, interlocks and lockout',
    'electrics and controls',
    'robots and the layout of the cell',
    'fire protection, fume extraction and noise at the working place',
    'environmental and product permits of the plant and its markets',
  ],
};
