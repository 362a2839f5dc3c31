import type { Limit } from '../../rulebook/types.ts';
import type { Extent } from '../make-plan.ts';
import type { Step } from '../step.ts';
import { clampStep } from '../steps/clamp.ts';
import { coolingStep } from '../steps/cooling/index.ts';
import { cycleStep } from '../steps/cycle/index.ts';
import { cycleRateStep } from '../steps/cycle-rate/index.ts';
import { designStep } from '../steps/design/index.ts';
import { workCoreStrength, workCores, workLineRoom } from '../steps/die/cores.ts';
import { dieStep } from '../steps/die/index.ts';
import { showCores } from '../steps/die/show.ts';
import { dieSurfaceStep } from '../steps/die-surface/index.ts';
import { ejectionStep } from '../steps/ejection/index.ts';
import { fillStep } from '../steps/fill.ts';
import { finishStep } from '../steps/finish/index.ts';
import { furnaceStep } from '../steps/furnace/index.ts';
import { gateStep } from '../steps/gate.ts';
import { gooseneckStep } from '../steps/gooseneck.ts';
import { heatStep } from '../steps/heat/index.ts';
import { intensificationStep } from '../steps/intensification/index.ts';
import { lubricantStep } from '../steps/lubricant/index.ts';
import { machineStep } from '../steps/machine/index.ts';
import { overflowStep } from '../steps/overflow.ts';
import { partingStep } from '../steps/parting/index.ts';
import { porosityStep } from '../steps/porosity.ts';
import { pq2Step } from '../steps/pq2/index.ts';
import { shotStep } from '../steps/shot.ts';
import { slowShotStep } from '../steps/slow-shot/index.ts';
import { solidificationStep } from '../steps/solidification/index.ts';
import { squeezeStep } from '../steps/squeeze.ts';
import { ventStep } from '../steps/vent.ts';
import { ventBalanceStep } from '../steps/vent-balance/index.ts';
import { castingsSection, costSection, ejectionSection, trimmingSection } from './show.ts';
import { runnerSection } from './show-runner.ts';
import { ofTheSet } from './words.ts';

// What of a die with castings of several parts is said in the plan of the die, and what in the plan of each part.

/** Rules that are about one casting. */
const PART_TOPICS: ReadonlySet<string> = new Set([
  'certificate',
  'draft',
  'fill',
  'fillet',
  'gate',
  'hole',
  'insert',
  'machining',
  'overflow',
  'part',
  'parting',
  'porosity',
  'rib',
  'substances',
  'thread',
  'tolerance',
  'undercut',
  'wall',
]);
const PART_LIMITS =
  /^(ejection\/(cover-grip|pin|pins|sticking)|finish\/(break-off|flash|heat-treatment|leak-rate|quench)|slide\/|vent\/(room|depth|vacuum-needed)|die\/(core|line-distance|prehardened|hardness))/;

const topicOf = (id: string): string => id.slice(0, id.indexOf('/'));
/** Judged by what the whole shot covers. */
const SHOT_LIMITS: ReadonlySet<string> = new Set(['overflow/area-usual']);
const isOfPart = ({ id }: Limit): boolean => !SHOT_LIMITS.has(id) && (PART_TOPICS.has(topicOf(id)) || PART_LIMITS.test(id));

/** Rules about the number of cavities that are all alike. */
const OF_ALIKE: ReadonlySet<string> = new Set([
  'cost/best-cavities',
  'cycle/cavities-spare',
  'cycle/hours',
  'die/slide-between',
  'die/hydraulic-between',
  'runner/balance',
]);

/** Values that castings of several parts do not have in common: they stand in the plans of the parts. */
const NOT_COMMON =
  /^(porosity\.(?!shrinkage$)|tolerance|thread|rib|fillet|dimension|certificate|draft|wall\.(?!.*\[)|gate\.(each|wall|greatest-width|land)|fill\.(longest|recommended|time-share|frommer|handbook|older))/;

/** A value of the plan of a part that a die of several parts has its own say in; a pin of it holds for a die of that part alone. */
export function isSetAside(id: string): boolean {
  return SHOT_WIDE.test(id);
}
const SHOT_WIDE =
  /^(machine|clamp|shot|sleeve|pot|slow-shot|pq2|intensification|squeeze|cooling|heat|cycle|cycle-rate|die|cost|metal|cavities|runner|lubricant|furnace|production)\.|^(fill\.time|gate\.velocity|ejection\.return)$/;

/** What the plan of one part says of a cavity, the plan of a die says of all castings of its shot. */
const DIE_TITLES: ReadonlyMap<string, string> = new Map(
  Object.entries({
    'machine.cavities': 'Sets of castings in the die',
    'part.volume': 'Castings of the shot, volume',
    'part.mass': 'Castings of the shot, mass',
    'part.projected-area': 'Castings of the shot, projected area',
    'part.surface-area': 'Castings of the shot, surface',
    'part.parting-line': 'Castings of the shot, parting lines',
    'part.wall-nominal': 'Thickest nominal wall of the castings',
    'part.wall-least': 'Least wall of the castings',
    'part.wall-greatest': 'Greatest wall of the castings',
    'part.side-a': 'Castings in the die, longer extent',
    'part.side-b': 'Castings in the die, shorter extent',
    'part.depth': 'Deepest draw of the castings',
    'overflow.volume': 'Overflows of the shot, volume',
    'gate.area': 'Gate area of the shot',
    'gate.thickness': 'Thinnest gate of the shot',
    'gate.width': 'Gate width of the shot',
    'gate.flow-volume': 'Flow volume of the shot',
    'runner.volume': 'Runner of the shot',
    'production.per-year': 'Sets needed a year',
    'production.life': 'Sets needed over the life',
    'cost.per-part': 'Cost of a good set',
    'cost.without-die': 'Cost of a good set without the dies',
    'cost.die-hours': 'Design and toolmaking hours of the die',
    'cost.die-single': 'Die, estimated (money of the plant)',
    'cost.metal': 'Metal in a set',
    'ejection.cavity-force': 'Ejection force of all castings',
    'ejection.cavity-pins': 'Ejector pins of all castings',
    'part.mass-from-volume': 'Castings of the shot, mass by volume and density',
    'ejection.runner-pins': 'Pins on the runner of one casting',
  }),
);

export const DIE_EXTENT: Extent = {
  sections: [
    castingsSection,
    machineStep,
    clampStep,
    runnerSection,
    shotStep,
    slowShotStep,
    gooseneckStep,
    squeezeStep,
    pq2Step,
    intensificationStep,
    ventBalanceStep,
    solidificationStep,
    heatStep,
    coolingStep,
    dieSurfaceStep,
    ejectionSection,
    trimmingSection,
    dieStep,
    lubricantStep,
    cycleStep,
    cycleRateStep,
    furnaceStep,
    costSection,
  ],
  isJudged: (limit) => !isOfPart(limit) && !OF_ALIKE.has(limit.id),
  isKept: (id) => !NOT_COMMON.test(id),
  // Values of the set name the part that they are of.
  titled: (id, usual) => DIE_TITLES.get(id) ?? (id.startsWith('set.') ? usual : ofTheSet(usual)),
};

/** Worked out for each part, once the shot is known. */
export const PART_STEPS = [
  ventStep,
  porosityStep,
  ejectionStep,
  {
    id: 'die',
    title: 'Cores in the die',
    work: (ledger) => {
      ledger.attempt('die.core-bending', 'Slender cores', () => workCores(ledger));
      ledger.attempt('die.line-room', 'Holes between the cooling lines', () => workLineRoom(ledger));
      ledger.attempt('die.core-stress-greatest', 'Strength of the cores', () => workCoreStrength(ledger));
    },
    show: showCores,
  },
  finishStep,
] as const satisfies readonly Step[];

export const PART_EXTENT: Extent = {
  sections: [designStep, partingStep, fillStep, gateStep, overflowStep, ...PART_STEPS],
  isJudged: isOfPart,
  // The press and the ejector plate take the whole shot, so they stand in the plan of the die.
  isKept: (id) => !/^(finish\.(press|plant-drive|room-|shot-|stroke-needed)|ejection\.pins$)/.test(id),
  titled: (id, usual) => (/^(ejection\.force|finish\.trim-force$)/.test(id) ? usual.replace(/of the (whole )?shot/, 'of all castings of the part') : usual),
};
