import { cavitiesDemand } from '../../../physics/cavities.ts';
import { hoursNeeded } from '../../../physics/clamp-use.ts';
import { cycleGain } from '../../../physics/cycle-check.ts';
import {
  cycleTime,
  cycleWait,
  goodParts,
  grossParts,
  longestCycle,
  rateRatio,
  shotsPerHour,
  shotsYear,
  startUpShare,
  startUpShots,
} from '../../../physics/cycle-rate.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';
import type { Step } from '../../step.ts';
import { show } from './show.ts';

/** A run a month, and a stop a shift in which the die cools: what a foundry does until it says otherwise. */
const RUNS = 12;
const STOP_INTERVAL = 8;

/** The cycle time with what the cooling lines allow, and the shots, castings, hours and start-up scrap that follow from it. */
export const cycleRateStep: Step = {
  id: 'cycle-rate',
  title: 'Shots and hours',
  work: (ledger) => {
    if (!ledger.texts.has('machine.chamber')) return;
    ledger.attempt('cycle.time', 'Cycle time', () => time(ledger));
    ledger.attempt('cycle.good-parts', 'Castings an hour', () => parts(ledger));
    ledger.attempt('cycle.rate-ratio', 'Rate against the one assumed', () =>
      ledger.apply(rateRatio, { shots: ledger.value('cycle.shots'), assumed: ledger.value('machine.rate') }),
    );
    ledger.attempt('cycle.hours', 'Machine hours a year', () => hours(ledger));
    ledger.attempt('cycle.start-up-share', 'Start-up loss', () => startUp(ledger));
  },
  show,
};

/** The elements, or the wait for the die where its lines need longer. */
function time(ledger: Ledger): void {
  const elements = ledger.value('cycle.elements-time');
  const cooling = ledger.maybe('cooling.cycle-least');
  const cycle = ledger.apply(cycleTime, { elements, ...(cooling === undefined ? {} : { cooling }) });
  const wait = ledger.apply(cycleWait, { time: cycle, elements });
  ledger.setText('cycle.limited-by', cycle.kind === 'pinned' ? 'pin' : wait.value > 0 ? 'cooling lines' : ledger.text('cycle.governs'));
  ledger.apply(shotsPerHour, { time: cycle });
  ledger.attempt('cycle.gain', 'What a second is worth', () => ledger.apply(cycleGain, { time: cycle }));
}

function parts(ledger: Ledger): void {
  const gross = ledger.apply(grossParts, { shots: ledger.value('cycle.shots'), cavities: ledger.value('machine.cavities') });
  ledger.apply(goodParts, { gross, reject_share: ledger.value('cavities.reject-share') });
}

/** The hours with the planned cycle, and the cycle or the cavities that make the volume. */
function hours(ledger: Ledger): void {
  const shares = { use_share: ledger.value('cavities.use-share'), reject_share: ledger.value('cavities.reject-share') };
  const year = ledger.value('production.per-year');
  const cavities = ledger.value('machine.cavities');
  const shots = ledger.value('cycle.shots');
  ledger.apply(hoursNeeded, { parts: year, cavities, rate: shots, ...shares }, { id: 'cycle.hours' });
  ledger.setText('machine.hours-from', 'planned cycle');
  ledger.apply(shotsYear, { parts: year, cavities, reject_share: shares.reject_share });
  const available = ledger.value('production.hours-per-year');
  ledger.apply(longestCycle, { hours: available, cavities, parts: year, ...shares });
  ledger.apply(cavitiesDemand, { parts_per_year: year, hours_per_year: available, shots_per_hour: shots, ...shares }, { id: 'cycle.cavities-needed' });
}

/** Scrap that warms the die. It is part of the reject share, which holds start-up and running rejects together. */
function startUp(ledger: Ledger): void {
  const chamber = { chamber: ledger.text('machine.chamber') };
  const shots = (name: 'start' | 'stop', remark: string) =>
    assumeMiddle(
      ledger,
      `cycle.${name}-shots`,
      ledger.look('cycle/start-up', `${name}_least`, chamber, `cycle.${name}-shots-least`),
      ledger.look('cycle/start-up', `${name}_greatest`, chamber, `cycle.${name}-shots-greatest`),
      remark,
    );
  const warming = ledger.apply(startUpShots, {
    runs: ledger.assume('cycle.runs', RUNS, '1', { note: 'a run a month, until the plant says how it makes its lots', status: 'practice' }),
    after_start: shots('start', 'from a preheated die to the first good casting'),
    hours: ledger.value('cycle.hours'),
    interval: ledger.assume('cycle.stop-interval', STOP_INTERVAL, 'h', { note: 'one stop a shift that lets the die cool', status: 'practice' }),
    after_stop: shots('stop', 'after a stop of some minutes or more'),
  });
  ledger.apply(startUpShare, { warming, shots: ledger.value('cycle.shots-year') });
}
