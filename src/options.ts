import { findOptions } from './engine/options/find.ts';
import type { Variant } from './engine/options/options.ts';
import { lostVariant, variantOf } from './engine/options/variant.ts';
import { otherMass } from './engine/other-mass.ts';
import type { Plan } from './engine/plan.ts';
import { STANDING } from './engine/standing.ts';
import { type Planned, planPart, type Rulebook } from './index.ts';
import type { Diagnostic } from './kernel/diagnostic.ts';
import type { SourceText } from './kernel/place.ts';
import { countsFigure } from './report/options/figure.ts';
import type { OptionsReport } from './report/options/report.ts';

export { optionsJson } from './report/options/json.ts';
export { type OptionsLook, optionsMarkdown } from './report/options/markdown.ts';
export type { OptionsReport } from './report/options/report.ts';

export interface OptionsRequest {
  readonly part: SourceText;
  /** The plants to plan for; the first one is that of the options, the others are compared with it. The built-in one when empty. */
  readonly plants: readonly SourceText[];
  readonly set?: readonly string[];
  /** Further alloys, by any designation. */
  readonly alloys: readonly string[];
  readonly rulebook: Rulebook;
  readonly version: string;
}

export interface Optioned {
  /** Absent when the part cannot be planned; then `diagnostics` says why. */
  readonly report?: OptionsReport;
  /** The plan that the options are around. */
  readonly plan?: Plan;
  readonly diagnostics: readonly Diagnostic[];
}

/** The alternatives behind the choice of cavities, machine and plunger of a part, and the part in other alloys and on other plants. */
export function optionsFor(request: OptionsRequest): Optioned {
  const { plants, alloys, set = [] } = request;
  const [first] = plants;
  const make = (plant: SourceText | undefined, more: readonly string[]): Planned =>
    planPart({
      part: request.part,
      set: [...set, ...more],
      rulebook: request.rulebook,
      version: request.version,
      ...(plant === undefined ? {} : { plant }),
    });
  const planned = make(first, []);
  const { plan, given } = planned;
  if (plan === undefined || given === undefined) return { diagnostics: planned.diagnostics };
  const faults: Diagnostic[] = [];
  const variants: Variant[] = [];
  for (const plant of plants.length === 0 ? [undefined] : plants) {
    for (const alloy of [undefined, ...alloys]) {
      const own = plant === first && alloy === undefined;
      const made = own ? planned : alloy === undefined ? make(plant, []) : inAlloy(plan, alloy, set, (more) => make(plant, more));
      if (made.plan !== undefined) variants.push(variantOf(made.plan));
      else {
        // A plant file that cannot be read is a fault of the request; an alloy that cannot be planned is a line of its own.
        faults.push(
          ...made.diagnostics.filter(({ at, code }) => at?.source.name === plant?.name || code === 'spec/unknown-alloy' || code === 'spec/ambiguous-alloy'),
        );
        variants.push(lostVariant(alloy ?? plan.alloy.id, plant?.name ?? plan.plant.name, made.diagnostics));
      }
    }
  }
  if (faults.length > 0) return { diagnostics: faults };
  const options = findOptions(given);
  const { part } = plan;
  const report: OptionsReport = {
    tool: plan.tool,
    standing: STANDING.status,
    part: {
      name: part.name,
      ...(part.number === undefined ? {} : { number: part.number }),
      ...(part.revision === undefined ? {} : { revision: part.revision }),
      file: part.file,
    },
    alloy: plan.alloy.id,
    plant: { name: plan.plant.name, invented: plan.plant.invented },
    ...(options === undefined ? {} : { options }),
    variants: variants.length > 1 ? variants : [],
  };
  return { report, plan, diagnostics: planned.diagnostics };
}

/** The part in another alloy; a mass on the drawing follows the density, for the shape stays. */
function inAlloy(plan: Plan, alloy: string, set: readonly string[], make: (more: readonly string[]) => Planned): Planned {
  const made = make([`alloy=${alloy}`]);
  const mass = made.plan === undefined ? undefined : otherMass(plan, made.plan, set);
  return mass === undefined ? made : make([`alloy=${alloy}`, `geometry.mass=${mass.text}`]);
}

/** The cost over the count of cavities as an SVG document; undefined where there are too few to draw. */
export async function optionsFigure({ options }: OptionsReport): Promise<string | undefined> {
  const figure = options === undefined ? undefined : countsFigure(options);
  if (figure === undefined) return undefined;
  const { figureSvg } = await import('./report/figure/index.ts');
  return figureSvg(figure, new Map());
}
