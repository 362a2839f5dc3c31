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
