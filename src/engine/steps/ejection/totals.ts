import { Traced } from '../../../kernel/traced.ts';
import { forceAtYield, forceUse, gripDiameter } from '../../../physics/ejection/force-plan.ts';
import { pullingForce } from '../../../physics/slide-force.ts';
import type { Ledger } from '../../ledger.ts';
import { orPinned } from '../../planned.ts';
import { sumOf } from '../../sum.ts';
import { COVER_HALF, type Core, EJECTOR_HALF } from './cores.ts';
import { ENDS } from './grip.ts';

/** The word of the decision table for a casting that yields around its cores. */
const YIELD = 'hot yield strength';

/** Force of one casting and of the shot, at both ends and as planned; what the cover half holds back; what the machine has. */
export function fileTotals(ledger: Ledger, cores: readonly Core[]): void {
  const own = cores.filter((core) => core.place === EJECTOR_HALF);
  const bearing = own.filter((core) => core.kind !== 'floor');
  const areas = bearing.map((core) => ledger.value('ejection.core-area', core.item));
  ledger.attempt('ejection.contact-area', 'Contact area', () =>
    ledger.put(sumOf('ejection.contact-area', 'Contact area of one casting, ejector half', 'cm2', areas)),
  );
  for (const { force } of ENDS) {
    ledger.attempt(`ejection.force${force}`, 'Ejection force', () => {
      const cavity = orPinned(ledger, `ejection.cavity-force${force}`, () => {
        const forces = own.map((core) => ledger.value(`ejection.core-force${force}`, core.item));
        return ledger.put(sumOf(`ejection.cavity-force${force}`, 'Ejection force of one casting', 'kN', forces));
      });
      ledger.put(sumOf(`ejection.force${force}`, 'Ejection force of the whole shot', 'kN', [cavity], ledger.value('machine.cavities')));
    });
  }
  ledger.attempt('ejection.cover-force', 'Grip on the cover half', () => coverForce(ledger, cores));
  ledger.attempt('ejection.force-early', 'Ejection force of a casting ejected early', () => earlyForce(ledger, own));
  ledger.attempt('ejection.force-use', 'Use of the ejector force', () => {
    const machine = ledger.maybe('machine.ejector-force');
    if (machine === undefined) return;
    ledger.apply(forceUse, { force: ledger.value('ejection.force'), machine });
    ledger.apply(forceUse, { force: ledger.value('ejection.force-high'), machine }, { id: 'ejection.force-use-high' });
  });
  ledger.attempt('ejection.handbook-least', 'Ejection force by a gripping pressure', () => handbook(ledger, bearing));
}

function coverForce(ledger: Ledger, cores: readonly Core[]): void {
  const cover = cores.filter((core) => core.place === COVER_HALF);
  if (cover.length === 0) {
    ledger.put(Traced.choice('ejection.cover-force', 0, 'kN', { note: 'the part file has no core that would stand in the cover half', status: 'derived' }));
    return;
  }
  const forces = cover.map((core) => ledger.value('ejection.core-force', core.item));
  ledger.put(sumOf('ejection.cover-force', 'Grip of one casting on the cover half', 'kN', forces));
}

/** What the force would be if the die opened as soon as the wall is ready: less, as the wall is hotter and softer then. */
function earlyForce(ledger: Ledger, own: readonly Core[]): void {
  const [wall, boss] = [ledger.value('ejection.temperature', 'wall'), ledger.value('ejection.temperature', 'boss')];
  if (wall.value >= boss.value || ledger.texts.get('ejection.grip[wall]') !== YIELD) return;
  const yields = { hot_yield: ledger.value('ejection.hot-yield', 'wall'), other_yield: ledger.value('ejection.hot-yield', 'boss') };
  const forces = own.map(({ item, kind }) => {
    const force = ledger.value('ejection.core-force', item);
    return kind === 'pin' ? force : ledger.apply(forceAtYield, { force, ...yields }, { id: 'ejection.core-force-early', item });
  });
  const cavity = ledger.put(sumOf('ejection.cavity-force-early', 'Ejection force of one casting', 'kN', forces));
  ledger.put(sumOf('ejection.force-early', 'Ejection force of the whole shot', 'kN', [cavity], ledger.value('machine.cavities')));
}

/** The second route: one gripping pressure for all cores, whatever their size, with the draft of the largest. */
function handbook(ledger: Ledger, own: readonly Core[]): void {
  const { family } = ledger.alloy;
  const surface = ledger.value('ejection.contact-area');
  const area = (core: Core): number => ledger.value('ejection.core-area', core.item).value;
  const steep = (core: Core): number => ledger.value('ejection.core-draft', core.item).value;
  const largest = [...own].sort((a, b) => area(b) - area(a) || steep(a) - steep(b))[0];
  if (largest === undefined || surface.value <= 0) return;
  const draft = ledger.value('ejection.core-draft', largest.item);
  for (const end of ['least', 'greatest'] as const) {
    const pressure = ledger.lookIfAny('slide/gripping-pressure', end, { family }, `ejection.grip-${end}`);
    if (pressure === undefined) return;
    const friction = ledger.look('slide/gripping-pressure', `friction_${end}`, { family }, `ejection.grip-friction-${end}`);
    ledger.apply(pullingForce, { surface, pressure, friction, draft }, { id: `ejection.handbook-${end}` });
  }
  const of = { hot_yield: ledger.value('ejection.hot-yield', 'boss'), wall: ledger.value('part.wall-nominal') };
  ledger.apply(gripDiameter, { ...of, grip_pressure: ledger.value('ejection.grip-greatest') }, { id: 'ejection.grip-diameter-least' });
  ledger.apply(gripDiameter, { ...of, grip_pressure: ledger.value('ejection.grip-least') }, { id: 'ejection.grip-diameter-greatest' });
}

/** Slides as the cores name them, in their order: `slide S1` without the word. */
export function slidesOf(cores: readonly Core[]): string[] {
  return [...new Set(cores.map(({ place }) => place).filter((place) => place.startsWith('slide ')))].map((place) => place.slice('slide '.length));
}

/** Pulling force of each slide by the grip at ejection, beside the one by a gripping pressure. */
export function fileSlideForces(ledger: Ledger, cores: readonly Core[]): void {
  for (const slide of slidesOf(cores)) {
    ledger.attempt(`ejection.slide-force[${slide}]`, `Core pulling force of ${slide} at ejection temperature`, () => {
      for (const { force } of ENDS) {
        const forces = cores.filter(({ place }) => place === `slide ${slide}`).map((core) => ledger.value(`ejection.core-force${force}`, core.item));
        ledger.put(sumOf(`ejection.slide-force${force}[${slide}]`, 'Core pulling force at ejection temperature', 'kN', forces));
      }
    });
  }
}
