import type { Traced } from '../../../kernel/traced.ts';
import { evacuatedVolume, evacuationTime, tankVolume } from '../../../physics/evacuation.ts';
import { cavityPressure, chokeRatio, multipleOfCritical, ratioForPressure, residualPressure } from '../../../physics/vent-balance.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { sumOf } from '../../sum.ts';
import { holeClosed } from '../slow-shot/phases.ts';
import { KINDS, workKind } from './kinds.ts';
import { show } from './show.ts';

/**
 * Gas in the cavity from the start of the fill to its end: what the planned vents leave, what other kinds would, what
 * area the wanted pressure asks for, and for a vacuum the time and the tank that it takes.
 */
export const ventBalanceStep: Step = {
  id: 'vent-balance',
  title: 'Gas in the cavity',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    ledger.look('vent/balance', 'air', {}, 'vent.air-pressure');
    ledger.look('vent/balance', 'stroke', {}, 'vent.stroke');
    for (const kind of KINDS) attempt(`vent.kind-times[${kind}]`, `Gas balance, ${kind} venting`, () => workKind(ledger, kind));
    attempt('vent.residual-pressure', 'Residual gas pressure', () => planned(ledger));
    attempt('vent.area-for-pressure', 'Vent area for the pressure wanted', () => wanted(ledger));
    attempt('vent.pays-greatest', 'Vent area from which more pays nothing', () => paying(ledger));
    if (ledger.texts.get('vent.kind') === 'vacuum') attempt('vent.evacuation-time', 'Evacuation of the die', () => evacuation(ledger));
  },
  show,
};

/** The figures of the kind that is planned, under ids that the rules can name. */
function planned(ledger: Ledger): void {
  const kind = ledger.text('vent.kind');
  ledger.put(ledger.value('vent.kind-start', kind).as('vent.start-pressure'));
  ledger.put(ledger.value('vent.kind-back', kind).as('vent.back-pressure'));
  const friction_length = ledger.put(ledger.value('vent.kind-friction', kind).as('vent.passage-friction'));
  ledger.put(ledger.value('vent.kind-critical', kind).as('vent.critical-area'));
  ledger.put(ledger.value('vent.kind-ratio', kind).as('vent.area-ratio'));
  ledger.put(ledger.value('vent.kind-times', kind).as('vent.residual-pressure'));
  ledger.put(ledger.value('vent.kind-bar', kind).as('vent.residual-bar'));
  ledger.put(ledger.value('vent.kind-left', kind).as('vent.gas-left'));
  ledger.apply(chokeRatio, { friction_length });
}

const passage = (ledger: Ledger) => ({
  stroke: ledger.value('vent.stroke'),
  friction_length: ledger.value('vent.passage-friction'),
  back_pressure: ledger.value('vent.back-pressure'),
});

function wanted(ledger: Ledger): void {
  const pressure = ledger.look('vent/residual', 'greatest', { use: ledger.text('quality.use') }, 'vent.residual-greatest');
  const ratio = ledger.apply(ratioForPressure, { pressure, ...passage(ledger) });
  ledger.apply(multipleOfCritical, { critical: ledger.value('vent.critical-area'), ratio }, { id: 'vent.area-for-pressure' });
}

/** What the two multiples of the critical area would leave, at which more area stops paying. */
function paying(ledger: Ledger): void {
  const critical = ledger.value('vent.critical-area');
  const start = ledger.value('vent.start-pressure');
  for (const end of ['least', 'greatest'] as const) {
    const ratio = ledger.look('vent/balance', `pays_${end}`, {}, `vent.pays-${end}`);
    ledger.apply(multipleOfCritical, { critical, ratio }, { id: `vent.area-pays-${end}` });
    const times = ledger.apply(residualPressure, { area_ratio: ratio, ...passage(ledger) }, { id: `vent.times-pays-${end}` });
    ledger.apply(cavityPressure, { start, times }, { id: `vent.residual-pays-${end}` });
  }
}

/** A sleeve without a pour hole on its way, or no sleeve, gives the vacuum all that it holds. */
function room(ledger: Ledger): Traced<'cm3'> {
  const die = ledger.value('vent.die-gas-volume');
  const all = ledger.maybe('vent.all-gas-volume');
  if (all === undefined || ledger.text('machine.kind') !== 'cold-chamber') return ledger.put((all ?? die).as('vent.evacuated-volume'));
  const [diameter, cavities] = [ledger.value('machine.plunger'), ledger.value('machine.cavities')];
  return ledger.apply(evacuatedVolume, { die, all, diameter, hole_travel: holeClosed(ledger), cavities });
}

/** From the closed pour hole on, the air left in the sleeve is drawn off with that of the die. */
function evacuation(ledger: Ledger): void {
  const start = ledger.value('vent.air-pressure');
  const end = ledger.value('vent.vacuum-pressure');
  const gas_volume = room(ledger);
  ledger.apply(evacuationTime, { gas_volume, area: ledger.value('vent.area'), velocity: ledger.value('vent.kind-velocity', 'vacuum'), start, end });
  ledger.look('vent/vacuum-plant', 'window_least', {}, 'vent.window-least');
  ledger.look('vent/vacuum-plant', 'window_greatest', {}, 'vent.window-greatest');
  ledger.look('vent/vacuum-plant', 'tank_ratio_least', {}, 'vent.tank-ratio-least');
  ledger.look('vent/vacuum-plant', 'tank_ratio_greatest', {}, 'vent.tank-ratio-greatest');
  const total = ledger.put(sumOf('vent.evacuated-total', 'Room to evacuate of all cavities', 'cm3', [gas_volume], ledger.value('machine.cavities')));
  ledger.apply(tankVolume, { gas_volume: total, start, end });
}
