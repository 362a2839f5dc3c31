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
    'distortion after ejection and in heat treatment',
    'heat place by place: balance and surface temperature are those of the die as a whole and of its nominal wall, without a simulation',
    'where the cooling lines run between pins, cores and slides: length, number and flow are estimates that the die maker lays out',
    'sticking and galling on single faces, guidance of the ejector plate',
    'structural strength of slides, locks and angle pins; strength of the die beyond bow, pillars and single cores',
    'lifting points and crane',
    'shot profile as the machine follows it: valve, control and rise time of the intensified pressure',
    'spray pattern: places, angles and times of the nozzles',
    'furnaces beyond capacity, rate and temperature; metal treatment and the way of the metal to the sleeve',
    'trim die beyond force and platen; machining and finishing lines',
    'price of the part beyond the lines of its cost: overheads, finishing, inspection, packing, transport, profit',
    'hydraulics and accumulators of the machine',
    'guarding, interlocks and lockout',
    'electrics and controls',
    'robots and the layout of the cell',
    'fire protection, fume extraction and noise at the working place',
    'environmental and product permits of the plant and its markets',
  ],
};
