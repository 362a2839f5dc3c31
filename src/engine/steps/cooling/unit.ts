import { formatBeside } from '../../../kernel/format.ts';
import { didYouMean, orList } from '../../../kernel/spelling.ts';
import { printTraced, type Traced } from '../../../kernel/traced.ts';
import type { Unit } from '../../../kernel/units.ts';
import { dieShare } from '../../../physics/cooling/running.ts';
import type { CoolingSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';

/** What the units of the plant can send through a die, for the choice of coolant. */
export function fileMedia(ledger: Ledger): void {
  const units = ledger.plant.cooling;
  const oil = units?.some(({ medium }) => medium === 'oil') ?? false;
  const water = units?.some(({ medium }) => medium !== 'oil') ?? false;
  ledger.setText('cooling.plant-media', units === undefined ? 'not given' : oil && water ? 'water and oil' : oil ? 'oil' : 'water');
  ledger.setText('cooling.unit-medium', 'not given');
}

/** Says so early where the plant has no unit for the coolant, whatever the lines come to. */
export function noteNoUnit(ledger: Ledger): void {
  if (ledger.plant.cooling !== undefined && unitsFor(ledger, ledger.text('cooling.medium')).length === 0) ledger.setText('cooling.unit', 'none');
}

/** Units for a coolant of the decision: water or oil. */
export function unitsFor(ledger: Ledger, medium: string): readonly CoolingSpec[] {
  return (ledger.plant.cooling ?? []).filter((unit) => (unit.medium === 'oil') === (medium === 'oil'));
}

/** Units for the coolant, the simplest and smallest first. */
function inOrder(ledger: Ledger): readonly CoolingSpec[] {
  // Open water does without hoses and seals for pressure, so it goes first where it is hot enough.
  const plain = ({ medium }: CoolingSpec): number => (medium === 'pressurised water' ? 1 : 0);
  return [...unitsFor(ledger, ledger.text('cooling.medium'))].sort(
    (a, b) => plain(a) - plain(b) || a.flow.value - b.flow.value || a.pressure.value - b.pressure.value,
  );
}

/** Units that lines may be laid out for, the first choice first: only the pinned one where there is one. */
export function unitsInOrder(ledger: Ledger): readonly CoolingSpec[] {
  const units = inOrder(ledger);
  const pin = ledger.pinnedWord('cooling.unit');
  const named = units.find(({ id }) => id === pin?.text);
  return named === undefined ? units : [named];
}

/** The unit that gives the coldest, or the hottest, coolant; undefined where there is none. */
export function endOf(units: readonly CoolingSpec[], end: 'coldest' | 'hottest'): CoolingSpec | undefined {
  const sign = end === 'coldest' ? 1 : -1;
  return [...units].sort((a, b) => sign * (a[end].value - b[end].value) || b.flow.value - a.flow.value)[0];
}

/** Whether the unit runs the lines that were laid out for it. */
export function unitFits(ledger: Ledger, unit: CoolingSpec): boolean {
  const share = ledger.maybe('cooling.unit-share');
  return share !== undefined && ledger.values.has('cooling.pump-flow') && lacks(ledger, unit, share.value).every((what) => what === undefined);
}

/**
 * The unit that the lines were laid out for, if it runs the coolant as planned, else the smallest that does; else the one that comes
 * nearest, and the rules say what it lacks.
 */
export function chooseUnit(ledger: Ledger, laidFor: CoolingSpec | undefined): void {
  if (ledger.plant.cooling === undefined) {
    ledger.look('cooling/flow', 'pressure_greatest', { medium: ledger.text('cooling.medium') }, 'cooling.pressure-greatest');
    return;
  }
  const units = inOrder(ledger);
  if (units.length === 0) return;
  const share = ledger.look('cooling/unit', 'die_share', {}, 'cooling.unit-share');
  const stopped = (unit: CoolingSpec): number => lacks(ledger, unit, share.value).findIndex((what) => what !== undefined);
  const place = (unit: CoolingSpec): number => (stopped(unit) < 0 ? 4 : stopped(unit));
  const fitting = laidFor !== undefined && stopped(laidFor) < 0 ? laidFor : units.find((unit) => stopped(unit) < 0);
  const nearest = units.reduce((best, unit) => (place(unit) >= place(best) ? unit : best));
  const named = pinned(ledger, units);
  const chosen = named ?? fitting ?? nearest;
  // That an invented plant has a pressurised unit says nothing of what a real one has.
  if (!ledger.plant.invented) ledger.setText('cooling.unit-medium', chosen.medium);
  ledger.put(chosen.coldest.as('cooling.unit-coldest'));
  ledger.put(chosen.hottest.as('cooling.unit-hottest'));
  ledger.put(chosen.flow.as('cooling.unit-flow'));
  const pressure = ledger.put(chosen.pressure.as('cooling.unit-pressure'));
  ledger.apply(dieShare, { pressure, share }, { id: 'cooling.pressure-greatest' });
  const best = fitting === undefined ? 'no unit of the plant runs the coolant as planned' : `the smallest that runs the coolant as planned is ${fitting.id}`;
  ledger.record({
    id: 'cooling.unit',
    title: 'Cooling unit',
    value: chosen.id,
    because:
      named !== undefined
        ? `pinned by the engineer; ${best}`
        : fitting === undefined
          ? `${best}; this one comes nearest`
          : `the smallest unit of the plant that runs the coolant as planned${ledger.text('cooling.medium') === 'oil' ? '' : ', open water before pressurised'}`,
    kind: named === undefined ? 'search' : 'pinned',
    status: 'derived',
    source: ['PLANT'],
    parents: ['cooling.coolant-temperature', 'cooling.pump-flow', 'cooling.pressure-drop'],
    alternatives: ledger.explains
      ? units
          .filter((unit) => unit !== chosen)
          .map((unit) => ({ value: unit.id, because: lacks(ledger, unit, share.value).find((what) => what !== undefined) ?? 'does too' }))
      : [],
  });
}

/** What a unit lacks, the most serious first: neither cold nor hot enough, too little flow, too little pressure. */
function lacks(ledger: Ledger, { coldest, hottest, flow, pressure }: CoolingSpec, share: number): readonly (string | undefined)[] {
  const coolant = ledger.value('cooling.coolant-temperature');
  const needed = ledger.value('cooling.pump-flow');
  const drop = ledger.value('cooling.pressure-drop');
  // A coolant at the very end of the range is inside it, whatever the last digit of the arithmetic.
  const slack = 1e-6;
  return [
    coolant.value > hottest.value + slack ? `not above ${printTraced(hottest)}, and the coolant runs at ${beside(coolant, hottest)}` : undefined,
    coolant.value < coldest.value - slack ? `not below ${printTraced(coldest)}, and the coolant runs at ${beside(coolant, coldest)}` : undefined,
    needed.value > flow.value ? `gives ${printTraced(flow)}, and the lines take ${beside(needed, flow)}` : undefined,
    drop.value > (pressure.value * share) / 100 ? `drives with ${printTraced(pressure)}, too little for a circuit that takes ${printTraced(drop)}` : undefined,
  ];
}

/** A value with the digits that tell it from the bound that stands beside it. */
function beside(value: Traced<Unit>, bound: Traced<Unit>): string {
  return printTraced(value) === printTraced(bound) ? formatBeside(value.value, bound.value, value.unit) : printTraced(value);
}

function pinned(ledger: Ledger, units: readonly CoolingSpec[]): CoolingSpec | undefined {
  const pin = ledger.pinnedWord('cooling.unit');
  if (pin === undefined) return undefined;
  const found = units.find(({ id }) => id === pin.text);
  if (found === undefined) {
    const ids = units.map(({ id }) => id);
    ledger.findings.push({
      code: 'spec/unknown-word',
      severity: 'error',
      message: `the plant has no unit "${pin.text}" for ${ledger.text('cooling.medium')}${didYouMean(pin.text, ids)}`,
      at: pin.at,
      fix: `write ${orList(ids.slice(0, 12))}`,
    });
  }
  return found;
}
