import { Traced } from '../../../kernel/traced.ts';
import { dwell, wallForTime } from '../../../physics/dwell.ts';
import { openingTemperature } from '../../../physics/solidification.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { type Materials, planned } from './materials.ts';

const SECTIONS = ['cooling.ejection-time', 'cooling.thick-time', 'cooling.runner-time', 'cooling.biscuit-time', 'cooling.overflow-time'] as const;

/** The slowest section sets the time; the wall, which has been ready since, is colder by then than it had to be. */
export function workDwell(ledger: Ledger, materials: Materials): void {
  ledger.attempt('cooling.dwell', 'Time in the die', () => {
    const times = SECTIONS.map((id) => [id, ledger.maybe(id) ?? absent(ledger, id)] as const);
    const [casting, thick, runner, biscuit, overflow] = times.map(([, time]) => time) as [Traced<'s'>, Traced<'s'>, Traced<'s'>, Traced<'s'>, Traced<'s'>];
    const hold = ledger.put((ledger.maybe('squeeze.hold') ?? ledger.value('intensification.hold')).as('cooling.hold'));
    ledger.apply(dwell, { casting, thick, runner, biscuit, overflow, hold });
    // All but the slowest section: what the die could open after if that one were cooled better.
    const slowest = times.reduce((a, b) => (b[1].value > a[1].value ? b : a));
    const rest = times.filter((entry) => entry !== slowest).reduce((a, b) => (b[1].value > a[1].value ? b : a));
    const rested = ledger.put(rest[1].as('cooling.rest-time', 'the slowest section but one'));
    leaner(ledger, slowest[0], rested);
  });
  ledger.attempt('solidification.governs', 'What sets the time in the die', () => {
    choose(ledger, 'solidification.governs');
    const governs = ledger.text('solidification.governs');
    ledger.setText('cooling.slowest', governs === 'runner' ? ledger.text('cooling.runner-run') : governs);
  });
  ledger.attempt('cooling.opening-temperature', 'Temperature when the die opens', () =>
    opened(ledger, materials, ledger.value('part.wall-nominal'), 'cooling.opening-temperature'),
  );
  const thick = ledger.explains ? ledger.maybe('part.wall-greatest') : undefined;
  if (thick !== undefined)
    ledger.attempt('cooling.thick-opening-temperature', 'Temperature of the thickest wall when the die opens', () =>
      opened(ledger, materials, thick, 'cooling.thick-opening-temperature'),
    );
  ledger.attempt('cooling.retention-least', 'Time in the die by handbooks', () => {
    const axes = { family: ledger.alloy.family, wall: ledger.value('part.wall-nominal') };
    ledger.look('cooling/retention', 'least', axes, 'cooling.retention-least');
    ledger.look('cooling/retention', 'greatest', axes, 'cooling.retention-greatest');
  });
}

/** Mean of a wall when the die opens. */
function opened(ledger: Ledger, materials: Materials, wall: Traced<'mm'>, id: 'cooling.opening-temperature' | 'cooling.thick-opening-temperature'): void {
  const { metal, steel, pressed, gap } = materials;
  ledger.apply(
    openingTemperature,
    { wall, ...metal, ...steel, die_temperature: planned(ledger), interface: pressed, gap, time: ledger.value('cooling.dwell') },
    { id },
  );
}

/** A section that is not there freezes at once. @throws Missing when the casting itself is not known. */
function absent(ledger: Ledger, id: (typeof SECTIONS)[number]): Traced<'s'> {
  if (id === 'cooling.ejection-time') return ledger.value(id);
  return ledger.put(Traced.choice(id, 0, 's', { note: 'no such section is known of this shot', status: 'derived' }));
}

/** How much leaner the slowest section would have to be to be ready with the rest. */
function leaner(ledger: Ledger, slowest: (typeof SECTIONS)[number], wanted: Traced<'s'>): void {
  if (slowest === 'cooling.thick-time') {
    const [wall, time] = [ledger.value('part.wall-greatest'), ledger.value('cooling.thick-time')];
    ledger.apply(wallForTime, { wall, time, wanted }, { id: 'cooling.thick-for-rest' });
  }
  if (slowest === 'cooling.runner-time') {
    const [wall, time] = [ledger.value('cooling.runner-wall'), ledger.value('cooling.runner-time')];
    ledger.apply(wallForTime, { wall, time, wanted }, { id: 'cooling.runner-for-rest' });
  }
}
