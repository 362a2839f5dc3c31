import type { Case } from '../ledger.ts';
import type { FindingChange, PartChange, Side, Standing } from './change.ts';
import { type CompareOptions, changesOf, findingsOnlyIn } from './compare.ts';
import { dieChange } from './die.ts';
import type { KeptFinding, Snapshot } from './snapshot.ts';

/** The figures that tables show and totals add up. */
export const FIGURES = [
  'production.per-year',
  'machine.cavities',
  'machine.locking-force',
  'cycle.time',
  'cycle.hours',
  'production.hours-per-year',
  'part.mass',
  'metal.new-per-part',
  'cost.per-part',
  'cost.per-year',
  'cost.die',
  'cost.set',
] as const;

/** Findings about the melt certificate in the part description, which is that of the alloy before. */
const CERTIFICATE = /^(range\/)?certificate[/.]/;

/**
 * Holds two plans of one part against each other.
 *
 * @param given the case of the plan after: the die is judged by its rules
 * @param remarks what had to be done to the part description first
 */
export function comparePlans(before: Snapshot, after: Snapshot, given: Case, options: CompareOptions, remarks: readonly string[]): PartChange {
  const otherAlloy = before.alloy.id !== after.alloy.id;
  const titles = (code: string): string | undefined => given.rulebook.limits[code]?.title;
  const counted = otherAlloy ? after.findings.filter(({ code }) => !CERTIFICATE.test(code)) : after.findings;
  const setAside = after.findings.length - counted.length;
  const now: Snapshot = { ...after, findings: counted };
  const sides = { before: sideOf(before), after: sideOf(now) };
  const standing = standingOf(sides.before.castable, sides.after.castable);
  const { groups, small, further } = changesOf(before, after, options);
  const perYear = after.values.get('production.per-year')?.value ?? before.values.get('production.per-year')?.value;
  const { name, number, revision } = after.part;
  return {
    file: after.part.file,
    part: { name, ...(number === undefined ? {} : { number }), ...(revision === undefined ? {} : { revision }) },
    ...(perYear === undefined ? {} : { perYear }),
    ...sides,
    standing,
    remarks: [...remarks, ...remarksOf(before, after, setAside)],
    appeared: findingsOnlyIn(counted, before.findings, titles),
    vanished: findingsOnlyIn(before.findings, after.findings, titles).filter((finding) => !otherAlloy || !isCertificate(finding)),
    groups,
    leftOut: { small, further },
    cautions: { appeared: titlesOnlyIn(after, before), vanished: titlesOnlyIn(before, after) },
    ...judgedDie(before, now, given, sides.after.castable),
  };
}

function isCertificate({ code }: FindingChange): boolean {
  return CERTIFICATE.test(code);
}

/** An error that is a rule broken, and not a figure that could not be worked out: that one says nothing about the part. */
function isBreach({ severity, code }: Pick<KeptFinding, 'severity' | 'code'>): boolean {
  return severity === 'error' && !/^(range|table)\//.test(code);
}

function sideOf(plan: Snapshot): Side {
  const errors = plan.findings.filter(isBreach).length;
  const word = (key: 'kind' | 'machine' | 'steel' | 'currency', id: string) => {
    const text = plan.texts.get(id);
    return text === undefined ? {} : { [key]: text };
  };
  const figures = FIGURES.flatMap((id) => {
    const value = plan.values.get(id);
    return value === undefined ? [] : [[id, value.value] as const];
  });
  return {
    alloy: plan.alloy.id,
    family: plan.alloy.family,
    plant: plan.plant.name,
    castable: errors === 0,
    errors,
    ...word('kind', 'machine.kind'),
    ...word('machine', 'machine.model'),
    ...word('steel', 'die.cavity-steel'),
    ...word('currency', 'cost.currency'),
    figures: Object.fromEntries(figures),
  };
}

export function standingOf(before: boolean, after: boolean): Standing {
  if (after) return before ? 'stays castable' : 'becomes castable';
  return before ? 'no longer castable' : 'not castable before or after';
}

function titlesOnlyIn(plan: Snapshot, other: Snapshot): string[] {
  const known = new Set(other.cautions.map(({ id }) => id));
  return plan.cautions.filter(({ id }) => !known.has(id)).map(({ title }) => title);
}

function remarksOf(before: Snapshot, after: Snapshot, setAside: number): string[] {
  const kept = before.alloy.id === after.alloy.id ? [] : after.pins.filter((pin) => before.pins.includes(pin));
  const [was, is] = [before.texts.get('cost.currency'), after.texts.get('cost.currency')];
  return [
    ...(setAside === 0
      ? []
      : [`The melt certificate in the file is that of ${before.alloy.id}; what it breaks of the limits of ${after.alloy.id} is not counted. Replace it.`]),
    ...(kept.length === 0 ? [] : [`Pinned for ${before.alloy.id} and kept: ${kept.join(', ')}.`]),
    ...(was === is || was === undefined || is === undefined ? [] : [`Costs cannot be compared: they are in ${was} before and in ${is} after.`]),
  ];
}

function judgedDie(before: Snapshot, after: Snapshot, given: Case, castable: boolean): Pick<PartChange, 'die' | 'dieMissing'> {
  if (!castable) return { dieMissing: 'the plan after breaks rules, so there is nothing to hold the die against' };
  if (!before.values.has('machine.cavities') || !before.texts.has('machine.kind')) return { dieMissing: 'the plan before has no die' };
  return { die: dieChange(before, after, given) };
}
