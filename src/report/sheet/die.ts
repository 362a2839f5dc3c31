import type { RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { code, paragraph, phrase } from '../markdown/nodes.ts';
import type { FigureFiles } from '../markdown/sections.ts';
import { visibleLine } from '../visible.ts';
import type { Line } from './form.ts';
import { rowsOf, rowsTable } from './lines.ts';
import { legend } from './parts.ts';
import { linesFor } from './sets.ts';

/** What the die maker needs before the die is drawn. */
export const DIE_LINES: readonly Line[] = [
  {
    title: 'Casting',
    pieces: [
      { id: 'part.envelope-x', label: 'x' },
      { id: 'part.envelope-y', label: 'y' },
      { id: 'part.envelope-z', label: 'z' },
      { id: 'part.mass', label: 'mass' },
      { id: 'part.wall-nominal', label: 'nominal wall' },
      { id: 'part.projected-area', label: 'projected area' },
      { id: 'shrink.allowance', label: 'shrink' },
    ],
  },
  {
    title: 'Opening',
    pieces: [
      { id: 'parting.die-opening', label: 'along' },
      { id: 'parting.ejector-side', label: 'ejector half on the' },
      { id: 'machine.cavities', label: 'cavities' },
      { id: 'die.columns', label: 'side by side' },
      { id: 'die.rows', label: 'one above the other' },
      { id: 'die.feeder', label: 'metal enters' },
    ],
  },
  {
    title: 'Machine',
    pieces: [
      { id: 'machine.model' },
      { id: 'machine.tie-bar-x', label: 'between tie bars', after: 'across' },
      { id: 'machine.tie-bar-y', after: 'upright' },
      { id: 'machine.die-height-least', to: 'machine.die-height-greatest', label: 'die height' },
      { id: 'intensification.standing-force', label: 'locking force needed' },
      { id: 'clamp.locking-force', label: 'locking force needed', unless: ['intensification.standing-force'] },
    ],
  },
  {
    title: 'Size',
    pieces: [
      { id: 'die.width', label: 'width' },
      { id: 'die.breadth', label: 'height of the face' },
      { id: 'die.height', label: 'closed height' },
      { id: 'die.mass', label: 'mass' },
      { id: 'die.opening-stroke', label: 'opens' },
    ],
  },
  {
    title: 'Inserts',
    pieces: [
      { id: 'die.insert-count', label: 'in each half' },
      { id: 'die.insert-each-width', label: 'width' },
      { id: 'die.insert-each-height', label: 'height' },
      { id: 'die.insert-edge', label: 'cavity to edge' },
      { id: 'die.steel-below', label: 'steel below the cavity' },
    ],
  },
  {
    title: 'Pillars',
    pieces: [
      { id: 'die.plate', label: 'support plate' },
      { id: 'die.pillar-rows', label: 'rows of pillars' },
      { id: 'die.pillars-each', label: 'in a row' },
      { id: 'die.pillar-diameter', label: 'diameter' },
      { id: 'die.plate-bow', label: 'bow' },
      { id: 'die.bow-greatest', label: 'allowed' },
    ],
  },
  {
    title: 'Cavity steel',
    pieces: [
      { id: 'die.cavity-steel' },
      { id: 'die.steel-grade' },
      { id: 'die.hardness-least', to: 'die.hardness-greatest', label: 'HRC' },
      { id: 'die.brinell-least', to: 'die.brinell-greatest', label: 'HB' },
    ],
  },
  {
    title: 'Other steels',
    each: { id: 'die.component-steel', most: 8, inline: true },
    pieces: [{ id: 'die.component-steel' }, { id: 'die.component-least', to: 'die.component-greatest', label: 'HRC' }],
  },
  {
    title: 'Dimensions',
    each: { id: 'shrink.cavity-dimension', most: 4 },
    pieces: [{ id: 'dimension.nominal' }, { id: 'dimension.tolerance', label: 'plus-minus' }, { id: 'shrink.cavity-dimension', label: 'cavity cut to' }],
  },
  {
    title: 'Least draft',
    pieces: [
      { id: 'draft.least-inside', label: 'inside' },
      { id: 'draft.least-outside', label: 'outside' },
      { id: 'draft.depth', label: 'both for a depth of' },
      { id: 'draft.absolute-least', label: 'by another table at any depth' },
    ],
  },
  {
    title: 'Cores',
    each: { id: 'cooling.core', most: 4 },
    pieces: [
      { id: 'hole.diameter', label: 'diameter' },
      { id: 'hole.core-depth', label: 'depth' },
      { id: 'draft.hole-angle', label: 'draft' },
      { id: 'parting.hole-core', label: 'in' },
      { id: 'cooling.core' },
    ],
  },
  {
    title: 'Core pulls',
    each: { id: 'slide.stroke', most: 6 },
    pieces: [
      { id: 'slide.direction' },
      { id: 'slide.forms', label: 'forms' },
      { id: 'slide.stroke', label: 'stroke' },
      { id: 'parting.slide-drive' },
      { id: 'slide.pin-angle', label: 'pin at' },
      { id: 'slide.lock-angle', label: 'wedge lock at' },
      { id: 'slide.pulling-force', label: 'pulling force' },
    ],
  },
  {
    title: 'Gates',
    pieces: [
      { id: 'gate.count', label: 'of one cavity' },
      { id: 'gate.each-width', label: 'width of each' },
      { id: 'gate.thickness', label: 'thickness' },
      { id: 'gate.land-least', to: 'gate.land-greatest', label: 'land' },
      { id: 'runner.gate-feed', label: 'feed' },
    ],
  },
  {
    title: 'Runner',
    each: { id: 'runner.segment-depth', most: 6 },
    pieces: [
      { id: 'runner.segment-count', label: 'number' },
      { id: 'runner.segment-depth', label: 'depth' },
      { id: 'runner.segment-width', label: 'width' },
      { id: 'runner.segment-end-width', label: 'at its end' },
      { id: 'runner.segment-length', label: 'length' },
    ],
  },
  {
    title: 'Feeder',
    pieces: [
      { id: 'machine.plunger', label: 'plunger' },
      { id: 'sleeve.biscuit-thickness', label: 'biscuit' },
      { id: 'pot.nozzle-diameter', label: 'nozzle bore at least' },
      { id: 'gooseneck.channel-diameter', label: 'gooseneck at least' },
      { id: 'cooling.sprue-shell', label: 'sprue around its spreader' },
    ],
  },
  {
    title: 'Overflows',
    pieces: [
      { id: 'overflow.number', label: 'of one cavity' },
      { id: 'overflow.each', label: 'each' },
      { id: 'overflow.gate-width', label: 'gate width' },
      { id: 'overflow.gate-thickness', label: 'gate thickness' },
    ],
  },
  {
    title: 'Vents',
    pieces: [
      { id: 'vent.kind', label: 'kind' },
      { id: 'vent.number', label: 'number' },
      { id: 'vent.chill-gap', label: 'gap' },
      { id: 'vent.depth', label: 'depth', unless: ['vent.chill-gap', 'vent.vacuum-pressure'] },
      { id: 'vent.land', label: 'land', unless: ['vent.chill-gap', 'vent.vacuum-pressure'] },
      { id: 'vent.width', label: 'total width' },
      { id: 'vent.area', label: 'area of one cavity' },
      { id: 'vent.vacuum-pressure', label: 'evacuated to' },
    ],
  },
  {
    title: 'Cooling lines',
    pieces: [
      { id: 'cooling.medium' },
      { id: 'cooling.line-diameter', label: 'diameter' },
      { id: 'cooling.line-depth', label: 'centre below the surface' },
      { id: 'cooling.pitch', label: 'pitch' },
      { id: 'cooling.flow', label: 'flow of a circuit' },
      { id: 'cooling.coolant-temperature', label: 'at' },
    ],
  },
  {
    title: 'Lines by half',
    each: { id: 'cooling.length-laid', most: 6, inline: true },
    pieces: [
      { id: 'cooling.lines', label: 'lines' },
      { id: 'cooling.length-laid', label: 'together' },
    ],
  },
  {
    title: 'Ejector pins',
    pieces: [
      { id: 'ejection.pins', label: 'of the die' },
      { id: 'ejection.cavity-pins', label: 'under one casting' },
      { id: 'ejection.pin-diameter', label: 'diameter' },
      { id: 'ejection.stroke', label: 'stroke' },
      { id: 'ejection.return' },
    ],
    note: 'by the deepest cores, on bosses, rims and rib crossings, and below overflows, none on a sealing or visible face',
  },
  {
    title: 'Life',
    pieces: [
      { id: 'die.shots-needed', label: 'shots over the life of the part' },
      { id: 'die.life', label: 'a set of cavities lasts' },
      { id: 'die.sets', label: 'sets' },
      { id: 'die.sets-least', to: 'die.sets-greatest', after: 'as they last long or short' },
      { id: 'die.core-life-least', to: 'die.core-life-greatest', label: 'cores last' },
    ],
  },
];

/** The drawing of the die face among the figures of a plan. */
const LAYOUT = 'die-layout';

export function dieBody(plan: Plan, figures: FigureFiles): RootContent[] {
  const rows = rowsOf(plan, linesFor(plan, 'die', DIE_LINES));
  return [rowsTable(rows, { title: 'Die', planned: 'Planned' }), ...legend(rows), ...layout(plan, figures.get(LAYOUT))];
}

/** Where the drawing lies, or how to get it. */
function layout(plan: Plan, file: string | undefined): RootContent[] {
  if (file !== undefined) {
    const url = file.split('/').map(encodeURIComponent).join('/');
    return [paragraph('Face of the die, to scale: ', { type: 'link', url, children: phrase(visibleLine(file)) })];
  }
  const drawn = plan.sections.some(({ blocks }) => blocks.some((block) => block.kind === 'figure' && block.id === LAYOUT));
  return drawn ? [paragraph('The face of the die, to scale, is drawn with ', code('--format markdown=FILE'), '.')] : [];
}
