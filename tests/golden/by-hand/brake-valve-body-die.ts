/*
 * The die of the brake valve body on paper: heat, one cooling line, plate, mass, trimming. Written as in brake-valve-body.ts:
 * nothing is taken from the program; what a heat solution or a search gives (ejection temperature apart) is left out.
 */
import { type Hand, line } from './hand.ts';

// --- Heat of a kilogram: 635 degC at the gate down to 385 degC (textbook, memory) ------------------------------------
// Liquidus 570, solidus 525 degC and 911 J/(kg.K) are those of the near alloys 46100 (BS tables) and ADC12; 1,177 J/(kg.K)
// of liquid aluminium (SGTE); latent heat 407.6 + 11.98 (11 - 4.85) kJ/kg (Djurdjevic, measured and led on: 11 % Si).
const latent = 407.6 + 11.98 * (11 - 4.85); // 481.3 kJ/kg
const perMass = 1.177 * (635 - 570) + latent + 0.911 * (570 - 385); // 726.3 kJ/kg

// --- One line of a row (Cengel T3-7, memory): 8 mm, 20 mm deep, pitch half way between the two rules of the trade ------
// Pitch 2.5 to 4 diameters and 1.5 to 2 depths (practice): 30 and 32 mm, so 31 mm. Along the longer side a line lies under
// the casting, the strip of 125 mm for the biscuit, and a depth to each side: 86 + 125 + 2 x 20 = 251 mm.
const pitch = (Math.max(2.5 * 8, 1.5 * 20) + Math.min(4 * 8, 2 * 20)) / 2; // 31 mm
const shape = (2 * Math.PI * 0.251) / Math.log(((2 * pitch) / (Math.PI * 8)) * Math.sinh((2 * Math.PI * 20) / pitch)); // 0.3699 m
const throughSteel = shape * 25; // 9.248 W/K with 25 W/(m.K), the working value of H13 data sheets

// --- Support plate --------------------------------------------------------------------------------------------------
// 88.3 MPa (900 kgf/cm2, worksheet) on 76 cm2 and 15 % of overflows; on the backs of inserts of 214.6 x 182.6 mm, the
// casting 118 x 86 mm with 48.3 mm of edge: 69 mm usual for 76 cm2 (50 to 75 mm), less what the tie bars take.
const backForce = (88.3 * 76 * 1.15) / 10; // 771.7 kN
const backPressure = (1000 * backForce) / (214.6 * 182.6); // 19.69 MPa
// A strip 1 mm wide, freely supported: 5 p L^4 / (384 E t^3 / 12), plate 50 mm (memory), 205 GPa; one row of pillars.
const bow = (span: number): number => (5 * backPressure * span ** 4) / (384 * 205000 * (50 ** 3 / 12)); // mm
const free = bow(214.6); // 0.2547 mm, above the 0.05 mm allowed
const withPillars = free / 16; // 0.01592 mm

// --- Mass: 7.8 kg/dm3 and nine tenths of the envelope (practice) ---------------------------------------------------------
const dieMass = 7.8 * 0.9 * 4.1 * 3.878 * 4.71; // 525.7 kg of 410 x 387.8 x 471 mm

// --- Trimming: 1.3 x 170 MPa on gate, overflow gates and flash -------------------------------------------------------------
// No shear strength of EN AC-46100 was found: 0.6 of 240 MPa would be 144, below the least of 170 MPa that the trade sees.
const gate = 109.2; // mm2, from the page before, half of the wall of 4.2 mm thick: 52 mm wide
// Overflow gates behind so thick a gate are 0.6 of it (practice), 1.26 mm: 43.3 mm of the outline of 408 mm.
const flash = 408 - gate / 2.1 - gate / 2 / (0.6 * 2.1); // 312.7 mm
// Overflow gates half the gate (Overflows in die casting).
const sheared = gate * 1.5 + 0.2 * flash; // flash 0.2 mm: 226.3 mm2
const trim = (1.3 * 170 * sheared) / 1000; // 50 kN

// --- Sets: 450,000 parts and 5 % rejects, one cavity, 125,000 shots a set (NADCA by family) ----------------------------------
const shots = 450000 / 0.95; // 473,700
const sets = Math.ceil(shots / 125000); // 4

export const BRAKE_VALVE_BODY_DIE: readonly Hand[] = [
  line('heat.per-mass', perMass, 'kJ/kg'),
  line('cooling.pitch', pitch, 'mm'),
  line('cooling.row-shape-factor', shape, 'm'),
  line('cooling.steel-conductance', throughSteel, 'W/K'),
  line('die.back-force', backForce, 'kN'),
  line('die.back-pressure', backPressure, 'MPa'),
  line('die.plate-bow-free', free, 'mm'),
  line('die.plate-bow', withPillars, 'mm'),
  line('die.mass', dieMass, 'kg'),
  line('finish.cavity-section', sheared, 'mm2'),
  line('finish.trim-force', trim, 'kN'),
  line('die.shots-needed', shots, '1'),
  line('die.sets', sets, '1'),
];
