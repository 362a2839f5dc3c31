/* Inputs that several formulas of a cooling line share. */
export const DIAMETER = { symbol: 'D', unit: 'mm', meaning: 'diameter of the line', range: [3, 40] } as const;
export const DEPTH = { symbol: 'z', unit: 'mm', meaning: 'depth of the line below the surface, to its centre', range: [5, 150] } as const;
