import { leastFilletRadius } from '../../../physics/fillet.ts';
import { ribTipRadius } from '../../../physics/rib.ts';
import type { RibSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';

/** Ribs, fillets, inserts and machined faces: the bounds that each is held against. */
export function reviewDetails(ledger: Ledger): void {
  const { ribs, fillets, inserts, machining } = ledger.part;
  if (ribs.length > 0) {
    ledger.look('rib/size', 'root_least', {}, 'rib.root-ratio-least');
    ledger.look('rib/size', 'root_greatest', {}, 'rib.root-ratio-greatest');
    ledger.look('rib/size', 'height_greatest', {}, 'rib.height-ratio');
    for (const rib of ribs) reviewRib(ledger, rib);
  }
  if (fillets.length > 0) {
    ledger.look('fillet/least-radius', 'absolute', {}, 'fillet.absolute-least');
    for (const fillet of fillets) {
      const walls = { wall_a: ledger.value('fillet.wall-a', fillet.id), wall_b: ledger.value('fillet.wall-b', fillet.id) };
      ledger.attempt(`fillet.least-radius[${fillet.id}]`, `Fillet ${fillet.id}`, () => ledger.apply(leastFilletRadius, walls, { item: fillet.id }));
    }
  }
  if (inserts.length > 0) reviewInserts(ledger);
  if (machining.length > 0) {
    ledger.look('machining/stock', 'least', {}, 'machining.least');
    ledger.look('machining/stock', 'usual_greatest', {}, 'machining.usual-greatest');
    ledger.look('machining/stock', 'opens_porosity', {}, 'machining.opens-porosity');
  }
}

/** The tip radius goes with the draft that the drawing has, else with the least draft of that height. */
function reviewRib(ledger: Ledger, rib: RibSpec): void {
  const item = rib.id;
  const height = ledger.value('rib.height', item);
  const title = `Rib ${item}`;
  const least = lookQuietly(ledger, 'rib/draft', 'angle', { height }, 'rib.least-draft', { title, item });
  const asked = ledger.maybe('rib.draft', item);
  const used = asked ?? least;
  if (used === undefined) return;
  const draft = ledger.put(used.as(`rib.draft-used[${item}]`, asked === undefined ? 'no draft is given, so the least of that height' : 'as drawn'));
  ledger.attempt(`rib.tip-radius-greatest[${item}]`, title, () =>
    ledger.apply(ribTipRadius, { root_width: ledger.value('rib.root-width', item), height, draft }, { id: 'rib.tip-radius-greatest', item }),
  );
}

function reviewInserts(ledger: Ledger): void {
  const { family } = ledger.alloy;
  lookQuietly(ledger, 'insert/cover', 'least', { family }, 'insert.least-cover', { title: 'Metal around inserts' });
  ledger.attempt('insert.advised-cover', 'Metal around inserts', () => ledger.lookIfAny('insert/cover', 'advised', { family }, 'insert.advised-cover'));
  lookQuietly(ledger, 'insert/embedment', 'ratio', { family }, 'insert.length-ratio', { title: 'Embedded length of inserts' });
  ledger.look('insert/preheat', 'least', {}, 'insert.preheat-least');
  ledger.look('insert/preheat', 'greatest', {}, 'insert.preheat-greatest');
}
