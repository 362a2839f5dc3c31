import type { Traced } from '../../../kernel/traced.ts';
import { lineHeat, rowShapeFactor, spreadShapeFactor, steelConductance } from '../../../physics/cooling/lines.ts';
import { closestPitch, lineField, linePitch, linesThatFit } from '../../../physics/cooling/pitch.ts';
import { laidLength, surfaceTemperature, totalConductance } from '../../../physics/cooling/plan.ts';
import { surfaceExcess } from '../../../physics/die-surface.ts';
import type { Ledger } from '../../ledger.ts';
import { endOf, unitsFor } from './unit.ts';

/** Mean temperature of the die surface over the cycle. It lies above the one before the shot by what the pulses of heat make. */
export function fileSurface(ledger: Ledger): void {
  const excess = ledger.maybe('cooling.surface-excess') ?? ledger.attempt('cooling.surface-excess', 'Mean die surface temperature', () => pulses(ledger));
  ledger.apply(surfaceTemperature, { before: ledger.value('fill.die-temperature'), ...(excess === undefined ? {} : { excess }) }, { id: 'cooling.surface' });
}

function pulses(ledger: Ledger): Traced<'K'> {
  return ledger.apply(surfaceExcess, {
    heat: ledger.value('heat.per-area'),
    cycle: ledger.value('cycle.elements-time'),
    die_conductivity: ledger.value('cooling.steel-conductivity'),
    die_density: ledger.value('cooling.steel-density'),
    die_specific_heat: ledger.value('cooling.steel-specific-heat'),
  });
}

/** In the middle of what the rules allow, or as near the surface and to each other as they allow. */
export type LinePlace = 'usual' | 'close';

/** Diameter, depth and pitch of the lines, and how many of them lie side by side under the field of cavities and runner. */
export function fileLayout(ledger: Ledger, place: LinePlace): void {
  ledger.setText('cooling.line-place', place);
  const at = { family: ledger.alloy.family };
  const diameter = ledger.look('cooling/line', 'diameter', { side: ledger.value('part.side-a') }, 'cooling.line-diameter');
  const nearest = ledger.look('cooling/layout', 'depth_least', at, 'cooling.depth-least');
  ledger.look('cooling/layout', 'depth_greatest', at, 'cooling.depth-greatest');
  const depth =
    place === 'usual'
      ? ledger.look('cooling/layout', 'depth_used', at, 'cooling.line-depth')
      : ledger.put(nearest.as('cooling.line-depth', 'as near as the rules allow, because the lines would make the machine wait'));
  const closest = {
    diameter,
    depth,
    diameter_least: ledger.look('cooling/layout', 'pitch_diameter_least', at, 'cooling.pitch-diameter-least'),
    depth_least: ledger.look('cooling/layout', 'pitch_depth_least', at, 'cooling.pitch-depth-least'),
  };
  const widest = {
    diameter_greatest: ledger.look('cooling/layout', 'pitch_diameter_greatest', at, 'cooling.pitch-diameter-greatest'),
    depth_greatest: ledger.look('cooling/layout', 'pitch_depth_greatest', at, 'cooling.pitch-depth-greatest'),
  };
  const pitch = place === 'usual' ? ledger.apply(linePitch, { ...closest, ...widest }) : ledger.apply(closestPitch, closest, { id: 'cooling.pitch' });
  const [length, across] = field(ledger, depth);
  ledger.put(across.as('cooling.field-across', 'the shorter side of the field'));
  const each = ledger.put(length.in('m').as('cooling.line-length', 'lines run along the longer side of the field'));
  ledger.apply(linesThatFit, { field: across, pitch, depth: ledger.value('part.depth') });
  const shape = ledger.apply(rowShapeFactor, { length: each, diameter, depth, pitch });
  ledger.apply(steelConductance, { shape, conductivity: ledger.value('cooling.steel-conductivity') });
}

/** Longer and shorter side of the field that the lines serve. The sprue of a hot chamber leaves nothing to cool beside the cavities. */
function field(ledger: Ledger, depth: Traced<'mm'>): readonly [Traced<'mm'>, Traced<'mm'>] {
  const steel = ledger.value('die.steel-around');
  const rest = ledger.text('machine.chamber') === 'hot' ? ledger.value('die.feeder-allowance') : undefined;
  const width = ledger.apply(lineField, { block: ledger.value('die.block-width'), steel, depth }, { id: 'cooling.field-width' });
  const height = ledger.apply(
    lineField,
    { block: ledger.value('die.block-height'), steel, depth, ...(rest === undefined ? {} : { rest }) },
    { id: 'cooling.field-height' },
  );
  return width.value >= height.value ? [width, height] : [height, width];
}

/**
 * Whether one line in each half, with water as hot as units run it, would already take more than the balance leaves the
 * lines: then the lines would have to be hotter than water can be.
 */
export function fileReach(ledger: Ledger): void {
  const unit = endOf(unitsFor(ledger, 'water'), 'hottest');
  const hottest =
    unit === undefined
      ? ledger.look('cooling/medium', 'greatest', { medium: 'water' }, 'cooling.water-greatest')
      : ledger.put(unit.hottest.as('cooling.water-greatest', `unit ${unit.id}`));
  const each_length = ledger.value('cooling.line-length');
  const shape = ledger.apply(
    spreadShapeFactor,
    {
      length: each_length,
      diameter: ledger.value('cooling.line-diameter'),
      depth: ledger.value('cooling.line-depth'),
      pitch: ledger.value('cooling.field-across'),
    },
    { id: 'cooling.lone-shape-factor' },
  );
  const each = ledger.apply(steelConductance, { shape, conductivity: ledger.value('cooling.steel-conductivity') }, { id: 'cooling.lone-conductance' });
  const lines = ledger.look('cooling/parts', 'halves', {}, 'cooling.halves');
  const length = ledger.apply(laidLength, { lines, each: each_length }, { id: 'cooling.least-length' });
  const conductance = ledger.apply(totalConductance, { each, each_length, length }, { id: 'cooling.least-conductance' });
  const warm = ledger.value('cooling.surface');
  if (warm.value <= hottest.value) return;
  const heat = ledger.apply(lineHeat, { conductance, warm, cold: hottest }, { id: 'cooling.least-heat' });
  if (heat.value > ledger.value('heat.lines-rate').in('W').value) ledger.setText('cooling.water-reach', 'no');
}
