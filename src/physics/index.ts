import type { Formula } from '../kernel/formula.ts';
import * as castingSet from './casting-set.ts';
import * as cavities from './cavities.ts';
import * as certificate from './certificate.ts';
import * as clamp from './clamp.ts';
import * as clampUse from './clamp-use.ts';
import * as coolingCores from './cooling/cores.ts';
import * as coolingFilm from './cooling/film.ts';
import * as coolingFlow from './cooling/flow.ts';
import * as coolingLines from './cooling/lines.ts';
import * as coolingPitch from './cooling/pitch.ts';
import * as coolingPlan from './cooling/plan.ts';
import * as coolingRunning from './cooling/running.ts';
import * as cost from './cost.ts';
import * as costCavities from './cost-cavities.ts';
import * as costDie from './cost-die.ts';
import * as costSpread from './cost-spread.ts';
import * as costTotal from './cost-total.ts';
import * as cycle from './cycle.ts';
import * as cycleCheck from './cycle-check.ts';
import * as cycleRate from './cycle-rate.ts';
import * as die from './die.ts';
import * as dieBlock from './die-block.ts';
import * as dieCores from './die-cores.ts';
import * as dieInsert from './die-insert.ts';
import * as dieLife from './die-life.ts';
import * as diePlates from './die-plates.ts';
import * as dieSteel from './die-steel.ts';
import * as dieSurface from './die-surface.ts';
import * as draft from './draft.ts';
import * as dwell from './dwell.ts';
import * as ejectionArea from './ejection/area.ts';
import * as ejectionForce from './ejection/force.ts';
import * as ejectionForcePlan from './ejection/force-plan.ts';
import * as ejectionPinCount from './ejection/pin-count.ts';
import * as ejectionPins from './ejection/pins.ts';
import * as ejectionStroke from './ejection/stroke.ts';
import * as evacuation from './evacuation.ts';
import * as fill from './fill.ts';
import * as fillPlan from './fill-plan.ts';
import * as fillet from './fillet.ts';
import * as finish from './finish.ts';
import * as furnace from './furnace.ts';
import * as gate from './gate.ts';
import * as gatePlan from './gate-plan.ts';
import * as gateShare from './gate-share.ts';
import * as gooseneck from './gooseneck.ts';
import * as heat from './heat.ts';
import * as heatFace from './heat-face.ts';
import * as heatPlan from './heat-plan.ts';
import * as hole from './hole.ts';
import * as impregnation from './impregnation.ts';
import * as intensification from './intensification.ts';
import * as lubricant from './lubricant.ts';
import * as machine from './machine.ts';
import * as machineMargin from './machine-margin.ts';
import * as metal from './metal.ts';
import * as metalBalance from './metal-balance.ts';
import * as overflow from './overflow.ts';
import * as overflowPlan from './overflow-plan.ts';
import * as parting from './parting.ts';
import * as porosity from './porosity.ts';
import * as porosityEstimate from './porosity-estimate.ts';
import * as pq2 from './pq2.ts';
import * as pq2Margin from './pq2-margin.ts';
import * as pq2Plan from './pq2-plan.ts';
import * as pq2Window from './pq2-window.ts';
import * as pressureCentre from './pressure-centre.ts';
import * as replan from './replan.ts';
import * as rib from './rib.ts';
import * as runner from './runner.ts';
import * as runnerLengths from './runner-lengths.ts';
import * as runnerNetwork from './runner-network.ts';
import * as runnerRuns from './runner-runs.ts';
import * as runnerWay from './runner-way.ts';
import * as shot from './shot.ts';
import * as shotPlan from './shot-plan.ts';
import * as shrink from './shrink.ts';
import * as sleeveFill from './sleeve/fill.ts';
import * as sleevePlunger from './sleeve/plunger.ts';
import * as sleeveTravel from './sleeve/travel.ts';
import * as sleeveWave from './sleeve/wave.ts';
import * as slide from './slide.ts';
import * as slideForce from './slide-force.ts';
import * as slowShotMotion from './slow-shot/motion.ts';
import * as slowShotSpeed from './slow-shot/speed.ts';
import * as slowShotTravel from './slow-shot/travel.ts';
import * as slowShotWave from './slow-shot/wave.ts';
import * as solidification from './solidification.ts';
import * as sprayCooling from './spray-cooling.ts';
import * as squeeze from './squeeze.ts';
import * as thread from './thread.ts';
import * as tolerance from './tolerance.ts';
import * as toleranceSum from './tolerance-sum.ts';
import * as vent from './vent.ts';
import * as ventBalance from './vent-balance.ts';
import * as ventPlan from './vent-plan.ts';
import * as wall from './wall.ts';

/** The topic files export formulas and nothing else, so a formula is in the catalogue as soon as it is written. */
const TOPICS: readonly Readonly<Record<string, unknown>>[] = [
  cavities,
  castingSet,
  certificate,
  clamp,
  clampUse,
  die,
  dieSteel,
  draft,
  dwell,
  evacuation,
  fill,
  fillPlan,
  fillet,
  gate,
  gatePlan,
  gateShare,
  gooseneck,
  heat,
  hole,
  intensification,
  machine,
  machineMargin,
  metal,
  overflow,
  overflowPlan,
  parting,
  porosity,
  porosityEstimate,
  pq2,
  pq2Margin,
  pq2Plan,
  pq2Window,
  pressureCentre,
  rib,
  runner,
  runnerLengths,
  runnerNetwork,
  runnerRuns,
  runnerWay,
  shot,
  shotPlan,
  shrink,
  sleeveFill,
  sleevePlunger,
  sleeveTravel,
  sleeveWave,
  slide,
  slideForce,
  squeeze,
  slowShotMotion,
  slowShotSpeed,
  slowShotTravel,
  slowShotWave,
  thread,
  tolerance,
  toleranceSum,
  vent,
  ventBalance,
  ventPlan,
  wall,
  solidification,
  coolingLines,
  coolingPitch,
  coolingFilm,
  coolingPlan,
  coolingCores,
  coolingFlow,
  coolingRunning,
  heatPlan,
  heatFace,
  dieSurface,
  ejectionArea,
  ejectionForce,
  ejectionForcePlan,
  ejectionPins,
  ejectionPinCount,
  ejectionStroke,
  diePlates,
  dieBlock,
  dieCores,
  dieInsert,
  dieLife,
  cycle,
  cycleCheck,
  cycleRate,
  finish,
  furnace,
  impregnation,
  lubricant,
  sprayCooling,
  metalBalance,
  cost,
  costDie,
  costSpread,
  costTotal,
  costCavities,
  replan,
];

/** Every formula, sorted by id. Each is typed by its own inputs where it is defined; here they share the widest type. */
export const FORMULAS: readonly Formula[] = TOPICS.flatMap((topic) => Object.values(topic) as Formula[]).sort((a, b) => (a.id < b.id ? -1 : 1));

const BY_ID: ReadonlyMap<string, Formula> = new Map(FORMULAS.map((formula) => [formula.id, formula]));

/** The formula of an id such as `gate.area`, or undefined. */
export function formulaById(id: string): Formula | undefined {
  return BY_ID.get(id);
}
