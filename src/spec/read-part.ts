import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { readLocatedYaml } from '../kernel/located-yaml.ts';
import type { SourceText } from '../kernel/place.ts';
import { buildPart } from './build-part.ts';
import { checkPart } from './checks.ts';
import { Findings } from './findings.ts';
import { checkFormatLine } from './format-line.ts';
import type { PartSpec } from './part.ts';
import { partSchema, partSchemaFor } from './part-schema.ts';
import { readShape } from './shape.ts';

/**
 * Reads a part description. Never throws. The part is given exactly when no finding is an error; findings are sorted
 * by place, and all of one file are reported together.
 */
export function readPart(source: SourceText): { readonly part?: PartSpec; readonly diagnostics: Diagnostic[] } {
  const yaml = readLocatedYaml(source, { prefix: 'spec', numbersAsText: true });
  const findings = new Findings(yaml);
  if (yaml.data === undefined || !checkFormatLine(findings, 'part')) return { diagnostics: sortDiagnostics(findings.all) };
  const { data, draft } = readShape(partSchema, findings, partSchemaFor);
  checkPart(draft, findings);
  const diagnostics = sortDiagnostics(findings.all);
  return data === undefined || findings.failed ? { diagnostics } : { part: buildPart(data, yaml), diagnostics };
}
