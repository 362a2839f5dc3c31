import { number, rough } from './define.ts';

/** Temperature of the die surface over a steady cycle. */
export const DIE_SURFACE_WORDS = {
  'cooling.surface-excess': rough('K', 'Mean die surface temperature above that before the shot', 0),
  'heat.wall-per-area': number('kJ/m2', 'Heat of the nominal wall for a unit of die face'),
  'cooling.face-conductance': number('W/(m2.K)', 'Conductance of the lines behind the nominal wall'),
  'heat.surface-before': rough('degC', 'Die surface before the shot', 0),
  'heat.surface-peak': rough('degC', 'Die surface, highest', 0),
  'heat.surface-mean': rough('degC', 'Die surface, mean of the cycle', 0),
  'heat.surface-swing': rough('K', 'Swing of the die surface', 0),
} as const;
