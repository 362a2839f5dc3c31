/** The rule data as a report prints it. Reports know the engine and the kernel, and nothing below the engine. */
export type { Alloy, AlloyProperty, Binding, Caution, Change, Choice, Given, Limit, RuleKind, Source, Table } from '../rulebook/types.ts';
