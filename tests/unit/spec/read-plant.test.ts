import { describe, expect, it } from 'vitest';
import { type PlantSpec, readPlant } from '../../../src/spec/index.ts';
import { BASE_PLANT } from '../../cli/bad-input/base.ts';

describe('a plant', () => {
  const { plant, diagnostics } = readPlant({ name: 'plant.yaml', text: BASE_PLANT.replace('invented: true', 'invented: false') });
  const [cold, hot] = (plant as PlantSpec).machines;

  it('has no findings and keeps its words', () => {
    expect(diagnostics).toEqual([]);
    expect(plant).toMatchObject({ name: 'North hall', invented: false, note: 'Two machines' });
    expect([cold?.chamber, cold?.shot, hot?.chamber, hot?.shot]).toEqual(['cold', 'horizontal', 'hot', 'vertical']);
  });

  it('holds each figure as a traced input of the plant', () => {
    const { plungers = [], at, id, chamber, shot, ...figures } = cold as NonNullable<typeof cold>;
    expect([id, chamber, shot]).toEqual(['cold-4000', 'cold', 'horizontal']);
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
