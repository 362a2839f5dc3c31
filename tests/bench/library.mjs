// Writes a made-up library of aluminium parts, always the same for the same seed:
//   node tests/bench/library.mjs FOLDER [COUNT] [SEED]
// Sizes, walls, holes, slides, tolerances and volumes hang together as they do in a real one; the parts are invented.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const KINDS = ['Cover', 'Housing', 'Bracket', 'Flange', 'Carrier', 'Frame', 'Plate', 'Manifold', 'Lid', 'Support'];
const ALLOYS = ['A380', 'A380', 'A380', 'EN AC-46000', 'EN AC-46000', 'A360', 'A413', 'EN AC-43500'];
const THREADS = [
  ['M5', 4.5],
  ['M6', 5.4],
  ['M8', 7.3],
  ['M10', 9.2],
];

/** Numbers from 0 to 1 from a seed (mulberry32). */
function generator(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** The part file of a number in a library, as text. */
export function partText(number, seed = 1) {
  const random = generator(seed * 100003 + number);
  const between = (least, greatest) => least + random() * (greatest - least);
  const logBetween = (least, greatest) => least * (greatest / least) ** random();
  const pick = (list) => list[Math.floor(random() * list.length)];
  const chance = (share) => random() < share;

  const x = Math.round(logBetween(45, 420));
  const y = Math.round(x * between(0.45, 0.95));
  const z = Math.round(y * between(0.2, 0.55));
  const wall = round(Math.min(4.5, Math.max(1.8, 1.7 + x / 190 + between(-0.2, 0.6))), 1);
  const least = round(Math.max(1.5, wall - between(0.2, 0.8)), 1);
  const greatest = round(wall + between(0.5, 2.6), 1);
  const area = Math.round((x * y * between(0.55, 0.85)) / 100);
  const sides = (2 * (x + y) * z * wall * between(0.4, 0.75)) / 1000;
  const volume = Math.round((area * wall) / 10 + sides);
  const use = pick(['general', 'general', 'general', 'loaded', 'loaded', 'pressure-tight']);
  const alloy = pick(ALLOYS);
  const lines = [
    'diewright: part/1',
    `part: { name: ${pick(KINDS)} ${number}, number: LB-${String(number).padStart(4, '0')}, revision: ${pick(['A', 'B', 'C'])} }`,
    `alloy: ${alloy}   # of the drawing`,
    'geometry:',
    chance(0.08) ? `  mass: ${round((volume * 2.7) / 1000, 3)} kg` : `  volume: ${volume} cm3`,
    `  envelope: [${x} mm, ${y} mm, ${z} mm]`,
    `  projected_area: { z: ${area} cm2 }`,
    `  wall: { least: ${least} mm, nominal: ${wall} mm, greatest: ${greatest} mm }`,
    `  parting_line: ${Math.round(2 * (x + y) * between(1, 1.15))} mm`,
    'walls:',
    `  - { id: outer, side: outside, height: ${Math.round(z * 0.9)} mm, draft: ${pick(['1 deg', '1.5 deg', '2 deg'])} }`,
    `  - { id: inner, side: inside, height: ${Math.round(z * 0.8)} mm, draft: ${pick(['1.5 deg', '2 deg', '3 deg'])} }`,
  ];
  const holes = [];
  const [thread, core] = THREADS[Math.min(3, Math.floor(x / 110))];
  const depth = Math.round(Math.min(z * 0.8, core * between(1.6, 2.4)));
  holes.push(
    `  - { id: screws, diameter: ${core} mm, depth: ${depth} mm, kind: blind, direction: z, count: ${pick([3, 4, 6])}${chance(0.6) ? `, thread: ${thread}` : ''} }`,
  );
  if (chance(0.5)) {
    const bore = round(Math.min(z * 0.55, between(12, 40)), 1);
    const tolerance = chance(0.6) ? `, tolerance: ${round(between(0.15, 0.4), 2)} mm` : '';
    holes.push(
      `  - { id: bore, diameter: ${bore} mm, depth: ${Math.round(Math.min(bore * between(0.6, 1.8), y * 0.4))} mm, kind: blind, direction: ${pick(['x', 'y', '-x'])}${tolerance} }`,
    );
  }
  if (chance(0.25))
    holes.push(
      `  - { id: port, diameter: ${round(Math.min(z * 0.4, between(6, 14)), 1)} mm, depth: ${Math.round(Math.min(z * 0.6, between(8, 20)))} mm, kind: blind, direction: ${pick(['y', '-y'])} }`,
    );
  lines.push('holes:', ...holes, 'dimensions:');
  const tolerance = (nominal) => round((0.25 + (0.025 * Math.max(0, nominal - 25.4)) / 25.4) * between(0.7, 2), 2);
  const long = Math.round(x * between(0.7, 0.98));
  const high = Math.round(z * between(0.5, 0.95));
  lines.push(`  - { id: length, nominal: ${long} mm, tolerance: ${tolerance(long)} mm, across: none }`);
  lines.push(`  - { id: height, nominal: ${high} mm, tolerance: ${round(tolerance(high) + 0.15, 2)} mm, across: parting }`);
  lines.push(`quality: { use: ${use}, finish: ${pick(['utility', 'functional', 'functional'])} }`);
  if (chance(0.4)) lines.push('machining:', `  - { id: face, stock: ${round(between(0.3, 0.6), 1)} mm }`);
  if (chance(0.1)) lines.push('certificate: { Fe: 0.8 %, Mn: 0.3 % }');
  if (!chance(0.05)) {
    const year = Math.round(logBetween(8000, 400000 / (1 + x / 60)) / 500) * 500;
    lines.push(`production: { per_year: ${year}, life: ${year * pick([4, 5, 6, 8])}, hours_per_year: ${pick([4000, 5000, 6000])} }`);
  }
  return `${lines.join('\n')}\n`;
}

function round(value, places) {
  return Number(value.toFixed(places));
}

/** Writes the parts from 1 to `count` into folders of fifty. */
export function writeLibrary(folder, count, seed = 1) {
  for (let number = 1; number <= count; number += 1) {
    const place = join(folder, `line-${String(Math.ceil(number / 50)).padStart(3, '0')}`);
    mkdirSync(place, { recursive: true });
    writeFileSync(join(place, `part-${String(number).padStart(5, '0')}.part.yaml`), partText(number, seed));
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder, count = '200', seed = '1'] = process.argv.slice(2);
  if (folder === undefined) throw new Error('name a folder');
  writeLibrary(folder, Number(count), Number(seed));
}
