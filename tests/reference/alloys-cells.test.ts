import { describe, expect, it } from 'vitest';
import type { Status } from '../../src/kernel/status.ts';
import { EACH, type Figure, of, type Property, UNIT, value } from './alloys.ts';

/*
 * Second copy. Columns: density, solidus, liquidus, specific heat solid and liquid, latent heat, conductivity, expansion,
 * % IACS | tensile, yield, elongation, HB, shear, fatigue, modulus | casting temperature, die shrink. A mark behind a
 * figure is its status: d derived, p common practice without source, m from memory; none: read in a source.
 * Sources: zinc and ZA: zinc industry data sheet for seven alloys (as reprinted), EN 12844 table (temperature), IZA.
 * Aluminium: NADCA Product Specification Standards Table A-3-2-12; gaps MatWeb and MakeItFrom; ADC12 measured by its
 * maker; 46000 an LM24 page after BS 1490:1988; 43500 data sheet after EN 1706:2020. Latent heat: DSC, Materials 2024,
 * 17(17), 4228. Liquid: SGTE functions (S. an Mey 1993), Mills 2002 for Mg. Magnesium: AZoM 8670, 9252, ASM data on
 * AM60, measured liquidus Djurdjevic 2013 Table 3. Copper: Copper Development Association C85800, AZoM 9044.
 */
const CELLS = `
Zamak 2 | 6.6 379 390 419 480d 130 104.7 27.8 25 | 359 283 7 100 317 59 85.5 | 415-435 0.4-0.7
Zamak 3 | 6.6 381 387 419 480d 110 113.0 27.4 27 | 283 221 10 82 214 48 85.5 | 415-435 0.4-0.7
Zamak 5 | 6.6 380 386 419 480d 120 108.9 27.4 26 | 328 269 7 91 262 57 85.5 | 415-435 0.4-0.7
Zamak 7 | 6.6 381 387 419 480d 110d 113.0 27.4 27 | 283 221 13 80 214 47 85.5 | 415-435d 0.6-0.7
ZA-8 | 6.3 375 404 435 - 110 114.7 23.3 27.7 | 374 290 6-10 95-110 275 103 85.5 | 415-430 0.7
ZA-12 | 6.0 377 432 448 - 120 116.1 24.2 28.3 | 400 317 4-7 95-115 296 117 83 | 470-530 0.75
ZA-27 | 5.0 376 484 534 - - 125.5 26.0 29.7 | 421 379 1-3 105-125 325 145 78 | 550-580 0.8
360 | 2.63 557 596 963 1177d 463d 113 21.0 30 | 303 170 2.5 75 190 140 71 | 635-705m 0.6p
A360 | 2.63 557 596 963 1177d 463d 110 21.0 30 | 317 170 3.5 75 180 120 71 | 635-705m 0.6p
380 | 2.74 540 595 963 1177d 451d 96.2 22.0 27 | 317 160 3.5 80 190 140 71 | 635-705m 0.6
A380 | 2.71 540 595 963 1177d 451d 96 21.8 27 | 324 160 3.5 80 190 140 71 | 635-705m 0.6
383 | 2.74 516 582 963 1177d 475d 96.2 21.1 23 | 310 150 3.5 75 - 145 71 | 615-700m 0.6p
384 | 2.82 516 582 963 1177d 484d 96.2 21.0 22 | 330 165 2.5 85 200 140 74 | 615-700m 0.6p
B390 | 2.71 510 650 880 1177d 640 130 18.0 27 | 317 250 <1 120 - 140 81.3 | 700-760m 0.6p
413 | 2.66 574 582 963 1177d 493d 121 20.4 31 | 300 140 2.5 80 170 130 71 | 635-705m 0.6p
A413 | 2.66 574 582 963 1177d 493d 120 21.4 31 | 290 130 3.5 80 170 130 73 | 635-705m 0.6p
C443 | 2.69 574 632 963 1177d 412d 140 22.0 37 | 228 97 9.0 65 130 120 71 | 650-710m 0.6p
518 | 2.57 535 621 900 1177d 390 98 24.1 24 | 310 193 5.0 80 200 140 67 | 650-700m 0.6p
ADC12 | 2.68 515 582 911 1177d 479d 125 21.0 - | 228 154 1.4 89 - - - | 640-700m 0.6p
EN AC-46000 | 2.79 520 580 880m 1177d 463d 96.2 21 24 | 240m 140m <1m 80m 185 - 71 | 640-700m 0.6p
EN AC-46100 | 2.74d 525 570 911d 1177d 481d 120-130m 21.1d - | 240m 140m <1m 80m - - - | 640-700m 0.6p
EN AC-43400 | 2.6 557d 600 900 1177d 469d 140 22 32 | 270 160 1.1 80 - 110 72 | 640-700m 0.6p
EN AC-44300 | 2.66d 574d 582d 900 1177d 493d 130 21 34 | 240m 130m 1m 60m - - 72 | 640-700m 0.6p
EN AC-47100 | 2.66d 565 575 900 1177d 493d 120-150m 20.4d - | 240m 140m 1m 70m - - - | 640-700m 0.6p
EN AC-43500 | 2.66 550m 600 920 1177d 472d 140-170 21 33-43 | 200 120 5 65 - 80-90 74 | 680-700 0.6p
AZ91D | 1.81 470 598 1050 1320 373m 72.7 26.0 11-12.2 | 230 150 3 63 138 97 45 | 625-700 0.6p
AM60B | 1.8 540 615 1020 1320 373m 62 25.6 - | 220 130 6-8 65 - 90 45 | 650-695 0.6p
AM50A | 1.77 543m 620 1020 1320 373m 65 26.0 15.7 | 237 116 10-15 60 - 84 45 | 654-688 0.6p
AS41B | 1.776 570 615 1010 1320 413 68 26.1 - | 214 138 6-15 60 - 95 45 | 655-685 0.6p
AE42 | 1.79 590 626 1000m 1320 373m 68m 26.1m - | 237 130 11 60 - 80 45 | 680-710m 0.6p
AE44 | 1.82 572 620 1000m 1320 373m 85m 26m - | 245 142 10 62 - 80 45 | 690-730m 0.6p
C85700 | 8.41 913 941 377 - 170 83.9 20.7 22 | 344m 124m 15m 75 - - 87 | 960-1030m 0.8-1.2p
C85800 | 8.44 871 899 377 - 170 83.9 20 20 | 379 207 15 - 255 172 103.4 | 930-1000m 0.8-1.2p
C86500 | 8.33 862 880 377 - 165d 85.8 19.5 22 | 483 172 25 130 - - 103.4 | 920-980m 0.8-1.2p
C87800 | 8.3 821 917 410 - 260 28 18 6.7 | 586 345 25 - - - 110 | 950-1010m 0.8-1.2p
C87900 | 8.5 899m 926m 377m - 188d - - - | 483 241 25 - - - 103 | 960-1020m 0.8-1.2p
C99700 | 8.19 879m 902m 377m - - 28m 19.6m 3.0m | 450 185 15 125 - - 117 | 930-1000m 0.8-1.2p
`;
const COLUMNS = Object.keys(UNIT).slice(0, -1); // shrinkage in freezing is checked on its own
const MARKS: Record<string, Status> = { d: 'derived', p: 'practice', m: 'memory' };

/** `6-10m` as a figure: numbers and status. */
function cell(text: string): Partial<Figure> | undefined {
  if (text === '-') return undefined;
  const status = MARKS[text.slice(-1)] ?? 'source';
  const figure = text.replace(/[a-z]$/, '');
  if (figure.startsWith('<')) return { greatest: Number(figure.slice(1)), status };
  const [first, second] = figure.split('-').map(Number);
  if (second !== undefined) return { least: Number(first), greatest: second, status };
  return { value: Number(first), status };
}
function stored(figure: Property | undefined): Partial<Figure> | undefined {
  if (figure === undefined) return undefined;
  const { value: single, least, greatest, status } = figure;
  return {
    ...(single === undefined ? {} : { value: single }),
    ...(least === undefined ? {} : { least }),
    ...(greatest === undefined ? {} : { greatest }),
    status,
  };
}

describe('stored figures equal the published tables, typed a second time', () => {
  const rows = CELLS.trim()
    .split('\n')
    .map((line) => line.split('|').map((part) => part.trim()));
  it('covers all 37 alloys that have published figures', () => expect(rows).toHaveLength(37));
  it.each(rows.map(([id = '', ...groups]) => [id, groups.join(' ').split(' ')] as const))('%s', (id, cells) => {
    expect(cells).toHaveLength(COLUMNS.length);
    for (const [i, name] of COLUMNS.entries()) {
      expect(stored(of(id).properties[name]), `${name} of ${id}`).toEqual(cell(cells[i] ?? '-'));
    }
  });
  it('shrinkage in freezing: zamak data sheet for ZL2 to ZL8, MakeItFrom for ZA-12', () => {
    const freezing = { 'Zamak 2': 1.25, 'Zamak 3': 1.17, 'Zamak 5': 1.17, 'ZA-8': 1.1, 'ZA-12': 1.3 };
    const held = EACH.filter(([, a]) => a.properties.solidification_shrinkage !== undefined);
    expect(Object.fromEntries(held.map(([id]) => [id, value(id, 'solidification_shrinkage')]))).toEqual(freezing);
  });
  it.each([
    [
      'Zamak 3',
      { Al: [3.7, 4.3], Cu: [0, 0.1], Mg: [0.025, 0.05], Fe: [0, 0.05], Pb: [0, 0.005], Cd: [0, 0.005], Sn: [0, 0.002], Ni: [0, 0.02], Si: [0, 0.03] },
      'International Zinc Association, EN 12844',
    ],
    ['ZA-27', { Al: [25, 28], Cu: [2, 2.5], Mg: [0.01, 0.02], Fe: [0, 0.1], Pb: [0, 0.004], Cd: [0, 0.003], Sn: [0, 0.002] }, 'IMF zinc properties'],
    ['A380', { Si: [7.5, 9.5], Fe: [0, 1.3], Cu: [3, 4], Mn: [0, 0.5], Mg: [0, 0.1], Ni: [0, 0.5], Zn: [0, 3], Sn: [0, 0.35] }, 'NADCA Table A-3-1 (1994)'],
    [
      'EN AC-43500',
      {
        Si: [9, 11.5],
        Fe: [0, 0.25],
        Cu: [0, 0.05],
        Mn: [0.4, 0.8],
        Mg: [0.1, 0.6],
        Ni: [0, 0.05],
        Zn: [0, 0.07],
        Sn: [0, 0.05],
        Cr: [0, 0.05],
        Pb: [0, 0.05],
        Ti: [0, 0.2],
      },
      'data sheet after EN 1706:2020',
    ],
    ['AZ91D', { Al: [8.3, 9.7], Zn: [0.35, 1], Mn: [0.15, 0.5], Si: [0, 0.1], Cu: [0, 0.03], Ni: [0, 0.002], Fe: [0, 0.005] }, 'AZoM 8670 and 9219'],
    ['C99700', { Cu: [54, null], Zn: [19, 25], Mn: [11, 15], Ni: [4, 6], Al: [0.5, 3], Pb: [0, 2], Sn: [0, 1], Fe: [0, 1] }, 'AZoM 9044'],
  ])('composition of %s', (id, limits, _source) => expect(of(id).composition.limits).toEqual(limits));
});

/*
 * Ratings, 1 best to 5 worst. Read in reprints of the NADCA tables: the first four of Zamak 3, Zamak 5, ZA-8 and ZA-12,
 * the first five of 360, 380, 384 and 413. All others are from memory.
 */
const ZINC = 'hot_cracking pressure_tightness casting_ease part_complexity dimensional_accuracy dimensional_stability machining polishing electroplating';
const ALUMINIUM = 'hot_cracking pressure_tightness die_filling anti_soldering corrosion machining polishing electroplating';
const MAGNESIUM = 'resistance_to_cold_defects pressure_tightness hot_cracking die_filling anti_soldering corrosion machining electroplating';
const COPPER = 'hot_cracking pressure_tightness die_filling anti_soldering as_cast_surface corrosion machining polishing electroplating';
const RATINGS: [string, string][] = [
  [ZINC, 'Zamak 2=131124121, Zamak 3=111112111, Zamak 5=221112111, Zamak 7=111111111, ZA-8=232222221, ZA-12=333333332, ZA-27=443344443'],
  [ALUMINIUM, '360=12322332, A360=12322332, 380=22214331, A380=22214331, 383=12123231, 384=22125332, B390=44123553'],
  [ALUMINIUM, '413=11112453, A413=11112453, C443=33442542, 518=55551115'],
  [MAGNESIUM, 'AZ91D=22211112, AM60B=31221112, AM50A=31221112, AS41B=41121212, AE42=4122211'],
  [COPPER, 'C85700=232234131, C85800=233244131, C86500=322232433, C87800=222112343, C99700=232332233'],
];
const HEADED = RATINGS.flatMap(([columns, rows]) => rows.split(', ').map((row) => [...row.split('='), columns] as [string, string, string]));

describe('ratings, typed a second time', () => {
  it('28 alloys have any', () => {
    const rated = EACH.filter(([, alloy]) => alloy.ratings !== undefined).map(([id]) => id);
    expect(rated.sort()).toEqual(HEADED.map(([id]) => id).sort());
    expect(rated).toHaveLength(28);
  });
  it.each(HEADED)('%s %s', (id, digits, columns) => {
    const { sourced, ...remembered } = of(id).ratings ?? { sourced: undefined };
    const numbers = Object.entries({ ...remembered, ...sourced }).filter(([, rating]) => typeof rating === 'number');
    const expected = columns.split(' ').map((name, i): [string, number] => [name, Number(digits[i])]);
    expect(Object.fromEntries(numbers)).toEqual(Object.fromEntries(expected.filter(([, rating]) => !Number.isNaN(rating))));
  });
});
