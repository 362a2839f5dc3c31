import type { Ledger } from '../../ledger.ts';
import type { Block, Phrase } from '../../plan.ts';
import { textBlock, valuesBlock } from '../../step.ts';
import { spraysLittle } from './spray-way.ts';

export function show(ledger: Ledger): readonly Block[] {
  const kind = ledger.decisions.has('lubricant.kind') ? [textBlock('Die lubricant: ', { decision: 'lubricant.kind' }, '.')] : [];
  return [...kind, ...showFilm(ledger), ...showHeat(ledger), ...showUse(ledger), ...showPlunger(ledger)];
}

function showFilm(ledger: Ledger): Block[] {
  if (spraysLittle(ledger)) return showMist(ledger);
  if (!ledger.values.has('lubricant.film-spray')) return [];
  return [
    textBlock(
      'A film of lubricant parts the casting from the die. The spray brings it, and cools the face on the way; the two jobs ask for different amounts, and the greater one is planned.',
    ),
    ...valuesBlock(ledger, [
      'lubricant.area',
      'lubricant.film',
      'lubricant.film-least',
      'lubricant.film-greatest',
      'lubricant.film-severe',
      'lubricant.solids',
      'lubricant.efficiency',
      'lubricant.missing',
      'lubricant.concentrate',
      'lubricant.dilution',
      'lubricant.dilution-least',
      'lubricant.dilution-greatest',
      'lubricant.film-spray',
    ]),
    ...surface(ledger),
  ];
}

/** A mist of undiluted lubricant: the film and nothing for cooling. */
function showMist(ledger: Ledger): Block[] {
  if (!ledger.values.has('lubricant.concentrate')) return [];
  return [
    textBlock(
      'Minimal quantities are sprayed. The mist leaves a film that parts the casting from the die and takes no heat worth counting: the cooling lines and the surroundings take all of it, so a die that was laid out for a water-based spray runs too hot with this.',
    ),
    ...valuesBlock(ledger, [
      'lubricant.area',
      'lubricant.film',
      'lubricant.film-least',
      'lubricant.film-greatest',
      'lubricant.solids',
      'lubricant.efficiency',
      'lubricant.concentrate',
    ]),
    ...surface(ledger),
  ];
}

function surface(ledger: Ledger): Block[] {
  if (!ledger.values.has('lubricant.surface-least') || !ledger.values.has('fill.die-temperature')) return [];
  return [
    textBlock(
      'The spray forms its film on a surface of ',
      { value: 'lubricant.surface-least' },
      ' to ',
      { value: 'lubricant.surface-greatest' },
      ', with some agents up to ',
      { value: 'lubricant.surface-special' },
      '; the die is planned at ',
      { value: 'fill.die-temperature' },
      ' before the shot, which is the surface after spraying and blowing.',
    ),
  ];
}

/** How much of the sprayed water must boil says whether the share of heat given to the spray can be believed. */
function showHeat(ledger: Ledger): Block[] {
  if (!ledger.values.has('lubricant.spray')) return [];
  const known = ledger.values.has('lubricant.boiled-share');
  const phrase: Phrase = known
    ? [
        'Check of the heat balance: ',
        { value: 'heat.share-spray' },
        ' of the heat of a shot is given to the spray. For that ',
        { value: 'lubricant.boiled-water' },
        ' of water must boil on the die at each spraying. That is ',
        { value: 'lubricant.boiled-of-film' },
        ' of the water in a spray made for the film alone, and ',
        { value: 'lubricant.boiled-share' },
        ' of the water in the spray planned. Of a spray about ',
        { value: 'lubricant.missing' },
        ' misses the die and some bounces off, so up to about half is likely; where the film alone would ask for more, the spray is planned larger, and the lines should take more of the heat.',
      ]
    : ['No heat is reckoned for the spray, so the amount is that of the film alone.'];
  return [
    textBlock(...phrase),
    ...valuesBlock(ledger, [
      'lubricant.evaporation-heat',
      'lubricant.boiled-water',
      'lubricant.cooling-spray',
      'cycle.spray-interval',
      'lubricant.spray',
      'lubricant.concentrate-used',
      'lubricant.boiled-of-film',
      'lubricant.boiled-share',
      'lubricant.film-left',
      'lubricant.flow',
      'lubricant.head-flow',
    ]),
  ];
}

function showUse(ledger: Ledger): Block[] {
  return [
    ...valuesBlock(ledger, ['lubricant.hourly-spray', 'lubricant.hourly-concentrate', 'lubricant.water-free']),
    ...(ledger.values.has('lubricant.spray')
      ? [
          textBlock(
            'Draw a spray diagram before the trial: which faces, which nozzles, how long. Spray deep cores, the face opposite the gate and thick spots first, and blow until no drop is left in a corner or a pin hole. The amounts are least ones; the trial sets them, and a spray that cools more than it parts is a job for the cooling lines.',
          ),
        ]
      : []),
  ];
}

function showPlunger(ledger: Ledger): Block[] {
  if (!ledger.decisions.has('lubricant.plunger')) return [];
  return [
    textBlock('Plunger lubricant: ', { decision: 'lubricant.plunger' }, '.'),
    ...valuesBlock(ledger, ['lubricant.oil-least', 'lubricant.oil-greatest', 'lubricant.bead-size', 'lubricant.bead-melting']),
    ...(ledger.texts.get('lubricant.plunger') === 'none'
      ? []
      : [
          textBlock(
            'No amount for a shot is published. Give the least with which the tip runs free and does not score: what is too much burns on the metal in the sleeve, and its residue is carried into the casting.',
          ),
        ]),
  ];
}
