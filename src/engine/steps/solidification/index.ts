import { handbookTime } from '../../../physics/dwell.ts';
import { contactTime, freezingConstant, heatToSolid, interfaceTime } from '../../../physics/solidification.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';
import { workDwell } from './dwell.ts';
import { fileMaterials, type Materials, planned } from './materials.ts';
import { workSections } from './sections.ts';
import { show } from './show.ts';

/**
 * How long the die stays closed after the fill: wall, thickest wall, runner and biscuit freeze and cool by a heat solution
 * of each section against the die; the slowest sets the time. Beside it the handbook form and two exact bounds.
 */
export const solidificationStep: Step = {
  id: 'solidification',
  title: 'Solidification and time in the die',
  work: (ledger) => {
    const materials = ledger.attempt('cooling.interface', 'Data for freezing and cooling', () => fileMaterials(ledger));
    if (materials === undefined) return;
    workSections(ledger, materials);
    ledger.attempt('cooling.handbook-time', 'Handbook form', () => handbook(ledger));
    if (ledger.explains) ledger.attempt('cooling.interface-time', 'Bounds of the freezing time', () => bounds(ledger, materials));
    workDwell(ledger, materials);
  },
  show,
};

function handbook(ledger: Ledger): void {
  const beta = ledger.look('cooling/handbook-constant', 'constant', { family: ledger.alloy.family }, 'cooling.handbook-constant');
  ledger.apply(handbookTime, { beta, wall: ledger.value('part.wall-nominal') });
  const thick = ledger.maybe('part.wall-greatest');
  if (thick !== undefined) ledger.apply(handbookTime, { beta, wall: thick }, { id: 'cooling.handbook-thick' });
}

/** The two closed forms between which the truth lies: all of the resistance at the face, and none of it. */
function bounds(ledger: Ledger, materials: Materials): void {
  const { metal, steel } = materials;
  const { gate_temperature, liquidus, solidus, cp_liquid, cp_solid, latent, conductivity } = metal;
  const heat = ledger.apply(heatToSolid, { gate_temperature, liquidus, solidus, cp_liquid, cp_solid, latent });
  const die_temperature = planned(ledger);
  const common = { density: metal.density, heat, metal_temperature: metal.solidus, die_temperature };
  const wall = ledger.value('part.wall-nominal');
  ledger.apply(interfaceTime, { ...common, wall, interface: materials.pressed });
  const constant = ledger.apply(freezingConstant, { ...common, cp_solid, conductivity, ...steel });
  ledger.apply(contactTime, { wall, constant, density: metal.density, cp_solid, conductivity });
  choose(ledger, 'solidification.limit');
}
