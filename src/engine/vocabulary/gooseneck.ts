import { number, text } from './define.ts';

/** The way of the metal in a hot chamber, and what limits its shot. */
export const GOOSENECK_WORDS = {
  'gooseneck.plunger-area': number('mm2', 'Area of the plunger'),
  'gooseneck.channel-diameter': number('mm', 'Least bore of the gooseneck channel'),
  'gooseneck.channel-area': number('mm2', 'Area of the gooseneck channel'),
  'gooseneck.nozzle-area': number('mm2', 'Area of the nozzle bore'),
  'gooseneck.main-area': number('mm2', 'Area of the main runner at the foot of the sprue'),
  'gooseneck.main-speed': number('m/s', 'Speed of the metal at the foot of the sprue'),
  'gooseneck.runner-area': number('mm2', 'Area of all runners at the gates'),
  'gooseneck.channel-speed': number('m/s', 'Speed of the metal in the gooseneck channel'),
  'gooseneck.nozzle-speed': number('m/s', 'Speed of the metal in the nozzle'),
  'gooseneck.runner-speed': number('m/s', 'Speed of the metal in the runners at the gates'),
  'gooseneck.superheat': number('K', 'Superheat of the pot'),
  'gooseneck.nozzle-least': number('degC', 'Nozzle temperature, least'),
  'gooseneck.nozzle-greatest': number('degC', 'Nozzle temperature, greatest'),
  'gooseneck.pressure-least': number('MPa', 'Metal pressure of hot chambers for the family, least'),
  'gooseneck.pressure-greatest': number('MPa', 'Metal pressure of hot chambers for the family, greatest'),
  'gooseneck.use-speed': number('%', 'Use of the plunger speed'),
  'gooseneck.use-class-pressure': number('%', 'Use of the pressure on the full die'),
  'gooseneck.use-stroke': number('%', 'Use of the shot stroke'),
  'gooseneck.use-time': number('%', 'Use of the longest fill time'),
  'gooseneck.greatest-use': number('%', 'Use of the nearest bound'),
  'gooseneck.nearest-bound': text('Nearest bound of the shot'),
} as const;
