import type { Traced } from '../../../kernel/traced.ts';
import { chokedVelocity, frictionLength, ventArea } from '../../../physics/vent.ts';
import { areaRatio, backPressure, cavityPressure, gasLeft, plainFit, residualPressure } from '../../../physics/vent-balance.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';

/** The kinds of venting, as the decision table of the vents names them. */
export const KINDS = ['plain', 'chill', 'vacuum'] as const;
export type Kind = (typeof KINDS)[number];

/** The class of vacuum that stands for it where the die is vented to the air. */
const OTHER_VACUUM = 'standard';

/**
 * Gas balance of one kind of venting: the kind planned with its planned area, any other with the area that it would
 * have here - plain vents what the free parting line takes, chill vents and valves their critical area.
 */
export function workKind(ledger: Ledger, kind: Kind): void {
  const planned = ledger.text('vent.kind') === kind;
  const friction_length = ledger.put(passageFriction(ledger, kind, planned).as(`vent.kind-friction[${kind}]`));
  const velocity = ledger.apply(
    chokedVelocity,
    { gas_temperature: ledger.value('vent.gas-temperature'), friction_length },
    { id: 'vent.kind-velocity', item: kind, aside: !planned },
  );
  const sizing = { gas_volume: ledger.value('vent.gas-volume'), time: ledger.value('fill.time'), velocity };
  const critical = ledger.apply(ventArea, sizing, { id: 'vent.kind-critical', item: kind, note: 'a vent choked throughout passes the gas in the fill time' });
  const area = kindArea(ledger, kind, planned, critical);
  // Gates that take the whole parting line leave no room for plain vents, and there is nothing to balance.
  if (area.value <= 0) return;
  const area_ratio = ledger.apply(areaRatio, { area, critical }, { id: 'vent.kind-ratio', item: kind, aside: !planned });
  const { start, behind } = pressures(ledger, kind, planned);
  const back_pressure = ledger.apply(backPressure, { behind, start }, { id: 'vent.kind-back', item: kind, aside: !planned });
  const stroke = ledger.value('vent.stroke');
  const times = ledger.apply(residualPressure, { area_ratio, stroke, friction_length, back_pressure }, { id: 'vent.kind-times', item: kind, aside: !planned });
  ledger.apply(cavityPressure, { start, times }, { id: 'vent.kind-bar', item: kind, aside: !planned });
  ledger.apply(gasLeft, { pressure: times, stroke }, { id: 'vent.kind-left', item: kind, aside: !planned });
}

/** Friction length: of a plain vent as planned, of a chill vent from its gap, of a valve as published. */
function passageFriction(ledger: Ledger, kind: Kind, planned: boolean): Traced<'1'> {
  if (kind === 'plain') return ledger.value('vent.friction-length');
  if (kind === 'vacuum') return ledger.look('vent/balance', 'valve_friction', {}, 'vent.valve-friction');
  const depth = planned ? ledger.value('vent.chill-gap') : otherGap(ledger);
  const land = ledger.look('vent/balance', 'chill_length', {}, 'vent.chill-length');
  return ledger.apply(frictionLength, { depth, land, friction: ledger.value('vent.friction') }, { id: 'vent.chill-friction' });
}

function otherGap(ledger: Ledger): Traced<'mm'> {
  const least = ledger.look('vent/geometry', 'chill_gap_least', {}, 'vent.other-gap-least');
  const greatest = ledger.look('vent/geometry', 'chill_gap_greatest', {}, 'vent.other-gap-greatest');
  return assumeMiddle(ledger, 'vent.other-gap', least, greatest, 'if chill vents were taken');
}

function kindArea(ledger: Ledger, kind: Kind, planned: boolean, critical: Traced<'mm2'>): Traced<'mm2'> {
  if (planned) return ledger.put(ledger.value('vent.area').as(`vent.kind-area[${kind}]`));
  if (kind !== 'plain') return ledger.put(critical.as(`vent.kind-area[${kind}]`, 'not planned; its critical area'));
  return ledger.apply(
    plainFit,
    { needed: ledger.value('vent.plain-area'), width: ledger.value('vent.width-available'), depth: ledger.value('vent.depth') },
    { id: 'vent.kind-area', item: kind, note: 'not planned; as much of the vents needed as the parting line has room for' },
  );
}

/** Into the air both pressures are the air's; under vacuum the cavity is at the high end of the class and the tank at its low end. */
function pressures(ledger: Ledger, kind: Kind, planned: boolean): { start: Traced<'mbar'>; behind: Traced<'mbar'> } {
  const file = (start: Traced<'mbar'>, behind: Traced<'mbar'>) => ({
    start: ledger.put(start.as(`vent.kind-start[${kind}]`)),
    behind: ledger.put(behind.as(`vent.kind-behind[${kind}]`)),
  });
  if (kind !== 'vacuum') return file(ledger.value('vent.air-pressure'), ledger.value('vent.air-pressure'));
  if (planned) return file(ledger.value('vent.vacuum-pressure'), ledger.value('vent.vacuum-pressure-least'));
  const vacuum = { class: OTHER_VACUUM };
  const greatest = ledger.look('vent/vacuum', 'greatest', vacuum, 'vent.other-vacuum');
  return file(greatest, ledger.look('vent/vacuum', 'least', vacuum, 'vent.other-vacuum-least'));
}
