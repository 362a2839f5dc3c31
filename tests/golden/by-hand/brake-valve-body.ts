/*
 * The brake valve body (examples/brake-valve-body) on paper: an aluminium part for the cold chamber.
 * Every figure is typed here with the work it was read in; "memory" is a figure that the rule tables mark as remembered,
 * "practice" a rule of the trade without a single source. Nothing is taken from the program. "Vendor" is a company's page.
 */
import { type Hand, type HandWords, line } from './hand.ts';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

// --- Part -------------------------------------------------------------------------------------------------------
// EN AC-46100 (AlSi11Cu2(Fe)): 2.74 g/cm3 is that of the near alloy 383 (NADCA, Product Specification Standards for Die
// Castings, table A-3-2-12). Drawing: 228 cm3.
const mass = (228 * 2.74) / 1000; // 0.62472 kg

// --- Draft: D = sqrt(L) / C in inches, A = (D / L) / 0.01746 (NADCA S-4A-7-06, draft requirements) ------------------
// C = 30 inside is printed there; 60 outside by its rule that inside faces take twice the draft; 20 for holes: memory.
const taper = (depth: number, constant: number): number => (Math.sqrt(depth / 25.4) / constant) * 25.4; // mm
const angle = (depth: number, constant: number): number => taper(depth, constant) / depth / 0.01746; // deg
// Precision level: 0.8 sqrt(L) / C with C = 40 inside, 80 outside, 28 hole (memory).
const outer = angle(29, 60); // sqrt(1.1417) / 60 x 25.4 = 0.4523 mm; 0.893 deg
const chamber = angle(44, 30); // sqrt(1.7323) / 30 x 25.4 = 1.1144 mm; 1.451 deg

// --- Hole "inlet": 14.5 mm, 34 mm deep ---------------------------------------------------------------------------
// The hole constant gives the draft on the diameter; each side takes half of it.
const holeTaper = taper(34, 20); // sqrt(1.3386) / 20 x 25.4 = 1.4694 mm
const holeDraft = holeTaper / 2 / 34 / 0.01746; // 1.238 deg a side
const holeBottom = 14.5 - holeTaper; // 13.03 mm
// Greatest depth, aluminium: 1/2 in (12.7 mm) 50.8 mm, printed in Product standards for aluminum die casting, draft
// angles (vendor sheet); 5/8 in (15.875 mm) 79.4 mm: memory. In between on the straight line.
const greatestDepth = 50.8 + ((79.4 - 50.8) * (14.5 - 12.7)) / (15.875 - 12.7); // 67.01 mm
// Without care: 13 mm 26, 16 mm 32 (Presbar Diecastings, Draft requirements and cored holes, vendor): two diameters.
const cautionDepth = 26 + ((32 - 26) * (14.5 - 13)) / (16 - 13); // 29 mm

// --- Dimension "port distance": 96 mm plus-minus 0.3 mm, across the slide of the inlet ------------------------------
// Linear, aluminium: 0.25 + 0.025 mm for every 25.4 mm beyond the first, precision 0.05 + 0.025 (Aluminum-Part, Die casting
// tolerances after the product standard of the trade, vendor).
const further = (96 - 25.4) / 25.4; // 2.7795
const standard = 0.25 + 0.025 * further; // 0.31949 mm
const precision = 0.05 + 0.025 * further; // 0.11949 mm
// Moving die part up to 10 in2 (64.5 cm2; its face is 1.65 cm2): 0.008 in, precision 0.006 in, plus side only: memory. Both in
// whole micrometres, as metric tolerances are printed: 0.203 and 0.152 mm.
const plusStandard = standard + 0.203; // 0.5225 mm > 0.3: the standard level does not hold
const plusPrecision = precision + 0.152; // 0.2715 mm <= 0.3: the precision level does

// --- Cores and slides ----------------------------------------------------------------------------------------------
// The die opens along z; inlet leaves to +x, outlet to -x: two directions off the opening, two core pulls. The cover screws
// run along z and need none. One slide for each direction is the rule of the trade (practice; Dynacast, Die simplification).
const corePulls = 2;
// Stroke: depth + boss 0 + clearance 8 mm (Casting Parts, Core pulling in die casting dies, vendor: 5 to 10 mm).
const stroke = 34 + 0 + 8; // 42 mm
// Pin at 18 deg (practice), lock 3 deg steeper (USM Mold, Slider designing tips, vendor: 2 to 3 deg).
const engagement = stroke / tan(18); // 129.3 mm
const lockAngle = 18 + 3;
const slideFace = (Math.PI * 14.5 ** 2) / 4 / 100; // 1.6513 cm2

// --- Metal pressure, slides -----------------------------------------------------------------------------------------
// Pressure-tight aluminium: 800 to 1000 kgf/cm2 (Die Casting Calculation, unsigned worksheet), 1 kgf/cm2 = 0.0980665 MPa.
const pressure = ((800 + 1000) / 2) * 0.0980665; // 88.26 MPa, the plan's table has 88.3
const slideForce = ((pressure * slideFace) / 10) * tan(lockAngle); // 14.57 kN x 0.3839 = 5.59 kN (statics of a wedge)
// --- Fill time ----------------------------------------------------------------------------------------------------
// Longest: t = K T (Ti - Tf + S Z) / (Tf - Td); form in HPDC Parameters, knowledge-base article; K = 0.0346 s/mm (H-13 with
// aluminium), Tf = 570 degC, Z = 4.8 K/%: memory.
const atGate = 670 - 35; // melt 670 degC (middle of 640 to 700, memory) less 35 K (middle of 20 to 50, practice)
const dieSurface = (180 + 250) / 2; // 215 degC (HPDC Parameters)
const solids = 20 + (50 - 20) / 3; // aluminium, 2 to 3 mm and more: 20 to 50 % (memory); ordinary finish, a third of the way
const longest = (1000 * 0.0346 * 3.2 * (atGate - 570 + solids * 4.8)) / (570 - dieSurface); // 0.11072 x 209 / 355: 65.2 ms
// Recommended: t = 0.035 h (Ti - Tl + 61) / (Ti - Tm), textbook form from memory; liquidus 570 degC (HSSCO, table A.3).
const recommended = (1000 * 0.035 * 4.2 * (atGate - 570 + 61)) / (atGate - dieSurface); // 0.147 x 126 / 420: 44.1 ms
// Planned: 0.25 of the way at 1 mm of wall to 0.55 at 4 mm, at most 0.9 of the longest (practice).
const way = 0.25 + ((0.55 - 0.25) * (3.2 - 1)) / (4 - 1); // 0.47
const planned = Math.min(recommended + way * (longest - recommended), 0.9 * longest); // 44.1 + 9.9 = 54.0 ms

// --- Overflows, gate ------------------------------------------------------------------------------------------------
// Good finish, wall of 3.2 mm and more: 0 to 10 %, middle 5 % (memory).
const overflow = 228 * 0.05; // 11.4 cm3
// The metal past the gate at the density of the liquid, 2.5 g/cm3 (Foundry Lexicon, Gate area, for AlSi9Cu3(Fe)).
const flowVolume = ((228 + 11.4) * 2.74) / 2.5; // 262.4 cm3
// Usual gate velocity of aluminium 40 to 50 m/s (HPDC Parameters); upper end at 1 mm of wall, lower at 5 mm (practice).
const velocity = 40 + (50 - 40) * ((5 - 3.2) / (5 - 1)); // 44.5 m/s
const gateArea = (flowVolume * 1000) / (velocity * planned); // A = V / (v t) (Foundry Lexicon, Gate area): 109.2 mm2
// Half the wall (practice, inside 0.4 to 0.8 of Gating and Runner Design Fundamentals, knowledge-base article); 0.8 to 2.5 mm.
const gateThickness = 4.2 / 2; // 2.1 mm
const gateWidth = gateArea / gateThickness; // 52.0 mm

// --- Runner: 1.1 to 1.4 times the gate (memory), trapezoid 2 to 3 times as wide as deep (Gating and Runner Design
// Fundamentals), walls at 10 deg (memory) -----------------------------------------------------------------------------
const runnerArea = gateArea * 1.25; // 136.5 mm2
const runnerDepth = Math.sqrt(runnerArea / (2.5 - tan(10))); // area = d (2.5 d - d tan 10): 7.66 mm
// Laid out (practice): 50 mm of steel beside a small die, 75 mm from 100 cm2 on, 5 mm more for each 100 cm2; the biscuit in the
// middle of a strip of 125 mm. A fan of 45 deg before the gate, the main runner up to it a fifth larger, so four fifths fall.
const steel = 50 + 25 * 0.76 + 5 * 0.76; // 72.8 mm
const runnerWidth = 2.5 * runnerDepth; // 19.2 mm
const fan = (gateWidth - runnerWidth) / 2 / tan(22.5); // 39.6 mm
const mainLength = steel + (125 - 50) / 2 - fan; // 70.7 mm
const mainArea = runnerArea / 0.8; // 170.6 mm2; a similar section, so as wide as the root says
const mainWidth = runnerWidth / Math.sqrt(0.8); // 21.4 mm
const runnerVolume = (mainArea * mainLength + ((runnerArea + gateArea) / 2) * fan) / 1000; // 12.06 + 4.87 = 16.9 cm3
const runnerSeen = (mainWidth * mainLength + ((runnerWidth + gateWidth) / 2) * fan) / 100; // 15.1 + 14.1 = 29.2 cm2

// --- Area and forces ----------------------------------------------------------------------------------------------
// Overflows 10 to 20 % of the casting's area, the middle taken (Idealhard, Selection of die casting machine tonnage, vendor);
// the biscuit is a circle of the plunger, 50 mm.
const area = 76 * 1.15 + runnerSeen + (Math.PI * 5 ** 2) / 4; // 87.4 + 29.2 + 19.6 = 136.3 cm2
const opening = (pressure * area) / 10; // MPa cm2 = 0.1 kN; 1203 kN (Foundry Lexicon, Die opening force)
// Factor 1.1 without slides (Foundry Lexicon, Die opening force); the slides are counted, so not 1.25.
const locking = 1.1 * (opening + 2 * slideForce); // 1336 kN
// The plant's sizes are 630, 1000, 1600, 2500 kN (invented): 1336 kN wants the 1600.
const use = (100 * locking) / 1600; // 83.5 %

// --- Shot, sleeve, plunger --------------------------------------------------------------------------------------------
// Biscuit: a third of 50 mm is less than the 25 mm that are kept (practice).
const biscuit = ((Math.PI * 5 ** 2) / 4) * 2.5; // 49.09 cm3
const shotVolume = 228 + overflow + runnerVolume + biscuit; // 305.4 cm3
const shotMass = (shotVolume * 2.74) / 1000; // 0.837 kg
// Fill: liquid metal over the active sleeve, 50 mm x 320 mm (Shot Profile and Intensification Pressure, knowledge-base article).
const sleeveFill = (100 * (shotMass * 1000)) / 2.5 / (((Math.PI * 5 ** 2) / 4) * 32); // 334.7 of 628.3 cm3: 53.3 %
const plungerSpeed = flowVolume / planned / ((Math.PI * 5 ** 2) / 4 / 10); // 4.858 l/s over 1.9635 x 10^-3 m2: 2.47 m/s

// --- Vents ------------------------------------------------------------------------------------------------------------
// A plain vent 0.11 mm deep over 25 mm (middles, memory), f = 0.012: 4 f L / D_h with D_h = 2 x 0.11 mm.
const frictionLength = (4 * 0.012 * 25) / 0.22; // 5.4545
// Choked adiabatic flow with friction (Fanno), air, 300 K: X = (1 - M^2) / (1.4 M^2) + 2.4 / 2.8 ln(2.4 M^2 / (2 + 0.4 M^2)).
// By trial: M = 0.2967 gives 5.4582, M = 0.2968 gives 5.4533; so M = 0.29677. The choice of the model is Bar-Meir's
// (Fundamentals of Die Casting Design).
const soundSpeed = Math.sqrt(1.4 * 287.05 * 300); // 347.2 m/s
const choked = (soundSpeed * 0.29677) / (1 + 0.2 * 0.29677 ** 2) ** 3; // 97.8 m/s
// Thin vents would need 45.3 mm2 / 0.11 mm = 412 mm, the line has (408 - 52) / 2 = 178 mm: a chill vent, 150 m/s (worked out
// by the same flow for a short open vent). Gas: cavity and overflows; the air of the sleeve has left in the slow shot, that of the
// runner before the metal is at the gate.
const gas = 228 + overflow; // 239.4 cm3
const plainArea = (gas * 1000) / (choked * planned); // 45.3 mm2
// Tight parts get 1.4 times the choked area (practice).
const ventArea = (1.4 * gas * 1000) / (150 * planned); // 41.4 mm2

export const BRAKE_VALVE_BODY: readonly Hand[] = [
  line('part.mass', mass, 'kg'),
  line('draft.wall-angle[outer]', outer, 'deg'),
  line('draft.wall-taper[outer]', taper(29, 60), 'mm'),
  line('draft.wall-precision[outer]', 0.8 * angle(29, 80), 'deg'),
  line('draft.wall-angle[chamber]', chamber, 'deg'),
  line('draft.wall-taper[chamber]', taper(44, 30), 'mm'),
  line('draft.wall-precision[chamber]', 0.8 * angle(44, 40), 'deg'),
  line('draft.least-inside', chamber, 'deg'),
  line('draft.least-outside', angle(44, 60), 'deg'),
  line('draft.hole-angle[inlet]', holeDraft, 'deg'),
  line('draft.hole-taper[inlet]', holeTaper, 'mm'),
  line('hole.bottom-diameter[inlet]', holeBottom, 'mm'),
  line('hole.greatest-depth[inlet]', greatestDepth, 'mm'),
  line('hole.caution-depth[inlet]', cautionDepth, 'mm'),
  line('tolerance.minus-standard[port distance]', standard, 'mm'),
  line('tolerance.plus-standard[port distance]', plusStandard, 'mm'),
  line('tolerance.minus-precision[port distance]', precision, 'mm'),
  line('tolerance.plus-precision[port distance]', plusPrecision, 'mm'),
  line('parting.core-pulls', corePulls, '1'),
  line('slide.stroke[S1]', stroke, 'mm'),
  line('slide.pin-engagement[S1]', engagement, 'mm'),
  line('slide.lock-angle[S1]', lockAngle, 'deg'),
  line('slide.face-area[S1]', slideFace, 'cm2'),
  line('clamp.pressure', pressure, 'MPa'),
  line('clamp.projected-area', area, 'cm2'),
  line('clamp.opening-force', opening, 'kN'),
  line('clamp.slide-opening-force[S1]', slideForce, 'kN'),
  line('clamp.slide-opening-force[S2]', slideForce, 'kN'),
  line('clamp.locking-force', locking, 'kN'),
  line('clamp.use', use, '%'),
  line('fill.gate-temperature', atGate, 'degC'),
  line('fill.solids', solids, '%'),
  line('fill.longest-time', longest, 'ms'),
  line('fill.recommended-time', recommended, 'ms'),
  line('fill.time', planned, 'ms'),
  line('overflow.volume', overflow, 'cm3'),
  line('gate.flow-volume', flowVolume, 'cm3'),
  line('gate.velocity', velocity, 'm/s'),
  line('gate.area', gateArea, 'mm2'),
  line('gate.thickness', gateThickness, 'mm'),
  line('gate.width', gateWidth, 'mm'),
  line('runner.area', runnerArea, 'mm2'),
  line('runner.depth', runnerDepth, 'mm'),
  line('runner.volume', runnerVolume, 'cm3'),
  line('sleeve.biscuit-volume', biscuit, 'cm3'),
  line('shot.volume', shotVolume, 'cm3'),
  line('shot.mass', shotMass, 'kg'),
  line('sleeve.fill', sleeveFill, '%'),
  line('sleeve.fast-speed', plungerSpeed, 'm/s'),
  line('vent.friction-length', frictionLength, '1'),
  line('vent.choked-velocity', choked, 'm/s'),
  line('vent.plain-area', plainArea, 'mm2'),
  line('vent.area', ventArea, 'mm2'),
];

/** Molten aluminium attacks iron, so the shot end stays out of the melt (SourceBySpec, vendor; NADCA table by alloy family). */
export const BRAKE_VALVE_BODY_WORDS: HandWords = {
  'machine.kind': 'cold-chamber',
  'tolerance.verdict[port distance]': 'precision',
  'hole.reach[inlet]': 'with care', // 34 mm lies between 29 and 67 mm
  'machine.model': 'cold-1600',
  'vent.kind': 'chill',
};
