/** One formula of the contract: a call as people type it, and the result worked out beside it. */
export interface ContractFormula {
  readonly id: string;
  /** Names of the inputs in the order of the contract; those in brackets there, with a default, stand in `defaults`. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly defaults?: readonly string[];
  readonly unit: string;
  readonly value: number;
  /** Relative agreement where the value is known to printed digits only. */
  readonly within?: number;
}

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/*
 * Formulas of the contract that the catalogue holds. Values are arithmetic on the inputs beside them, or, where `within` is
 * given, printed results of worked cases that were computed apart from this program.
 */
export const CONTRACT_FORMULAS: readonly ContractFormula[] = [
  { id: 'draft.taper', inputs: { length: '1 in', constant: '30' }, defaults: ['factor'], unit: 'mm', value: 25.4 / 30 },
  { id: 'draft.angle', inputs: { length: '25.4 mm', constant: '30' }, defaults: ['factor'], unit: 'deg', value: 1 / 30 / 0.01746 },
  { id: 'tolerance.linear', inputs: { dimension: '5 in', base: '0.010 in', step: '0.001 in' }, unit: 'mm', value: 14 * 0.0254 },
  { id: 'shrink.cavity-dimension', inputs: { dimension: '10 cm', allowance: '0.6 %' }, unit: 'mm', value: 100.6 },
  { id: 'slide.stroke', inputs: { depth: '30 mm', boss: '0 mm', clearance: '8mm' }, unit: 'mm', value: 38 },
  { id: 'slide.pin-engagement', inputs: { stroke: '38 mm', angle: '18°' }, unit: 'mm', value: 38 / tan(18) },
  { id: 'clamp.opening-force', inputs: { pressure: '600 bar', area: '600 cm²' }, unit: 'kN', value: 3600 },
  {
    id: 'clamp.slide-opening-force',
    inputs: { pressure: '60 N/mm2', face_area: '12 cm^2', lock_angle: '21 degrees' },
    defaults: ['friction'],
    unit: 'kN',
    value: 72 * tan(21),
  },
  { id: 'clamp.locking-force', inputs: { opening_force: '3.6 MN', slide_force: '0 N', factor: '1.1' }, unit: 'kN', value: 3960 },
  {
    id: 'clamp.tie-bar-load',
    inputs: { force: '4000 kN', half_span_x: '310 mm', half_span_y: '31 cm', offset_x: '31 mm', offset_y: '-31 mm' },
    unit: 'kN',
    value: 1200,
  },
  {
    id: 'clamp.off-centre-capacity',
    inputs: { rated: '4000 kN', half_span_x: '310 mm', half_span_y: '31 cm', offset_x: '31 mm', offset_y: '-31 mm' },
    unit: 'kN',
    value: 4000 / 1.2,
  },
  {
    id: 'fill.longest-time',
    inputs: {
      k: '0.0346 s/mm',
      wall: '2 mm',
      gate_temperature: '650 °C',
      flow_temperature: '1058 °F',
      die_temperature: '230 Cel',
      solids: '30 percent',
      conversion: '4.8 K/%',
    },
    unit: 'ms',
    value: (34.6 * 2 * (650 - 570 + 30 * 4.8)) / (570 - 230),
  },
  {
    id: 'fill.recommended-time',
    inputs: { wall: '2 mm', gate_temperature: '635 degC', liquidus: '585 degC', die_temperature: '220 °C' },
    unit: 'ms',
    value: (35 * 2 * (635 - 585 + 61)) / (635 - 220),
  },
  { id: 'gate.flow-volume', inputs: { mass: '1120 g', density: '2500 kg/m3' }, unit: 'cm3', value: 448 },
  { id: 'gate.area', inputs: { volume: '768 cm3', velocity: '45 m/s', time: '50 ms' }, unit: 'mm2', value: 341.3, within: 2e-4 },
  {
    id: 'gate.atomisation-index',
    inputs: { velocity: '16.36486 m/s', thickness: '2.1 mm', density: '2.5 g/cc' },
    unit: '1',
    value: 625_100,
    within: 1e-5,
  },
  { id: 'gate.least-atomised-velocity', inputs: { index: '625100', thickness: '1.5 mm', density: '2500 kg/m³' }, unit: 'm/s', value: 19.9, within: 3e-3 },
  {
    id: 'pq2.static-pressure',
    inputs: { hydraulic_pressure: '140 bar', cylinder_diameter: '140 mm', plunger_diameter: '70 mm' },
    defaults: ['rod_diameter'],
    unit: 'MPa',
    value: 56,
  },
  { id: 'pq2.dry-flow', inputs: { dry_speed: '5 m/s', plunger_diameter: '70 mm' }, unit: 'l/s', value: 5 * Math.PI * 0.35 ** 2 * 10 },
  { id: 'pq2.die-pressure', inputs: { density: '2500 kg/m3', velocity: '45 m/s', discharge: '0.5' }, unit: 'MPa', value: 10.125 },
  {
    id: 'pq2.operating-flow',
    inputs: { static_pressure: '56 MPa', dry_flow: '19.242 L/s', density: '2.5 g/cm3', discharge: '0.5', gate_area: '222 mm^2' },
    unit: 'l/s',
    value: 14.887,
    within: 1e-4,
  },
  {
    id: 'pq2.best-plunger-area',
    inputs: { hydraulic_force: '215.51 kN', dry_speed: '5 m/s', density: '2500 kg/m3', discharge: '0.5', gate_area: '222 mm2' },
    unit: 'mm2',
    value: (Math.PI * 83.98 ** 2) / 4,
    within: 3e-4,
  },
  { id: 'sleeve.fill', inputs: { volume: '806.2 ml', diameter: '70 mm', length: '400 mm' }, unit: '%', value: 52.37, within: 2e-4 },
  { id: 'sleeve.critical-speed-energy', inputs: { diameter: '70 mm', fill: '52.37 %' }, unit: 'm/s', value: 0.455, within: 1.5e-3 },
  { id: 'sleeve.critical-speed-momentum', inputs: { diameter: '70 mm', fill: '52.37 %' }, unit: 'm/s', value: 0.49, within: 1.5e-3 },
  { id: 'sleeve.travel-when-full', inputs: { length: '40 cm', volume: '806.2 cm3', diameter: '70 mm' }, unit: 'mm', value: 190.5, within: 3e-4 },
  {
    id: 'sleeve.travel-at-gate',
    inputs: { length: '400 mm', volume: '0.8062 l', diameter: '70 mm', runner_volume: '150 cc' },
    unit: 'mm',
    value: 229.5,
    within: 3e-4,
  },
  {
    id: 'sleeve.change-over',
    inputs: {
      length: '400 mm',
      volume: '806.2 cm3',
      diameter: '70 mm',
      runner_volume: '150 cm3',
      fast_speed: '2.910 m/s',
      slow_speed: '45.8 cm/s',
      acceleration: '150 m/s²',
    },
    unit: 'mm',
    value: 202,
    within: 3e-4,
  },
  {
    id: 'porosity.gas-volume',
    inputs: {
      gas_volume: '600 cm3',
      gas_pressure: '1013 mbar',
      gas_temperature: '20 °C',
      metal_pressure: '70 MPa',
      metal_temperature: '570 °C',
      trapped: '10 %',
    },
    unit: 'cm3',
    value: ((60 * 1013) / 700_000) * (843.15 / 293.15),
  },
  { id: 'vent.choked-velocity', inputs: { gas_temperature: '26.85 °C', friction_length: '3' }, unit: 'm/s', value: 117.7, within: 5e-4 },
  // 1.62 times the outside pressure is left at 90 % of the stroke with A = A_c and 4 f L / D_h = 3, into the open air.
  {
    id: 'vent.residual-pressure',
    inputs: { area_ratio: '1', stroke: '0.9' },
    defaults: ['friction_length', 'back_pressure'],
    unit: '1',
    value: 1.62,
    within: 4e-3,
  },
  { id: 'vent.area', inputs: { gas_volume: '600 cm3', time: '0.035 s', velocity: '200 m/s' }, unit: 'mm2', value: 600_000 / 7000 },
  { id: 'overflow.volume', inputs: { cavity_volume: '500 cm3', share: '25 %' }, unit: 'cm3', value: 125 },
  {
    id: 'heat.per-mass',
    inputs: {
      gate_temperature: '640 degC',
      liquidus: '593 degC',
      solidus: '538 degC',
      eject_temperature: '300 degC',
      cp_liquid: '1.177 kJ/kgK',
      cp_solid: '963 J/(kg.K)',
      latent: '430 kJ/kg',
    },
    unit: 'kJ/kg',
    value: 1.177 * 47 + 430 + 0.963 * (55 + 238),
  },
  { id: 'cooling.shape-factor', inputs: { length: '3 m', diameter: '1 mm', depth: '100 mm' }, unit: 'm', value: 3.146071454894645 },
  { id: 'cooling.row-shape-factor', inputs: { length: '1 m', diameter: '12 mm', depth: '25 mm', pitch: '40 mm' }, unit: 'm', value: 1.5764, within: 3e-5 },
  {
    id: 'cooling.nusselt-gnielinski',
    inputs: { reynolds: '1e5', prandtl: '1.2', friction: '0.0185' },
    defaults: ['friction'],
    unit: '1',
    value: 254.6268,
    within: 2e-7,
  },
  {
    id: 'cooling.nusselt-dittus-boelter',
    inputs: { reynolds: '1e5', prandtl: '1.2', heating: 'false' },
    defaults: ['heating'],
    unit: '1',
    value: 242.9306,
    within: 2e-7,
  },
  {
    id: 'cooling.solidification-time',
    inputs: {
      wall: '3.2 mm',
      gate_temperature: '635 degC',
      die_temperature: '215 degC',
      liquidus: '595 degC',
      solidus: '540 degC',
      density: '2.71 g/cm3',
      cp_liquid: '1177 J/(kg.K)',
      cp_solid: '963 J/(kg.K)',
      latent: '451 kJ/kg',
      conductivity: '96.2 W/(m.K)',
      interface: '10 kW/(m2.K)',
      die_conductivity: '25 W/(m.K)',
      die_density: '7.8 g/cm3',
      die_specific_heat: '460 J/(kg.K)',
    },
    unit: 's',
    // The same equations on a grid many times as fine, in tests/reference.
    value: 1.447,
    within: 0.01,
  },
  { id: 'cooling.handbook-time', inputs: { beta: '0.47 s/mm2', wall: '3 mm' }, unit: 's', value: 4.23 },
  {
    id: 'ejection.contact-pressure',
    inputs: {
      modulus: '50 GPa',
      expansion: '21 um/(m.K)',
      temperature_drop: '200 K',
      wall: '3 mm',
      core_diameter: '60 mm',
      poisson: '0.33',
      hot_yield: '40 MPa',
    },
    unit: 'MPa',
    value: 4,
  },
  // A published cup with its yielding wall: 4 MPa on 60 mm x 50 mm, friction 0.3, no draft.
  {
    id: 'ejection.force',
    inputs: { contact_pressure: '4 MPa', contact_area: `${(Math.PI * 6 * 5).toFixed(6)} cm2`, friction: '0.3', draft: '0 deg' },
    unit: 'kN',
    value: 11.31,
    within: 1e-3,
  },
  {
    id: 'ejection.pin-buckling-force',
    inputs: { diameter: '0.0625 in', length: '3 in', modulus: '30000 ksi', end_factor: '0.5' },
    unit: 'kN',
    value: 99 * 4.4482216152605e-3,
    within: 6e-3,
  },
  {
    id: 'die.plate-bow',
    inputs: { pressure: '10 MPa', span: '300 mm', thickness: '80 mm', modulus: '205 GPa' },
    unit: 'mm',
    value: (5 * 10 * 300 ** 4) / (384 * 205000 * (80 ** 3 / 12)),
  },
  {
    id: 'die.core-bending',
    inputs: { pressure: '5 MPa', diameter: '10 mm', bore: '4 mm', height: '40 mm', modulus: '205 GPa' },
    unit: 'mm',
    value: (5 * 10 * 40 ** 4) / (8 * 205000 * ((Math.PI * (10 ** 4 - 4 ** 4)) / 64)),
  },
  { id: 'finish.trim-force', inputs: { shear_strength: '195 MPa', sheared_area: '352 mm2', factor: '1.3' }, unit: 'kN', value: 89.2, within: 5e-4 },
  {
    id: 'metal.new-per-part',
    inputs: { part_mass: '1 kg', shot_mass: '1800 g', scrap: '5 %', loss: '3 %' },
    unit: 'kg',
    value: 1 + (1.8 / 0.95) * (0.03 / 0.97),
  },
  {
    id: 'cost.best-cavities',
    inputs: {
      parts: '100000',
      machine_rate: '60',
      cycle: '0.01 h',
      trim_time: '18 s',
      trim_rate: '40',
      die_cost: '20000',
      trim_die_cost: '3000',
      exponent: '0.7',
    },
    unit: '1',
    value: ((100000 * (0.6 + 0.2)) / (0.7 * 23000)) ** (1 / 1.7),
  },
];

/** Another unit for each unit of a result, and what one of the first is in the second. */
export const CONVERTED: Readonly<Record<string, readonly [unit: string, times: number]>> = {
  mm: ['in', 1 / 25.4],
  m: ['mm', 1000],
  deg: ['rad', Math.PI / 180],
  kN: ['lbf', 1000 / 4.4482216152605],
  ms: ['s', 0.001],
  s: ['ms', 1000],
  cm3: ['in3', 1 / 16.387064],
  mm2: ['in2', 1 / 645.16],
  MPa: ['psi', 1e6 / 6894.757293168],
  'l/s': ['L/min', 60],
  '%': ['1', 0.01],
  '1': ['%', 100],
  kg: ['g', 1000],
  'm/s': ['ft/s', 1 / 0.3048],
  'kJ/kg': ['J/kg', 1000],
};

/** One quantity in several spellings and units: all must give the same result. */
export const SPELLED: readonly { readonly id: string; readonly input: string; readonly texts: readonly string[] }[] = [
  {
    id: 'gate.area',
    input: 'volume',
    texts: ['768 cm3', '768 cm^3', '768 cm³', '768cc', '0.768 l', '0.768 L', '768 mL', '0.768 dm3', '46.86623521 in3', '46.86623521 [in_i]3'],
  },
  { id: 'gate.area', input: 'time', texts: ['50 ms', '0.05 s', '5e-2 s', '.05 sec'] },
  { id: 'gate.area', input: 'velocity', texts: ['45 m/s', '45 m.s-1', '4500 cm/s', '147.6377953 ft/s', '1771.653543 in/s'] },
  {
    id: 'clamp.opening-force',
    input: 'pressure',
    texts: ['600 bar', '60 MPa', '60 Mpa', '60 N/mm2', '611.8297279 kgf/cm2', '611.8297279 kg/cm2', '8702.264263 psi', '8702.264263 [psi]', '8.702264263 ksi'],
  },
  { id: 'clamp.opening-force', input: 'area', texts: ['600 cm2', '600 cm^2', '600 cm²', '600 sqcm', '60000 mm2', '0.06 m2', '93.000186 in2'] },
  { id: 'clamp.locking-force', input: 'opening_force', texts: ['3600 kN', '3.6 MN', '367097.8367 kgf', '809312.1948 lbf', '3600 kn'] },
  { id: 'fill.longest-time', input: 'gate_temperature', texts: ['650 °C', '650 degC', '650 Cel', '650°C', '1202 degF', '1202 °F'] },
  { id: 'fill.longest-time', input: 'k', texts: ['0.0346 s/mm', '0.0346 s.mm-1', '0.87884 s/in'] },
  { id: 'fill.longest-time', input: 'conversion', texts: ['4.8 K/%', '4.8K/%'] },
  {
    id: 'heat.per-mass',
    input: 'cp_solid',
    texts: ['963 J/(kg.K)', '963 J/kgK', '963 J/(kgK)', '963 J.kg-1.K-1', '963 J/kg/K', '0.963 kJ/kgK', '963 J/(kg·K)'],
  },
  { id: 'pq2.operating-flow', input: 'dry_flow', texts: ['19.242 l/s', '19.242 L/s', '19242 cm3/s', '1154.52 l/min', '0.019242 m3/s'] },
  { id: 'gate.flow-volume', input: 'density', texts: ['2500 kg/m3', '2.5 g/cm3', '2.5 g/cc', '2.5 kg/dm3', '2.5 kg/l', '0.09031823007 lb/in3'] },
];
