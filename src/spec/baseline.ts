import * as z from 'zod';
import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { readLocatedYaml } from '../kernel/located-yaml.ts';
import type { Place, SourceText } from '../kernel/place.ts';
import { Findings } from './findings.ts';
import { checkFormatLine } from './format-line.ts';
import { prose, text } from './leaves.ts';
import { present } from './present.ts';
import { formatLine, once } from './schema-parts.ts';
import { readShape } from './shape.ts';

/** A known finding: its fingerprint tells which one, the rest is for people. */
export interface BaselineEntry {
  readonly code: string;
  /** The checked file. */
  readonly file: string;
  readonly item?: string;
  readonly message: string;
  readonly fingerprint: string;
  readonly reason: string;
  readonly at?: Place;
}

/** Most entries of a baseline, and longest text of one. */
const MOST_ENTRIES = 100_000;
const MOST_CHARACTERS = 50_000_000;

export const baselineSchema = once(() =>
  z
    .strictObject({
      diewright: formatLine('baseline'),
      findings: z
        .array(
          z.strictObject({
            code: text('Code of the finding', 'wall/usual-greatest'),
            file: prose('The file that was checked', 'parts/cover.part.yaml'),
            item: prose('The item that the finding is about', 'H1').optional(),
            message: prose('What was found when the entry was written', 'The thickest wall of 6.5 mm is above 6 mm'),
            fingerprint: text('Fingerprint of the finding', '0123456789abcdef'),
            reason: text('Why it is accepted', 'boss for the bearing'),
          }),
        )
        .max(MOST_ENTRIES)
        .meta({ description: 'Findings that are known', examples: [[]] }),
    })
    .meta({ title: 'Baseline', description: 'Known findings, which do not fail a run of check' }),
);

/** Reads a baseline. Never throws. Entries are given exactly when no finding is an error. */
export function readBaseline(source: SourceText): { readonly entries?: readonly BaselineEntry[]; readonly diagnostics: readonly Diagnostic[] } {
  const yaml = readLocatedYaml(source, { prefix: 'spec', numbersAsText: true, limits: { characters: MOST_CHARACTERS } });
  const findings = new Findings(yaml);
  if (yaml.data === undefined || !checkFormatLine(findings, 'baseline')) return { diagnostics: sortDiagnostics(findings.all) };
  const { data } = readShape(baselineSchema, findings);
  const diagnostics = sortDiagnostics(findings.all);
  if (data === undefined || findings.failed) return { diagnostics };
  return { entries: data.findings.map(({ item, ...entry }, i) => ({ ...entry, ...present({ item }), at: yaml.place(['findings', i]) })), diagnostics };
}
