import { defineFormula } from '../kernel/formula.ts';

/** What the main runner is longer because it goes round castings that stand between the biscuit and the middle of the field. */
export const wayRound = defineFormula({
  id: 'runner.way-round',
  title: 'Way round the castings below the middle',
  symbol: 'L_r',
  inputs: {
    side: { symbol: 'a', unit: 'mm', meaning: 'size of a cavity along the row', range: [2, 2000] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel between cavities, with slides where they stand there', range: [20, 800] },
    off: { symbol: 'k', unit: '1', meaning: 'spacings of the row that the way is off the middle', range: [0, 8], domain: 'not-negative' },
    turns: {
      symbol: 'n',
      unit: '1',
      meaning: 'times that it goes across: 1 where the castings are fed from there, 2 where it comes back to the middle',
      range: [1, 2],
    },
  },
  unit: 'mm',
  equation: '(a + s) * k * n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a row of equal spacing and runs at right angles; drawn runs cut the corners',
  compute: (x) => (x.side + x.steel) * x.off * x.turns,
});

/** Length that a fan finds in the gap between two cavities, in whose middle the run stands that it leaves. */
export const fanRoom = defineFormula({
  id: 'runner.fan-room',
  title: 'Room for a fan beside the run that it leaves',
  symbol: 'L_g',
  inputs: {
    steel: { symbol: 's', unit: 'mm', meaning: 'steel from the middle of the run to the cavity', range: [10, 300] },
    width: { symbol: 'w', unit: 'mm', meaning: 'width of the run that the fan leaves', range: [0, 300], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'max(0, s - w / 2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a run in the middle of its gap',
  compute: ({ steel, width }) => Math.max(0, steel - width / 2),
});
