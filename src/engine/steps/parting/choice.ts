import { orList } from '../../../kernel/spelling.ts';
import { printTraced, type Traced } from '../../../kernel/traced.ts';
import { boxArea } from '../../../physics/parting.ts';
import type { Ledger } from '../../ledger.ts';
import type { Decision } from '../../plan.ts';
import { across, degreesOff, type Vector } from './directions.ts';
import { AXES, extentAlong, type Opening } from './openings.ts';

const ID = 'parting.die-opening';
const RANKING = 'fewest core pulls, counting what no core reaches as one each, then least depth of draw, then least projected area';

export interface AskedOpening {
  readonly kind: 'input' | 'pinned';
  readonly text: string;
  readonly vector: Vector;
  readonly decision: Pick<Decision, 'because' | 'at'>;
}

/** The die opening that the engineer has fixed, by a pin or in the geometry of the part. */
export function askedOpening(ledger: Ledger): AskedOpening | undefined {
  const pin = ledger.pinnedWord(ID);
  const pinnedAxis = AXES.find((axis) => axis.text === pin?.text.replace(/^[+-]/, ''));
  if (pin !== undefined && pinnedAxis !== undefined) return { kind: 'pinned', ...pinnedAxis, decision: { because: 'pinned by the engineer', at: pin.at } };
  if (pin !== undefined) {
    const fix = `write ${orList(AXES.map((axis) => axis.text))}; an oblique opening is given as geometry.die_opening`;
    ledger.findings.push({ code: 'spec/unknown-word', severity: 'error', message: `"${pin.text}" is not a die opening`, at: pin.at, fix });
  }
  const { dieOpening, dieOpeningAt } = ledger.part.geometry;
  if (dieOpening === 'auto') return undefined;
  const axis = AXES.find(({ vector }) => degreesOff(dieOpening.vector, vector) <= ledger.value('parting.along').value);
  const at = dieOpeningAt === undefined ? {} : { at: dieOpeningAt };
  return {
    kind: 'input',
    text: axis?.text ?? dieOpening.text,
    vector: axis?.vector ?? dieOpening.vector,
    decision: { because: 'given in the part description', ...at },
  };
}

/** The opening asked for, else the best of those tried. One without a projected area comes last: it would size the machine on a guess. */
export function chooseOpening(ledger: Ledger, tried: readonly Opening[], asked: AskedOpening | undefined): Opening {
  const ranked = [...tried].sort((a, b) => Number(a.area === undefined) - Number(b.area === undefined) || compare(a, b));
  const chosen = asked === undefined ? ranked[0] : tried.find((opening) => opening.text === asked.text);
  if (chosen === undefined) throw new TypeError('no die opening was tried');
  const described = (opening: Opening): string => {
    const area = opening.area === undefined ? 'no projected area given' : printTraced(opening.area);
    return `${workText(opening)}, draw of ${printTraced(opening.depth)}, ${area}`;
  };
  const alternatives = ranked.filter((opening) => opening !== chosen).map((opening) => ({ value: opening.text, because: described(opening) }));
  const parents = tried.flatMap(({ text }) =>
    (['parting.core-pulls-tried', 'parting.unreachable-tried', 'parting.depth-tried', 'parting.area-tried'] as const)
      .map((id) => ledger.maybe(id, text)?.id)
      .filter((id) => id !== undefined),
  );
  const common = { id: ID, title: 'Die opening', value: chosen.text, parents, alternatives };
  ledger.record(
    asked === undefined
      ? { ...common, kind: 'search', because: `${RANKING}: ${described(chosen)}`, status: 'practice', source: [] }
      : { ...common, kind: asked.kind, ...asked.decision, because: `${asked.decision.because}: ${described(chosen)}`, status: 'source', source: ['PART'] },
  );
  ledger.setText('parting.core-work', workText(chosen), { at: asked?.decision.at });
  fileOther(ledger, tried);
  return chosen;
}

/** `2 core pulls`, and what no core reaches where there is any. */
function workText(opening: Opening): string {
  const pulls = opening.cores.slides.length;
  const lost = opening.cores.unreachable.length;
  return `${pulls} core ${pulls === 1 ? 'pull' : 'pulls'}${lost === 0 ? '' : ` and ${lost} hole${lost === 1 ? '' : 's'} or undercut${lost === 1 ? '' : 's'} that no core reaches`}`;
}

/** Work for cores first, as one number: a hole to drill costs an operation as a slide does. */
function work(opening: Opening): number {
  return opening.cores.slides.length + opening.cores.unreachable.length;
}

function compare(a: Opening, b: Opening): number {
  return work(a) - work(b) || a.depth.value - b.depth.value || (a.area?.value ?? 0) - (b.area?.value ?? 0);
}

/** The opening with the least work for cores, whether or not its projected area is known: what the choice is judged against. */
function fileOther(ledger: Ledger, tried: readonly Opening[]): void {
  const least = [...tried].sort(compare)[0] as Opening;
  ledger.setText('parting.other-opening', least.text);
  ledger.setText('parting.other-area', least.area === undefined ? 'not given' : 'given');
  ledger.setText('parting.core-work-other', workText(least));
  ledger.put(ledger.value('parting.core-pulls-tried', least.text).as('parting.core-pulls-other'));
  ledger.put(ledger.value('parting.unreachable-tried', least.text).as('parting.unreachable-other'));
}

/** Depth, sides and projected area for the opening chosen; the area of the envelope where the part gives none. */
export function fileShape(ledger: Ledger, opening: Opening): void {
  ledger.put(opening.depth.as('part.depth'));
  const sides = acrossSides(ledger, opening).sort((a, b) => b.value - a.value);
  const side_a = ledger.put((sides[0] as Traced<'mm'>).as('part.side-a'));
  const side_b = ledger.put((sides[1] as Traced<'mm'>).as('part.side-b'));
  const box = ledger.apply(boxArea, { side_a, side_b });
  if (opening.area !== undefined) {
    ledger.put(opening.area.as('part.projected-area'));
    ledger.setText('parting.area-origin', 'given');
    return;
  }
  ledger.setText('parting.area-origin', 'envelope');
  ledger.assume('part.projected-area', box.value, 'cm2', {
    note: `the part gives no projected area along ${opening.text}; the whole envelope is taken, which no casting exceeds`,
    status: 'derived',
    parents: [box],
  });
}

function acrossSides(ledger: Ledger, opening: Opening): Traced<'mm'>[] {
  if (opening.axis !== undefined) {
    return AXES.filter(({ text }) => text !== opening.axis).map(({ text }) => ledger.value(`part.envelope-${text}`));
  }
  return across(opening.vector).map((vector, index) => extentAlong(ledger, `${opening.text} across ${index + 1}`, vector));
}
