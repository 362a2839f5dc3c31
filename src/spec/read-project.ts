import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { readLocatedYaml } from '../kernel/located-yaml.ts';
import type { Place, SourceText } from '../kernel/place.ts';
import { Findings } from './findings.ts';
import { checkFormatLine } from './format-line.ts';
import { type FailOn, type ProjectData, projectSchema } from './project-schema.ts';
import { readShape } from './shape.ts';

/** A setting as it is written, and where. */
export interface Set<T> {
  readonly value: T;
  readonly at: Place;
}

/** What a project file sets; paths are as written, seen from the file. */
export interface ProjectSpec {
  readonly source: SourceText;
  readonly plant?: Set<string>;
  readonly rules?: readonly Set<string>[];
  readonly failOn?: Set<FailOn>;
  /** `at` is the place of the rule's id. */
  readonly adjusted: readonly (NonNullable<ProjectData['adjusted']>[number] & { readonly at: Place })[];
}

/** Reads a project file. Never throws. The project is given exactly when nothing is wrong; all faults are reported together. */
export function readProject(source: SourceText): { readonly project?: ProjectSpec; readonly diagnostics: Diagnostic[] } {
  const yaml = readLocatedYaml(source, { prefix: 'spec', numbersAsText: true });
  const findings = new Findings(yaml);
  if (yaml.data === undefined || !checkFormatLine(findings, 'project')) return { diagnostics: sortDiagnostics(findings.all) };
  const { data } = readShape(projectSchema, findings);
  const diagnostics = sortDiagnostics(findings.all);
  if (data === undefined || findings.failed) return { diagnostics };
  const { plant, rules, fail_on: failOn, adjusted = [] } = data;
  return {
    diagnostics,
    project: {
      source: yaml.source,
      ...(plant === undefined ? {} : { plant: { value: plant, at: yaml.place(['plant']) } }),
      ...(rules === undefined ? {} : { rules: rules.map((value, i) => ({ value, at: yaml.place(['rules', i]) })) }),
      ...(failOn === undefined ? {} : { failOn: { value: failOn, at: yaml.place(['fail_on']) } }),
      adjusted: adjusted.map((entry, i) => ({ ...entry, at: yaml.place(['adjusted', i, 'rule']) })),
    },
  };
}
