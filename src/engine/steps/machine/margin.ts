import type { Traced } from '../../../kernel/traced.ts';
import { reserveClamp, reserveFill, reserveSpeed, reserveStroke, reserveWindow } from '../../../physics/machine-margin.ts';
import type { Ledger } from '../../ledger.ts';
import type { Step } from '../../step.ts';

/** All that a machine gives, in %, with room for rounding; as the limits of `pq2` have it. */
const WHOLE = 100.0001;

/** What is left of each bound that the machine and its plunger set, and the least of it: of two machines that cost the same, the one with more is taken. */
export function workMargin(ledger: Ledger): void {
  const attempt = ledger.attempt.bind(ledger);
  const cold = ledger.texts.get('machine.chamber') === 'cold';
  const reserves = [
    attempt('machine.reserve-clamp', 'Locking force left', () => ledger.apply(reserveClamp, { use: ledger.value('clamp.use') })),
    attempt('machine.reserve-speed', 'Plunger speed left', () =>
      ledger.apply(reserveSpeed, { speed: ledger.value(cold ? 'sleeve.fast-speed' : 'pot.plunger-speed'), available: ledger.value('shot.speed-available') }),
    ),
    cold
      ? attempt('machine.reserve-fill', 'Sleeve fill inside its window', () =>
          ledger.apply(reserveFill, {
            fill: ledger.value('sleeve.fill'),
            least: ledger.value('sleeve.fill-least'),
            greatest: ledger.value('sleeve.fill-greatest'),
          }),
        )
      : attempt('machine.reserve-stroke', 'Plunger stroke left', () =>
          ledger.apply(reserveStroke, { needed: ledger.value('pot.stroke-needed'), stroke: ledger.value('machine.shot-stroke') }),
        ),
    ledger.values.has('pq2.corner-use')
      ? attempt('machine.reserve-window', 'Window of pressure and flow', () => ledger.apply(reserveWindow, { use: ledger.value('pq2.corner-use') }))
      : undefined,
  ].filter((one): one is Traced<'%'> => one !== undefined);
  if (reserves.length === 0) return;
  const least = reserves.reduce((a, b) => (b.value < a.value ? b : a));
  ledger.put(least.as('machine.margin', `the least of the reserves: ${least.id}`));
}

/** Shown with the machine. */
export const machineMarginStep: Step = { id: 'machine-margin', title: 'Reserves of the machine', work: workMargin, show: () => [] };

/** Whether the machine has the pressure for the gates as they are planned; one that is not judged has no gates to judge. */
export function drivesGates(trial: Ledger): boolean {
  return (trial.maybe('pq2.machine-use')?.value ?? 0) <= WHOLE;
}
