import { alloy, type BadRules, caution, choice, edit, GOOD_LIMIT, GOOD_SOURCES, GOOD_TABLE, limit, table } from './make.ts';

const LIMITS: readonly BadRules[] = [
  { name: 'YAML that does not parse', code: 'yaml-syntax', files: limit('title: Wall', 'title: «"Wall') },
  { name: 'a key twice', code: 'duplicate-key', files: limit('fix: make it thicker', '«why: again') },
  { name: 'an unknown key, the nearest named', code: 'unknown-key', files: limit('severity:', '«severty:'), says: 'did you mean "severity"' },
  { name: 'no why', code: 'missing-field', files: limit('title: Wall', '«title: Wall', 'why: because of this and that\n', ''), says: 'why is missing' },
  { name: 'an empty fix', code: 'missing-field', files: limit('fix: make it thicker', '«fix: ""'), says: 'fix is empty' },
  { name: 'an unknown severity', code: 'unknown-word', files: limit('severity: warning', 'severity: «warnin'), says: 'did you mean "warning"' },
  { name: 'an unknown status', code: 'unknown-word', files: limit('status: practice', 'status: «practise'), says: 'did you mean "practice"' },
  { name: 'a list where a text is wanted', code: 'wrong-shape', files: limit('why: because of this and that', 'why: «[because]'), says: 'a text is wanted' },
  { name: 'an unknown item', code: 'unknown-word', files: limit('severity: warning', 'severity: warning\neach: «holes'), says: 'did you mean "hole"' },
  { name: 'a name that cannot stand in an expression', code: 'wrong-shape', files: limit('wall: part', '«the-wall: part') },
  {
    name: 'an unknown value',
    code: 'unknown-value',
    files: limit('part.wall-nominal in mm', '«part.wall-nominl in mm'),
    says: 'did you mean "part.wall-nominal"',
  },
  { name: 'a unit that is missing', code: 'unit-missing', files: limit('part.wall-nominal in mm', '«part.wall-nominal'), says: 'part.wall-nominal in mm' },
  { name: 'an unknown unit', code: 'unknown-unit', files: limit('part.wall-nominal in mm', '«part.wall-nominal in mmm') },
  { name: 'a unit of something else', code: 'wrong-unit', files: limit('part.wall-nominal in mm', '«part.wall-nominal in MPa') },
  { name: 'a text with a unit', code: 'unit-of-text', files: limit('alloy.family', '«alloy.family in mm') },
  { name: 'an unbound name, at the name', code: 'expression', files: limit('require: wall >= 1.0', 'require: 1.0 <= «wal'), says: 'did you mean "wall"' },
  { name: 'an expression that ends too early', code: 'expression', files: limit('require: wall >= 1.0', 'require: wall >=«') },
  { name: 'a whole number times a double', code: 'expression', files: limit('require: wall >= 1.0', 'require: «2 * wall >= 1.0'), says: '2.0 * x' },
  {
    name: 'a number where true or false is wanted',
    code: 'expression',
    files: limit('require: wall >= 1.0', 'require: «wall + 1.0'),
    says: 'a bool is wanted',
  },
  { name: 'a text held against a number', code: 'expression', files: limit('when: family == "aluminium"', 'when: «family == 3.0') },
  { name: 'a function that CEL does not have', code: 'expression', files: limit('when: family == "aluminium"', 'when: «family.looks("x")') },
  { name: 'a message with a foreign name', code: 'template', files: limit("'A wall of {wall}", "'A wall of «{walls}"), says: 'did you mean "wall"' },
  {
    name: 'a message with an open brace',
    code: 'template',
    files: limit("message: 'A wall of {wall} is below {1.0 + 0.0:1} mm'", "message: «'A wall of {wall'"),
  },
  { name: 'a message that computes what is no number', code: 'expression', files: limit('{1.0 + 0.0:1}', '{«family:1}') },
  { name: 'a place that no plan has', code: 'unknown-value', files: limit('severity: warning', 'severity: warning\nat: «part.wall'), says: 'part.wall' },
  {
    name: 'no example that does not hold',
    code: 'example',
    files: limit(
      'examples:\n  - { given: { wall: 2.0, family: aluminium }, holds: true }\n  - { given: { wall: 0.5, family: aluminium }, holds: false }',
      '«examples:\n  - { given: { wall: 2.0, family: aluminium }, holds: true }',
    ),
  },
  {
    name: 'no examples at all',
    code: 'missing-field',
    files: { 'limits/wall/house.yaml': `«${GOOD_LIMIT.slice(0, GOOD_LIMIT.indexOf('examples:'))}` },
    says: 'examples is missing',
  },
  {
    name: 'an example that lies, with its numbers',
    code: 'example',
    files: limit('- { given: { wall: 0.5', '- «{ given: { wall: 5.0'),
    says: 'wall = 5, family = aluminium holds',
  },
  { name: 'an example of a name that is not bound', code: 'example', files: limit('given: { wall: 0.5', 'given: { «wal: 0.5'), says: 'did you mean "wall"' },
  { name: 'an example with a text for a number', code: 'example', files: limit('given: { wall: 0.5', 'given: { wall: «thin') },
  { name: 'a source that is nowhere', code: 'unknown-source', files: limit('status: practice', 'source: [«NO-SUCH page 3]') },
  {
    name: 'a source that is nearly there',
    code: 'unknown-source',
    files: limit('status: practice', 'source: [«MURUGESEN x]'),
    says: 'did you mean "MURUGESAN"',
  },
  { name: 'status source without a source', code: 'no-source', files: limit('status: practice', 'status: «source') },
  { name: 'a built-in id without a reason', code: 'no-reason', files: { 'limits/clamp/oversized.yaml': `«${GOOD_LIMIT}` }, says: 'add "reason' },
  {
    name: 'a reason where nothing is replaced',
    code: 'replaces-nothing',
    files: { 'limits/clamp/oversize.yaml': `reason: «we differ\n${GOOD_LIMIT}` },
    says: 'did you mean "clamp/oversized"',
  },
  { name: 'a path without a topic', code: 'file-name', files: { 'limits/house.yaml': `«${GOOD_LIMIT}` } },
  { name: 'another ending', code: 'file-name', files: { 'limits/wall/house.yml': `«${GOOD_LIMIT}` } },
  { name: 'a folder that is not read', code: 'unknown-folder', files: { 'limit/wall/house.yaml': `«${GOOD_LIMIT}` } },
  { name: 'a plant among the rules', code: 'unknown-folder', files: { 'plants/house.yaml': '«diewright: plant/1\n' } },
];

const TABLES: readonly BadRules[] = [
  {
    name: 'a table that nothing reads',
    code: 'nothing-reads-it',
    files: { 'tables/draft/constants.yaml': `«${GOOD_TABLE}` },
    says: 'did you mean "draft/constant"',
  },
  {
    name: 'a built-in table without a reason',
    code: 'no-reason',
    files: { 'tables/draft/constant.yaml': `«${edit(GOOD_TABLE, 'reason: the dies of the house are polished along the draw\n', '')}` },
  },
  {
    name: 'an axis that is missing',
    code: 'axes-differ',
    files: {
      'tables/draft/constant.yaml': edit(edit(GOOD_TABLE, 'axes:', '«axes:'), '  level: { values: [standard, precision] }\n', '').replaceAll(
        ', level: standard',
        '',
      ),
    },
  },
  {
    name: 'an axis of another kind',
    code: 'axes-differ',
    files: {
      'tables/draft/constant.yaml': edit(GOOD_TABLE, '{ values: [standard, precision] }', '«{ unit: mm, steps: up-to }').replaceAll(
        'level: standard',
        'level: 3',
      ),
    },
  },
  { name: 'a column in another dimension', code: 'axes-differ', files: table("factor: { unit: '1'", 'factor: { unit: «mm') },
  {
    name: 'a word that no plan asks for',
    code: 'unknown-word',
    files: table('values: [zinc, aluminium]', 'values: [«zink, aluminium]'),
    says: 'did you mean "zinc"',
  },
  {
    name: 'a word that is not on the axis',
    code: 'unknown-word',
    files: table('family: aluminium, surface: inside', 'family: «alumnium, surface: inside'),
    says: 'did you mean "aluminium"',
  },
  {
    name: 'a column that is not there',
    code: 'unknown-key',
    files: table('constant: 35, factor: 1', '«constnt: 35, factor: 1'),
    says: 'did you mean "constant"',
  },
  {
    name: 'two rows in one place',
    code: 'row-twice',
    files: table('- { family: aluminium, surface: [outside, hole]', '- «{ family: aluminium, surface: [inside, hole]'),
  },
  { name: 'a column in an unknown unit', code: 'unknown-unit', files: table("constant: { unit: '1'", 'constant: { unit: «mmm') },
  { name: 'a cell of status source without one', code: 'no-source', files: table('constant: 35', 'constant: «{ value: 35, status: source }') },
  { name: 'a cell that is no figure', code: 'unknown-key', files: table('constant: 35', 'constant: { «figure: 35 }'), others: ['missing-field'] },
];

const OTHERS: readonly BadRules[] = [
  { name: 'a decision that nothing takes', code: 'nothing-reads-it', files: choice('  medium:\n', '  «medum:\n'), says: 'did you mean "cooling.medium"' },
  {
    name: 'a word that later steps do not know',
    code: 'unknown-word',
    files: choice('choose: water', 'choose: «watter'),
    says: 'did you mean "water"',
    others: ['example'],
  },
  { name: 'a value that is not known yet', code: 'not-known-yet', files: choice('use: quality.use', 'use: «finish.trimming') },
  {
    name: 'an example that chooses otherwise',
    code: 'example',
    files: choice('- { given: { family: aluminium, use: general }, chooses: water }', '- «{ given: { family: aluminium, use: general }, chooses: oil }'),
    says: 'chooses water (row 2)',
  },
  {
    name: 'a decision without a reason',
    code: 'no-reason',
    files: choice('  medium:\n    title: Coolant\n    reason: one oil unit serves the whole hall\n', '  «medium:\n    title: Coolant\n'),
  },
  { name: 'a built-in caution', code: 'caution-kept', files: caution('  house-gloves:', '  «burns:') },
  { name: 'a caution that nothing triggers', code: 'example', files: caution('- { given: { trimming: press }', '- «{ given: { trimming: none }') },
  {
    name: 'a caution without a document to defer to',
    code: 'missing-field',
    files: caution('  house-gloves:', '  «house-gloves:', '    defer: Plant rules; local codes and licensed practice prevail.\n', ''),
    says: 'defer is missing',
  },
  {
    name: 'a family that no table knows',
    code: 'unknown-word',
    files: alloy('family: aluminium', 'family: «aluminum'),
    says: 'did you mean "aluminium"',
    others: ['file-name'],
  },
  { name: 'a property that is not known', code: 'unknown-value', files: alloy('liquidus:', '«liqidus:'), says: 'did you mean "liquidus"' },
  { name: 'a property in another dimension', code: 'wrong-unit', files: alloy('unit: g/cm3', 'unit: «MPa') },
  { name: 'a property without a figure', code: 'missing-field', files: alloy('liquidus: { value: 593, unit', 'liquidus: «{ unit') },
  {
    name: 'a new alloy without composition',
    code: 'missing-field',
    files: alloy(
      '  House 226:\n',
      '  «House 226:\n',
      "    composition: { unit: 'wt %', balance: Al, status: practice, limits: { Si: [8, 11], Cu: [2, 4] } }\n",
      '',
    ),
    says: 'composition is missing',
  },
  {
    name: 'a designation of another alloy',
    code: 'designation-taken',
    files: alloy('[{ system: house, code: House 226 }]', '[«{ system: house, code: EN AC-46000 }]'),
  },
  {
    name: 'a built-in alloy without a reason',
    code: 'no-reason',
    files: { 'alloys/aluminium.yaml': 'family: aluminium\nalloys:\n  «A380:\n    properties: { density: { value: 2.7, unit: g/cm3, status: practice } }\n' },
  },
  { name: 'a source that is built in', code: 'source-taken', files: { 'sources.yaml': `${GOOD_SOURCES}«NADCA-S4A7:\n  title: Our own\n  read: all of it\n` } },
  { name: 'a source without what was read', code: 'missing-field', files: { 'sources.yaml': '«HOUSE-MELT:\n  title: Melt sheet\n' } },
  {
    name: 'an alloy of another family',
    code: 'wrong-shape',
    files: { 'alloys/zinc.yaml': 'family: zinc\nalloys:\n  «A380:\n    reason: x\n    properties: {}\n' },
  },
];

/** Every bad folder of rules, with the finding that it has to give. */
export const BAD_RULES: readonly BadRules[] = [...LIMITS, ...TABLES, ...OTHERS];
