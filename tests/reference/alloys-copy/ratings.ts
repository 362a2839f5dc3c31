/*
 * Ratings, 1 best to 5 worst. Read in reprints of the NADCA tables: the first four of Zamak 3, Zamak 5, ZA-8 and ZA-12,
 * the first five of 360, 380, 384 and 413: the digits before the bar. All others are from memory.
 */
const ZINC = 'hot_cracking pressure_tightness casting_ease part_complexity dimensional_accuracy dimensional_stability machining polishing electroplating';
const ALUMINIUM = 'hot_cracking pressure_tightness die_filling anti_soldering corrosion machining polishing electroplating';
const MAGNESIUM = 'resistance_to_cold_defects pressure_tightness hot_cracking die_filling anti_soldering corrosion machining electroplating';
const COPPER = 'hot_cracking pressure_tightness die_filling anti_soldering as_cast_surface corrosion machining polishing electroplating';
/** Names of the ratings, and alloys with one digit for each name. */
export const RATINGS: readonly (readonly [names: string, rows: string])[] = [
  [ZINC, 'Zamak 2=131124121, Zamak 3=1111|12111, Zamak 5=2211|12111, Zamak 7=111111111, ZA-8=2322|22221, ZA-12=3333|33332, ZA-27=443344443'],
  [ALUMINIUM, '360=12322|332, A360=12322332, 380=22214|331, A380=22214331, 383=12123231, 384=22125|332, B390=44123553'],
  [ALUMINIUM, '413=11112|453, A413=11112453, C443=33442542, 518=55551115'],
  [MAGNESIUM, 'AZ91D=22211112, AM60B=31221112, AM50A=31221112, AS41B=41121212, AE42=4122211'],
  [COPPER, 'C85700=232234131, C85800=233244131, C86500=322232433, C87800=222112343, C99700=232332233'],
];
