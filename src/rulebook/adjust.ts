import type { Place } from '../kernel/place.ts';
import { didYouMean } from '../kernel/spelling.ts';
import type { Faults } from './faults.ts';
import type { Change, Limit, Rulebook } from './types.ts';

/** What a project file makes of a built-in limit, and why. */
export interface Adjustment {
  readonly rule: string;
  readonly severity: Limit['severity'] | 'off';
  readonly reason: string;
  /** Where the rule is named. */
  readonly at: Place;
  /** The project file as a plan names it. */
  readonly file: string;
}

/** The rulebook with its limits re-graded and switched off. `houseLimits` are ids of limits whose house file is there, sound or not. */
export function adjust(rulebook: Rulebook, adjusted: readonly Adjustment[], houseLimits: ReadonlySet<string>, faults: Faults): Rulebook {
  if (adjusted.length === 0) return rulebook;
  const limits: Record<string, Limit> = { ...rulebook.limits };
  const switchedOff: Record<string, Limit> = { ...rulebook.switchedOff };
  const changes: Change[] = [...(rulebook.changes ?? [])];
  const seen = new Set<string>();
  for (const { rule, severity, reason, at, file } of adjusted) {
    const limit = Object.hasOwn(rulebook.limits, rule) ? rulebook.limits[rule] : undefined;
    if (seen.has(rule)) faults.add('adjusted-twice', at, `"${rule}" is adjusted above already`, 'keep one of the two');
    else if (houseLimits.has(rule))
      faults.add(
        'adjusted-house',
        at,
        `"${rule}" comes from house rules${houseFile(limit)}, so nothing built in is left to adjust`,
        'change the severity in its file, or remove the file',
      );
    else if (limit === undefined) notALimit(rulebook, rule, at, faults);
    else if (limit.severity === severity)
      faults.add('no-change', at, `"${rule}" is built in as ${a(severity)} already`, 'remove the entry, or write another severity');
    else {
      const { line } = at.position();
      const change = severity === 'off' ? 'switched off' : 're-graded';
      changes.push({ what: 'limit', id: rule, title: limit.title, change, file, line, reason, severity: { from: limit.severity, to: severity } });
      if (severity === 'off') {
        switchedOff[rule] = limit;
        delete limits[rule];
      } else limits[rule] = { ...limit, severity, regraded: { from: limit.severity, by: `${file}:${line}` } };
    }
    seen.add(rule);
  }
  return { ...rulebook, limits, switchedOff, changes };
}

function notALimit(rulebook: Rulebook, rule: string, at: Place, faults: Faults): void {
  if (Object.hasOwn(rulebook.cautions, rule)) {
    faults.add('caution-kept', at, `"${rule}" is a safety caution, and these can be neither switched off nor re-graded`, 'remove the entry');
    return;
  }
  const other = Object.hasOwn(rulebook.tables, rule) ? 'table' : Object.hasOwn(rulebook.choices, rule) ? 'decision' : undefined;
  if (other !== undefined) faults.add('unknown-rule', at, `"${rule}" is a ${other}, not a limit`, 'a file of the same id in a rules folder takes its place');
  else faults.add('unknown-rule', at, `no limit is called "${rule}"${didYouMean(rule, Object.keys(rulebook.limits))}`, 'see "diewright list rules"');
}

function houseFile(limit: Limit | undefined): string {
  return limit?.house === undefined ? '' : ` (${limit.house})`;
}

function a(severity: string): string {
  return severity === 'error' ? 'an error' : `a ${severity}`;
}
