import type { SheetName } from './names.ts';

/** How a sheet has a caution: with what to do, or by its title, as one to be read in the plan. */
export type Manner = 'text' | 'title';

/**
 * Who a caution is for: the die maker, the setter at the machine, whoever is at the first shots, the estimator. Every
 * caution is on one sheet at least; one that is not listed here goes to every sheet by its title. A sheet holds the text of
 * what its reader alone can do something about, and the titles of the rest, so that it stays one page; text and documents
 * of all of them stand in the plan. The trial is run with the shot sheet at hand, so its sheet repeats only what is not yet
 * proved when the first metal comes.
 */
export const READERS: Readonly<Record<string, Readonly<Partial<Record<SheetName, Manner>>>>> = {
  'die/core-pulls': { die: 'text', shot: 'title', trial: 'title' },
  'die/hot-oil': { die: 'title', shot: 'title' },
  'die/beryllium-copper': { die: 'text', shot: 'title' },

  'document/hold-point': { trial: 'title' },
  'document/first-shots': { trial: 'text' },
  'document/melting-permit': { quote: 'title' },
  'document/clean-charge': { quote: 'title' },

  'fume/zinc': { shot: 'title' },
  'fume/brass-zinc': { shot: 'title' },
  'fume/lead': { shot: 'title', quote: 'title' },
  'fume/cadmium': { shot: 'title', quote: 'title' },
  'fume/die-lubricant': { shot: 'title' },
  'fume/silica': { quote: 'title' },

  'handling/burns': { shot: 'title', trial: 'title' },
  'handling/clothing-aluminium': { shot: 'title' },
  'handling/clothing-copper': { shot: 'title' },
  'handling/clothing-no-code': { shot: 'title' },
  'handling/die': { die: 'title', shot: 'title' },
  'handling/inserts': { shot: 'text', trial: 'title' },

  'machine/parting-line-spit': { die: 'title', shot: 'text', trial: 'title' },
  'machine/thin-clamp-margin': { die: 'title', shot: 'title', trial: 'text', quote: 'title' },
  'machine/high-pressure': { die: 'title', shot: 'text', trial: 'title' },
  'machine/biscuit-burst': { shot: 'text', trial: 'title' },
  'machine/nozzle-drip': { shot: 'text', trial: 'title' },
  'machine/crushing': { shot: 'title' },
  'machine/stored-energy': { shot: 'title' },
  'machine/accumulator': { quote: 'title' },
  'machine/hydraulic-fire': { shot: 'title' },
  'machine/vacuum': { die: 'title', shot: 'title', trial: 'title' },
  'machine/robots': { shot: 'title' },
  'machine/noise': { shot: 'title' },

  'magnesium/melt-fire': { shot: 'text', trial: 'title' },
  'magnesium/water-lines': { die: 'text', shot: 'title', trial: 'title' },
  'magnesium/dry-die': { shot: 'title', trial: 'title' },
  'magnesium/tools': { shot: 'title' },
  'magnesium/ingot-preheat': { shot: 'title' },
  'magnesium/fines': { shot: 'title', quote: 'title' },
  'magnesium/sf6': { quote: 'title' },
  'magnesium/cover-gas': { shot: 'title' },
  'magnesium/cover-gas-law': { quote: 'title' },
  'magnesium/hydraulic-fluid': { shot: 'title', quote: 'title' },

  'melt/wet-charge': { shot: 'title', trial: 'title' },
  'melt/cooling-water': { die: 'title', shot: 'title', trial: 'title' },
  'melt/dross': { shot: 'title' },
  'melt/furnace': { shot: 'title' },
  'melt/copper-heat': { die: 'title', shot: 'title' },

  'substances/lot-certificate': { quote: 'text' },
  'substances/lead-above-tenth': { quote: 'title' },
  'substances/rohs': { quote: 'title' },
  'substances/rohs-aluminium': { quote: 'title' },
  'substances/rohs-copper': { quote: 'title' },
  'substances/elv': { quote: 'title' },
  'substances/jewellery': { quote: 'title' },
  'substances/food-contact': { quote: 'title' },
  'substances/food-contact-aluminium': { quote: 'title' },
  'substances/drinking-water': { quote: 'title' },
  'substances/chromate': { die: 'title', quote: 'title' },

  'trimming/press': { quote: 'title' },
  'trimming/press-full-revolution': { quote: 'title' },
  'trimming/press-part-revolution': { quote: 'title' },
  'trimming/press-mechanical': { quote: 'title' },
  'trimming/press-fluid': { quote: 'title' },
  'trimming/fines': { quote: 'title' },
  'trimming/quench': { shot: 'title' },
};
