import { defineFormula } from '../kernel/formula.ts';

/** Least depth of the cored hole under a tapped thread: room for the lead of the tap. */
export const coredDepth = defineFormula({
  id: 'thread.cored-depth',
  title: 'Least cored depth under a tapped thread',
  symbol: 'h',
  inputs: {
    thread_length: { symbol: 'L_t', unit: 'mm', meaning: 'length of full thread wanted', range: [1, 100] },
    pitch: { symbol: 'P', unit: 'mm', meaning: 'pitch of the thread', range: [0.25, 6] },
  },
  unit: 'mm',
  equation: 'L_t + 3 * P',
  outside: 'extrapolate',
  source: ['INDIANALUCAST-KB'],
  status: 'source',
  accuracy: "least value of a caster's rule (vendor); taps with a long lead need more",
  compute: ({ thread_length, pitch }) => thread_length + 3 * pitch,
});

/** Diameter that the draft leaves in a cored hole where its thread ends. */
export const threadEndDiameter = defineFormula({
  id: 'thread.end-diameter',
  title: 'Diameter of the cored hole where the thread ends',
  symbol: 'd_e',
  inputs: {
    diameter: { symbol: 'd', unit: 'mm', meaning: 'diameter of the hole at its mouth', range: [1, 300] },
    taper: { symbol: 'D', unit: 'mm', meaning: 'draft distance of the hole, on the diameter', range: [0, 10], domain: 'not-negative' },
    thread_length: { symbol: 'L_t', unit: 'mm', meaning: 'length of full thread', range: [1, 100] },
    depth: { symbol: 'h', unit: 'mm', meaning: 'depth of the core', range: [1, 500] },
  },
  unit: 'mm',
  equation: 'd - D * min(1, L_t / h)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for an even taper; a thread longer than the hole ends at its bottom',
  compute: ({ diameter, taper, thread_length, depth }) => diameter - taper * Math.min(1, thread_length / depth),
});

/** Minor diameter of a metric thread of the basic 60 degree profile. */
export const minorDiameter = defineFormula({
  id: 'thread.minor-diameter',
  title: 'Minor diameter of a metric thread',
  symbol: 'D_1',
  inputs: {
    size: { symbol: 'd', unit: 'mm', meaning: 'nominal size of the thread', range: [1, 64] },
    pitch: { symbol: 'P', unit: 'mm', meaning: 'pitch of the thread', range: [0.25, 6] },
  },
  unit: 'mm',
  equation: 'd - 5 / 8 * sqrt(3) * P',
  requires: [{ text: 'a pitch below the size', holds: ({ size, pitch }) => pitch < size }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'geometry of the basic profile: twice five eighths of the height of its triangle; a hole narrower than this makes the tap cut with its core',
  compute: ({ size, pitch }) => size - (5 / 8) * Math.sqrt(3) * pitch,
});
