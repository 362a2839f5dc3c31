import { Traced } from '../../../kernel/traced.ts';
import { sprueArea, sprueFoot } from '../../../physics/runner-network.ts';
import { segmentVolume } from '../../../physics/runner-runs.ts';
import type { Ledger } from '../../ledger.ts';

/** The run of a hot chamber from nozzle to parting plane. */
export const SPRUE = 'sprue';

/**
 * Files the sprue of a hot chamber, from the nozzle through the cover half to the run named `below`: areas, length, volume,
 * and what its foot covers in the parting plane. A cold chamber has a biscuit there, which is counted by itself.
 */
export function fileSprue(ledger: Ledger, below: string): readonly string[] {
  if (ledger.text('machine.chamber') !== 'hot') return [];
  const area = ledger.value('runner.segment-area', below);
  const ratio = ledger.look('pot/nozzle', 'area_ratio', {}, 'pot.nozzle-ratio');
  const start_area = ledger.apply(sprueArea, { area, ratio }, { id: 'runner.segment-area', item: SPRUE });
  const end_area = ledger.put(area.as(`runner.segment-end[${SPRUE}]`, 'the sprue ends with the area of what it feeds'));
  const count = ledger.put(Traced.choice(`runner.segment-count[${SPRUE}]`, 1, '1', { note: 'one for the shot', status: 'derived' }));
  const length = ledger.put(
    ledger.value('die.steel-around').as(`runner.segment-length[${SPRUE}]`, 'from nozzle to parting plane about as much steel as beside the cavities'),
  );
  ledger.setText('runner.segment-feeds', below, { item: SPRUE });
  ledger.apply(segmentVolume, { count, start_area, end_area, length }, { item: SPRUE });
  const share = ledger.look('pot/nozzle', 'foot_ratio', {}, 'runner.sprue-foot-ratio');
  ledger.apply(sprueFoot, { area: start_area, share }, { id: 'runner.segment-projected', item: SPRUE });
  return [SPRUE];
}
