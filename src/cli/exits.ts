/** What the exit codes mean; every command uses these and no others. */
export const EXIT = {
  /** Done; no finding at or above the threshold. */
  made: 0,
  /** Done; there are findings at or above the threshold. */
  findings: 1,
  /** The command line, an input file or rule data is wrong, or an output cannot be written. */
  badInput: 2,
  /** A fault of the program itself. */
  fault: 3,
} as const;
