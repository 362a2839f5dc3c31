import { grid, type TypedCell } from './read.ts';

/*
 * Published figures of shot, gate, runner, machine and cycle, typed a second time from the works.
 */
const KGF = 0.0980665; // kgf/cm2 in MPa
const PROFILE = 'KB-SHOT-PROFILE';
const GATING = 'KB-GATING';
const PARAMETERS = 'KB-HPDC-PARAMETERS';
const VACUUM = 'KB-VACUUM';
const WORKSHEET = 'DC-WORKSHEET';

export const SHOT: readonly TypedCell[] = [
  // The figure used is the upper end of the class where it is marked as read.
  ...grid(
    'clamp/pressure',
    `${WORKSHEET} pressure classes, kgf/cm2`,
    `family: use: .. used
     zinc general 100-200 200
     zinc loaded 200-300 300
     zinc pressure-tight 250-400 -
     aluminium general 200-400 400
     aluminium loaded 400-600 600
     aluminium pressure-tight 800-1000 -
     magnesium general 200-400 400
     magnesium loaded 400-600 600
     magnesium pressure-tight 800-1000 -`,
    KGF,
  ),
  ...grid('clamp/area-share', 'IDEALHARD-TONNAGE, 0.15 to 0.30 and 0.10 to 0.20', 'runner.. overflow..\n0.15-0.30 0.10-0.20', 100),
  ...grid('clamp/factor', 'GL-OPENING-FORCE', 'slides: factor\nnone 1.1\nlumped 1.25'),
  ...grid('clamp/use', PARAMETERS, '..\n60-85'),
  ...grid('clamp/spike', PROFILE, '..\n1.5-3'),
  ...grid('cavities/demand', 'GENESIS-CAPACITY', 'capacity_use efficiency\n80 90'),
  ...grid('cavities/demand', 'ZHILIAN-CAVITIES, 0.8 of the shot capacity', 'shot_use\n0.8', 100),
  ...grid('machine/metal-pressure', 'DESIGNERDATA, 15 to 70 MPa', 'chamber: least\ncold 15'),
  ...grid(
    'fill/frommer',
    'DC-WORKSHEET-STEPS, s',
    `wall# ..
     1.5 0.01-0.03
     1.8 0.02-0.04
     2.0 0.02-0.06
     2.3 0.03-0.07
     2.5 0.04-0.09
     3.0 0.05-0.10
     3.8 0.05-0.12
     5.0 0.06-0.20
     6.4 0.08-0.30`,
    1000,
  ),
  ...grid(
    'gate/velocity',
    PARAMETERS,
    `family: use: .. usual..
     aluminium general 30-60 40-50
     aluminium loaded 30-60 40-50
     aluminium pressure-tight 30-60 40-50
     aluminium plated 30-60 40-50
     aluminium structural 25-35 25-35
     magnesium general 40-90 -
     magnesium structural 40-90 -
     zinc general 25-50 -
     zinc plated 25-50 -`,
  ),
  ...grid('gate/extremes', `${PARAMETERS}, ${GATING}`, 'family: chills_below erodes_above\naluminium 20 70'),
  // Bins with gaps; a row up to each upper bound. The last is printed "3.75 and above", a misprint, and read as all above 5.08 mm.
  ...grid(
    'gate/wall-velocity',
    WORKSHEET,
    `wall# ..
     0.762 46-55
     1.525 43-52
     2.286 40-49
     2.794 37-46
     3.87 34-43
     5.08 31-40
     1000 28-35`,
  ),
  ...grid('gate/liquid-density', 'GL-GATE-AREA', 'family: density\naluminium 2.5'),
  ...grid('gate/thickness', GATING, 'family: ..\naluminium 0.8-2.5'),
  ...grid('gate/planned', `${WORKSHEET}, a quarter to a third of the wall`, 'family: wall_share\nzinc 1/3'),
  ...grid('gate/planned', GATING, 'family: wall_share_greatest\naluminium 0.8'),
  ...grid('gate/wall-share', GATING, '.. land..\n0.4-0.8 1.5-3.0'),
  ...grid('gate/flow-length', `${GATING}, 100:1 to 200:1`, 'family: usual greatest\naluminium 100 200'),
  ...grid('runner/ratio', WORKSHEET, 'family: gate_ratio..\ncopper 1.25-1.6'),
  ...grid('runner/section', GATING, 'width_ratio.. area_step.. thickness_ratio.. bend_ratio fan_spread_usual fan_spread_greatest\n2-3 10-30 2-4 1.5 45 60'),
  ...grid('overflow/gate', 'OVERFLOWS-DIGEST, 0.5 of the gates', 'family: area_share\nzinc 0.5\naluminium 0.5\nmagnesium 0.5\ncopper 0.5', 100),
  ...grid('sleeve/fill', `${PROFILE}, ${PARAMETERS}`, 'least\n30'),
  ...grid('sleeve/fill', 'GL-FILLING-LEVEL', 'usual..\n40-60'),
  ...grid('sleeve/fill', 'IDEALHARD-TONNAGE, 40 to 75 %', 'greatest\n75'),
  ...grid('sleeve/geometry', PARAMETERS, 'plunger..\n50-150'),
  ...grid('sleeve/geometry', 'PEGASUS-TERMS', 'wall_share..\n1/3-1/2'),
  ...grid('sleeve/geometry', `${PROFILE}, 0.05 to 0.15 mm`, 'tip_clearance_least\n0.05'),
  ...grid('sleeve/geometry', 'CASTOOL-SLEEVE, below 0.004 in', 'tip_clearance_greatest\n0.004', 25.4),
  ...grid('sleeve/biscuit', PROFILE, '..\n15-30'),
  ...grid('sleeve/slow-speed', PROFILE, '.. ramp..\n0.15-0.5 0.1-0.6'),
  ...grid('sleeve/fast-shot', PROFILE, 'speed.. dry.. loaded_drop.. distance.. brake..\n2-6 4-8 10-25 30-80 5-20'),
  ...grid('sleeve/fast-shot', `${PARAMETERS}, 10 to 30 mm either way`, 'change_over_window change_over_greatest\n10 30'),
  ...grid('sleeve/speed-use', PROFILE, 'use\n80'),
  ...grid('sleeve/intensification', PROFILE, 'pressure.. rise.. gate_reference gate_freeze.. hold..\n40-100 10-50 1.2 30-80 2-8'),
  ...grid('pot/pressure', 'YIFEI-HOT-CHAMBER, 1000 to 5000 psi = 7 to 34 MPa', 'family: ..\nzinc 7-34'),
  ...grid(
    'squeeze/process',
    'SQUEEZE-SURVEY',
    'pressure.. hold.. gate_velocity superheat.. die.. section_least section_usual\n50-140 30-120 0.5 6-55 190-315 3 5',
  ),
  ...grid('porosity/shrinkage', 'MAGNUSSON-ARNBERG, Al-11.6Si 4.4, pure 6.6 %', 'family: ..\naluminium 4.4-6.6'),
  ...grid('porosity/gas', VACUUM, 'class: ..\nordinary 10-30\nweldable -5\nbest-vacuum 1-3'),
  ...grid('vent/balance', 'BAR-MEIR, pressure at 90 % of the stroke', 'stroke\n0.9'),
  ...grid('vent/vacuum', `${VACUUM}; high below 50, reaches 20 to 40 mbar`, 'class: ..\nstandard 100-250\ngood 50-150\nhigh 20-50'),
  ...grid('vent/vacuum-plant', VACUUM, 'tank_ratio.. window..\n10-20 0.3-1.5'),
  ...grid('vent/vacuum-plant', `${VACUUM}, m3/h`, 'pump..\n100-500', 1 / 3.6),
  ...grid('cycle/elements', 'ZINC-CYCLE-PAGE, small parts', 'pace: locking_force# dwell..\nhot-chamber 2000 2-5'),
  ...grid('cycle/trade', 'ANEBON-CYCLE', 'dwell.. spray..\n50-60 15-20'),
  ...grid('cycle/trade', 'CYCLE-PAGES', 'typical..\n15-60'),
  ...grid('cycle/trade', 'CYCLE-PAGES, min', 'structural..\n2-4', 60).map((cell) => ({ ...cell, within: 1e-9 })),
];
