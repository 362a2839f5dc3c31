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
  lookQuietly(ledger, 'wall/faq-minimum', 'least', { family, size: 'large' }, 'wall.least-large', { title: 'Least wall of large castings' });
  ledger.attempt('wall.usual-greatest', 'Greatest wall', () => {
    ledger.lookIfAny('wall/greatest', 'usual', { family }, 'wall.usual-greatest');
    lookQuietly(ledger, 'wall/greatest', 'absolute', { family }, 'wall.absolute-greatest', { title: 'Thickest section' });
  });
}

/** Half of the surface where it is given; else the projected area, which is smaller and so asks for less. */
function fileSideArea(ledger: Ledger): Traced<'cm2'> {
  const surface = ledger.maybe('part.surface-area');
  if (surface !== undefined) return ledger.apply(sideArea, { surface });
  const note = 'no surface area is given, so the projected area; side walls would add to it';
  return ledger.put(ledger.value('part.projected-area').as('wall.side-area', note));
}
