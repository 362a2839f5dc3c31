import type { Traced } from '../../../kernel/traced.ts';
import { sideArea, wallRatio } from '../../../physics/wall.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';

/** Walls of the part against what fills, what is usual and what stays sound. */
export function reviewWalls(ledger: Ledger): void {
  const { family } = ledger.alloy;
  const nominal = ledger.value('part.wall-nominal');
  const least = ledger.put((ledger.maybe('part.wall-least') ?? nominal).as('wall.thinnest'));
  const greatest = ledger.put((ledger.maybe('part.wall-greatest') ?? nominal).as('wall.thickest'));
  ledger.attempt('wall.ratio', 'Ratio of the walls', () => ledger.apply(wallRatio, { greatest, least }));
  const area = fileSideArea(ledger);
  const title = 'Wall by area';
  if (lookQuietly(ledger, 'wall/by-area', 'least', { family, area }, 'wall.least', { title }) !== undefined) {
    ledger.look('wall/by-area', 'normal', { family, area }, 'wall.normal');
  }
  lookQuietly(ledger, 'wall/faq-minimum', 'least', { family, size: 'small' }, 'wall.least-small', { title: 'Least wall of small castings' });
  lookQuietly(ledger, 'wall/faq-minimum', 'least', { family, size: 'large' }, 'wall.least-large', { title: 'Least wall of large castings' });
  ledger.attempt('wall.usual-greatest', 'Greatest wall', () => {
    ledger.lookIfAny('wall/greatest', 'usual', { family }, 'wall.usual-greatest');
    lookQuietly(ledger, 'wall/greatest', 'absolute', { family }, 'wall.absolute-greatest', { title: 'Thickest section' });
  });
}

/**
 * The table asks for one side of the wall, length by width. No single wall is larger than the part seen along the die
 * opening, nor than half of all its surface.
 */
function fileSideArea(ledger: Ledger): Traced<'cm2'> {
  const projected = ledger.value('part.projected-area');
  const surface = ledger.maybe('part.surface-area');
  if (surface === undefined) return ledger.put(projected.as('wall.side-area', 'the largest wall is taken as the part seen along the die opening'));
  return ledger.apply(sideArea, { projected, surface });
}
