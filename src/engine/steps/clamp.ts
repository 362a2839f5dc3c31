import { Traced } from '../../kernel/traced.ts';
import { lockingForce, offCentreCapacity, openingForce, projectedAreaTotal, slideOpeningForce, tieBarLoad } from '../../physics/clamp.ts';
import { clampUse, pressureReached, sizingPressure, spikePressure } from '../../physics/clamp-use.ts';
import { overflowAreaShare } from '../../physics/overflow-plan.ts';
import { halfOf } from '../half.ts';
import type { Ledger } from '../ledger.ts';
import { cell, type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';
import { sumOf } from '../sum.ts';
import { workPressureCentre } from './pressure-centre.ts';

/**
 * Locking force for the cavities, plunger and machine that are filed: pressure, projected area of the whole shot,
 * slides, and the load of the tie bars. Also run by the machine search on trial ledgers.
 */
export function workClamp(ledger: Ledger): void {
  const family = ledger.alloy.family;
  const cavities = ledger.value('machine.cavities');
  clampPressure(ledger, family);

  ledger.put(ledger.value('runner.area-share').as('clamp.runner-share'));
  const casting_area = ledger.value('part.projected-area');
  ledger.apply(overflowAreaShare, { area: ledger.value('overflow.area'), casting_area }, { id: 'clamp.overflow-share' });
  ledger.look('clamp/area-share', 'overflow_greatest', {}, 'overflow.area-share-greatest');
  const area = ledger.apply(
    projectedAreaTotal,
    {
      casting_area,
      cavities,
      runner_share: ledger.value('clamp.runner-share'),
      overflow_share: ledger.value('clamp.overflow-share'),
      biscuit_diameter: ledger.value('clamp.feeder-diameter'),
    },
    { id: 'clamp.projected-area' },
  );
  const opening = ledger.apply(openingForce, { pressure: ledger.value('clamp.sizing-pressure'), area });

  const slides = slideIds(ledger);
  const forces = slides.map((slide) =>
    ledger.apply(
      slideOpeningForce,
      {
        pressure: ledger.value('clamp.sizing-pressure'),
        face_area: ledger.value('slide.face-area', slide),
        lock_angle: ledger.value('slide.lock-angle', slide),
      },
      { item: slide },
    ),
  );
  const slideForce =
    forces.length === 0
      ? ledger.put(Traced.choice('clamp.slide-force-total', 0, 'kN', { note: 'no slide', status: 'derived', parents: [ledger.value('parting.core-pulls')] }))
      : ledger.put(sumOf('clamp.slide-force-total', 'Opening force from all slide locks', 'kN', forces, cavities));
  const factor = ledger.look('clamp/factor', 'factor', { slides: slides.length === 0 ? 'none' : 'explicit' }, 'clamp.factor');
  const locking = ledger.apply(lockingForce, { opening_force: opening, slide_force: slideForce, factor });

  ledger.look('clamp/use', 'least', {}, 'clamp.use-least');
  ledger.look('clamp/use', 'greatest', {}, 'clamp.use-greatest');
  const rated = ledger.value('machine.locking-force');
  ledger.apply(clampUse, { needed: locking, rated });
  tieBars(ledger, locking, rated);
}

/**
 * The greater of the intensified pressure of the class and the spike at the end of fill sizes the clamp. A hot chamber has no
 * intensifier to be set: the whole static pressure of its fill phase stands on the full die, whatever the class asks for.
 */
function clampPressure(ledger: Ledger, family: string): void {
  const use = ledger.text('quality.use');
  const wanted = ledger.look('clamp/pressure', 'used', { family, use }, 'clamp.pressure');
  const available = ledger.value('machine.metal-pressure');
  const intensified =
    ledger.text('machine.chamber') === 'hot'
      ? ledger.put(
          available.as('clamp.pressure-reached', 'hot chamber: the static pressure of the fill phase stands on the full die, whatever the class asks for'),
        )
      : ledger.apply(pressureReached, { wanted, available });
  ledger.look('clamp/pressure', 'least', { family, use }, 'clamp.pressure-least');
  ledger.look('clamp/pressure', 'greatest', { family, use }, 'clamp.pressure-greatest');
  const fill = ledger.value('gate.die-pressure');
  const factor = ledger.look('clamp/spike', 'least', {}, 'clamp.spike-factor');
  const unbraked = ledger.look('clamp/spike', 'greatest', {}, 'clamp.spike-factor-unbraked');
  const spike = ledger.apply(
    spikePressure,
    { fill_pressure: fill, factor },
    { note: 'the peak of the pressure that drives the gates, with the plunger braked before the cavity is full' },
  );
  ledger.apply(
    spikePressure,
    { fill_pressure: fill, factor: unbraked },
    {
      id: 'clamp.spike-unbraked',
      note: 'the same peak without braking; at rest the fill phase presses with its static pressure, see the pressure after the fill',
    },
  );
  ledger.apply(sizingPressure, { intensified, spike });
}

function tieBars(ledger: Ledger, force: Traced<'kN'>, rated: Traced<'kN'>): void {
  const half_span_x = ledger.put(
    halfOf(
      'clamp.half-span-x',
      'half the clear width between the bars; the bar centres lie a little further out, so this is the safe side',
      ledger.value('die.bars-width'),
    ),
  );
  const half_span_y = ledger.put(halfOf('clamp.half-span-y', 'half the clear height between the bars; the safe side', ledger.value('die.bars-height')));
  const offset = workPressureCentre(ledger);
  ledger.apply(tieBarLoad, { force, half_span_x, half_span_y, ...offset });
  ledger.apply(offCentreCapacity, { rated, half_span_x, half_span_y, ...offset });
}

/** Items of the slides that the parting step has filed. */
function slideIds(ledger: Ledger): readonly string[] {
  return ledger.items('slide.face-area');
}

export const clampStep: Step = {
  id: 'clamp',
  title: 'Locking force',
  work: workClamp,
  show: (ledger) => {
    const cold = ledger.texts.get('machine.chamber') === 'cold';
    const slides = slideIds(ledger);
    return [
      textBlock(
        cold
          ? 'The clamp is sized on the greater of the intensified pressure and the end-of-fill spike, over the projected area of the whole shot, with the slides counted by their locks.'
          : 'A hot chamber has no intensifier: the clamp is sized on the greater of the metal pressure and the end-of-fill spike, over the projected area of the whole shot, with the slides counted by their locks.',
      ),
      ...valuesBlock(ledger, [
        'clamp.pressure',
        'clamp.pressure-reached',
        'clamp.spike-pressure',
        'clamp.spike-unbraked',
        'clamp.sizing-pressure',
        'part.projected-area',
        'clamp.runner-share',
        'clamp.overflow-share',
        ...(cold ? (['clamp.feeder-diameter'] as const) : []),
        'clamp.projected-area',
        'clamp.opening-force',
        ...(slides.length > 0 ? (['clamp.slide-force-total'] as const) : []),
        'clamp.factor',
        'clamp.locking-force',
        'machine.locking-force',
        'clamp.use',
        'clamp.castings-in-die',
        'clamp.pressure-in-die',
        'clamp.feeder-below',
        'clamp.offset-x',
        'clamp.feeder-offset',
        'clamp.tie-bar-load',
        'clamp.off-centre-capacity',
      ]),
      ...tableBlock(
        'Slide locks',
        ['Slide', 'Face area', 'Lock angle', 'Opening force'],
        slides.map((slide) => [
          slide,
          cell(ledger, 'slide.face-area', slide),
          cell(ledger, 'slide.lock-angle', slide),
          cell(ledger, 'clamp.slide-opening-force', slide),
        ]),
      ),
    ];
  },
};
