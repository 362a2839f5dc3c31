import { type DieEntry, type DiePlanned, type DieRequest, planDie } from './die.ts';
import { otherMass } from './engine/other-mass.ts';
import type { DieSnapshot } from './engine/replan/snapshot.ts';
import type { Plan } from './index.ts';
import type { SourceText } from './kernel/place.ts';
import { setFields } from './spec/set-field.ts';

/** A die planned with fields of its parts set. */
export interface EditedDie extends DiePlanned {
  readonly entries: readonly DieEntry[];
  /** The part descriptions with the fields set, by the file as the die names it. */
  readonly parts: ReadonlyMap<string, SourceText>;
  /** Masses on drawings that were set because the alloy is another, by the file as the die names it. */
  readonly masses: readonly { readonly file: string; readonly text: string; readonly remark: string }[];
}

/**
 * Plans a die with fields set in all its parts. Where they give it another alloy than that of the plan `before`, masses on drawings
 * follow the density, for the shapes stay.
 */
export function planEditedDie(request: DieRequest, before: DieSnapshot): EditedDie {
  const made = make(request, new Map());
  const masses = made.plan === undefined ? [] : massesOf(before, made.plan, made.entries, request.set ?? []);
  const last = masses.length === 0 ? made : make(request, new Map(masses.map(({ file, text }) => [file, text])));
  return { ...last, masses };
}

function make({ set = [], ...request }: DieRequest, masses: ReadonlyMap<string, string>): Omit<EditedDie, 'masses'> {
  const entries: DieEntry[] = [];
  const parts = new Map<string, SourceText>();
  const partText: DieRequest['partText'] = (entry) => {
    const file = entry.file.value;
    entries.push(entry);
    const text = request.partText(entry);
    if (!('text' in text)) return text;
    const mass = masses.get(file);
    const { source, diagnostics } = setFields(text, [...set, ...(mass === undefined ? [] : [`geometry.mass=${mass}`])]);
    if (diagnostics.length > 0) return diagnostics;
    parts.set(file, source);
    return source;
  };
  return { ...planDie({ ...request, partText }), entries, parts };
}

/** The parts whose mass on the drawing is that of the alloy before, with what they weigh in the alloy after. */
function massesOf(before: DieSnapshot, { parts = [] }: Plan, entries: readonly DieEntry[], set: readonly string[]): EditedDie['masses'] {
  return parts.flatMap(({ id, plan }) => {
    const [was, file] = [before.parts.get(id), entries.find((one) => one.id === id)?.file.value];
    const mass = was === undefined ? undefined : otherMass(was, plan, set);
    return mass === undefined || file === undefined ? [] : [{ file, ...mass }];
  });
}
