import { CELLS } from './cells.ts';
import { DIES } from './dies.ts';
import { FIELDS } from './fields.ts';
import { FIGURES } from './figures.ts';
import type { BadInput } from './make.ts';
import { SYNTAX } from './syntax.ts';

export type { BadInput } from './make.ts';

/** Every bad file, with the finding that it has to give. */
export const BAD_INPUT: readonly BadInput[] = [...SYNTAX, ...FIELDS, ...FIGURES, ...CELLS, ...DIES];
