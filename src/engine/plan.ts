import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import type { SourceRef, Status } from '../kernel/status.ts';
import type { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';
import type { Change } from './rule-data.ts';
import type { WeakFigure } from './weak.ts';

/** A decision: the word chosen, why, on what authority, and what else could have been chosen. */
export interface Decision {
  readonly id: string;
  readonly title: string;
  readonly value: string;
  readonly because: string;
  readonly kind: 'choice' | 'pinned' | 'search' | 'input';
  readonly status: Status;
  readonly source: readonly SourceRef[];
  /** Ids of the values it was decided on. */
  readonly parents: readonly string[];
  readonly alternatives: readonly { readonly value: string; readonly because: string }[];
  readonly at?: Place;
}

/** A text with values in it; the printer puts number and unit, so that no number is typed into a sentence. */
export type Phrase = readonly (string | { readonly value: string } | { readonly decision: string })[];

export type Cell = string | { readonly value: string } | { readonly decision: string };

export type Block =
  | { readonly kind: 'values'; readonly ids: readonly string[] }
  | { readonly kind: 'table'; readonly title?: string; readonly columns: readonly string[]; readonly rows: readonly (readonly Cell[])[] }
  | { readonly kind: 'text'; readonly phrase: Phrase }
  | Figure;

/** A point of a curve, in the units of the axes. */
export type FigurePoint = readonly [x: number, y: number];

export interface FigureAxis {
  readonly title: string;
  readonly unit: Unit;
}

interface FigureHead {
  readonly kind: 'figure';
  /** Short word for the file name, unique in the plan, such as `pq2`. */
  readonly id: string;
  readonly title: string;
  /** What it shows, in one or two sentences, for readers who cannot see it. */
  readonly text: string;
}

/**
 * Curves over two axes. Curves are samples of formulas for the eye; every number that the plan states is a value of its
 * own, and a mark says which.
 */
export interface Chart extends FigureHead {
  readonly form: 'chart';
  readonly x: FigureAxis;
  readonly y: FigureAxis;
  /** A second axis on the right, for curves that say so. */
  readonly right?: FigureAxis;
  /** Shaded areas, drawn first: windows in which a point should lie. */
  readonly areas: readonly { readonly title: string; readonly points: readonly FigurePoint[] }[];
  readonly curves: readonly { readonly title: string; readonly points: readonly FigurePoint[]; readonly dashed?: true; readonly axis?: 'right' }[];
  /** Points and positions with a label; a mark without `y` is an upright line. */
  readonly marks: readonly { readonly title: string; readonly x: number; readonly y?: number; readonly values: readonly string[] }[];
}

/**
 * What lasts from when to when, a row each, from top to bottom. The drawing prints how long each bar lasts, in the unit of
 * the axis, and the end of the last one as the total. A row without a bar prints its title only.
 */
export interface Timeline extends FigureHead {
  readonly form: 'timeline';
  /** Title and unit of the time axis, which begins at 0. */
  readonly x: FigureAxis;
  /** `strong` marks what governs; a row may have several bars. */
  readonly rows: readonly {
    readonly title: string;
    readonly bars: readonly { readonly from: number; readonly to: number; readonly strong?: true; readonly values: readonly string[] }[];
  }[];
}

/** What a shape of a drawing stands for; it sets colour and pattern, and its name in the legend. */
export type ShapeRole = 'outline' | 'steel' | 'cavity' | 'slide' | 'feeder' | 'line' | 'bar';

/**
 * A shape of a drawing in the drawing's unit: y upwards, a box by its centre and size. A path of the role `line` is an open
 * stroke, any other is closed and filled.
 */
export type Shape =
  | {
      readonly shape: 'box';
      readonly role: ShapeRole;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly label?: string;
    }
  | { readonly shape: 'circle'; readonly role: ShapeRole; readonly x: number; readonly y: number; readonly diameter: number }
  | { readonly shape: 'path'; readonly role: ShapeRole; readonly points: readonly FigurePoint[] };

/** Something drawn to scale, such as the cavities in the die block between the tie bars. */
export interface Drawing extends FigureHead {
  readonly form: 'drawing';
  readonly unit: Unit;
  /** Name of each role that is drawn, for the legend, in its order. */
  readonly roles: readonly { readonly role: ShapeRole; readonly title: string }[];
  /** Drawn in this order, later ones over earlier ones. */
  readonly shapes: readonly Shape[];
  /**
   * Dimension lines: from one point to another, with the value that is their length. `text` names it; the drawing adds
   * length and unit, so it holds no number. The points lie on the edges measured: the drawing moves a level line above or
   * below all shapes, an upright one to their left or right, whichever side the points are nearer to.
   */
  readonly dimensions: readonly { readonly from: FigurePoint; readonly to: FigurePoint; readonly text: string; readonly values: readonly string[] }[];
}

/** A drawing beside the plan. */
export type Figure = Chart | Timeline | Drawing;

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
}

export interface PlannedCaution {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly defer: string;
  readonly because: readonly string[];
  readonly status: Status;
  readonly source: readonly SourceRef[];
  /** The file of the house rules that it comes from. */
  readonly house?: string;
}

/** What was not judged, and what is missing for it. */
export interface Unchecked {
  readonly id: string;
  readonly title: string;
  readonly missing: string;
}

/** How one limit came out for the part, or for one of its items. */
export interface Judged {
  readonly id: string;
  readonly item?: string;
  readonly outcome: 'pass' | 'fail' | 'open' | 'not-applicable';
}

/** What every plan says of itself: what it is, who must look at it, when not to shoot, what no plan covers. */
export interface Standing {
  readonly status: string;
  readonly reviewers: readonly string[];
  readonly hold: string;
  readonly notChecked: readonly string[];
}

/** A casting plan: everything a report prints, in order, with nothing left to compute. */
/** A part of a die: how many castings of it a shot has, and its plan in this die. */
export interface DiePart {
  readonly id: string;
  readonly count: number;
  readonly plan: Plan;
}

export interface Plan {
  readonly tool: { readonly name: string; readonly version: string };
  readonly standing: Standing;
  readonly part: { readonly name: string; readonly number?: string; readonly revision?: string; readonly note?: string; readonly file: string };
  readonly alloy: { readonly id: string; readonly family: string; readonly asked: string; readonly designations: readonly string[] };
  readonly plant: { readonly name: string; readonly invented: boolean; readonly note?: string };
  readonly decisions: ReadonlyMap<string, Decision>;
  readonly texts: ReadonlyMap<string, string>;
  readonly values: ReadonlyMap<string, Traced>;
  readonly titles: ReadonlyMap<string, string>;
  readonly sections: readonly Section[];
  readonly findings: readonly Diagnostic[];
  readonly cautions: readonly PlannedCaution[];
  readonly unchecked: readonly Unchecked[];
  readonly judged: readonly Judged[];
  /** Where memory and common practice enter, the figure to check first at the top. */
  readonly weak: readonly WeakFigure[];
  /** Bibliography of the sources this plan cites. */
  readonly sources: ReadonlyMap<string, string>;
  /** What house rules and a project file have changed of the built-in rules that this plan is worked out by; absent where nothing is. */
  readonly changes?: readonly Change[];
  /** Of the plan of a die with castings of several parts: the parts, in the order of the die file. `part` is then the die. */
  readonly parts?: readonly DiePart[];
  /** Of the plan of a part in such a die: the die, and which of its parts this is. */
  readonly inDie?: { readonly name: string; readonly file: string };
}

/** The findings of a plan; of a die those of its parts too, in their order. */
export function allFindings({ findings, parts = [] }: Plan): readonly Diagnostic[] {
  return [...findings, ...parts.flatMap(({ plan }) => plan.findings)];
}

/** The figures of a plan; of a die those of its parts too. */
export function allFigures({ sections, parts = [] }: Plan): Figure[] {
  return [...sections.flatMap(({ blocks }) => blocks.filter((block) => block.kind === 'figure')), ...parts.flatMap(({ plan }) => allFigures(plan))];
}
