import { Traced } from '../../../kernel/traced.ts';
import { lineConductance, spreadShapeFactor } from '../../../physics/cooling/lines.ts';
import { laidPitch } from '../../../physics/cooling/pitch.ts';
import { halfShare, laidLength, lengthNeeded, linesLaid, linesNeeded, linesWorth, slideShare, totalConductance } from '../../../physics/cooling/plan.ts';
import { cycleLeast } from '../../../physics/cooling/running.ts';
import { heatShare, rateShare } from '../../../physics/heat-plan.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { sides } from './flow.ts';

export const HALVES = ['ejector half', 'cover half'] as const;

/** Heat that the lines of the whole die carry in the sense of its duty: what the balance leaves them, or what it lacks. */
function dutyRate(ledger: Ledger): Traced<'kW'> {
  return ledger.text('heat.duty') === 'heat' ? ledger.value('heat.missing') : ledger.value('heat.lines-rate');
}

/** Shares of halves and slides in the heat of the lines, and their heat rates. */
export function fileShares(ledger: Ledger): void {
  const die_face = ledger.value('heat.face-area');
  const least = ledger.look('cooling/parts', 'slide_least', {}, 'cooling.slide-share-least');
  const own: Traced<'%'>[] = [];
  for (const item of slides(ledger)) {
    const share = ledger.apply(
      slideShare,
      {
        core_surface: ledger.value('slide.core-surface', item),
        face_area: ledger.value('slide.face-area', item),
        cavities: ledger.value('machine.cavities'),
        die_face,
      },
      { item },
    );
    if (share.value >= least.value) own.push(ledger.put(share.as(`cooling.share[${item}]`)));
  }
  const all = own.length === 0 ? undefined : ledger.put(sumOf('cooling.slides-share', 'Slides with lines of their own', '%', own));
  const of = [ledger.look('cooling/parts', 'ejector', {}, 'cooling.ejector-share'), ledger.look('cooling/parts', 'cover', {}, 'cooling.cover-share')] as const;
  HALVES.forEach((item, index) => {
    ledger.apply(halfShare, { share: of[index] as Traced<'%'>, ...(all === undefined ? {} : { slides: all }) }, { id: 'cooling.share', item });
  });
  const rate = dutyRate(ledger);
  for (const item of cooledParts(ledger)) ledger.apply(rateShare, { rate, share: ledger.value('cooling.share', item) }, { id: 'cooling.rate', item });
}

/** Slides that were worked out, by their item. */
export function slides(ledger: Ledger): readonly string[] {
  return ledger.items('slide.core-surface');
}

/** The parts of the die that have lines: both halves, and the slides whose share is worth it. */
export function cooledParts(ledger: Ledger): string[] {
  return [...HALVES, ...slides(ledger)].filter((item) => ledger.values.has(`cooling.share[${item}]`));
}

/** Length of line for each part, whole lines, and what of them fits. A slide has what it needs: its bores follow its shape. */
export function fileLines(ledger: Ledger): void {
  const per_length = ledger.value('cooling.heat-per-length');
  const each = ledger.value('cooling.line-length');
  const fit = ledger.value('cooling.lines-fit');
  for (const item of cooledParts(ledger)) {
    const needed = ledger.apply(lengthNeeded, { rate: ledger.value('cooling.rate', item), per_length }, { item });
    if (isHalf(item)) {
      ledger.apply(linesWorth, { needed, each }, { item });
      const row = ledger.apply(linesNeeded, { needed, each }, { item });
      const whole = fewest(ledger, item, row);
      const lines = ledger.apply(linesLaid, { needed: whole, fit }, { item });
      ledger.apply(laidLength, { lines, each }, { id: 'cooling.length-laid', item });
      fileAsLaid(ledger, item, lines);
    } else ledger.put(needed.as(`cooling.length-laid[${item}]`, 'drilled or with bubblers, to follow the slide'));
  }
  ledger.put(ledger.value('cooling.half-pitch', 'ejector half').as('cooling.laid-pitch'));
  for (const item of cooledParts(ledger)) {
    const conductance = isHalf(item) ? ledger.value('cooling.laid-conductance', item) : ledger.value('cooling.line-conductance');
    const length = ledger.value('cooling.length-laid', item);
    ledger.apply(totalConductance, { each: conductance, each_length: each, length }, { id: 'cooling.part-conductance', item });
  }
  const conductances = cooledParts(ledger).map((item) => ledger.value('cooling.part-conductance', item));
  ledger.put(sumOf('cooling.conductance', 'Conductance of all lines', 'W/K', conductances));
  const laid = cooledParts(ledger).map((item) => ledger.value('cooling.length-laid', item));
  ledger.put(sumOf('cooling.length', 'Length of all lines', 'm', laid));
  const worth = HALVES.map((item) => ledger.value('cooling.lines-worth', item)).reduce((a, b) => (b.value < a.value ? b : a));
  ledger.put(worth.as('cooling.fewest-worth'));
}

/** Whole lines that take the heat when they are spread over the field, where each takes more than one of a full row; those of a row at most. */
function fewest(ledger: Ledger, item: string, row: Traced<'1'>): Traced<'1'> {
  const { warm, cold } = sides(ledger, ledger.value('cooling.coolant-least'));
  const [rate, pitch, field] = [ledger.value('cooling.rate', item), ledger.value('cooling.pitch'), ledger.value('cooling.field-across')];
  const line = { length: ledger.value('cooling.line-length').value, diameter: ledger.value('cooling.line-diameter').value };
  const [depth, film, conductivity] = [ledger.value('cooling.line-depth'), ledger.value('cooling.film'), ledger.value('cooling.steel-conductivity')];
  const enough = (lines: number): boolean => {
    const shape = spreadShapeFactor.compute({ ...line, depth: depth.value, pitch: Math.max(pitch.value, field.value / lines) });
    const each = lineConductance.compute({ ...line, film: film.value, shape, conductivity: conductivity.value });
    return lines * each * (warm.value - cold.value) >= 1000 * rate.value;
  };
  let lines = 1;
  while (lines < row.value && !enough(lines)) lines += 1;
  return ledger.put(
    Traced.choice(`cooling.lines-enough[${item}]`, lines, '1', {
      note: 'the fewest that take the heat of this half, spread over the field and with the coolant at its coldest',
      status: 'derived',
      parents: [row, rate, warm, cold, pitch, field, depth, film, conductivity],
    }),
  );
}

/**
 * Whole lines are mostly fewer than a full row. Spread over the field, each of them takes more than one of a row, so that the coolant must
 * run warmer than a row would need it.
 */
function fileAsLaid(ledger: Ledger, item: string, lines: Traced<'1'>): void {
  const length = ledger.value('cooling.line-length');
  const diameter = ledger.value('cooling.line-diameter');
  const pitch = ledger.apply(
    laidPitch,
    { pitch: ledger.value('cooling.pitch'), field: ledger.value('cooling.field-across'), lines },
    { id: 'cooling.half-pitch', item },
  );
  const shape = ledger.apply(
    spreadShapeFactor,
    { length, diameter, depth: ledger.value('cooling.line-depth'), pitch },
    { id: 'cooling.laid-shape-factor', item },
  );
  ledger.apply(
    lineConductance,
    { film: ledger.value('cooling.film'), diameter, length, shape, conductivity: ledger.value('cooling.steel-conductivity') },
    { id: 'cooling.laid-conductance', item },
  );
}

/** Shortest cycle that the lines laid hold, for each half and for the die: its slowest part. A die that must be heated has none. */
export function fileCycle(ledger: Ledger): void {
  if (ledger.text('heat.duty') === 'heat') return;
  const heat = ledger.apply(heatShare, { heat: ledger.value('heat.die'), share: ledger.value('heat.share-lines') }, { id: 'cooling.lines-heat' });
  const excess = ledger.maybe('cooling.surface-excess');
  const cycles = HALVES.map((item) => {
    const part = ledger.apply(heatShare, { heat, share: ledger.value('cooling.share', item) }, { id: 'cooling.part-heat', item });
    const conductance = ledger.value('cooling.part-conductance', item);
    return ledger.apply(
      cycleLeast,
      {
        heat: part,
        conductance,
        before: ledger.value('fill.die-temperature'),
        coolant: ledger.value('cooling.coolant-least'),
        elements: ledger.value('cycle.elements-time'),
        ...(excess === undefined ? {} : { excess }),
      },
      { id: 'cooling.cycle-by-part', item },
    );
  });
  const longest = cycles.reduce((a, b) => (b.value > a.value ? b : a));
  ledger.put(longest.as('cooling.cycle-least', 'the half whose lines are the shorter for their heat'));
}

function isHalf(item: string): boolean {
  return (HALVES as readonly string[]).includes(item);
}
