import { segmentAngle, segmentShare } from './segment.ts';

/**
 * The metal's section in a round sleeve, without units: areas over the whole section, lengths over the diameter D,
 * speeds over sqrt(g D). A section that is full carries on in a narrow slot above the roof (Preissmann): the slot's
 * level is the head with which the metal presses against the roof, and one set of equations holds for both.
 */

/** Width of the slot over the diameter: narrow enough to hold next to no metal, wide enough for long time steps. */
const SLOT = 0.05;
/** Area of the slot for a height of one diameter, over the whole section. */
const SLOT_AREA = (4 / Math.PI) * SLOT;
/** The slot begins where the chord of the circle has narrowed to it. */
const JOIN_ANGLE = 2 * Math.PI - 2 * Math.asin(SLOT);
const JOIN = segmentShare(JOIN_ANGLE);
const JOIN_DEPTH = depthAt(JOIN_ANGLE);
const JOIN_THRUST = thrustAt(JOIN_ANGLE);

/** Points of the tables between an empty section and the slot; linear in between, which is good for six digits. */
const POINTS = 4096;

interface Tables {
  readonly depth: Float64Array;
  readonly thrust: Float64Array;
  readonly celerity: Float64Array;
}
let tables: Tables | undefined;

function depthAt(angle: number): number {
  return (1 - Math.cos(angle / 2)) / 2;
}

/** First moment of the section about its surface: the hydrostatic thrust over g D times the whole section. */
function thrustAt(angle: number): number {
  return Math.sin(angle / 2) ** 3 / (3 * Math.PI) - (segmentShare(angle) * Math.cos(angle / 2)) / 2;
}

/** Worked out at the first wave and not when the program starts. */
function built(): Tables {
  if (tables !== undefined) return tables;
  const [depth, thrust, celerity] = [new Float64Array(POINTS + 1), new Float64Array(POINTS + 1), new Float64Array(POINTS + 1)];
  for (let i = 1; i <= POINTS; i += 1) {
    const share = (JOIN * i) / POINTS;
    const angle = segmentAngle(share);
    depth[i] = depthAt(angle);
    thrust[i] = thrustAt(angle);
    celerity[i] = Math.sqrt((share * Math.PI) / (4 * Math.sin(angle / 2)));
  }
  tables = { depth, thrust, celerity };
  return tables;
}

function between(table: Float64Array, share: number): number {
  const place = (share / JOIN) * POINTS;
  const i = Math.floor(place);
  const low = table[i] as number;
  return low + (place - i) * ((table[i + 1] as number) - low);
}

/** Depth of the metal over the diameter; above 1 a head over the floor of a full sleeve. */
export function waveDepth(share: number): number {
  return share < JOIN ? between(built().depth, share) : JOIN_DEPTH + (share - JOIN) / SLOT_AREA;
}

/** Hydrostatic thrust over g D times the whole section. */
export function waveThrust(share: number): number {
  if (share < JOIN) return between(built().thrust, share);
  const head = (share - JOIN) / SLOT_AREA;
  return JOIN_THRUST + JOIN * head + (SLOT_AREA * head * head) / 2;
}

/** Speed of a small wave on metal at rest, sqrt(area / surface width). */
export function waveCelerity(share: number): number {
  return share < JOIN ? between(built().celerity, share) : Math.sqrt(share / SLOT_AREA);
}
