import { formatQuantity } from '../../../kernel/format.ts';
import { Traced } from '../../../kernel/traced.ts';
import { velocityFromFlow } from '../../../physics/gate.ts';
import { metalPressure } from '../../../physics/machine.ts';
import { dryFlow, operatingFlow, staticPressure } from '../../../physics/pq2.ts';
import { fillWithPlunger } from '../../../physics/pq2-plan.ts';
import { biscuitThickness } from '../../../physics/shot-plan.ts';
import { fastSpeed } from '../../../physics/sleeve/travel.ts';
import { wordFor } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { availableSpeed } from '../shot.ts';
import { deepestRunner } from '../sleeve.ts';
import { die } from './lines.ts';

/** The word of `pq2.plunger-verdict` for a plunger that keeps every limit. */
const SERVES = 'serves';

/** Every plunger of the machine, and the planned one, on the same die: what each gives and what speaks against it. */
export function comparePlungers(ledger: Ledger): void {
  const planned = ledger.value('machine.plunger');
  const machine = ledger.plant.machines.find((candidate) => candidate.id === ledger.text('machine.model'));
  const diameters = [...(machine?.plungers ?? [])];
  if (!diameters.some((one) => one.value === planned.value)) diameters.push(planned);
  for (const diameter of diameters.sort((a, b) => a.value - b.value)) {
    const item = formatQuantity(diameter.value, diameter.unit);
    ledger.attempt(`pq2.plunger-verdict[${item}]`, `Plunger of ${item}`, () => onePlunger(ledger, diameter, item));
  }
  const serving = itemsThatServe(ledger);
  ledger.put(
    Traced.choice('pq2.serving-plungers', serving.length, '1', {
      note: serving.length === 0 ? 'of those compared' : `of those compared: ${serving.join(', ')}`,
      status: 'derived',
      parents: plungerItems(ledger).flatMap((item) => ledger.maybe('pq2.plunger-flow', item) ?? []),
    }),
  );
}

/** The plungers compared, from the smallest up. */
export function plungerItems(ledger: Ledger): readonly string[] {
  return ledger.items('pq2.plunger-diameter');
}

/** Files the plunger that serves and is nearest to the planned one; the smaller of two that are equally near. */
export function advisePlunger(ledger: Ledger): void {
  const planned = ledger.value('machine.plunger').value;
  const serving = itemsThatServe(ledger).map((item) => ledger.value('pq2.plunger-diameter', item));
  const nearest = serving.reduce<Traced<'mm'> | undefined>(
    (best, one) => (best === undefined || Math.abs(one.value - planned) < Math.abs(best.value - planned) ? one : best),
    undefined,
  );
  if (nearest !== undefined) ledger.put(nearest.as('pq2.advised-plunger', 'nearest to the planned one among those that serve'));
}

function itemsThatServe(ledger: Ledger): string[] {
  return plungerItems(ledger).filter((item) => ledger.texts.get(`pq2.plunger-verdict[${item}]`) === SERVES);
}

function onePlunger(ledger: Ledger, given: Traced<'mm'>, item: string): void {
  const aside = given.value !== ledger.value('machine.plunger').value;
  const as = (id: ValueId) => ({ id, item, aside });
  const diameter = ledger.put(given.as(`pq2.plunger-diameter[${item}]`));
  const hydraulic_pressure = ledger.value('machine.pressure-fill');
  const cylinder_diameter = ledger.value('machine.cylinder-diameter');
  const cylinder = { cylinder_diameter, rod_diameter: ledger.value('machine.tail-rod-diameter') };
  const static_pressure = ledger.apply(staticPressure, { hydraulic_pressure, ...cylinder, plunger_diameter: diameter }, as('pq2.plunger-static-pressure'));
  const dry_flow = ledger.apply(dryFlow, { dry_speed: ledger.value('pq2.dry-speed'), plunger_diameter: diameter }, as('pq2.plunger-dry-flow'));
  const gate_area = ledger.value('pq2.gate-area');
  const flow = ledger.apply(operatingFlow, { static_pressure, dry_flow, ...die(ledger), gate_area }, as('pq2.plunger-flow'));
  ledger.apply(velocityFromFlow, { flow, area: gate_area }, as('pq2.plunger-velocity'));
  ledger.apply(fastSpeed, { flow, diameter }, as('pq2.plunger-speed'));
  const planned = ledger.value('shot.flow');
  const speed = ledger.apply(fastSpeed, { flow: planned, diameter }, as('pq2.plunger-planned-speed'));
  const available = availableSpeed(ledger, diameter, {
    lines: as('pq2.plunger-drop-by-lines'),
    drop: as('pq2.plunger-drop'),
    available: as('pq2.plunger-available'),
  });
  const intensified = ledger.maybe('machine.pressure-intensified') ?? hydraulic_pressure;
  const pressure = ledger.apply(
    metalPressure,
    { hydraulic_pressure: intensified, cylinder_diameter, plunger_diameter: diameter },
    as('pq2.plunger-metal-pressure'),
  );
  const chamber = ledger.text('machine.chamber');
  const verdict = wordFor(
    ledger,
    'pq2.plunger-verdict',
    {
      chamber,
      flow: flow.value,
      planned: planned.value,
      speed: speed.value,
      available: available.value,
      pressure: pressure.value,
      needed: ledger.value('clamp.pressure').value,
      class_least: ledger.value('clamp.pressure-least').value,
      ...(chamber === 'cold' ? sleeveFill(ledger, diameter, item) : {}),
    },
    item,
  );
  if (verdict !== undefined) ledger.setText('pq2.plunger-verdict', verdict, { item });
}

/** The biscuit follows the plunger, unless it is pinned; all other metal of the shot stays. */
function sleeveFill(ledger: Ledger, diameter: Traced<'mm'>, item: string): Readonly<Record<string, number>> {
  const planned = ledger.value('sleeve.biscuit-thickness');
  const thickness =
    planned.kind === 'pinned'
      ? ledger.put(planned.as(`pq2.plunger-biscuit[${item}]`))
      : ledger.apply(
          biscuitThickness,
          {
            least: ledger.value('sleeve.biscuit-least'),
            runner_depth: deepestRunner(ledger),
            diameter,
            share: ledger.value('sleeve.biscuit-share'),
          },
          { id: 'pq2.plunger-biscuit', item },
        );
  const fill = ledger.apply(
    fillWithPlunger,
    {
      liquid_volume: ledger.value('shot.liquid-volume'),
      biscuit_volume: ledger.value('sleeve.biscuit-volume'),
      density: ledger.value('alloy.density'),
      liquid_density: ledger.value('gate.liquid-density'),
      diameter,
      thickness,
      length: ledger.value('machine.sleeve-length'),
    },
    { item },
  );
  return { fill: fill.value, fill_least: ledger.value('sleeve.fill-least').value, fill_greatest: ledger.value('sleeve.fill-greatest').value };
}
