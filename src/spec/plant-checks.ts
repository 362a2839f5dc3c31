import { reportDoubles } from './checks.ts';
import { dataAt, type Findings } from './findings.ts';
import type { PlantData } from './plant-schema.ts';
import type { Partly } from './salvage.ts';

/** Contradictions inside one plant file. Works on what could be read, and reports only what cannot be true. */
export function checkPlant(draft: Partly<PlantData>, findings: Findings): void {
  reportDoubles(draft.machines, 'machines', new Set(), findings);
  reportDoubles(draft.furnaces, 'furnaces', new Set(), findings);
  reportDoubles(draft.cooling, 'cooling', new Set(), findings);
  reportDoubles(draft.trim_presses, 'trim_presses', new Set(), findings);
  reportDoubles(draft.prices?.alloys, ['prices', 'alloys'], new Set(), findings);
  checkFurnaces(draft, findings);
  checkCooling(draft, findings);
  if (draft.spray?.kind === 'minimal-quantity' && draft.spray.dilution !== undefined)
    findings.add('dilution-of-minimal', ['spray', 'dilution'], 'minimal quantities are sprayed undiluted', {
      fix: 'remove it, or write "kind: water-based"',
      part: 'key',
    });
  // The schema library passes over this one key of a free mapping; it must be as wrong as any other wrong name.
  if (dataAt(findings.yaml.data, ['limits', '__proto__']) !== undefined)
    findings.add('limit-form', ['limits', '__proto__'], 'is not the name of a value', { fix: 'remove it', part: 'key' });
  for (const [i, machine] of (draft.machines ?? []).entries()) {
    if (machine === undefined) continue;
    const [least, greatest] = machine.die_height ?? [];
    if (least !== undefined && greatest !== undefined && least.value > greatest.value) {
      findings.add('die-height-order', ['machines', i, 'die_height'], `the least die height of ${least.written} is above the greatest of ${greatest.written}`, {
        fix: 'write the least first',
      });
    }
    const end = machine.shot_end;
    if (end === undefined) continue;
    const { pressure_fill: fill, pressure_intensified: intensified, tail_rod_diameter: rod, cylinder_diameter: cylinder } = end;
    if (fill !== undefined && intensified !== undefined && intensified.value <= fill.value) {
      findings.add('pressure-order', ['machines', i, 'shot_end', 'pressure_intensified'], `${intensified.written} is not above ${fill.written} in filling`, {
        fix: 'check both pressures, or remove it when the machine has no intensifier',
      });
    }
    if (rod !== undefined && cylinder !== undefined && rod.value >= cylinder.value) {
      findings.add(
        'rod-above-cylinder',
        ['machines', i, 'shot_end', 'tail_rod_diameter'],
        `a rod of ${rod.written} does not fit into a cylinder of ${cylinder.written}`,
        { fix: 'check both diameters' },
      );
    }
    checkSleeve(machine.chamber, end.sleeve_length !== undefined, i, findings);
  }
}

function checkSleeve(chamber: 'hot' | 'cold' | undefined, given: boolean, i: number, findings: Findings): void {
  if (chamber === 'hot' && given) {
    findings.add('sleeve-on-hot-chamber', ['machines', i, 'shot_end', 'sleeve_length'], 'a hot chamber machine has no shot sleeve', {
      fix: 'remove it, or write "chamber: cold"',
      part: 'key',
    });
  }
  if (chamber !== 'cold' || given) return;
  findings.add('missing-field', ['machines', i, 'shot_end', 'sleeve_length'], 'is missing for a cold chamber machine', { fix: 'add "sleeve_length: 420 mm"' });
}

function checkFurnaces(draft: Partly<PlantData>, findings: Findings): void {
  for (const [i, furnace] of (draft.furnaces ?? []).entries()) {
    if (furnace === undefined) continue;
    const [coldest, hottest] = furnace.temperature ?? [];
    if (coldest !== undefined && hottest !== undefined && coldest.value > hottest.value)
      findings.add(
        'furnace-temperature-order',
        ['furnaces', i, 'temperature'],
        `the coldest metal of ${coldest.written} is above the hottest of ${hottest.written}`,
        {
          fix: 'write the coldest first',
        },
      );
    const melts = furnace.kind === 'melting' || furnace.kind === 'melting and holding';
    if (melts && furnace.melt_rate === undefined)
      findings.add('missing-field', ['furnaces', i, 'melt_rate'], 'is missing for a furnace that melts', { fix: 'add "melt_rate: 500 kg/h"', part: 'key' });
    if (furnace.kind === undefined || melts) continue;
    for (const key of ['melt_rate', 'energy'] as const) {
      if (furnace[key] === undefined) continue;
      const fix = 'remove it, or write "kind: melting and holding"';
      findings.add('melt-rate-of-holding', ['furnaces', i, key], `a furnace of the kind "${furnace.kind}" melts no metal`, { fix, part: 'key' });
    }
  }
}

/** Water that is open to the air boils at 100 degC and is run below that with a margin. */
const HOTTEST_OPEN = 95;

function checkCooling(draft: Partly<PlantData>, findings: Findings): void {
  for (const [i, unit] of (draft.cooling ?? []).entries()) {
    const [coldest, hottest] = unit?.temperature ?? [];
    const path = ['cooling', i, 'temperature'];
    if (coldest !== undefined && hottest !== undefined && coldest.value > hottest.value)
      findings.add('coolant-order', path, `the coldest of ${coldest.written} is above the hottest of ${hottest.written}`, { fix: 'write the coldest first' });
    else if (unit?.medium === 'water' && hottest !== undefined && hottest.value > HOTTEST_OPEN)
      findings.add('open-water-hot', path, `open water is not run at ${hottest.written}: it boils at 100 degC`, {
        fix: `write at most ${HOTTEST_OPEN} degC, or "medium: pressurised water"`,
      });
  }
}
