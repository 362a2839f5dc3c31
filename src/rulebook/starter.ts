/** A commented limit to begin from; it is compiled, with its examples, by the tests. */
export const STARTER_RULE = `# yaml-language-server: $schema=limit.schema.json
# An editor completes and checks the keys once this has been run: diewright schema limit > limit.schema.json
# A limit. The id is the path below limits/: save it as house-rules/limits/clamp/house-use.yaml for clamp/house-use.
# Try it, with its examples:  diewright list rules house --rules house-rules
# How it comes out for a part: diewright explain clamp/house-use cover.part.yaml --rules house-rules
# Use it always: "rules: [house-rules]" in diewright.yaml (diewright new project).
title: Locking force leaves the reserve that this house wants
# reason: ...                           # why it takes the place of a built-in limit, if it has the id of one
# Names for plan values, with the unit that the expressions see them in; a text, such as alloy.family, has no unit.
# See: diewright list values
uses: { f: clamp.locking-force in kN, rated: machine.locking-force in kN }
# Expressions are CEL. Numbers are doubles: write 2.0 * x, not 2 * x.
when: 'true'                            # where the rule applies
require: f <= 0.8 * rated               # what must hold
severity: warning                       # error, warning or note
# {name} prints value and unit, {expression:digits} a number.
message: 'Needs {f}, which is {100.0 * f / rated:0} % of the {rated} machine'
why: Say in a sentence or two what goes wrong beyond the bound.
fix: Take a machine of at least {f / 0.8:0} kN, or fewer cavities.
# each: hole                            # judged for each hole, wall, undercut, insert, rib, fillet, dimension ...
# at: clamp.locking-force               # the value whose place in the file a finding points at
status: practice                        # source, derived, practice or memory
source: []                              # keys of sources.yaml beside limits/; practice and memory may have none
examples:                               # at least one that holds and one that does not
  - { given: { f: 3000, rated: 4000 }, holds: true }
  - { given: { f: 3500, rated: 4000 }, holds: false }
`;
