import { FURTHER_TERMS, type Term } from './further-terms.ts';

export type { Term };

/** The words that every plan explains at its end, for readers who are new to die casting, in alphabetical order; general knowledge of the trade, in words of our own. */
export const TERMS: readonly Term[] = [
  {
    term: 'angle pin',
    meaning: 'Pin fixed at an angle in one die half; as the die opens it pushes a slide outwards, and back in as it closes.',
  },
  {
    term: 'atomised stream',
    meaning: 'Metal that leaves the gate as a spray of drops, because the gate is thin and the metal fast, and not as a solid jet.',
  },
  {
    term: 'biscuit',
    meaning: 'Slug of metal left between the plunger and the die at the end of a cold-chamber shot; it comes out with the runner and is melted again.',
  },
  { term: 'cavity', meaning: 'Hollow in the die that forms one casting. A die with four cavities makes four castings a shot.' },
  {
    term: 'chill vent',
    meaning: 'Block at the edge of the die with a long zigzag gap: air passes, while metal freezes on its way through.',
  },
  {
    term: 'choked flow',
    meaning: 'Gas that leaves a vent at its greatest speed; more pressure behind it no longer makes it faster.',
  },
  {
    term: 'cold chamber',
    meaning:
      'Machine whose shot end stays outside the melt: metal is ladled into a sleeve for every shot. For aluminium, copper alloys and large magnesium parts.',
  },
  { term: 'cold shut', meaning: 'Seam in the surface where two streams of metal met too cold to weld together.' },
  {
    term: 'core pull',
    also: ['core'],
    meaning: 'Core that forms a hole or an undercut off the die opening and must be drawn out before the casting can leave the die; here one for each slide.',
  },
  { term: 'cover half', meaning: 'Die half that stays still; the metal comes in through it.' },
  { term: 'DCTG', meaning: 'Dimensional casting tolerance grade of ISO 8062-3; the higher the number, the wider the tolerance.' },
  { term: 'draft', meaning: 'Slight slope of a face along the way it leaves the die, so that the casting comes off the steel.' },
  { term: 'ejector half', meaning: 'Die half that moves and carries the ejector pins; the casting stays on it when the die opens.' },
  { term: 'fill time', meaning: 'Time from the first metal at the gate until the cavity is full, some hundredths of a second.' },
  { term: 'flash', meaning: 'Thin fins of metal in the parting line and round moving die parts.' },
  {
    term: 'gate',
    meaning:
      'Thin slot through which metal enters the cavity from the runner, and where the casting is broken or trimmed off. Its land is the length of the thinnest part.',
  },
  { term: 'gooseneck', meaning: 'Iron channel that stands in the melt of a hot-chamber machine and leads from the plunger to the nozzle.' },
  { term: 'hot chamber', meaning: 'Machine whose plunger stands in the melt; fast, for zinc, lead, tin and smaller magnesium parts.' },
  {
    term: 'intensified pressure',
    meaning: 'Higher pressure that a cold-chamber machine puts on the metal once the cavity is full, to feed shrinkage and squeeze gas.',
  },
  { term: 'liquidus', meaning: 'Temperature above which an alloy is wholly liquid; below its solidus it is wholly solid.' },
  { term: 'locking force', also: ['clamp', 'clamping force'], meaning: 'Force with which the machine holds the die shut against the metal pressure.' },
  { term: 'overflow', meaning: 'Pocket beside the cavity that takes the first, coldest metal with its oxide and air; trimmed off.' },
  { term: 'parting line', meaning: 'Line round the casting where the die halves meet.' },
  { term: 'pinned', meaning: 'Fixed by the engineer in the part file: the plan keeps the value and judges it like any other.' },
  { term: 'plunger', also: ['tip', 'plunger tip'], meaning: 'Piston that pushes the metal into the die.' },
  { term: 'projected area', meaning: 'Area of casting, runner, overflows and biscuit seen along the die opening; metal pressure on it opens the die.' },
  { term: 'runner', meaning: 'Channel from biscuit (cold chamber) or sprue (hot chamber) to the gates.' },
  { term: 'shot', meaning: 'One filling of the die, and all the metal of it: castings, overflows, runner and biscuit.' },
  {
    term: 'sleeve fill',
    meaning: 'Share of the shot sleeve, the tube that the plunger runs in, that the ladled metal takes; the rest is air that must get out.',
  },
  { term: 'slide', meaning: 'Die part that moves sideways and carries cores for what the die opening cannot form.' },
  {
    term: 'slow shot and fast shot',
    also: ['slow shot', 'fast shot'],
    meaning: 'The plunger first pushes slowly until metal stands at the gate, then fast to fill the cavity.',
  },
  { term: 'soldering', meaning: 'Cast metal that sticks to the die steel, mostly where it is hot.' },
  { term: 'tie bars', meaning: 'Four bars that hold the platens of the machine together; the die must fit between them.' },
  { term: 'undercut', meaning: 'Shape that holds the casting in the die when it opens, unless a slide frees it first.' },
  { term: 'wedge lock', meaning: 'Sloping face that the closing die presses against a slide, so that the metal cannot push it back.' },
];

/** All words that `explain` knows and `list terms` shows, in alphabetical order. */
export const ALL_TERMS: readonly Term[] = [...TERMS, ...FURTHER_TERMS].sort((a, b) => (a.term.toLowerCase() < b.term.toLowerCase() ? -1 : 1));

/** The entry for a word, whatever its case and hyphens, in the singular or the plural. */
export function findTerm(word: string): Term | undefined {
  const wanted = new Set(forms(word));
  return ALL_TERMS.find(({ term, also = [] }) => [term, ...also].some((name) => forms(name).some((form) => wanted.has(form))));
}

function forms(word: string): string[] {
  const plain = word.trim().toLowerCase().replaceAll('-', ' ');
  return [plain, plain.replace(/s$/, ''), plain.replace(/ies$/, 'y')];
}
