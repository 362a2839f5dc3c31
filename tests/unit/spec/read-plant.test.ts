import { describe, expect, it } from 'vitest';
import { type PlantSpec, PRICED_FAMILIES, type PricesSpec, readPlant } from '../../../src/spec/index.ts';
import { STARTER_PLANT } from '../../../src/spec/starters.ts';
import { BASE_PLANT } from '../../cli/bad-input/base.ts';
import { rulebook } from '../engine/work-to.ts';

describe('a plant', () => {
  const { plant, diagnostics } = readPlant({ name: 'plant.yaml', text: BASE_PLANT.replace('invented: true', 'invented: false') });
  const [cold, hot] = (plant as PlantSpec).machines;

  it('has no findings and keeps its words', () => {
    expect(diagnostics).toEqual([]);
    expect(plant).toMatchObject({ name: 'North hall', invented: false, note: 'Two machines' });
    expect([cold?.chamber, cold?.shot, hot?.chamber, hot?.shot]).toEqual(['cold', 'horizontal', 'hot', 'vertical']);
  });

  it('holds each figure as a traced input of the plant', () => {
    const { plungers = [], at, id, chamber, shot, vacuum, extraction, ...figures } = cold as NonNullable<typeof cold>;
    expect([id, chamber, shot, vacuum, extraction]).toEqual(['cold-4000', 'cold', 'horizontal', undefined, undefined]);
    expect(at?.position()).toMatchObject({ line: 4, column: 5 });
    expect(
      Object.values(figures)
        .map((figure) => `${figure.id} ${figure.value} ${figure.unit} ${figure.kind} ${figure.source} ${figure.at?.path}`)
        .sort(),
    ).toEqual(
      [
        'machine.locking-force[cold-4000] 4000 kN input PLANT machines[0].locking_force',
        'machine.tie-bar-x[cold-4000] 620 mm input PLANT machines[0].tie_bar_clearance[0]',
        'machine.tie-bar-y[cold-4000] 600 mm input PLANT machines[0].tie_bar_clearance[1]',
        'machine.die-height-least[cold-4000] 300 mm input PLANT machines[0].die_height[0]',
        'machine.die-height-greatest[cold-4000] 750 mm input PLANT machines[0].die_height[1]',
        'machine.opening-stroke[cold-4000] 450 mm input PLANT machines[0].opening_stroke',
        'machine.ejector-force[cold-4000] 180 kN input PLANT machines[0].ejector.force',
        'machine.ejector-stroke[cold-4000] 120 mm input PLANT machines[0].ejector.stroke',
        'machine.sleeve-length[cold-4000] 420 mm input PLANT machines[0].shot_end.sleeve_length',
        'machine.shot-stroke[cold-4000] 480 mm input PLANT machines[0].shot_end.stroke',
        'machine.cylinder-diameter[cold-4000] 140 mm input PLANT machines[0].shot_end.cylinder_diameter',
        'machine.tail-rod-diameter[cold-4000] 50 mm input PLANT machines[0].shot_end.tail_rod_diameter',
        'machine.pressure-fill[cold-4000] 14 MPa input PLANT machines[0].shot_end.pressure_fill',
        'machine.pressure-intensified[cold-4000] 32 MPa input PLANT machines[0].shot_end.pressure_intensified',
        'machine.dry-shot-speed[cold-4000] 5 m/s input PLANT machines[0].shot_end.dry_speed',
        'machine.dry-cycle[cold-4000] 6 s input PLANT machines[0].dry_cycle',
        'machine.hourly-rate[cold-4000] 95 1 input PLANT machines[0].hourly_rate',
      ].sort(),
    );
    expect(plungers.map((plunger) => [plunger.id, plunger.value])).toEqual([
      ['machine.plunger[cold-4000/60 mm]', 60],
      ['machine.plunger[cold-4000/70 mm]', 70],
    ]);
  });

  it('marks the figures of an invented plant as practice, so that no plan takes them for a machine that stands somewhere', () => {
    const invented = readPlant({ name: 'plant.yaml', text: BASE_PLANT }).plant;
    expect(BASE_PLANT).toContain('invented: true');
    expect(invented?.machines.map((machine) => [machine.lockingForce.kind, machine.lockingForce.status])).toEqual([
      ['table', 'practice'],
      ['table', 'practice'],
    ]);
  });

  it('fills in the tail rod and nothing else', () => {
    expect(hot?.tailRodDiameter).toMatchObject({ id: 'machine.tail-rod-diameter[hot-800]', value: 0, unit: 'mm', kind: 'default', status: 'source' });
    for (const key of ['sleeveLength', 'pressureIntensified', 'hourlyRate']) expect(Object.keys(hot ?? {})).not.toContain(key);
  });

  it('converts pressures and forces', () => {
    const real = BASE_PLANT.replace('invented: true', 'invented: false');
    const text = real.replace('14 MPa', '140 bar').replace('11 MPa', '1600 psi').replace('4000 kN', '4 MN').replace('5 m/s', '200 in/s');
    const machines = readPlant({ name: 'plant.yaml', text }).plant?.machines;
    expect(machines?.[0]?.pressureFill.value).toBeCloseTo(14, 12);
    // 1 psi is 6894.757 Pa (pound-force over square inch, both exact by definition).
    expect(machines?.[1]?.pressureFill.value).toBeCloseTo(11.0316, 4);
    expect(machines?.[0]?.lockingForce.value).toBe(4000);
    expect(machines?.[0]?.dryShotSpeed.value).toBeCloseTo(5.08, 12);
    expect(machines?.[0]?.dryShotSpeed.written).toBe('200 in/s');
  });
});

describe('prices of a plant', () => {
  const real = BASE_PLANT.replace('invented: true', 'invented: false');
  const pricesOf = (text: string): PricesSpec | undefined => readPlant({ name: 'plant.yaml', text }).plant?.prices;
  const prices = pricesOf(real) as PricesSpec;

  it('keep currency, day and every amount with its place', () => {
    expect([prices.currency, prices.date, prices.at?.position().line]).toEqual(['EUR', '2026-03-31', 39]);
    const aluminium = prices.metal.get('aluminium');
    expect(
      [aluminium?.price, aluminium?.meltLoss, aluminium?.meltingEnergy].map((figure) => `${figure?.id} ${figure?.value} ${figure?.unit} ${figure?.at?.path}`),
    ).toEqual([
      'plant.metal-price[aluminium] 2.4 1 prices.metal.aluminium.price',
      'plant.melt-loss[aluminium] 2.5 % prices.metal.aluminium.melt_loss',
      'plant.melting-energy[aluminium] 0.8 kWh/kg prices.metal.aluminium.melting_energy',
    ]);
    expect(prices.alloys.map(({ id, price, meltLoss, at }) => [id, price.value, meltLoss?.value, at?.path])).toEqual([
      ['A380', 2.3, undefined, 'prices.alloys[0].id'],
      ['ZP5', 2.8, 1.5, 'prices.alloys[1].id'],
    ]);
    expect([prices.returnsSold, prices.dross, prices.energy, prices.impregnation].map((figure) => [figure?.value, figure?.unit])).toEqual([
      [65, '%'],
      [0.3, '1'],
      [0.12, '1'],
      [2.2, '1'],
    ]);
    const { trimming, machining, die } = prices;
    expect([trimming?.rate, trimming?.cycle, trimming?.each, machining?.rate, machining?.feature, machining?.handling].map((figure) => figure?.value)).toEqual([
      40, 9, 1.5, 61, 6, 14,
    ]);
    expect([die?.rate, die?.cavitySteel, die?.holderSteel, die?.heatTreatment].map((figure) => figure?.value)).toEqual([62, 13, 3.5, 4.5]);
    expect([prices.energy?.kind, prices.energy?.status, prices.energy?.note]).toEqual(['input', 'source', 'price of 2026-03-31, EUR']);
  });

  it('name the families as the alloys do', () => {
    expect([...prices.metal.keys()]).toEqual(['zinc-aluminium', 'aluminium']);
    expect(Object.values(PRICED_FAMILIES).sort()).toEqual([...new Set(Object.values(rulebook.alloys).map((alloy) => alloy.family))].sort());
  });

  it('of an invented plant are practice and say so', () => {
    const energy = pricesOf(BASE_PLANT)?.energy;
    expect([energy?.kind, energy?.status]).toEqual(['table', 'practice']);
    expect(energy?.note).toMatch(/of an invented plant$/);
  });

  it('may be left out, all or all but the metal, and other signs of currency are read', () => {
    expect(pricesOf(real.slice(0, real.indexOf('prices:')))).toBeUndefined();
    const bare = `${real.slice(0, real.indexOf('prices:'))}prices: { currency: "€", date: 2024-02-29, metal: {} }\n`;
    expect(pricesOf(bare)).toMatchObject({ currency: '€', date: '2024-02-29', alloys: [] });
    expect(pricesOf(bare.replace('metal: {}', 'metal: {}, trimming: { rate: 1e1, cycle: 0.2 min }'))?.trimming).toMatchObject({
      rate: { value: 10 },
      cycle: { value: 12 },
      each: { value: 0, kind: 'default' },
    });
  });

  it('of the starter are read without a finding once they are no comment', () => {
    const at = STARTER_PLANT.indexOf('# prices:');
    const text = STARTER_PLANT.slice(0, at) + STARTER_PLANT.slice(at).replace(/^# /gm, '');
    const { plant, diagnostics } = readPlant({ name: 'plant.yaml', text });
    expect([diagnostics, plant?.prices?.currency, plant?.prices?.die?.rate.value]).toEqual([[], 'EUR', 60]);
    expect(readPlant({ name: 'plant.yaml', text: STARTER_PLANT }).plant?.prices).toBeUndefined();
  });
});
