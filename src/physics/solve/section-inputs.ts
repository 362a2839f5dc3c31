/** Inputs that the heat formulas share, in their units. */
export const WALL = {
  symbol: 'h',
  unit: 'mm',
  meaning: 'thickness of a section cooled on both faces; one cooled on one face counts twice',
  range: [0.2, 60],
} as const;
export const METAL = {
  gate_temperature: { symbol: 'T_i', unit: 'degC', meaning: 'metal temperature at the gate', range: [380, 1050], domain: 'any' },
  liquidus: { symbol: 'T_L', unit: 'degC', meaning: 'liquidus', range: [375, 945], domain: 'any' },
  solidus: { symbol: 'T_S', unit: 'degC', meaning: 'solidus', range: [370, 915], domain: 'any' },
  density: { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the alloy', range: [1.7, 9] },
  cp_liquid: { symbol: 'c_l', unit: 'J/(kg.K)', meaning: 'specific heat of the liquid', range: [300, 1500] },
  cp_solid: { symbol: 'c_s', unit: 'J/(kg.K)', meaning: 'specific heat of the solid', range: [300, 1200] },
  latent: { symbol: 'L_f', unit: 'kJ/kg', meaning: 'latent heat of fusion', range: [50, 700] },
  conductivity: { symbol: 'k', unit: 'W/(m.K)', meaning: 'thermal conductivity of the alloy', range: [20, 180] },
} as const;
export const FACE = { symbol: 'h_i', unit: 'W/(m2.K)', meaning: 'coefficient between metal and die while metal presses on it', range: [1000, 60000] } as const;
export const STEEL = {
  die_conductivity: { symbol: 'k_d', unit: 'W/(m.K)', meaning: 'thermal conductivity of the die', range: [15, 260] },
  die_density: { symbol: 'rho_d', unit: 'kg/m3', meaning: 'density of the die', range: [6000, 19000] },
  die_specific_heat: { symbol: 'c_d', unit: 'J/(kg.K)', meaning: 'specific heat of the die', range: [120, 600] },
} as const;
export const GAP = { symbol: 'h_g', unit: 'W/(m2.K)', meaning: 'coefficient once the section is solid and shrinks away', range: [300, 10000] } as const;

export const DIE_TEMPERATURE = { symbol: 'T_d', unit: 'degC', meaning: 'temperature of the die before the shot', range: [100, 450], domain: 'any' } as const;
