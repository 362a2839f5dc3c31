import { formatNumber } from '../kernel/format.ts';
import type { YamlPath } from '../kernel/located-yaml.ts';
import type { Box } from './check-placement.ts';
import type { Findings } from './findings.ts';
import type { PartDraft } from './part-schema.ts';

type GeometryDraft = NonNullable<PartDraft['geometry']>;

/** Room for rounded figures and for draft that the envelope does not count. */
const ALLOWANCE = 1.01;
/** No alloy of the seven families is lighter or denser, pores included (magnesium 1.7, lead 11.3 g/cm3). */
const LIGHTEST = 1.3;
const DENSEST = 12;

const AXES = [
  { axis: 'x', across: [1, 2] },
  { axis: 'y', across: [0, 2] },
  { axis: 'z', across: [0, 1] },
] as const;

/**
 * Wall, areas, volume, mass and surface against the envelope and against each other. False when the envelope is in
 * doubt afterwards.
 */
export function checkGeometry(geometry: GeometryDraft, box: Box | undefined, findings: Findings): boolean {
  checkWall(geometry, box, findings);
  checkPartingLine(geometry, findings);
  const { volume, mass } = geometry;
  if (volume !== undefined && mass !== undefined) {
    const density = (mass.value * 1000) / volume.value;
    if (density < LIGHTEST || density > DENSEST) {
      findings.add('impossible-density', ['geometry', 'mass'], `${mass.written} in ${volume.written} is ${formatNumber(density)} g/cm3`, {
        notes: ['Die casting alloys have 1.7 g/cm3 (magnesium) to 11.3 g/cm3 (lead).'],
        fix: 'check mass, volume and their units',
      });
      return true;
    }
  }
  if (box !== undefined && !(checkAreas(geometry, box, findings) && checkVolume(geometry, box, findings))) return false;
  if (volume !== undefined) checkSurface(geometry, volume, findings);
  checkLeastMetal(geometry, findings);
  return true;
}

function checkAreas(geometry: GeometryDraft, box: Box, findings: Findings): boolean {
  let sound = true;
  for (const { axis, across } of AXES) {
    const area = geometry.projected_area?.[axis];
    const side = (box[across[0]] * box[across[1]]) / 100;
    if (area === undefined || area.value <= side * ALLOWANCE) continue;
    sound = false;
    findings.add(
      'area-above-envelope',
      ['geometry', 'projected_area', axis],
      `${area.written} is more than the envelope seen along ${axis}, ${formatNumber(side)} cm2`,
      { fix: 'check the area, its unit, and the order of the envelope: x, y, z' },
    );
  }
  return sound;
}

function checkVolume(geometry: GeometryDraft, box: Box, findings: Findings): boolean {
  const { volume, mass } = geometry;
  // With the mass alone, the smallest volume it can have is that of the densest alloy.
  const least = volume?.value ?? (mass === undefined ? undefined : (mass.value * 1000) / DENSEST);
  if (least === undefined) return true;
  const shown = volume?.written ?? mass?.written;
  const path: YamlPath = ['geometry', volume === undefined ? 'mass' : 'volume'];
  const full = (box[0] * box[1] * box[2]) / 1000;
  if (least > full * ALLOWANCE) {
    findings.add('volume-above-envelope', path, `${shown} does not fit into the envelope, which holds ${formatNumber(full)} cm3`, {
      fix: 'check the figure, its unit, and the envelope',
    });
    return false;
  }
  for (const [i, { axis }] of AXES.entries()) {
    const area = geometry.projected_area?.[axis];
    const most = area === undefined ? Number.POSITIVE_INFINITY : (area.value * box[i as 0 | 1 | 2]) / 10;
    if (least <= most * ALLOWANCE) continue;
    findings.add('volume-above-area', path, `${shown} is more than the projected area along ${axis} times the depth of the part, ${formatNumber(most)} cm3`, {
      fix: 'check the figure, the projected area, and their units',
    });
    return false;
  }
  return true;
}

function checkWall({ wall }: GeometryDraft, box: Box | undefined, findings: Findings): void {
  if (wall === undefined) return;
  const order = (['least', 'nominal', 'greatest'] as const).flatMap((name) => (wall[name] === undefined ? [] : [{ name, reading: wall[name] }]));
  for (let i = 1; i < order.length; i += 1) {
    const [a, b] = [order[i - 1], order[i]];
    if (a === undefined || b === undefined || a.reading.value <= b.reading.value) continue;
    findings.add('wall-order', ['geometry', 'wall', b.name], `the ${b.name} wall of ${b.reading.written} is below the ${a.name} wall of ${a.reading.written}`, {
      fix: 'write least, nominal and greatest in rising order',
    });
  }
  const largest = order[order.length - 1];
  if (box === undefined || largest === undefined) return;
  // A wall thickness is the width of metal at a place, so it cannot be more than the part is thick.
  const thinnest = Math.min(...box);
  if (largest.reading.value > thinnest * ALLOWANCE) {
    findings.add(
      'wall-outside-part',
      ['geometry', 'wall', largest.name],
      `a wall of ${largest.reading.written} is thicker than the envelope, ${formatNumber(thinnest)} mm at its thinnest`,
      { fix: 'check the wall, the envelope, and their units' },
    );
  }
}

function checkSurface({ surface_area: surface, wall }: GeometryDraft, volume: NonNullable<GeometryDraft['volume']>, findings: Findings): void {
  if (surface === undefined) return;
  // Of all bodies of one volume the ball has the least surface.
  const ball = Math.cbrt(36 * Math.PI * volume.value ** 2);
  if (surface.value * ALLOWANCE < ball) {
    findings.add(
      'surface-below-volume',
      ['geometry', 'surface_area'],
      `${surface.written} is less than the surface of a ball of ${volume.written}, ${formatNumber(ball)} cm2`,
      { fix: 'check surface, volume, and their units' },
    );
    return;
  }
  const greatest = wall?.greatest;
  // A plate has volume = surface x thickness / 2; twice that is beyond any casting with such walls.
  if (greatest !== undefined && volume.value > (surface.value * greatest.value) / 10) {
    findings.add(
      'volume-against-wall',
      ['geometry', 'volume'],
      `${volume.written} is more than a surface of ${surface.written} can enclose with walls up to ${greatest.written}`,
      { severity: 'warning', fix: 'check volume, surface, greatest wall, and their units' },
    );
  }
}

/** Share of the least metal below which the figures can only be slips, such as grams for kilograms; walls are not that uneven. */
const SLIP = 0.1;

/** Volume, or with the mass alone the volume that the lightest alloy would have, against the metal that areas and least wall ask for. */
function checkLeastMetal({ volume, mass, wall, projected_area: areas }: GeometryDraft, findings: Findings): void {
  const least = wall?.least;
  const most = volume?.value ?? (mass === undefined ? undefined : (mass.value * 1000) / LIGHTEST);
  if (least === undefined || most === undefined) return;
  // Every line of sight through the part meets at least one wall; half of it leaves room for rounded and cut edges.
  const seen = AXES.flatMap(({ axis }) => {
    const area = areas?.[axis];
    return area === undefined ? [] : [{ axis, area, share: most / (area.value * (least.value / 10)) }];
  });
  const [worst] = seen.sort((one, other) => one.share - other.share);
  if (worst === undefined || worst.share >= 0.5) return;
  const { axis, area, share } = worst;
  const field = volume === undefined ? 'mass' : 'volume';
  findings.add(
    'volume-against-wall',
    ['geometry', field],
    `${(volume ?? mass)?.written} is less than ${share < SLIP ? 'a tenth' : 'half'} of ${area.written} seen along ${axis} times the least wall of ${least.written}`,
    { ...(share < SLIP ? {} : { severity: 'warning' as const }), fix: `check ${field}, projected area, least wall, and their units` },
  );
}

function checkPartingLine(geometry: GeometryDraft, findings: Findings): void {
  const { die_opening: opening, parting_line: line } = geometry;
  if (line === undefined || opening === undefined || opening === 'auto') return;
  const along = AXES.find((_, i) => Math.abs(opening.vector[i as 0 | 1 | 2]) === 1);
  const area = along === undefined ? undefined : geometry.projected_area?.[along.axis];
  if (area === undefined) return;
  // Of all closed lines around one area the circle is the shortest.
  const circle = 2 * Math.sqrt(Math.PI * area.value * 100);
  if (line.value * ALLOWANCE < circle) {
    findings.add(
      'parting-line-too-short',
      ['geometry', 'parting_line'],
      `${line.written} cannot go around a projected area of ${area.written}, which takes ${formatNumber(circle)} mm at least`,
      { fix: 'check the parting line, the projected area, and their units' },
    );
  }
}
