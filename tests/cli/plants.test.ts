import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { plantWith } from '../unit/engine/plant-with.ts';
import { BASE_PART } from './bad-input/base.ts';
import { runHere } from './run-here.ts';

const EXAMPLE = 'examples/brake-valve-body/brake-valve-body.part.yaml';
const SHOP = 'examples/plants/hot-chamber-shop.yaml';
const HALL = 'examples/plants/large-machine-hall.yaml';
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plants-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function files(limit: string): { part: string; plant: string } {
  const [part, plant] = [join(folder, 'cover.part.yaml'), join(folder, 'plant.yaml')];
  writeFileSync(part, BASE_PART);
  writeFileSync(plant, plantWith('limits:', `  ${limit}`));
  return { part, plant };
}

describe('a plant with equipment, through the command', () => {
  test('the plan names furnace, unit and press of the plant', async () => {
    const { out, err } = await runHere(['plan', EXAMPLE, '--plant', SHOP]);
    for (const words of ['## Metal and furnaces', '| Trim press | P25 |', '| Holding furnace | crucible |', 'Hydraulic or pneumatic trim press'])
      expect(out).toContain(words);
    // One cavity takes less than the furnace melts; a larger casting takes more.
    expect(err).not.toContain('[furnace/melt-rate]');
    const larger = await runHere(['plan', 'examples/gearbox-housing/gearbox-housing.part.yaml', '--plant', SHOP]);
    expect(larger.err).toContain('[furnace/melt-rate]');
  });

  test('plants can be held beside each other', async () => {
    const { code, out } = await runHere(['options', EXAMPLE, '--plant', SHOP, '--plant', HALL]);
    expect(code).toBeLessThan(2);
    expect(out).toContain('Hot chamber shop');
    expect(out).toContain('Large machine hall');
  });
});

describe('a limit of the house, through the command', () => {
  test('that is an error ends the run with 1, and names the line of the plant file', async () => {
    const { part, plant } = files('cycle.time: { greatest: 2 s, severity: error, reason: cells are paced }');
    const { code, err } = await runHere(['plan', part, '--plant', plant]);
    expect(code).toBe(1);
    expect(err).toMatch(/error: Cycle time is .* s, and the plant allows 2 s at most \[house\/cycle\.time\]/);
    expect(err).toContain('limit of the plant: ');
    expect(err.replace(/\s+/g, '')).toMatch(/plant\.yaml:\d+/);
  });

  test('of a value that no plan has ends it with 2, in plan and in check', async () => {
    const { part, plant } = files('cycle.tine: { greatest: 2 s }');
    for (const args of [
      ['plan', part, '--plant', plant],
      ['check', plant],
    ]) {
      const { code, err, out } = await runHere(args);
      expect(code).toBe(2);
      expect(err + out).toContain('did you mean "cycle.time"?');
      expect(err + out).toContain('[spec/unknown-limit]');
    }
  });

  test('is explained, with how it came out', async () => {
    const { out } = await runHere(['explain', 'house/clamp.use', EXAMPLE, '--plant', SHOP]);
    expect(out).toMatch(/verdict {2}holds.*v = clamp\.use = [\d.]+ %.*hot-chamber-shop\.yaml:\d+/s);
  });
});
