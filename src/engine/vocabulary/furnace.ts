import { number, rough, text } from './define.ts';

/** What a part asks of the furnaces of the plant, and which are planned. */
export const FURNACE_WORDS = {
  'furnace.given': text('Whether the plant file lists furnaces'),
  'furnace.poured': rough('kg/h', 'Metal poured an hour', 1),
  'furnace.melted': rough('kg/h', 'Metal melted an hour', 1),
  'furnace.returned': rough('kg/h', 'Returns melted again an hour', 1),
  'furnace.new-metal': rough('kg/h', 'New metal an hour', 1),
  'furnace.holding': text('Furnace that holds the metal'),
  'furnace.holding-kind': text('Kind of the furnace that holds the metal'),
  'furnace.melting': text('Furnace that melts the metal'),
  'furnace.capacity': number('kg', 'Metal in the full holding furnace'),
  'furnace.usable': number('%', 'Share poured before it is filled up again'),
  'furnace.hold': rough('h', 'Pouring from the full holding furnace', 1),
  'furnace.hold-least': number('h', 'Pouring from the full holding furnace, at least'),
  'furnace.coldest': number('degC', 'Coldest metal that the furnace holds'),
  'furnace.hottest': number('degC', 'Hottest metal that the furnace holds'),
  'furnace.melt-rate': number('kg/h', 'Metal that the melting furnace melts an hour'),
  'furnace.melt-use': rough('%', 'Use of the melting furnace by this part', 0),
} as const;
