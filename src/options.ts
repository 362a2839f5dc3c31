import { type DieRequest, planDie } from './die.ts';
import { planEditedDie } from './edited-die.ts';
import { findOptions } from './engine/options/find.ts';
import type { Variant } from './engine/options/options.ts';
import { lostVariant, variantOf } from './engine/options/variant.ts';
import { otherMass } from './engine/other-mass.ts';
import type { Plan } from './engine/plan.ts';
import { dieSnapshotOf } from './engine/replan/snapshot.ts';
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
  /** A part description, or that of a die with several parts. */
  readonly source: SourceText;
  /** The text of a part file that a die names, or why it cannot be read; given for a die, and for nothing else. */
  readonly partText?: DieRequest['partText'] | undefined;
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

/**
 * The alternatives behind the choice of cavities, machine and plunger of a part, or of machine and plunger of a die with several parts,
 * and the same in other alloys and on other plants.
 */
export function optionsFor(request: OptionsRequest): Optioned {
  const { plants, alloys } = request;
  const [first] = plants;
  const make = request.partText === undefined ? partMaker(request) : dieMaker(request, request.partText);
  const planned = make(first);
  const { plan, given } = planned;
  if (plan === undefined || given === undefined) return { diagnostics: planned.diagnostics };
  const faults: Diagnostic[] = [];
  const variants: Variant[] = [];
  for (const plant of plants.length === 0 ? [undefined] : plants) {
    for (const alloy of [undefined, ...alloys]) {
      const own = plant === first && alloy === undefined;
      const made = own ? planned : make(plant, alloy === undefined ? undefined : { alloy, before: plan });
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
  const castings = plan.values.get('set.castings')?.value;
  const report: OptionsReport = {
    tool: plan.tool,
    standing: STANDING.status,
    part: {
      name: part.name,
      ...(part.number === undefined ? {} : { number: part.number }),
      ...(part.revision === undefined ? {} : { revision: part.revision }),
      file: part.file,
    },
    ...(castings === undefined ? {} : { castings }),
    alloy: plan.alloy.id,
    plant: { name: plan.plant.name, invented: plan.plant.invented },
    ...(options === undefined ? {} : { options }),
    variants: variants.length > 1 ? variants : [],
  };
  return { report, plan, diagnostics: planned.diagnostics };
}

/** Plans what was asked for on a plant; in another alloy masses on drawings follow the density of the plan before, for shapes stay. */
type Maker = (plant: SourceText | undefined, other?: { readonly alloy: string; readonly before: Plan }) => Planned;

function partMaker({ source, set = [], rulebook, version }: OptionsRequest): Maker {
  return (plant, other) => {
    const make = (more: readonly string[]): Planned =>
      planPart({ part: source, set: [...set, ...more], rulebook, version, ...(plant === undefined ? {} : { plant }) });
    if (other === undefined) return make([]);
    const made = make([`alloy=${other.alloy}`]);
    const mass = made.plan === undefined ? undefined : otherMass(other.before, made.plan, set);
    return mass === undefined ? made : make([`alloy=${other.alloy}`, `geometry.mass=${mass.text}`]);
  };
}

function dieMaker({ source, set = [], rulebook, version }: OptionsRequest, partText: DieRequest['partText']): Maker {
  return (plant, other) => {
    const request: DieRequest = { die: source, partText, set, rulebook, version, ...(plant === undefined ? {} : { plant }) };
    if (other === undefined) return planDie(request);
    return planEditedDie({ ...request, set: [...set, `alloy=${other.alloy}`] }, dieSnapshotOf(other.before));
  };
}

/** The cost over the count of cavities as an SVG document; undefined where there are too few to draw. */
export async function optionsFigure({ options }: OptionsReport): Promise<string | undefined> {
  const figure = options === undefined ? undefined : countsFigure(options);
  if (figure === undefined) return undefined;
  const { figureSvg } = await import('./report/figure/index.ts');
  return figureSvg(figure, new Map());
}
