import { faceConductance, surfaceBefore, surfaceMean, surfacePeak, surfaceSwing, wallHeat } from '../../../physics/die-surface.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block } from '../../plan.ts';
import { type Step, textBlock, valuesBlock } from '../../step.ts';
import { surfaceFigure } from './figure.ts';

/** The die surface over a cycle once every cycle is as the last: before the shot, at its peak, on average. */
export const dieSurfaceStep: Step = {
  id: 'die-surface',
  title: 'Die surface temperature',
  work: (ledger) => {
    ledger.attempt('heat.surface-before', 'Die surface temperature', () => surface(ledger));
  },
  show,
};

function surface(ledger: Ledger): void {
  const wall = ledger.value('part.wall-nominal');
  const heat = ledger.apply(wallHeat, { density: ledger.value('alloy.density'), wall, per_mass: ledger.value('heat.each', 'casting') });
  const conductance = ledger.apply(faceConductance, {
    conductance: ledger.value('cooling.conductance'),
    area: ledger.value('heat.face-area'),
    wall_heat: heat,
    mean_heat: ledger.value('heat.per-area'),
  });
  const given = {
    wall,
    gate_temperature: ledger.value('fill.gate-temperature'),
    liquidus: ledger.value('alloy.liquidus'),
    solidus: ledger.value('alloy.solidus'),
    density: ledger.value('alloy.density'),
    cp_liquid: ledger.value('cooling.liquid-heat'),
    cp_solid: ledger.value('alloy.specific-heat-solid'),
    latent: ledger.value('alloy.latent-heat'),
    conductivity: ledger.value('alloy.conductivity'),
    interface: ledger.value('cooling.interface'),
    gap: ledger.value('cooling.interface-gap'),
    die_conductivity: ledger.value('cooling.steel-conductivity'),
    die_density: ledger.value('cooling.steel-density'),
    die_specific_heat: ledger.value('cooling.steel-specific-heat'),
    cycle: ledger.value('cycle.time'),
    dwell: ledger.value('cooling.dwell'),
    spray: ledger.value('cycle.spray'),
    spray_share: ledger.value('heat.share-spray'),
    surroundings_share: ledger.value('heat.share-surroundings'),
    depth: ledger.value('cooling.line-depth'),
    conductance,
    coolant: ledger.value('cooling.coolant-temperature'),
  };
  const before = ledger.apply(surfaceBefore, given);
  const peak = ledger.apply(surfacePeak, given);
  ledger.apply(surfaceMean, given);
  ledger.apply(surfaceSwing, { peak, before });
}

function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('heat.surface-before')) return [];
  return [
    textBlock(
      'Shot after shot until a cycle ends as it began: the nominal wall gives its heat to a slab of steel as deep as the lines, spray and surroundings take their shares from the open face, the lines the rest. It shows whether the lines hold the temperature that the fill was planned with, and how far the surface swings at every shot, which is what cracks it.',
    ),
    ...valuesBlock(ledger, [
      'heat.surface-before',
      'fill.die-temperature',
      'fill.die-temperature-least',
      'fill.die-temperature-greatest',
      'heat.surface-mean',
      'heat.surface-peak',
      'heat.surface-swing',
      'heat.wall-per-area',
      'cooling.face-conductance',
    ]),
    ...surfaceFigure(ledger),
  ];
}
