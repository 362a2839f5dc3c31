import { type BadInput, cell } from './make.ts';

const COLD = '    dry_cycle: 6 s\n';
const more = (field: string): readonly [string, string] => [COLD, `${COLD}    ${field}\n`];

/** What can be wrong in furnaces, cooling, spray, trim presses, limits, and in what a machine has beside it. */
export const CELLS: readonly BadInput[] = [
  // Furnaces
  cell('furnace for an unknown family', 'unknown-word', ['families: [aluminium], alloys', 'families: [«aluminum], alloys']),
  cell('furnace for a family by its key of the prices', 'unknown-word', ['zinc-aluminium], capacity', '«zinc_aluminium], capacity']),
  cell('furnace for nothing', 'missing-field', ['{ id: hold-al, kind: dosing, families: [aluminium], alloys: [A413], ', '«{ id: hold-al, kind: dosing, ']),
  cell('furnace with an empty list of families', 'wrong-type', ['families: [aluminium], alloys', 'families: «[], alloys']),
  cell('furnace with an empty list of alloys', 'wrong-type', ['alloys: [A413]', 'alloys: «[]']),
  cell('family that is no list', 'wrong-type', ['families: [aluminium], alloys', 'families: «aluminium, alloys']),
  cell('furnace of an unknown kind', 'unknown-word', ['kind: dosing', 'kind: «reverberatory']),
  cell('furnace without capacity', 'missing-field', ['- { id: hold-al', '- «{ id: hold-al'], [' capacity: 1300 kg,', '']),
  cell('furnace of no capacity', 'not-positive', ['capacity: 1300 kg', 'capacity: «0 kg']),
  cell('capacity in litres', 'wrong-dimension', ['capacity: 1300 kg', 'capacity: «500 l']),
  cell('capacity without unit', 'bare-number', ['capacity: 1300 kg', 'capacity: «1300']),
  cell('capacity in grams', 'too-small-value', ['capacity: 1300 kg', 'capacity: «130 g']),
  cell('melt rate of a mass', 'wrong-dimension', ['melt_rate: 550 kg/h', 'melt_rate: «550 kg']),
  cell('furnace that melts, without a rate', 'missing-field', ['- { id: melt-al', '- «{ id: melt-al'], [' melt_rate: 550 kg/h,', '']),
  cell('dosing furnace with a melt rate', 'melt-rate-of-holding', ['capacity: 1300 kg,', 'capacity: 1300 kg, «melt_rate: 300 kg/h,']),
  cell('dosing furnace with an energy for melting', 'melt-rate-of-holding', ['capacity: 1300 kg,', 'capacity: 1300 kg, «energy: 0.9 kWh/kg,']),
  cell('coldest metal above the hottest', 'furnace-temperature-order', ['[640 degC, 770 degC]', '«[770 degC, 640 degC]']),
  cell('one temperature of a furnace', 'wrong-type', ['[640 degC, 770 degC]', '«[640 degC]']),
  cell('difference for a temperature', 'wrong-dimension', ['[640 degC, 770 degC]', '[«640 K, 770 degC]']),
  cell('furnace as hot as a blast furnace', 'too-large-value', ['790 degC', '«1790 degC']),
  cell('same id for two furnaces', 'duplicate-id', ['{ id: melt-al', '{ id: «hold-al']),
  cell('energy in the wrong place', 'unknown-key', ['capacity: 1500 kg', '«price: 3, capacity: 1500 kg']),
  cell('misspelt melt rate', 'unknown-key', ['melt_rate: 550', '«meltrate: 550']),
  cell('no furnaces in the list', 'wrong-type', ['furnaces:\n  - { id: hold-al', 'furnaces: «[]\nodd:\n  - { id: hold-al'], { others: ['spec/unknown-key'] }),
  cell('furnaces as one mapping', 'wrong-type', ['furnaces:\n  - { id: hold-al', 'furnaces: «{ id: x }\nodd:\n  - { id: hold-al'], {
    others: ['spec/unknown-key'],
  }),
  // Cooling
  cell('unknown coolant', 'unknown-word', ['medium: oil', 'medium: «glycol']),
  cell('coldest coolant above the hottest', 'coolant-order', ['[22 degC, 65 degC]', '«[65 degC, 22 degC]']),
  cell('open water above its boiling point', 'open-water-hot', ['[22 degC, 65 degC]', '«[22 degC, 120 degC]']),
  cell('flow of a pump as a pressure', 'wrong-dimension', ['flow: 150 l/min', 'flow: «150 bar']),
  cell('pressure of a pump in metres', 'wrong-dimension', ['pressure: 5 bar', 'pressure: «50 m']),
  cell('unit without pressure', 'missing-field', ['- { id: tower', '- «{ id: tower'], [', pressure: 5 bar', '']),
  cell('flow of a river', 'too-large-value', ['flow: 90 l/min', 'flow: «90 m3/s']),
  cell('same id for two units', 'duplicate-id', ['id: hot oil', 'id: «tower']),
  // Spray
  cell('spray of an unknown kind', 'unknown-word', ['kind: water-based', 'kind: «water']),
  cell('dilution of a minimal quantity', 'dilution-of-minimal', ['kind: water-based, dilution', 'kind: minimal-quantity, «dilution']),
  cell('dilution as a ratio', 'unknown-unit', ['dilution: 75', 'dilution: «1:75']),
  cell('spray without kind', 'missing-field', ['spray: { kind: water-based, ', '«spray: { ']),
  cell('spray as a list', 'wrong-type', ['spray: { kind: water-based, dilution: 75, flow: 14 l/min, time: 5 s, blow: 1.4 s }', 'spray: «[water-based]']),
  cell('time of spraying without unit', 'bare-number', ['time: 5 s', 'time: «5']),
  cell('spraying that takes no time', 'not-positive', ['time: 5 s', 'time: «0 s']),
  // Trim presses
  cell('press of an unknown drive', 'unknown-word', ['drive: hydraulic', 'drive: «eccentric']),
  cell('press with a clutch that is not said', 'unknown-word', ['drive: hydraulic', 'drive: «clutch']),
  cell('press force in tons', 'ambiguous-unit', ['force: 200 kN', 'force: «20 t']),
  cell('press without force', 'not-positive', ['force: 500 kN', 'force: «0 kN']),
  cell('press without stroke', 'missing-field', ['- { id: trim-200', '- «{ id: trim-200'], [' stroke: 410 mm,', '']),
  cell('platen as an area', 'wrong-type', ['platen: [810 mm, 590 mm]', 'platen: «0.5 m2']),
  cell('rate of a press with its currency', 'wrong-dimension', ['hourly_rate: 37', 'hourly_rate: «37 h']),
  cell('same id for two presses', 'duplicate-id', ['id: trim-500', 'id: «trim-200']),
  cell('singular for the list of presses', 'unknown-key', ['trim_presses:', '«trim_press:']),
  // Limits
  cell('limit under a name with a space', 'limit-form', ['  clamp.use:', '  «clamp use:']),
  cell('limit on one item', 'limit-form', ['  clamp.use:', '  «"hole.draft[H1]":']),
  cell('limit without an end', 'missing-field', ['cycle.time: { least: 6 s, greatest: 61 s }', '«cycle.time: { reason: none }']),
  cell('limit with a maximum', 'unknown-key', ['  clamp.use: { greatest: 84 %,', '  clamp.use: { «maximum: 84 %,']),
  cell('limit as a bare value', 'wrong-type', ['cycle.time: { least: 6 s, greatest: 61 s }', 'cycle.time: «61 s']),
  cell('limit of an unknown severity', 'unknown-word', ['severity: error', 'severity: «fatal']),
  cell('limits as a list', 'wrong-type', ['limits:\n  clamp.use:', 'limits: «[]\nodd:\n  clamp.use:'], { others: ['spec/unknown-key'] }),
  // Machines
  cell('half a core circuit', 'not-whole', more('core_circuits: «2.5')),
  cell('vacuum as a word', 'wrong-type', more('vacuum: «yes please')),
  cell('unknown way of taking out', 'unknown-word', more('extraction: «crane')),
  cell('negative core circuits', 'not-positive', more('core_circuits: «-1')),
  cell('misspelt core circuits', 'unknown-key', more('«core_circuit: 2')),
];
