import { formatNumber } from '../kernel/format.ts';
import type { YamlPath } from '../kernel/located-yaml.ts';
import type { CodeName } from './codes.ts';
import type { DirectionReading } from './direction.ts';
import type { Findings } from './findings.ts';
import type { Reading } from './leaves.ts';
import type { PartDraft } from './part-schema.ts';

/** Sides of the envelope in mm. */
export type Box = readonly [number, number, number];

const ALLOWANCE = 1.01;

export function boxOf(envelope: readonly (Reading | undefined)[] | undefined): Box | undefined {
  const [x, y, z] = (envelope ?? []).map((side) => side?.value);
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
}

/** Features against the envelope that they have to lie in, and against themselves. */
export function checkPlacement(draft: PartDraft, box: Box | undefined, findings: Findings): void {
  checkTolerances(draft, findings);
  checkRibForm(draft, findings);
  if (box === undefined) return;
  const diagonal = Math.hypot(...box);
  const longest = Math.max(...box);
  const against = (code: CodeName, path: YamlPath, reading: Reading | undefined, most: number, what: string): void => {
    if (reading === undefined || reading.value <= most * ALLOWANCE) return;
    findings.add(code, path, `${reading.written} is more than ${what}, ${formatNumber(most)} ${reading.unit}`, {
      fix: 'check the figure, its unit, and the envelope',
    });
  };
  for (const [i, wall] of (draft.walls ?? []).entries()) {
    against('wall-outside-part', ['walls', i, 'height'], wall?.height, diagonal, 'the diagonal of the envelope');
  }
  for (const [i, hole] of (draft.holes ?? []).entries()) {
    against('hole-outside-part', ['holes', i, 'diameter'], hole?.diameter, longest, 'the longest side of the envelope');
    against('hole-outside-part', ['holes', i, 'depth'], hole?.depth, depthAlong(box, hole?.direction), depthName(hole?.direction));
    against('hole-outside-part', ['holes', i, 'edge_distance'], hole?.edge_distance, diagonal, 'the diagonal of the envelope');
  }
  for (const [i, undercut] of (draft.undercuts ?? []).entries()) {
    const { direction } = undercut ?? {};
    against('undercut-outside-part', ['undercuts', i, 'depth'], undercut?.depth, depthAlong(box, direction), depthName(direction));
    if (direction !== undefined)
      against(
        'undercut-outside-part',
        ['undercuts', i, 'face_area'],
        undercut?.face_area,
        faceAlong(box, direction) / 100,
        'the envelope seen along the direction',
      );
  }
  for (const [i, rib] of (draft.ribs ?? []).entries()) {
    against('rib-outside-part', ['ribs', i, 'height'], rib?.height, diagonal, 'the diagonal of the envelope');
  }
  for (const [i, dimension] of (draft.dimensions ?? []).entries()) {
    against('dimension-outside-part', ['dimensions', i, 'nominal'], dimension?.nominal, diagonal, 'the diagonal of the envelope');
  }
}

/** Longest line of a direction inside the box; any direction may be meant when it could not be read. */
function depthAlong(box: Box, direction: DirectionReading | undefined): number {
  if (direction === undefined) return Math.hypot(...box);
  return Math.min(...box.map((side, i) => side / Math.abs(direction.vector[i as 0 | 1 | 2])));
}

function depthName(direction: DirectionReading | undefined): string {
  return direction === undefined ? 'the diagonal of the envelope' : `the envelope along ${direction.text}`;
}

/** Area of the box seen along a direction, in mm2. */
function faceAlong([x, y, z]: Box, { vector }: DirectionReading): number {
  return Math.abs(vector[0]) * y * z + Math.abs(vector[1]) * x * z + Math.abs(vector[2]) * x * y;
}

function checkTolerances(draft: PartDraft, findings: Findings): void {
  const against = (path: YamlPath, tolerance: Reading | undefined, nominal: Reading | undefined): void => {
    if (tolerance === undefined || nominal === undefined || tolerance.value < nominal.value) return;
    findings.add('tolerance-above-nominal', path, `a tolerance of ${tolerance.written} leaves nothing of ${nominal.written}`, {
      fix: 'check both figures and their units',
    });
  };
  for (const [i, dimension] of (draft.dimensions ?? []).entries()) against(['dimensions', i, 'tolerance'], dimension?.tolerance, dimension?.nominal);
  for (const [i, hole] of (draft.holes ?? []).entries()) against(['holes', i, 'tolerance'], hole?.tolerance, hole?.diameter);
}

/** Two flanks of a given draft must not meet below the height, and the tip must be wide enough for its radius. */
function checkRibForm(draft: PartDraft, findings: Findings): void {
  for (const [i, rib] of (draft.ribs ?? []).entries()) {
    const { root_width: root, height, draft: taper, tip_radius: radius } = rib ?? {};
    if (root === undefined) continue;
    const tip = height === undefined || taper === undefined ? root.value : root.value - 2 * height.value * Math.tan((taper.value * Math.PI) / 180);
    if (tip < -0.01 * root.value) {
      findings.add('rib-tip', ['ribs', i, 'height'], `with ${taper?.written} on each flank, a root of ${root.written} runs out before ${height?.written}`, {
        fix: 'check height, root width and draft',
      });
    } else if (radius !== undefined && 2 * radius.value > Math.max(root.value, 0) * ALLOWANCE) {
      findings.add('rib-tip', ['ribs', i, 'tip_radius'], `a tip radius of ${radius.written} does not fit on a root of ${root.written}`, {
        fix: 'a full round tip has half the root width at most',
      });
    }
  }
}
