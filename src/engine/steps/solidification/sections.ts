import type { Traced } from '../../../kernel/traced.ts';
import { barWall, betweenFaces, discWall, sprueShell } from '../../../physics/dwell.ts';
import { ejectionTime, solidificationTime } from '../../../physics/solidification.ts';
import { type Ledger, Missing } from '../../ledger.ts';
import { SPRUE } from '../runner-network/sprue.ts';
import { fileTip, type Materials, planned } from './materials.ts';

/** Freezes and cools each section of the shot that can set the time in the die. */
export function workSections(ledger: Ledger, materials: Materials): void {
  const attempt = ledger.attempt.bind(ledger);
  attempt('cooling.solidification-time', 'Nominal wall', () => nominal(ledger, materials));
  const thick = ledger.maybe('part.wall-greatest');
  if (thick !== undefined) attempt('cooling.thick-time', 'Thickest wall', () => solid(ledger, materials, thick, 'cooling.thick-time'));
  if (ledger.explains) attempt('cooling.gate-time', 'Gate', () => solid(ledger, materials, ledger.value('gate.thickness'), 'cooling.gate-time'));
  attempt('cooling.runner-time', 'Runner', () => runner(ledger, materials));
  const overflow = ledger.maybe('overflow.wall');
  if (overflow !== undefined) attempt('cooling.overflow-time', 'Overflows', () => solid(ledger, materials, overflow, 'cooling.overflow-time'));
  if (ledger.texts.get('machine.chamber') === 'cold') attempt('cooling.biscuit-time', 'Biscuit', () => biscuit(ledger, materials));
}

function nominal(ledger: Ledger, materials: Materials): void {
  const wall = ledger.value('part.wall-nominal');
  const common = {
    wall,
    ...materials.metal,
    ...materials.steel,
    die_temperature: planned(ledger),
    eject_temperature: ledger.value('cooling.eject-temperature'),
  };
  // One run of the solver gives both times, so the longer one comes first.
  ledger.apply(ejectionTime, { ...common, interface: materials.pressed, gap: materials.gap });
  solid(ledger, materials, wall, 'cooling.solidification-time');
  if (!ledger.explains) return;
  // The coefficient is the weakest figure here, so the time is worked out at both ends of it.
  for (const [end, name] of [
    ['greatest', 'fast'],
    ['least', 'slow'],
  ] as const) {
    ledger.apply(
      ejectionTime,
      { ...common, interface: ledger.value(`cooling.interface-${end}`), gap: ledger.value(`cooling.gap-${end}`) },
      { id: `cooling.ejection-time-${name}` },
    );
  }
}

type TimeId =
  | 'cooling.solidification-time'
  | 'cooling.gate-time'
  | 'cooling.thick-time'
  | 'cooling.overflow-time'
  | 'cooling.runner-time'
  | 'cooling.biscuit-steel-time';

function solid(ledger: Ledger, { metal, steel, pressed }: Materials, wall: Traced<'mm'>, id: TimeId): Traced<'s'> {
  return ledger.apply(solidificationTime, { wall, ...metal, ...steel, die_temperature: planned(ledger), interface: pressed }, { id });
}

/** The thickest run of the runner, cooled all round, or the sprue of a hot chamber, a shell cooled by its bush and its spreader. */
function runner(ledger: Ledger, materials: Materials): void {
  const run = thickestRun(ledger);
  const depth = ledger.value('runner.segment-depth', run);
  const section = { depth, width: ledger.value('runner.segment-width', run) };
  const foot = ledger.maybe('runner.segment-projected', SPRUE);
  if (foot === undefined) {
    file(ledger, materials, run, depth, ledger.apply(barWall, section, { id: 'cooling.runner-wall' }));
    return;
  }
  const shell = ledger.apply(sprueShell, { foot, area: ledger.value('runner.segment-end', SPRUE) });
  const bar = ledger.apply(barWall, section);
  if (shell.value <= bar.value) file(ledger, materials, run, depth, ledger.put(bar.as('cooling.runner-wall')));
  else file(ledger, materials, SPRUE, shell, ledger.put(shell.as('cooling.runner-wall', 'the sprue, between its bush and the spreader')));
}

function file(ledger: Ledger, materials: Materials, run: string, depth: Traced<'mm'>, wall: Traced<'mm'>): void {
  ledger.setText('cooling.runner-run', run);
  ledger.put(depth.as('cooling.runner-depth'));
  solid(ledger, materials, wall, 'cooling.runner-time');
}

/** @throws Missing when the runner is not laid out. */
function thickestRun(ledger: Ledger): string {
  const long = ledger.items('runner.segment-depth').filter((run) => ledger.value('runner.segment-length', run).value > 0);
  if (long.length === 0) throw new Missing('runner.segment-length');
  return long.reduce((a, b) => (ledger.value('runner.segment-depth', b).value > ledger.value('runner.segment-depth', a).value ? b : a));
}

/** The biscuit: a disc between the cooled tip and the die, its rim in the sleeve. The two faces take heat at different paces. */
function biscuit(ledger: Ledger, materials: Materials): void {
  const wall = ledger.apply(
    discWall,
    { thickness: ledger.value('sleeve.biscuit-thickness'), diameter: ledger.value('machine.plunger') },
    { id: 'cooling.biscuit-wall' },
  );
  const first = solid(ledger, materials, wall, 'cooling.biscuit-steel-time');
  const second = ledger.apply(
    solidificationTime,
    { wall, ...materials.metal, ...fileTip(ledger), interface: materials.pressed },
    { id: 'cooling.biscuit-tip-time' },
  );
  ledger.apply(betweenFaces, { first, second }, { id: 'cooling.biscuit-time' });
}
