import { number } from './define.ts';

/** What a vertical shot through a thick gate is held against: the figures of squeeze casting. */
export const SQUEEZE_WORDS = {
  'squeeze.gate-velocity-greatest': number('m/s', 'Gate velocity of squeeze casting, greatest'),
  'squeeze.gate-area': number('mm2', 'Gate area of one cavity for a squeeze fill in the planned time'),
  'squeeze.largest-gate': number('mm2', 'Largest gate of one cavity that the parting line gives'),
  'squeeze.shortest-time': number('ms', 'Shortest squeeze fill, through the largest gate'),
  'squeeze.pressure': number('MPa', 'Metal pressure held'),
  'squeeze.pressure-least': number('MPa', 'Pressure of squeeze casting, least'),
  'squeeze.pressure-greatest': number('MPa', 'Pressure of squeeze casting, greatest'),
  'squeeze.metal-pressure-least': number('MPa', 'Metal pressure usual with a vertical shot, least'),
  'squeeze.metal-pressure-greatest': number('MPa', 'Metal pressure usual with a vertical shot, greatest'),
  'squeeze.hold-least': number('s', 'Time under pressure in squeeze casting, least'),
  'squeeze.hold-greatest': number('s', 'Time under pressure in squeeze casting, greatest'),
  'squeeze.hold': number('s', 'Time under pressure'),
  'squeeze.gate-least': number('mm', 'Gate thickness of squeeze casting, least'),
  'squeeze.gate-greatest': number('mm', 'Gate thickness of squeeze casting, greatest'),
  'squeeze.superheat': number('K', 'Metal at the gate above its liquidus'),
  'squeeze.superheat-least': number('K', 'Superheat of squeeze casting, least'),
  'squeeze.superheat-greatest': number('K', 'Superheat of squeeze casting, greatest'),
  'squeeze.die-least': number('degC', 'Die temperature of squeeze casting, least'),
  'squeeze.die-greatest': number('degC', 'Die temperature of squeeze casting, greatest'),
  'squeeze.section-least': number('mm', 'Least section of squeeze casting, lower figure'),
  'squeeze.section-usual': number('mm', 'Least section of squeeze casting, higher figure'),
  'squeeze.cycle-least': number('1', 'Cycle over that of ordinary die casting, least'),
  'squeeze.cycle-greatest': number('1', 'Cycle over that of ordinary die casting, greatest'),
} as const;
