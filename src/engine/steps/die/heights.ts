import type { Traced } from '../../../kernel/traced.ts';
import { mass } from '../../../physics/die-block.ts';
import { steelBelow } from '../../../physics/die-insert.ts';
import { backForce } from '../../../physics/die-plates.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';

export const COVER = 'cover half';
export const EJECTOR = 'ejector half';
export const BOX = 'ejector box';
export const FOOT = 'clamping plate';
export const MOVING = 'moving half';

/** The rule for the steel below the cavity; the heat balance asks for it first. */
export function belowRule(ledger: Ledger): { readonly ratio: Traced<'1'>; readonly least: Traced<'mm'> } {
  return {
    ratio: ledger.maybe('die.below-ratio') ?? ledger.look('die/block', 'bottom_ratio_least', {}, 'die.below-ratio'),
    least: ledger.maybe('die.below-advised') ?? ledger.look('die/block', 'bottom_advised', {}, 'die.below-advised'),
  };
}

/** Steel below the cavity: by rule, and enough for the cooling lines where they are laid out. */
export function workBelow(ledger: Ledger): void {
  const rule = belowRule(ledger);
  ledger.look('die/block', 'bottom_ratio_greatest', {}, 'die.below-ratio-greatest');
  ledger.look('die/block', 'bottom_least', {}, 'die.below-least');
  const line_depth = ledger.maybe('cooling.line-depth');
  const line_diameter = ledger.maybe('cooling.line-diameter');
  const line = line_depth === undefined || line_diameter === undefined ? {} : { line_depth, line_diameter };
  ledger.apply(steelBelow, { depth: ledger.value('part.depth'), ...rule, ...line });
}

/** The plate behind the inserts, as thick as the force on their backs usually asks for. */
export function workPlate(ledger: Ledger): void {
  // Heat balance and ejection both ask for it; what could not be looked up the first time is not there the second.
  if (ledger.values.has('die.back-force')) return;
  const force = ledger.apply(backForce, {
    pressure: ledger.maybe('intensification.standing-pressure') ?? ledger.value('clamp.sizing-pressure'),
    area: ledger.value('part.projected-area'),
    cavities: ledger.value('machine.cavities'),
    overflows: ledger.value('clamp.overflow-share'),
  });
  ledger.look('die/support', 'least', { force }, 'die.plate-least');
  ledger.look('die/support', 'greatest', { force }, 'die.plate-greatest');
  ledger.look('die/support', 'used', { force }, 'die.plate');
}

/**
 * Closed height, as a pile of what lies on each other. The whole depth of the casting is counted in the cover half; the
 * cores of the ejector half stand up into it.
 */
export function workHeight(ledger: Ledger): void {
  const below = ledger.value('die.steel-below');
  const plate = ledger.value('die.plate');
  const longer = ledger.value('die.face-longer');
  const pile = (item: string, terms: Parameters<typeof sumOf<'mm'>>[3]) => ledger.put(sumOf(`die.half-height[${item}]`, 'Height', 'mm', terms));
  const cover = pile(COVER, [ledger.value('part.depth'), below, plate]);
  const ejector = pile(EJECTOR, [below, plate]);
  ledger.look('die/box', 'rail', { size: longer }, 'die.rail');
  const plates = ledger.look('die/box', 'plates', { size: longer }, 'die.box-plates');
  const clearance = ledger.look('die/box', 'clearance', { size: longer }, 'die.box-clearance');
  const foot = ledger.look('die/box', 'foot', { size: longer }, 'die.foot');
  const box = pile(BOX, [ledger.value('ejection.stroke'), plates, clearance]);
  const base = ledger.put(foot.as(`die.half-height[${FOOT}]`));
  const moving = pile(MOVING, [ejector, box, base]);
  ledger.put(sumOf('die.height', 'Die height, closed', 'mm', [cover, moving]));
}

/** Mass of the die and of each half, for crane and machine. */
export function workMass(ledger: Ledger): void {
  const common = {
    width: ledger.value('die.width'),
    breadth: ledger.value('die.breadth'),
    density: ledger.look('die/block', 'density', {}, 'die.density'),
    share: ledger.look('die/block', 'envelope_share', {}, 'die.steel-share'),
  };
  ledger.apply(mass, { ...common, height: ledger.value('die.height') });
  for (const item of [COVER, MOVING]) ledger.apply(mass, { ...common, height: ledger.value('die.half-height', item) }, { id: 'die.half-mass', item });
}
