import type { YamlPath } from '../kernel/located-yaml.ts';
import { printable } from '../kernel/printable.ts';
import { didYouMean, orList } from '../kernel/spelling.ts';
import { checkGeometry } from './check-geometry.ts';
import { type Box, boxOf, checkPlacement } from './check-placement.ts';
import { dataAt, type Findings } from './findings.ts';
import type { PartDraft } from './part-schema.ts';

/** Contradictions inside one part file. Works on what could be read, and reports only what cannot be true. */
export function checkPart(draft: PartDraft, findings: Findings): void {
  const box: Box | undefined = boxOf(draft.geometry?.envelope);
  checkIds(draft, findings);
  const sound = draft.geometry === undefined || checkGeometry(draft.geometry, box, findings);
  // An envelope that contradicts the volume or an area is no measure for anything else.
  checkPlacement(draft, sound ? box : undefined, findings);
  checkSlides(draft, findings);
  checkPins(findings);
  checkCertificate(draft, findings);
  checkAccepted(draft, findings);
  const { life, per_year: perYear } = draft.production ?? {};
  if (life !== undefined && perYear !== undefined && life.value < perYear.value) {
    const notes = ['The die is planned for less than one year.'];
    findings.add('life-below-year', ['production', 'life'], `${life.written} parts in all are fewer than ${perYear.written} in one year`, {
      severity: 'note',
      notes,
      fix: 'check both numbers',
    });
  }
}

const LISTS = ['walls', 'holes', 'undercuts', 'inserts', 'ribs', 'fillets', 'dimensions', 'machining'] as const;

/** One id, one entry; a slide is named by its undercut or hole, so these two lists share their ids. */
function checkIds(draft: PartDraft, findings: Findings): void {
  const holes = new Set<string>();
  for (const list of LISTS) {
    const seen = list === 'undercuts' ? holes : new Set<string>();
    reportDoubles(draft[list], list, seen, findings);
    if (list === 'holes') for (const id of seen) holes.add(id);
  }
}

export function reportDoubles(
  entries: readonly ({ readonly id?: string | undefined } | undefined)[] | undefined,
  list: string | YamlPath,
  seen: Set<string>,
  findings: Findings,
): void {
  const path = typeof list === 'string' ? [list] : list;
  for (const [i, entry] of (entries ?? []).entries()) {
    if (entry?.id === undefined) continue;
    if (seen.has(entry.id)) findings.add('duplicate-id', [...path, i, 'id'], 'another entry has this id already', { fix: 'give each entry an id of its own' });
    seen.add(entry.id);
  }
}

function checkSlides(draft: PartDraft, findings: Findings): void {
  const known = [...(draft.undercuts ?? []), ...(draft.holes ?? [])].flatMap((entry) => (entry?.id === undefined ? [] : [entry.id]));
  const unread = [...(draft.undercuts ?? []), ...(draft.holes ?? [])].some((entry) => entry?.id === undefined);
  for (const [i, dimension] of (draft.dimensions ?? []).entries()) {
    if (dimension?.slide === undefined) continue;
    const path: YamlPath = ['dimensions', i, 'slide'];
    // An entry whose own id could not be read may be the one that is meant.
    if (!known.includes(dimension.slide) && !unread) {
      const fix =
        known.length === 0
          ? 'add the undercut or hole whose slide forms it'
          : known.length <= 12
            ? `write one of ${orList(known)}`
            : 'write the id of an undercut or hole';
      findings.add('slide-unknown', path, `no undercut or hole is called "${printable(dimension.slide)}"${didYouMean(dimension.slide, known)}`, { fix });
    } else if (dimension.across !== undefined && dimension.across !== 'slide') {
      findings.add('slide-not-across', path, `a slide is named, but "across: ${dimension.across}" stands beside it`, {
        fix: 'write "across: slide", or remove "slide"',
      });
    }
  }
}

function checkCertificate(draft: PartDraft, findings: Findings): void {
  const shares = Object.values(draft.certificate ?? {}).map((share) => share?.value ?? 0);
  const sum = shares.reduce((total, share) => total + share, 0);
  // Certificates are rounded; half a per cent covers it.
  if (sum > 100.5)
    findings.add('share-above-whole', ['certificate'], `the shares add up to ${Number(sum.toPrecision(4))} %`, {
      fix: 'check the figures and their units',
      part: 'key',
    });
}

/** The same finding accepted twice would have two reasons. */
export function checkAccepted(draft: Pick<PartDraft, 'accepted'>, findings: Findings): void {
  const seen = new Set<string>();
  for (const [i, entry] of (draft.accepted ?? []).entries()) {
    if (entry?.code === undefined) continue;
    const key = JSON.stringify([entry.code, entry.item]);
    if (seen.has(key)) {
      const what = entry.item === undefined ? entry.code : `${entry.code} of ${printable(entry.item)}`;
      findings.add('accepted-twice', ['accepted', i, 'code'], `${printable(what)} is accepted already`, { fix: 'keep one of the two, with one reason' });
    }
    seen.add(key);
  }
}

/** Counts that a plan lays castings out by, one after the other: a fraction has no layout, and thousands take hours. */
const COUNTED = ['machine.cavities', 'die.columns', 'die.rows'];
const MOST_COUNTED = 64;

/** What no pin can be, whatever the plan; what each one means is judged when the plan is made. */
export function checkPins(findings: Findings): void {
  for (const id of COUNTED) {
    const written = dataAt(findings.yaml.data, ['pinned', id]);
    if (typeof written !== 'string' || isCount(written)) continue;
    findings.add('pin-count', ['pinned', id], `pinned ${id} is "${printable(written)}", and castings are counted`, {
      fix: `write a whole number from 1 to ${MOST_COUNTED}`,
    });
  }
  // The schema library passes over this one key of a free mapping; it must be as wrong as any other wrong name.
  if (dataAt(findings.yaml.data, ['pinned', '__proto__']) === undefined) return;
  findings.add('pin-form', ['pinned', '__proto__'], 'is not the name of a plan value', {
    fix: 'write a name such as "machine.cavities" or "hole.draft[H1]"',
    part: 'key',
  });
}

function isCount(written: string): boolean {
  const count = Number(written);
  return Number.isInteger(count) && count >= 1 && count <= MOST_COUNTED;
}
