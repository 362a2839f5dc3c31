import { Traced } from '../../../kernel/traced.ts';
import { openingStroke } from '../../../physics/die.ts';
import { field, sizeBySteel } from '../../../physics/die-block.ts';
import { steelAround } from '../../../physics/die-steel.ts';
import type { Ledger } from '../../ledger.ts';
import { arrange, type SlideSides } from '../die/arrange.ts';
import { greater } from '../die/face.ts';
import { AMID, BELOW, placedSlides, slideSides, workArrangement, workRooms } from '../die/slides.ts';
import { wayOf } from '../die/way.ts';

/** What the part asks of every die and machine: steel around the cavity, room for each slide, opening stroke. */
export function workPartLayout(ledger: Ledger): void {
  ledger.apply(openingStroke, { depth: ledger.value('part.depth') });
  const small = ledger.look('die/block', 'edge_least', {}, 'die.steel-small');
  const common = ledger.look('die/block', 'between', {}, 'die.steel-common');
  const growth = ledger.look('die/block', 'between_per_100cm2', {}, 'die.steel-growth');
  const steel = ledger.apply(steelAround, { area: ledger.value('part.projected-area'), small, common, growth });
  const cold = ledger.text('machine.chamber') === 'cold';
  if (cold) ledger.look('die/block', 'sprue_side', {}, 'die.feeder-allowance');
  else ledger.put(steel.as('die.feeder-allowance', 'hot chamber: the sprue takes the room of one steel width'));
  ledger.attempt('die.slide-room', 'Room for slides', () => workRooms(ledger));
}

/**
 * Cavities in rows and columns with steel and slides between them. As few slides as can be stand between cavities; of the
 * layouts alike in that, the one whose block is nearest to square. One in which slides leave the runner no way is none.
 */
export function workLayout(ledger: Ledger): void {
  const cavities = ledger.value('machine.cavities');
  const slides = placedSlides(ledger);
  const { set } = ledger.given;
  const { best, closed } = bestLayout(ledger, cavities.value, slideSides(slides));
  const [columns, rows] = best;
  const reached =
    closed.length === 0 ? '' : `; not ${closed.join(' or ')}, where slides close both sides of the lower castings and the runner has no way past them`;
  const note =
    set !== undefined
      ? 'the castings of the set are laid out by themselves'
      : slides.length === 0
        ? 'block as near square as the count allows'
        : `fewest slides between cavities, then block as near square as the count allows${reached}`;
  const columnCount = ledger.put(Traced.choice('die.columns', columns, '1', { note, status: 'practice', parents: [cavities] }));
  const rowCount = ledger.put(Traced.choice('die.rows', rows, '1', { note, status: 'practice', parents: [cavities] }));
  // One sprue amid the cavities where their number leaves it a gap; else the metal enters below them.
  const gap = set === undefined ? columnCount.value % 2 === 0 || rowCount.value % 2 === 0 : set.layout.amid;
  ledger.setText('die.feeder', ledger.text('machine.chamber') === 'hot' && gap ? AMID : BELOW);
  workArrangement(ledger, slides);
  ledger.setText(
    'die.other-layouts',
    closed.length === 0 ? 'however the castings are turned' : `and ${closed.join(' or ')} leaves the runner no way past the slides`,
  );
  const steel = ledger.value('die.steel-around');
  const across = { cavities: columnCount, side: ledger.value('part.side-a'), steel, room: ledger.value('die.gap-width') };
  const width = ledger.apply(field, across, { id: 'die.field-width' });
  const upright = { cavities: rowCount, side: ledger.value('part.side-b'), steel, room: ledger.value('die.gap-height') };
  const height = ledger.apply(field, upright, { id: 'die.field-height' });
  ledger.put(greater('die.field-longer', 'the longer extent of the cavities', width, height));
  ledger.apply(sizeBySteel, { field: width, one: steel, other: steel }, { id: 'die.block-width' });
}

interface Layouts {
  readonly best: readonly [number, number];
  /** Those that the runner does not reach and that would else be better, in words. */
  readonly closed: readonly string[];
}

/** Columns and rows with the fewest slides between cavities, then the smallest longer side of the die; more columns win a tie. */
function bestLayout(ledger: Ledger, count: number, slides: SlideSides): Layouts {
  const [a, b] = [ledger.value('part.side-a').value, ledger.value('part.side-b').value];
  const [steel, extra] = [ledger.value('die.steel-around').value, ledger.value('die.feeder-allowance').value];
  const cold = ledger.text('machine.chamber') === 'cold';
  let best: readonly [number, number] = [count, 1];
  let [fewest, size] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const closed: { readonly between: number; readonly words: string }[] = [];
  for (let rows = 1; rows <= count; rows += 1) {
    if (count % rows !== 0) continue;
    const columns = count / rows;
    const placed = arrange(columns, rows, slides);
    const { between, gaps, edges } = placed;
    if (cold && wayOf(placed, columns, rows, slides).way === 'closed') {
      closed.push({ between, words: `${columns} by ${rows}` });
      continue;
    }
    const width = columns * a + (columns + 1) * steel + gaps.columns + edges.left + edges.right;
    const height = rows * b + (rows + 1) * steel + extra + gaps.rows + edges.bottom + edges.top;
    const longer = Math.max(width, height);
    if (between > fewest || (between === fewest && longer >= size - 1e-9)) continue;
    best = [columns, rows];
    [fewest, size] = [between, longer];
  }
  return { best, closed: closed.filter(({ between }) => between < fewest).map(({ words }) => words) };
}
