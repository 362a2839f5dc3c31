/** Files without a fault, which the cases of bad input are small edits of. */
export const BASE_PART = `diewright: part/1
part: { name: Valve cover, number: VC-204, revision: B }
alloy: A380
geometry:
  volume: 412 cm3
  mass: 1.12 kg
  envelope: [238 mm, 142 mm, 46 mm]
  projected_area: { x: 48 cm2, z: 268 cm2 }
  surface_area: 1950 cm2
  wall: { least: 2.2 mm, nominal: 2.8 mm, greatest: 6.5 mm }
  die_opening: z
  parting_line: 760 mm
walls:
  - { id: outer, side: outside, height: 44 mm, draft: 1 deg }
holes:
  - { id: H1, diameter: 8.5 mm, depth: 24 mm, kind: blind, direction: z, count: 6, tolerance: 0.1 mm, thread: M8 }
  - { id: H2, diameter: 12 mm, depth: 31 mm, kind: through, direction: [1, 0, 0], edge_distance: 6 mm }
undercuts:
  - { id: U1, direction: -x, depth: 9 mm, face_area: 12 cm2, boss: 3 mm }
inserts:
  - { id: I1, material: steel, diameter: 12 mm, length: 18 mm, cover: 2.5 mm }
ribs:
  - { id: R1, root_width: 2 mm, height: 8 mm, draft: 1.5 deg, tip_radius: 0.5 mm, root_fillet: 1 mm }
fillets:
  - { id: F1, radius: 1.5 mm, walls: [2.8 mm, 3 mm] }
dimensions:
  - { id: D1, nominal: 120 mm, tolerance: 0.3 mm, across: parting }
  - { id: D2, nominal: 60 mm, tolerance: 0.2 mm, across: slide, slide: U1 }
quality: { use: pressure-tight, finish: consumer, heat_treatment: T5, welded: true, cold_shut: some, leak_rate: 0.5 cm3/min at 200 kPa, markets: [eu-vehicle] }
certificate: { Fe: 0.9 %, Mn: 0.3 % }
machining:
  - { id: gasket face, stock: 0.4 mm }
production: { per_year: 180000, life: 900000, hours_per_year: 4000 }
pinned: { machine.cavities: 1, gate.velocity: 42 m/s }
`;

export const BASE_PLANT = `diewright: plant/1
plant: { name: North hall, invented: true, note: Two machines }
machines:
  - id: cold-4000
    chamber: cold
    shot: horizontal
    locking_force: 4000 kN
    tie_bar_clearance: [620 mm, 600 mm]
    die_height: [300 mm, 750 mm]
    opening_stroke: 450 mm
    ejector: { force: 180 kN, stroke: 120 mm }
    shot_end:
      plungers: [60 mm, 70 mm]
      sleeve_length: 420 mm
      stroke: 480 mm
      cylinder_diameter: 140 mm
      tail_rod_diameter: 50 mm
      pressure_fill: 14 MPa
      pressure_intensified: 32 MPa
      dry_speed: 5 m/s
    dry_cycle: 6 s
    hourly_rate: 95
  - id: hot-800
    chamber: hot
    shot: vertical
    locking_force: 800 kN
    tie_bar_clearance: [310 mm, 310 mm]
    die_height: [140 mm, 380 mm]
    opening_stroke: 250 mm
    ejector: { force: 45 kN, stroke: 70 mm }
    shot_end:
      plungers: [50 mm]
      stroke: 150 mm
      cylinder_diameter: 90 mm
      pressure_fill: 11 MPa
      dry_speed: 2.5 m/s
    dry_cycle: 2.4 s
prices:
  currency: EUR
  date: 2026-03-31
  metal:
    aluminium: { price: 2.4, melt_loss: 2.5 %, melting_energy: 0.8 kWh/kg }
    zinc_aluminium: { price: 2.9 }
  alloys:
    - { id: A380, price: 2.3 }
    - { id: ZP5, price: 2.8, melt_loss: 1.5 % }
  returns_sold: 65 %
  dross: 0.3
  energy: 0.12
  trimming: { rate: 40, cycle: 9 s, each: 1.5 s }
  machining: { rate: 61, feature: 6 s, handling: 14 s }
  impregnation: 2.2
  die: { rate: 62, cavity_steel: 13, holder_steel: 3.5, heat_treatment: 4.5 }
`;

export const BASE_DIE = `diewright: die/1
die: { name: Cover pair, number: D-100, revision: A, note: Replaces D-094 }
parts:
  - { file: good.part.yaml, count: 2 }
  - { id: lid, file: ../lids/lid.part.yaml, count: 1 }
pinned: { machine.model: cold-4000, fill.time: 30 ms }
accepted:
  - { code: set/demand, item: lid, reason: the spare lids are sold }
`;

/** The plant with all that it may have besides machines and prices. */
export const BASE_CELL = `${BASE_PLANT}furnaces:
  - { id: hold-al, kind: dosing, families: [aluminium], alloys: [A413], capacity: 1300 kg, temperature: [640 degC, 770 degC] }
  - { id: melt-al, kind: melting, families: [aluminium, zinc-aluminium], capacity: 1500 kg, melt_rate: 550 kg/h, temperature: [650 degC, 790 degC], energy: 0.85 kWh/kg }
cooling:
  - { id: tower, medium: water, temperature: [22 degC, 65 degC], flow: 150 l/min, pressure: 5 bar }
  - { id: hot oil, medium: oil, temperature: [120 degC, 280 degC], flow: 90 l/min, pressure: 7 bar }
spray: { kind: water-based, dilution: 75, flow: 14 l/min, time: 5 s, blow: 1.4 s }
trim_presses:
  - { id: trim-200, force: 200 kN, stroke: 410 mm, platen: [810 mm, 590 mm], drive: hydraulic, hourly_rate: 37 }
  - { id: trim-500, force: 500 kN, stroke: 520 mm, platen: [1010 mm, 790 mm] }
limits:
  clamp.use: { greatest: 84 %, severity: error, reason: The tie bars are old }
  cycle.time: { least: 6 s, greatest: 61 s }
`;
