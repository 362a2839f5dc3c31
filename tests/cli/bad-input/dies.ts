import { type BadInput, die, text } from './make.ts';

/** Descriptions of dies with castings of several parts. */
export const DIES: readonly BadInput[] = [
  die('die without parts', 'wrong-type', ['  - { file: good.part.yaml, count: 2 }\n  - { id: lid, file: ../lids/lid.part.yaml, count: 1 }\n', '  «[]\n']),
  text('die without the list of parts', 'missing-field', '«diewright: die/1\ndie: { name: Cover pair }\n', { kind: 'die' }),
  die('die without a name', 'missing-field', ['die: { name: Cover pair, number', '«die: { number']),
  die('part of a die without a file', 'missing-field', ['{ file: good.part.yaml, count: 2 }', '«{ count: 2 }']),
  die('unknown key in a die', 'unknown-key', ['pinned: {', '«pined: {']),
  die('unknown key of a part of a die', 'unknown-key', ['count: 2', '«cuont: 2']),
  die('part of a die named twice', 'part-twice', ['file: ../lids/lid.part.yaml', 'file: «./good.part.yaml']),
  die('part of a die named twice by a detour', 'part-twice', ['file: ../lids/lid.part.yaml', 'file: «x/../good.part.yaml']),
  die('two parts of a die under one id', 'duplicate-id', ['{ id: lid, file: ../lids/lid.part.yaml', '{ id: good, file: «../lids/lid.part.yaml'], {
    others: [],
  }),
  die('two parts of a die in files of one name', 'duplicate-id', ['{ id: lid, file: ../lids/lid.part.yaml', '{ file: «other/good.part.yaml']),
  die('id of a part of a die with brackets', 'wrong-id', ['id: lid,', 'id: «"lid[1]",']),
  die('part file of one machine', 'absolute-path', ['file: ../lids/lid.part.yaml', 'file: «/parts/lid.part.yaml']),
  die('part file of one drive', 'absolute-path', ['file: ../lids/lid.part.yaml', "file: «'C:\\parts\\lid.part.yaml'"]),
  die('no castings of a part', 'not-positive', ['count: 2', 'count: «0']),
  die('half a casting', 'not-whole', ['count: 2', 'count: «2.5']),
  die('castings with a unit', 'unknown-unit', ['count: 2', 'count: «2 pieces']),
  die('castings as a share', 'wrong-dimension', ['count: 2', 'count: «50 %']),
  die('more castings of a part than any die has', 'too-large-value', ['count: 2', 'count: «400']),
  die('more castings than any die has', 'too-many-castings', ['parts:', '«parts:'], ['count: 2', 'count: 40'], ['count: 1', 'count: 40']),
  die('cavities pinned in a die', 'cavities-pinned', ['{ machine.model: cold-4000,', '{ «machine.cavities: 4,']),
  die('pin of a die that is no value', 'pin-form', ['machine.model: cold-4000', '«machine: cold-4000']),
  die('finding of a die accepted twice', 'accepted-twice', [
    '  - { code: set/demand, item: lid, reason: the spare lids are sold }\n',
    '  - { code: set/demand, item: lid, reason: the spare lids are sold }\n  - { code: «set/demand, item: lid, reason: again }\n',
  ]),
  die('die of a later version', 'wrong-format', ['diewright: die/1', 'diewright: «die/9']),
  die('part where a die is wanted', 'wrong-format', ['diewright: die/1', 'diewright: «part/1']),
];
