/** Commented files to begin from; the tests read and plan with them. */
export const STARTER_PART = `# yaml-language-server: $schema=part.schema.json
# An editor completes and checks the keys once this has been run: diewright schema part > part.schema.json
diewright: part/1
part:
  name: Cover
  number: C-100                         # number, revision and note may be left out
  revision: A
alloy: A380                             # any designation in use; see: diewright list alloys

# Every quantity is written with its unit.
geometry:
  volume: 150 cm3                       # or mass: 0.41 kg
  envelope: [160 mm, 110 mm, 40 mm]     # x, y, z
  projected_area: { z: 150 cm2 }        # seen along that axis; give x and y too if the die may open that way
  wall: { least: 2.5 mm, nominal: 3 mm, greatest: 4.5 mm }
  die_opening: z                        # or auto, x, y, or a vector such as [0, 0, 1]
  # surface_area: 900 cm2
  # parting_line: 540 mm

# What follows may be left out; what is left out becomes an assumption that the plan lists.
walls:                                  # drafted faces; draft is what the drawing allows
  - { id: outer, side: outside, height: 36 mm, draft: 2 deg }
  - { id: inner, side: inside, height: 33 mm, draft: 3 deg }
holes:                                  # direction: the way the core leaves the hole
  - { id: screws, diameter: 6.5 mm, depth: 12 mm, kind: through, direction: z, count: 4 }
# undercuts:
#   - { id: U1, direction: -x, depth: 9 mm, face_area: 12 cm2 }
# inserts:
#   - { id: I1, material: steel, diameter: 12 mm, length: 18 mm, cover: 2.5 mm }
# ribs:
#   - { id: R1, root_width: 2 mm, height: 8 mm, draft: 1.5 deg, tip_radius: 0.5 mm, root_fillet: 1 mm }
# fillets:
#   - { id: F1, radius: 1.5 mm, walls: [3 mm, 3 mm] }
dimensions:                             # tolerance is plus and minus; across: none, parting or slide
  - { id: length, nominal: 160 mm, tolerance: 0.5 mm, across: none }
# machining:
#   - { id: gasket face, stock: 0.4 mm }
quality:
  use: general                          # general, loaded, pressure-tight, plated or structural
  finish: functional                    # utility, functional, commercial, consumer or superior
# certificate: { Fe: 0.9 %, Mn: 0.3 % }
production: { per_year: 60000, life: 300000, hours_per_year: 4000 }

# Decisions that are already taken are kept and judged; see: diewright list values
# pinned: { machine.cavities: 1, gate.velocity: 42 m/s }

# Findings that are accepted stay in the plan, with the reason, and do not fail a run; item may be left out.
# accepted:
#   - { code: hole/caution-depth, item: screws, reason: the core pins are kept as spares }

# What is wrong in this file: diewright check FILE. Its plan: diewright plan FILE --format markdown=plan.md
# What a word of it means: diewright explain WORD, such as draft
`;

export const STARTER_DIE = `# yaml-language-server: $schema=die.schema.json
# An editor completes and checks the keys once this has been run: diewright schema die > die.schema.json
diewright: die/1
die:
  name: Cover pair
  number: D-100                         # number, revision and note may be left out
  revision: A

# The parts of one shot, all in one alloy: their files, seen from this one, and how many castings of each.
# What the plan calls a part is its file name without ending, or the id that is given here.
parts:
  - { file: cover.part.yaml, count: 2 }
  # - { id: lid, file: ../lid/lid.part.yaml, count: 2 }

# Decisions for this die that are already taken; those in the part files that a shot has in common are not used here.
# pinned: { machine.model: cold-4000, fill.time: 30 ms }

# Findings of the die that are accepted, each with the reason; item is the part where it is about one.
# accepted:
#   - { code: set/demand, item: lid, reason: the spare lids are sold }
`;

export const STARTER_PLANT = `# yaml-language-server: $schema=plant.schema.json
# An editor completes and checks the keys once this has been run: diewright schema plant > plant.schema.json
# The figures below are invented. Replace them by those of your own plant before you rely on a plan.
diewright: plant/1
plant:
  name: My plant
  invented: true                        # take this line out when the figures are real
machines:
  - id: cold-4000
    chamber: cold                       # hot or cold
    shot: horizontal                    # direction of the plunger: horizontal or vertical
    locking_force: 4000 kN
    tie_bar_clearance: [620 mm, 620 mm] # width and height
    die_height: [300 mm, 750 mm]        # least and greatest
    opening_stroke: 450 mm
    ejector: { force: 180 kN, stroke: 120 mm }
    shot_end:
      plungers: [60 mm, 70 mm, 80 mm]
      sleeve_length: 480 mm             # cold chamber only: plunger start face to parting plane
      stroke: 540 mm
      cylinder_diameter: 140 mm
      # tail_rod_diameter: 60 mm        # where a rod leaves the back of the shot cylinder
      pressure_fill: 14 MPa
      pressure_intensified: 26 MPa      # leave out where there is no intensifier
      dry_speed: 5.2 m/s                # plunger speed without metal
    dry_cycle: 4.3 s
    hourly_rate: 83                     # money per hour with people and energy; may be left out
    core_circuits: 4                    # for hydraulic cores; may be left out, like the two lines below
    vacuum: true                        # whether a vacuum unit stands at the machine
    extraction: robot                   # how shots are taken out: robot or by hand
  - id: hot-1600
    chamber: hot
    shot: horizontal
    locking_force: 1600 kN
    tie_bar_clearance: [420 mm, 420 mm]
    die_height: [200 mm, 550 mm]
    opening_stroke: 250 mm
    ejector: { force: 80 kN, stroke: 75 mm }
    shot_end:
      plungers: [60 mm, 70 mm, 80 mm]
      stroke: 170 mm
      cylinder_diameter: 95 mm
      pressure_fill: 12 MPa
      dry_speed: 4.5 m/s
    dry_cycle: 2.9 s
    hourly_rate: 61

# All that follows may be left out; what is left out is planned with usual figures, which the plan lists.

furnaces:                               # kind: holding, dosing, melting, or melting and holding
  - { id: doser, kind: dosing, families: [aluminium], capacity: 900 kg, temperature: [640 degC, 760 degC] }
  - { id: tower, kind: melting, families: [aluminium], capacity: 1500 kg, melt_rate: 500 kg/h, temperature: [640 degC, 780 degC], energy: 0.8 kWh/kg }
  - { id: zinc melter, kind: melting, alloys: [Zamak 3, Zamak 5], capacity: 1000 kg, melt_rate: 300 kg/h, temperature: [400 degC, 460 degC] }

cooling:                                # medium: water, pressurised water or oil; flow for one die
  - { id: tower water, medium: water, temperature: [28 degC, 70 degC], flow: 150 l/min, pressure: 5 bar }
  - { id: tempering, medium: pressurised water, temperature: [60 degC, 150 degC], flow: 120 l/min, pressure: 6 bar }
  - { id: oil unit, medium: oil, temperature: [150 degC, 300 degC], flow: 100 l/min, pressure: 7 bar }

spray:                                  # kind: water-based or minimal-quantity
  kind: water-based
  dilution: 60                          # parts of water to one of concentrate
  flow: 25 l/min                        # all nozzles of one die
  # time: 6 s                           # of one spraying, in place of the rule by size
  # blow: 2 s                           # blowing off after it

trim_presses:                           # drive: hydraulic, pneumatic, part-revolution clutch or full-revolution clutch
  - { id: trim-160, force: 160 kN, stroke: 350 mm, platen: [800 mm, 600 mm], hourly_rate: 34 }
  - { id: trim-400, force: 400 kN, stroke: 500 mm, platen: [1200 mm, 900 mm], hourly_rate: 38 }
  # Say how each is driven: the safety rules hang on it, and the plan asks while it is not known, for example
  #   drive: hydraulic

limits:                                 # of the house, on any value of a plan; see: diewright list values
  clamp.use: { greatest: 88 %, reason: what the house allows its tie bars }
  # cycle.time: { greatest: 90 s, severity: error }          # error, warning or note

# With prices the plan works out what a good part costs; bare numbers, in one currency and of one day.
# prices:
#   currency: EUR
#   date: 2026-03-31
#   metal:                              # money per kilogram of ingot
#     aluminium: { price: 2.4, melt_loss: 3 % }
#   alloys:                             # where one alloy has a price of its own
#     - { id: A380, price: 2.3 }
#   # returns_sold: 65 %                # only where returns are sold; what they fetch, share of the price of ingot
#   energy: 0.12                        # per kWh, for melting and holding
#   trimming: { rate: 40, cycle: 8 s, each: 2 s }              # cycle per shot, each per casting; a press may have a rate of its own
#   machining: { rate: 60, feature: 6 s, handling: 15 s }      # feature: each face, hole or thread
#   impregnation: 2                     # per casting
#   die: { rate: 60, cavity_steel: 12, holder_steel: 3, heat_treatment: 4 }   # per hour, and per kilogram
`;

export const STARTER_PROJECT = `# yaml-language-server: $schema=project.schema.json
# An editor completes and checks the keys once this has been run: diewright schema project > project.schema.json
# Save it as diewright.yaml. It holds for the parts in its folder and in every folder below; paths are seen from here.
# What holds in the end, and where it was set: diewright plan FILE --show-config
diewright: project/1
# plant: plant.yaml                     # the plant to plan for; see: diewright new plant
# rules: [house-rules]                  # folders of house rules; see: diewright new rule
fail_on: error                          # error, warning or never: what ends a run with 1
# adjusted:                             # built-in limits graded otherwise here, or switched off; every plan says so and why
#   - { rule: clamp/oversized, severity: off, reason: The cells are bought as they are }
`;
