import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { readLocatedYaml } from '../kernel/located-yaml.ts';
import type { SourceText } from '../kernel/place.ts';
import { buildPlant } from './build-plant.ts';
import { Findings } from './findings.ts';
import { checkFormatLine } from './format-line.ts';
import type { PlantSpec } from './plant.ts';
import { checkPlant } from './plant-checks.ts';
import { plantSchema } from './plant-schema.ts';
import { readShape } from './shape.ts';

/**
 * Reads a plant description. Never throws. The plant is given exactly when no finding is an error; findings are
 * sorted by place, and all of one file are reported together.
 */
export function readPlant(source: SourceText): { readonly plant?: PlantSpec; readonly diagnostics: Diagnostic[] } {
  const yaml = readLocatedYaml(source, { prefix: 'spec', numbersAsText: true });
  const findings = new Findings(yaml);
  if (yaml.data === undefined || !checkFormatLine(findings, 'plant')) return { diagnostics: sortDiagnostics(findings.all) };
  const { data, draft } = readShape(plantSchema(), findings);
  checkPlant(draft, findings);
  const diagnostics = sortDiagnostics(findings.all);
  return data === undefined || findings.failed ? { diagnostics } : { plant: buildPlant(data, yaml), diagnostics };
}
