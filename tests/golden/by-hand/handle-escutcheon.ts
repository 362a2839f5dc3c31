/*
 * The handle escutcheon (examples/handle-escutcheon) on paper: a plated zinc part for the hot chamber.
 * Every figure is typed here with the work it was read in; "memory" is a figure that the rule tables mark as remembered,
 * "practice" a rule of the trade without a single source. Nothing is taken from the program. "Vendor" is a company's page.
 */
import { type Hand, type HandWords, line } from './hand.ts';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

// --- Part -------------------------------------------------------------------------------------------------------
// ZP3 is Zamak 3, ZnAl4: 6.6 g/cm3 (data sheet of the zinc industry as reprinted by Exact Tool, vendor; an EN sheet has 6.7).
const volume = 118 / 6.6; // 17.88 cm3

// --- Draft: D = sqrt(L) / C in inches, A = (D / L) / 0.01746 (NADCA S-4A-7-06, draft requirements) ------------------
// Zinc: C = 50 inside, 100 outside, 34 hole; precision level 0.8 sqrt(L) / C with 60, 120, 40: all memory.
const taper = (depth: number, constant: number): number => (Math.sqrt(depth / 25.4) / constant) * 25.4; // mm
const angle = (depth: number, constant: number): number => taper(depth, constant) / depth / 0.01746; // deg
const skirt = angle(11, 100); // sqrt(0.43307) / 100 x 25.4 = 0.1672 mm; 0.870 deg
const innerSkirt = angle(9, 50); // sqrt(0.35433) / 50 x 25.4 = 0.3024 mm; 1.924 deg

// --- Hole "screw post": 2.9 mm, 8 mm deep -------------------------------------------------------------------------
const holeTaper = taper(8, 34); // on the diameter: sqrt(0.31496) / 34 x 25.4 = 0.4193 mm
const holeDraft = holeTaper / 2 / 8 / 0.01746; // 1.501 deg a side
const holeBottom = 2.9 - holeTaper; // 2.481 mm
// Zinc below 4 mm of diameter: 9 mm deep (Presbar Diecastings, Draft requirements and cored holes, vendor). The table of
// greatest depths begins at 1/8 in (3.18 mm), so this hole has none.
const cautionDepth = 9;

// --- Cores: the screw posts run along -z and the die opens along z, so their cores stand fixed: no core pull ------------
const corePulls = 0;

// --- Metal pressure -------------------------------------------------------------------------------------------------
// Chrome-plated zinc: 220 to 250 bar (memory), the middle.
const pressure = (22 + 25) / 2; // 23.5 MPa

// --- Fill time ----------------------------------------------------------------------------------------------------
// Longest: t = K T (Ti - Tf + S Z) / (Tf - Td); form in HPDC Parameters, knowledge-base article; K = 0.0312 s/mm (P-20 with
// zinc), Tf = 382 degC, Z = 2.5 K/%: memory.
const melt = (415 + 435) / 2; // 425 degC (Siegfried Müller, Zinc alloys after EN 12844, vendor)
const atGate = melt - ((415 + 430) / 2 - (395 + 415) / 2); // less 17.5 K, pot 415 to 430, gate 395 to 415 degC (memory): 407.5
const dieSurface = (150 + 200) / 2; // 175 degC (HPDC Parameters)
const solids = 15; // zinc, wall of 1.25 to 2 mm: 15 to 30 % (memory); plated, so the low end
const longest = (1000 * 0.0312 * 1.4 * (atGate - 382 + solids * 2.5)) / (382 - dieSurface); // 0.04368 x 63 / 207: 13.3 ms
// Recommended: t = 0.035 h (Ti - Tl + 61) / (Ti - Tm), textbook form from memory; liquidus 387 degC (zinc data sheet, Exact Tool).
const recommended = (1000 * 0.035 * 1.7 * (atGate - 387 + 61)) / (atGate - dieSurface); // 0.0595 x 81.5 / 232.5: 20.9 ms
// The longest rules: 0.9 of it (practice), since the way from 20.9 to 13.3 ms ends above it. 0.1 at 1 mm to 0.4 at 4 mm (practice).
const way = 0.1 + ((0.4 - 0.1) * (1.4 - 1)) / (4 - 1); // 0.14
const planned = Math.min(recommended + way * (longest - recommended), 0.9 * longest); // min(19.8, 11.96) ms

// --- Overflows, gate ------------------------------------------------------------------------------------------------
// Good finish: 100 % at 1.3 mm of wall, 50 % at 1.8 mm (memory); 1.7 mm lies four fifths of the way.
const overflow = volume * (1 - 0.5 * 0.8); // 60 %: 10.73 cm3
const flowVolume = ((volume + overflow) * 6.6) / 6.1; // liquid zinc 6.1 g/cm3, inside 6.0 to 6.3 (memory): 30.95 cm3
// Window 25 to 50 m/s (HPDC Parameters), the middle half of it 31.25 to 43.75; upper end at 1 mm, lower at 5 mm (practice).
const velocity = 31.25 + (43.75 - 31.25) * ((5 - 1.4) / (5 - 1)); // 42.5 m/s
const gateArea = (flowVolume * 1000) / (velocity * planned); // A = V / (v t) (Foundry Lexicon, Gate area): 60.9 mm2
// A third of the wall (Die Casting Calculation, unsigned worksheet: h/4 to h/3), inside 0.25 to 1.2 mm (memory).
const gateThickness = 1.7 / 3; // 0.567 mm
const gateWidth = gateArea / gateThickness; // 107 mm

// --- Runner: 1.05 to 1.3 times the gate (memory), trapezoid 2 to 3 times as wide as deep (Gating and Runner Design
// Fundamentals, knowledge-base article), walls at 10 deg (memory) -------------------------------------------------------
const runnerArea = (gateArea * (1.05 + 1.3)) / 2; // 71.5 mm2
const runnerDepth = Math.sqrt(runnerArea / (2.5 - tan(10))); // 5.55 mm
// Laid out (practice): 50 mm of steel beside a small die, 75 mm from 100 cm2 on, 5 mm more for each 100 cm2, between sprue and
// cavity. The main runner is larger by a fifth of itself; along the gate the runner falls to 0.15 of its area.
const steel = 50 + 25 * 0.41 + 5 * 0.41; // 62.3 mm
const runnerWidth = 2.5 * runnerDepth; // 13.9 mm
const mainArea = runnerArea / 0.8; // 89.4 mm2
const mainWidth = runnerWidth / Math.sqrt(0.8); // 15.5 mm
// The sprue before it, as long as the steel is wide, begins with a tenth more than the main runner has (practice) and ends with it.
const sprue = (((1.1 + 1) / 2) * mainArea * steel) / 1000; // 5.85 cm3
const runnerVolume = (mainArea * steel + ((runnerArea * 1.15) / 2) * gateWidth) / 1000 + sprue; // 5.57 + 4.42 + 5.85 = 15.84 cm3
const runnerSeen = (mainWidth * steel + ((runnerWidth * (1 + Math.sqrt(0.15))) / 2) * gateWidth) / 100 + (2 * 1.1 * mainArea) / 100; // 9.66 + 10.34, and the foot of the sprue, twice its beginning (practice): 22.0 cm2

// --- Area and forces ----------------------------------------------------------------------------------------------
// Overflows four times as deep as the wall, 6 to 10 mm (practice). No biscuit; the sprue is counted with the runner.
const overflowArea = (10 * overflow) / (4 * 1.7); // 10.73 cm3, 6.8 mm deep: 15.8 cm2
const area = 41 + overflowArea + runnerSeen; // 78.7 cm2
// Fill pressure of the machine 12 MPa on a cylinder of 65 mm (invented plant); a hot chamber has no intensifier. All of it stands
// on the full die, whatever the class asks for.
const available = (12 * 65 ** 2) / 45 ** 2; // 25.0 MPa, above the 23.5 wanted
const opening = (available * area) / 10; // MPa cm2 = 0.1 kN (Foundry Lexicon, Die opening force): 197 kN
const locking = 1.1 * opening; // factor without slides (Foundry Lexicon, Die opening force): 216.9 kN
const use = (100 * locking) / 500; // 43.4 % of the 500 kN machine of the invented plant

// --- Shot, pot, plunger -----------------------------------------------------------------------------------------------
const shotVolume = volume + overflow + runnerVolume; // no biscuit: 44.4 cm3
const shotMass = (shotVolume * 6.6) / 1000; // 0.293 kg
const plungerArea = (Math.PI * 4.5 ** 2) / 4; // 45 mm: 15.90 cm2
const stroke = ((shotMass * 1000) / 6.1 / plungerArea) * 10; // 48.1 cm3 of liquid: 30.2 mm
const plungerSpeed = flowVolume / planned / (plungerArea / 10); // 2.587 l/s over 1.590 x 10^-3 m2: 1.63 m/s
// Spike 1.5 of the pressure that drives the metal, rho v^2 / (2 Cd^2) with Cd = 0.6 (memory), if the plunger is braked (Shot
// Profile and Intensification Pressure, knowledge-base article): below 25.0 MPa, so the static pressure sizes the clamp.
const spike = (1.5 * (6100 * velocity ** 2)) / (2 * 0.6 ** 2) / 1e6; // 22.95 MPa

// --- Vents ------------------------------------------------------------------------------------------------------------
const frictionLength = (4 * 0.012 * 25) / (2 * 0.085); // depth 0.085, land 25 mm (middles, memory), f = 0.012: 7.0588
// Choked adiabatic flow with friction (Fanno), air, 300 K: X = (1 - M^2) / (1.4 M^2) + 2.4 / 2.8 ln(2.4 M^2 / (2 + 0.4 M^2)).
// By trial: M = 0.2688 gives 7.0633, M = 0.2689 gives 7.0566; so M = 0.26887. The choice of the model is Bar-Meir's
// (Fundamentals of Die Casting Design).
const choked = (Math.sqrt(1.4 * 287.05 * 300) * 0.26887) / (1 + 0.2 * 0.26887 ** 2) ** 3; // 89.4 m/s
// Gooseneck and nozzle stand full of metal, and the gas of the runner has left by the time that the fill begins.
const gas = volume + overflow; // 28.6 cm3
// Thin vents: 26.7 mm2 / 0.085 mm = 315 mm where (336 - 107) / 2 = 114 mm are free: a chill vent, 150 m/s.
const plainArea = (gas * 1000) / (choked * planned); // 26.7 mm2
// Plated parts get 1.4 times the choked area (practice).
const ventArea = (1.4 * gas * 1000) / (150 * planned); // 22.3 mm2

export const HANDLE_ESCUTCHEON: readonly Hand[] = [
  line('part.volume', volume, 'cm3'),
  line('draft.wall-angle[skirt]', skirt, 'deg'),
  line('draft.wall-taper[skirt]', taper(11, 100), 'mm'),
  line('draft.wall-precision[skirt]', 0.8 * angle(11, 120), 'deg'),
  line('draft.wall-angle[inner skirt]', innerSkirt, 'deg'),
  line('draft.wall-taper[inner skirt]', taper(9, 50), 'mm'),
  line('draft.wall-precision[inner skirt]', 0.8 * angle(9, 60), 'deg'),
  line('draft.least-inside', angle(11, 50), 'deg'),
  line('draft.least-outside', angle(11, 100), 'deg'),
  line('draft.hole-angle[screw post]', holeDraft, 'deg'),
  line('draft.hole-taper[screw post]', holeTaper, 'mm'),
  line('hole.bottom-diameter[screw post]', holeBottom, 'mm'),
  line('hole.caution-depth[screw post]', cautionDepth, 'mm'),
  line('parting.core-pulls', corePulls, '1'),
  line('clamp.pressure', pressure, 'MPa'),
  line('clamp.projected-area', area, 'cm2'),
  line('clamp.spike-pressure', spike, 'MPa'),
  line('clamp.opening-force', opening, 'kN'),
  line('clamp.slide-force-total', 0, 'kN'),
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
  line('shot.volume', shotVolume, 'cm3'),
  line('shot.mass', shotMass, 'kg'),
  line('pot.stroke-needed', stroke, 'mm'),
  line('pot.plunger-speed', plungerSpeed, 'm/s'),
  line('machine.metal-pressure', available, 'MPa'),
  line('vent.friction-length', frictionLength, '1'),
  line('vent.choked-velocity', choked, 'm/s'),
  line('vent.plain-area', plainArea, 'mm2'),
  line('vent.area', ventArea, 'mm2'),
];

/** Zinc hardly attacks iron: hot chamber (International Zinc Association, EN 12844 table; NADCA table by alloy family). */
export const HANDLE_ESCUTCHEON_WORDS: HandWords = {
  'machine.kind': 'hot-chamber',
  'hole.reach[screw post]': 'usual', // 8 mm is less than 9 mm
  'machine.model': 'hot-500',
  'vent.kind': 'chill',
};
