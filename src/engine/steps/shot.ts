import type { Traced } from '../../kernel/traced.ts';
import { flowVolume } from '../../physics/gate.ts';
import { runnerTotalVolume } from '../../physics/runner.ts';
import { shotMass, shotVolume } from '../../physics/shot.ts';
import {
  nozzleDiameter,
  plungerForPressure,
  potStroke,
  shotFlow,
  shotHandbookVolume,
  speedAvailable,
  speedDropByLines,
  speedDropPlanned,
} from '../../physics/shot-plan.ts';
import { fastSpeed } from '../../physics/sleeve/travel.ts';
import type { Ledger } from '../ledger.ts';
import { assumeMiddle } from '../planned.ts';
import { type Step, textBlock, valuesBlock } from '../step.ts';
import { fullId, type ValueId } from '../vocabulary/index.ts';
import { workBiscuit, workSleeve } from './sleeve.ts';

/**
 * All metal of one shot, and the sleeve or the pot it comes from, for the cavities, machine and plunger that are filed.
 * Uses the ledger only, because the machine search runs it on trial ledgers.
 */
export function workShot(ledger: Ledger): void {
  const attempt = ledger.attempt.bind(ledger);
  const cold = ledger.text('machine.chamber') === 'cold';
  if (cold) attempt('sleeve.biscuit-thickness', 'Biscuit', () => workBiscuit(ledger));
  attempt('shot.volume', 'Metal of one shot', () => metal(ledger, cold));
  if (cold) {
    attempt('sleeve.fill', 'Sleeve fill', () => workSleeve(ledger));
  } else {
    attempt('pot.stroke-needed', 'Plunger travel', () =>
      ledger.apply(potStroke, { volume: ledger.value('shot.liquid-volume'), diameter: ledger.value('machine.plunger') }),
    );
  }
  attempt('shot.flow', 'Plunger speed', () => speed(ledger, cold));
  attempt('shot.plunger-for-pressure', 'Plunger for the metal pressure', () =>
    ledger.apply(plungerForPressure, {
      diameter: ledger.value('machine.plunger'),
      pressure: ledger.value('machine.metal-pressure'),
      needed: ledger.value(cold ? 'clamp.pressure' : 'clamp.pressure-least'),
    }),
  );
}

/** Volumes are those of the die; the mass is that of the solid metal, and the sleeve or pot must hold it as a liquid. */
function metal(ledger: Ledger, cold: boolean): void {
  const cavities = ledger.value('machine.cavities');
  const runner_volume = ledger.apply(runnerTotalVolume, { cavities, volume: ledger.value('runner.volume') });
  const biscuit_volume = cold
    ? ledger.value('sleeve.biscuit-volume')
    : ledger.assume('sleeve.biscuit-volume', 0, 'cm3', { note: 'hot chamber: no biscuit; the sprue is a run of the runner', status: 'derived' });
  const volume = ledger.apply(shotVolume, {
    cavities,
    part_volume: ledger.value('part.volume'),
    overflow_volume: ledger.value('overflow.volume'),
    runner_volume,
    biscuit_volume,
  });
  const mass = ledger.apply(shotMass, { volume, density: ledger.value('alloy.density') });
  ledger.apply(flowVolume, { mass, density: ledger.value('gate.liquid-density') }, { id: 'shot.liquid-volume' });
}

function pot(ledger: Ledger): void {
  const family = ledger.alloy.family;
  ledger.put(ledger.value('fill.holding-temperature').as('pot.temperature', 'the pot is the holding furnace'));
  ledger.apply(nozzleDiameter, { runner_area: ledger.value('runner.main-area'), ratio: ledger.value('pot.nozzle-ratio') });
  ledger.lookIfAny('pot/shot', 'fill_least', { family }, 'pot.fill-time-least');
  ledger.lookIfAny('pot/shot', 'fill_greatest', { family }, 'pot.fill-time-greatest');
}

function speed(ledger: Ledger, cold: boolean): Traced<'m/s'> {
  const flow = ledger.apply(shotFlow, {
    cavities: ledger.value('machine.cavities'),
    volume: ledger.value('gate.flow-volume'),
    time: ledger.value('fill.time'),
  });
  ledger.apply(fastSpeed, { flow, diameter: ledger.value('machine.plunger') }, cold ? {} : { id: 'pot.plunger-speed' });
  const least = ledger.look('sleeve/fast-shot', 'loaded_drop_least', {}, 'shot.speed-drop-least');
  const greatest = ledger.look('sleeve/fast-shot', 'loaded_drop_greatest', {}, 'shot.speed-drop-greatest');
  assumeMiddle(ledger, 'shot.speed-drop', least, greatest);
  ledger.look('sleeve/speed-use', 'use', {}, 'shot.speed-use');
  return availableSpeed(ledger, ledger.value('machine.plunger'), AT_HAND);
}

/** Ids of the figures that lead to the plunger speed that may be planned. */
interface SpeedIds {
  readonly lines: FileAs;
  readonly drop: FileAs;
  readonly available: FileAs;
}
interface FileAs {
  readonly id?: ValueId;
  readonly item?: string;
  readonly aside?: boolean;
}
const AT_HAND: SpeedIds = { lines: {}, drop: {}, available: {} };

/** What of the dry speed may be planned with a plunger: loaded it is slower, and a share of that is kept in reserve. */
export function availableSpeed(ledger: Ledger, diameter: Traced<'mm'>, ids: SpeedIds): Traced<'m/s'> {
  const dry_speed = ledger.value('machine.dry-shot-speed');
  const lines = ledger.apply(
    speedDropByLines,
    {
      dry_speed,
      diameter,
      pressure: ledger.value('machine.pressure-fill'),
      cylinder_diameter: ledger.value('machine.cylinder-diameter'),
      rod_diameter: ledger.value('machine.tail-rod-diameter'),
      density: ledger.value('gate.liquid-density').in('kg/m3'),
      discharge: ledger.value('gate.discharge'),
      cavities: ledger.value('machine.cavities'),
      gate_area: ledger.value('gate.area'),
    },
    ids.lines,
  );
  const usual = ledger.value('shot.speed-drop');
  const { id = 'shot.speed-drop-planned', item } = ids.drop;
  // A drop that was measured on the machine holds, whatever the lines say.
  const drop = usual.kind === 'pinned' ? ledger.put(usual.as(fullId(id, item))) : ledger.apply(speedDropPlanned, { usual, lines }, ids.drop);
  return ledger.apply(speedAvailable, { dry_speed, drop, use: ledger.value('shot.speed-use') }, ids.available);
}

export const shotStep: Step = {
  id: 'shot',
  title: 'Shot',
  work: (ledger) => {
    workShot(ledger);
    ledger.attempt('shot.handbook-volume', 'Shot volume by the wall', () =>
      ledger.apply(shotHandbookVolume, {
        cavities: ledger.value('machine.cavities'),
        part_volume: ledger.value('part.volume'),
        wall: ledger.value('part.wall-nominal'),
      }),
    );
    if (ledger.text('machine.chamber') === 'hot') ledger.attempt('pot.temperature', 'Pot and nozzle', () => pot(ledger));
  },
  show: (ledger) => {
    const metalValues = valuesBlock(ledger, [
      'machine.cavities',
      'part.volume',
      'overflow.volume',
      'runner.total-volume',
      ...(ledger.texts.get('machine.chamber') === 'cold' ? (['sleeve.biscuit-thickness', 'sleeve.biscuit-volume'] as const) : []),
      'shot.volume',
      'shot.mass',
      'shot.liquid-volume',
      'shot.handbook-volume',
    ]);
    if (metalValues.length === 0) return [];
    const cold = ledger.texts.get('machine.chamber') === 'cold';
    const common = [
      'machine.dry-shot-speed',
      'shot.speed-drop',
      'shot.speed-drop-by-lines',
      'shot.speed-drop-planned',
      'shot.speed-available',
      'machine.metal-pressure',
      'clamp.pressure-least',
      'clamp.pressure',
    ] as const;
    return [
      textBlock(
        'Volumes are those of the die, the mass that of the solid metal; as a liquid it takes more room, and that is what the sleeve or pot must give.',
      ),
      ...metalValues,
      ...(cold
        ? sleeveText(ledger)
        : [
            textBlock(
              'Hot chamber: the plunger stands in the melt. No ladle, no sleeve wave, no biscuit, and no intensifier: the metal pressure of the fill phase is all there is.',
            ),
          ]),
      ...(cold
        ? valuesBlock(ledger, ['machine.plunger', 'machine.sleeve-length', 'sleeve.fill', 'sleeve.air-volume', 'shot.flow', 'sleeve.fast-speed', ...common])
        : valuesBlock(ledger, [
            'pot.temperature',
            'machine.plunger',
            'pot.stroke-needed',
            'machine.shot-stroke',
            'pot.nozzle-diameter',
            'shot.flow',
            'pot.plunger-speed',
            ...common,
          ])),
    ];
  },
};

function sleeveText(ledger: Ledger): ReturnType<Step['show']> {
  if (ledger.texts.get('machine.kind') === 'cold-chamber-vertical-shot')
    return [textBlock('Vertical sleeve: no wave can trap air, so it may be filled nearly full.')];
  if (!ledger.values.has('sleeve.fill-usual-least')) return [];
  return [
    textBlock(
      'Cold chamber with horizontal sleeve; usual fill ',
      { value: 'sleeve.fill-usual-least' },
      ' to ',
      { value: 'sleeve.fill-usual-greatest' },
      '. The fill must not outrank fill time and final pressure when the plunger is chosen.',
    ),
  ];
}
