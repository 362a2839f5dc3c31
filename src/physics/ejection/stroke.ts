import { defineFormula } from '../../kernel/formula.ts';

/** Length of a pin between its plate and the guide in the cavity steel, from the die behind the parting plane. */
export const pinLength = defineFormula({
  id: 'ejection.pin-length',
  title: 'Length of a pin without a guide',
  symbol: 'L',
  inputs: {
    stroke: { symbol: 'S_e', unit: 'mm', meaning: 'ejector stroke', range: [5, 500] },
    gap: { symbol: 'g', unit: 'mm', meaning: 'gap left before the ejector plate at the end of its stroke', range: [0, 20], domain: 'not-negative' },
    plate: { symbol: 'h_p', unit: 'mm', meaning: 'support plate behind the cavity steel', range: [10, 400] },
    steel: { symbol: 'h_s', unit: 'mm', meaning: 'steel below the cavity', range: [20, 600] },
    guide: { symbol: 'l_g', unit: 'mm', meaning: 'length of the pin guided in the cavity steel', range: [5, 60] },
  },
  unit: 'mm',
  equation: 'max(S_e, S_e + g + h_p + h_s - l_g)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a sum for a pin that bears at the parting plane; a pin through a core is longer, but the core guides it',
  compute: (x) => Math.max(x.stroke, x.stroke + x.gap + x.plate + x.steel - x.guide),
});

/** Ejector stroke that clears the cores. */
export const ejectionStroke = defineFormula({
  id: 'ejection.stroke',
  title: 'Ejector stroke needed',
  symbol: 'S_e',
  inputs: {
    height: { symbol: 'h', unit: 'mm', meaning: 'height of the casting on the tallest core of the ejector half', range: [1, 500] },
    clearance: { symbol: 'c', unit: 'mm', meaning: 'clearance beyond it', range: [0, 30], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'h + c',
  outside: 'extrapolate',
  source: ['PYE-MOULD p. 518'],
  status: 'practice',
  accuracy: 'height to clear the cores and 5 to 10 mm; a book on moulds for plastics has 5 mm. With ample draft a robot lifts the casting off earlier',
  compute: ({ height, clearance }) => height + clearance,
});
