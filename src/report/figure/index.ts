import type { Figure } from '../../engine/plan.ts';
import { chartSvg } from './chart/index.ts';
import { drawingSvg } from './drawing/index.ts';
import type { PlanValues } from './numbers.ts';
import { timelineSvg } from './timeline/index.ts';

/**
 * A figure of a plan as one SVG document: light or dark as the reader has it, text as text, nothing loaded from elsewhere.
 * With the values of the plan, lengths are printed in the digits in which the plan prints them.
 */
export function figureSvg(figure: Figure, values: PlanValues = new Map()): string {
  switch (figure.form) {
    case 'chart':
      return chartSvg(figure);
    case 'timeline':
      return timelineSvg(figure, values);
    case 'drawing':
      return drawingSvg(figure, values);
  }
}
