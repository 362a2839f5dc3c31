import { trappedGasVolume } from '../../physics/porosity.ts';
import { fedShare, freezingLead, gasContent, gasShare, porosityTotal, trappedLow, unfedShrinkage } from '../../physics/porosity-estimate.ts';
import { choose } from '../choose.ts';
import type { Ledger } from '../ledger.ts';
import type { Block } from '../plan.ts';
import { cell, type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';

/** How the die may stand before the fill; the gas is worked out for both, planned is one of them. */
const STATES = ['vented', 'evacuated'] as const;

/**
 * Gas that the casting traps, with and without vacuum, shrinkage that nothing feeds, and the two together as a range.
 * Low is a good shot, high a poor one; both ends are estimates.
 */
export const porosityStep: Step = {
  id: 'porosity',
  title: 'Porosity',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    choose(ledger, 'porosity.need');
    attempt('porosity.trapped-low', 'Share of the gas trapped', () => trapped(ledger));
    attempt('porosity.low-pressure', 'Metal pressure on the pores', () => lowPressure(ledger));
    for (const state of STATES) attempt(`porosity.pores-high[${state}]`, `Trapped gas, die ${state}`, () => gas(ledger, state));
    attempt('porosity.gas-high', 'Gas pores', () => planned(ledger));
    attempt('porosity.unfed-high', 'Shrinkage that is not fed', () => shrinkage(ledger));
    attempt('porosity.thick-spot', 'Shrinkage of the thickest wall', () => thickSpot(ledger));
    attempt('porosity.high', 'Porosity', () => {
      for (const end of ['low', 'high'] as const) {
        ledger.apply(porosityTotal, { gas: ledger.value(`porosity.gas-${end}`), shrinkage: ledger.value(`porosity.unfed-${end}`) }, { id: `porosity.${end}` });
      }
    });
  },
  show,
};

function trapped(ledger: Ledger): void {
  const least = ledger.look('porosity/trapped', 'least', {}, 'porosity.trapped-least');
  const greatest = ledger.look('porosity/trapped', 'greatest', {}, 'porosity.trapped-high');
  ledger.apply(trappedLow, { least, left: ledger.value('vent.gas-left'), greatest });
}

/** In a poor shot the intensifier comes when the gate is frozen, and the pores stay under the pressure of the fill phase. */
function lowPressure(ledger: Ledger): void {
  const reached = ledger.value('clamp.pressure-reached');
  const fill = ledger.value('intensification.fill-pressure');
  ledger.put(
    fill.value < reached.value
      ? fill.as('porosity.low-pressure', 'the static pressure of the fill phase')
      : reached.as('porosity.low-pressure', 'the pressure planned; the fill phase has no less'),
  );
}

/** The planned pressure of the state, or, for the state that is not planned, the air and the standard class of vacuum. */
function gas(ledger: Ledger, state: (typeof STATES)[number]): void {
  const start = state === 'evacuated' ? ledger.value('vent.kind-start', 'vacuum') : ledger.value('vent.air-pressure');
  const pressure = ledger.put(start.as(`porosity.start[${state}]`));
  const temperature = ledger.value('vent.gas-temperature');
  const metal = { density: ledger.value('alloy.density'), temperature: ledger.value('alloy.solidus') };
  for (const end of ['low', 'high'] as const) {
    const content = ledger.apply(
      gasContent,
      {
        gas_volume: ledger.value('vent.die-gas-volume'),
        pressure,
        temperature,
        trapped: ledger.value(`porosity.trapped-${end}`),
        mass: ledger.value('gate.flow-mass'),
      },
      { id: `porosity.content-${end}`, item: state },
    );
    const metalPressure = ledger.value(end === 'low' ? 'clamp.pressure-reached' : 'porosity.low-pressure');
    ledger.apply(gasShare, { content, ...metal, pressure: metalPressure }, { id: `porosity.pores-${end}`, item: state });
  }
}

function planned(ledger: Ledger): void {
  const state = ledger.text('vent.kind') === 'vacuum' ? 'evacuated' : 'vented';
  for (const end of ['low', 'high'] as const) {
    ledger.put(ledger.value(`porosity.content-${end}`, state).as(`porosity.gas-content-${end}`));
    ledger.put(ledger.value(`porosity.pores-${end}`, state).as(`porosity.gas-${end}`));
  }
  ledger.apply(
    trappedGasVolume,
    {
      gas_volume: ledger.value('vent.die-gas-volume'),
      gas_pressure: ledger.value('porosity.start', state),
      gas_temperature: ledger.value('vent.gas-temperature'),
      metal_pressure: ledger.value('porosity.low-pressure'),
      metal_temperature: ledger.value('alloy.solidus'),
      trapped: ledger.value('porosity.trapped-high'),
    },
    { note: 'high end: the greatest share trapped, at the lower metal pressure' },
  );
  ledger.look('porosity/gas', 'least', { class: 'ordinary' }, 'porosity.ordinary-least');
  ledger.look('porosity/gas', 'greatest', { class: 'ordinary' }, 'porosity.ordinary-greatest');
  if (ledger.text('porosity.need') === 'little-gas') ledger.look('porosity/gas', 'greatest', { class: 'weldable' }, 'porosity.gas-allowed');
}

/** At least the share of the wall that is solid when a gate, frozen like a still wall, shuts; at best a gate kept hot by the flow. */
function shrinkage(ledger: Ledger): void {
  const sections = { gate_thickness: ledger.value('gate.thickness'), wall: ledger.maybe('intensification.gate-wall') ?? ledger.value('part.wall-nominal') };
  const lead = ledger.apply(freezingLead, {
    least: ledger.value('intensification.reference-least'),
    greatest: ledger.value('intensification.reference-greatest'),
  });
  const total = ledger.value('porosity.shrinkage');
  const least = ledger.apply(fedShare, sections, { id: 'porosity.fed-least' });
  const greatest = ledger.apply(fedShare, { ...sections, lead }, { id: 'porosity.fed-greatest' });
  ledger.apply(unfedShrinkage, { shrinkage: total, fed: greatest }, { id: 'porosity.unfed-low' });
  ledger.apply(unfedShrinkage, { shrinkage: total, fed: least }, { id: 'porosity.unfed-high' });
}

function thickSpot(ledger: Ledger): void {
  const wall = ledger.maybe('part.wall-greatest');
  if (wall === undefined) return;
  const fed = ledger.apply(fedShare, { gate_thickness: ledger.value('gate.thickness'), wall }, { id: 'porosity.thick-spot-fed' });
  ledger.apply(unfedShrinkage, { shrinkage: ledger.value('porosity.shrinkage'), fed }, { id: 'porosity.thick-spot' });
}

function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('porosity.gas-high') && !ledger.values.has('porosity.unfed-high')) return [];
  const state = ledger.texts.get('vent.kind') === 'vacuum' ? 'evacuated' : 'vented';
  const light = ledger.alloy.family === 'aluminium' || ledger.alloy.family === 'magnesium';
  return [
    textBlock(
      `An estimate between a good shot (low) and a poor one (high), as a mean over the casting in volume per cent. It knows nothing of the shape: pores gather at thick spots and at the end of the flow, and a dense skin hides them. ${
        ledger.texts.get('machine.chamber') === 'hot'
          ? 'Vapour of the release agent comes on top, and air that a plunger drawn back too fast or a low pot lets into the gooseneck.'
          : 'Vapour of release agent and plunger lubricant, hydrogen, and air of the sleeve folded in by a bad slow shot come on top.'
      }`,
      ledger.values.get('porosity.unfed-low')?.value === 0
        ? ' The low end leaves out what only the shape tells: nothing is left unfed in it because the gate is nearly as thick as the wall, and no casting is free of pores.'
        : '',
    ),
    ...valuesBlock(ledger, ['porosity.low', 'porosity.high', 'porosity.gas-low', 'porosity.gas-high', 'porosity.unfed-low', 'porosity.unfed-high']),
    textBlock(
      'Gas: the share trapped is a range drawn from published gas contents; the pores have the volume that the gas keeps under the metal pressure, in a poor shot under that of the fill phase.',
    ),
    ...valuesBlock(ledger, ['porosity.trapped-low', 'porosity.trapped-high', 'porosity.low-pressure', 'porosity.gas-volume', 'porosity.gas-allowed']),
    ...tableBlock(
      'Trapped gas with and without vacuum',
      ['Die', 'Pressure before the fill', 'Gas in 100 g, low', 'Gas in 100 g, high', 'Gas pores, low', 'Gas pores, high'],
      STATES.filter((one) => ledger.values.has(`porosity.pores-high[${one}]`)).map((one) => [
        one === state ? `${one}, planned` : one,
        cell(ledger, 'porosity.start', one),
        cell(ledger, 'porosity.content-low', one),
        cell(ledger, 'porosity.content-high', one),
        cell(ledger, 'porosity.pores-low', one),
        cell(ledger, 'porosity.pores-high', one),
      ]),
    ),
    ...(light && ledger.values.has('porosity.ordinary-least')
      ? [
          textBlock(
            'Gas is given in the standard state, as in analyses of castings. An ordinary die casting holds ',
            { value: 'porosity.ordinary-least' },
            ' to ',
            { value: 'porosity.ordinary-greatest' },
            ' in 100 g.',
          ),
        ]
      : []),
    textBlock(
      'Shrinkage: gate and wall freeze from their skins inward at the same rate, so when the gate is shut the wall is solid to the gate thickness over its own. That share is fed, more where the flow has heated the gate; the rest becomes pores, or draws in the skin.',
    ),
    ...valuesBlock(ledger, ['porosity.shrinkage', 'porosity.fed-least', 'porosity.fed-greatest', 'porosity.thick-spot-fed', 'porosity.thick-spot']),
  ];
}
