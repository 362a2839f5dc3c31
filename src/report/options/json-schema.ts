import { list, object, ref, type Schema, text } from '../json-schema-parts.ts';

const number = (description: string): Schema => ({ type: 'number', description });
const flag = (description: string): Schema => ({ type: 'boolean', description });

const candidate = {
  cavities: number('Cavities; of a die with several parts sets, which is 1'),
  machine: text('Id of the machine in the plant'),
  plunger: number('Plunger diameter, mm'),
};

/** The JSON Schema (2020-12) of what `options --format json` writes. */
export function optionsJsonSchema(): object {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'urn:diewright:options/1',
    title: 'Options behind a casting plan',
    description: 'Candidates of cavities, machine and plunger, each worked out as a plan of its own: pin the three in the part description to see it.',
    ...object(
      {
        format: { const: 'options/1' },
        tool: object({ name: text('Name of the program'), version: text('Its version') }),
        standing: text('What every plan of this program says of itself'),
        part: object({ name: text(), file: text('As the file was named') }, { number: text(), revision: text() }),
        alloy: text('Id of the alloy'),
        plant: object({ name: text(), invented: flag('The plant does not exist') }),
        fits: flag('Whether any candidate passes every limit of an error'),
        variants: list(ref('variant')),
      },
      {
        castings: number('Castings of a shot, for a die with several parts: they are one set, and what is said of a good part is said of a good set'),
        byCost: flag('Whether the cost of a good part ranks; else the size of the machine does'),
        currency: text('Currency of the plant'),
        pricesOf: text('Date of its prices'),
        tried: number('Candidates tried'),
        passing: number('Of those, what passes every limit of an error'),
        weights: object({
          alike: number('Costs within so many % are the same'),
          warning: number('% that a broken warning adds to the cost, at least'),
          miss: number('% of what a warning is missed by that it adds where that is more'),
        }),
        loweredVelocity: number(
          'm/s at the gates of all candidates, where those of the plan are larger than usual because its machine drives no more; a candidate that is pinned has gates of its own',
        ),
        candidates: list(ref('candidate')),
        counts: list(ref('best')),
        machines: list(ref('best')),
        stopped: list(object({ reason: ref('reason'), count: number('Candidates stopped by it'), example: object(candidate) })),
        misses: list(
          object(
            { candidate: object(candidate), broken: list(ref('reason')) },
            { distance: number('By how much its limits are missed, added up, as a share') },
          ),
        ),
      },
    ),
    $defs: {
      reason: object({ id: text('The rule'), title: text(), message: text('With the numbers of the candidate'), fix: text('What would let it pass') }),
      candidate: object(
        { ...candidate, planned: flag('Whether it is the one of the plan'), warnings: list(ref('reason')) },
        {
          cost: number('Money of the plant for a good part'),
          dearer: number('What it costs more than the plan, as a share'),
          cycle: number('s'),
          goodParts: number('Good parts an hour'),
          clampUse: number('% of the rated locking force'),
          sleeveFill: number('%'),
          margin: number('Least reserve of machine and plunger, %'),
        },
      ),
      best: object(
        { name: text('Count of cavities, or id of the machine'), lost: text('Why it was not taken; empty for what is planned') },
        { best: ref('candidate') },
      ),
      variant: object(
        {
          alloy: text(),
          plant: text(),
          errors: list(text('Codes of findings')),
          warnings: number('Findings that are warnings'),
          lost: text('First error, or empty'),
        },
        {
          kind: text('Kind of machine'),
          machine: text(),
          cavities: number('Cavities'),
          plunger: number('mm'),
          mass: number('One casting, kg'),
          cycle: number('s'),
          goodParts: number('Good parts an hour'),
          lockingForce: number('kN'),
          cost: number('Money of its plant for a good part'),
          currency: text(),
        },
      ),
    },
  };
}
