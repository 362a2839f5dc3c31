import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { type LocatedYaml, readLocatedYaml } from '../kernel/located-yaml.ts';
import type { SourceText } from '../kernel/place.ts';
import { buildPlant } from './build-plant.ts';
import { Findings } from './findings.ts';
import { checkFormatLine } from './format-line.ts';
import type { PlantSpec } from './plant.ts';
import { checkPlant } from './plant-checks.ts';
import { type PlantData, plantSchema } from './plant-schema.ts';
import { readShape } from './shape.ts';

/** What a plant file comes to before places and traces: plain data, which a build can keep. */
export function compilePlant(source: SourceText): { readonly data?: PlantData; readonly yaml: LocatedYaml; readonly diagnostics: Diagnostic[] } {
  const yaml = readLocatedYaml(source, { prefix: 'spec', numbersAsText: true });
  const findings = new Findings(yaml);
  if (yaml.data === undefined || !checkFormatLine(findings, 'plant')) return { yaml, diagnostics: sortDiagnostics(findings.all) };
  const { data, draft } = readShape(plantSchema, findings);
  checkPlant(draft, findings);
  const diagnostics = sortDiagnostics(findings.all);
  return data === undefined || findings.failed ? { yaml, diagnostics } : { data, yaml, diagnostics };
}

/** A plant that was compiled when the tool was built. */
export function builtInPlant(data: PlantData): PlantSpec {
  return buildPlant(data, { source: { name: 'built-in plant', text: '' }, place: () => undefined });
}

/**
 * Reads a plant description. Never throws. The plant is given exactly when no finding is an error; findings are
 * sorted by place, and all of one file are reported together.
 */
export function readPlant(source: SourceText): { readonly plant?: PlantSpec; readonly diagnostics: Diagnostic[] } {
  const { data, yaml, diagnostics } = compilePlant(source);
  return data === undefined ? { diagnostics } : { plant: buildPlant(data, yaml), diagnostics };
}
