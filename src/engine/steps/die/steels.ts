import { Traced } from '../../../kernel/traced.ts';
import { shotsNeeded } from '../../../physics/die-life.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';
import { assumeMiddle } from '../../planned.ts';
import { coredHoles } from './cored.ts';
import { slideItems } from './slides.ts';

/** Elements that the acceptance criteria of die steels limit. */
export const ELEMENTS = ['C', 'Si', 'Mn', 'Cr', 'Mo', 'V', 'P', 'S'] as const;
/** Components other than the cavity, in the order of the plan. */
export const COMPONENTS = ['cores', 'core pins', 'sprue parts', 'nozzle', 'gooseneck', 'shot sleeve', 'ejector pins', 'holder block'] as const;
const COLD_ONLY: ReadonlySet<string> = new Set(['shot sleeve']);
const HOT_ONLY: ReadonlySet<string> = new Set(['nozzle', 'gooseneck']);

/** Steel, hardness and grade of the cavity, and the steels of the other components. */
export function workSteels(ledger: Ledger): void {
  const attempt = ledger.attempt.bind(ledger);
  attempt('die.shots-planned', 'Shots over the life', () => shots(ledger));
  attempt('die.cores', 'Cores', () => cores(ledger));
  attempt('die.cavity-steel', 'Cavity steel', () => {
    choose(ledger, 'die.steel-group');
    choose(ledger, 'die.intricacy');
    choose(ledger, 'die.cavity-steel');
    choose(ledger, 'die.steel-grade');
  });
  attempt('die.hardness', 'Hardness of the cavity', () => hardness(ledger));
  attempt('die.grade-greatest', 'Composition of the cavity steel', () => composition(ledger));
  const absent = ledger.texts.get('machine.chamber') === 'cold' ? HOT_ONLY : COLD_ONLY;
  for (const component of COMPONENTS.filter((name) => !absent.has(name)))
    attempt(`die.component-steel[${component}]`, `Steel, ${component}`, () => componentSteel(ledger, component));
}

/** Steel is chosen before the die is drawn; where no volume is given, it is chosen for a modest one. */
function shots(ledger: Ledger): void {
  const modest = ledger.look('die/volume', 'modest', {}, 'die.modest-volume');
  const parts = ledger.maybe('production.life');
  const rejects = ledger.maybe('cavities.reject-share');
  if (parts === undefined || rejects === undefined) {
    ledger.assume('die.shots-planned', modest.value, '1', {
      note: 'the part gives no number of parts over its life; a modest volume is taken',
      status: 'practice',
      parents: [modest],
    });
    return;
  }
  const needed = ledger.apply(shotsNeeded, { parts, cavities: ledger.value('machine.cavities'), reject_share: rejects });
  ledger.put(needed.as('die.shots-planned'));
}

/** Cores that make the die intricate: those of all holes, each as often as the part has it, and the slides. */
function cores(ledger: Ledger): void {
  const counts = coredHoles(ledger).map((id) => ledger.value('hole.count', id));
  const count = counts.reduce((sum, value) => sum + value.value, 0);
  ledger.put(Traced.choice('die.cores', count, '1', { note: 'holes of the part file that a core forms', status: 'derived', parents: counts }));
  const slides = slideItems(ledger);
  ledger.put(Traced.choice('die.slides', slides.length, '1', { note: slides.join(', ') || 'none', status: 'derived' }));
}

function hardness(ledger: Ledger): void {
  const axes = { component: 'cavity', steel: ledger.text('die.cavity-steel'), group: ledger.text('die.steel-group') };
  const options = { title: 'Hardness of the cavity' };
  const least = lookQuietly(ledger, 'die/hardness', 'least', axes, 'die.hardness-least', options);
  if (least === undefined) return;
  assumeMiddle(ledger, 'die.hardness', least, ledger.look('die/hardness', 'greatest', axes, 'die.hardness-greatest'));
  if (ledger.lookIfAny('die/hardness', 'brinell_least', axes, 'die.brinell-least') === undefined) return;
  ledger.look('die/hardness', 'brinell_greatest', axes, 'die.brinell-greatest');
}

function composition(ledger: Ledger): void {
  const grade = ledger.text('die.steel-grade');
  if (grade === 'none') return;
  for (const element of ELEMENTS) {
    ledger.lookIfAny('die/grade', 'least', { grade, element }, 'die.grade-least', element);
    ledger.look('die/grade', 'greatest', { grade, element }, 'die.grade-greatest', element);
  }
}

function componentSteel(ledger: Ledger, component: string): void {
  ledger.setText('die.component', component, { item: component });
  const steel = choose(ledger, 'die.component-steel', component).value;
  if (component === 'gooseneck') return;
  const axes = { component, steel, group: ledger.text('die.steel-group') };
  const options = { title: `Hardness, ${component}`, item: component };
  if (lookQuietly(ledger, 'die/hardness', 'least', axes, 'die.component-least', options) === undefined) return;
  ledger.look('die/hardness', 'greatest', axes, 'die.component-greatest', component);
}
