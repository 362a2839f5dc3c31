import type { Traced } from '../../kernel/traced.ts';
import type { Unit } from '../../kernel/units.ts';
import { forceUse } from '../../physics/ejection/force-plan.ts';
import type { CastingSet, Member } from '../case.ts';
import { type Counted, greatestOf, totalOf } from '../combine.ts';
import type { Ledger } from '../ledger.ts';
import { fileFigures, filePinTotal, fileReturn } from '../steps/ejection/pins.ts';
import { sumOf } from '../sum.ts';
import { Trial } from '../trial.ts';
import type { UnitOf, ValueId } from '../vocabulary/index.ts';
import { fromPlanOf } from './begin.ts';
import { filePlateStroke, withShot } from './with-shot.ts';

const ENDS = ['', '-low', '-high'] as const;

/** The step of ejection for one part: what it is gripped with and its stroke; then its pins. */
interface Work {
  readonly grip: (part: Ledger) => boolean;
  readonly pins: (part: Ledger) => void;
}

/**
 * Grip and pins of every part, by the shot that it shares, and their sums over all castings. One ejector plate serves all: it has
 * the longest stroke, and comes back early if a slide of any casting asks for it.
 */
export function workSetEjection(ledger: Ledger, set: CastingSet, work: Work): void {
  fileReturn(ledger);
  const parts = set.members.map((member) => {
    const part = withShot(ledger, set, member);
    return { member, part, grips: work.grip(part) };
  });
  fileStrokes(ledger, parts);
  for (const { part, grips } of parts) {
    filePlateStroke(ledger, part);
    if (grips) work.pins(part);
  }
  const file = <K extends ValueId>(id: K, from: ValueId): Counted<UnitOf<K>>[] =>
    parts.flatMap(({ member, part }) => {
      const value = part.maybe(from);
      const trial = ledger instanceof Trial;
      if (value === undefined) return [];
      const filed = fromPlanOf(member.id, id, value as Traced);
      return [{ value: (trial ? filed : ledger.put(filed)) as unknown as Traced<UnitOf<K>>, count: member.count }];
    });
  const total = (id: string, title: string, from: ValueId): void => {
    const terms = parts.flatMap(({ member, part }) => {
      const value = part.maybe(from);
      return value === undefined ? [] : [{ value: fromPlanOf(member.id, from, value as Traced), count: member.count }];
    });
    if (terms.length === parts.length) ledger.put(totalOf(id, title, terms) as Traced<Unit>);
  };
  file('set.ejection-force', 'ejection.cavity-force');
  file('set.pins', 'ejection.cavity-pins');
  total('ejection.contact-area', 'Contact area of all castings, ejector half', 'ejection.contact-area');
  for (const end of ENDS) {
    total(`ejection.cavity-force${end}`, 'Ejection force of all castings', `ejection.cavity-force${end}`);
    ledger.attempt(`ejection.force${end}`, 'Ejection force', () =>
      ledger.put(
        sumOf(
          `ejection.force${end}`,
          'Ejection force of the whole shot',
          'kN',
          [ledger.value(`ejection.cavity-force${end}`)],
          ledger.value('machine.cavities'),
        ),
      ),
    );
  }
  total('ejection.cover-force', 'Grip of all castings on the cover half', 'ejection.cover-force');
  total('ejection.cavity-pins', 'Ejector pins of all castings', 'ejection.cavity-pins');
  fileFigures(ledger);
  ledger.attempt('ejection.pins', 'Ejector pins of the die', () => {
    const each = ledger.value('ejection.runner-pins');
    filePinTotal(ledger, ledger.put(sumOf('ejection.runner-pins-all', 'Pins on the runner of the shot', '1', [each], ledger.value('set.castings'))));
  });
  ledger.attempt('ejection.force-use', 'Use of the ejector force', () => {
    const machine = ledger.maybe('machine.ejector-force');
    if (machine === undefined) return;
    ledger.apply(forceUse, { force: ledger.value('ejection.force'), machine });
    ledger.apply(forceUse, { force: ledger.value('ejection.force-high'), machine }, { id: 'ejection.force-use-high' });
  });
  const friction = parts[0]?.part.maybe('ejection.friction-dry');
  if (friction !== undefined) ledger.put(friction);
  const pinsBy = parts.flatMap(({ part }) => part.texts.get('ejection.pins-by') ?? []);
  const [first] = pinsBy;
  if (first !== undefined) ledger.setText('ejection.pins-by', pinsBy.find((word) => word === 'force') ?? first);
}

/** The longest stroke of all parts. */
function fileStrokes(ledger: Ledger, parts: readonly { readonly member: Member; readonly part: Ledger }[]): void {
  for (const id of ['ejection.height', 'ejection.stroke'] as const) {
    const longest = parts.flatMap(({ member, part }) => {
      const value = part.maybe(id);
      return value === undefined ? [] : [fromPlanOf(member.id, id, value as Traced<'mm'>)];
    });
    if (longest.length > 0) ledger.put(greatestOf(id, 'Longest of all parts', longest, 'of the part that needs the most'));
  }
}
