import type { Traced } from '../../../kernel/traced.ts';
import { feedTravel, gateForTime, gateFreeze, hydraulicPressure } from '../../../physics/intensification.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';
import type { Step } from '../../step.ts';
import { workBiscuitLeft, workFeeding } from '../feeding.ts';
import { VERTICAL } from '../squeeze.ts';
import { cannotBeLowered, fillPressure, lowered } from './fill-phase.ts';
import { show } from './show.ts';

/**
 * Pressure on the metal after the fill: how high, how soon it must stand before the gate is frozen, how long it is held,
 * in what order gate, runner and biscuit freeze, and how much metal the shrinkage takes.
 */
export const intensificationStep: Step = {
  id: 'intensification',
  title: 'Pressure after the fill',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    const cold = ledger.text('machine.chamber') === 'cold';
    attempt('intensification.fill-pressure', 'Static metal pressure of the fill phase', () => fillPressure(ledger));
    attempt('intensification.lowered-pressure', 'Pressure of the fill phase against the one planned', () => lowered(ledger));
    if (cold) attempt('intensification.hydraulic-pressure', 'Setting of the intensifier', () => setting(ledger));
    attempt('intensification.gate-freeze-least', 'Freezing time of the gate', () => freezing(ledger));
    if (cold) attempt('intensification.rise-needed', 'Rise time', () => rise(ledger));
    if (ledger.text('machine.kind') !== VERTICAL) attempt('intensification.hold', 'Time under pressure', () => hold(ledger));
    attempt('intensification.main-depth', 'Order of freezing', () =>
      ledger.put(ledger.value('runner.segment-depth', 'main runner').as('intensification.main-depth')),
    );
    workFeeding(ledger);
    attempt('intensification.feed-travel', 'Metal to feed', () =>
      ledger.apply(feedTravel, { volume: ledger.value('intensification.feed-volume'), diameter: ledger.value('machine.plunger') }),
    );
    if (cold) attempt('intensification.biscuit-left', 'Biscuit that is left', () => workBiscuitLeft(ledger));
  },
  show,
};

/** Nothing is left to be set where the fill phase by itself presses harder. */
function setting(ledger: Ledger): void {
  if (!cannotBeLowered(ledger)) {
    const metal_pressure = ledger.put(ledger.value('clamp.pressure-reached').as('intensification.set-pressure'));
    const [cylinder_diameter, plunger_diameter] = [ledger.value('machine.cylinder-diameter'), ledger.value('machine.plunger')];
    ledger.apply(hydraulicPressure, { metal_pressure, cylinder_diameter, plunger_diameter });
  }
  ledger.look('sleeve/intensification', 'pressure_least', {}, 'intensification.pressure-least');
  ledger.look('sleeve/intensification', 'pressure_greatest', {}, 'intensification.pressure-greatest');
}

/** Published for one gate in aluminium; thickness and family carry it over. */
function freezing(ledger: Ledger): void {
  const reference = ledger.look('sleeve/intensification', 'gate_reference', {}, 'intensification.gate-reference');
  const constant = ledger.look('cooling/handbook-constant', 'constant', { family: ledger.alloy.family }, 'intensification.constant');
  const reference_constant = ledger.look('cooling/handbook-constant', 'constant', { family: 'aluminium' }, 'intensification.constant-aluminium');
  for (const end of ['least', 'greatest'] as const) {
    const time = ledger.look('sleeve/intensification', `gate_freeze_${end}`, {}, `intensification.reference-${end}`);
    ledger.apply(
      gateFreeze,
      { time, reference, thickness: ledger.value('gate.thickness'), constant, reference_constant },
      { id: `intensification.gate-freeze-${end}` },
    );
  }
}

function rise(ledger: Ledger): void {
  const freeze = ledger.value('intensification.gate-freeze-least');
  ledger.put(freeze.as('intensification.rise-needed', 'the pressure must stand before the gate is frozen, at the low end of its freezing time'));
  const thickness = ledger.value('gate.thickness');
  ledger.put(gateWall(ledger).as('intensification.gate-wall'));
  const least = ledger.look('sleeve/intensification', 'rise_least', {}, 'intensification.rise-least');
  const greatest = ledger.look('sleeve/intensification', 'rise_greatest', {}, 'intensification.rise-greatest');
  ledger.apply(gateForTime, { thickness, freeze, time: least }, { id: 'intensification.gate-for-fast' });
  ledger.apply(gateForTime, { thickness, freeze, time: greatest }, { id: 'intensification.gate-for-slow' });
}

/** In a die of several parts the thinnest gate need not be that of the thickest wall. */
function gateWall(ledger: Ledger): Traced<'mm'> {
  const [first, ...others] = ledger.items('set.gate-thickness').filter((part) => ledger.maybe('set.wall', part) !== undefined);
  if (first === undefined) return ledger.value('part.wall-nominal');
  const gate = (part: string): number => ledger.value('set.gate-thickness', part).value;
  return ledger.value(
    'set.wall',
    others.reduce((thinnest, part) => (gate(part) < gate(thinnest) ? part : thinnest), first),
  );
}

function hold(ledger: Ledger): void {
  const axes = { family: ledger.alloy.family, wall: ledger.value('part.wall-nominal') };
  const least = ledger.look('intensification/hold', 'least', axes, 'intensification.hold-least');
  const greatest = ledger.look('intensification/hold', 'greatest', axes, 'intensification.hold-greatest');
  ledger.look('sleeve/intensification', 'hold_greatest', {}, 'intensification.hold-published');
  assumeMiddle(
    ledger,
    'intensification.hold',
    least,
    greatest,
    `${ledger.text('machine.chamber') === 'cold' ? 'the biscuit' : 'the sprue'} sets it, the casting takes pressure only until its gate is frozen`,
  );
}
