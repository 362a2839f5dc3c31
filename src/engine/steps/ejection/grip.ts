import type { Traced } from '../../../kernel/traced.ts';
import { bossPressure, contactPressure, ejectionForce, hoopStress, releaseTravel, temperatureDrop } from '../../../physics/ejection/force.ts';
import { floorForce } from '../../../physics/ejection/force-plan.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';
import type { Core } from './cores.ts';

/** Low end, plan and high end: the suffix of the value ids and the column of the tables. */
export const ENDS = [
  { force: '-low', table: '-least', column: 'least' },
  { force: '', table: '', column: 'used' },
  { force: '-high', table: '-greatest', column: 'greatest' },
] as const;

/** The metal that grips: the wall around the inside of the casting, and the boss around a core pin. */
type Metal = 'wall' | 'boss';

/** Temperature, contraction, strength and friction of the casting when it is ejected. @throws Missing without a temperature. */
export function fileStrength(ledger: Ledger): void {
  const { family } = ledger.alloy;
  const temperatures = fileTemperatures(ledger);
  const title = 'Friction of the casting on its cores';
  const poisson = lookQuietly(ledger, 'ejection/contact', 'poisson', { family }, 'ejection.poisson', { title });
  if (poisson === undefined) return;
  for (const { table, column } of ENDS) ledger.look('ejection/contact', `friction_${column}`, { family }, `ejection.friction${table}`);
  ledger.look('ejection/contact', 'friction_dry', { family }, 'ejection.friction-dry');
  const expansion = ledger.value('alloy.expansion');
  const die_expansion = ledger.look('shrink/steel', 'expansion', {}, 'ejection.die-expansion');
  const die_change = ledger.assume('ejection.die-change', 0, 'K', {
    note: 'the core takes up heat while the casting shrinks and is hardly colder at ejection',
    status: 'practice',
  });
  for (const metal of ['wall', 'boss'] as const) {
    const temperature = temperatures[metal];
    const modulus = ledger.look('ejection/hot-strength', 'modulus', { family, temperature }, 'ejection.modulus', metal);
    for (const { table, column } of ENDS) {
      ledger.look('ejection/hot-strength', `yield_${column}`, { family, temperature }, `ejection.hot-yield${table}`, metal);
    }
    const coherent_temperature = ledger.value('alloy.solidus');
    const shrinks = { coherent_temperature, eject_temperature: temperature, expansion, die_expansion, die_change };
    const temperature_drop = ledger.apply(temperatureDrop, shrinks, { item: metal });
    ledger.apply(hoopStress, { modulus, expansion, temperature_drop, poisson }, { item: metal });
    choose(ledger, 'ejection.grip', metal);
  }
}

/**
 * The casting leaves when the die opens. Its walls are colder by then where something else than they kept the die closed;
 * a boss is thicker and stands around a hot pin, so it is taken as just ready.
 */
function fileTemperatures(ledger: Ledger): Record<Metal, Traced<'degC'>> {
  const ready = ledger.value('cooling.eject-temperature');
  const opening = ledger.maybe('cooling.opening-temperature');
  const wall = opening !== undefined && opening.value < ready.value ? opening : ready;
  return {
    wall: ledger.put(wall.as('ejection.temperature[wall]')),
    boss: ledger.put(ready.as('ejection.temperature[boss]', 'thicker than the wall and around a hot pin, so taken as just ready to be ejected')),
  };
}

/** Pressure of the casting on a core and the force that draws it off, at both ends and as planned. */
export function fileCoreForces(ledger: Ledger, core: Core): void {
  const { item } = core;
  if (core.kind === 'floor') {
    fileFloorForce(ledger, item);
    return;
  }
  const of = { core_diameter: ledger.value('ejection.core-diameter', item), wall: ledger.value('part.wall-nominal') };
  const metal = core.kind === 'pin' ? 'boss' : 'wall';
  const shrinks = contraction(ledger, metal);
  const contact_area = ledger.value('ejection.core-area', item);
  const draft = ledger.value('ejection.core-draft', item);
  for (const { force, table } of ENDS) {
    const contact_pressure = ledger.apply(
      core.kind === 'pin' ? bossPressure : contactPressure,
      { ...shrinks, ...of, hot_yield: ledger.value(`ejection.hot-yield${table}`, metal) },
      { id: `ejection.core-pressure${force}`, item },
    );
    const friction = ledger.value(`ejection.friction${table}`);
    ledger.apply(ejectionForce, { contact_pressure, contact_area, friction, draft }, { id: `ejection.core-force${force}`, item });
  }
  if (core.face === undefined) return;
  const contact_pressure = ledger.value('ejection.core-pressure', item);
  const height = ledger.value('ejection.core-height', item);
  ledger.apply(releaseTravel, { contact_pressure, ...of, modulus: shrinks.modulus, draft, height }, { id: 'ejection.wall-release', item: core.face });
}

function contraction(ledger: Ledger, metal: Metal) {
  return {
    modulus: ledger.value('ejection.modulus', metal),
    expansion: ledger.value('alloy.expansion'),
    temperature_drop: ledger.value('ejection.temperature-drop', metal),
    poisson: ledger.value('ejection.poisson'),
  };
}

/** What the floor adds: at the low end nothing, as the published forms have it. */
function fileFloorForce(ledger: Ledger, item: string): void {
  for (const { force, table, column } of ENDS) {
    ledger.apply(
      floorForce,
      {
        ...contraction(ledger, 'wall'),
        hot_yield: ledger.value(`ejection.hot-yield${table}`, 'wall'),
        wall: ledger.value('part.wall-nominal'),
        height: ledger.value('ejection.core-height', item),
        outline: ledger.value('ejection.core-outline', item),
        closed: ledger.value('ejection.closed-share'),
        share: ledger.look('ejection/floor', `share_${column}`, {}, `ejection.floor-share${table}`),
        friction: ledger.value(`ejection.friction${table}`),
        draft: ledger.value('ejection.core-draft', item),
      },
      { id: `ejection.core-force${force}`, item },
    );
  }
}
