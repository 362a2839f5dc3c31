import type { RootContent } from 'mdast';
import type { Best, Candidate, NearMiss, Options, Stopped, Variant } from '../../engine/options/options.ts';
import { formatNumber } from '../../kernel/format.ts';
import { code, heading, type Inline, item, list, paragraph, strong, table } from '../markdown/nodes.ts';
import { printMarkdown } from '../markdown/print.ts';
import { counted } from '../words.ts';
import type { OptionsReport } from './report.ts';
import { percent, quantity, share, type Words, wordsFor } from './words.ts';

export interface OptionsLook {
  /** Candidates listed at most. */
  readonly most: number;
  /** Link to the drawing of the cost over the count of cavities, where one was written. */
  readonly figure?: string;
}

/** The options of a part as GitHub-flavoured Markdown: what was chosen, what else there is, and why each other one lost. */
export function optionsMarkdown(report: OptionsReport, look: OptionsLook): string {
  const { options } = report;
  const words = wordsFor(report.castings !== undefined);
  return printMarkdown({
    type: 'root',
    children: [
      ...opening(report),
      ...(options === undefined ? [paragraph(words.say('The plant has no machine of the kind that this part needs.'))] : body(options, look, words)),
      ...variants(report.variants, words),
    ],
  });
}

function opening({ part, castings, alloy, plant, standing, tool }: OptionsReport): RootContent[] {
  const named = [part.name, part.number, part.revision === undefined ? undefined : `revision ${part.revision}`].filter((word) => word !== undefined);
  return [
    heading(1, `Options: ${named.join(', ')}`),
    { type: 'blockquote', children: [paragraph(strong(standing))] },
    list([
      ...(castings === undefined ? [] : [item([`Castings of a shot: ${castings}, made together as one set; costs and rates are those of a set`])]),
      item([`Alloy: ${alloy}`]),
      item([`Plant: ${plant.name}${plant.invented ? ' (invented)' : ''}`]),
      item(['Read from ', code(part.file), `, worked out by ${tool.name} ${tool.version}`]),
    ]),
  ];
}

function body(options: Options, look: OptionsLook, words: Words): RootContent[] {
  return [
    ...(options.fits ? passing(options, look, words) : misses(options.misses, words)),
    ...countsTable(options, look),
    ...(options.fits ? machinesTable(options, words) : []),
    ...stoppedTable(options, words),
  ];
}

function passing(options: Options, { most }: OptionsLook, { say, ofParts, nameOf, pins }: Words): RootContent[] {
  const { candidates, tried, passing: fit, byCost, weights, currency, pricesOf, loweredVelocity } = options;
  const planned = candidates.find((one) => one.planned);
  const rule = byCost
    ? `Ranked by the cost of a good part. A broken warning adds ${percent(weights.warning)} to it, or ${percent(weights.miss)} of what it is missed by where that is more; costs within ${percent(weights.alike)} are the same, and of those the candidate with the most in reserve is planned.`
    : 'The plant gives no prices or rates, so the count of cavities is ranked by the yearly volume and machines by their size.';
  const money = currency === undefined ? '' : ` Money in ${currency}${pricesOf === undefined ? '' : `, prices of ${pricesOf}`}.`;
  return [
    heading(2, 'The best candidates'),
    paragraph(
      say(
        `${counted(tried, 'combination')} of cavities, machine and plunger tried, each worked out as a plan of its own and held against the same limits; ${fit} pass every limit of an error. ${rule}${money}`,
      ),
    ),
    ...(planned === undefined
      ? []
      : [paragraph(strong('Planned:'), ` ${nameOf(planned)}`, planned.cost === undefined ? '.' : say(`, ${formatNumber(planned.cost)} a good part.`))]),
    table(
      [
        '',
        ...ofParts('Cavities'),
        'Machine',
        'Plunger',
        say('Cost of a good part'),
        'Against the plan',
        'Cycle',
        say('Good parts'),
        'Locking force used',
        'Sleeve fill',
        'Least reserve',
        'Warnings broken',
      ],
      shown(candidates, most).map(([place, one]) => [
        [one.planned ? `${place} (planned)` : String(place)],
        ...ofParts([String(one.cavities)]),
        [one.machine],
        [quantity(one.plunger, 'mm')],
        [one.cost === undefined ? '–' : formatNumber(one.cost)],
        [one.planned ? '–' : share(one.dearer)],
        [quantity(one.cycle, 's')],
        [quantity(one.goodParts, '1/h')],
        [quantity(one.clampUse, '%')],
        [quantity(one.sleeveFill, '%')],
        [quantity(one.margin, '%')],
        [one.warnings.length === 0 ? 'none' : one.warnings.map(({ title }) => title).join('; ')],
      ]),
    ),
    ...(candidates.length > most ? [paragraph(`${counted(candidates.length - most, 'further candidate')} left out; `, code('--most'), ' shows more.')] : []),
    paragraph(say('To see the plan of a candidate, pin it: '), code(pins), '.'),
    ...(loweredVelocity === undefined
      ? []
      : [
          paragraph(
            `The planned machine does not drive the usual velocity at the gates, so they are larger, for ${quantity(loweredVelocity, 'm/s')}. All candidates are compared with these gates; the plan of a pinned one has gates of its own, and its figures differ a little.`,
          ),
        ]),
  ];
}

/** The first ones with their places, and the planned one wherever it stands. */
function shown(candidates: readonly Candidate[], most: number): (readonly [number, Candidate])[] {
  return candidates.map((one, i) => [i + 1, one] as const).filter(([place, one]) => place <= most || one.planned);
}

function misses(list: readonly NearMiss[], { say, nameOf }: Words): RootContent[] {
  return [
    heading(2, 'Nothing fits'),
    paragraph(
      say(
        'No combination of cavities, machine and plunger of this plant passes every limit. The nearest misses, by how far their limits are missed together, and what would let each fit:',
      ),
    ),
    table(
      ['Candidate', 'Missed by', 'What stands in the way', 'What would let it fit'],
      list.map(({ candidate, distance, broken }) => [
        [nameOf(candidate)],
        [share(distance)],
        [broken.map(({ message }) => message).join('; ')],
        [broken.map(({ fix }) => fix).join(' ')],
      ]),
    ),
  ];
}

function countsTable({ counts, byCost }: Options, { figure }: OptionsLook): RootContent[] {
  if (counts.length < 2 && figure === undefined) return [];
  const drawing: RootContent[] =
    figure === undefined ? [] : [{ type: 'paragraph', children: [{ type: 'image', url: figure, alt: 'Cost of a good part over the number of cavities' }] }];
  return [
    heading(2, 'Counts of cavities'),
    ...drawing,
    table(
      ['Cavities', 'Best machine', 'Plunger', ...(byCost ? ['Cost of a good part', 'Against the plan'] : []), 'Why it lost'],
      counts.map((one) => bestRow(one, byCost)),
    ),
  ];
}

function machinesTable({ machines, byCost }: Options, { say, ofParts }: Words): RootContent[] {
  return [
    heading(2, say('Machines for the count of the plan')),
    table(
      ['Machine', ...ofParts('Cavities'), 'Plunger', ...(byCost ? [say('Cost of a good part'), 'Against the plan'] : []), 'Why it lost'],
      machines.map(({ name, best, lost }) => [
        [name],
        ...ofParts([best === undefined ? '–' : String(best.cavities)]),
        ...bestCells(best, byCost),
        [lost === '' ? 'planned' : say(lost)],
      ]),
    ),
  ];
}

function bestRow({ name, best, lost }: Best, byCost: boolean): Inline[][] {
  return [[name], [best?.machine ?? '–'], ...bestCells(best, byCost), [lost === '' ? 'planned' : lost]];
}

function bestCells(best: Candidate | undefined, byCost: boolean): Inline[][] {
  const cost = best?.cost === undefined ? '–' : formatNumber(best.cost);
  return [[quantity(best?.plunger, 'mm')], ...(byCost ? [[cost], [best?.planned === true ? '–' : share(best?.dearer)]] : [])];
}

function stoppedTable({ stopped }: Options, { nameOf }: Words): RootContent[] {
  if (stopped.length === 0) return [];
  return [
    heading(2, 'What stopped the others'),
    table(
      ['Rule', 'Stopped', 'The one that came nearest', 'With these numbers'],
      stopped.map(({ reason, count, example }: Stopped) => [[code(reason.id), `: ${reason.title}`], [String(count)], [nameOf(example)], [reason.message]]),
    ),
  ];
}

function variants(list: readonly Variant[], { say, ofParts }: Words): RootContent[] {
  if (list.length === 0) return [];
  const plants = new Set(list.map(({ plant }) => plant)).size > 1;
  const money = new Set(list.flatMap(({ currency }) => currency ?? [])).size > 1;
  return [
    heading(2, plants ? 'Other alloys and plants' : 'Other alloys'),
    paragraph(
      'Each line is a plan of its own; the part description stays as it is but for the alloy, so walls, draft and tolerances are those that were drawn for the first one. A mass on the drawing follows the density.',
    ),
    table(
      [
        'Alloy',
        ...(plants ? ['Plant'] : []),
        'Castable',
        'Kind of machine',
        'Machine',
        ...ofParts('Cavities'),
        'Plunger',
        'Mass',
        'Cycle',
        say('Good parts'),
        say('Cost of a good part'),
        'Errors',
        'Warnings',
        'First error',
      ],
      list.map((one) => [
        [one.alloy],
        ...(plants ? [[one.plant]] : []),
        [one.errors.length === 0 ? 'yes' : 'no'],
        [one.kind ?? '–'],
        [one.machine ?? '–'],
        ...ofParts([one.cavities === undefined ? '–' : String(one.cavities)]),
        [quantity(one.plunger, 'mm')],
        [quantity(one.mass, 'kg')],
        [quantity(one.cycle, 's')],
        [quantity(one.goodParts, '1/h')],
        [one.cost === undefined ? '–' : `${formatNumber(one.cost)}${money ? ` ${one.currency ?? ''}` : ''}`],
        [one.errors.length === 0 ? 'none' : one.errors.join(', ')],
        [String(one.warnings)],
        [one.lost === '' ? '–' : one.lost],
      ]),
    ),
    ...(money ? [paragraph('The plants count in different money; their costs cannot be compared.')] : []),
  ];
}
