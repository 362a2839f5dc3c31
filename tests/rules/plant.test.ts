import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

interface Machine {
  id: string;
  chamber: 'hot' | 'cold';
  shot: 'horizontal' | 'vertical';
  locking_force: string;
  tie_bar_clearance: [string, string];
  die_height: [string, string];
  opening_stroke: string;
  ejector: { force: string; stroke: string };
  shot_end: {
    plungers: string[];
    sleeve_length?: string;
    stroke: string;
    cylinder_diameter: string;
    pressure_fill: string;
    pressure_intensified?: string;
    dry_speed: string;
  };
  dry_cycle: string;
  hourly_rate: number;
}

const text = readFileSync(new URL('../../rules/plants/typical.yaml', import.meta.url), 'utf8');
interface Prices {
  currency: string;
  date: string;
  metal: Record<string, { price: number }>;
  energy: number;
  trimming: { rate: number; cycle: string };
  machining: { rate: number; feature: string };
  die: { rate: number; cavity_steel: number; holder_steel: number; heat_treatment: number };
}
const file = parse(text) as { diewright: string; plant: { name: string; invented: boolean; note: string }; machines: Machine[]; prices: Prices };
const { machines } = file;

/** The number of `450 mm`, after a check of its unit. */
function read(quantity: string | undefined, unit: string): number {
  const [number, written] = (quantity ?? '').split(' ');
  if (written !== unit) throw new Error(`"${quantity}" is not in ${unit}`);
  return Number(number);
}

const force = (m: Machine): number => read(m.locking_force, 'kN');
const plungers = (m: Machine): number[] => m.shot_end.plungers.map((d) => read(d, 'mm'));
const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
/** Greatest force on the plunger in kN. */
const injection = (m: Machine): number =>
  (circle(read(m.shot_end.cylinder_diameter, 'mm')) * read(m.shot_end.pressure_intensified ?? m.shot_end.pressure_fill, 'MPa')) / 1000;
/** Greatest metal pressure in MPa on a plunger. */
const metalPressure = (m: Machine, diameter: number): number => (1000 * injection(m)) / circle(diameter);

/** Preferred series of horizontal cold-chamber machines (from memory): locking force, tie-bar clearance mm, die height mm, injection force, heaviest aluminium shot kg. */
const SERIES: readonly (readonly [kN: number, clear: number, heightLeast: number, heightGreatest: number, injection: number, shot: number])[] = [
  [630, 280, 150, 350, 90, 0.7],
  [1000, 350, 150, 450, 140, 1.0],
  [1600, 420, 200, 550, 200, 1.8],
  [2500, 520, 250, 650, 280, 3.2],
  [4000, 620, 300, 750, 400, 4.5],
  [6300, 750, 350, 850, 600, 9],
  [8000, 880, 420, 950, 750, 15],
  [10000, 990, 450, 1150, 900, 22],
  [12500, 1080, 500, 1180, 1050, 26],
  [16000, 1180, 500, 1400, 1250, 32],
  [20000, 1335, 650, 1600, 1500, 45],
  [25000, 1500, 750, 1800, 1800, 60],
];
/** A column of the series at a locking force, interpolated between its rows. */
function series(kN: number, column: 1 | 4): number | undefined {
  const upper = SERIES.findIndex((row) => row[0] >= kN);
  const [b, a] = [SERIES[upper], SERIES[Math.max(0, upper - 1)]];
  if (a === undefined || b === undefined || kN < 630) return undefined;
  return a === b ? b[column] : a[column] + ((b[column] - a[column]) * (kN - a[0])) / (b[0] - a[0]);
}

const kinds: readonly (readonly [string, Machine[]])[] = [
  ['hot chamber', machines.filter((m) => m.chamber === 'hot')],
  ['cold chamber, horizontal shot', machines.filter((m) => m.chamber === 'cold' && m.shot === 'horizontal')],
  ['cold chamber, vertical shot', machines.filter((m) => m.shot === 'vertical')],
];
const [hot, cold, vertical] = kinds.map(([, list]) => list) as [Machine[], Machine[], Machine[]];

describe('the built-in plant as a whole', () => {
  it('says that it is invented', () => {
    expect([file.diewright, file.plant.invented]).toEqual(['plant/1', true]);
    expect(file.plant.note).toMatch(/^Invented/);
  });

  it('has at least 28 machines of three kinds, 500 kN to 40 MN, each id once and named after its kind and force', () => {
    expect(machines.length).toBeGreaterThanOrEqual(28);
    expect(new Set(machines.map((m) => m.id)).size).toBe(machines.length);
    expect([Math.min(...machines.map(force)), Math.max(...machines.map(force))]).toEqual([500, 40000]);
    expect([hot.length, cold.length, vertical.length].every((n) => n >= 3)).toBe(true);
    expect(hot.length + cold.length + vertical.length).toBe(machines.length);
    for (const m of machines) expect(m.id).toBe(`${m.chamber}${m.shot === 'vertical' ? '-vertical' : ''}-${force(m)}`);
  });
});

describe.each(kinds)('%s', (_kind, list) => {
  it('grows in everything with the locking force', () => {
    const rising: readonly ((m: Machine) => number)[] = [
      force,
      (m) => read(m.tie_bar_clearance[0], 'mm'),
      (m) => read(m.die_height[1], 'mm'),
      (m) => read(m.opening_stroke, 'mm'),
      (m) => read(m.ejector.force, 'kN'),
      (m) => read(m.ejector.stroke, 'mm'),
      (m) => read(m.shot_end.stroke, 'mm'),
      injection,
      (m) => read(m.dry_cycle, 's'),
      (m) => m.hourly_rate,
    ];
    for (const value of rising) for (let i = 1; i < list.length; i++) expect(value(list[i] as Machine)).toBeGreaterThan(value(list[i - 1] as Machine));
  });

  it('has several plungers each, an ejector of 4 to 8 % of the locking force, and a die height range', () => {
    for (const m of list) {
      expect(plungers(m).length).toBeGreaterThanOrEqual(2);
      expect(plungers(m)).toEqual([...plungers(m)].sort((a, b) => a - b));
      const share = read(m.ejector.force, 'kN') / force(m);
      expect(share).toBeGreaterThanOrEqual(0.04);
      expect(share).toBeLessThanOrEqual(0.08);
      expect(read(m.die_height[0], 'mm')).toBeLessThan(read(m.die_height[1], 'mm'));
    }
  });

  it('has the tie-bar clearance of the series within 5 %', () => {
    for (const m of list) {
      const wanted = series(force(m), 1);
      if (wanted !== undefined) for (const side of m.tie_bar_clearance) expect(Math.abs(read(side, 'mm') / wanted - 1)).toBeLessThan(0.05);
    }
  });
});

describe('hot chamber', () => {
  it('has no intensifier and no sleeve, 15 to 34 MPa on every plunger, and a dry speed for the 1 to 3 m/s of a loaded plunger', () => {
    for (const m of hot) {
      expect([m.shot_end.pressure_intensified, m.shot_end.sleeve_length]).toEqual([undefined, undefined]);
      for (const d of plungers(m)) {
        expect(metalPressure(m, d)).toBeGreaterThanOrEqual(15);
        expect(metalPressure(m, d)).toBeLessThanOrEqual(34);
      }
      expect(read(m.shot_end.dry_speed, 'm/s')).toBeGreaterThanOrEqual(3);
      expect(read(m.shot_end.dry_speed, 'm/s')).toBeLessThanOrEqual(5);
    }
  });
});

describe('cold chamber', () => {
  it('intensifies to the injection force of the series within 5 %, and beyond the series to 0.06 to 0.07 of the locking force', () => {
    for (const m of [...cold, ...vertical]) {
      const wanted = series(force(m), 4);
      if (wanted !== undefined) expect(Math.abs(injection(m) / wanted - 1)).toBeLessThan(0.05);
      else expect([injection(m) / force(m) > 0.06, injection(m) / force(m) < 0.07]).toEqual([true, true]);
      expect(read(m.shot_end.pressure_intensified, 'MPa')).toBeGreaterThan(1.5 * read(m.shot_end.pressure_fill, 'MPa'));
    }
  });

  it('puts at most 160 MPa on the smallest plunger and at least 50 MPa on the largest', () => {
    for (const m of [...cold, ...vertical]) {
      expect(metalPressure(m, Math.min(...plungers(m)))).toBeLessThanOrEqual(160);
      expect(metalPressure(m, Math.max(...plungers(m)))).toBeGreaterThanOrEqual(50);
    }
  });

  it('has sleeves of 4 to 8 diameters of every plunger, a stroke beyond the sleeve, and 4 to 8 m/s dry', () => {
    for (const m of [...cold, ...vertical]) {
      const sleeve = read(m.shot_end.sleeve_length, 'mm');
      for (const d of plungers(m)) expect([sleeve / d >= 4, sleeve / d <= 8]).toEqual([true, true]);
      expect(read(m.shot_end.stroke, 'mm')).toBeGreaterThanOrEqual(sleeve);
      expect(read(m.shot_end.dry_speed, 'm/s')).toBeGreaterThanOrEqual(4);
      expect(read(m.shot_end.dry_speed, 'm/s')).toBeLessThanOrEqual(8);
    }
  });

  it('pours about the heaviest aluminium shot of the series at 75 % fill of the largest sleeve', () => {
    for (const m of cold) {
      const row = SERIES.find(([kN]) => kN === force(m));
      if (row === undefined) continue;
      const kg = (0.75 * 2.5 * circle(Math.max(...plungers(m))) * read(m.shot_end.sleeve_length, 'mm')) / 1e6;
      expect(Math.abs(kg / row[5] - 1)).toBeLessThan(0.2);
      expect([read(m.die_height[0], 'mm'), read(m.die_height[1], 'mm')]).toEqual([row[2], row[3]]);
    }
  });
});

describe('invented prices', () => {
  const { metal, trimming, machining, die, ...prices } = file.prices;
  const price = (family: string): number => metal[family]?.price ?? Number.NaN;

  it('are in no currency, have one day, and know every family', () => {
    expect([prices.currency, prices.date]).toEqual(['no particular currency', '2026-01-01']);
    expect(Object.keys(metal).sort()).toEqual(['aluminium', 'copper', 'lead', 'magnesium', 'tin', 'zinc', 'zinc_aluminium']);
    expect(text).toMatch(/^# - Prices are invented too/m);
  });

  it('stand to each other as in the trade: zinc above aluminium, magnesium half as much again, brass thrice, tin far above', () => {
    expect([price('zinc') / price('aluminium') > 1, price('zinc') / price('aluminium') < 1.4]).toEqual([true, true]);
    expect([price('magnesium') / price('aluminium') >= 1.3, price('magnesium') / price('aluminium') <= 2]).toEqual([true, true]);
    expect([price('copper') / price('aluminium') >= 2, price('copper') / price('aluminium') <= 4]).toEqual([true, true]);
    expect(price('tin')).toBeGreaterThan(8 * price('aluminium'));
    expect(die.cavity_steel).toBeGreaterThan(2 * die.holder_steel);
  });

  it('have hours below those of the smallest machine, and a trim stroke shorter than a casting cycle', () => {
    const smallest = Math.min(...machines.map((m) => m.hourly_rate));
    for (const rate of [trimming.rate, machining.rate, die.rate]) expect(rate).toBeLessThanOrEqual(smallest);
    expect(trimming.rate).toBeLessThan(machining.rate);
    expect(read(trimming.cycle, 's')).toBeLessThan(10);
  });
});

describe('invented equipment', () => {
  interface Press {
    id: string;
    force: string;
    stroke: string;
    platen: [string, string];
    drive?: string;
    hourly_rate?: number;
  }
  interface Furnace {
    id: string;
    kind: string;
    families: string[];
    capacity: string;
    melt_rate?: string;
    temperature: [string, string];
  }
  interface Unit {
    id: string;
    medium: string;
    temperature: [string, string];
  }
  const equipment = parse(text) as { furnaces: Furnace[]; cooling: Unit[]; trim_presses: Press[]; spray: { kind: string }; limits?: unknown };
  const { furnaces, cooling, trim_presses: presses } = equipment;

  it('has presses that grow in everything, of the series that presses are planned from, and leaves their drive and rate open', () => {
    const series = (parse(readFileSync(new URL('../../rules/tables/finish/press.yaml', import.meta.url), 'utf8')) as { rows: { size: number }[] }).rows;
    expect(presses.map((press) => read(press.force, 'kN'))).toEqual(series.map(({ size }) => size));
    for (const value of [(p: Press) => read(p.stroke, 'mm'), (p: Press) => read(p.platen[0], 'mm'), (p: Press) => read(p.platen[1], 'mm')])
      for (let i = 1; i < presses.length; i++) expect(value(presses[i] as Press)).toBeGreaterThan(value(presses[i - 1] as Press));
    expect(presses.filter((press) => press.drive !== undefined || press.hourly_rate !== undefined)).toEqual([]);
    expect(text).toMatch(/driven is left open on purpose/);
  });

  it('melts every family, and holds every one that a cold chamber casts, at the temperatures of its alloys', () => {
    const families = ['aluminium', 'copper', 'lead', 'magnesium', 'tin', 'zinc', 'zinc-aluminium'];
    const of = (kinds: RegExp): string[] => [...new Set(furnaces.filter(({ kind }) => kinds.test(kind)).flatMap((furnace) => furnace.families))].sort();
    expect(of(/melting/)).toEqual(families);
    expect(of(/holding|dosing/)).toEqual(families);
    for (const { kind, melt_rate: rate } of furnaces) expect(rate !== undefined).toBe(/melting/.test(kind));
  });

  it('cools with the temperatures that the rules plan, and sets no limits of a house', () => {
    const rows = (
      parse(readFileSync(new URL('../../rules/tables/cooling/medium.yaml', import.meta.url), 'utf8')) as {
        rows: { medium: string; least: number; greatest: number }[];
      }
    ).rows;
    for (const { medium, least, greatest } of rows) {
      const units = cooling.filter((unit) => unit.medium.endsWith(medium));
      expect(Math.min(...units.map((unit) => read(unit.temperature[0], 'degC')))).toBe(least);
      expect(Math.max(...units.map((unit) => read(unit.temperature[1], 'degC')))).toBe(greatest);
    }
    expect([equipment.spray.kind, equipment.limits]).toEqual(['water-based', undefined]);
  });
});
